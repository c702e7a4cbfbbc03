package sheet

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/site/html"
	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
	"closingside/tutor/text"
)

// copyOf is a set of one bank problem.
func copyOf(t *testing.T, kind string, n int) Copy {
	t.Helper()
	set := &sets.Set{Title: "One", Version: "1", Settings: lesson.DefaultSettings(),
		Parts: []sets.Part{{Problem: kinds.All.ByName(kind).BankProblems()[n], Count: 1}}}
	v, err := set.Variant("")
	require.NoError(t, err)
	return Copy{Variant: v}
}

// What holds a particle is shown on the sheet and in the key, over the free-body
// diagram.
func TestSheetsShowTheSituation(t *testing.T) {
	c := copyOf(t, "particle-equilibrium", 0)
	n, err := c.problem(&c.Variant.Tasks[0])
	require.NoError(t, err)
	assert.Contains(t, n.String(), text.Say("figure.title.space"))
	assert.Contains(t, n.String(), text.Say("figure.title.freebody"))
	k, err := key(&c)
	require.NoError(t, err)
	assert.Contains(t, k.String(), text.Say("figure.title.space"))
}

// A key shows both of two solutions: their values, workings, and what mistakes
// give in either.
func TestKeysShowBothSolutions(t *testing.T) {
	for kind, n := range map[string]int{"missing-force": 3, "particle-equilibrium": 8} {
		c := copyOf(t, kind, n)
		k, err := key(&c)
		require.NoError(t, err)
		page := k.String()
		l, err := tutor.Open(c.Variant.Tasks[0].Problem)
		require.NoError(t, err)
		require.Len(t, l.Solutions(), 2)
		for _, s := range l.Solutions() {
			head := text.Say("method.case", "method", text.Say("sheet.key.mistakes"), "case", s.CaseText())
			assert.Equal(t, 1, strings.Count(page, html.Escape(head)), head)
			for i := range s.Quantities {
				if q := &s.Quantities[i]; q.Answer {
					assert.Contains(t, page, html.Escape(unbroken(s.Show(q, q.True, l.Problem.Settings.Answer))))
				}
			}
		}
	}
}
