package tutor

import (
	"math"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

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

// wholly is the share of one way that is whole, or not.
func wholly(whole bool) float64 {
	if whole {
		return 1
	}
	return 0
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

// inexactly notes how often each quantity is found by a way on which something may be
// rounded: one that is whole, seldom.
func (l *Lesson) inexactly() {
	of := l.prep.of
	for i := range of {
		if !l.whole.has(i) {
			of[i].inexact = 1
		}
	}
	for range wholeRounds {
		l.whole.each(func(i int) {
			sum := 0.0
			for _, f := range of[i].routes {
				exact := wholly(f.sums)
				f.reads.each(func(in int) { exact *= 1 - of[in].inexact })
				sum += f.share * (1 - exact)
			}
			of[i].inexact = sum
		})
	}
}

// wholeRounds is how often quantities that are whole by each other are gone through:
// what that leaves off is small.
const wholeRounds = 4
