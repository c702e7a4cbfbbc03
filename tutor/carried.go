package tutor

import (
	"math"

	"closingside/statics/expr"
)

// derived is a value that follows rightly for a quantity from entries of which
// some are wrong.
type derived struct {
	value float64
	rests set // the wrong entries it rests on
	steps int // taken in the head
}

// maxDerived bounds the values kept for one quantity, nearest first.
const maxDerived = 24

// carried lists what follows for q from the learner's wrong entries, by any
// route and through any number of steps in the head.
func (s *state) carried(q int) *table {
	t := &table{total: 1}
	if s.wrong == 0 {
		return t
	}
	var out []outcome
	l := s.w.Lesson
	for j, f := range l.ready().routes[q] {
		tree := l.Quantities[q].Routes[j].Tree
		s.combine(f.reads, set(0).with(q), func(values []float64, rests set, steps int) {
			v := expr.Eval(tree, l.env(values))
			if rests == 0 || math.IsNaN(v) {
				return
			}
			out = append(out, outcome{value: v, at: l.Quantities[q].Name, from: s.first(rests),
				weight: math.Pow(perStepInHead, float64(steps)),
				plan:   &plan{at: -1, tree: tree}, start: append([]float64(nil), values...)})
		})
	}
	return newTable(&l.Quantities[q], out)
}

// combine visits every choice of values for what a formula reads: entries as
// typed, what follows from them in the head, and otherwise the truth.
func (s *state) combine(reads, on set, visit func(values []float64, rests set, steps int)) {
	values := append([]float64(nil), s.own...)
	var names []int
	reads.each(func(i int) { names = append(names, i) })
	var choose func(k int, rests set, steps int)
	choose = func(k int, rests set, steps int) {
		if k == len(names) {
			visit(values, rests, steps)
			return
		}
		i := names[k]
		if s.wrong.has(i) {
			choose(k+1, rests.with(i), steps)
			return
		}
		for _, d := range s.derive(i, on) {
			values[i] = d.value
			choose(k+1, rests|d.rests, steps+d.steps)
		}
		values[i] = s.own[i]
		choose(k+1, rests, steps)
	}
	choose(0, 0, 0)
}

// derive lists what follows in the head for a quantity that is not entered.
func (s *state) derive(i int, on set) []derived {
	l := s.w.Lesson
	if s.standing.has(i) || on.has(i) || l.ready().givens.has(i) || s.wrong&s.behind(i, on) == 0 {
		return nil
	}
	var out []derived
	for j, f := range l.ready().routes[i] {
		tree := l.Quantities[i].Routes[j].Tree
		s.combine(f.reads, on.with(i), func(values []float64, rests set, steps int) {
			v := expr.Eval(tree, l.env(values))
			if rests == 0 || math.IsNaN(v) || len(out) >= maxDerived {
				return
			}
			for _, d := range out {
				if math.Abs(d.value-v) <= 1e-9*max(1, math.Abs(v)) {
					return
				}
			}
			out = append(out, derived{v, rests, steps + 1})
		})
	}
	return out
}

// behind is the set of entries that quantity i may rest on without passing
// through on.
func (s *state) behind(i int, on set) set {
	seen, todo, found := on.with(i), set(0).with(i), set(0)
	for todo != 0 {
		next := set(0)
		todo.each(func(k int) {
			for _, f := range s.w.Lesson.ready().routes[k] {
				found |= f.reads & s.standing
				next |= f.reads &^ s.standing &^ seen
			}
		})
		seen |= next
		todo = next
	}
	return found
}

// first is the wrong entry made first among those that a value rests on, and
// on which they in turn rest.
func (s *state) first(rests set) string {
	name, at := "", math.MaxInt
	rests.each(func(i int) {
		root := s.w.root(s.w.Lesson.Quantities[i].Name)
		if k, ok := s.w.latest[root]; ok && k < at {
			name, at = root, k
		}
	})
	return name
}

// root is the first wrong entry that the entry for a quantity rests on: its
// own name unless it was carried from another that is still wrong.
func (w *Work) root(name string) string {
	if a := w.Standing(name); a != nil && a.Verdict == Carried && w.Standing(a.From) != nil && !w.Found(a.From) {
		return a.From
	}
	return name
}
