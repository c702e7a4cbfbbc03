package export

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"math"
	"path"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
	"closingside/tutor/text"
)

func init() { text.Strict = true }

func everyKind(t *testing.T) *sets.Variant {
	t.Helper()
	set := &sets.Set{Title: "Harbour & slipway <1>", Version: "1", Settings: lesson.DefaultSettings()}
	for _, k := range kinds.All {
		for _, p := range k.BankProblems() {
			set.Parts = append(set.Parts, sets.Part{Problem: p, Count: 1, Marks: 4})
		}
	}
	v, err := set.Variant("")
	require.NoError(t, err)
	return v
}

func TestMarkdownHoldsTheSolution(t *testing.T) {
	v := everyKind(t)
	files, err := Markdown("week", v)
	require.NoError(t, err)
	page := string(files[0].Content)
	names := map[string]bool{}
	for _, f := range files[1:] {
		names[f.Name] = true
		assert.Contains(t, page, "]("+f.Name+")", "a figure no page shows")
		assert.NoError(t, wellFormed(f.Content), f.Name)
	}
	assert.Equal(t, len(names), strings.Count(page, "\n!["), "a figure is missing")
	for _, task := range v.Tasks {
		l, err := tutor.Open(task.Problem)
		require.NoError(t, err)
		for _, way := range l.Solve(task.Problem.Settings) {
			for _, s := range way.Steps {
				assert.Contains(t, page, "= "+s.Value)
			}
		}
	}
	assert.Contains(t, page, "# Harbour & slipway \\<1\\>")
	assert.Contains(t, page, text.Say("common.safety"))
}

// A reason stands once above the steps that share it, and the lines of a tenth
// step are code as those of the ninth are.
func TestMarkdownListsSteps(t *testing.T) {
	set := &sets.Set{Title: "Pontoon", Version: "1", Settings: lesson.DefaultSettings()}
	bank := kinds.All.ByName("concurrent-forces").BankProblems()
	set.Parts = []sets.Part{{Problem: bank[len(bank)-1], Count: 1}} // five ropes
	v, err := set.Variant("")
	require.NoError(t, err)
	files, err := Markdown("week", v)
	require.NoError(t, err)
	page := string(files[0].Content)
	_, steps, found := strings.Cut(page, "\n### ")
	require.True(t, found)
	assert.Contains(t, steps, "\n10.     ", "code right behind its number")
	assert.Equal(t, 1, strings.Count(steps, "A force times the cosine of its direction"))
	tenth, _, _ := strings.Cut(steps[strings.Index(steps, "\n10. ")+1:], "\n\n")
	for _, line := range strings.Split(tenth, "\n")[1:] {
		assert.True(t, strings.HasPrefix(line, "        ="), "%q", line)
	}
}

// wellFormed reads a document to its end.
func wellFormed(doc []byte) error {
	d := xml.NewDecoder(bytes.NewReader(doc))
	for {
		if _, err := d.Token(); errors.Is(err, io.EOF) {
			return nil
		} else if err != nil {
			return err
		}
	}
}

// node is an element read back.
type node struct {
	XMLName xml.Name
	Attrs   []xml.Attr `xml:",any,attr"`
	Text    string     `xml:",chardata"`
	Kids    []node     `xml:",any"`
}

func (n *node) attr(name string) string {
	for _, a := range n.Attrs {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

func (n *node) all(name string) []*node {
	var found []*node
	if n.XMLName.Local == name {
		found = append(found, n)
	}
	for i := range n.Kids {
		found = append(found, n.Kids[i].all(name)...)
	}
	return found
}

func (n *node) one(t *testing.T, name string) *node {
	t.Helper()
	found := n.all(name)
	require.Len(t, found, 1, name)
	return found[0]
}

// unpack reads a package back.
func unpack(t *testing.T, v *sets.Variant) map[string]*node {
	t.Helper()
	packed, err := QTI(v)
	require.NoError(t, err)
	z, err := zip.NewReader(bytes.NewReader(packed), int64(len(packed)))
	require.NoError(t, err)
	files := map[string]*node{}
	for _, f := range z.File {
		r, err := f.Open()
		require.NoError(t, err)
		content, err := io.ReadAll(r)
		require.NoError(t, err)
		var n node
		require.NoError(t, xml.Unmarshal(content, &n), f.Name)
		require.NotContains(t, files, f.Name)
		files[f.Name] = &n
	}
	return files
}

// No registry was found to carry the schema of QTI 3, so the package is held
// against its structure: the order of an item's parts and what each requires,
// after 1EdTech's QTI 3.0 information model (from memory).
var order = []string{"qti-response-declaration", "qti-outcome-declaration", "qti-item-body", "qti-response-processing", "qti-modal-feedback"}

var required = map[string][]string{
	"qti-assessment-item":        {"identifier", "title", "time-dependent"},
	"qti-response-declaration":   {"identifier", "cardinality", "base-type"},
	"qti-outcome-declaration":    {"identifier", "cardinality", "base-type"},
	"qti-text-entry-interaction": {"response-identifier"},
	"qti-choice-interaction":     {"response-identifier", "max-choices"},
	"qti-simple-choice":          {"identifier"},
	"qti-equal":                  {"tolerance-mode"},
	"qti-base-value":             {"base-type"},
	"qti-variable":               {"identifier"},
	"qti-set-outcome-value":      {"identifier"},
	"qti-modal-feedback":         {"outcome-identifier", "identifier", "show-hide"},
	"qti-assessment-test":        {"identifier", "title"},
	"qti-test-part":              {"identifier", "navigation-mode", "submission-mode"},
	"qti-assessment-section":     {"identifier", "title", "visible"},
	"qti-assessment-item-ref":    {"identifier", "href"},
	"img":                        {"src", "alt"},
	"resource":                   {"identifier", "type", "href"},
}

func TestPackageIsWhole(t *testing.T) {
	files := unpack(t, everyKind(t))
	listed := map[string]bool{"imsmanifest.xml": true}
	ids := map[string]bool{}
	manifest := files["imsmanifest.xml"]
	for _, r := range manifest.all("resource") {
		assert.False(t, ids[r.attr("identifier")], "two resources called %s", r.attr("identifier"))
		ids[r.attr("identifier")] = true
		assert.Contains(t, files, r.attr("href"))
		for _, f := range r.all("file") {
			assert.Contains(t, files, f.attr("href"))
			listed[f.attr("href")] = true
		}
	}
	for _, d := range manifest.all("dependency") {
		assert.True(t, ids[d.attr("identifierref")], "no resource %s", d.attr("identifierref"))
	}
	for name, doc := range files {
		assert.True(t, listed[name], "%s is in the package and not in its manifest", name)
		requires(t, name, doc)
		for _, ref := range doc.all("qti-assessment-item-ref") {
			assert.Contains(t, files, ref.attr("href"))
		}
		for _, img := range doc.all("img") {
			assert.Contains(t, files, path.Join(path.Dir(name), img.attr("src")))
		}
	}
}

func requires(t *testing.T, file string, n *node) {
	t.Helper()
	for _, name := range required[n.XMLName.Local] {
		assert.NotEmpty(t, n.attr(name), "%s: <%s> has no %s", file, n.XMLName.Local, name)
	}
	for i := range n.Kids {
		requires(t, file, &n.Kids[i])
	}
}

func TestItems(t *testing.T) {
	for name, doc := range unpack(t, everyKind(t)) {
		if doc.XMLName.Local != "qti-assessment-item" {
			continue
		}
		assert.Equal(t, namespace, doc.XMLName.Space)
		last := 0
		for i := range doc.Kids {
			at := slices.Index(order, doc.Kids[i].XMLName.Local)
			require.GreaterOrEqual(t, at, last, "%s: <%s> stands where it must not", name, doc.Kids[i].XMLName.Local)
			last = at
		}
		right := doc.one(t, "qti-correct-response").one(t, "qti-value").Text
		if choices := doc.all("qti-simple-choice"); choices != nil {
			checkChoices(t, name, doc, choices, right)
			continue
		}
		v, err := strconv.ParseFloat(right, 64)
		require.NoError(t, err)
		assert.True(t, accepts(t, doc, v), "%s refuses its own answer", name)
		assert.False(t, accepts(t, doc, v*1.03+3), "%s accepts what is far off", name)
	}
}

func checkChoices(t *testing.T, name string, doc *node, choices []*node, right string) {
	t.Helper()
	shown, ids := map[string]bool{}, map[string]bool{}
	for _, c := range choices {
		assert.False(t, shown[c.Text], "%s offers %s twice", name, c.Text)
		shown[c.Text], ids[c.attr("identifier")] = true, true
	}
	assert.True(t, ids[right], "%s: no choice is right", name)
	assert.GreaterOrEqual(t, len(choices), 3, name)
	feedback := doc.all("qti-modal-feedback")
	assert.Len(t, feedback, len(choices)-1, "%s: every wrong choice has its mistake", name)
	for _, f := range feedback {
		assert.True(t, ids[f.attr("identifier")])
		assert.NotEqual(t, right, f.attr("identifier"))
	}
}

// accepts works out an item's response processing as QTI defines its parts.
func accepts(t *testing.T, doc *node, v float64) bool {
	t.Helper()
	for _, e := range doc.one(t, "qti-or").all("qti-equal") {
		low, high, ok := strings.Cut(e.attr("tolerance"), " ")
		require.True(t, ok)
		a, err := strconv.ParseFloat(low, 64)
		require.NoError(t, err)
		b, err := strconv.ParseFloat(high, 64)
		require.NoError(t, err)
		x, err := strconv.ParseFloat(e.one(t, "qti-base-value").Text, 64)
		require.NoError(t, err)
		if v >= x-a && v <= x+b {
			return true
		}
	}
	return false
}

// What an item accepts is what the tutor accepts.
func TestItemsJudgeAsTheTutorDoes(t *testing.T) {
	v := everyKind(t)
	files := unpack(t, v)
	checked := 0
	for _, task := range v.Tasks {
		l, err := tutor.Open(task.Problem)
		require.NoError(t, err)
		for i := range l.Quantities {
			q := &l.Quantities[i]
			if !q.Answer {
				continue
			}
			doc := files["items/p"+itoa(task.Number)+"-"+q.Name+"-typed.xml"]
			require.NotNil(t, doc)
			half := tutor.NewWork(l, task.Problem.Settings).Band(q).Half
			for _, off := range []float64{-1.2, -0.8, 0, 0.8, 1.2} {
				x := q.True + off*half
				within := math.Abs(off) <= 1
				assert.Equal(t, within, accepts(t, doc, x), "%s of problem %d: %g", q.Name, task.Number, x)
				checked++
			}
		}
	}
	assert.Greater(t, checked, 50)
}
