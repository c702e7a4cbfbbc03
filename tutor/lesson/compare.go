package lesson

import (
	"math"

	"closingside/statics"
)

// Two values of a quantity are so far apart (Apart) as a right one and an entry
// are, or (Gap) as two wrong ones are: those are compared as they are wrong alike,
// directions around the circle, angles of the figure without their signs. Values
// and distances are in degrees for angles, else in the unit of UnitOf.

// Circular tells whether values of q are compared around the circle: whether it is
// an angle.
func (q *Quantity) Circular() bool { return q.Dim == statics.DimAngle }

// Epsilon is how far apart two values of q may be, from rounding in the machine,
// and still be one.
func (q *Quantity) Epsilon() float64 { return 1e-9 * max(1, math.Abs(q.True)) }

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

// Gap is the distance of two values of q as wrong ones: after Fold, and the signs
// of angles of the figure left out.
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

// Within tells whether v lies from lo to hi, counter-clockwise for a direction.
func (q *Quantity) Within(v, lo, hi float64) bool {
	if q.Turns {
		return Wrap360(v-lo) <= Wrap360(hi-lo)
	}
	return lo <= v && v <= hi
}

// Apart is the distance from a to b in q's unit: around the circle for an angle,
// plain otherwise.
func (q *Quantity) Apart(a, b float64) float64 {
	d := math.Abs(a - b)
	if q.Dim == statics.DimAngle {
		d = math.Abs(TurnRemainder(a - b))
	}
	return d
}
