package journey

import (
	"encoding/json"
	"fmt"
	"testing"
	"time"

	"closingside/tutor/text"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// tab is what the core journey needs of a browser, whichever it is.
type tab interface {
	// visit goes to an address and returns once its document is loaded.
	visit(address string)
	// value is what a JavaScript expression comes to, awaited when it is a promise.
	value(expression string) (json.RawMessage, error)
	// press types into what is in use, with real keys.
	press(keys string)
	// tap clicks the element a selector finds, where it shows.
	tap(selector string)
	// drag presses at one place in the window, moves to another and lets go.
	drag(from, to spot)
	// troubles are the errors that the page wrote to the console.
	troubles() []string
}

// traveller makes the core journey through one browser.
type traveller struct {
	tab
	t testing.TB
}

func (p traveller) is(expression string) bool {
	p.t.Helper()
	raw, err := p.value("Boolean(" + expression + ")")
	require.NoError(p.t, err, expression)
	return string(raw) == "true"
}

func (p traveller) await(what, expression string) {
	p.t.Helper()
	for deadline := time.Now().Add(patience); ; time.Sleep(50 * time.Millisecond) {
		raw, err := p.value("(async () => Boolean(await (" + expression + ")))()")
		if err == nil && string(raw) == "true" { // an error: the page is between two documents
			return
		}
		if time.Now().After(deadline) {
			page, _ := p.value("document.body.innerText")
			require.Fail(p.t, "waited in vain until "+what, "error %v; the page says:\n%s", err, page)
		}
	}
}

const engineReady = `document.body?.dataset.engine === "ready"`

// coreJourney is the same in every browser: from the list of problems to the
// end of one, with a mistake on the way; reloaded, and once more with the host
// gone. The host serves h and is stopped on the way.
func coreJourney(t *testing.T, browser tab, h *host) {
	p := traveller{browser, t}
	p.visit(h.url())
	p.await("the engine is ready", engineReady+` && document.querySelector("#notice-no-store").hidden`)
	p.value(fmt.Sprintf(`document.querySelector('.choices form:has([value=%q]) button').closest("details").open = true`, barge))
	p.tap(fmt.Sprintf(`.choices form:has([value=%q]) button`, barge))
	p.await("the sketch comes first", `document.querySelector(".sketch svg")`)
	p.sketch()
	p.await("its field is in use", `document.activeElement.id === "entry-phi"`)
	p.tap(`.keys [data-insert="−"]`)
	p.await("a key types", `document.activeElement.value === "−" && document.querySelector("#reading-phi").textContent`)
	p.press("\b")

	p.press("87\n")
	p.await("the mistake is named beside the entry", `document.querySelector("#card-phi [data-verdict=slip]")`)
	p.await("and announced", `document.querySelector("#say").textContent`)
	p.value(`document.activeElement.select()`)
	for _, step := range [][2]string{{"phi", "118-25"}, {"gamma", "87"}, {"R", "682.6 N"}, {"alpha", "29.83"}, {"theta", "88.2"}} {
		p.await("the next field is in use", fmt.Sprintf(`document.activeElement.id === "entry-%s"`, step[0]))
		p.press(step[1] + "\n")
		p.await(step[0]+" is found", fmt.Sprintf(`document.querySelector("#card-%s[data-state=found]")`, step[0]))
		assert.True(t, p.is(`(() => { const b = document.querySelector("#figure").getBoundingClientRect(); return b.bottom > 40 && b.top < innerHeight - 40; })()`), "the figure is in view")
	}
	p.await("the end is in use", `document.activeElement.id === "done"`)
	assert.True(t, p.is(fmt.Sprintf(`document.querySelector("#end").textContent.includes(%q)`, text.Say("page.end.worked"))))
	assert.True(t, p.is(`document.querySelectorAll("#end .primary").length === 1`), "one suggestion")
	assert.True(t, p.is(`document.documentElement.scrollWidth <= document.documentElement.clientWidth`), "nothing scrolls sideways")
	assert.True(t, p.is(`performance.getEntriesByType("resource").every((r) => r.name.startsWith(location.origin) || r.name.startsWith("data:"))`), "no request to another host")

	p.visit(h.url() + "index.html#" + barge) // the document anew, not a jump within it
	p.await("the work is back", engineReady+` && document.querySelectorAll("[data-state=found]").length === 5`)
	p.await("the page is kept", `document.body.dataset.offline === "ready"`)
	h.stop()
	p.visit(h.url() + "#" + barge)
	p.await("the work is back without a network", engineReady+` && document.querySelectorAll("[data-state=found]").length === 5`)
	assert.Empty(t, p.troubles())
}

// sketch lays the second force at the head of the first by dragging, draws the
// closing side by keys, and estimates.
func (p traveller) sketch() {
	p.t.Helper()
	raw, err := p.value(`(() => {
		document.querySelector(".sketch svg").scrollIntoView({block: "center"});
		const [first, second] = ["#grip-F1", "#grip-F2"].map((id) => document.querySelector(id)), m = first.getScreenCTM();
		const at = (e, n) => { const q = new DOMPoint(e["x" + n].baseVal.value, e["y" + n].baseVal.value).matrixTransform(m); return {X: q.x, Y: q.y}; };
		return [at(first, 2), at(second, 1), at(second, 2)];
	})()`)
	require.NoError(p.t, err)
	var at [3]spot
	require.NoError(p.t, json.Unmarshal(raw, &at))
	held := between(at[1], at[2], 0.6)
	p.drag(held, spot{held.X + at[0].X - at[1].X, held.Y + at[0].Y - at[1].Y})
	p.await("the forces are head to tail", `document.querySelector(".sketch[data-stage=close]")`)
	p.value(`document.querySelector("#corner-0").focus()`)
	p.press("\n")
	p.value(`document.querySelector("#corner-2").focus()`)
	p.press("\n")
	p.await("the figure is closed", `document.querySelector(".sketch[data-stage=estimate]") && document.activeElement.id === "estimate-R"`)
	p.await("and shown", `new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(true))))`)
	p.press("700")
	p.await("it is typed", `document.activeElement.value === "700"`)
	p.press("\n")
	p.await("the other estimate is asked for", `document.activeElement.id === "estimate-theta"`)
	p.press("90\n")
}

// TestCoreJourney is the core journey in Chromium; make test-browsers makes it
// in Firefox and WebKit.
func TestCoreJourney(t *testing.T) {
	h := newSite(t)
	coreJourney(t, chrome{newVisitor(t, h, browser, chromedp.WithNewBrowserContext())}, h)
}

// chrome is a visitor as a tab. Its troubles fail the test by themselves.
type chrome struct{ *visitor }

func (c chrome) visit(address string) { c.do(chromedp.Navigate(address)) }
func (c chrome) tap(selector string)  { c.do(chromedp.Click(chromedp.CSS(selector))) }
func (c chrome) troubles() []string   { return nil }

func (c chrome) drag(from, to spot) { c.mouseDrag(from, to) }

func (c chrome) press(keys string) {
	for _, k := range keys {
		if k == '\n' {
			k = '\r'
		}
		c.do(chromedp.KeyEvent(string(k)))
	}
}

func (c chrome) value(expression string) (json.RawMessage, error) {
	return chromedp.Run(c.ctx, chromedp.Evaluate[json.RawMessage](expression, chromedp.EvalAwaitPromise))
}
