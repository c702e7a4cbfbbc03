package tutor

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// An expression may hold numbers that were rounded: values found on the way, sines
// and cosines. Where the formula is right, their rounding is all that is wrong.

// roundedNumber is the number of an expression, with the digits it was typed
// to, that rounding moved the value by most, where rounding its numbers is all
// that keeps it from the true one; nil where it is not.
func (w *Work) roundedNumber(q *lesson.Quantity, r entry.Reading) *Rounded {
	if q.Equation || q.Distance(r.Value, q.True) > min(w.formulaHalf(q, r), farthest*w.limit(q)) || !w.rightUnrounded(q, r) {
		return nil
	}
	slopes := map[int]float64{}
	for _, p := range expr.Trace(r.Tree, w.known) {
		slopes[p.Site] = math.Abs(p.Slope)
	}
	var most *Rounded
	worst := 0.0
	for _, l := range r.Literals {
		what, dim := w.roundedTo(q, r, l)
		if by := slopes[l.Site] * l.Half; what == "" || by <= worst || w.stated(l.Value) {
			continue
		}
		worst = slopes[l.Site] * l.Half
		most = &Rounded{What: what, Digits: l.Digits, Keep: w.Settings.Work.Magnitude}
		if dim == statics.DimAngle {
			most.Digits, most.Keep, most.angle = l.Decimals, w.Settings.Work.Angle, true
		}
		if most.Digits >= most.Keep {
			most.Keep = most.Digits + 1
		}
	}
	return most
}

// rightUnrounded tells whether an expression for q comes to the true value once the
// values found on the way stand in it with all their digits, as far as other numbers
// that are known to be rounded allow.
func (w *Work) rightUnrounded(q *lesson.Quantity, r entry.Reading) bool {
	factor := r.Value / expr.Eval(r.Tree, w.known) // of its unit
	tree, left := w.asFound(q, r, w.Lesson.truths())
	left = slices.DeleteFunc(left, func(l entry.Literal) bool {
		what, _ := w.roundedTo(q, r, l)
		return what == ""
	})
	r.Tree, r.Literals = tree, left
	return q.Distance(expr.Eval(r.Tree, w.known)*factor, q.True) <= w.formulaHalf(q, r)
}

// roundedTo names what a number of an expression is the rounded value of: a
// quantity found on the way, the value that an inverse key is pressed on for an
// angle, or a sine, cosine or tangent that a formula for q has in that very place;
// "" where there is none.
func (w *Work) roundedTo(q *lesson.Quantity, r entry.Reading, l entry.Literal) (what string, dim statics.Dimension) {
	rounds := func(v float64) bool { return math.Abs(math.Abs(v)-l.Value) <= l.Half*(1+1e-9) }
	for i := range w.Lesson.Quantities {
		c := &w.Lesson.Quantities[i]
		if c != q && !c.Given && !c.Equation && rounds(c.True) {
			return w.Lesson.SymbolText(c.Name), c.Dim
		}
	}
	if what = w.ofInverse(q, r, l); what != "" {
		return what, statics.DimRatio
	}
	own := w.now(q).own
	for _, tree := range q.Formulas() {
		right := w.Lesson.shape(tree, own)
		for _, p := range expr.Trace(tree, w.Lesson.Truth) {
			key := p.Node
			if p.Value < 0 { // written by its size, the sign beside it
				key = expr.Neg{X: key}
			}
			if expr.IsTrig(p.Node) && rounds(p.Value) && w.Lesson.shape(expr.Replace(r.Tree, l.Site, key), own) == right {
				return expr.Plain(p.Node, w.Lesson.Symbol), statics.DimRatio
			}
		}
	}
	return "", statics.DimRatio
}

// ofInverse names the sine, cosine or tangent of an angle of the lesson, q before
// others, where a number of an expression is its rounded value and stands behind
// the inverse key: sin⁻¹ 0.89. "" where that is not so.
func (w *Work) ofInverse(q *lesson.Quantity, r entry.Reading, l entry.Literal) string {
	if l.Site == 0 {
		return ""
	}
	k, ok := expr.At(r.Tree, l.Site-1).(expr.Fn)
	key, inverse := forwardKey[k.Func]
	if !ok || !inverse {
		return ""
	}
	for i := -1; i < len(w.Lesson.Quantities); i++ {
		c := q
		if i >= 0 {
			c = &w.Lesson.Quantities[i]
		}
		n := expr.Fn{Func: key, X: expr.S(c.Name)}
		if c.IsAngle() && !c.Given && math.Abs(math.Abs(expr.Eval(n, w.Lesson.Truth))-l.Value) <= l.Half*(1+1e-9) {
			return expr.Plain(n, w.Lesson.Symbol)
		}
	}
	return ""
}
