package statics

import (
	"math"
	"strconv"
	"strings"
)

// Angle is a plane angle or a direction. It is held in radians; write
// 25*Degree to make one. A direction is measured from +x and grows
// counter-clockwise. Any finite value is allowed, several turns included.
type Angle float64

// Units of angle. The ratio of the degree to the radian is exact by
// definition: NIST SP 811 (2008), table 6, and the gon: B.8.
const (
	Radian  Angle = 1
	Degree        = math.Pi / 180 * Radian
	Gradian       = math.Pi / 200 * Radian
	Turn          = 2 * math.Pi * Radian
)

// Radians returns a as a number of radians.
func (a Angle) Radians() float64 { return float64(a) }

// Degrees returns a as a number of degrees. A number of degrees with up to nine
// decimals survives the way into an Angle, a few sums there, and the way back:
// (60*Degree).Degrees() is 60, where the bare quotient is 59.99999999999999.
func (a Angle) Degrees() float64 {
	const decimals = 1e9
	degrees := float64(a) * (180 / math.Pi)
	short := math.Round(degrees*decimals) / decimals
	if math.Abs(short-degrees) <= angleNoise(float64(a))*(180/math.Pi) {
		return short
	}
	return degrees
}

// Sincos returns the sine and cosine of a. Both are exact (0, 1 or −1) at
// multiples of 90°, where math.Cos(math.Pi/2) leaves 6e-17: enough to make a
// mechanism look like a very stiff structure.
func (a Angle) Sincos() (sin, cos float64) {
	if n, ok := a.quarters(); ok {
		switch n & 3 {
		case 0:
			return 0, 1
		case 1:
			return 1, 0
		case 2:
			return 0, -1
		default:
			return -1, 0
		}
	}
	return math.Sincos(float64(a))
}

// Normalized returns the same direction in (−180°, 180°].
func (a Angle) Normalized() Angle {
	if n, ok := a.quarters(); ok {
		n &= 3
		if n == 3 {
			n = -1
		}
		return Angle(n) * (math.Pi / 2)
	}
	return Angle(math.Remainder(float64(a), 2*math.Pi))
}

// Positive returns the same direction in [0°, 360°).
func (a Angle) Positive() Angle {
	if a = a.Normalized(); a >= 0 {
		return a
	}
	if a += Turn; a > Turn-2*angleAbsTol {
		return 0 // so little below 0° that it would print as 360°
	}
	return a
}

// Abs returns the size of a.
func (a Angle) Abs() Angle { return Angle(math.Abs(float64(a))) }

// String returns a in degrees with at most ten significant digits: "−62.5°".
func (a Angle) String() string { return number(a.Degrees()) + "°" }

// number prints v with at most ten significant digits and a printer's minus.
func number(v float64) string {
	s := strconv.FormatFloat(v, 'g', 10, 64)
	if digits, negative := strings.CutPrefix(s, "-"); negative {
		return "−" + digits
	}
	return s
}

// quarters reports whether a is a multiple of 90° to within the noise of the
// sums that made it, and if so which one. Angles beyond a million quarter turns
// never are: nothing in a lesson turns that far.
func (a Angle) quarters() (n int, ok bool) {
	const limit = 1 << 20
	q := math.Round(float64(a) / (math.Pi / 2))
	if !(math.Abs(q) <= limit) { // also refuses NaN
		return 0, false
	}
	return int(q), math.Abs(float64(a)-q*(math.Pi/2)) <= angleNoise(float64(a))
}
