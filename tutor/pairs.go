package tutor

import (
	"slices"

	"closingside/statics/expr"
)

// commonRow is the prior from which a row is thought of together with another
// in an equation, where rare ones are met by chance too often.
const commonRow = 0.5

// mayPair tells whether a row is thought of together with another in one
// formula of q. A given miscopied is looked at from the start of the work.
func mayPair(q *Quantity, id string) bool {
	return id != "given-miscopied" && !slipByID(id).Lone && (!q.Equation || slipByID(id).Prior >= commonRow)
}

// pairsIn lists the trees that two slips make of one formula of q, the one
// after the other; made once for a lesson.
func (l *Lesson) pairsIn(q int) []variant {
	prep := l.ready()
	prep.paired[q].Do(func() { prep.pairs[q] = l.pairUp(q) })
	return prep.pairs[q]
}

func (l *Lesson) pairUp(q int) []variant {
	quantity := &l.Quantities[q]
	singles := map[expr.Node]bool{}
	for _, v := range l.variantsOf(q) {
		singles[v.tree] = true
	}
	var out []variant
	seen := map[string]map[expr.Node]bool{}
	for _, v := range l.variantsOf(q) {
		if v.lone || !mayPair(quantity, v.id) {
			continue
		}
		for _, row := range catalogue {
			if row.ID == v.id || !mayPair(quantity, row.ID) {
				continue
			}
			id := joined(v.id, row.ID)
			l.each(row, quantity, v.tree, func(t expr.Node, alternatives int) {
				if singles[t] || seen[id][t] {
					return
				}
				if seen[id] == nil {
					seen[id] = map[expr.Node]bool{}
				}
				seen[id][t] = true
				out = append(out, l.variant(id, v.prior*row.Prior/float64(alternatives), t))
			})
		}
	}
	return out
}

// blunt tells whether a step of p takes the other angle of a sine.
func (p *plan) blunt() bool {
	return slices.ContainsFunc(p.steps, func(st planStep) bool { return st.supplement })
}
