package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// What is made ahead, in however small pieces, and whatever is given up on the
// way, changes no reply.
func TestWarmingChangesNoReply(t *testing.T) {
	for _, k := range kinds.All {
		t.Run(k.Name, func(t *testing.T) {
			p := k.BankProblems()[0]
			cold, err := Open(p)
			require.NoError(t, err)
			warm, err := Open(p)
			require.NoError(t, err)
			a, b := NewWork(cold, lesson.DefaultSettings()), NewWork(warm, lesson.DefaultSettings())
			rests := 0
			for n := range cold.Quantities {
				q := &cold.Quantities[n]
				if q.Given || q.Equation {
					continue
				}
				for pieces := 0; ; pieces++ {
					left := 2
					if b.Warm(func() bool { left--; return left < 0 }) {
						break
					}
					rests++
					if pieces == 3 {
						b.Cool()
					}
				}
				for _, v := range append(cold.WrongValues(q, a.Settings)[:3], WrongValue{Shown: "1234.5"}) {
					assert.Equal(t, a.Enter(q.Name, v.Shown), b.Enter(q.Name, v.Shown), "%s = %s", q.Name, v.Shown)
				}
				right := cold.right(q, a.Settings.DigitsOf(q))
				assert.Equal(t, a.Enter(q.Name, right), b.Enter(q.Name, right))
			}
			assert.Greater(t, rests, 10, "made in one go")
		})
	}
}
