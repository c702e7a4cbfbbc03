package trial

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// opened is a problem of a kind's bank, ready to be worked.
func opened(t *testing.T, kind string, i int) *tutor.Lesson {
	t.Helper()
	l, err := tutor.Open(kinds.All.ByName(kind).BankProblems()[i])
	require.NoError(t, err)
	return l
}

// After a value was put right, what was found for that is not found once more.
func TestWhatStandsRightIsNotFoundAgain(t *testing.T) {
	h, l := DefaultHabits(), opened(t, "oblique-components", 0)
	entries := 0
	for i := range 200 {
		p := newLearner(l, &h, die{lesson.NewDraw(7, uint64(i))})
		p.study()
		right := map[string]bool{}
		for _, a := range p.work.Past {
			entries++
			assert.False(t, right[a.Quantity], "learner %d finds %s again: %s", i, a.Quantity, a.Entry)
			right[a.Quantity] = a.Verdict == verdict.Correct
		}
	}
	assert.Greater(t, entries, 1000)
}

// Nobody writes sixty minutes, and what is left of equal forces is nothing.
func TestWrittenAsPeopleWrite(t *testing.T) {
	h, l := DefaultHabits(), opened(t, "oblique-components", 0)
	p := newLearner(l, &h, die{lesson.NewDraw(7, 0)})
	p.keep = keeping{}
	alpha := l.Quantity("alpha")
	for v, want := range map[float64]string{36.5: "36.3", 46.985: "46.59", 46.998: "", 47: "", 47.02: "47.01"} {
		got, ok := p.miswritten(alpha, v, "minutes-as-decimals")
		assert.Equal(t, want != "", ok, v)
		if want != "" {
			assert.Contains(t, got, want, v)
		}
	}
	assert.Contains(t, []string{"0.000", "0"}, p.digits(l.Quantity("Fu"), 0))
	assert.Regexp(t, `^0(\.000)?( N)?$`, p.written(l.Quantity("Fu"), 860-(860*0.9999999999999999)))
}
