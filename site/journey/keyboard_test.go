package journey

import (
	"fmt"
	"testing"

	"closingside/tutor/text"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// tabTo presses Tab until what is in use meets a condition on the element e.
func (p *visitor) tabTo(what, condition string) {
	p.t.Helper()
	for range 60 {
		p.do(chromedp.KeyEvent("\t"))
		var there bool
		p.eval(`((e) => Boolean(`+condition+`))(document.activeElement)`, &there)
		if !there {
			continue
		}
		p.await(what+" is in view when it is reached", "!"+coveredField)
		return
	}
	require.Fail(p.t, "no way by keyboard to "+what)
}

// coveredField: is the middle of what is in use out of view, or under
// something else?
const coveredField = `((e) => { const b = e.getBoundingClientRect(), top = document.elementFromPoint(b.x + b.width / 2, b.y + b.height / 2); return !(top && (e.contains(top) || top.contains(e))); })(document.activeElement)`

// With nothing but Tab and Enter: from the list of problems to a value found,
// with a hint on the way.
func TestKeyboardOnly(t *testing.T) {
	p := newVisitor(t, newSite(t), browser, chromedp.WithNewBrowserContext())
	p.home()
	p.ready()
	p.tabTo("a kind of problem", `e.matches("#kind-two-forces > summary")`)
	p.do(chromedp.KeyEvent("\r"))
	p.tabTo("a problem", `e.closest("#kind-two-forces .choices")`)
	p.do(chromedp.KeyEvent("\r"))
	p.await("the desk is open, its title in use", `document.activeElement.id === "title" && document.querySelector("#next")`)
	p.tabTo("the way past the sketch", `e.id === "sketch-skip"`)
	p.do(chromedp.KeyEvent("\r"))
	p.await("the sketch is set aside, the next step in use", `document.activeElement.matches("#next a")`)
	p.do(chromedp.KeyEvent("\r"))
	p.await("its field is in use", `document.activeElement.id === "entry-phi"`)
	var address string
	p.eval(`fragment()`, &address)
	assert.Equal(t, barge, address, "the address is the problem's, so that a reload finds it")
	p.tabTo("a hint", `e.id === "hint-phi"`)
	p.do(chromedp.KeyEvent("\r"))
	p.await("the hint shows and is said, and the keyboard is where it was",
		`document.querySelector("#card-phi .hint") && document.querySelector("#say").textContent && document.activeElement.id === "hint-phi"`)
	p.do(chromedp.KeyEvent("\r"))
	p.await("the next hint", `document.querySelectorAll("#card-phi .hint").length === 2`)
	p.eval(`document.querySelector("#title").focus()`, nil)
	p.tabTo("the field", `e.id === "entry-phi"`)
	p.do(chromedp.KeyEvent("93"), chromedp.KeyEvent("\r"))
	p.await("φ is found and the next field is in use", `document.querySelector("#card-phi[data-state=found]") && document.activeElement.id === "entry-gamma"`)
	p.await("the verdict and what comes next are said", fmt.Sprintf(`document.querySelector("#say").textContent.startsWith(%q) && document.querySelector("#say").textContent.includes("γ")`, text.Say("verdict.correct")))
	p.await("the figure does not cover the field in use", "!"+coveredField)
}

// After one visit, a whole problem with the network off, on a phone's screen
// with its keyboard up: the field in use is in view at every step.
func TestAWholeProblemOffline(t *testing.T) {
	p := newVisitor(t, newSite(t), browser, chromedp.WithNewBrowserContext())
	p.home()
	p.ready()
	p.kept()
	p.offline()
	p.reload()
	p.choose()
	p.skipSketch()
	p.do(chromedp.Click(chromedp.CSS(`#next a`)))
	for _, step := range [][2]string{{"phi", "118 − 25"}, {"gamma", "180 − φ"}, {"R", "682.6 N"}, {"alpha", "29.83"}, {"theta", "88.2°"}} {
		p.await("the next field is in use", fmt.Sprintf(`document.activeElement.id === "entry-%s"`, step[0]))
		p.screen(390, 500, "light") // the keyboard is up
		p.enter(step[0], step[1])
		assert.Equal(t, 1, p.count("#card-"+step[0]+"[data-state=found]"), step)
		p.await("what is in use after "+step[0]+" is in view", "!"+coveredField)
		p.view("keyboard-up-" + step[0])
	}
	p.await("the end is in use, and what to do next in view", `document.activeElement.id === "done" && document.querySelector("#end .suggestion").getBoundingClientRect().bottom <= innerHeight`)
	p.screen(390, 844, "light")
	p.reload()
	assert.Equal(t, 5, p.count("[data-state=found]"), "still there after a cold start")
}
