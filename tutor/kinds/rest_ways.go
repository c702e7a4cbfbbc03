package kinds

import (
	"math"
	"slices"
	"strings"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// ways is the worked solution by the sums and, for three forces of known
// directions, by their triangle.
func (s *rest) ways() {
	var before, sums, angles, parts, last []lesson.Step
	for i := range s.lesson.Quantities {
		q := &s.lesson.Quantities[i]
		if q.Given {
			continue
		}
		step := step(q.Name, q.Routes[0].ID)
		switch {
		case q.Equation:
			sums = append(sums, step)
		case slices.Contains(between[:], q.Name), slices.Contains(corners[:], q.Name):
			angles = append(angles, step)
		case q.Signed:
			parts = append(parts, step)
		case q.Answer && (q.Dim == statics.DimForce || q.Turns): // by the ways below
		case q.Answer:
			last = append(last, step)
		default:
			before = append(before, step)
		}
	}
	if s.aimed != nil {
		s.waysAimed(before, sums, angles, last)
		return
	}
	bySums := slices.Concat(before, sums, parts)
	byTriangle := slices.Concat(before, angles)
	triangle := len(angles) == 6
	for _, at := range s.inOrder() {
		bySums = append(bySums, at)
		for _, r := range s.lesson.Find(at.Quantity).Routes {
			if of, ok := strings.CutPrefix(r.ID, "sine-law-"); ok && !s.lesson.Find("F"+of).Answer {
				byTriangle = append(byTriangle, step(at.Quantity, r.ID))
				break
			}
		}
	}
	s.lesson.Ways = []lesson.Way{way(lesson.ByComponents, append(bySums, last...)...)}
	if triangle {
		s.lesson.Ways = append(s.lesson.Ways, way(lesson.ByTriangle, append(byTriangle, last...)...))
	}
}

// waysAimed is the worked solution for the direction of a force of known size
// beside one unknown force T. Where T lies along an axis, the other sum gives a
// component at once.
func (s *rest) waysAimed(before, sums, angles, last []lesson.Step) {
	h, t := s.aimed, s.besideIt()
	size, x, y, dir := "F"+t.n, "F"+h.n+"x", "F"+h.n+"y", "theta"+h.n
	steps := []lesson.Step{step(size, "along-across"), step(x, "from-sum"), step(y, "from-sum"), step(dir, "arctangent")}
	if u := t.leads[0].unitVector(); t.leads[0].angle != "" {
		steps = append(slices.Clip(angles[:min(1, len(angles))]), steps...)
	} else if math.Abs(u.X) > 0.5 {
		steps = []lesson.Step{step(y, "from-sum"), step(dir, "from-y"), step(x, "resolve"), step(size, "from-x")}
	} else {
		steps = []lesson.Step{step(x, "from-sum"), step(dir, "from-x"), step(y, "resolve"), step(size, "from-y")}
	}
	s.lesson.Ways = []lesson.Way{way(lesson.ByComponents, slices.Concat(before, sums, steps, last)...)}
	if len(angles) == 6 {
		in := func(i ...int) (steps []lesson.Step) {
			for _, i := range i {
				steps = append(steps, angles[i])
			}
			return steps
		}
		s.lesson.Ways = append(s.lesson.Ways, way(lesson.ByTriangle, slices.Concat(before, in(0, 1, 3, 5), []lesson.Step{step(size, "sine-law-"+h.n)}, in(2), []lesson.Step{step(dir, "laid-"+t.n)}, last)...))
	}
	take(s.lesson.Quantities, s.lesson.Ways)
}

// openInOrder lists what is open, a force that needs only one sum before the
// force whose direction is open.
func (s *rest) openInOrder() []*holder {
	if s.aimed == nil {
		return s.open
	}
	return []*holder{s.besideIt(), s.aimed}
}

// inOrder lists the unknowns in an order, and by routes, in which each can be
// found: first one that a single sum gives, where there is one.
func (s *rest) inOrder() []lesson.Step {
	var steps []lesson.Step
	found := map[string]bool{}
	for range s.open {
		for _, h := range s.open {
			q := s.lesson.Find("F" + h.n)
			if found[q.Name] {
				continue
			}
			for _, r := range q.Routes {
				ready := r.Method == lesson.ByComponents && (r.ID != "eliminate" || len(found) == 0 && !s.single())
				for _, name := range expr.Symbols(r.Tree) {
					in := s.lesson.Find(name)
					ready = ready && (!in.Answer || found[name])
				}
				if ready {
					steps, found[q.Name] = append(steps, step(q.Name, r.ID)), true
					break
				}
			}
		}
	}
	for _, h := range s.open {
		if h.wandered {
			steps = append(steps, step("theta"+h.n, "arctangent"))
		}
	}
	return steps
}

// single tells whether one of the sums holds one unknown alone.
func (s *rest) single() bool {
	for _, tree := range []expr.Node{s.x, s.y} {
		n := 0
		for _, h := range s.open {
			if tree != nil && slices.Contains(expr.Symbols(tree), "F"+h.n) {
				n++
			}
		}
		if n == 1 {
			return true
		}
	}
	return false
}
