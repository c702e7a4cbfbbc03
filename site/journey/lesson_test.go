package journey

import (
	"testing"

	"closingside/tutor/text"

	"github.com/stretchr/testify/assert"
)

// A whole problem: a slip is seen and corrected, every value of the triangle
// is found, and the end says what was met.
func TestAWholeProblem(t *testing.T) {
	p := visit(t, newSite(t))
	p.shot("desk")
	p.enter("gamma", "93°")
	assert.Equal(t, 1, p.count(`#card-gamma [data-verdict=slip]`))
	p.await("the verdict is announced", `document.querySelector("#say").textContent.length > 0`)
	p.shot("slip")
	for _, step := range [][2]string{{"phi", "93"}, {"gamma", "87°"}, {"R", "682.6 N"}, {"alpha", "29.83"}, {"theta", "88.2°"}} {
		p.enter(step[0], step[1])
		assert.Equal(t, 1, p.count("#card-"+step[0]+"[data-state=found]"), step)
	}
	assert.Contains(t, p.text("#end"), text.Say("page.done"))
	assert.Contains(t, p.text("#end"), text.Say("slip.included-for-interior.title"))
	p.shot("done")
	p.eval(`document.querySelector("#end button").click()`, nil)
	p.await("another problem is open", `location.hash.length > 1 && document.querySelectorAll("[data-state=found]").length === 0`)
	p.eval(`document.querySelector("main nav button").click()`, nil)
	p.await("the list shows", `document.querySelector(".kind")`)
	p.eval(`document.querySelectorAll(".kind").forEach((k) => { k.open = true; })`, nil)
	assert.Contains(t, p.text("main"), text.Say("page.state.done"))
	p.roomForThumbs("the list with a problem done")
}

// An answer may be a whole line of working: its words keep their room beside
// it, and the page stays as wide as the screen.
func TestALongAnswerLeavesRoom(t *testing.T) {
	p := visit(t, newSite(t))
	p.enter("R", "sqrt(340^2+610^2-2*340*610*cos(87))")
	assert.Equal(t, 1, p.count("#card-R[data-state=found]"))
	var room struct{ Page, Screen, Words float64 }
	p.eval(`({page: document.documentElement.scrollWidth, screen: document.documentElement.clientWidth,
		words: document.querySelector("#card-R summary > span").getBoundingClientRect().width})`, &room)
	assert.LessOrEqual(t, room.Page, room.Screen)
	assert.Greater(t, room.Words, 150.0, "the width of what R is, in px")
	p.shot("long-answer")
	p.roomForThumbs("a long answer")
}

func TestHintLadderAndWorkedSolution(t *testing.T) {
	p := visit(t, newSite(t))
	for level := 1; level <= 4; level++ {
		p.eval(`(() => { const c = document.querySelector("#card-R"); c.open = true; c.querySelector("form:has([value=hint]) button").click(); })()`, nil)
		p.await("the next hint shows", `document.querySelectorAll("#card-R .hint").length === `+string(rune('0'+level)))
	}
	p.shot("hints")
	p.eval(`document.querySelector("#solution button").click()`, nil)
	p.await("the worked solution shows", `document.querySelectorAll("#solution math").length >= 13`)
	var logged bool
	p.eval(`log.records().then((all) => all.some((r) => r.line.includes("do=solution")))`, &logged)
	assert.True(t, logged)
	p.eval(`document.querySelector("#solution").scrollIntoView()`, nil)
	p.shot("solution")
}

func TestLiveReadingDoesNotJudge(t *testing.T) {
	p := visit(t, newSite(t))
	p.eval(`(() => { const c = document.querySelector("#card-R"); c.open = true; const f = c.querySelector("[name=entry]"); f.focus(); f.value = "sqrt(340^2+610^2)"; f.dispatchEvent(new Event("input", {bubbles: true})); })()`, nil)
	p.await("the reading shows", `document.querySelector("#reading-R math")`)
	assert.Zero(t, p.count("[data-verdict]"))
	assert.NotContains(t, p.text("#reading-R"), "698")
}
