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
