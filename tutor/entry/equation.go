package entry

import (
	"slices"

	"closingside/statics/expr"
)

// relation reads an entry where an equation is asked, such as the sum of the
// forces along x. Its name may stand before it, or another's, and a sum
// alone is one that equals zero: "ΣFx = T1 cos 40 − T2 cos 30" and
// "T1 cos 40 = T2 cos 30" are both read.
//
//	relation = [ name "=" ] side [ "=" side ]
func (r *Reading) relation(tokens []token, sc *Scope) {
	all := cut(tokens)
	if n := len(all); n == 1 || len(all[n-1]) > 1 {
		all = said(all)
	}
	if named := all[0]; len(all) > 1 && len(named) == 2 && named[0].kind == tName && slices.Contains(sc.Equations, named[0].name) {
		all = all[1:]
	}
	for i := 0; i < len(all) && len(all) > 2; { // ΣFx = 0: … = 0
		if side := all[i]; len(side) == 2 && side[0].kind == tNumber && side[0].num.value == 0 {
			all = slices.Delete(all, i, i+1)
		} else {
			i++
		}
	}
	if n := len(all); n > 2 {
		last := all[n-2]
		last[len(last)-1].fail("equals")
	}
	r.Form = Equation
	names, left := r.side(all[0], false, sc)
	r.Right = expr.N(0)
	if len(all) == 2 {
		more, right := r.side(all[1], true, sc)
		if left.measures() && right.measures() && left.dim != right.dim {
			r.Unequal = right.at.error("unequal", "left", dimensionText(left.dim), "right", dimensionText(right.dim))
		}
		names = append(names, more...)
	}
	if !slices.ContainsFunc(names, func(t token) bool { return slices.Contains(sc.Unknowns, t.name) }) {
		tokens[0].through(tokens[max(0, len(tokens)-2)].span).fail("equation-asked")
	}
}

// side reads one side of an equation and returns the names that stand in it,
// and what it measures.
func (r *Reading) side(tokens []token, right bool, sc *Scope) ([]token, content) {
	p := parser{tokens: tokens, scope: sc}
	tree := p.all()
	if right {
		r.Right = tree
	} else {
		r.Tree = tree
	}
	r.Literals = append(r.Literals, p.literals(tree, right)...)
	p.checkNames()
	measures := p.dimension(tree)
	if p.doubt != nil {
		panic(p.doubt)
	}
	return p.names, measures
}
