package journey

import (
	"fmt"
	"testing"

	"closingside/tutor/kinds"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// TestEquationsOnThePage: an equation is typed, read while it is typed, judged,
// and the forces that follow from it are found; on a phone and at a desk, by
// day and by night. axe-core finds nothing, and nothing scrolls sideways.
func TestEquationsOnThePage(t *testing.T) {
	source := axe(t)
	h := newSite(t)
	crate := kinds.All.ByName("particle-equilibrium").BankProblems()[0].Code()
	for _, size := range []struct {
		width, height int64
		scheme        string
	}{{390, 844, "light"}, {390, 844, "dark"}, {1280, 800, "light"}, {1280, 800, "dark"}} {
		name := fmt.Sprintf("%d-%s", size.width, size.scheme)
		t.Run(name, func(t *testing.T) {
			p := newVisitor(t, h, browser, chromedp.WithNewBrowserContext())
			p.screen(size.width, size.height, size.scheme)
			p.do(chromedp.Navigate(h.url() + "#" + crate))
			p.ready()
			p.await("the desk shows", `document.querySelector("#next")`)
			if p.count("#sketch-skip") > 0 {
				p.skipSketch()
			}
			p.eval(source+";0", nil)
			look := func(state string) {
				p.view("rest-" + name + "-" + state)
				p.shot("rest-" + name + "-" + state + "-whole")
				p.sound(state)
			}
			if size.width > 1000 {
				assert.True(t, p.whole("#next"), "the picture of what hangs stands beside the statement, and what comes next is in view")
			}
			look("begun")
			p.enter("F3", "120 N")
			p.enter("F3", "1177 N")
			p.enter("sumx", "T1 cos 40 + T2 cos 30 = 0")
			p.await("the sign is asked about", `document.querySelector("#card-sumx [data-verdict=slip]")`)
			look("slip")
			p.enter("sumx", "T1 cos 40 = T2 cos 30")
			p.await("another form is right", `document.querySelector("#card-sumx")?.dataset.state === "found"`)
			p.eval(`(() => { const f = document.querySelector("#entry-sumy"); f.focus(); f.value = "T1 sin 40 + T2 sin 30 = W"; f.dispatchEvent(new Event("input", {bubbles: true})); })()`, nil)
			p.await("it is read while it is typed", `document.querySelector("#reading-sumy math")`)
			look("read")
			p.enter("sumy", "T1 sin 40 + T2 sin 30 = W")
			p.enter("F1", "1085 N")
			p.enter("F2", "960 N")
			p.await("all is found", `document.querySelector("#end h2")`)
			look("done")
		})
	}
}
