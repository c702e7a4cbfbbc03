package sketch

import (
	"cmp"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"
)

// course is what a side from one corner to another stands for: how the arrows
// between them are gone along.
type course struct {
	kind     gait
	from, to r2.Vec
	off      float64
	missing  []int // arrows left out
}

// gait says how a course goes along the arrows.
type gait uint8

// The kinds of course, best first.
const (
	allForward  gait = iota // every arrow from tail to head
	allBackward             // every arrow from head to tail
	mixed                   // every arrow, some forward and some backward
	partial                 // some arrows are left out
	noCourse                // the corners are not joined by arrows
)

// between is the best course along the arrows from one corner to another.
func (s *Sketch) between(from, to r2.Vec) course {
	n := len(s.Plan.Forces)
	best := course{kind: noCourse, from: from, to: to}
	used := make([]bool, n)
	var walk func(at r2.Vec, forward, backward int)
	walk = func(at r2.Vec, forward, backward int) {
		if forward+backward > 0 && s.same(at, to) {
			kind := partial
			switch n {
			case forward:
				kind = allForward
			case backward:
				kind = allBackward
			case forward + backward:
				kind = mixed
			}
			if kind < best.kind || kind == partial && best.kind == partial && left(used) < len(best.missing) {
				best.kind, best.missing = kind, nil
				for i, u := range used {
					if !u {
						best.missing = append(best.missing, i)
					}
				}
			}
		}
		for i := range n {
			if used[i] {
				continue
			}
			used[i] = true
			if s.same(at, s.tail(i)) {
				walk(s.head(i), forward+1, backward)
			}
			if s.same(at, s.head(i)) {
				walk(s.tail(i), forward, backward+1)
			}
			used[i] = false
		}
	}
	walk(from, 0, 0)
	return best
}

func left(used []bool) int {
	n := 0
	for _, u := range used {
		if !u {
			n++
		}
	}
	return n
}

// Corners are the places where an arrow begins or ends, each once, and the
// ends that lie there.
func (s *Sketch) Corners() (at []r2.Vec, ends [][]End) {
	for i := range s.Plan.Forces {
		for _, head := range []bool{false, true} {
			e := End{i, head}
			p := s.at(e)
			k := slices.IndexFunc(at, func(q r2.Vec) bool { return s.same(p, q) })
			if k < 0 {
				at, ends = append(at, p), append(ends, nil)
				k = len(at) - 1
			}
			ends[k] = append(ends[k], e)
		}
	}
	return at, ends
}

// courses lists what a side from one place to another may stand for, within
// reach of the corners: the nearest first, but what is right before all.
func (s *Sketch) courses(from, to r2.Vec, reach float64) []course {
	corners, _ := s.Corners()
	var all []course
	for _, p := range corners {
		a := r2.Norm(r2.Sub(from, p))
		if a > reach {
			continue
		}
		for _, q := range corners {
			if b := r2.Norm(r2.Sub(to, q)); b <= reach && !s.same(p, q) {
				c := s.between(p, q)
				c.off = a + b
				all = append(all, c)
			}
		}
	}
	slices.SortStableFunc(all, func(a, b course) int {
		return cmp.Or(cmp.Compare(min(a.kind, 1), min(b.kind, 1)), cmp.Compare(a.off, b.off))
	})
	return all
}
