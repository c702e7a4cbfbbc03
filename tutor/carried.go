package tutor

import (
	"cmp"
	"math"
	"slices"

	"closingside/tutor/lesson"
)

// derived is a value that follows rightly for a quantity from entries of which
// some are wrong.
type derived struct {
	value  float64
	rests  set // the wrong entries it rests on
	steps  int // taken in the head
	weight float64
}

// maxDerived bounds the values kept for one quantity, nearest first.
const maxDerived = 24

// carried lists what follows for q from the learner's wrong entries, by any
// route and through any number of steps in the head.
func (s *state) carried(q int) *table {
	l := s.w.Lesson
	out := s.fromWrongEquations(q)
	if s.wrong == 0 {
		return s.newTable(q, out)
	}
	quantity := &l.Quantities[q]
	name, same := quantity.Name, floorWork.of(quantity)
	for j := range l.ready().of[q].routes {
		f := &l.prep.of[q].routes[j]
		right := s.fromRight(f)
		s.combine(f.reads, set(0).with(q), func(values []float64, rests set, steps int, weight float64) {
			if rests == 0 {
				return
			}
			var start []float64
			for k := range f.ways {
				v := f.ways[k].work(values, &s.tape)
				if math.IsNaN(v) || quantity.FoldedDistance(v, right[k]) <= same { // what was wrong made no difference
					continue
				}
				if start == nil {
					start = slices.Clone(values)
				}
				o := &outcome{value: v, ids: carriedIDs, at: name, rests: rests, straight: steps == 0, prog: f.prog, start: start}
				g := guess{value: v, weight: weight * math.Pow(perStepInHead, float64(steps)) * f.ways[k].share(), first: o}
				out = append(out, g)
				if sketched(quantity, v) {
					drawn := *o
					drawn.value, drawn.prog = -v, nil
					out = append(out, guess{value: -v, weight: g.weight * shareDrawn, first: &drawn})
				}
			}
		})
	}
	out = s.onward(out, q)
	s.toFewest(out, same)
	return s.newTable(q, out)
}

// sketched tells whether a component came out in the other sense than it has: of such a
// one, some take the size alone, and the sign from the sketch.
func sketched(q *lesson.Quantity, v float64) bool { return q.Signed && v*q.True < 0 }

// fromRight is what a route gives, each way, from what is right.
func (s *state) fromRight(f *routeFacts) []float64 {
	right := make([]float64, len(f.ways))
	for k := range f.ways {
		right[k] = f.ways[k].work(s.sound, &s.tape)
	}
	return right
}

// toFewest sends each value carried back to the first of the fewest wrong entries
// that give it: what else was wrong makes no difference to it, as a sign that is
// squared away, or an angle that a force found by it cancels again.
func (s *state) toFewest(all []guess, same float64) {
	slices.SortStableFunc(all, func(a, b guess) int { return cmp.Compare(a.value, b.value) })
	for i := range all {
		o := all[i].first
		fewest := o.rests
		for _, step := range []int{-1, 1} {
			for j := i + step; j >= 0 && j < len(all) && math.Abs(all[j].value-all[i].value) <= same; j += step {
				if r := all[j].first.rests; r != 0 && r.size() < fewest.size() {
					fewest = r
				}
			}
		}
		if fewest != 0 { // else from a wrong equation
			o.from = s.first(fewest)
		}
	}
}

// onward appends what follows by a way on from wrong entries that is never
// taken in the head.
func (s *state) onward(out []guess, q int) []guess {
	l := s.w.Lesson
	for _, on := range l.ready().of[q].onward {
		s.combine(on.reads, set(0).with(q), func(values []float64, rests set, steps int, weight float64) {
			v := on.prog.Run(values, &s.tape)
			if rests == 0 || math.IsNaN(v) {
				return
			}
			o := &outcome{value: v, ids: carriedIDs, at: l.Quantities[q].Name, rests: rests, prog: on.prog, start: slices.Clone(values)}
			out = append(out, guess{value: v, weight: lesson.ShareOther * weight * math.Pow(perStepInHead, float64(steps)), first: o})
		})
	}
	return out
}

// shareMended is the share of the wrong entries that a learner goes on from
// having put right on paper alone (judgement).
const shareMended = 0.2

// combine visits every choice of values for what a formula reads: entries as
// typed or put right since, what follows from them in the head, and otherwise
// the truth. What is on the way to a value can't be read in finding it.
func (s *state) combine(reads, on set, visit func(values []float64, rests set, steps int, weight float64)) {
	values := slices.Clone(s.own)
	var places []int
	reads.each(func(i int) { places = append(places, i) })
	var choose func(k int, rests set, steps int, weight float64)
	choose = func(k int, rests set, steps int, weight float64) {
		if k == len(places) {
			visit(values, rests, steps, weight)
			return
		}
		i := places[k]
		if on.has(i) { // nothing is found from itself
			return
		}
		if s.wrong.has(i) {
			choose(k+1, rests.with(i), steps, weight)
			if s.wrong != set(0).with(i) { // put right on paper, and not on the page
				values[i] = s.truth[i]
				choose(k+1, rests, steps, weight*shareMended)
				values[i] = s.own[i]
			}
			return
		}
		for _, d := range s.derive(i, on) {
			values[i] = d.value
			choose(k+1, rests|d.rests, steps+d.steps, weight*d.weight)
		}
		values[i] = s.own[i]
		choose(k+1, rests, steps, weight)
	}
	choose(0, 0, 0, 1)
}

// derive lists what follows in the head for a quantity that is not entered.
func (s *state) derive(i int, on set) []derived {
	l := s.w.Lesson
	if s.standing.has(i) || on.has(i) || l.ready().givens.has(i) || s.wrong&s.behind(i, on) == 0 {
		return nil
	}
	var out []derived
	for j := range l.prep.of[i].routes {
		f := &l.prep.of[i].routes[j]
		right := s.fromRight(f)
		s.combine(f.reads, on.with(i), func(values []float64, rests set, steps int, weight float64) {
			for k := range f.ways {
				v := f.ways[k].work(values, &s.tape)
				if rests == 0 || math.IsNaN(v) || len(out) >= maxDerived {
					return
				}
				if math.Abs(v-right[k]) <= l.Quantities[i].Epsilon() { // it came out again
					continue
				}
				d := derived{v, rests, steps + 1, weight * f.ways[k].share()}
				out = addDerived(out, d)
				if sketched(&l.Quantities[i], v) {
					d.value, d.weight = -v, d.weight*shareDrawn
					out = addDerived(out, d)
				}
			}
		})
	}
	return out
}

// addDerived adds a value that is not there yet.
func addDerived(all []derived, d derived) []derived {
	for _, o := range all {
		if math.Abs(d.value-o.value) <= 1e-9*max(1, math.Abs(o.value)) {
			return all
		}
	}
	return append(all, d)
}

// behind is the set of entries that quantity i may rest on without passing
// through on.
func (s *state) behind(i int, on set) set {
	seen, todo, found := on.with(i), set(0).with(i), set(0)
	for todo != 0 {
		next := set(0)
		todo.each(func(k int) {
			for _, f := range s.w.Lesson.ready().of[k].routes {
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
