package draw

import (
	"cmp"
	"iter"
	"math"
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/slipped"
	"closingside/tutor/slips"
)

// Fairness is how well the values of a drawn problem can be told apart.
type Fairness struct {
	Draws        int     // draws made until this one was kept
	Separation   float64 // the smallest that had to exceed 1, in units of the last digit asked
	Quantity     string  // where it is smallest
	Symbol       string  // that quantity's, as the problem writes it
	Between      [2][]string
	Coincidences []Coincidence // of rare slips, allowed
}

// Coincidence is two values of one quantity that can't be told apart at the
// digits asked: each stands for the slips that lead there. With is empty for
// the right value's own band.
type Coincidence struct {
	Quantity  string
	IDs, With []string
}

// Limits of a fair problem. What is compared with them is worked out in
// floating point, and machines differ in the last bits. Numbers of a problem
// are whole, so values sit on whole limits often and a hair from them on no
// machine: every limit stands offClean away from the whole one, and a value
// that is whole falls on the same side everywhere.
const (
	offClean = 1e-6

	leastAngle = 12.0 // degrees an angle of the figure keeps from 0° and 180°
	nearSquare = 4.0  // degrees around a right angle that only a right angle itself may lie in
	leastPart  = 0.05 // of the largest force that a component, or an answer, has to be
	common     = 2.0  // prior from which a slip counts as common
)

// shapely tells whether a lesson is well-conditioned: no angle of the figure
// near 0° or 180°, none nearly a right angle, and none a right angle unless
// asked; no component that is the small difference of large ones.
func shapely(l *tutor.Lesson, rightAngles bool) bool {
	most := 0.0
	for _, q := range l.Quantities {
		if q.Given && q.Dim == statics.DimForce {
			most = max(most, math.Abs(q.True))
		}
	}
	for i := range l.Quantities {
		q := &l.Quantities[i]
		switch {
		case math.IsNaN(q.True):
			return false
		case q.Given || q.Turns || q.Equation:
		case q.IsAngle():
			if q.True < leastAngle+offClean || q.True > 180-leastAngle-offClean {
				return false
			}
			if off := math.Abs(q.True - 90); off < nearSquare+offClean && !(rightAngles && off < offClean) {
				return false
			}
		case q.Dim == statics.DimForce:
			exact := rightAngles && q.Signed && math.Abs(q.True) < offClean*most
			if math.Abs(q.True) < (leastPart+offClean)*most && !exact {
				return false
			}
		}
	}
	return true
}

// fairness looks at the values that one slip gives. Those of common slips have
// to lie outside the right value's band, and apart from each other, by more
// than a unit of the last digit asked; where a rare slip has a part in it, the
// coincidence is listed. Slips in writing a value down can come close to it by
// their nature (the last digits exchanged), and are left out.
func fairness(l *tutor.Lesson) (Fairness, bool) {
	f := Fairness{Separation: math.Inf(1)}
	for _, answers := range []bool{true, false} { // the coarsest first: most often two meet there
		for i := range l.Quantities {
			if q := &l.Quantities[i]; !q.Given && q.Answer == answers && crowded(l, q) {
				return f, false
			}
		}
	}
	w := tutor.NewWork(l, l.Problem.Settings)
	for i := range l.Quantities {
		if q := &l.Quantities[i]; !q.Given && !f.look(w, q, wrongValues(w, q)) {
			return f, false
		}
	}
	if f.Quantity != "" {
		f.Symbol = l.SymbolText(f.Quantity)
	}
	return f, true
}

// folded is a wrong value as it is compared here. An angle of the figure more than
// half a turn below zero stands at its size: what is drawn rests on that.
func folded(q *lesson.Quantity, v float64) float64 {
	if q.IsAngle() && !q.Turns && -360 < v && v < -180 {
		return -v
	}
	return q.Fold(v)
}

// crowded tells whether two different common slips come so near to each other
// in q, or one so near to the right value, that look would refuse. It looks at
// formulas alone, which is quick, before everything is worked out.
func crowded(l *tutor.Lesson, q *lesson.Quantity) bool {
	digits := l.Problem.Settings.DigitsOf(q)
	same := q.Epsilon()
	var wrong []wrongValue
	near := func(id string, tree expr.Node) bool {
		v := folded(q, expr.Eval(tree, l.Truth))
		if math.IsNaN(v) || q.FoldedDistance(v, q.True) <= same || q.FoldedDistance(v, q.Also) <= same {
			return false
		}
		unit := 2 * digits.HalfUnit(q.Dim, v)
		for i := range wrong {
			o := &wrong[i]
			if off := q.FoldedDistance(v, o.value); off > same && off <= (1+offClean)*max(unit, o.unit) && o.ids[0] != id {
				return true
			}
		}
		wrong = append(wrong, wrongValue{value: v, unit: unit, ids: []string{id}})
		return q.FoldedDistance(v, q.True) <= (0.5+offClean)*unit
	}
	for id, tree := range commonlySlipped(l, q) {
		if near(id, tree) {
			return true
		}
	}
	return false
}

// commonlySlipped gives what common slips make of q's routes, and the mistakes of
// the kind that are common, each with its slip's id.
func commonlySlipped(l *tutor.Lesson, q *lesson.Quantity) iter.Seq2[string, expr.Node] {
	return func(yield func(id string, tree expr.Node) bool) {
		for _, r := range q.Routes {
			for _, base := range slipped.Bases(r.Tree) {
				for _, row := range slips.Catalogue() {
					if row.Prior < common {
						continue
					}
					for _, tree := range slipped.Trees(l.Lesson, q, row, base) {
						if !yield(row.ID, tree) {
							return
						}
					}
				}
			}
		}
		for _, m := range q.Mistakes {
			if !m.Aside && slips.ByID(m.Slip).Prior >= common && !yield(m.Slip, m.Tree) {
				return
			}
		}
	}
}

// wrongValue is a value that slips in one formula lead to.
type wrongValue struct {
	value, unit float64 // unit of the last digit asked
	ids         []string
	common      bool
}

// wrongValues lists what one slip in a formula makes of q, in order of
// value; those equal in value are one. The formulas are worked out here and
// now: a draw is looked at once, so nothing is prepared for later.
func wrongValues(w *tutor.Work, q *lesson.Quantity) []wrongValue {
	l := w.Lesson
	if q.Equation { // a wrong equation has no value
		return nil
	}
	same := q.Epsilon()
	digits := w.Settings.DigitsOf(q)
	var each []wrongValue
	for _, f := range slipped.Formulas(l.Lesson, q) {
		if f.Route < 0 {
			continue
		}
		v := folded(q, expr.Eval(f.Tree, l.Truth))
		if right := q.FoldedDistance(v, q.True) <= same || q.FoldedDistance(v, q.Also) <= same; !math.IsNaN(v) && !right {
			each = append(each, wrongValue{value: v, ids: []string{f.ID}, common: slips.ByID(f.ID).Prior >= common})
		}
	}
	slices.SortStableFunc(each, func(a, b wrongValue) int { return cmp.Compare(a.value, b.value) })
	var all []wrongValue
	for _, v := range each {
		last := len(all) - 1
		if last < 0 || v.value-all[last].value > same {
			v.unit = 2 * digits.HalfUnit(q.Dim, v.value)
			all = append(all, v)
			continue
		}
		if !slices.Contains(all[last].ids, v.ids[0]) {
			all[last].ids = append(all[last].ids, v.ids[0])
			slices.Sort(all[last].ids)
		}
		all[last].common = all[last].common || v.common
	}
	return all
}

// look takes the wrong values of one quantity in; false where two that have to
// be apart are not.
func (f *Fairness) look(w *tutor.Work, q *lesson.Quantity, wrong []wrongValue) bool {
	band := w.Band(q)
	digits := w.Settings.DigitsOf(q)
	right := wrongValue{value: q.True, unit: 2 * digits.HalfUnit(q.Dim, q.True), common: true}
	for i := range wrong {
		a := &wrong[i]
		// Written to the digits asked, a value moves by half a unit.
		if off := (q.FoldedDistance(a.value, q.True)-band.Half)/right.unit + 0.5; !f.apart(q, a, &right, off) {
			return false
		}
		for j := range i {
			b := &wrong[j]
			if off := q.FoldedDistance(a.value, b.value) / max(a.unit, b.unit); !f.apart(q, a, b, off) {
				return false
			}
		}
	}
	return true
}

// apart notes how far two values lie from each other, in units of the last
// digit; false where that is too little and both are common.
func (f *Fairness) apart(q *lesson.Quantity, a, b *wrongValue, off float64) bool {
	if slices.ContainsFunc(a.ids, func(id string) bool { return slices.Contains(b.ids, id) }) {
		return true // one name fits both
	}
	both := a.common && b.common
	if off > 1+offClean {
		if both && off < f.Separation {
			f.Separation, f.Quantity, f.Between = off, q.Name, [2][]string{a.ids, b.ids}
		}
		return true
	}
	if !both {
		f.Coincidences = append(f.Coincidences, Coincidence{q.Name, a.ids, b.ids})
	}
	return !both
}
