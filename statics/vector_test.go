package statics

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/spatial/r2"
	"pgregory.net/rapid"
)

// drawSide is in the ratio of at most 1000 to 1, as lessons have them.
var drawSide = rapid.Float64Range(1, 1000)

var drawAngle = rapid.Custom(func(t *rapid.T) Angle { return Angle(rapid.Float64Range(-720, 720).Draw(t, "degrees")) * Degree })

func TestPolarAndDirection(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f, a := drawSide.Draw(t, "f"), drawAngle.Draw(t, "direction")
		v := Polar(f, a)
		require.InEpsilon(t, f, r2.Norm(v), 1e-15)
		back, ok := Direction(v)
		require.True(t, ok)
		require.InDelta(t, 0, float64((back - a).Normalized()), 1e-14)
		opposite, ok := Direction(Polar(-f, a))
		require.True(t, ok)
		require.InDelta(t, math.Pi, float64((opposite - a).Positive()), 1e-14)
	})
	for _, v := range []r2.Vec{{}, {X: math.NaN()}, {Y: math.Inf(1)}} {
		_, ok := Direction(v)
		assert.False(t, ok, "Direction(%v)", v)
	}
	a, ok := Direction(r2.Vec{X: -3, Y: math.Copysign(0, -1)})
	assert.True(t, ok && a == 180*Degree, "−180° is written 180°, got %v", a)
}

// Forces that close a polygon have no resultant, in whatever direction it lies.
func TestResultantOfAClosedPolygon(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 6).Draw(t, "n")
		start, f := drawAngle.Draw(t, "start"), drawSide.Draw(t, "f")
		var forces []r2.Vec
		for i := range n { // the sides of a regular polygon
			forces = append(forces, Polar(f, start+Angle(i)*360*Degree/Angle(n)))
		}
		if got := Resultant(forces...); got != (r2.Vec{}) {
			t.Fatalf("Resultant = %v, want none", got)
		}
		v := r2.Vec{X: f, Y: -f / 3}
		require.InDelta(t, f, Resultant(append(forces, v)...).X, 1e-13*f*float64(n+1))
	})
}

func TestBetween(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := drawAngle.Draw(t, "a")
		apart := rapid.Float64Range(0, 180).Draw(t, "apart")
		side := rapid.SampledFrom([]Angle{1, -1}).Draw(t, "side")
		f, g := drawSide.Draw(t, "f"), drawSide.Draw(t, "g")
		got := Between(Polar(f, a), Polar(g, a+side*Angle(apart)*Degree))
		require.InDelta(t, apart, got.Degrees(), 1e-12)
	})
	assert.Equal(t, 90.0, Between(Polar(3, 25*Degree), Polar(4, 115*Degree)).Degrees())
	assert.Zero(t, Between(r2.Vec{}, r2.Vec{X: 1}))
}
