package journey

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"closingside/tutor/kinds"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// behind matches what the checker does not know yet: a source expression of
// Content Security Policy Level 3 (§2.3.1), and a global attribute of MathML
// Core (§2.1.4).
const behind = ".*'wasm-unsafe-eval'.*|.*Attribute .tabindex. not allowed on element .math.*"

// snapshots keeps the page as published and every state the engine brings it
// to, for the Nu HTML checker.
type snapshots struct{ dir string }

func newSnapshots(t *testing.T, h *host) snapshots {
	t.Helper()
	s := snapshots{t.TempDir()}
	published, err := h.ReadFile("index.html")
	require.NoError(t, err)
	s.keep(t, "published", string(published))
	return s
}

func (s snapshots) keep(t testing.TB, state, page string) {
	t.Helper()
	require.NoError(t, os.WriteFile(filepath.Join(s.dir, state+".html"), []byte(page), 0o644))
}

// check has the checker read everything kept; it finds nothing.
func (s snapshots) check(t *testing.T) {
	t.Helper()
	jar, err := filepath.Abs("../../testdata/npm/node_modules/vnu-jar/build/dist/vnu.jar")
	require.NoError(t, err)
	require.FileExists(t, jar, "make tools installs it")
	out, err := exec.Command("java", "-Xss4m", "-jar", jar, "--Werror", "--skip-non-html", "--filterpattern", behind, s.dir).CombinedOutput()
	assert.NoError(t, err, "%s", out[:min(len(out), 3000)])

	broken := filepath.Join(t.TempDir(), "broken.html")
	require.NoError(t, os.WriteFile(broken, []byte("<!doctype html><p><div></p>"), 0o644))
	assert.Error(t, exec.Command("java", "-Xss4m", "-jar", jar, broken).Run(), "the checker does check")
}

// roomForThumbs: targets are at least 44 px high and wide, and with text twice
// as large nothing scrolls sideways. (A phone's innerWidth grows with what
// overflows; the layout's width does not.)
func (p *visitor) roomForThumbs(state string) {
	p.t.Helper()
	var small []string
	p.eval(`[...document.querySelectorAll("button, summary, input:not([type=hidden]), select, a[href]")].map((e) => [e, e.getBoundingClientRect()]).filter(
		([e, b]) => e.checkVisibility() && !e.classList.contains("skip") && b.width > 0 && (b.height < 43.5 || b.width < 43.5)
	).map(([e, b]) => e.outerHTML.slice(0, 120) + " " + b.width + "×" + b.height)`, &small)
	assert.Empty(p.t, small, state)
	p.eval(`document.documentElement.style.fontSize = "200%"`, nil)
	var wide []string
	p.eval(`document.documentElement.scrollWidth <= document.documentElement.clientWidth ? [] : [...document.querySelectorAll("body *")].filter(
		(e) => e.checkVisibility() && e.getBoundingClientRect().right > document.documentElement.clientWidth + 1).map((e) => e.outerHTML.slice(0, 120))`, &wide)
	assert.Empty(p.t, wide, "%s with text at 200 %%", state)
	p.roomForWords(state + " with text at 200 %")
	p.eval(`document.documentElement.style.fontSize = ""`, nil)
}

// roomForWords: a field and what a quantity is called have room for five letters at least.
func (p *visitor) roomForWords(state string) {
	p.t.Helper()
	var squeezed []string
	p.eval(`[...document.querySelectorAll("[name=entry], .quantity summary > span:not(.value, .again)")].filter(
		(e) => e.checkVisibility() && e.getBoundingClientRect().width < 5 * parseFloat(getComputedStyle(e).fontSize)).map((e) => e.outerHTML.slice(0, 120))`, &squeezed)
	assert.Empty(p.t, squeezed, state)
}

// The longest names that are read leave room for what stands beside them.
func TestLongNamesLeaveRoom(t *testing.T) {
	p := visit(t, newSite(t))
	long, err := kinds.All.Read(kinds.TwoForcesSource("", kinds.ForceSource("Bowlineoftug", "340.125 N", "25 deg"), kinds.ForceSource("Sternlinetug", "610.333 N", "118 deg")))
	require.NoError(t, err)
	p.screen(390, 844, "light")
	p.do(chromedp.Navigate(p.host.url() + "#" + long.Code()))
	p.await("the problem shows", `document.querySelector("#card-F1x")`)
	p.skipSketch()
	p.enter("F1x", "308.3 N")
	p.roomForWords("long names")
	p.roomForThumbs("long names")
}

// What the shell says in trouble passes axe-core too, in high contrast as well.
func TestNoticesAudit(t *testing.T) {
	source := axe(t)
	require.NotEmpty(t, source, "make tools installs axe-core")
	looks := map[string][]*emulation.MediaFeature{
		"light":              {{Name: "prefers-color-scheme", Value: "light"}},
		"dark":               {{Name: "prefers-color-scheme", Value: "dark"}},
		"high contrast":      {{Name: "prefers-contrast", Value: "more"}},
		"forced colours":     {{Name: "forced-colors", Value: "active"}},
		"dark high contrast": {{Name: "prefers-contrast", Value: "more"}, {Name: "prefers-color-scheme", Value: "dark"}},
	}
	p := visit(t, newSite(t))
	p.enter("gamma", "93°")
	p.eval(source+";0", nil)
	p.eval(`(() => {
		document.querySelectorAll("details").forEach((d) => { d.open = true; });
		document.querySelectorAll("#notices [hidden], .titleblock [hidden]").forEach((n) => { n.hidden = false; });
		document.querySelector(".titleblock").style.contentVisibility = "visible";
	})()`, nil)
	for look, features := range looks {
		t.Run(look, func(t *testing.T) {
			features = append(features, &emulation.MediaFeature{Name: "prefers-reduced-motion", Value: "reduce"})
			p.do(call(emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: features}))
			var found struct {
				Passes     int
				Violations []string
			}
			p.eval(`axe.run().then((r) => ({passes: r.passes.length, violations: r.violations.map(
				(v) => v.id + ": " + v.nodes.map((n) => n.html.slice(0, 160) + " " + n.failureSummary).join("; "))}))`, &found)
			assert.Empty(t, found.Violations)
			assert.Greater(t, found.Passes, 10, "the audit looked")
			p.shot("notices-" + look)
		})
	}
}
