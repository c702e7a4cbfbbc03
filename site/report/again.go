package report

import (
	"cmp"
	"maps"
	"slices"
)

// report puts together what was collected.
func (g *gathering) report() *Report {
	r := &g.sum
	for _, p := range slices.SortedFunc(maps.Values(g.problems), byPlace) {
		one := p.Problem
		one.Quantities = []Quantity{}
		for i := range p.lesson.Quantities { // in the lesson's order; those of a larger sketch after them
			if v := p.values[p.lesson.Quantities[i].Name]; v != nil {
				one.Quantities = append(one.Quantities, v.summed())
				delete(p.values, v.Name)
			}
		}
		for _, name := range slices.Sorted(maps.Keys(p.values)) {
			one.Quantities = append(one.Quantities, p.values[name].summed())
		}
		r.Problems = append(r.Problems, one)
	}
	for _, s := range g.slips {
		s.settle(g)
		r.Slips = append(r.Slips, s.Slip)
	}
	slices.SortFunc(r.Slips, func(a, b Slip) int {
		return cmp.Or(cmp.Compare(b.Students, a.Students), cmp.Compare(b.Times, a.Times), cmp.Compare(a.ID, b.ID))
	})
	slices.SortStableFunc(r.Students, func(a, b Student) int { return cmp.Compare(a.Name, b.Name) })
	r.Again = again(r)
	return r
}

// byPlace orders problems: sets by title, then those in none, by kind.
func byPlace(a, b *problem) int {
	inNone := func(p *problem) int {
		if p.Number == 0 {
			return 1
		}
		return 0
	}
	return cmp.Or(cmp.Compare(inNone(a), inNone(b)), cmp.Compare(a.Set, b.Set), cmp.Compare(a.Number, b.Number),
		cmp.Compare(a.Kind, b.Kind), cmp.Compare(a.Story, b.Story), cmp.Compare(a.key, b.key))
}

func (v *value) summed() Quantity {
	v.Tries, v.Seconds = median(v.tries), median(v.seconds)
	return v.Quantity
}

// settle names the step where a slip was met most often, with an example.
func (s *slip) settle(g *gathering) {
	most := 0
	for _, where := range slices.SortedFunc(maps.Keys(s.steps), func(a, b step) int {
		return cmp.Or(cmp.Compare(a.problem, b.problem), cmp.Compare(a.at, b.at))
	}) {
		if p := s.steps[where]; p.times > most {
			most = p.times
			s.At, s.Problem, s.Example = where.at, g.problems[where.problem].label(), p.example
		}
	}
}

// What is worth teaching again: a slip that a fifth of the students met, or a
// value that a third of those who tried did not find without help, and two of
// them at least; at most so many of each (judgement).
const (
	shareOfClass = 5
	shareOfTries = 3
	fewest       = 2
	mostAgain    = 5
)

// again lists what to teach again: slips that most students share first, then
// values at which most of them stuck.
func again(r *Report) []Again {
	all := []Again{}
	for _, s := range r.Slips {
		if s.Students >= min(fewest, len(r.Students)) && s.Students*shareOfClass >= len(r.Students) && len(all) < mostAgain {
			all = append(all, Again{s.ID, s.Title, s.Students, s.At, s.Problem})
		}
	}
	var stuck []Again
	for _, p := range r.Problems {
		for _, q := range p.Quantities {
			n := q.Helped + q.Never
			if n >= min(fewest, len(r.Students)) && n*shareOfTries >= q.Tried {
				stuck = append(stuck, Again{Title: q.What, Students: n, At: q.Symbol, Problem: (&problem{Problem: p}).label()})
			}
		}
	}
	slices.SortStableFunc(stuck, func(a, b Again) int { return cmp.Compare(b.Students, a.Students) })
	return append(all, stuck[:min(len(stuck), mostAgain)]...)
}
