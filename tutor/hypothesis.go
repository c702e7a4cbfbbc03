package tutor

import (
	"cmp"
	"math"
	"slices"

	"closingside/statics/expr"
)

// outcome is a value that a hypothesis predicts for a quantity: the slips
// that were made, where, and by which formula the value comes out.
type outcome struct {
	value  float64
	ids    []string // equal in value; "a+b" for two slips together
	at     string   // quantity in whose finding the (first) slip sits
	weight float64  // prior among outcomes, before normalising
	spread spread   // how a student's rounding moves the value
	exact  bool     // whole degrees by sums alone: no rounding blurs it
}

// spread is the standard deviation of the value for students who keep 4 or 3
// digits on the way.
type spread struct{ four, three float64 }

// perStepInHead is the factor on a hypothesis for each step between the slip
// and the entry that the learner did not write down (judgement).
const perStepInHead = 0.5

// outcomes lists what single slips predict for q, given what the learner has
// entered: slips in finding q itself, and slips in a step done in the head
// before it. Outcomes equal in value are merged, all ids kept.
func (w *Work) outcomes(q *Quantity) []outcome {
	if table, ok := w.tables[q.Name]; ok {
		return table
	}
	table := w.tabulate(q)
	if w.tables == nil {
		w.tables = map[string][]outcome{}
	}
	w.tables[q.Name] = table
	return table
}

func (w *Work) tabulate(q *Quantity) []outcome {
	env := expr.Env(w.own)
	out := w.direct(q, env)
	for i := range w.Lesson.Quantities {
		in := &w.Lesson.Quantities[i]
		if in.Given || in == q || w.Standing(in.Name) != nil {
			continue
		}
		for _, o := range w.direct(in, env) {
			out = append(out, w.downstream(q, in, o)...)
		}
	}
	return merge(q, out)
}

// direct lists what a slip in finding q itself predicts, by any of its routes.
func (w *Work) direct(q *Quantity, env expr.Env) []outcome {
	var out []outcome
	for _, v := range w.Lesson.variants(q) {
		if o, ok := w.predict(q, v, env); ok {
			out = append(out, o)
		}
	}
	for _, s := range catalogue {
		if s.Scope != InAnswer {
			continue
		}
		for _, v := range s.Written(&context{lesson: w.Lesson, quantity: q}, q.True) {
			out = append(out, outcome{value: v, ids: []string{s.ID}, at: q.Name, weight: s.Prior, spread: w.spread(q, q.Routes[0].Tree, env)})
		}
	}
	return out
}

// variant is one tree that a slip makes of a route (or of none, for a mistake
// the kind declares).
type variant struct {
	slip  string
	prior float64
	tree  expr.Node
}

// variants lists every tree that one slip makes of q's routes.
func (l *Lesson) variants(q *Quantity) []variant {
	var out []variant
	for _, r := range q.Routes {
		for _, tree := range bases(r.Tree) {
			for _, s := range catalogue {
				for _, t := range l.apply(s, q, tree) {
					out = append(out, variant{s.ID, s.Prior, t})
				}
			}
		}
	}
	for _, m := range q.Mistakes {
		out = append(out, variant{m.Slip, slipByID(m.Slip).Prior, m.Tree})
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

// predict evaluates a variant; false where it has no value, or the true one.
func (w *Work) predict(q *Quantity, v variant, env expr.Env) (outcome, bool) {
	value := expr.Eval(v.tree, env)
	if math.IsNaN(value) {
		return outcome{}, false
	}
	return outcome{value: value, ids: []string{v.slip}, at: q.Name, weight: v.prior,
		spread: w.spread(q, v.tree, env), exact: sumsAlone(v.tree, w.Lesson)}, true
}

// downstream lists what q comes to when in came out wrong as o says and every
// later step, done in the head, was right.
func (w *Work) downstream(q, in *Quantity, o outcome) []outcome {
	var out []outcome
	for _, r := range q.Routes {
		world := world{w: w, at: in.Name, value: o.value, on: map[string]bool{q.Name: true}}
		if !world.reaches(r.Tree) {
			continue
		}
		value := expr.Eval(r.Tree, world.env)
		if math.IsNaN(value) {
			continue
		}
		out = append(out, outcome{value: value, ids: o.ids, at: in.Name, weight: o.weight * math.Pow(perStepInHead, world.steps()),
			spread: w.spread(q, r.Tree, world.env), exact: o.exact && sumsAlone(r.Tree, w.Lesson)})
	}
	return out
}

// spread is how rounding every intermediate at 4 and at 3 digits moves the
// value of tree: each is uniform within half a unit, so its variance is a
// third of the square.
func (w *Work) spread(q *Quantity, tree expr.Node, env expr.Env) spread {
	var four, three float64
	for _, p := range expr.Trace(tree, env) {
		switch p.Node.(type) {
		case expr.Num, expr.Ang, expr.Pi:
			continue
		case expr.Sym:
			in := w.Lesson.Quantity(p.Node.(expr.Sym).Name)
			if in.Given || w.Standing(in.Name) != nil {
				continue
			}
		}
		dim := dimension(p.Node)
		if s, ok := p.Node.(expr.Sym); ok {
			dim = w.Lesson.Quantity(s.Name).Dim
		}
		if p.Site == 0 {
			dim = q.Dim
		}
		add := func(d Digits) float64 {
			e := p.Slope * d.halfUnit(dim, p.Value)
			if math.IsNaN(e) {
				return 0
			}
			return e * e / 3
		}
		four += add(Digits{4, 2})
		three += add(Digits{3, 1})
	}
	return spread{math.Sqrt(four), math.Sqrt(three)}
}

// sumsAlone tells whether tree is made of whole-degree givens by sums alone.
func sumsAlone(tree expr.Node, l *Lesson) bool {
	return !contains(tree, func(n expr.Node) bool {
		switch n := n.(type) {
		case expr.Fn:
			return true
		case expr.Sym:
			q := l.Quantity(n.Name)
			return q.True != math.Trunc(q.True)
		}
		return false
	})
}

// merge gathers outcomes of the same value: ids are joined, weights added. The
// true value itself is dropped.
func merge(q *Quantity, all []outcome) []outcome {
	slices.SortStableFunc(all, func(a, b outcome) int { return cmp.Compare(a.value, b.value) })
	same := 1e-9 * max(1, math.Abs(q.True))
	var out []outcome
	for _, o := range all {
		if q.apart(o.value, q.True) <= same {
			continue
		}
		if n := len(out); n > 0 && o.value-out[n-1].value <= same {
			out[n-1].absorb(o)
			continue
		}
		out = append(out, o)
	}
	return out
}

// absorb adds another way to the same value.
func (o *outcome) absorb(other outcome) {
	for _, id := range other.ids {
		if !slices.Contains(o.ids, id) {
			o.ids = append(slices.Clone(o.ids), id)
			o.weight += other.weight
			slices.Sort(o.ids)
		}
	}
	o.exact = o.exact && other.exact
}
