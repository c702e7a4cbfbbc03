package statics

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// heading drops the ok of a constructor that must succeed.
func heading(h Heading, ok bool) Heading {
	if !ok {
		panic("not a heading")
	}
	return h
}

func TestHeadings(t *testing.T) {
	for _, row := range []struct {
		h       Heading
		written string
		degrees float64 // from +x, in [0, 360)
	}{
		{Heading{}, "0° from +x", 0},
		{heading(From(PlusX, 25*Degree, CounterClockwise)), "25° from +x", 25},
		{heading(From(PlusX, -25*Degree, CounterClockwise)), "−25° from +x", 335},
		{heading(From(PlusX, 400*Degree, CounterClockwise)), "400° from +x", 40},
		{heading(From(PlusX, 25*Degree, Clockwise)), "25° clockwise from +x", 335},
		{heading(From(PlusY, 20*Degree, Clockwise)), "20° clockwise from +y", 70},
		{heading(From(MinusY, 20*Degree, CounterClockwise)), "20° counter-clockwise from −y", 290},
		{heading(Toward(Beside, MinusX, MinusY, 30*Degree)), "30° below −x", 210},
		{heading(Toward(Beside, MinusX, PlusY, 30*Degree)), "30° above −x", 150},
		{heading(Toward(Beside, PlusY, MinusX, 15*Degree)), "15° left of +y", 105},
		{heading(Toward(Beside, MinusY, PlusX, 15*Degree)), "15° right of −y", 285},
		{heading(FromSlope(3, 4, PlusY, PlusX)), "3:4 up right", 36.86989764584402},
		{heading(FromSlope(3, 4, PlusY, MinusX)), "3:4 up left", 143.13010235415598},
		{heading(FromSlope(5, 12, MinusY, MinusX)), "5:12 down left", 202.61986494804043},
		{heading(FromSlope(1, 0, MinusY, PlusX)), "1:0 down right", 270},
		{heading(FromSlope(0, 2.5, PlusY, MinusX)), "0:2.5 up left", 180},
		// The compass rows are directions printed in the published check values:
		// calc21-x53 (N43E, N15E), up2-a5 and up5-p5, with their std_angle_deg.
		{heading(Toward(Bearing, North, East, 43*Degree)), "N 43° E", 47},
		{heading(Toward(Bearing, North, East, 15*Degree)), "N 15° E", 75},
		{heading(Toward(Bearing, South, West, 62.5*Degree)), "S 62.5° W", 207.5},
		{heading(Toward(Bearing, North, East, 0)), "N", 90},
		{heading(Toward(Compass, East, North, 37*Degree)), "37° N of E", 37},
		{heading(Toward(Compass, North, West, 69*Degree)), "69° W of N", 159},
		{heading(Toward(Compass, South, East, 28*Degree)), "28° E of S", 298},
		{heading(Toward(Compass, North, East, 32*Degree)), "32° E of N", 58},
		{heading(Toward(Compass, West, North, 0)), "W", 180},
		{heading(FromNorth(0)), "azimuth 0°", 90},
		{heading(FromNorth(120 * Degree)), "azimuth 120°", 330},
		{heading(FromNorth(360 * Degree)), "azimuth 360°", 90},
	} {
		t.Run(row.written, func(t *testing.T) {
			assert.Equal(t, row.written, row.h.String())
			assert.InDelta(t, row.degrees, row.h.Angle().Positive().Degrees(), 1e-12)
		})
	}
}

func TestHeadingsRefused(t *testing.T) {
	refused := func(name string, _ Heading, ok bool) {
		t.Run(name, func(t *testing.T) { assert.False(t, ok) })
	}
	nan := Angle(math.NaN())
	h, ok := From(PlusX, Angle(math.Inf(1)), Clockwise)
	refused("infinite turn", h, ok)
	h, ok = Toward(Beside, MinusX, PlusX, 30*Degree)
	refused("30° right of −x", h, ok)
	h, ok = Toward(Beside, MinusX, MinusX, 30*Degree)
	refused("toward itself", h, ok)
	h, ok = Toward(Bearing, East, West, 30*Degree)
	refused("E 30 W", h, ok)
	h, ok = Toward(Bearing, North, East, 90.1*Degree)
	refused("N 90.1 E", h, ok)
	h, ok = Toward(Compass, East, North, -1*Degree)
	refused("−1° N of E", h, ok)
	h, ok = Toward(Compass, East, North, nan)
	refused("NaN° N of E", h, ok)
	h, ok = Toward(Azimuth, North, East, 30*Degree)
	refused("an azimuth toward", h, ok)
	h, ok = FromSlope(-3, 4, PlusY, PlusX)
	refused("negative rise", h, ok)
	h, ok = FromSlope(0, 0, PlusY, PlusX)
	refused("no slope at all", h, ok)
	h, ok = FromSlope(3, math.Inf(1), PlusY, PlusX)
	refused("infinite run", h, ok)
	h, ok = FromSlope(3, 4, PlusX, PlusY)
	refused("axes exchanged", h, ok)
	h, ok = FromNorth(-1 * Degree)
	refused("azimuth −1", h, ok)
	h, ok = FromNorth(nan)
	refused("azimuth NaN", h, ok)
}

// A whole number of degrees in stays whole on the way out, in every form.
func TestHeadingsKeepWholeDegrees(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		axis := Axis(rapid.IntRange(0, 3).Draw(t, "axis"))
		turn := rapid.IntRange(0, 90).Draw(t, "turn")
		side := rapid.SampledFrom([]int{1, 3}).Draw(t, "side")
		h, ok := Toward(Beside, axis, (axis+Axis(side))&3, Angle(turn)*Degree)
		require.True(t, ok)
		want := float64(int(axis)*90 + (2-side)*turn)
		if got := h.Angle().Degrees(); got != want {
			t.Fatalf("%v is %v° from +x, want %v°", h, got, want)
		}
	})
}
