package tutor

import (
	"math"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/balance"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// view is one way to see the lesson's equations: some unknowns at the values
// the learner has for them, and what is known as it is true or as the learner
// has it.
type view struct {
	w     *Work
	found set    // unknowns taken as entered
	paper set    // unknowns taken at their true values: found on paper, not entered
	own   bool   // the learner's own values for what is known
	from  string // the first wrong entry it rests on; "" where all is right
	basis []*balance.Equation
}

// maxFound bounds the unknowns that are tried with and without their values.
const maxFound = 3

// views lists the ways to see the equations: the plain one first, those that
// rest on a wrong entry last. An unknown force may stand in a sum at its value
// without having been entered, as that sum is a combination of the two; an
// unknown angle and the force it turns may not, as their product is not linear
// in them; so where an angle is unknown each is also tried as found on paper.
func (w *Work) views() []*view {
	found, paper, wrong := w.unknowns()
	found = found[:min(len(found), maxFound)]
	var all []*view
	for choice := range 1 << len(found) {
		v := &view{w: w}
		var rests []string
		for k, i := range found {
			if name := w.Lesson.Quantities[i].Name; choice>>k&1 == 1 {
				v.found = v.found.with(i)
				if !w.Found(name) {
					rests = append(rests, name)
				}
			}
		}
		v.from = w.earliest(rests)
		all = append(all, v)
		if len(wrong) > 0 {
			all = append(all, &view{w: w, found: v.found, own: true, from: w.earliest(append(rests, wrong...))})
		}
	}
	for _, v := range all[:len(all):len(all)] {
		for _, i := range paper {
			on := *v
			on.paper = on.paper.with(i)
			all = append(all, &on)
		}
	}
	slices.SortStableFunc(all, func(a, b *view) int { return min(len(a.from), 1) - min(len(b.from), 1) })
	for _, v := range all {
		v.basis = v.lesson()
	}
	return all
}

// unknowns sorts what may stand in an equation: the unknowns that were entered,
// those that may have been found on paper, and what else was entered wrongly.
func (w *Work) unknowns() (found, paper []int, wrong []string) {
	turning := slices.ContainsFunc(w.Lesson.Quantities, func(q lesson.Quantity) bool { return q.Unknown && q.IsAngle() })
	for i := range w.Lesson.Quantities {
		q := &w.Lesson.Quantities[i]
		v, ok := w.typed(q.Name)
		switch {
		case q.Unknown && !ok && turning && !math.IsNaN(q.True):
			paper = append(paper, i)
		case !ok || math.IsNaN(v) || q.Equation:
		case q.Unknown:
			found = append(found, i)
		case !w.Found(q.Name):
			wrong = append(wrong, q.Name)
		}
	}
	return found, paper, wrong
}

// earliest is the one of the names that was entered first, or that it rests on.
func (w *Work) earliest(names []string) string {
	first, at := "", math.MaxInt
	for _, n := range names {
		root := w.root(n)
		if k := w.latest[root]; k < at {
			first, at = root, k
		}
	}
	return first
}

// lesson lists the lesson's equations under the view, those left out that say
// nothing.
func (v *view) lesson() []*balance.Equation {
	var all []*balance.Equation
	for i := range v.w.Lesson.Quantities {
		if q := &v.w.Lesson.Quantities[i]; q.Equation {
			if b := v.balance(balance.Exact(q.Routes[0].Tree), balance.Exact(expr.N(0))); b != nil && b.Size > balance.Tolerance*v.w.largest() {
				all = append(all, b)
			}
		}
	}
	return all
}

// entered is an entry under the view; nil where it can't be written as terms,
// or names an unknown that the view takes as found, or something that follows
// from one found on paper.
func (v *view) entered(r *entry.Reading) *balance.Equation { return v.enteredAs(r, mayBeOff) }

// enteredAs is entered with numbers that may be off by so much.
func (v *view) enteredAs(r *entry.Reading, off func(entry.Literal) float64) *balance.Equation {
	l := v.w.Lesson
	for _, side := range []expr.Node{r.Tree, r.Right} {
		for _, name := range expr.Symbols(side) {
			if q := l.Quantity(name); v.found.has(l.index[name]) || l.FollowsFrom(q, v.onPaper) {
				return nil
			}
		}
	}
	return v.balance(balance.Side{Tree: r.Tree, Literal: v.w.literals(r, false, off)}, balance.Side{Tree: r.Right, Literal: v.w.literals(r, true, off)})
}

func (v *view) onPaper(q *lesson.Quantity) bool { return v.paper.has(v.w.Lesson.index[q.Name]) }

func (v *view) balance(left, right balance.Side) *balance.Equation {
	t, ok := (&balance.Sorter{Value: v.value, Tree: v.tree}).Terms(left, right)
	if !ok {
		return nil
	}
	return balance.Weigh(v.w.Lesson.Lesson, t, v.w.largest())
}

// holds tells whether an equation follows from the lesson's.
func (v *view) holds(e *balance.Equation) bool {
	if len(v.basis) == 2 && balance.CountProducts(v.basis) >= 2 {
		return e.SpannedBy(v.basis)
	}
	// Two equations in one unknown: of combinations, any would be one.
	return slices.ContainsFunc(v.basis, e.MultipleOf)
}

// value is that of a name in an equation; false for an unknown, and for what
// follows from one.
func (v *view) value(name string) (balance.Coef, bool) {
	l := v.w.Lesson
	q := l.Quantity(name)
	switch {
	case q.Given:
		return balance.Coef{Value: q.True}, true
	case q.Unknown:
		x := q.True
		switch i := l.index[name]; {
		case v.found.has(i):
			x, _ = v.w.typed(name)
		case !v.paper.has(i):
			return balance.Coef{}, false
		}
		return balance.Coef{Value: x, Off: max(v.w.Band(q).Half, v.w.Settings.DigitsOf(q).HalfUnit(q.Dim, x))}, true
	case l.FollowsFromUnknown(q):
		return balance.Coef{}, false
	case v.own:
		if x, ok := v.w.typed(name); ok && !math.IsNaN(x) {
			return balance.Coef{Value: x}, true
		}
	}
	return balance.Coef{Value: q.True}, true
}

// tree is the formula by which a name that follows from an unknown does so.
func (v *view) tree(name string) expr.Node {
	if q := v.w.Lesson.Quantity(name); !q.Unknown {
		return q.Definition()
	}
	return nil
}
