package tutor

import (
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
			v.lone = f.Route == slipped.Worded || slips.ByID(f.ID).Lone
			if f.Route >= 0 && f.Route < len(q.Routes) && q.Turns && !q.Given {
				v.quadrant = l.slippedQuadrant(l.prep.of[l.index[q.Name]].routes[f.Route].quadrant, q.Routes[f.Route].Tree, f.Tree)
			}
			out = append(out, v)
		}
	}
	return out
}
