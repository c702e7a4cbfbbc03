package tutor

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
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
		assert.Equal(t, r.want, roundPlaces(r.v, r.places), "%v to %d", r.v, r.places)
	}
	assert.True(t, math.IsNaN(roundPlaces(math.NaN(), 1)))
}
