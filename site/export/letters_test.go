package export

import (
	"testing"

	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestLettersStandBelowTheLine: Markdown and items have subscripts where they tell of
// a component in a sentence; what is shown as code or read aloud stays plain.
func TestLettersStandBelowTheLine(t *testing.T) {
	problem := kinds.All.ByName("components").BankProblems()[0]
	set := &sets.Set{Title: "Lines", Version: "1", Settings: lesson.DefaultSettings(), Parts: []sets.Part{{Problem: problem, Count: 1, Marks: 1}}}
	variant, err := set.Variant("")
	require.NoError(t, err)
	l, err := tutor.Open(problem)
	require.NoError(t, err)
	x := l.Quantity("Fx")
	letter := l.Symbol("Fx").Letter

	files, err := Markdown("lines", variant)
	require.NoError(t, err)
	page := string(files[0].Content)
	assert.Contains(t, page, "<i>"+letter+"</i><sub><i>x</i></sub> = "+l.Show(x, x.True, set.Settings.Answer), "an answer")
	assert.Contains(t, page, "    "+letter+"x = ", "code")

	s := stem{lesson: l, work: tutor.NewWork(l, set.Settings), q: x, title: letter + "x"}
	item := string(document(s.typed("one")))
	assert.Contains(t, item, "<i>"+letter+"</i><sub><i>x</i></sub>, "+l.Sentence(x, "what"))
	assert.Contains(t, item, `title="`+letter+`x"`)
}
