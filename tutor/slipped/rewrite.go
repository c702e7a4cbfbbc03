package slipped

import (
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
)

// Rewrite is a formula with one slip made in it.
type Rewrite struct {
	ID   string
	Tree expr.Node
}

// Rewrites lists what every slip of the catalogue that is a rewrite makes of tree,
// a formula for q. Formulas that come out the same are listed for each slip.
func Rewrites(l *lesson.Lesson, q *lesson.Quantity, tree expr.Node) []Rewrite {
	var all []Rewrite
	for _, base := range Bases(tree) {
		for _, row := range slips.Catalogue() {
			for _, t := range Trees(l, q, row, base) {
				if r := (Rewrite{row.ID, t}); t != tree && !slices.Contains(all, r) {
					all = append(all, r)
				}
			}
		}
	}
	return all
}

// Trees lists the trees that a slip makes of tree, a formula for q.
func Trees(l *lesson.Lesson, q *lesson.Quantity, row *slips.Slip, tree expr.Node) []expr.Node {
	var all []expr.Node
	In(l, q, row, tree, func(t expr.Node, _ int) { all = append(all, t) })
	return all
}

// In visits the trees that a slip makes of tree, a formula for q, and tells how many
// alternatives there are at the same place, which share the row's prior.
func In(l *lesson.Lesson, q *lesson.Quantity, row *slips.Slip, tree expr.Node, visit func(t expr.Node, alternatives int)) {
	if (q.Equation || q.Solves[0] != "") && slips.IsCosineLaw(row.ID) { // products of cosines there are no cross terms
		return
	}
	c := &slips.Context{Lesson: l, Quantity: q}
	switch row.Scope {
	case slips.InStep:
		with := row.Rule(c, tree)
		for _, t := range with {
			visit(t, len(with))
		}
	case slips.AtSite:
		expr.Walk(tree, func(site int, n expr.Node) {
			c.Site = site
			with := row.Rule(c, n)
			for _, t := range with {
				visit(expr.Replace(tree, site, t), len(with))
			}
		})
	}
}

// Bases is the tree itself and, for the supplement of an inverse sine, the inverse
// sine alone: a slip may be made before or without the 180° −.
func Bases(tree expr.Node) []expr.Node {
	if l, r, ok := expr.Operands(tree, expr.OpSub); ok && expr.IsDegrees(l, 180) {
		if _, sine := expr.Argument(r, expr.FnAsin); sine {
			return []expr.Node{tree, r}
		}
	}
	return []expr.Node{tree}
}
