package tutor

import (
	"math"
	"strconv"

	"closingside/statics"
	"closingside/statics/expr"
)

// newtonsPerPound is exact: NIST SP 811 (2008), B.8 "pound-force".
const newtonsPerPound = 4.4482216152605

// Mistakes made in writing a value down (common practice; the factor between
// pounds-force and newtons is NIST SP 811's).
var writtenSlips = []Slip{
	{ID: "prefix", Scope: InAnswer, Prior: 2, Written: func(c *context, v float64) []float64 {
		if c.quantity.Dim == statics.DimAngle {
			return nil
		}
		return []float64{v * 1000, v / 1000}
	}},
	{ID: "unit-system", Scope: InAnswer, Prior: 0.3, Written: func(c *context, v float64) []float64 {
		if c.quantity.Dim != statics.DimForce {
			return nil
		}
		return []float64{v * newtonsPerPound, v / newtonsPerPound}
	}},
	{ID: "decimal-place", Scope: InAnswer, Prior: 1, Written: func(_ *context, v float64) []float64 {
		return []float64{v * 10, v / 10}
	}},
	{ID: "digits-swapped", Scope: InAnswer, Prior: 1.5, Written: func(c *context, v float64) []float64 {
		return swappedDigits(v, c.quantity.Dim)
	}},
	{ID: "given-miscopied", Prior: 1.5, Rule: func(c *context, n expr.Node) []expr.Node {
		q := c.symbol(n)
		if q == nil || !q.Given {
			return nil
		}
		var out []expr.Node
		for _, v := range miscopies(q.True) {
			out = append(out, c.lesson.literal(q, v))
		}
		return out
	}},
}

// swappedDigits is v as written at 4 digits (an angle to hundredths), with each
// pair of neighbouring different digits exchanged.
func swappedDigits(v float64, dim statics.Dimension) []float64 {
	digits := habits[0]
	v = digits.roundTo(dim, v)
	return unswapped(v, digits.halfUnit(dim, v))
}

// miscopies is v, as written, with two neighbouring digits exchanged or one
// digit repeated, beside itself or over its neighbour.
func miscopies(v float64) []float64 {
	s := strconv.FormatFloat(math.Abs(v), 'g', 10, 64)
	var out []float64
	try := func(t string) {
		if x, err := strconv.ParseFloat(t, 64); err == nil && x != math.Abs(v) {
			out = append(out, math.Copysign(x, v))
		}
	}
	for i := range s {
		if s[i] < '0' || s[i] > '9' {
			continue
		}
		try(s[:i+1] + s[i:])
		if i+1 < len(s) && s[i+1] != s[i] && s[i+1] >= '0' && s[i+1] <= '9' {
			try(s[:i+1] + s[i:i+1] + s[i+2:])
			try(s[:i] + s[i+1:i+2] + s[i+1:])
		}
		if i+1 < len(s) && s[i+1] != s[i] && s[i+1] >= '0' && s[i+1] <= '9' {
			try(s[:i] + s[i+1:i+2] + s[i:i+1] + s[i+2:])
		}
	}
	return out
}
