package trial

import (
	"math"
	"strconv"

	"closingside/statics/expr"
	"closingside/tutor"
)

// keeping is how a learner keeps values on the way.
type keeping struct {
	digits int // of a magnitude, and two fewer after the point of an angle; 0 keeps all
	cut    bool
}

// value is v as kept.
func (k keeping) value(v float64, angle bool) float64 {
	switch {
	case k.digits == 0:
		return v
	case angle:
		return shorten(v, max(k.digits-2, 0), k.cut)
	}
	return significant(v, k.digits, k.cut)
}

// significant is v at n significant digits, rounded or cut.
func significant(v float64, n int, cut bool) float64 {
	return shorten(v, n-1-exponent(v), cut)
}

// exponent is the power of ten of v's first digit; 0 for zero.
func exponent(v float64) int {
	s := strconv.FormatFloat(math.Abs(v), 'e', 15, 64)
	for i := range s {
		if s[i] == 'e' {
			n, _ := strconv.Atoi(s[i+1:])
			return n
		}
	}
	return 0
}

// shorten is v with so many digits after the point (before it, when negative),
// rounded half away from zero or cut. It goes by the twelve digits that a
// calculator shows.
func shorten(v float64, places int, cut bool) float64 {
	if v == 0 || math.IsNaN(v) || math.IsInf(v, 0) {
		return v
	}
	shown, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'e', 11, 64), 64)
	up, down := math.Pow10(max(places, 0)), math.Pow10(max(-places, 0))
	n := shown * up / down
	n *= 1 + 1e-13 // binary fractions fall short of decimal ones; far below the twelfth digit
	if cut {
		n = math.Trunc(n)
	} else {
		n = math.Round(n)
	}
	return n / up * down
}

// isAngle tells whether a formula yields an angle.
func isAngle(l *tutor.Lesson, n expr.Node) bool {
	return expr.IsAngle(n, func(name string) bool {
		q := l.Quantity(name)
		return q != nil && q.IsAngle()
	})
}
