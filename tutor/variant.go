package tutor

import (
	"closingside/statics/expr"
)

// variant is one tree that a slip makes of a route (or of none, for a mistake
// the kind declares), or two slips together.
type variant struct {
	id    string // "a+b" for two
	prior float64
	tree  expr.Node
	reads set
	whole bool // made of whole-degree givens by sums alone
	route int  // of the quantity's; one past the last for a mistake of the kind
}

func (l *Lesson) variant(id string, prior float64, tree expr.Node) variant {
	return variant{id: id, prior: prior, tree: tree, reads: l.reads(tree), whole: sumsAlone(tree, l)}
}

// variants lists every tree that one slip makes of q's routes, each once for
// each slip.
func (l *Lesson) variants(q *Quantity) []variant {
	type key struct {
		id   string
		tree expr.Node
	}
	var out []variant
	seen := map[key]bool{}
	add := func(route int, id string, prior float64, tree expr.Node) {
		if k := (key{id, tree}); !seen[k] {
			seen[k] = true
			v := l.variant(id, prior, tree)
			v.route = route
			out = append(out, v)
		}
	}
	for j, r := range q.Routes {
		for _, tree := range bases(r.Tree) {
			for _, s := range catalogue {
				for _, t := range l.apply(s, q, tree) {
					add(j, s.ID, s.Prior, t)
				}
			}
		}
	}
	for _, m := range q.Mistakes {
		add(len(q.Routes), m.Slip, slipByID(m.Slip).Prior, m.Tree)
	}
	return out
}

// bases is the tree itself and, for the supplement of an inverse sine, the
// inverse sine alone: a slip may be made before or without the 180° −.
func bases(tree expr.Node) []expr.Node {
	if l, r, ok := bin(tree, expr.OpSub); ok && isDegrees(l, 180) {
		if _, sine := fn(r, expr.FnAsin); sine {
			return []expr.Node{tree, r}
		}
	}
	return one(tree)
}

// apply lists the trees that s makes of tree, a formula for q.
func (l *Lesson) apply(s Slip, q *Quantity, tree expr.Node) []expr.Node {
	c := &context{lesson: l, quantity: q}
	switch s.Scope {
	case InStep:
		return s.Rule(c, tree)
	case AtSite:
		var out []expr.Node
		expr.Walk(tree, func(site int, n expr.Node) {
			c.site = site
			for _, with := range s.Rule(c, n) {
				out = append(out, expr.Replace(tree, site, with))
			}
		})
		return out
	}
	return nil
}

// sumsAlone tells whether tree is made of whole-degree givens by sums alone.
func sumsAlone(tree expr.Node, l *Lesson) bool {
	return !contains(tree, func(n expr.Node) bool {
		switch n := n.(type) {
		case expr.Fn:
			return true
		case expr.Sym:
			q := l.Quantity(n.Name)
			return q.True != float64(int64(q.True))
		}
		return false
	})
}
