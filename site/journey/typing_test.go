package journey

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// Another tab's work comes in while one types: nothing typed is lost, and the
// next letters follow those before.
func TestTypingWhileWorkComesIn(t *testing.T) {
	p := visit(t, newSite(t))
	p.walkToEstimates()
	for _, id := range []string{"estimate-R", "entry-R"} {
		if id == "entry-R" {
			p.eval(`document.querySelector("#sketch-pass").click()`, nil)
			p.await("calculating is next", `!document.querySelector(".sketch")`)
			p.eval(`use(document.getElementById("entry-R"))`, nil)
		}
		for _, letter := range []string{"7", "0", "0"} {
			p.eval(`window.came = take(bringBack); 0`, nil)
			p.do(chromedp.KeyEvent(letter))
			p.await("the work is back", `window.came.then(() => true)`)
		}
		var typed string
		p.eval(`document.getElementById("`+id+`").value`, &typed)
		assert.Equal(t, "700", typed, id)
	}
}

// A tap too many on Check is no second entry, for which more help would be
// given; the same entry later is.
func TestATapTooMany(t *testing.T) {
	p := visit(t, newSite(t))
	p.eval(`(() => { const form = document.querySelector("#entry-gamma").form; form.elements.entry.value = "93"; form.requestSubmit(); form.requestSubmit(); })()`, nil)
	p.await("it is judged", `document.querySelector("#card-gamma [data-verdict]")`)
	p.eval(`take(() => 0).then(() => new Promise((done) => setTimeout(done, 600)))`, nil)
	assert.Equal(t, 1, p.count("#card-gamma [data-verdict]"))
	p.submit("gamma", "93")
	p.await("it is judged again", `document.querySelectorAll("#card-gamma [data-verdict]").length === 2`)
}
