package tutor

import (
	"testing"

	"closingside/statics/expr"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
)

// Next leads on from what the learner found: with β, θ is one sum away, and α is
// not wanted any more.
func TestNextLeadsOnFromWhatWasFound(t *testing.T) {
	rows := []struct {
		entries [][2]string
		next    string
	}{
		{nil, "phi"},
		{[][2]string{{"gamma", "87"}}, "R"},
		{[][2]string{{"gamma", "87"}, {"R", "682.6 N"}}, "alpha"},
		{[][2]string{{"gamma", "87"}, {"R", "682.6 N"}, {"beta", "63.17"}}, "theta"},
		{[][2]string{{"gamma", "87"}, {"R", "682.6 N"}, {"alpha", "29.83"}}, "theta"},
		{[][2]string{{"R", "682.6 N"}}, "phi"},
		{[][2]string{{"beta", "63.17"}}, "phi"},
		{[][2]string{{"Rx", "21.77 N"}, {"Ry", "682.3 N"}}, "R"},
		{[][2]string{{"Rx", "21.77 N"}}, "F1y"},
	}
	for _, r := range rows {
		w := NewWork(barge(t), lesson.DefaultSettings())
		for _, e := range r.entries {
			assert.Equal(t, verdict.Correct, w.Enter(e[0], e[1]).Verdict, e)
		}
		assert.Equal(t, r.next, w.Next(), r.entries)
	}
}

// In every kind the way to the end is whole: what is next can be found from what
// was found before.
func TestWhatIsNextLeadsToTheEnd(t *testing.T) {
	for _, k := range kinds.All {
		for _, p := range k.BankProblems() {
			l, err := Open(p)
			assert.NoError(t, err)
			w := NewWork(l, lesson.DefaultSettings())
			for n := 0; !w.Done() && n < len(l.Quantities); n++ {
				q := l.Quantity(w.Next())
				if !assert.NotNil(t, q, p.Story) {
					break
				}
				entry := lesson.Digits{Magnitude: 6, Angle: 4}.Written(q.Dim, q.True)
				if q.Equation {
					entry = expr.Plain(q.Routes[0].Tree, l.Symbol) + " = 0"
				}
				assert.Equal(t, verdict.Correct, w.Enter(q.Name, entry).Verdict, "%s %s %s", p.Story, q.Name, entry)
			}
			assert.True(t, w.Done(), p.Story)
		}
	}
}
