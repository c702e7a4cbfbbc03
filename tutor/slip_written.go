package tutor

import (
	"math"
	"slices"
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
		if a, ok := n.(expr.Ang); ok && !c.quantity.Given {
			return c.lesson.miscopiedTurn(a)
		}
		q := c.symbol(n)
		if q == nil || !q.Given {
			return nil
		}
		var out []expr.Node
		for _, v := range q.miscopied() {
			out = append(out, c.lesson.literal(q, v))
		}
		return out
	}},
}

// miscopied lists what a given becomes when a number of it is miscopied as the
// statement shows it: S 57 E for S 75 E, 4:51 for 4:15.
func (q *Quantity) miscopied() []float64 {
	h := q.Heading
	var out []float64
	add := func(h statics.Heading, ok bool) {
		if ok {
			out = append(out, degrees(h.Angle()))
		}
	}
	switch {
	case h.Form == statics.Slope:
		for _, v := range miscopies(h.Rise) {
			add(h.Legs(v, h.Run))
		}
		for _, v := range miscopies(h.Run) {
			add(h.Legs(h.Rise, v))
		}
	case q.Turns && h != (statics.Heading{}):
		for _, v := range miscopies(degrees(h.Turn)) {
			h.Turn = statics.Angle(v) * statics.Degree
			add(h, true)
		}
	default:
		return miscopies(q.True)
	}
	return out
}

// miscopiedTurn is an angle that stands in a formula as the statement shows it,
// miscopied; nil for any other.
func (l *Lesson) miscopiedTurn(a expr.Ang) []expr.Node {
	v := expr.Eval(a, nil)
	shown := slices.ContainsFunc(l.Problem.Items, func(it Item) bool {
		return slices.ContainsFunc(it.Fields, func(f Field) bool {
			h := f.Heading
			return h != (statics.Heading{}) && h.Form != statics.Slope && degrees(h.Turn) == v && v != 0
		})
	})
	if !shown {
		return nil
	}
	var out []expr.Node
	for _, x := range miscopies(v) {
		out = append(out, expr.Deg(x))
	}
	return out
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
			try(s[:i] + s[i+1:i+2] + s[i:i+1] + s[i+2:])
		}
	}
	return out
}
