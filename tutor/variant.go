package tutor

import (
	"math"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
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
	l.slipped(q, func(route int, id string, prior float64, tree expr.Node) {
		if k := (key{id, tree}); !seen[k] {
			seen[k] = true
			v := l.variant(id, prior, tree).on(route)
			v.lone = route == aside || slips.ByID(id).Lone
			if route >= 0 && route < len(q.Routes) && q.Turns && !q.Given {
				v.quadrant = l.slippedQuadrant(l.prep.of[l.index[q.Name]].routes[route].quadrant, q.Routes[route].Tree, tree)
			}
			out = append(out, v)
		}
	})
	return out
}

// shareAcute is how often the acute angle is left as it is by those who slipped
// in finding it (judgement).
const shareAcute = 0.3

// addTree takes a tree that a slip makes of a quantity's route, and how often it
// is met.
type addTree func(route int, id string, prior float64, tree expr.Node)

// slipped calls add with every tree that one slip makes of q's routes; the same
// may come again.
func (l *Lesson) slipped(q *lesson.Quantity, add addTree) {
	l.slippedRoutes(q, add)
	l.slippedReading(q, add)
	l.slippedAside(q, add)
	if q.Turns && !q.Given {
		l.leftAcute(q, add)
	}
	if q.Equation {
		l.slippedSum(q, add)
	}
	for _, v := range l.solved(q) {
		by := len(q.Routes)
		if v.route == aside {
			by = aside
		}
		add(by, v.id, v.prior, v.tree)
	}
	for _, m := range q.Mistakes {
		by := len(q.Routes)
		if m.Aside {
			by = aside
		}
		prior := slips.ByID(m.Slip).Prior
		if drawn, other := l.between(q, m.Tree); m.Aside && other {
			add(by, m.Slip, prior*shareDrawnAngle, drawn)
			prior *= 1 - shareDrawnAngle
		}
		add(by, m.Slip, prior, m.Tree)
	}
}

// slippedRoutes makes the slips of the catalogue in q's routes; of a given, in
// reading it.
func (l *Lesson) slippedRoutes(q *lesson.Quantity, add addTree) {
	routes := q.Routes
	if q.Given {
		routes = []lesson.Route{{Tree: expr.S(q.Name)}}
	}
	for j, r := range routes {
		share := 1.0
		if !q.Given {
			share = l.share(q, j)
		}
		for _, tree := range bases(r.Tree) {
			for _, s := range slips.Catalogue() {
				l.each(s, q, tree, func(t expr.Node, alternatives int) {
					prior := s.Prior * share / float64(alternatives)
					if drawn, other := l.between(q, t); other {
						add(j, s.ID, prior*shareDrawnAngle, drawn)
						prior *= 1 - shareDrawnAngle
					}
					add(j, s.ID, prior, t)
				})
			}
		}
	}
}

// slippedReading makes the slips in what is worked out to read a given direction:
// those of its sums and keys. As a whole it is misread by slippedRoutes.
func (l *Lesson) slippedReading(q *lesson.Quantity, add addTree) {
	tree := q.Reading()
	if tree == nil {
		return
	}
	for _, id := range inReading {
		l.each(*slips.ByID(id), q, tree, func(t expr.Node, alternatives int) {
			add(0, id, slips.ByID(id).Prior*shareRead/float64(alternatives), t)
		})
	}
}

// shareRead is how often a slip in working a given direction out is gone on from
// (judgement): beside the sketch, where it lies, most are seen.
const shareRead = 0.3

// inReading are the slips made in working out a direction from how it is given.
var inReading = []string{"complement-for-supplement", "radian-mode", "gradian-mode", "inverse-missing", "ratio-inverted", "quadrant-missed", "reference-angle"}

// slippedAside makes the slips that are looked for in other words of q's routes,
// or by dividing where no fraction is written.
func (l *Lesson) slippedAside(q *lesson.Quantity, add addTree) {
	for j, r := range q.Routes {
		l.each(slips.Divided, q, r.Tree, func(t expr.Node, alternatives int) {
			add(aside, slips.Divided.ID, slips.Divided.Prior*l.share(q, j)/float64(alternatives), t)
		})
	}
	for _, tree := range q.Aside {
		l.each(slips.Divided, q, tree, func(t expr.Node, _ int) { add(aside, slips.Divided.ID, slips.Divided.Prior*shareWorded, t) })
		for _, s := range slips.Catalogue() {
			l.each(s, q, tree, func(t expr.Node, alternatives int) { add(aside, s.ID, s.Prior*shareWorded/float64(alternatives), t) })
		}
	}
}

// leftAcute makes a slip in the acute angle of a direction, a fraction upside down
// or no inverse key, and leaves that angle as it is.
func (l *Lesson) leftAcute(q *lesson.Quantity, add addTree) {
	for j, r := range q.Routes {
		if _, alone := expr.Argument(r.Tree, expr.FnAtan); alone {
			continue
		}
		expr.Walk(r.Tree, func(_ int, n expr.Node) {
			if _, acute := expr.Argument(n, expr.FnAtan); !acute {
				return
			}
			for _, id := range []string{"ratio-inverted", "inverse-missing"} {
				s := *slips.ByID(id)
				l.each(s, q, n, func(t expr.Node, alternatives int) {
					add(j, id, s.Prior*l.share(q, j)*shareAcute/float64(alternatives), t)
				})
			}
		})
	}
}

// slippedSum makes the slips that alter all of a sum of forces at once.
func (l *Lesson) slippedSum(q *lesson.Quantity, add addTree) {
	for _, tree := range l.withOthers(q) {
		add(0, "force-in-other-sum", slips.ByID("force-in-other-sum").Prior/2, tree)
	}
	add(0, "sine-cosine-swapped", slips.ByID("sine-cosine-swapped").Prior, slips.SwapSineCosine(q.Routes[0].Tree))
	add(0, "magnitudes-for-components", slips.ByID("magnitudes-for-components").Prior, wholeForces(q.Routes[0].Tree))
}

// aside stands for the place of a route that is none of the quantity's own, and
// shareWorded is how often it is taken (judgement).
const (
	aside       = -1
	shareWorded = 0.5
)

// shareDrawnAngle is how often an angle between two arrows that comes out beyond
// 180° or below zero is taken as the one drawn (judgement).
const shareDrawnAngle = 0.6

// between is t brought to an angle between 0° and 180°, where q is one and a
// slip took it beyond.
func (l *Lesson) between(q *lesson.Quantity, t expr.Node) (drawn expr.Node, other bool) {
	if q.Turns || q.Between[1] != expr.Deg(180) {
		return nil, false
	}
	v := expr.Eval(t, l.Truth)
	around := 360 * math.Round(v/360)
	if math.IsNaN(v) || math.Abs(v-around) == v {
		return nil, false
	}
	switch {
	case around > 0:
		t = expr.Sub(t, expr.Deg(around))
	case around < 0:
		t = expr.Add(t, expr.Deg(-around))
	}
	if v < around {
		t = expr.Neg{X: t}
	}
	return t, true
}

// bases is the tree itself and, for the supplement of an inverse sine, the
// inverse sine alone: a slip may be made before or without the 180° −.
func bases(tree expr.Node) []expr.Node {
	if l, r, ok := expr.Operands(tree, expr.OpSub); ok && expr.IsDegrees(l, 180) {
		if _, sine := expr.Argument(r, expr.FnAsin); sine {
			return []expr.Node{tree, r}
		}
	}
	return []expr.Node{tree}
}

// apply lists the trees that s makes of tree, a formula for q.
func (l *Lesson) apply(s slips.Slip, q *lesson.Quantity, tree expr.Node) []expr.Node {
	var out []expr.Node
	l.each(s, q, tree, func(t expr.Node, _ int) { out = append(out, t) })
	return out
}

// each visits the trees that s makes of tree, a formula for q, and tells how
// many alternatives there are at the same place, which share the row's prior.
func (l *Lesson) each(s slips.Slip, q *lesson.Quantity, tree expr.Node, visit func(t expr.Node, alternatives int)) {
	if (q.Equation || q.Solves[0] != "") && slips.IsCosineLaw(s.ID) { // products of cosines there are no cross terms
		return
	}
	c := &slips.Context{Lesson: l.Lesson, Quantity: q}
	switch s.Scope {
	case slips.InStep:
		with := s.Rule(c, tree)
		for _, t := range with {
			visit(t, len(with))
		}
	case slips.AtSite:
		expr.Walk(tree, func(site int, n expr.Node) {
			c.Site = site
			with := s.Rule(c, n)
			for _, t := range with {
				visit(expr.Replace(tree, site, t), len(with))
			}
		})
	}
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
