package slipped

import (
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
)

// solved makes the slips in the equations whose solution q is: in one of them, or
// in both where the slip touches what stands in both.
func (m *maker) solved() {
	if !m.q.IsSolved() {
		return
	}
	sums, other := m.l.System(m.q)
	entered := m.q.Sums[0] == nil
	add := func(route int, id string, prior float64, slipped [2]expr.Node) {
		if !entered && id == "sense-reversed" { // no part pulls or pushes there
			return
		}
		switch {
		case route == Worded:
		case route == Aside || !entered: // its own route solves sums that are no entries
			route = Aside
		default:
			route = len(m.q.Routes)
		}
		if t := expr.Eliminate(slipped[0], slipped[1], m.q.Name, other); t != nil {
			m.add(route, id, prior, t)
		}
	}
	for i := range sums {
		if sums[i] == nil {
			continue
		}
		for _, f := range Formulas(m.l, sumOf(m.l, m.q, i)) {
			slipped := sums
			slipped[i] = f.Tree
			add(f.Route, f.ID, f.Prior, slipped)
		}
	}
	if sums[1] == nil {
		return
	}
	for _, row := range slips.Catalogue() {
		for _, slipped := range inBoth(m.l, m.q, row, sums) {
			add(0, row.ID, row.Prior, slipped)
		}
	}
}

// sumOf is the sum along x or y that q is the solution of, as an equation.
func sumOf(l *lesson.Lesson, q *lesson.Quantity, i int) *lesson.Quantity {
	if tree := q.Sums[i]; tree != nil {
		return &lesson.Quantity{Dim: statics.DimForce, Equation: true, Routes: []lesson.Route{{Tree: tree}}}
	}
	return l.Quantity(q.Solves[i])
}

// inBoth makes a slip in both sums: a calculator's mode in every key, another
// value or key for what stands in both.
func inBoth(l *lesson.Lesson, q *lesson.Quantity, row *slips.Slip, sums [2]expr.Node) [][2]expr.Node {
	c := &slips.Context{Lesson: l, Quantity: sumOf(l, q, 0), Site: 1}
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

// sum makes the slips that alter all of a sum of forces at once.
func (m *maker) sum() {
	own := m.q.Routes[0].Tree
	for _, tree := range withOthers(m.l, m.q) {
		m.add(0, "force-in-other-sum", slips.ByID("force-in-other-sum").Prior/2, tree)
	}
	m.add(0, "sine-cosine-swapped", slips.ByID("sine-cosine-swapped").Prior, slips.SwapSineCosine(own))
	m.add(0, "magnitudes-for-components", slips.ByID("magnitudes-for-components").Prior, wholeForces(own))
}

// withOthers lists the sum q with a force in it, whole, that acts along the other
// axis alone, as when a weight is put into the sum along x.
func withOthers(l *lesson.Lesson, q *lesson.Quantity) []expr.Node {
	own := expr.Symbols(q.Routes[0].Tree)
	var all []expr.Node
	for i := range l.Quantities {
		o := &l.Quantities[i]
		if !o.Equation || o == q {
			continue
		}
		for _, name := range expr.Symbols(o.Routes[0].Tree) {
			if l.Quantity(name).Dim == statics.DimForce && !slices.Contains(own, name) {
				all = append(all, expr.Add(q.Routes[0].Tree, expr.S(name)), expr.Sub(q.Routes[0].Tree, expr.S(name)))
			}
		}
	}
	return all
}

// wholeForces is a sum of whole forces in the place of their parts.
func wholeForces(tree expr.Node) expr.Node {
	whole, _ := expr.RewriteAll(tree, func(n expr.Node) (expr.Node, bool) {
		if force, key, ok := expr.Operands(n, expr.OpMul); ok && expr.IsTrig(key) {
			return force, true
		}
		return n, false
	})
	return whole
}
