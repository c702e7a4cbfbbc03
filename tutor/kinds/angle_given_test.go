package kinds

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/statics"
	"closingside/tutor/entry"
	"closingside/tutor/figure"
)

// A figure marks the angle that the statement gives, not another way round.
func TestAFigureMarksTheAngleGiven(t *testing.T) {
	for heading, want := range map[string]struct {
		turn  float64
		label string
	}{
		"200 deg": {200, "200°"}, "-65 deg": {-65, "65°"}, "35 deg": {35, "35°"}, "400 deg": {40, "40°"},
		"20 deg clockwise from +y": {-20, "20°"}, "250 deg clockwise": {-250, "250°"},
	} {
		h, bad := entry.ReadHeading(heading)
		require.Nil(t, bad, heading)
		f := drawn(figure.Label{}, "P", h, statics.Polar(1, h.Angle()))
		assert.InDelta(t, want.turn, f.Turn.Degrees(), 1e-9, heading)
		assert.Equal(t, figure.Plain(want.label), f.Angle, heading)
	}
}
