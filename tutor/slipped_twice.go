package tutor

import (
	"sync"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/slipped"
	"closingside/tutor/slips"
)

// commonRow is the prior from which a row is thought of together with another
// in an equation, where rare ones are met by chance too often.
const commonRow = 0.5

// mayJoin tells whether a row is thought of together with another in one
// formula of q. A given miscopied wherever it stands is looked at from the start
// of the work; in one of its places see slipAgain.
func mayJoin(q *lesson.Quantity, id string) bool {
	return id != "given-miscopied" && !slips.ByID(id).Lone && (!q.Equation || slips.ByID(id).Prior >= commonRow)
}

// twiceSlipped is what two slips, the one after the other, make of one formula of
// a quantity.
type twiceSlipped struct {
	made     sync.Once
	variants []variant
}

// slippedTwice lists what two slips make of one formula of quantity q, made when
// first asked for.
func (l *Lesson) slippedTwice(q int) []variant {
	twice := &l.ready().of[q].twice
	twice.made.Do(func() { twice.variants = l.slipAgain(q) })
	return twice.variants
}

// slipAgain makes a second slip in what one slip makes of quantity q's formulas.
func (l *Lesson) slipAgain(q int) []variant {
	quantity := &l.Quantities[q]
	var out []variant
	seen := map[string]map[expr.Node]bool{}
	for _, v := range l.variantsOf(q) {
		if v.lone || !mayJoin(quantity, v.id) {
			continue
		}
		for _, row := range slips.Catalogue() {
			inOnePlace := row.ID == miscopied[0] && !quantity.Equation
			if row.ID == v.id || !inOnePlace && !mayJoin(quantity, row.ID) {
				continue
			}
			id := joined(v.id, row.ID)
			slipped.In(l.Lesson, quantity, row, v.tree, func(t expr.Node, alternatives int) {
				if seen[id][t] || inOnePlace && l.reads(t) != v.reads {
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
