package tutor

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
)

// Which numbers of an expression are those of the statement, and so exact.

// unrounded tells whether an entry is an expression of givens and whole
// numbers of a formula alone, so that it must match to the last digit. A name
// stands for what was entered, rounded; a number that is no given was rounded
// on the way, unless it is a given miscopied.
func (w *Work) unrounded(r entry.Reading) bool {
	if len(r.Halves) > 0 || r.Form == entry.Number {
		return false
	}
	if expr.Contains(r.Tree, func(n expr.Node) bool {
		s, ok := n.(expr.Sym)
		return ok && !w.Lesson.Quantity(s.Name).Given
	}) {
		return false
	}
	return !slices.ContainsFunc(r.Literals, func(l entry.Literal) bool { return !w.statedAs(r, l) })
}

// statedAs tells whether a number of an expression is stated, degrees written as
// radians or gradians by mistake among them. One that a value on the way rounds
// to is that value, but for the 1 and the 2 of formulas: x² and 2·P·Q hold them
// whatever comes to 2.1.
func (w *Work) statedAs(r entry.Reading, l entry.Literal) bool {
	switch {
	case w.side(l.Value), l.Value == 1, l.Value == 2:
		return true
	case w.roundsOne(l):
		return false
	}
	if w.stated(l.Value) {
		return true
	}
	if _, angle := expr.At(r.Tree, l.Site).(expr.Ang); !angle || l.Right {
		return false
	}
	return w.stated(l.Value*math.Pi/180) || w.stated(l.Value/0.9)
}

// roundsOne tells whether a value worked out, with more digits, is written as l.
func (w *Work) roundsOne(l entry.Literal) bool {
	for i := range w.Lesson.Quantities {
		q := &w.Lesson.Quantities[i]
		if off := math.Abs(math.Abs(q.True) - l.Value); !q.Given && off <= l.Half && off > exactly*l.Value {
			return true
		}
	}
	return false
}

// side tells whether v is a side of a slope triangle that gives a direction.
func (w *Work) side(v float64) bool {
	return w.heading(func(h statics.Heading) bool {
		return h.Form == statics.Slope && (v == h.Rise || v == h.Run || v == math.Hypot(h.Rise, h.Run))
	})
}

// heading tells whether a direction of the statement is such.
func (w *Work) heading(such func(statics.Heading) bool) bool {
	return slices.ContainsFunc(w.Lesson.Problem.Items, func(it lesson.Item) bool {
		return slices.ContainsFunc(it.Fields, func(f lesson.Field) bool { return such(f.Heading) })
	})
}

// stated tells whether v is a number of the statement, one miscopied from it,
// the true value of a quantity, or a whole number that a formula holds.
func (w *Work) stated(v float64) bool {
	switch v {
	case 1, 2, 90, 180, 270, 360:
		return true
	}
	turned := func(h statics.Heading) bool { return math.Abs(lesson.Degrees(h.Turn)) == v }
	if w.side(v) || v != 0 && w.heading(turned) {
		return true
	}
	for i := range w.Lesson.Quantities {
		q := &w.Lesson.Quantities[i]
		same := func(x float64) bool { return math.Abs(math.Abs(x)-v) <= 1e-9*max(1, v) }
		if same(q.True) || q.Given && slices.ContainsFunc(slips.Miscopies(q.True), same) {
			return true
		}
	}
	return false
}
