package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// A value that was rounded on the way is written down wrongly, too: with three
// digits kept, 360·cos 44° is 360·0.719 = 258.8.
func TestWrittenWronglyAfterRounding(t *testing.T) {
	for _, row := range []struct{ slip, entry string }{
		{"prefix", "258800 N"},
		{"decimal-place", "2588 N"},
		{"unit-system", "1151 N"}, // 258.8 · 4.448
		{"digits-swapped", "285.8 N"},
	} {
		t.Run(row.slip, func(t *testing.T) {
			r := NewWork(pair(t, "330 N", "-71 deg", "360 N", "-44 deg"), lesson.DefaultSettings()).Enter("F2x", row.entry)
			require.NotEmpty(t, r.Slips)
			if row.slip != "unit-system" { // so rare that it is listed first, and not named
				assert.Equal(t, verdict.SlipFound, r.Verdict)
			}
			assert.Contains(t, r.Slips[0].IDs, row.slip)
		})
	}
}

// A zero exchanged to the front stands there or is left away: 330·sin(−173°) is
// −40.22.
func TestAZeroExchangedToTheFront(t *testing.T) {
	for _, entry := range []string{"-04.22 N", "-4.22 N"} {
		r := NewWork(pair(t, "490 N", "-93 deg", "330 N", "-173 deg"), lesson.DefaultSettings()).Enter("F2y", entry)
		require.NotEmpty(t, r.Slips, entry)
		assert.Equal(t, verdict.SlipFound, r.Verdict, entry)
		assert.Equal(t, []string{"digits-swapped"}, r.Slips[0].IDs, entry)
	}
}

// A unit mistaken, and a slip in writing what came of it: P cos 25° is 308.1 N.
func TestTwoSlipsInWriting(t *testing.T) {
	for _, row := range []struct{ entry, slips string }{
		{"0.3801 N", "digits-swapped+prefix"},
		{"3.081 N", "decimal-place+prefix"},
		{"69.72 N", "digits-swapped+unit-system"}, // 69.27 lb
	} {
		r := NewWork(barge(t), lesson.DefaultSettings()).Enter("F1x", row.entry)
		require.NotEmpty(t, r.Slips, row.entry)
		assert.Contains(t, r.Slips[0].IDs, row.slips, row.entry)
	}
}
