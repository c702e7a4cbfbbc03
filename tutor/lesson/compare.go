package lesson

import (
	"math"

	"closingside/statics"
)

// An entry and a right value lie apart by their Distance; two wrong values by their
// FoldedDistance, which is none where they are wrong alike: angles of the figure are
// compared without their signs. Values and distances are in degrees for angles, else
// in the unit of UnitOf.

// IsAngle tells whether q is an angle, whose values are compared around the circle.
func (q *Quantity) IsAngle() bool { return q.Dim == statics.DimAngle }

// Epsilon is how far apart two values of q may be, from rounding in the machine,
// and still be one.
func (q *Quantity) Epsilon() float64 { return 1e-9 * max(1, math.Abs(q.True)) }

// Distance is how far a and b lie apart, the shorter way around for an angle.
func (q *Quantity) Distance(a, b float64) float64 {
	if q.IsAngle() {
		return math.Abs(TurnRemainder(a - b))
	}
	return math.Abs(a - b)
}

// Fold brings a value into the range in which wrong values of q are compared:
// a direction into (−180°, 180°], an angle of the figure into [0°, 360°), its
// sign left out unless it is all that is wrong. A wrong angle is the same
// mistake a turn further on: −198° is 162°.
func (q *Quantity) Fold(v float64) float64 {
	switch {
	case q.Turns:
		return Wrap(v)
	case q.IsAngle():
		v = turnedUp(v)
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
func (q *Quantity) IsNegativeAngle(v float64) bool {
	return q.IsAngle() && !q.Turns && turnedUp(v) < 0
}

// turnedUp is an angle less than a turn, and more than half a turn, below zero brought
// up by a turn.
func turnedUp(v float64) float64 {
	if -360 < v && v < -180 {
		return v + 360
	}
	return v
}

// signCounts is how near the truth the size of an angle lies, in degrees, where
// its sign alone is wrong.
const signCounts = 2.0

// FoldedDistance is the distance of two values of q as wrong ones: after Fold, and
// the signs of angles of the figure left out.
func (q *Quantity) FoldedDistance(a, b float64) float64 {
	if !q.IsAngle() {
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
	return lo-q.Epsilon() <= v && v <= hi+q.Epsilon()
}
