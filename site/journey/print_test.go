package journey

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/ledongthuc/pdf"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/site/sheet"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
	"closingside/tutor/text"
)

// Worksheets print one problem a page, on A4 and on Letter alike.
func TestSheetsPrintClean(t *testing.T) {
	set := &sets.Set{Title: "A week at the harbour", Version: "1", Note: "Show your working.", Settings: lesson.DefaultSettings()}
	for _, k := range kinds.All {
		for _, p := range k.BankProblems() {
			set.Parts = append(set.Parts, sets.Part{Problem: p, Count: 1, Marks: 4})
		}
	}
	variant, err := set.Variant("")
	require.NoError(t, err)
	copies := []sheet.Copy{{ID: "t-17", Variant: variant, Link: "https://example.edu/#" + strings.Repeat("x", 300)}}
	work, err := sheet.Worksheets(set.Title, copies, nil)
	require.NoError(t, err)
	set.Parts = set.Parts[:1] // a key of one problem is as long as it is
	if copies[0].Variant, err = set.Variant(""); err != nil {
		t.Fatal(err)
	}
	key, err := sheet.Key(set.Title, copies[0], nil)
	require.NoError(t, err)

	p := visit(t, newSite(t))
	for _, paper := range []struct {
		name          string
		width, height float64 // inches
	}{{"A4", 8.27, 11.69}, {"Letter", 8.5, 11}} {
		t.Run(paper.name, func(t *testing.T) {
			pages := printed(t, p, work, paper.width, paper.height)
			require.Len(t, pages, len(variant.Tasks), "every problem has a page, and no page is left over")
			for i, said := range pages {
				assert.Contains(t, said, "Problem "+strconv.Itoa(i+1))
				assert.Contains(t, said, "Value and unit")
				assert.Contains(t, said, "Not for lifting", "the safety line is missing on page %d", i+1)
			}
			assert.Contains(t, pages[0], set.Note)
			keys := printed(t, p, key, paper.width, paper.height)
			assert.Less(t, len(keys), 7)
			for i, said := range keys[:len(keys)-1] {
				assert.Greater(t, len(said), 300, "page %d of the key is nearly empty, and not the last", i+1)
			}
		})
	}
}

// What mistakes give begins under its heading, on the same page.
func TestAKeysHeadingsStandOverWhatTheyHead(t *testing.T) {
	p := visit(t, newSite(t))
	for _, k := range kinds.All {
		for _, problem := range k.BankProblems()[:3] {
			set := &sets.Set{Title: problem.Story, Version: "1", Settings: lesson.DefaultSettings(), Parts: []sets.Part{{Problem: problem, Count: 1, Marks: 1}}}
			variant, err := set.Variant("")
			require.NoError(t, err)
			key, err := sheet.Key(set.Title, sheet.Copy{Variant: variant}, nil)
			require.NoError(t, err)
			headed := false
			for i, page := range printed(t, p, key, 8.27, 11.69) {
				if _, under, found := strings.Cut(page, text.Say("sheet.key.mistakes")); found {
					headed = true
					assert.Regexp(t, `(?s)For .{1,9} = `, under, "%s, page %d", problem.Story, i+1) // a lowered letter stands on a line of its own there
				}
			}
			assert.True(t, headed, problem.Story)
			var room bool // paper ends at the margin, and cuts off what stands beyond
			p.eval(`(() => {
				const list = document.querySelector(".worked"), pen = document.createElement("canvas").getContext("2d");
				pen.font = getComputedStyle(list).font;
				return pen.measureText(list.children.length + ". ").width <= parseFloat(getComputedStyle(list).paddingLeft);
			})()`, &room)
			assert.True(t, room, "%s: the numbers of its steps are cut off", problem.Story)
		}
	}
}

// printed is the text of each page of a document as it prints.
func printed(t *testing.T, p *visitor, document []byte, width, height float64) []string {
	t.Helper()
	file := filepath.Join(t.TempDir(), "sheet.html")
	require.NoError(t, os.WriteFile(file, document, 0o600))
	p.allow("file://" + file)
	p.do(chromedp.Navigate("file://" + file))
	var out []byte
	p.do(chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		made, err := cdp.Call(ctx, t, page.PrintToPDF, page.PrintToPDFParams{PaperWidth: width, PaperHeight: height})
		out = made.Data
		return err
	}))
	if dir := os.Getenv("SHOTS"); dir != "" {
		require.NoError(t, os.WriteFile(filepath.Join(dir, "sheet-"+strconv.Itoa(len(document))+"-"+strconv.Itoa(int(width*100))+".pdf"), out, 0o600))
	}
	r, err := pdf.NewReader(bytes.NewReader(out), int64(len(out)))
	require.NoError(t, err)
	var texts []string
	for i := range r.NumPage() {
		text, err := r.Page(i + 1).GetPlainText(nil)
		require.NoError(t, err)
		texts = append(texts, text)
	}
	return texts
}

// A problem printed from the page is dark on white, with its figure in its place and
// the safety sentence, whatever the screen shows.
func TestThePagePrints(t *testing.T) {
	p := visit(t, newSite(t))
	p.skipSketch()
	p.screen(390, 844, "dark")
	p.eval(`document.querySelector("#solution button").click()`, nil)
	p.await("the solution", `document.querySelector("#solved")`)
	p.eval(`scrollTo(0, document.body.scrollHeight)`, nil)
	p.do(call(emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print", Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: "dark"}}}))
	p.await("the ink is dark", `getComputedStyle(document.body).color.match(/\d+/g).every((c) => c < 80)`)
	assert.True(t, p.shown(".safety"), "the safety sentence")
	assert.False(t, p.shown("#keys"))
	var place string
	p.eval(`getComputedStyle(document.querySelector(".pin")).position`, &place)
	assert.Equal(t, "static", place, "what stays in view lies over what is read")
}

// On paper the sketch is its arrows and what to do, without the tools, and the safety
// sentence stays on one page with its heading.
func TestTheSketchPrints(t *testing.T) {
	p := visit(t, newSite(t))
	p.home()
	p.ready()
	p.choose()
	p.await("the sketch shows", `document.querySelector(".f-board")`)
	p.do(call(emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"}))
	assert.True(t, p.shown(".f-board"))
	assert.False(t, p.shown(".toolbox"))
	assert.False(t, p.shown("#sketch-choose"))
	var whole string
	p.eval(`getComputedStyle(document.querySelector(".safety")).breakInside`, &whole)
	assert.Equal(t, "avoid", whole)
}
