package statics

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestDirectionsPutAnotherWay(t *testing.T) {
	for _, row := range []struct {
		degrees                   Angle
		besideX, besideY, bearing string
	}{
		// 47° and 75° are the bearings N43E and N15E of published record calc21-x53.
		{47, "47° above +x", "43° right of +y", "N 43° E"},
		{75, "75° above +x", "15° right of +y", "N 15° E"},
		{113.6, "66.4° above −x", "23.6° left of +y", "N 23.6° W"},
		{-150, "30° below −x", "60° left of −y", "S 60° W"},
		{330, "30° below +x", "60° right of −y", "S 60° E"},
		{0, "0° above +x", "90° right of +y", "N 90° E"},
		{90, "90° above +x", "0° left of +y", "N"},
		{180, "0° below −x", "90° left of +y", "N 90° W"},
		{270, "90° below +x", "0° right of −y", "S"},
		{765, "45° above +x", "45° right of +y", "N 45° E"},
	} {
		a := row.degrees * Degree
		t.Run(a.String(), func(t *testing.T) {
			assert.Equal(t, row.besideX, AsBeside(a, MinusX).String())
			assert.Equal(t, row.besideY, AsBeside(a, PlusY).String())
			assert.Equal(t, row.bearing, AsBearing(a).String())
		})
	}
}

func TestPuttingADirectionAnotherWayKeepsIt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := drawAngle.Draw(t, "a")
		for _, h := range []Heading{AsBeside(a, PlusX), AsBeside(a, MinusY), AsBearing(a)} {
			require.InDelta(t, 0, float64((h.Angle() - a).Normalized()), 2e-14, "%v for %v", h, a)
			require.GreaterOrEqual(t, h.Turn, Angle(0))
			again, ok := Toward(h.Form, h.Axis, h.toward(), h.Turn)
			require.True(t, ok, "%v", h)
			require.Equal(t, h, again)
		}
	})
}
