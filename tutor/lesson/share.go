package lesson

import (
	"slices"

	"closingside/statics/expr"
)

// How often ways are taken (judgement).
const (
	shareTaken = 1.0  // of a route that a worked solution takes, against
	ShareOther = 0.4  // that of another, and
	shareKeyed = 0.02 // that of one by sines and the like, where sums of the statement do
)

// Takes tells whether a worked solution takes route j of q, or one like it.
func (l *Lesson) Takes(q *Quantity, j int) bool {
	r := &q.Routes[j]
	taken := r.Principle == q.Routes[0].Principle
	for _, way := range l.Ways {
		for _, step := range way.Steps {
			taken = taken || step.Quantity == q.Name && step.Route == r.ID
		}
	}
	return taken
}

// Seldom tells whether hardly anyone takes route j of q: one by sines to what a few sums
// of the statement give.
func (l *Lesson) Seldom(q *Quantity, j int) bool {
	l.sharing.Do(l.findAtHand)
	return l.atHand[l.index[q.Name]] && keyed(q.Routes[j].Tree) && !l.Takes(q, j)
}

// Share is how often a learner takes route j of q: its share among all.
func (l *Lesson) Share(q *Quantity, j int) float64 {
	of := func(j int) float64 {
		switch {
		case l.Takes(q, j):
			return shareTaken
		case l.Seldom(q, j):
			return shareKeyed
		}
		return ShareOther
	}
	sum := 0.0
	for k := range q.Routes {
		sum += of(k)
	}
	return of(j) / sum
}

// findAtHand notes what is found from the statement without a key.
func (l *Lesson) findAtHand() {
	l.atHand = make([]bool, len(l.Quantities))
	away := func(name string) bool { return !l.atHand[l.index[name]] }
	for more := true; more; {
		more = false
		for i := range l.Quantities {
			q := &l.Quantities[i]
			if !l.atHand[i] && (q.Given || slices.ContainsFunc(q.Routes, func(r Route) bool {
				return !keyed(r.Tree) && !slices.ContainsFunc(expr.Symbols(r.Tree), away)
			})) {
				l.atHand[i], more = true, true
			}
		}
	}
}

// keyed tells whether a key is pressed in a formula.
func keyed(tree expr.Node) bool {
	return expr.Contains(tree, func(n expr.Node) bool { _, key := n.(expr.Fn); return key })
}
