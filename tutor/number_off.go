package tutor

import (
	"math"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// sureOfNumber is the probability that a formula right but for one number that
// should be given has that number miscopied (judgement).
const sureOfNumber = 0.9

// numberOff is the number of an expression that keeps it from being one of the
// formulas for q, as written, and the quantity that should stand there; nil
// where there is none, or where more than one number is off.
func (w *Work) numberOff(q *lesson.Quantity, r entry.Reading) (written float64, of *lesson.Quantity) {
	if r.Form != entry.Expression {
		return 0, nil
	}
	own := w.now(q).own
	tree, _ := w.asFound(q, r, own)
	var right []string
	for i := range q.Routes {
		right = append(right, w.Lesson.shape(q.Routes[i].Tree, own))
	}
	for _, l := range r.Literals {
		for i := range w.Lesson.Quantities {
			c := &w.Lesson.Quantities[i]
			off := l.Coarse
			if c.Given { // nobody rounds those
				off = l.Half
			}
			if c == q || c.Equation || math.Abs(own[i]-l.Value) <= off {
				continue
			}
			if slices.Contains(right, w.Lesson.shape(expr.Replace(tree, l.Site, expr.S(c.Name)), own)) {
				return l.Value, c
			}
		}
	}
	return 0, nil
}

// forAnother is the quantity of q's kind that an expression of givens alone entered
// for q comes to, to the last digit; "" where there is none. Angles are sums of whole
// degrees, and come to one another by chance.
func (w *Work) forAnother(q *lesson.Quantity, r entry.Reading) string {
	if q.IsAngle() || !w.unrounded(r) || len(r.Literals) < 2 {
		return ""
	}
	for i := range w.Lesson.Quantities {
		c := &w.Lesson.Quantities[i]
		if c != q && !c.Given && !c.Equation && c.Dim == q.Dim && math.Abs(r.Value-c.True) <= exactly*math.Abs(c.True) {
			return c.Name
		}
	}
	return ""
}

// ofAnother is the verdict on the right formula for another quantity, where no one
// slip in the step itself is sure to have led to it; false where it is none.
func (e *explanation) ofAnother() bool {
	if e.slip && !e.r.Slips[0].double() && e.r.Slips[0].At == e.q.Name {
		return false
	}
	name := e.w.forAnother(e.q, e.r.Reading)
	if name == "" {
		return false
	}
	e.r.Verdict, e.r.finds = verdict.Unexplained, name
	e.r.Slips, e.r.Unexplained = nil, 1
	return true
}

// oneNumberOff is the verdict on a formula with one number off; false where that
// is not what is wrong.
func (w *Work) oneNumberOff(q *lesson.Quantity, r *Reply) bool {
	written, of := w.numberOff(q, r.Reading)
	switch {
	case of == nil:
		return false
	case of.Given:
		s := Suspect{IDs: miscopied, Likely: miscopied[0], Probability: sureOfNumber, At: of.Name}
		r.Verdict, r.Slips, r.Unexplained = verdict.SlipFound, []Suspect{s}, 1-sureOfNumber
	default:
		r.Verdict, r.numberOff = verdict.Unexplained, expr.FormatNumber(written, 10)
	}
	return true
}
