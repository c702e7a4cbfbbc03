package journey

import (
	"fmt"
	"testing"

	"closingside/tutor/text"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// fillOwn types a problem of one's own, and how its answers are checked.
func (p *visitor) fillOwn(check map[string]string) {
	p.t.Helper()
	if p.count("#own-form") == 0 {
		p.eval(`document.querySelector("#kind-two-forces form:has([value=form]) button").click()`, nil)
		p.await("the form shows", `document.querySelector("#own-form")`)
	}
	set := func(name, value string) {
		p.eval(fmt.Sprintf(`(() => { const f = document.getElementById(%q); for (let fold; (fold = f.closest("details:not([open])")); fold.open = true); f.value = %q; })()`, "two-forces."+name, value), nil)
	}
	for name, value := range map[string]string{"forces.0.name": "P", "forces.0.magnitude": "340 N", "forces.0.direction": "25 deg",
		"forces.1.name": "Q", "forces.1.magnitude": "610 N", "forces.1.direction": "118 deg"} {
		set(name, value)
	}
	for key, value := range check {
		set("check."+key, value)
	}
}

// TestSettingsOnThePage: how answers are checked is chosen on the page and kept
// to; a refused entry is stood by; a correction is seen to change what rests on
// it. On a phone and at a desk, by day and by night.
func TestSettingsOnThePage(t *testing.T) {
	source := axe(t)
	h := newSite(t)
	for _, size := range []struct {
		width, height int64
		scheme        string
	}{{390, 844, "light"}, {390, 844, "dark"}, {1280, 800, "light"}, {1280, 800, "dark"}} {
		name := fmt.Sprintf("%d-%s", size.width, size.scheme)
		t.Run(name, func(t *testing.T) {
			p := newVisitor(t, h, browser, chromedp.WithNewBrowserContext())
			p.screen(size.width, size.height, size.scheme)
			p.home()
			p.ready()
			p.eval(source+";0", nil)
			look := func(state string) {
				p.view("settings-" + name + "-" + state)
				p.sound(state)
			}
			p.fillOwn(map[string]string{"direction": "from", "thing": "S", "method": "triangle", "hints": "delayed", "solution": "off"})
			p.eval(`document.getElementById("two-forces.check.digits").scrollIntoView({block: "start"})`, nil)
			look("form")
			p.eval(`document.getElementById("two-forces.check.thing").form.requestSubmit()`, nil)
			p.await("the force is asked for", `document.activeElement.id === "two-forces.check.thing" && document.activeElement.matches("[aria-invalid]")`)
			look("refused")
			p.fillOwn(map[string]string{"thing": "P", "sketch": "off"})
			p.eval(`document.getElementById("two-forces.check.thing").form.requestSubmit()`, nil)
			p.await("the desk shows", `document.querySelector("#next a")`)
			look("desk")
			assert.Zero(t, p.count("#card-F1x"))
			assert.Zero(t, p.count("main form:has([value=hint])"))

			p.enter("beta", "61.0°")
			p.enter("theta", "61.0°")
			p.await("θ is carried on", `document.querySelector("#card-theta [data-verdict=carried]")`)
			p.eval(`(() => { document.querySelector("#stand-theta").click(); const f = document.querySelector("#reason-theta"); f.focus(); f.value = "I read it off the drawing."; })()`, nil)
			look("reason")
			p.eval(`document.querySelector("#reason-theta").form.requestSubmit()`, nil)
			p.await("the entry is stood by", `document.querySelector("#card-theta q")`)
			p.await("and that is in use", `document.activeElement.id === "stand-theta"`)
			look("stood")
			p.enter("beta", "63.17°")
			p.await("θ is judged again", `document.querySelector("#card-theta summary .again")`)
			p.await("which is announced", fmt.Sprintf(`document.querySelector("#say").textContent.includes(%q)`, text.Say("page.again.judged", "symbol", "θ", "verdict", text.Say("verdict.carried"))))
			p.eval(`document.querySelector("#card-theta").scrollIntoView()`, nil)
			look("judged-again")
			p.reload()
			p.await("the reason is kept", `document.querySelector("#card-theta q")?.textContent === "I read it off the drawing."`)
		})
	}
}
