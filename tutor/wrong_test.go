package tutor

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/lesson"
	"closingside/tutor/slips"
)

// The wrong values of a problem worked by hand: 340 N at 25° and 610 N at
// 118°, so that cos γ = cos 87° = 0.052336.
func TestWrongValues(t *testing.T) {
	l := barge(t)
	r := l.Quantity("R")
	all := l.WrongValues(r, lesson.DefaultSettings())
	assert.True(t, slices.IsSortedFunc(all, func(a, b WrongValue) int { return int(math.Copysign(1, a.Value-b.Value)) }))
	for _, row := range []struct {
		id    string
		value float64
	}{
		{"cosine-sign", 713.73},        // √(115600 + 372100 + 21709)
		{"two-missing", 690.54},        // √(487700 − 10854.5)
		{"root-missing", 465991},       // 487700 − 21709
		{"cross-term-missing", 698.36}, // √487700
		{"magnitudes-added", 950},
		{"magnitudes-subtracted", 270},
		{"prefix", 682635.5},
	} {
		t.Run(row.id, func(t *testing.T) {
			i := slices.IndexFunc(all, func(v WrongValue) bool {
				return slices.Contains(v.IDs, row.id) && math.Abs(v.Value-row.value) < 1e-5*row.value
			})
			require.GreaterOrEqual(t, i, 0)
			assert.False(t, all[i].InHead(r))
			assert.Positive(t, all[i].Weight)
		})
	}
	for _, v := range all {
		assert.Greater(t, math.Abs(v.Value-r.True), 0.005*r.True, "inside the band: %v", v)
	}
	sum := 0.0
	for _, v := range all {
		sum += v.Weight
	}
	assert.LessOrEqual(t, sum, 1+1e-9)
	assert.Greater(t, sum, 0.8)
}

func TestEverySlipHasAGroupAndATitle(t *testing.T) {
	l := barge(t)
	for _, s := range slips.Catalogue() {
		assert.Contains(t, slips.Groups(), slips.GroupOf(s.ID))
		assert.NotEmpty(t, l.SlipTitle(s.ID))
	}
	assert.Equal(t, l.SlipTitle("two-missing")+" + "+l.SlipTitle("root-missing"), l.SlipTitle("two-missing+root-missing"))
	assert.Panics(t, func() { slips.GroupOf("no such slip") })
}
