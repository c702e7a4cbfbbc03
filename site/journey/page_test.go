package journey

import (
	"net/http"
	"net/url"
	"strings"
	"testing"

	"closingside/site/publish"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const verdicts = `document.querySelectorAll("[data-verdict]").length`

func TestFirstVisit(t *testing.T) {
	h := newSite(t)
	p := visit(t, h)
	p.kept()
	assert.False(t, p.shown("#engine-loading"))
	assert.True(t, p.shown("#offline-ready"))
	p.shot("first-visit")
	p.enter("R", "682.6 N")
	p.shot("first-entry")
	var wide bool
	p.eval(`document.documentElement.scrollWidth > document.documentElement.clientWidth`, &wide)
	assert.False(t, wide, "nothing scrolls sideways at 390 px")
}

// What is in the HTML is there before the engine, and a problem chosen then is
// not lost: the log has it and the engine opens it when it arrives.
func TestContentBeforeTheEngine(t *testing.T) {
	h := newSite(t)
	arrive := make(chan struct{})
	h.engine(func(http.ResponseWriter) bool {
		<-arrive
		return false
	})
	p := newVisitor(t, h, browser, chromedp.WithNewBrowserContext())
	p.home()
	p.await("the page loads", `document.querySelector("#engine-loading")?.checkVisibility()`)
	assert.NotEmpty(t, p.text("main h1"))
	p.eval(`document.querySelector(".choices button").click()`, nil)
	p.await("the request is stored", `log.last > 0`)
	assert.Zero(t, p.count("#next"))
	close(arrive)
	p.ready()
	p.await("the problem is open", `document.querySelector("#next")`)
}

// A link to a problem shows no list of others while the engine is on its way;
// an engine that does not come gives the list back.
func TestALinkShowsNoOtherProblems(t *testing.T) {
	h := newSite(t)
	arrive := make(chan int)
	h.engine(func(w http.ResponseWriter) bool {
		status := <-arrive
		if status != http.StatusOK {
			w.WriteHeader(status)
		}
		return status != http.StatusOK
	})
	p := newVisitor(t, h, browser, chromedp.WithNewBrowserContext())
	p.allow("engine:")
	p.allow("404")
	p.open("")
	p.await("the page loads", `document.querySelector("#engine-loading")?.checkVisibility()`)
	assert.False(t, p.shown(".choices button"))
	assert.True(t, p.shown("#engine-loading .opening"))
	assert.False(t, p.shown("#engine-loading .idle"))
	go func() { arrive <- http.StatusNotFound; arrive <- http.StatusNotFound }()
	p.await("the page says so", `document.querySelector("#engine-failed")?.checkVisibility()`)
	assert.True(t, p.shown(".choices button"))
	go func() { arrive <- http.StatusOK }()
	p.do(chromedp.Click(chromedp.CSS(`#engine-failed [data-page=reload]`)))
	p.ready()
	assert.True(t, p.shown("#card-R"))
}

func TestReloadBringsTheWorkBack(t *testing.T) {
	p := visit(t, newSite(t))
	p.enter("R", "682.6 N")
	p.enter("R", "6.83e2 N")
	p.eval(`document.activeElement.blur()`, nil) // the strip of keys shows while a field is in use
	before := p.text("main")
	p.eval(`document.querySelector("[name=entry]").value = "half ty"`, nil)
	p.reload()
	assert.Equal(t, before, p.text("main"))
	p.await("what was half typed is back", `document.querySelector("[name=entry]").value === "half ty"`)
}

func TestOfflineColdStart(t *testing.T) {
	h := newSite(t)
	profile := newProfile(t)
	first, stop, err := launch(profile)
	require.NoError(t, err)
	p := newVisitor(t, h, first)
	p.open("")
	p.ready()
	p.stores()
	p.kept()
	p.enter("R", "682.6 N")
	stop() // the browser is closed; the network goes; the browser is opened again
	h.stop()

	second, stop, err := launch(profile)
	require.NoError(t, err)
	defer stop()
	q := newVisitor(t, h, second)
	q.open("")
	q.ready()
	q.stores()
	assert.Equal(t, 1, q.count("[data-verdict]"))
	q.enter("R", "683 N")
	q.open("index.html?from=home")
	q.ready()
	q.stores()
	assert.Equal(t, 2, q.count("[data-verdict]"))
	q.shot("offline")
}

func TestOfflineInMidWork(t *testing.T) {
	p := visit(t, newSite(t))
	p.kept()
	p.enter("R", "682.6 N")
	p.offline()
	p.enter("R", "683 N")
	p.reload()
	assert.Equal(t, 2, p.count("[data-verdict]"))
	p.enter("R", "684 N")
}

func TestWrongTypes(t *testing.T) {
	h := newSite(t)
	h.behave(func(next http.Handler) http.Handler {
		return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			next.ServeHTTP(retyped{w, r.URL.Path}, r)
		})
	})
	p := visit(t, h)
	p.kept()
	p.enter("R", "682.6 N")
	p.offline()
	p.reload()
	assert.Equal(t, 1, p.count("[data-verdict]"))
}

// retyped is a host that knows neither WebAssembly nor manifests.
type retyped struct {
	http.ResponseWriter
	path string
}

func (w retyped) WriteHeader(status int) {
	if strings.HasSuffix(w.path, ".wasm") || strings.HasSuffix(w.path, ".webmanifest") {
		w.Header().Set("Content-Type", "application/octet-stream")
	}
	w.ResponseWriter.WriteHeader(status)
}

func TestCrashedEngine(t *testing.T) {
	p := visit(t, newSiteOf(t, engine(t, "sink")))
	p.enter("R", "682.6 N")
	p.submit("R", "scuttle")
	p.await("the page says so", `!document.querySelector("#notice-set-aside").hidden`)
	p.ready()
	assert.Equal(t, 1, p.count("[data-verdict]"), "the work is back")
	p.enter("R", "683 N")
	p.reload()
	assert.Equal(t, 2, p.count("[data-verdict]"), "and the entry that brought the engine down stays away")
	assert.False(t, p.shown("#notice-set-aside"))
}

// A log that brings a new engine down (a fault of a later version, say) costs
// the one entry that does it.
func TestPoisonedLog(t *testing.T) {
	p := visit(t, newSiteOf(t, engine(t, "sink")))
	for _, e := range []string{"1 N", "2 N", "3 N"} {
		p.enter("R", e)
	}
	of := "do=enter&problem=" + url.QueryEscape(barge) + "&quantity=R"
	p.eval(`log.append("`+of+`&entry=scuttle&at=1")`, nil)
	p.eval(`log.append("`+of+`&entry=4+N&at=2")`, nil)
	p.reload()
	assert.Equal(t, 4, p.count("[data-verdict]"))
	assert.True(t, p.shown("#notice-set-aside"))
	p.reload()
	assert.Equal(t, 4, p.count("[data-verdict]"))
	assert.False(t, p.shown("#notice-set-aside"))
}

func TestCrashWhileReading(t *testing.T) {
	p := visit(t, newSiteOf(t, engine(t, "sink")))
	p.enter("R", "682.6 N")
	p.eval(`(() => { const f = document.querySelector("[name=entry]"); f.focus(); f.value = ""; })()`, nil)
	counted(p)
	p.do(chromedp.KeyEvent("scuttle"))
	p.await("the engine went down, and the work is back", `window.back > 0`)
	assert.Equal(t, 1, p.count("[data-verdict]"))
	p.await("what was typed is still there", `document.querySelector("[name=entry]").value === "scuttle"`)
}

// counted has the page count in window.back how often the engine was brought back.
func counted(p *visitor) {
	p.eval(`(() => { const inner = bringBack; window.back = 0; bringBack = async () => { await inner(); window.back++; }; })()`, nil)
}

// An engine that goes down while it makes ahead what checks look in is brought
// back, and is not worn out a second time; what is entered then is checked.
func TestCrashWhileMakingAhead(t *testing.T) {
	p := visit(t, newSiteOf(t, engine(t, "sink")))
	p.enter("R", "682.6 N")
	counted(p)
	p.eval(`(() => { const inner = call; call = (r) => inner(r === "do=ahead" ? "scuttle" : r); ahead(0); })()`, nil)
	p.await("the engine is back", `window.back > 0`)
	p.eval(`call = ((inner) => (r) => { window.asked = (window.asked || 0) + (r === "do=ahead"); return inner(r); })(call)`, nil)
	p.enter("R", "683 N")
	p.eval(`setTimeout(() => { window.rested = true; }, 1500)`, nil) // ahead waits for a rest of 400 ms
	p.await("a while later", `window.rested`)
	p.await("nothing more is made ahead", `window.asked === 0 && window.back === 1`)
	assert.False(t, p.shown("#notice-set-aside"))
}

// An entry that finds the engine gone is tried on a fresh one, not set aside.
func TestAnEntryThatFindsTheEngineGone(t *testing.T) {
	p := visit(t, newSiteOf(t, engine(t, "sink")))
	p.enter("R", "682.6 N")
	p.eval(`(() => { ahead = () => {}; call("scuttle"); })()`, nil)
	p.submit("R", "683 N")
	p.await("the entry is answered, or set aside", verdicts+` === 2 || !document.querySelector("#notice-set-aside").hidden`)
	assert.False(t, p.shown("#notice-set-aside"))
	p.reload()
	assert.Equal(t, 2, p.count("[data-verdict]"))
}

func TestNoScript(t *testing.T) {
	p := newVisitor(t, newSite(t), browser, chromedp.WithNewBrowserContext())
	p.do(call(emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true}))
	p.open("")
	assert.Contains(t, p.text("noscript"), "JavaScript")
	assert.NotEmpty(t, p.text("main h1"))
	p.shot("no-script")
}

func TestEngineWillNotStart(t *testing.T) {
	rows := map[string]func(w http.ResponseWriter){
		"missing": func(w http.ResponseWriter) { w.WriteHeader(http.StatusNotFound) },
		"broken":  func(w http.ResponseWriter) { _, _ = w.Write([]byte("not a program")) },
	}
	for name, answer := range rows {
		t.Run(name, func(t *testing.T) {
			h := newSite(t)
			h.engine(func(w http.ResponseWriter) bool {
				answer(w)
				return true
			})
			p := newVisitor(t, h, browser, chromedp.WithNewBrowserContext())
			p.allow("engine:")
			p.allow("404")
			p.allow("CompileError")
			p.allow("WebAssembly")
			p.allow("Failed to fetch")
			p.home()
			p.await("the page says so", `document.querySelector("#engine-failed")?.checkVisibility()`)
			p.eval(`document.querySelector(".choices button").click()`, nil)
			p.await("what was asked is kept", `log.last > 0`)
			h.behave(nil)
			p.do(chromedp.Click(chromedp.CSS(`#engine-failed [data-page=reload]`)))
			p.ready()
			p.await("the problem is open", `document.querySelector("#next")`)
		})
	}
}

func TestTwoTabs(t *testing.T) {
	h := newSite(t)
	a := visit(t, h)
	a.enter("R", "1 N")
	b := a.newTab()
	b.await("the other tab's work", verdicts+" === 1")
	b.enter("R", "2 N")
	a.await("the news from b", verdicts+" === 2")
	a.eval(`others.onmessage = null`, nil) // a misses the message
	b.enter("R", "3 N")
	a.submit("R", "4 N")
	a.await("all four", verdicts+" === 4")
	b.await("all four", verdicts+" === 4")
	for _, tab := range []*visitor{a, b} {
		tab.eval(`document.activeElement.blur()`, nil)
	}
	assert.Equal(t, a.text("main"), b.text("main"))
	a.reload()
	assert.Equal(t, a.text("main"), b.text("main"))
}

// An update is taken over as a whole: a page of the old version stays whole
// until the learner asks, or opens the page anew.
func TestUpdate(t *testing.T) {
	h := newSite(t)
	p := visit(t, h)
	p.kept()
	p.enter("R", "1 N")
	p.reload()
	old := h.folder

	b := engine(t, "")
	b.Exec = append([]byte("// next\n"), b.Exec...)
	next, err := publish.Build(b)
	require.NoError(t, err)
	require.NotEqual(t, old.Version, next.Version)
	h.publish(next)

	p.reload() // finds the new version, still shows the old
	assert.Contains(t, p.version(), old.Version)
	p.await("the new version is offered", `document.querySelector("#notice-update")?.checkVisibility()`)
	p.enter("R", "2 N")
	p.shot("update")
	p.do(chromedp.Click(chromedp.CSS(`[data-page=update]`)))
	p.await("the new version runs", `document.querySelector(".titleblock")?.textContent.includes("`+next.Version+`")`)
	p.ready()
	assert.Equal(t, 2, p.count("[data-verdict]"))
	p.await("the old one is gone", `caches.keys().then((all) => all.join() === "closingside:`+under+`:`+next.Version+`")`)
	p.offline()
	p.reload()
	assert.Contains(t, p.version(), next.Version)
}

// version is the title block's text, in view or not.
func (p *visitor) version() string {
	p.t.Helper()
	var s string
	p.eval(`document.querySelector(".titleblock").textContent`, &s)
	return s
}
