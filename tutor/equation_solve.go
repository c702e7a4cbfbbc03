package tutor

import (
	"math"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/balance"
	"closingside/tutor/lesson"
)

// solveEntered is the value of q out of the learner's own equations: those
// entered as entered, the other as it is; NaN where they don't give one. from
// names those entered.
func (w *Work) solveEntered(q *lesson.Quantity) (value float64, from []string) {
	if q.Solves[0] == "" {
		return math.NaN(), nil
	}
	_, other := w.Lesson.System(q)
	v := &view{w: w}
	var rows [2]balance.Terms
	for i, name := range q.Solves {
		if name == "" {
			continue
		}
		e := w.Lesson.Quantity(name)
		s := &balance.Sorter{Value: v.value, Tree: v.tree}
		var ok bool
		if a := w.Standing(name); a != nil {
			from = append(from, name)
			rows[i], ok = s.Terms(balance.Exact(a.Reading.Tree), balance.Exact(a.Reading.Right))
		} else {
			rows[i], ok = s.Terms(balance.Exact(e.Routes[0].Tree), balance.Exact(expr.N(0)))
		}
		if !ok {
			return math.NaN(), nil
		}
		if q.Means != nil {
			s.Rename(rows[i], q)
		}
	}
	return balance.Solve(rows[0], rows[1], q.Name, other), from
}

// followsEquations tells whether v is what the learner's own accepted equations
// give for q as typed.
func (w *Work) followsEquations(q *lesson.Quantity, v, half float64) bool {
	own, from := w.solveEntered(q)
	if len(from) == 0 || slices.ContainsFunc(from, func(name string) bool { return !w.Found(name) }) {
		return false
	}
	return q.Distance(v, own) <= half
}

// fromWrongEquations is what the learner's own equations, of which one is
// wrong, give for q.
func (s *state) fromWrongEquations(q int) []guess {
	l := s.w.Lesson
	quantity := &l.Quantities[q]
	v, from := s.w.solveEntered(quantity)
	from = slices.DeleteFunc(from, s.w.Found)
	if len(from) == 0 || math.IsNaN(v) {
		return nil
	}
	o := &outcome{value: v, ids: carriedIDs, at: quantity.Name, from: s.w.earliest(from), prog: l.ready().of[q].routes[0].prog, basis: ofEntries}
	return []guess{{value: v, weight: 1, first: o}}
}
