package lesson

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// Half a unit is rounded away from zero, as on paper, also where binary numbers
// have it exactly or just miss it.
func TestHalfIsRoundedAwayFromZero(t *testing.T) {
	for _, r := range []struct {
		v      float64
		places int
		want   float64
	}{
		{8.25, 1, 8.3}, {-8.25, 1, -8.3}, {0.125, 2, 0.13}, {2.675, 2, 2.68}, {8.249999999999998, 1, 8.3}, {8.2499, 1, 8.2},
		{0.5, 0, 1}, {0.05, 0, 0}, {0.4999, 0, 0}, {9.96, 1, 10}, {0, 2, 0}, {682.6354, 1, 682.6}, {1250, -2, 1300}, {1e-30, 4, 0}, {123456789.25, 12, 123456789.25},
	} {
		assert.Equal(t, r.want, RoundPlaces(r.v, r.places), "%v to %d", r.v, r.places)
	}
	assert.True(t, math.IsNaN(RoundPlaces(math.NaN(), 1)))
}

// The power of the first digit is that of the number as it is written, next to
// a power of ten too.
func TestLeadingDigit(t *testing.T) {
	for n := -9; n <= 12; n++ {
		p := math.Pow10(n)
		for v, want := range map[float64]int{p: n, p * (1 - 1e-6): n - 1, p * (1 - 1e-16): n, p * (1 + 1e-6): n, 9.99 * p: n, -3 * p: n} {
			assert.Equal(t, want, DecimalExponent(v), "%v", v)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64Range(1e-300, 1e300).Draw(t, "v")
		written := strconv.FormatFloat(v, 'e', 14, 64)
		want, err := strconv.Atoi(written[strings.Index(written, "e")+1:])
		if err != nil || DecimalExponent(v) != want {
			t.Fatalf("%s: %d", written, DecimalExponent(v))
		}
	})
}
