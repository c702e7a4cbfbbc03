package expr

import (
	"math"
	"strconv"
	"strings"
)

const (
	// treeDigits is how many significant digits a number in a tree prints
	// with: beyond ten, machines with and without fused multiply-add differ.
	treeDigits = 10
	// A number whose first digit stands at 10^firstPlain … 10^lastPlain is
	// written out; others need a power of ten.
	firstPlain, lastPlain = -6, 11

	minus = "−" // U+2212
)

// FormatNumber writes v as the shortest decimal of at most digits significant
// digits (1 to 17; others are taken as the nearer end) that is v or v rounded
// to that many, half to even in binary: 682.635, 0.5, 12. There are no final
// zeros and no thousands separators. From 1e-6 to below 1e12 there is no
// exponent; beyond, it is written 1.2e15. The minus sign is U+2212. What is
// not finite is written NaN or ∞.
func FormatNumber(v float64, digits int) string {
	if s, special := formatSpecial(v); special {
		return s
	}
	mantissa, exponent := decimal(math.Abs(v), digits)
	sign := ""
	if v < 0 {
		sign = minus
	}
	if exponent >= firstPlain && exponent <= lastPlain {
		return sign + placePoint(mantissa, exponent)
	}
	if len(mantissa) > 1 {
		mantissa = mantissa[:1] + "." + mantissa[1:]
	}
	power := strconv.Itoa(exponent)
	if exponent < 0 {
		power = minus + power[1:]
	}
	return sign + mantissa + "e" + power
}

func formatSpecial(v float64) (string, bool) {
	switch {
	case math.IsNaN(v):
		return "NaN", true
	case math.IsInf(v, 1):
		return "∞", true
	case math.IsInf(v, -1):
		return minus + "∞", true
	case v == 0:
		return "0", true
	}
	return "", false
}

// decimal is v > 0 as its significant digits, without final zeros, and the
// power of ten of the first of them.
func decimal(v float64, digits int) (mantissa string, exponent int) {
	s := strconv.FormatFloat(v, 'e', -1, 64)
	if head, _, _ := strings.Cut(s, "e"); len(head)-1 > digits {
		s = strconv.FormatFloat(v, 'e', max(digits, 1)-1, 64)
	}
	head, tail, _ := strings.Cut(s, "e")
	exponent, _ = strconv.Atoi(tail) // FormatFloat always writes a whole number there
	return strings.TrimRight(head[:1]+strings.TrimPrefix(head[1:], "."), "0"), exponent
}

// placePoint writes the digits of a mantissa out, its first one at
// 10^exponent.
func placePoint(mantissa string, exponent int) string {
	switch n := len(mantissa); {
	case exponent < 0:
		return "0." + strings.Repeat("0", -exponent-1) + mantissa
	case exponent < n-1:
		return mantissa[:exponent+1] + "." + mantissa[exponent+1:]
	default:
		return mantissa + strings.Repeat("0", exponent+1-n)
	}
}
