package sheet

import (
	"image"
	"image/color"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
	zxing "github.com/makiuchi-d/gozxing/qrcode"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/site"
	"closingside/site/html"
	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
	"closingside/tutor/text"
)

func init() { text.Strict = true }

// everyKind is a set with a problem of every kind.
func everyKind(t *testing.T) Copy {
	t.Helper()
	set := &sets.Set{Title: "The harbour <week>", Version: "1", Note: "Show your working.", Settings: lesson.DefaultSettings()}
	for _, k := range kinds.All {
		set.Parts = append(set.Parts, sets.Part{Problem: k.BankProblems()[0], Count: 1, Marks: 3})
	}
	v, err := set.Variant("")
	require.NoError(t, err)
	return Copy{Variant: v, Link: "https://example.edu/statics/#" + set.Code("")}
}

func TestAWorksheetAsksEverythingAndTellsNothing(t *testing.T) {
	c := everyKind(t)
	for _, task := range c.Variant.Tasks {
		t.Run(task.Problem.Kind.Name, func(t *testing.T) {
			n, err := c.problem(&task)
			require.NoError(t, err)
			page := n.String()
			lesson, err := tutor.Open(task.Problem)
			require.NoError(t, err)
			w := tutor.NewWork(lesson, task.Problem.Settings)
			asked := map[string]bool{}
			for _, way := range lesson.Ways {
				for _, s := range way.Steps {
					asked[s.Quantity] = true
				}
			}
			blanks := 0
			for i := range lesson.Quantities {
				q := &lesson.Quantities[i]
				if w.Offered(q) && (q.Answer || asked[q.Name]) {
					blanks++
					assert.Contains(t, page, "<td>"+site.Prose(lesson.Lesson, lesson.Sentence(q, "what")).String()+"</td>", q.Name)
					assert.NotContains(t, page, ">"+lesson.ShowKept(q, q.True, w.Settings)+"<", "the value of %s is on the worksheet", q.Name)
				}
			}
			assert.Equal(t, blanks, strings.Count(page, `class="blank"`))
			assert.Contains(t, page, html.Escape(task.Problem.Story))
			assert.Contains(t, page, "<svg")
		})
	}
}

// A sheet sets symbols as the page does: nobody reads θQ as a product.
func TestSymbolsAreSetAsInFormulas(t *testing.T) {
	l, err := tutor.Open(kinds.MissingForce.BankProblems()[0])
	require.NoError(t, err)
	assert.Contains(t, statement(l).String(), "<i>θ</i><sub><i>Q</i></sub>")
	assert.NotContains(t, statement(l).String(), "θQ")
}

// A value of a key stays on one line, and its symbol is set everywhere: in the
// table of answers, and where By might be a word.
func TestAnswersOfAKeyAreWhole(t *testing.T) {
	p, err := kinds.All.Decode("1!two-forces!!forces:A;460_N;-7_deg!forces:B;700_N;64_deg!4nz5")
	require.NoError(t, err)
	set := &sets.Set{Title: "Lines", Version: "1", Settings: lesson.DefaultSettings(), Parts: []sets.Part{
		{Problem: p, Count: 1, Marks: 1}, {Problem: kinds.MissingForce.BankProblems()[0], Count: 1, Marks: 1}}}
	v, err := set.Variant("")
	require.NoError(t, err)
	c := Copy{Variant: v}
	k, err := key(&c)
	require.NoError(t, err)
	assert.Contains(t, k.String(), "<i>B</i><sub><i>y</i></sub>\u00a0=\u00a0629.2\u00a0N")
	row, err := c.row()
	require.NoError(t, err)
	assert.Contains(t, row.String(), "<i>θ</i><sub><i>Q</i></sub>\u00a0=\u00a0")
}

func TestAKeyAnswersEverything(t *testing.T) {
	c := everyKind(t)
	for i, task := range c.Variant.Tasks {
		t.Run(task.Problem.Kind.Name, func(t *testing.T) {
			lesson, err := tutor.Open(task.Problem)
			require.NoError(t, err)
			n := c.worked(&c.Variant.Tasks[i], lesson)
			page := n.String()
			steps := 0
			for _, way := range lesson.Solve(task.Problem.Settings) {
				assert.Contains(t, page, html.Escape(text.Say(way.Method.Key())))
				for _, s := range way.Steps {
					steps++
					assert.Contains(t, page, html.Escape(s.Value))
				}
			}
			assert.Equal(t, steps, strings.Count(page, "<li"), "a step of a way is missing")
			for k := range lesson.Quantities {
				q := &lesson.Quantities[k]
				wrong := likeliest(lesson, q, task.Problem.Settings)
				if !tutor.NewWork(lesson, task.Problem.Settings).Offered(q) {
					continue
				}
				for _, w := range wrong {
					assert.Contains(t, page, html.Escape(w.Shown), "what %v gives for %s", w.IDs, q.Name)
				}
			}
		})
	}
}

func TestDocuments(t *testing.T) {
	c := everyKind(t)
	for name, make := range map[string]func() ([]byte, error){
		"worksheets": func() ([]byte, error) { return Worksheets(c.Variant.Set.Title, []Copy{c, c}, nil) },
		"keys":       func() ([]byte, error) { return write(c.Variant.Set.Title, []Copy{c, c}, key, nil) },
	} {
		t.Run(name, func(t *testing.T) {
			doc, err := make()
			require.NoError(t, err)
			page := string(doc)
			assert.Equal(t, 2, strings.Count(page, `class="copy"`))
			assert.Contains(t, page, text.Say("common.safety"))
			assert.Contains(t, page, "The harbour &lt;week&gt;")
			assert.NotRegexp(t, `(src|href)="?https?:`, page, "a sheet needs nothing from a network")
		})
	}
}

// The answers of a class are one table, a row a student.
func TestAnswersOfAClass(t *testing.T) {
	c := everyKind(t)
	c.ID, c.Name = "1042", "Ada"
	doc, err := Answers(c.Variant.Set.Title, []Copy{c, c, c}, nil)
	require.NoError(t, err)
	page := string(doc)
	assert.Equal(t, 1, strings.Count(page, "<table"))
	assert.Equal(t, 3, strings.Count(page, "Ada"))
	assert.NotContains(t, page, `class="copy"`, "no page for each")
	for _, task := range c.Variant.Tasks {
		l, err := tutor.Open(task.Problem)
		require.NoError(t, err)
		answers, _ := values(l)
		for _, a := range answers {
			assert.Equal(t, 3, strings.Count(page, site.Prose(l.Lesson, a).String()), a)
		}
	}
}

// What is drawn is read back by an independent reader of codes.
func TestTheCodeScans(t *testing.T) {
	c := everyKind(t)
	for _, link := range []string{"https://example.edu/statics/#" + c.Variant.Tasks[0].Problem.Code(),
		"https://example.edu/statics/#" + strings.Repeat("x", maxScanned-29)} {
		n, err := qrCode(link)
		require.NoError(t, err)
		bits, err := gozxing.NewBinaryBitmapFromImage(picture(t, n.String()))
		require.NoError(t, err)
		got, err := zxing.NewQRCodeReader().Decode(bits, nil)
		require.NoError(t, err)
		assert.Equal(t, link, got.GetText())
	}
	n, err := qrCode(strings.Repeat("x", maxScanned+1))
	require.NoError(t, err)
	assert.Contains(t, n.String(), text.Say("sheet.long-link"))
}

var (
	boxed = regexp.MustCompile(`viewBox="0 0 (\d+) `)
	run   = regexp.MustCompile(`M(\d+) (\d+)h(\d+)`)
)

// picture paints the squares of a code, four pixels each.
func picture(t *testing.T, svg string) image.Image {
	t.Helper()
	const scale = 4
	m := boxed.FindStringSubmatch(svg)
	require.NotNil(t, m)
	side, err := strconv.Atoi(m[1])
	require.NoError(t, err)
	img := image.NewGray(image.Rect(0, 0, side*scale, side*scale))
	for i := range img.Pix {
		img.Pix[i] = 255
	}
	for _, m := range run.FindAllStringSubmatch(svg, -1) {
		var v [3]int
		for i := range v {
			v[i], err = strconv.Atoi(m[i+1])
			require.NoError(t, err)
		}
		for y := range scale {
			for x := range v[2] * scale {
				img.SetGray(v[0]*scale+x, v[1]*scale+y, color.Gray{})
			}
		}
	}
	return img
}
