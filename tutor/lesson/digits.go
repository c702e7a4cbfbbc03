package lesson

import (
	"math"
	"strconv"

	"closingside/statics"
)

// Digits says how finely values are written: significant digits for
// magnitudes, digits after the point for angles in degrees (an angle's zero is
// arbitrary, so its significant digits mean little). Settings keep them in the
// ranges below; a quantity that is no angle is a magnitude.
type Digits struct {
	Magnitude int // 3–10
	Angle     int // 0–8
}

// Finest is where carrying further digits ends; Further goes no further.
var Finest = Digits{Magnitude: 10, Angle: 8}

// Further is one digit more.
func (d Digits) Further() Digits {
	return Digits{min(d.Magnitude+1, Finest.Magnitude), min(d.Angle+1, Finest.Angle)}
}

// places is how many digits after the point v keeps; below zero, how many before
// it are given up.
func (d Digits) places(dim statics.Dimension, v float64) int {
	if dim == statics.DimAngle {
		return d.Angle
	}
	return d.Magnitude - 1 - DecimalExponent(v)
}

// HalfUnit is half a unit of the last digit kept of v, in the unit of v: for an
// angle a fixed number of degrees, otherwise by v's first digit.
func (d Digits) HalfUnit(dim statics.Dimension, v float64) float64 {
	return 0.5 * math.Pow10(-d.places(dim, v))
}

// Round rounds v to the digits d as a learner writes it, half away from zero.
func (d Digits) Round(dim statics.Dimension, v float64) float64 {
	return RoundPlaces(v, d.places(dim, v))
}

// Written is v as a learner would write it with digits d: fixed decimals, no
// exponent, a true minus sign.
func (d Digits) Written(dim statics.Dimension, v float64) string {
	places := d.places(dim, v)
	v = RoundPlaces(v, places)
	s := strconv.FormatFloat(math.Abs(v), 'f', max(places, 0), 64)
	if v < 0 {
		s = "−" + s
	}
	return s
}

// DecimalExponent is the power of ten of v's first significant digit, as v is
// written to fifteen digits: 2 for 682.6, −2 for 0.05. It is 0 for zero, NaN and
// infinity.
func DecimalExponent(v float64) int {
	size := math.Abs(v)
	if size == 0 || !(size <= math.MaxFloat64) {
		return 0
	}
	two := int(math.Float64bits(size)>>52) - 1023 // the power of two, by the exponent of IEEE 754
	n := two * 1233 >> 12                         // log₁₀ 2 is near 1233/4096
	if size >= math.Pow10(n+1) {
		n++
	}
	if first := size / math.Pow10(n); first > 1+1e-9 && first < 10-1e-9 {
		return n
	}
	s := strconv.FormatFloat(size, 'e', 14, 64) // as it is written, next to a power of ten
	for i := range s {
		if s[i] == 'e' {
			n, _ := strconv.Atoi(s[i+1:])
			return n
		}
	}
	return 0
}

// RoundPlaces rounds v to so many digits after the point (before it, when
// negative), half away from zero as on paper: by its first fifteen digits, so
// that every machine agrees and 8.25 becomes 8.3 however it was worked out.
func RoundPlaces(v float64, places int) float64 {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return v
	}
	if places < 0 {
		p := math.Pow10(-places)
		return math.Round(v/p) * p
	}
	var buf [24]byte
	s := strconv.AppendFloat(buf[:0], math.Abs(v), 'e', 14, 64) // d.dddddddddddddde±xx
	power, _ := strconv.Atoi(string(s[17:]))
	digits := append(s[:1], s[2:16]...)
	keep := power + 1 + places
	switch {
	case keep < 0:
		return 0
	case keep >= len(digits):
		return v
	}
	n := int64(0)
	for _, d := range digits[:keep] {
		n = 10*n + int64(d-'0')
	}
	if digits[keep] >= '5' {
		n++
	}
	return math.Copysign(tenths(n, places), v)
}

// tenths is n·10^−places, correctly rounded: so is the quotient of two exact numbers.
func tenths(n int64, places int) float64 {
	if places <= 22 {
		return float64(n) / math.Pow10(places)
	}
	v, _ := strconv.ParseFloat(strconv.FormatInt(n, 10)+"e"+strconv.Itoa(-places), 64)
	return v
}
