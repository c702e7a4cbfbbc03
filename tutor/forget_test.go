package tutor

import (
	"math"
	"runtime"
	"strconv"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// What was made for checks is gone once it is forgotten, half-made lists and
// that of the other solution among them, and the replies are the same after it.
func TestForget(t *testing.T) {
	for _, kind := range kinds.All {
		t.Run(kind.Name, func(t *testing.T) {
			l, err := Open(kind.BankProblems()[0])
			require.NoError(t, err)
			again, err := Open(kind.BankProblems()[0])
			require.NoError(t, err)
			kept, forgetful := NewWork(l, lesson.DefaultSettings()), NewWork(again, lesson.DefaultSettings())
			before := goroutines()
			for i := range l.Quantities {
				q := &l.Quantities[i]
				if q.Given || q.Equation {
					continue
				}
				for _, v := range []float64{q.True*1.13 + 7, q.True} {
					entry := strconv.FormatFloat(math.Round(v*100)/100, 'f', -1, 64)
					require.Equal(t, kept.Enter(q.Name, entry), forgetful.Enter(q.Name, entry))
					pieces := 5
					forgetful.Warm(func() bool { pieces--; return pieces < 0 })
					forgetful.Forget()
				}
			}
			for _, one := range again.Solutions() {
				assert.Nil(t, one.prep)
			}
			assert.Nil(t, forgetful.kept)
			assert.Nil(t, forgetful.states)
			assert.LessOrEqual(t, goroutines(), before, "no half-made list waits")
			assert.Equal(t, kept.Done(), forgetful.Done())
		})
	}
}

// goroutines counts them once their number has stood still: those of an
// earlier test, and the runtime's own, may be about to end.
func goroutines() int {
	last := runtime.NumGoroutine()
	for still, left := 0, 200; still < 10 && left > 0; left-- {
		time.Sleep(5 * time.Millisecond)
		now := runtime.NumGoroutine()
		if still++; now != last {
			last, still = now, 0
		}
	}
	return last
}
