package journey

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"closingside/tutor/text"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// skipSketch sets the sketch aside, so that calculating is next.
func (p *visitor) skipSketch() {
	p.t.Helper()
	p.eval(`document.querySelector("#sketch-skip").click()`, nil)
	p.await("the sketch is set aside", `!document.querySelector(".sketch") && document.querySelector("#next a")`)
}

// spot is a place in the window.
type spot struct{ X, Y float64 }

// ends are the places of the ends of an arrow of the sketch, in the window.
func (p *visitor) ends(arrow string) (tail, head spot) {
	p.t.Helper()
	var at [2]spot
	p.eval(fmt.Sprintf(`(() => {
		const grip = document.querySelector("#grip-%s"), m = grip.getScreenCTM();
		const at = (n) => { const q = new DOMPoint(grip["x" + n].baseVal.value, grip["y" + n].baseVal.value).matrixTransform(m); return {X: q.x, Y: q.y}; };
		return [at(1), at(2)];
	})()`, arrow), &at)
	return at[0], at[1]
}

func between(a, b spot, t float64) spot { return spot{a.X + t*(b.X-a.X), a.Y + t*(b.Y-a.Y)} }

// mouseDrag drags with the mouse, in a few moves.
func (p *visitor) mouseDrag(from, to spot) {
	p.t.Helper()
	mouse := func(what input.DispatchMouseEventType, s spot, buttons int64) chromedp.Action[chromedp.Void] {
		return call(input.DispatchMouseEvent, input.DispatchMouseEventParams{Type: what, X: s.X, Y: s.Y, Button: input.MouseButtonLeft, Buttons: buttons, ClickCount: 1})
	}
	p.do(mouse(input.DispatchMouseEventTypeMousePressed, from, 1))
	for i := 1; i <= 5; i++ {
		p.do(mouse(input.DispatchMouseEventTypeMouseMoved, between(from, to, float64(i)/5), 1))
	}
	p.do(mouse(input.DispatchMouseEventTypeMouseReleased, to, 0))
}

// touchDrag drags with a finger.
func (p *visitor) touchDrag(from, to spot) {
	p.t.Helper()
	touch := func(what input.DispatchTouchEventType, at ...spot) chromedp.Action[chromedp.Void] {
		points := []*input.TouchPoint{}
		for _, s := range at {
			points = append(points, &input.TouchPoint{X: s.X, Y: s.Y})
		}
		return call(input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: what, TouchPoints: points})
	}
	p.do(touch(input.DispatchTouchEventTypeTouchStart, from))
	for i := 1; i <= 5; i++ {
		p.do(touch(input.DispatchTouchEventTypeTouchMove, between(from, to, float64(i)/5)))
	}
	p.do(touch(input.DispatchTouchEventTypeTouchEnd))
}

// stage waits until the sketch is at a stage.
func (p *visitor) stage(name string) {
	p.t.Helper()
	p.await("the sketch is at "+name, fmt.Sprintf(`document.querySelector(".sketch[data-stage=%s]")`, name))
}

func (p *visitor) said(part string) {
	p.t.Helper()
	quoted, err := json.Marshal(part)
	require.NoError(p.t, err)
	p.await("it is said that "+part, fmt.Sprintf(`document.querySelector("#say").textContent.includes(%s)`, quoted))
}

// toSketch brings the sketch into the middle of the window, as one scrolls to work
// on it.
func (p *visitor) toSketch() {
	p.t.Helper()
	p.eval(`document.querySelector(".sketch svg").scrollIntoView({block: "center"})`, nil)
}

// The whole sketch by mouse and by finger: a slip is named, taken back, the
// triangle closed and estimates kept, which a wrong value is compared with.
func TestSketchByDragging(t *testing.T) {
	h := newSite(t)
	for name, drag := range map[string]func(*visitor, spot, spot){"mouse": (*visitor).mouseDrag, "finger": (*visitor).touchDrag} {
		t.Run(name, func(t *testing.T) {
			p := visit(t, h)
			p.stage("arrange")
			p.toSketch()
			p.view("sketch-" + name + "-1")
			_, h1 := p.ends("F1")
			f2, h2 := p.ends("F2")

			drag(p, between(f2, h2, 0.6), spot{between(f2, h2, 0.6).X + h1.X - f2.X + 9, between(f2, h2, 0.6).Y + h1.Y - f2.Y - 8})
			p.stage("close")
			p.said(text.Say("sketch.step.close"))
			p.view("sketch-" + name + "-2")
			assert.True(t, p.shown("#sketch-undo"))
			p.toSketch()
			f1, _ := p.ends("F1")
			_, h2 = p.ends("F2")
			drag(p, h2, f1)
			p.said(text.Say("sketch.reversed"))
			p.view("sketch-" + name + "-3")
			assert.Equal(t, 1, p.count(`.sketch [data-verdict=slip]`))
			p.toSketch()
			drag(p, spot{f1.X + 6, f1.Y + 7}, spot{h2.X - 8, h2.Y + 5})
			p.stage("estimate")
			p.await("the estimate is asked for", `document.activeElement.id === "estimate-R"`)
			p.view("sketch-" + name + "-4")
			p.do(chromedp.KeyEvent("700"))
			p.eval(`document.querySelector("#estimate-theta").focus()`, nil)
			p.do(chromedp.KeyEvent("90"), chromedp.KeyEvent("\r"))
			p.await("the sketch is done", `!document.querySelector(".sketch") && document.activeElement.name === "entry"`)
			p.view("sketch-" + name + "-5")
			p.enter("R", "466000 N")
			assert.Contains(t, p.text("#card-R .history"), text.Say("feedback.estimate", "estimate", "700 N"))
			var lines []string
			p.eval(`log.records().then((all) => all.map((r) => r.line).filter((l) => /quantity=sketch|do=sketch/.test(l)))`, &lines)
			assert.Len(t, lines, 8, "%d: every act and every verdict is in the log: %q", len(lines), lines)
			p.reload()
			assert.Zero(t, p.count(".sketch"), "still done after a reload")
			assert.Contains(t, p.text("#card-R .history"), "700 N")
		})
	}
}

// The sketch with nothing but the keyboard: arrow keys move an arrow and
// choose a corner, Enter puts down and draws.
func TestSketchByKeys(t *testing.T) {
	p := visit(t, newSite(t))
	p.tabTo("the second arrow", `e.id === "grip-F2"`)
	for _, key := range []string{kb.ArrowRight, kb.ArrowUp} {
		for range 2 {
			p.do(chromedp.KeyEvent(key))
		}
	}
	p.do(chromedp.KeyEvent("\r"))
	p.await("too short a way is said to be one", `document.querySelector("#sketch-said") && document.activeElement.id === "grip-F2"`)
	p.eval(`document.querySelector("#sketch-undo").focus()`, nil)
	p.do(chromedp.KeyEvent("\r"))
	p.said(text.Say("sketch.undone"))
	p.eval(`document.querySelector("#title").focus()`, nil)
	p.tabTo("the second arrow", `e.id === "grip-F2"`)
	f1, h1 := p.ends("F1")
	var scale float64
	p.eval(`document.querySelector(".sketch svg").getScreenCTM().a`, &scale)
	for range int((h1.X-f1.X)/scale/8 + 0.5) {
		p.do(chromedp.KeyEvent(kb.ArrowRight))
	}
	for range int((f1.Y-h1.Y)/scale/8 + 0.5) {
		p.do(chromedp.KeyEvent(kb.ArrowUp))
	}
	p.do(chromedp.KeyEvent("\r"))
	p.stage("close")
	p.eval(`document.querySelector("#title").focus()`, nil)
	p.tabTo("a corner", `e.dataset.corner !== undefined`)
	p.do(chromedp.KeyEvent("\r"))
	p.do(chromedp.KeyEvent(kb.ArrowRight), chromedp.KeyEvent(kb.ArrowRight))
	p.view("sketch-keys")
	p.do(chromedp.KeyEvent("\r"))
	p.stage("estimate")
}

// Who skips the sketch on a desk's screen sees what comes next, beside its figure:
// the sheet becomes shorter while the way past the sketch is far down it.
func TestTheNextStepIsInViewAfterTheSketch(t *testing.T) {
	p := visit(t, newSite(t))
	p.screen(1280, 800, "light")
	p.eval(`document.querySelector("#sketch-skip").scrollIntoView({block: "center"})`, nil)
	p.skipSketch()
	p.await("the next step is in use", `document.activeElement.id === "next-find"`)
	p.view("skipped")
	for _, part := range []string{"#next", "#figure"} {
		assert.True(t, p.whole(part), part)
	}
}

// On a desk's screen the drawing, what to do and the way past it are seen at once; on a
// phone the two tools keep to a line each.
func TestTheSketchIsSeenWhole(t *testing.T) {
	p := visit(t, newSite(t))
	p.screen(1280, 800, "dark")
	for _, part := range []string{"#sketch-step", ".sketch svg", "#sketch-choose", "#sketch-skip"} {
		assert.True(t, p.whole(part), part)
	}
	p.view("sketch-desk")
	f1, h1 := p.ends("F1")
	f2, h2 := p.ends("F2")
	p.mouseDrag(between(f2, h2, 0.6), spot{between(f2, h2, 0.6).X + h1.X - f1.X, between(f2, h2, 0.6).Y + h1.Y - f1.Y})
	p.stage("close")
	assert.True(t, p.whole("#sketch-undo"), "and so with what is said")

	p.screen(390, 844, "light")
	for _, tool := range []string{"move", "draw"} {
		p.eval(fmt.Sprintf(`document.querySelector("#tool-%s").click()`, tool), nil)
		var lines int
		p.eval(fmt.Sprintf(`(() => { const r = document.createRange(); r.selectNodeContents(document.querySelector("#tool-%s + span"));
			return new Set([...r.getClientRects()].map((b) => b.top)).size; })()`, tool), &lines)
		assert.Equal(t, 1, lines, "lines of the tool %s", tool)
	}
}

// whole tells whether the whole of an element is in the window.
func (p *visitor) whole(selector string) bool {
	p.t.Helper()
	var in bool
	p.eval(fmt.Sprintf(`(({top, bottom}) => top >= 0 && bottom <= innerHeight)(document.querySelector(%q).getBoundingClientRect())`, selector), &in)
	return in
}

// The sketch by choosing instead of dragging, and setting it aside.
func TestSketchByChoosing(t *testing.T) {
	p := visit(t, newSite(t))
	p.skipSketch()
	p.await("the next step is in use", `document.activeElement.id === "next-find"`)
	p.eval(`document.querySelector("#sketch-back").focus()`, nil)
	p.do(chromedp.KeyEvent("\r"))
	p.await("the sketch is back", `document.activeElement.id === "sketch-title"`)
	p.eval(`document.querySelector("#sketch-choose").open = true`, nil)
	p.view("sketch-choose")
	choose := func(values map[string]string, act string) {
		for id, v := range values {
			p.eval(fmt.Sprintf(`document.querySelector("#sketch-%s").value = %q`, id, v), nil)
		}
		p.eval(fmt.Sprintf(`document.querySelector("#sketch-%s").click()`, act), nil)
	}
	choose(map[string]string{"from": "h0", "to": "h1"}, "close")
	p.said(text.Say("sketch.other.tails"))
	choose(map[string]string{"end": "t0", "at": "h1"}, "put")
	p.stage("close")
	assert.True(t, p.shown("#sketch-from"), "the choices stay open")
	choose(map[string]string{"from": "t1", "to": "h0"}, "close")
	p.stage("estimate")
	p.eval(`document.querySelector("#sketch-pass").click()`, nil)
	p.await("calculating is next", `document.activeElement.name === "entry"`)
}

// walkSketch shows the states of the sketch, and leaves it as it began.
func (p *visitor) walkSketch(look func(state string)) {
	p.t.Helper()
	act := func(act string, values ...[2]string) {
		p.eval(`document.querySelector("#sketch-choose").open = true`, nil)
		for _, v := range values {
			p.eval(fmt.Sprintf(`document.querySelector("#sketch-%s").value = %q`, v[0], v[1]), nil)
		}
		p.eval(fmt.Sprintf(`document.querySelector("#sketch-%s").click()`, act), nil)
	}
	act("close", [2]string{"from", "h0"}, [2]string{"to", "h1"})
	p.said(text.Say("sketch.other.tails"))
	look("sketch-slip")
	act("put", [2]string{"end", "t1"}, [2]string{"at", "h0"})
	p.stage("close")
	look("sketch-close")
	act("close", [2]string{"from", "t0"}, [2]string{"to", "h1"})
	p.stage("estimate")
	p.eval(`(() => { document.querySelector("#estimate-R").value = "30"; document.querySelector("#sketch-estimate").click(); })()`, nil)
	p.await("the estimate is asked about", `document.querySelector("#estimate-R-said")`)
	look("sketch-estimate")
	for p.count("#sketch-undo") > 0 {
		var n string
		p.eval(`document.querySelector("#figure").outerHTML`, &n)
		p.eval(`document.querySelector("#sketch-undo").click()`, nil)
		p.await("an act is taken back", fmt.Sprintf(`document.querySelector("#figure").outerHTML !== %q`, n))
	}
}

// The figure builds itself up where it changes kind, a value found comes
// forward, a tap plays it again; with reduced motion nothing moves and the
// whole figure is there.
func TestTheFigureBuildsUp(t *testing.T) {
	h := newSite(t)
	for _, motion := range []string{"no-preference", "reduce"} {
		t.Run(motion, func(t *testing.T) {
			p := visit(t, h)
			p.do(call(emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: "prefers-reduced-motion", Value: motion}}}))
			p.skipSketch()
			// What moved is counted as it begins: on a busy machine it may be over before one looks.
			p.eval(`window.moved = 0; document.addEventListener("animationstart", ({ animationName, target }) => {
				if (animationName === "f-appear" && target.closest("#figure svg")?.checkVisibility()) window.moved++; }, true)`, nil)
			moving := func() (n int) {
				p.eval(`document.querySelector("#figure svg").getAnimations({subtree: true}).filter((a) => a.effect.getComputedTiming().endTime > 20).length`, &n)
				return n
			}
			p.enter("gamma", "87")
			p.await("the triangle shows", `document.querySelector("#figure svg [data-name=R]")`)
			if motion == "reduce" {
				assert.Zero(t, moving())
			} else {
				p.await("the parts appear one after the other", `window.moved > 3`)
				p.await("all of it shows in the end", `document.querySelector("#figure svg").getAnimations({subtree: true}).every((a) => a.playState === "finished")`)
			}
			var before int
			p.eval(`window.moved`, &before)
			p.enter("R", "682.6 N")
			p.await("the value is in the figure", `document.querySelector("#figure svg").textContent.includes("682.6 N")`)
			if motion != "reduce" {
				assert.Equal(t, 1, p.count("#figure .tall .f-new"), "only the new value comes forward")
			}
			p.eval(`document.querySelector("#figure [data-page=build]").click()`, nil)
			if motion == "reduce" {
				assert.Zero(t, moving())
			} else {
				p.await("a tap plays it again", fmt.Sprintf(`window.moved > %d`, before+3))
			}
			var size [2]float64
			p.eval(`(() => { const b = document.querySelector("#figure [data-page=build]").getBoundingClientRect(); return [b.width, b.height]; })()`, &size)
			assert.GreaterOrEqual(t, min(size[0], size[1]), 44.0)
		})
	}
}

// In little room, with text twice as large, the sketch stays whole: nothing
// scrolls sideways, every target is large enough, and a drag shows where it
// would settle.
func TestSketchInLittleRoom(t *testing.T) {
	source := axe(t)
	h := newSite(t)
	for _, size := range []struct {
		width, height int64
		scheme, text  string
	}{{320, 640, "dark", "200%"}, {844, 390, "light", "100%"}} {
		t.Run(fmt.Sprintf("%d×%d %s", size.width, size.height, size.text), func(t *testing.T) {
			p := newVisitor(t, h, browser, chromedp.WithNewBrowserContext())
			p.screen(size.width, size.height, size.scheme)
			p.open("")
			p.ready()
			p.eval(source+";0", nil)
			p.eval(fmt.Sprintf(`document.documentElement.style.fontSize = %q`, size.text), nil)
			p.toSketch()
			_, h1 := p.ends("F1")
			f2, h2 := p.ends("F2")
			held := between(f2, h2, 0.5)
			mouse := func(what input.DispatchMouseEventType, s spot) {
				p.do(call(input.DispatchMouseEvent, input.DispatchMouseEventParams{Type: what, X: s.X, Y: s.Y, Button: input.MouseButtonLeft, Buttons: 1, ClickCount: 1}))
			}
			to := spot{held.X + h1.X - f2.X + 8, held.Y + h1.Y - f2.Y + 6}
			mouse(input.DispatchMouseEventTypeMousePressed, held)
			mouse(input.DispatchMouseEventTypeMouseMoved, between(held, to, 0.5))
			assert.Zero(t, p.count(".f-corner.near"), "half way it is near nothing")
			mouse(input.DispatchMouseEventTypeMouseMoved, to)
			assert.Equal(t, 1, p.count(".f-corner.near"), "where it would settle is marked")
			p.view(fmt.Sprintf("sketch-room-%d", size.width))
			p.do(chromedp.KeyEvent(kb.Escape))
			mouse(input.DispatchMouseEventTypeMouseReleased, to)
			assert.Zero(t, p.count("#sketch-said"), "Escape leaves things as they were")
			p.walkSketch(func(state string) {
				var small, found []string
				p.eval(`[...document.querySelectorAll(".sketch :is(button, summary, input:not([type=hidden]), select, [data-corner])")].map((e) => [e, e.getBoundingClientRect()]).filter(
					([e, b]) => e.checkVisibility() && b.width > 0 && (b.height < 43.5 || b.width < 43.5)).map(([e, b]) => e.outerHTML.slice(0, 120) + " " + b.width + "×" + b.height)`, &small)
				assert.Empty(t, small, state)
				var wide bool
				p.eval(fmt.Sprintf(`Math.max(innerWidth, document.documentElement.scrollWidth) > %d`, size.width), &wide)
				assert.False(t, wide, state)
				p.eval(`axe.run(".sketch").then((r) => r.violations.map((v) => v.id + " " + v.nodes.map((n) => n.html.slice(0, 160)).join(" | ")))`, &found)
				assert.Empty(t, found, state)
				p.view(fmt.Sprintf("room-%d-%s", size.width, state))
			})
		})
	}
}

// walkToEstimates lays the forces head to tail and draws the closing side, by
// choosing.
func (p *visitor) walkToEstimates() {
	p.t.Helper()
	for _, act := range [][3]string{{"put", "end=t1", "at=h0"}, {"close", "from=t0", "to=h1"}} {
		p.eval(`document.querySelector("#sketch-choose").open = true`, nil)
		for _, v := range act[1:] {
			id, value, _ := strings.Cut(v, "=")
			p.eval(fmt.Sprintf(`document.querySelector("#sketch-%s").value = %q`, id, value), nil)
		}
		p.eval(fmt.Sprintf(`document.querySelector("#sketch-%s").click()`, act[0]), nil)
		if act[0] == "put" {
			p.stage("close")
		}
	}
	p.stage("estimate")
	p.await("the estimate is in use", `document.activeElement.id === "estimate-R"`)
}
