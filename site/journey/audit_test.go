package journey

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// axe is the source of axe-core, which make tools installs.
func axe(t *testing.T) string {
	t.Helper()
	source, err := os.ReadFile("../../testdata/npm/node_modules/axe-core/axe.min.js")
	require.NoError(t, err, "make tools installs axe-core")
	return string(source)
}

// sound looks at the page in a state of that name: axe-core, whose source was
// evaluated in it, finds nothing to complain of, and nothing scrolls sideways.
func (p *visitor) sound(state string) {
	p.t.Helper()
	var wide bool
	p.eval(`document.documentElement.scrollWidth > document.documentElement.clientWidth`, &wide)
	assert.False(p.t, wide, "%s scrolls sideways", state)
	p.await("what moves has come to rest", `document.getAnimations().every((a) => a.playState !== "running" || a.effect.getTiming().iterations === Infinity)`)
	var found []string
	p.eval(`axe.run().then((r) => r.violations.map((v) => v.id + ": " + v.help + " " + v.nodes.slice(0, 3).map((n) => n.html.slice(0, 160)).join(" | ")))`, &found)
	assert.Empty(p.t, found, "%s:\n%s", state, strings.Join(found, "\n"))
}

// screen makes the tab a screen of this size, by day or night.
func (p *visitor) screen(width, height int64, scheme string) {
	p.t.Helper()
	p.do(call(emulation.SetDeviceMetricsOverride, emulation.SetDeviceMetricsOverrideParams{Width: width, Height: height, DeviceScaleFactor: 1, Mobile: width < 600}),
		call(emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: scheme}}}))
}

// view takes a screenshot of what is in the window when SHOTS names a folder.
func (p *visitor) view(name string) {
	p.t.Helper()
	if dir := os.Getenv("SHOTS"); dir != "" {
		png := get(p, chromedp.CaptureScreenshot())
		require.NoError(p.t, os.MkdirAll(dir, 0o755))
		require.NoError(p.t, os.WriteFile(filepath.Join(dir, name+".png"), png, 0o644))
	}
}

// TestAudit walks through every screen and state on a phone and on a desk's
// screen, by day and by night: axe-core finds nothing to complain of, and
// nothing scrolls sideways. On the first walk the Nu HTML checker reads every
// state, and targets have room for thumbs.
func TestAudit(t *testing.T) {
	source := axe(t)
	h := newSite(t)
	snaps := newSnapshots(t, h)
	for i, size := range []struct {
		width, height int64
		scheme        string
	}{{390, 844, "light"}, {390, 844, "dark"}, {1280, 800, "dark"}, {320, 640, "light"}} {
		t.Run(fmt.Sprintf("%d×%d %s", size.width, size.height, size.scheme), func(t *testing.T) {
			p := newVisitor(t, h, browser, chromedp.WithNewBrowserContext())
			p.screen(size.width, size.height, size.scheme)
			p.home()
			p.ready()
			p.eval(source+";0", nil)
			p.walk(func(state string) {
				if i == 0 {
					p.roomForThumbs(state)
					var page string
					p.eval(`"<!doctype html>" + document.documentElement.outerHTML`, &page)
					snaps.keep(t, state, page)
				}
				p.view(fmt.Sprintf("%d-%s-%s", size.width, size.scheme, state))
				p.sound(state)
			})
		})
	}
	t.Run("Nu HTML checker", snaps.check)
}

// walk shows every state of the page in turn.
func (p *visitor) walk(look func(state string)) {
	p.t.Helper()
	look("home")
	p.do(chromedp.Click(chromedp.CSS(`main .kind form:has([value=form]) button`)))
	p.await("the form shows, its title in use", `document.activeElement.id === "own"`)
	look("own")
	p.do(chromedp.Click(chromedp.CSS(`#own-form > button`)))
	p.await("the form says what is missing", `document.querySelector("main [role=alert]")`)
	p.await("the field in question is in use", `document.activeElement.matches("[aria-invalid]")`)
	look("own-error")
	p.choose()
	look("sketch")
	p.walkSketch(look)
	p.skipSketch()
	look("desk")
	p.do(chromedp.Click(chromedp.CSS(`#next a`)))
	look("field")
	p.enter("R", "698 N")
	p.await("which of two slips it was is asked", `document.querySelectorAll("#card-R .which button").length === 3`)
	p.eval(`document.querySelector("#card-R .which").scrollIntoView({ block: "center" })`, nil)
	look("which")
	p.do(chromedp.Click(chromedp.CSS(`#card-R .which form:last-child button`)))
	p.await("the answer is taken", `!document.querySelector("#card-R .which")`)
	p.enter("gamma", "93°")
	look("slip")
	p.submit("gamma", "93 +")
	p.await("an entry that cannot be read", `document.querySelector("[data-verdict=unreadable]")`)
	look("unreadable")
	p.enter("phi", "93")
	look("found")
	for level := 1; level <= 4; level++ {
		p.eval(`(() => { const b = document.querySelector("#card-R form:has([value=hint]) button"); b.focus(); b.click(); })()`, nil)
		p.await("the next hint shows", fmt.Sprintf(`document.querySelectorAll("#card-R .hint").length === %d`, level))
		if level == 2 {
			look("hint")
		}
	}
	p.await("the last hint is in use", `document.activeElement.id === "hint-R"`)
	look("hints")
	p.submit("gamma", "87°")
	p.await("γ is found", `document.querySelector("#card-gamma[data-state=found]")`)
	for _, step := range [][2]string{{"R", "682.6 N"}, {"alpha", "29.83"}, {"theta", "88.2°"}} {
		p.enter(step[0], step[1])
	}
	look("done")
	p.eval(`document.querySelector("#end").scrollIntoView({ block: "end" })`, nil)
	look("end")
	p.eval(`document.querySelector("#solution button").click()`, nil)
	p.await("the worked solution shows", `document.querySelectorAll("#solution math").length >= 13`)
	look("solution")
	p.eval(`(() => { const d = document.querySelector("#tools details"); d.open = true; d.scrollIntoView({ block: "center" }); })()`, nil)
	look("start-again")
	p.aboutTheWork()
	p.eval(`document.querySelector("#bring").scrollIntoView({ block: "center" })`, nil)
	look("work")
	p.eval(`document.querySelector("main nav button").click()`, nil)
	p.await("the list shows", `document.querySelector(".kind")`)
	look("home-begun")
}

// TestFormulasAreWhole: on a phone no formula of the worked solution is cut, nor those
// of six forces, which go on below.
func TestFormulasAreWhole(t *testing.T) {
	p := visit(t, newSite(t))
	for name, code := range map[string]string{
		"two forces":  barge,
		"six forces":  "1!concurrent-forces!Six_lines_pull_on_a_buoy.!forces:A;120_N;20_deg!forces:B;260_N;75_deg!forces:C;310_N;143_deg!forces:D;90_N;190_deg!forces:E1;150_N;-62_deg!forces:G;220_N;-15_deg!wq27",
		"six at rest": "1!particle-equilibrium!A_ring_is_held_by_six_lines.!parts:T1;cable;40_deg_above_-x!parts:T2;cable;30_deg_above_~2bx!parts:T3;cable;70_deg_above_~2bx;;200_N!parts:T4;cable;80_deg_above_-x;;150_N!parts:T5;cable;10_deg_below_-x;;90_N!parts:W;weight;;;;120_kg!d5qt",
	} {
		t.Run(name, func(t *testing.T) {
			p.do(chromedp.Navigate(p.host.url() + "#" + code))
			p.await("the problem shows", fmt.Sprintf(`document.querySelector("main").dataset.hash === %q`, code))
			p.eval(`document.querySelector("#solution button").click()`, nil)
			p.await("the worked solution shows", `document.querySelectorAll("#solution math").length >= 13`)
			var cut []string
			p.eval(`[...document.querySelectorAll("#solution :is(math, .long)")].filter((m) => m.scrollWidth > m.clientWidth || m.getBoundingClientRect().right > innerWidth).map((m) => m.textContent)`, &cut)
			assert.Empty(t, cut)
			p.view("formulas " + name)
		})
	}
}
