package journey

import (
	"encoding/json"
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"closingside/site/publish"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// weekThree is a set of two problems of the harbour and one that is drawn.
func weekThree(t testing.TB, extra ...lesson.Source) *sets.Set {
	leaf := func(key, text string) lesson.Source { return lesson.Source{Key: key, Text: text} }
	bank := kinds.All.ByName("two-forces").Bank
	item := func(kids ...lesson.Source) lesson.Source { return lesson.Source{Kids: kids} }
	set, err := sets.Read(lesson.Source{Kids: append([]lesson.Source{
		leaf("title", "Mooring lines, week 3"), leaf("note", "Calculators in degree mode. Ask when two mistakes look alike."),
		{Key: "check", Kids: []lesson.Source{leaf("sketch", "off")}},
		{Key: "problems", Kids: []lesson.Source{
			item(append([]lesson.Source{leaf("marks", "4")}, bank[0].Kids...)...),
			item(append([]lesson.Source{leaf("marks", "2")}, bank[1].Kids...)...),
			item(leaf("generate", "two-forces"), leaf("difficulty", "2"), leaf("marks", "3"))}}}, extra...)})
	require.NoError(t, err)
	return set
}

func newSiteWith(t testing.TB, sets ...*sets.Set) *host {
	var codes []string
	for _, s := range sets {
		codes = append(codes, s.Code(""))
	}
	folder, err := publish.Build(engine(t, ""), codes...)
	require.NoError(t, err)
	h := &host{t: t, addr: "127.0.0.1:0", folder: folder}
	h.start()
	t.Cleanup(h.stop)
	return h
}

// press clicks the button or link in main that says text.
func (p *visitor) press(text string) {
	p.t.Helper()
	said, err := json.Marshal(text)
	require.NoError(p.t, err)
	p.await("there is a button "+text, fmt.Sprintf(`(() => { const b = [...document.querySelectorAll("main button")].find((b) => b.innerText.includes(%s)); b?.click(); return b; })()`, said))
}

// TestSet: a set on the home screen is opened, worked in order, and still
// there with its marks when the page comes back without a network.
func TestSet(t *testing.T) {
	h := newSiteWith(t, weekThree(t))
	p := newVisitor(t, h, browser, chromedp.WithNewBrowserContext())
	p.home()
	p.ready()
	p.kept()
	p.press("Mooring lines, week 3")
	p.await("the set shows", `document.querySelector("progress")`)
	assert.Contains(t, p.text("main"), "0 of 3 problems done, 0 of 9 marks")
	p.press("Go to problem 1")
	p.await("the desk shows", `document.querySelector("#card-R")`)
	p.enter("R", "682.6 N")
	p.enter("theta", "88.2°")
	p.press("Go to problem 2")
	p.await("the second problem shows", `document.querySelector("h1").innerText.includes("bollard")`)
	p.offline()
	p.reload()
	p.press("Mooring lines, week 3")
	p.await("the set shows", `document.querySelector("progress")?.value === 1`)
	assert.Contains(t, p.text("main"), "1 of 3 problems done, 4 of 9 marks")
	var hash string
	p.eval(`location.hash`, &hash)
	assert.True(t, strings.HasPrefix(hash, "#s1"), hash)
}

// TestSetLink: the address of a set opens it, and a student's own number
// their own variant.
func TestSetLink(t *testing.T) {
	own := weekThree(t, lesson.Source{Key: "numbers", Text: "own"})
	p := newVisitor(t, newSite(t), browser, chromedp.WithNewBrowserContext())
	p.do(chromedp.Navigate(p.host.url() + "#" + own.Code("")))
	p.ready()
	p.await("the number is asked for", `document.querySelector("#student")`)
	p.eval(`document.querySelector("#student").focus()`, nil)
	p.do(chromedp.KeyEvent("S 1042"), chromedp.KeyEvent("\r"))
	p.await("the variant shows", `document.querySelector("progress")`)
	variant, err := own.Variant("S 1042")
	require.NoError(t, err)
	assert.Equal(t, 1, p.count(fmt.Sprintf(`ol [name=problem][value=%q]`, variant.Tasks[2].Problem.Code())), "drawn in the browser as here")
	p.reload()
	assert.True(t, p.shown("progress"))
	var dealt int
	p.eval(`log.text().then((text) => text.split("\n").filter((line) => line.includes("&dealt=")).length)`, &dealt)
	assert.Equal(t, 1, dealt, "drawn once, and kept")
}

// TestLongSet: many problems are drawn a few at a time while the page shows how
// far that is, once; what else is opened meanwhile comes first.
func TestLongSet(t *testing.T) {
	leaf := func(key, text string) lesson.Source { return lesson.Source{Key: key, Text: text} }
	set, err := sets.Read(lesson.Source{Kids: []lesson.Source{leaf("title", "The whole unit"),
		{Key: "problems", Kids: []lesson.Source{{Kids: []lesson.Source{leaf("generate", "oblique-components"), leaf("count", "20")}}}}}})
	require.NoError(t, err)
	p := newVisitor(t, newSiteWith(t, set), browser, chromedp.WithNewBrowserContext())
	p.home()
	p.ready()
	p.press("The whole unit")
	p.await("drawing shows", `document.querySelector("#drawing progress")`)
	p.press("All problems")
	p.await("home shows", `!document.querySelector("#drawing")`)
	p.press("The whole unit")
	p.await("the set shows", `document.querySelector("main").innerText.includes("0 of 20 problems done")`)
	p.stores()
	p.reload()
	assert.Contains(t, p.text("main"), "0 of 20 problems done")
	var dealt int
	p.eval(`log.text().then((text) => text.split("\n").filter((line) => line.includes("&dealt=")).length)`, &dealt)
	assert.Equal(t, 1, dealt)
}

// TestSetAudit looks at the screens of a set as TestAudit does at the others.
func TestSetAudit(t *testing.T) {
	source := axe(t)
	h := newSiteWith(t, weekThree(t), weekThree(t, lesson.Source{Key: "numbers", Text: "own"}, lesson.Source{Key: "version", Text: "2"}))
	for _, size := range []struct {
		width, height int64
		scheme        string
	}{{390, 844, "light"}, {390, 844, "dark"}, {1280, 800, "light"}, {320, 640, "dark"}} {
		t.Run(fmt.Sprintf("%d×%d %s", size.width, size.height, size.scheme), func(t *testing.T) {
			p := newVisitor(t, h, browser, chromedp.WithNewBrowserContext())
			p.screen(size.width, size.height, size.scheme)
			p.home()
			p.ready()
			p.eval(source+";0", nil)
			look := func(state string) {
				p.view(fmt.Sprintf("set-%d-%s-%s", size.width, size.scheme, state))
				p.sound(state)
			}
			look("home")
			p.press("Mooring lines, week 3")
			p.await("the set shows", `document.querySelector("progress")`)
			look("set")
			p.press("Go to problem 1")
			p.await("the desk shows", `document.querySelector("#card-R")`)
			look("desk")
			p.enter("R", "682.6 N")
			p.press("Mooring lines, week 3")
			p.await("the set shows", `document.querySelector("progress")`)
			look("begun")
			p.press("All problems")
			p.await("the list shows", `document.querySelector("#sets")`)
			p.eval(`[...document.querySelectorAll("[aria-labelledby=sets] button")].at(-1).click()`, nil)
			p.await("the number is asked for", `document.querySelector("#student")`)
			look("who")
			p.press("Show my problems")
			p.await("the number is missing", `document.querySelector("main [role=alert]")`)
			look("who-missing")
		})
	}
}

// fromDisk opens the page as one file from a disk, and waits for the engine.
func fromDisk(t *testing.T, scripts ...string) *visitor {
	t.Helper()
	folder, err := publish.Build(engine(t, ""), weekThree(t).Code(""))
	require.NoError(t, err)
	file := filepath.Join(t.TempDir(), "practice page.html")
	require.NoError(t, folder.WriteFile(file))
	p := newVisitor(t, &host{t: t, addr: "127.0.0.1:0"}, browser, chromedp.WithNewBrowserContext())
	p.allow("request to file://")
	for _, s := range scripts {
		p.do(onEveryPage(s))
	}
	p.do(chromedp.Navigate("file://" + strings.ReplaceAll(file, " ", "%20")))
	p.ready()
	return p
}

// TestOneFile: the page as one file, opened from a disk, does all that the
// folder does: sets, checking, a reload that brings the work back.
func TestOneFile(t *testing.T) {
	p := fromDisk(t)
	p.await("no network is needed", `!document.querySelector("#offline-ready").hidden`)
	p.view("one-file-home")
	p.press("Mooring lines, week 3")
	p.await("the set shows", `document.querySelector("progress")`)
	p.press("Go to problem 1")
	p.await("the desk shows", `document.querySelector("#card-R")`)
	p.enter("R", "682.6 N")
	assert.Equal(t, 1, p.count(`[data-verdict=correct]`))
	assert.False(t, p.shown("#notice-no-store"))
	p.reload()
	p.await("the work is back", `document.querySelectorAll("[data-verdict=correct]").length === 1`)
	p.view("one-file-desk")
	var style string
	p.eval(`getComputedStyle(document.querySelector(".quantity")).display`, &style)
	assert.NotEmpty(t, style)
}

// TestOneFileWithoutAStore: a browser that keeps nothing for a file says so,
// and everything else works.
func TestOneFileWithoutAStore(t *testing.T) {
	p := fromDisk(t, `Object.defineProperty(window, "indexedDB", { get() { throw new DOMException("no", "SecurityError"); } });`)
	assert.True(t, p.shown("#notice-no-store"))
	p.press("Mooring lines, week 3")
	p.press("Go to problem 1")
	p.await("the desk shows", `document.querySelector("#card-R")`)
	p.enter("R", "682.6 N")
	assert.Equal(t, 1, p.count(`[data-verdict=correct]`))
}
