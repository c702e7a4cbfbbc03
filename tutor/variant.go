package tutor

import (
	"math"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/slipped"
	"closingside/tutor/slips"
)

// variant is one tree that a slip makes of a route (or of none, for a mistake
// the kind declares), or two slips together.
type variant struct {
	id    string // "a+b" for two
	prior float64
	tree  expr.Node
	reads set
	whole bool // made of whole-degree givens by sums alone
	route int  // of the quantity's; one past the last for a mistake of the kind, or aside
	prog  *expr.Program
	ids   []string // id alone
	forms []form

	lone     bool          // not thought of together with another slip
	quadrant *ofComponents // of which a slip altered one, in a direction found by an arctangent
}

func (l *Lesson) variant(id string, prior float64, tree expr.Node) variant {
	return variant{id: id, prior: prior, tree: tree, reads: l.reads(tree), whole: sumsAlone(tree, l), prog: l.compile(tree), ids: []string{id}}
}

// on notes which route a variant is of.
func (v variant) on(route int) variant {
	v.route, v.forms = route, []form{{v.id, v.tree, v.prior}}
	return v
}

// variants lists every tree that one slip makes of q's routes, each once for
// each slip.
func (l *Lesson) variants(q *lesson.Quantity) []variant {
	type key struct {
		id   string
		tree expr.Node
	}
	var out []variant
	seen := map[key]bool{}
	for _, f := range slipped.Formulas(l.Lesson, q) {
		if k := (key{f.ID, f.Tree}); !seen[k] {
			seen[k] = true
			v := l.variant(f.ID, f.Prior, f.Tree).on(f.Route)
			v.lone = f.Route == slipped.Aside || slips.ByID(f.ID).Lone
			if f.Route >= 0 && f.Route < len(q.Routes) && q.Turns && !q.Given {
				v.quadrant = l.slippedQuadrant(l.prep.of[l.index[q.Name]].routes[f.Route].quadrant, q.Routes[f.Route].Tree, f.Tree)
			}
			out = append(out, v)
		}
	}
	return out
}

// sumsAlone tells whether tree is made of whole givens by sums alone, halves of
// them and multiples among them: no digits are left off on the way.
func sumsAlone(tree expr.Node, l *Lesson) bool {
	return !expr.Contains(tree, func(n expr.Node) bool {
		switch n := n.(type) {
		case expr.Fn:
			return true
		case expr.Bin:
			return n.Op == expr.OpDiv && n.R != expr.N(2)
		case expr.Sym:
			return !l.whole.has(l.index[n.Name])
		}
		return false
	})
}

// wholes are the quantities known to be whole: those given so, and what comes of
// them by sums. One that is whole by chance, as an angle between equal forces, is
// worked out like any other.
func (l *Lesson) wholes() set {
	whole := set(0)
	for before := ^whole; before != whole; {
		before, l.whole = whole, whole
		for i := range l.Quantities {
			q := &l.Quantities[i]
			if q.True == math.Trunc(q.True) && (q.Given || slices.ContainsFunc(q.Routes, func(r lesson.Route) bool { return sumsAlone(r.Tree, l) })) {
				whole = whole.with(i)
			}
		}
	}
	return whole
}
