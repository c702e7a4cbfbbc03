package lesson

import (
	"math"

	"closingside/statics"
)

// TurnRemainder is what an angle in degrees leaves of whole turns, in
// [−180°, 180°]; either end stays as it is. Nearly all angles lie there, and
// math.Remainder is slow.
func TurnRemainder(deg float64) float64 {
	if math.Abs(deg) <= 180 {
		return deg
	}
	return math.Remainder(deg, 360)
}

// Wrap brings a direction in degrees into (−180°, 180°].
func Wrap(deg float64) float64 {
	d := TurnRemainder(deg)
	if d == -180 {
		return 180
	}
	return d
}

// Wrap360 brings an angle in degrees into [0°, 360°).
func Wrap360(deg float64) float64 {
	d := math.Mod(deg, 360)
	if d < 0 {
		d += 360
	}
	return d
}

// Degrees is an angle in degrees, free of the noise of its conversion.
func Degrees(a statics.Angle) float64 {
	d := a.Degrees()
	if near := math.Round(d*1e9) / 1e9; math.Abs(d-near) <= 1e-14*math.Max(1, math.Abs(d)) {
		return near
	}
	return d
}
