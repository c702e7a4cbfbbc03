package tutor

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// What is left out of the plans comes to what one of those kept comes to, for
// whatever the wrong value is.
func TestPlansLeftOutComeToWhatOneKeptComesTo(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 11))
	for name, l := range map[string]*Lesson{"two forces": barge(t), "particle": crate(t).Lesson, "obtuse": pair(t, "460 N", "-42 deg", "210 N", "25 deg")} {
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
				for range 20 {
					wrong := anyWrong(rng, &l.Quantities[at])
					assertNothingNew(t, l, kept, all, wrong)
				}
			}
		}
		assert.Positive(t, dropped, name)
	}
}

// anyWrong is a value that q may come out at: an angle within a turn, a magnitude
// from none to three times the right one.
func anyWrong(rng *rand.Rand, q *lesson.Quantity) float64 {
	if q.IsAngle() {
		return rng.Float64()*360 - 180
	}
	return q.True * 3 * rng.Float64()
}

// assertNothingNew fails where one of all comes, from wrong, to a value that none
// of kept comes to.
func assertNothingNew(t *testing.T, l *Lesson, kept, all []plan, wrong float64) {
	t.Helper()
	come := func(p *plan) float64 {
		values := l.trials(0)
		return p.run(values, wrong, &expr.Tape{})
	}
	var values []float64
	for i := range kept {
		values = append(values, come(&kept[i]))
	}
	for i := range all {
		v := come(&all[i])
		if math.IsNaN(v) {
			continue
		}
		found := false
		for _, k := range values {
			found = found || math.Abs(k-v) <= 1e-6*max(1, math.Abs(v))
		}
		if !found {
			t.Errorf("%s from %s = %g: %g by a plan left out", l.Quantities[all[i].steps[len(all[i].steps)-1].quantity].Name, l.Quantities[all[i].at].Name, wrong, v)
		}
	}
}
