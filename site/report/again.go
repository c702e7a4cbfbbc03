package report

import (
	"cmp"
	"slices"
)

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
				stuck = append(stuck, Again{Title: q.What, Students: n, At: q.Symbol, Problem: p.label()})
			}
		}
	}
	slices.SortStableFunc(stuck, func(a, b Again) int { return cmp.Compare(b.Students, a.Students) })
	return append(all, stuck[:min(len(stuck), mostAgain)]...)
}
