package journey

import (
	"fmt"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// phoneKeyboard stands in for a phone whose keyboard lies over the page
// without making the window smaller (Safari's way): what is in view is told by
// the visual viewport alone. keyboard(h) raises it to h pixels.
const phoneKeyboard = `(() => {
	let up = 0;
	const view = new EventTarget();
	for (const [name, value] of Object.entries({ height: () => innerHeight - up, width: () => innerWidth, offsetTop: () => 0, offsetLeft: () => 0, scale: () => 1 }))
		Object.defineProperty(view, name, { get: value });
	Object.defineProperty(window, "visualViewport", { value: view });
	window.keyboard = (h) => { up = h; view.dispatchEvent(new Event("resize")); };
})()`

// inView tells what of the field in use and its surroundings is where: all in
// pixels from the top of the window.
const inView = `(() => {
	const box = (e) => { const b = e?.getBoundingClientRect(); return b ? [Math.round(b.top), Math.round(b.bottom)] : [0, 0]; };
	const figure = [...document.querySelectorAll("#figure svg")].find((s) => s.checkVisibility());
	const letters = [...figure.querySelectorAll("text")].map((t) => parseFloat(getComputedStyle(t).fontSize) * figure.getScreenCTM().a);
	return { field: box(document.activeElement), figure: box(document.querySelector("#figure")), keys: box(document.querySelector("#keys")), letters: Math.min(...letters) };
})()`

// A phone's keyboard never covers the field in use, nor the keys it hides;
// the figure stays in view above it, with letters one can read.
func TestThePhonesKeyboard(t *testing.T) {
	for _, phone := range []struct{ width, height, keyboard int64 }{{390, 844, 400}, {320, 640, 260}, {412, 915, 380}} {
		t.Run(fmt.Sprintf("%d×%d", phone.width, phone.height), func(t *testing.T) {
			p := newVisitor(t, newSite(t), browser, chromedp.WithNewBrowserContext())
			p.do(onEveryPage(phoneKeyboard))
			p.screen(phone.width, phone.height, "light")
			p.open("")
			p.ready()
			p.skipSketch()
			p.do(chromedp.Click(chromedp.CSS(`#next a`)))
			p.await("its field is in use", `document.activeElement.name === "entry"`)
			p.eval(fmt.Sprintf(`keyboard(%d)`, phone.keyboard), nil)
			for _, step := range [][2]string{{"", ""}, {"phi", "87"}, {"phi", "93"}, {"gamma", "87"}, {"R", "682.6 N"}} {
				if step[0] != "" {
					p.enter(step[0], step[1])
				}
				p.await("a field is in use", `document.activeElement.name === "entry"`)
				var at struct {
					Field, Figure, Keys [2]float64
					Letters             float64
				}
				p.eval(inView, &at)
				seen := float64(phone.height - phone.keyboard)
				assert.LessOrEqual(t, at.Keys[1], seen+1, "%v: the keys are above the keyboard: %+v", step, at)
				assert.LessOrEqual(t, at.Field[1], at.Keys[0], "%v: the field is above the keys: %+v", step, at)
				assert.GreaterOrEqual(t, at.Field[0], at.Figure[1], "%v: and below the figure: %+v", step, at)
				assert.GreaterOrEqual(t, at.Figure[0], -1.0, "%v: the figure is in view: %+v", step, at)
				assert.GreaterOrEqual(t, at.Letters, 10.0, "%v: its letters can be read: %+v", step, at)
			}
			p.view(fmt.Sprintf("keyboard-over-%d", phone.width))
			p.eval(`keyboard(0)`, nil)
			p.await("the tall figure is back", `document.querySelector("#figure .tall").checkVisibility()`)
		})
	}
}
