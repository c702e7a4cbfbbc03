package tutor

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/balance"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
)

// system is the two sums q is the solution of, the second nil where one alone
// gives it, and the other unknown.
func (l *Lesson) system(q *lesson.Quantity) (sums [2]expr.Node, other string) {
	if sums = q.Sums; sums[0] == nil {
		sums[0] = l.Quantity(q.Solves[0]).Routes[0].Tree
		if q.Solves[1] == "" {
			return sums, ""
		}
		sums[1] = l.Quantity(q.Solves[1]).Routes[0].Tree
	}
	for i := range l.Quantities {
		if o := &l.Quantities[i]; o != q && o.Solves == q.Solves && o.Sums == q.Sums {
			other = o.Name
		}
	}
	return sums, other
}

// sumOf is the sum along x or y that q is the solution of, as an equation.
func (l *Lesson) sumOf(q *lesson.Quantity, i int) *lesson.Quantity {
	if tree := q.Sums[i]; tree != nil {
		return &lesson.Quantity{Dim: statics.DimForce, Equation: true, Routes: []lesson.Route{{Tree: tree}}}
	}
	return l.Quantity(q.Solves[i])
}

// solved lists what slips in the equations make of their solution q: in one of
// them, or in both where the slip touches what stands in both.
func (l *Lesson) solved(q *lesson.Quantity) []variant {
	if !q.IsSolved() {
		return nil
	}
	sums, other := l.system(q)
	var out []variant
	add := func(route int, id string, prior float64, slipped [2]expr.Node) {
		if q.Sums[0] != nil { // its own route solves them
			route = aside
		}
		if t := expr.Eliminate(slipped[0], slipped[1], q.Name, other); t != nil {
			v := l.variant(id, prior, t)
			v.route = route
			out = append(out, v)
		}
	}
	for i := range sums {
		if sums[i] == nil {
			continue
		}
		l.slipped(l.sumOf(q, i), func(route int, id string, prior float64, tree expr.Node) {
			slipped := sums
			slipped[i] = tree
			add(route, id, prior, slipped)
		})
	}
	if sums[1] != nil {
		for _, row := range slips.Catalogue() {
			for _, slipped := range l.inBoth(row, q, sums) {
				add(0, row.ID, row.Prior, slipped)
			}
		}
	}
	if q.Sums[0] != nil { // no part pulls or pushes there
		out = slices.DeleteFunc(out, func(v variant) bool { return v.id == "sense-reversed" })
	}
	return out
}

// inBoth makes a slip in both sums: a calculator's mode in every key, another
// value or key for what stands in both.
func (l *Lesson) inBoth(row slips.Slip, q *lesson.Quantity, sums [2]expr.Node) [][2]expr.Node {
	c := &slips.Context{Lesson: l.Lesson, Quantity: l.sumOf(q, 0), Site: 1}
	slip := func(n expr.Node) []expr.Node { return row.Rule(c, n) }
	var out [][2]expr.Node
	switch row.Scope {
	case slips.InStep:
		xs, ys := slip(sums[0]), slip(sums[1])
		for i := range min(len(xs), len(ys)) {
			out = append(out, [2]expr.Node{xs[i], ys[i]})
		}
	case slips.AtSite:
		for _, name := range expr.Symbols(sums[0]) {
			if !slices.Contains(expr.Symbols(sums[1]), name) {
				continue
			}
			for _, with := range slip(expr.S(name)) {
				put := func(n string) (expr.Node, bool) { return with, n == name }
				out = append(out, [2]expr.Node{expr.Substitute(sums[0], put), expr.Substitute(sums[1], put)})
			}
			if slipped, ok := slipKeys(slip, name, sums); ok {
				out = append(out, slipped)
			}
		}
	}
	return out
}

// slipKeys makes a slip in every key pressed on the angle called name, as when
// that is measured from the other axis; false where a sum has no such key.
func slipKeys(slip func(expr.Node) []expr.Node, name string, sums [2]expr.Node) (slipped [2]expr.Node, ok bool) {
	swap := func(n expr.Node) (expr.Node, bool) {
		if k, ok := n.(expr.Fn); ok && k.X == expr.S(name) {
			if with := slip(n); len(with) == 1 {
				return with[0], true
			}
		}
		return n, false
	}
	x, inX := expr.RewriteAll(sums[0], swap)
	y, inY := expr.RewriteAll(sums[1], swap)
	return [2]expr.Node{x, y}, inX && inY
}

// solveEntered is the value of q out of the learner's own equations: those
// entered as entered, the other as it is; NaN where they don't give one. from
// names those entered.
func (w *Work) solveEntered(q *lesson.Quantity) (value float64, from []string) {
	if q.Solves[0] == "" {
		return math.NaN(), nil
	}
	_, other := w.Lesson.system(q)
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
