package slips

import (
	"math"
	"slices"
	"strconv"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// Mistakes made in writing a value down (common practice; the factor between
// pounds-force and newtons is NIST SP 811's).
var writtenSlips = []Slip{
	{ID: "prefix", Scope: InAnswer, Prior: 2, Written: func(c *Context, v float64) []float64 {
		if c.Quantity.IsAngle() {
			return nil
		}
		return []float64{v * 1000, v / 1000}
	}},
	{ID: "unit-system", Scope: InAnswer, Prior: 0.3, Written: func(c *Context, v float64) []float64 {
		if c.Quantity.Dim != statics.DimForce {
			return nil
		}
		return []float64{v * statics.NewtonsPerPound, v / statics.NewtonsPerPound}
	}},
	{ID: "radians-unnamed", Scope: InAnswer, Prior: 0.5, Written: func(c *Context, v float64) []float64 {
		if !c.Quantity.TurnedToRadians(v) { // see radian-mode
			return nil
		}
		return []float64{v * math.Pi / 180}
	}},
	{ID: "decimal-place", Scope: InAnswer, Prior: 1, Written: func(_ *Context, v float64) []float64 {
		return []float64{v * 10, v / 10}
	}},
	{ID: "digits-swapped", Scope: InAnswer, Prior: 1.5, Written: func(c *Context, v float64) []float64 {
		return swappedDigits(v, c.Quantity.Dim)
	}},
	{ID: "given-miscopied", Prior: 1.5, Rule: func(c *Context, n expr.Node) []expr.Node {
		if a, ok := n.(expr.Ang); ok && !c.Quantity.Given {
			return c.miscopiedTurn(a)
		}
		q := c.symbol(n)
		if q == nil || !q.Given {
			return nil
		}
		var out []expr.Node
		for _, v := range miscopiesOf(q) {
			out = append(out, q.Literal(v))
		}
		return out
	}},
}

// miscopiesOf lists what a given becomes when a number of it is miscopied as the
// statement shows it: S 57 E for S 75 E, 4:51 for 4:15.
func miscopiesOf(q *lesson.Quantity) []float64 {
	h := q.Heading
	var out []float64
	add := func(h statics.Heading, ok bool) {
		if ok {
			out = append(out, lesson.Degrees(h.Angle()))
		}
	}
	switch {
	case h.Form == statics.Slope:
		for _, v := range Miscopies(h.Rise) {
			add(h.Legs(v, h.Run))
		}
		for _, v := range Miscopies(h.Run) {
			add(h.Legs(h.Rise, v))
		}
	case q.Turns && h != (statics.Heading{}):
		for _, v := range Miscopies(lesson.Degrees(h.Turn)) {
			h.Turn = statics.Angle(v) * statics.Degree
			add(h, true)
		}
	default:
		return Miscopies(q.True)
	}
	return out
}

// miscopiedTurn is an angle that stands in a formula as the statement shows it,
// miscopied; nil for any other.
func (c *Context) miscopiedTurn(a expr.Ang) []expr.Node {
	v := expr.Eval(a, nil)
	shown := slices.ContainsFunc(c.Lesson.Problem.Items, func(it lesson.Item) bool {
		return slices.ContainsFunc(it.Fields, func(f lesson.Field) bool {
			h := f.Heading
			return h != (statics.Heading{}) && h.Form != statics.Slope && lesson.Degrees(h.Turn) == v && v != 0
		})
	})
	if !shown {
		return nil
	}
	var out []expr.Node
	for _, x := range Miscopies(v) {
		out = append(out, expr.Deg(x))
	}
	return out
}

// swappedDigits is v as written at 4 digits (an angle to hundredths), with each
// pair of neighbouring different digits exchanged.
func swappedDigits(v float64, dim statics.Dimension) []float64 {
	digits := lesson.DefaultSettings().Work
	v = digits.Round(dim, v)
	return DigitSwaps(v, digits.HalfUnit(dim, v))
}

// DigitSwaps lists v, written as finely as half a unit of its last digit says, with
// each pair of neighbouring different digits exchanged.
func DigitSwaps(v, half float64) []float64 {
	places := 0
	for p := 2 * half; p < 1-1e-9 && places < 8; p *= 10 {
		places++
	}
	s := strconv.FormatFloat(math.Abs(v), 'f', places, 64)
	var out []float64
	for i := 0; i+1 < len(s); i++ {
		j := i + 1
		if s[j] == '.' {
			j++
		}
		if s[i] == '.' || j >= len(s) || s[i] == s[j] {
			continue
		}
		b := []byte(s)
		b[i], b[j] = b[j], b[i]
		if b[0] == '0' && b[1] != '.' {
			continue
		}
		x, _ := strconv.ParseFloat(string(b), 64)
		out = append(out, math.Copysign(x, v))
	}
	return out
}

// ZeroFromFront is v where a zero that was its second digit was exchanged to the
// front: 20.84 for 02.84, or 2.84. There is none of a value below 1.
func ZeroFromFront(v float64) (float64, bool) {
	s := strconv.FormatFloat(math.Abs(v), 'f', -1, 64)
	if s[0] == '0' {
		return 0, false
	}
	x, _ := strconv.ParseFloat(s[:1]+"0"+s[1:], 64)
	return math.Copysign(x, v), true
}

// Miscopies is v, as written, with two neighbouring digits exchanged or one
// digit repeated, beside itself or over its neighbour.
func Miscopies(v float64) []float64 {
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
