package figure

import "slices"

// searchSteps bounds one search for a joint placement, searchRestarts how often
// a search that found none starts again.
const (
	searchSteps    = 1500
	searchRestarts = 12
)

// search chooses one spot for every label so that none disturbs another, at
// the least cost it finds: depth first, the label with the least choice first,
// cutting off what cannot beat the best. Where that finds nothing, the label it
// got stuck at moves to the front, and it starts again. It returns nil when
// there is no placement, or none within its bounds.
func search(choices [][]spot) []spot {
	order := make([]int, len(choices))
	for i := range order {
		if len(choices[i]) == 0 {
			return nil
		}
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, j int) int { return len(choices[i]) - len(choices[j]) })
	s := searcher{choices: choices, order: order,
		chosen: make([]*spot, len(choices)), rest: make([]float64, len(choices)+1)}
	for range 1 + searchRestarts {
		for k := len(order) - 1; k >= 0; k-- {
			s.rest[k] = s.rest[k+1] + choices[order[k]][0].cost
		}
		s.left, s.stuck = searchSteps, 0
		s.descend(0, 0)
		if s.best != nil || len(order) == 0 {
			break
		}
		hard := order[s.stuck]
		copy(order[1:], order[:s.stuck])
		order[0] = hard
	}
	return s.best
}

type searcher struct {
	choices [][]spot
	order   []int
	rest    []float64 // the least the labels from here on can cost
	chosen  []*spot   // by depth
	best    []spot    // by label
	cost    float64
	left    int
	stuck   int // the greatest depth at which a label found no place
}

func (s *searcher) descend(depth int, cost float64) {
	if depth == len(s.order) {
		s.cost = cost
		s.best = make([]spot, len(s.order))
		for k, i := range s.order {
			s.best[i] = *s.chosen[k]
		}
		return
	}
	s.stuck = max(s.stuck, depth)
	spots := s.choices[s.order[depth]]
	for i := range spots {
		next := cost + spots[i].cost
		if s.best != nil && next+s.rest[depth+1] >= s.cost-1e-9 {
			return
		}
		if s.left--; s.left < 0 {
			return
		}
		if s.free(&spots[i], depth) {
			s.chosen[depth] = &spots[i]
			s.descend(depth+1, next)
		}
	}
}

// free reports whether a spot goes with those chosen before it.
func (s *searcher) free(t *spot, depth int) bool {
	for _, o := range s.chosen[:depth] {
		if t.disturbs(o) {
			return false
		}
	}
	return true
}

// disturbs reports whether two labels, or one and the other's leader, touch,
// or two leaders cross.
func (s *spot) disturbs(o *spot) bool {
	if s.box.grow(betweenGap).meets(o.box) {
		return true
	}
	if s.leader && (&stroke{a: s.start, b: s.end, half: 0.5}).hits(o.box, labelGap) {
		return true
	}
	if o.leader && (&stroke{a: o.start, b: o.end, half: 0.5}).hits(s.box, labelGap) {
		return true
	}
	return s.leader && o.leader && crosses(s.start, s.end, o.start, o.end)
}
