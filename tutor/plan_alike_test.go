package tutor

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// What is left out of the plans comes to what one of those kept comes to, whatever
// the wrong value is: all but once in five thousand, where an angle that comes out
// obtuse in a narrow range of wrong values lies between those that are tried.
func TestPlansLeftOutComeToWhatOneKeptComesTo(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 11))
	looked, missed := 0, 0
	for _, l := range []*Lesson{barge(t), crate(t).Lesson, pair(t, "460 N", "-42 deg", "210 N", "25 deg"), pair(t, "220 N", "-79 deg", "510 N", "70 deg")} {
		dropped := 0
		for q := range l.Quantities {
			for at := range l.Quantities {
				if q == at {
					continue
				}
				l.ready()
				all := l.draftPlans(q, at, 0)
				kept := l.unlike(all, 0)
				dropped += len(all) - len(kept)
				for range 200 {
					wrong := anyWrong(rng, &l.Quantities[at])
					looked += len(all)
					missed += l.onlyIn(all, kept, wrong)
				}
			}
		}
		assert.Positive(t, dropped)
	}
	t.Logf("%d of %d values missed", missed, looked)
	assert.Less(t, missed, looked/5_000)
}

// anyWrong is a value that q may come out at: an angle within a turn, a magnitude
// from none to three times the right one.
func anyWrong(rng *rand.Rand, q *lesson.Quantity) float64 {
	if q.IsAngle() {
		return rng.Float64()*360 - 180
	}
	return q.True * 3 * rng.Float64()
}

// onlyIn counts those of all that come, from wrong, to a value that none of kept
// comes to.
func (l *Lesson) onlyIn(all, kept []plan, wrong float64) int {
	come := func(p *plan) float64 { return p.run(l.trials(0), wrong, &expr.Tape{}) }
	var values []float64
	for i := range kept {
		values = append(values, come(&kept[i]))
	}
	n := 0
	for i := range all {
		v := come(&all[i])
		found := math.IsNaN(v) || slices.ContainsFunc(values, func(k float64) bool { return math.Abs(k-v) <= 1e-6*max(1, math.Abs(v)) })
		if !found {
			n++
		}
	}
	return n
}
