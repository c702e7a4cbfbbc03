package statics

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// Polar returns the vector of a given magnitude and direction. A negative
// magnitude points the other way.
func Polar(magnitude float64, direction Angle) r2.Vec {
	sin, cos := direction.Sincos()
	return r2.Vec{X: magnitude * cos, Y: magnitude * sin}
}

// Resultant returns the sum of forces: the closing side of their polygon. A
// component that is only the rounding noise of the sum is exactly 0, so that
// forces in balance have no resultant, and no direction.
func Resultant(forces ...r2.Vec) r2.Vec {
	var sum r2.Vec
	var scale float64
	for _, f := range forces {
		sum = r2.Add(sum, f)
		scale += r2.Norm(f)
	}
	if math.Abs(sum.X) <= sumRelTol*scale {
		sum.X = 0
	}
	if math.Abs(sum.Y) <= sumRelTol*scale {
		sum.Y = 0
	}
	return sum
}

// Direction returns the direction of v in (−180°, 180°]. ok is false where v
// has none: it is zero or not finite.
func Direction(v r2.Vec) (_ Angle, ok bool) {
	if v == (r2.Vec{}) || !finite(v.X) || !finite(v.Y) {
		return 0, false
	}
	return Angle(math.Atan2(v.Y, v.X)).Normalized(), true
}

// Between returns the angle between two vectors, tails together, in 0° to 180°;
// 0 where one of them is zero. It is accurate at both ends of the range, where
// the inverse cosine loses half its digits.
func Between(u, v r2.Vec) Angle {
	return Angle(math.Atan2(math.Abs(r2.Cross(u, v)), r2.Dot(u, v)))
}
