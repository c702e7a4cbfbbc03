package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// What right entries show of the digits kept tells how a wrong one is read:
// sines and cosines of three digits here, worked by hand.
func TestRightEntriesTellHowManyDigitsAreKept(t *testing.T) {
	source := kinds.ConcurrentForcesSource("Three lines.", kinds.ForceSource("A", "760 N", "147 deg"), kinds.ForceSource("B", "500 N", "37 deg"), kinds.ForceSource("C", "350 N", "-62 deg"))
	entered := func(entries ...[2]string) *Work {
		w := NewWork(solvedBy(t, source), lesson.DefaultSettings())
		for _, e := range entries {
			require.Equal(t, verdict.Correct, w.Enter(e[0], e[1]).Verdict, e[0])
		}
		return w
	}
	three := entered([2]string{"F1x", "-637.6"}, [2]string{"F1y", "414.2"}, [2]string{"F2x", "399.5"}, [2]string{"F2y", "301.0"})
	all := entered([2]string{"F1x", "-637.39"}, [2]string{"F1y", "413.93"}, [2]string{"F2x", "399.32"}, [2]string{"F2y", "300.91"})
	lean := three.leaning()
	assert.Greater(t, lean.Three, 5*max(lean.Four, lean.Full))
	lean = all.leaning()
	assert.Greater(t, lean.Full, 5*max(lean.Four, lean.Three))
	share := func(w *Work) float64 { // the cosine for the sine, 0.469 of it
		r := w.Enter("F3y", "-164.2")
		require.NotEmpty(t, r.Slips)
		require.Contains(t, r.Slips[0].IDs, "sine-cosine-swapped")
		return r.Slips[0].Probability
	}
	assert.Greater(t, share(three), share(entered()))
	assert.Less(t, share(all), share(entered()))
}
