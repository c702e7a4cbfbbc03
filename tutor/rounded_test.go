package tutor

import (
	_ "embed"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

//go:embed testdata/rounding_chain.txt
var roundingChain string

// Books round on the way too: every printed answer that a rounded or cut
// intermediate moved is right, or named as early rounding. The sources stand
// in the rows. A rounded given of the recast rows is no step of this lesson.
func TestPrintedRoundingChains(t *testing.T) {
	rows := 0
	for _, line := range strings.Split(strings.TrimSpace(roundingChain), "\n") {
		if strings.HasPrefix(line, "#") {
			continue
		}
		rows++
		f := strings.Split(line, " | ")
		require.Len(t, f, 8, line)
		t.Run(f[0], func(t *testing.T) {
			got := NewWork(pair(t, f[2], f[3], f[4], f[5]), DefaultSettings()).Enter(f[6], f[7])
			assert.Contains(t, []Verdict{Correct, EarlyRounding}, got.Verdict, "%+v", got)
			t.Log(got.Verdict, got.Feedback)
		})
	}
	assert.Equal(t, 7, rows)
}

func TestEarlyRoundingNamesTheIntermediate(t *testing.T) {
	rows := []struct {
		name, quantity, entry string
		what                  string
		digits, keep          int
	}{
		// sin β = 610 · sin 87° / 682.635 = 0.89237
		{"a sine to one digit", "beta", "64.16°", "sin β", 1, 4},
		{"a sine to two digits", "beta", "62.87°", "sin β", 2, 4},
		{"a sine to one digit, in the head", "theta", "89.16°", "sin β", 1, 4},
		// cos 87° = 0.052336, to one digit 0.05: R = 684.2 lies within 0.5 %
		{"inside the band", "R", "684.2 N", "", 0, 0},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			got := NewWork(barge(t), DefaultSettings()).Enter(r.quantity, r.entry)
			if r.what == "" {
				assert.Equal(t, Correct, got.Verdict, "%+v", got)
				return
			}
			require.Equal(t, EarlyRounding, got.Verdict, "%+v", got)
			assert.Equal(t, r.what, got.Rounded.What)
			assert.Equal(t, r.digits, got.Rounded.Digits)
			assert.Equal(t, r.keep, got.Rounded.Keep)
			assert.Contains(t, got.Feedback, r.what)
		})
	}
}
