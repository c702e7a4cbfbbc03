package lesson

import (
	"math"

	"closingside/statics"
)

// Values of a quantity are compared as they are wrong alike: directions around
// the circle, angles of the figure without their signs.

// Circular tells whether values of q are compared around the circle.
func (q *Quantity) Circular() bool { return q.Dim == statics.DimAngle }

// Epsilon is how far apart two values of q may be and still be one.
func (q *Quantity) Epsilon() float64 { return 1e-9 * max(1, math.Abs(q.True)) }

// TurnRemainder is what an angle leaves of whole turns, in [−180°, 180°]. Nearly all lie
// there, and math.Remainder is slow.
func TurnRemainder(deg float64) float64 {
	if math.Abs(deg) <= 180 {
		return deg
	}
	return math.Remainder(deg, 360)
}

// Wrap brings a direction into (−180°, 180°].
func Wrap(deg float64) float64 {
	d := TurnRemainder(deg)
	if d == -180 {
		return 180
	}
	return d
}

// Fold brings a value into the range in which wrong values of q are compared:
// a direction into (−180°, 180°], an angle of the figure into [0°, 360°), its
// sign left out unless it is all that is wrong. A wrong angle is the same
// mistake a turn further on.
func (q *Quantity) Fold(v float64) float64 {
	switch {
	case q.Turns:
		return Wrap(v)
	case q.Circular():
		size := math.Abs(v)
		if size >= 360 {
			size = math.Mod(size, 360)
		}
		if v < 0 && math.Abs(size-q.True) < signCounts {
			return -size
		}
		return size
	}
	return v
}

// IsNegativeAngle tells whether v is an angle of the figure below zero.
func (q *Quantity) IsNegativeAngle(v float64) bool { return v < 0 && q.Circular() && !q.Turns }

// signCounts is how near the truth the size of an angle lies, in degrees, where
// its sign alone is wrong.
const signCounts = 2.0

// Gap is the distance of two values as wrong values of q are compared.
func (q *Quantity) Gap(a, b float64) float64 {
	if !q.Circular() {
		return math.Abs(a - b)
	}
	d := math.Abs(TurnRemainder(q.Fold(a) - q.Fold(b)))
	if !q.Turns { // −30° is 330°, and 30° with the sign left out
		d = min(d, math.Abs(TurnRemainder(a-b)))
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

// Wrap360 brings an angle into [0°, 360°).
func Wrap360(deg float64) float64 {
	d := math.Mod(deg, 360)
	if d < 0 {
		d += 360
	}
	return d
}

// Within tells whether v lies from lo to hi, counter-clockwise for a direction.
func (q *Quantity) Within(v, lo, hi float64) bool {
	if q.Turns {
		return Wrap360(v-lo) <= Wrap360(hi-lo)
	}
	return lo <= v && v <= hi
}
