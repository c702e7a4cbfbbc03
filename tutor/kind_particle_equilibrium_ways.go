package tutor

import (
	"slices"
	"strings"

	"closingside/statics"
	"closingside/statics/expr"
)

// routes are the ways to an unknown force.
func (s *rest) routes(h *holder, q *Quantity) {
	if h.wandered {
		x, y := expr.S(q.Name+"x"), expr.S(q.Name+"y")
		q.Routes = []Route{{"components", "right-angle-theorem", ByComponents, expr.Sqrt(expr.Add(expr.Sq(x), expr.Sq(y)))}}
		if i, ok := s.corner(h); ok { // the side that closes the triangle of three
			a, b := s.parts[(i+1)%3].f, s.parts[(i+2)%3].f
			q.Routes = append(q.Routes, Route{"cosine-law", "cosine-law", ByTriangle, expr.Sqrt(expr.Sub(
				expr.Add(expr.Sq(a), expr.Sq(b)), expr.Mul(expr.N(2), a, b, expr.Cos(expr.S(corners[i])))))})
		}
		return
	}
	add := func(id, principle string, m Method, tree expr.Node) {
		if tree != nil {
			q.Routes = append(q.Routes, Route{id, principle, m, tree})
		}
	}
	other := s.other(h)
	var alone [2]expr.Node
	for i, tree := range []expr.Node{s.x, s.y} {
		if tree != nil {
			alone[i] = solution(tree, nil, q.Name, "")
		}
	}
	if other != nil {
		q.Twin = "F" + other.n
		q.Solves = Pair{"sumx", "sumy"}
		add("eliminate", "eliminate", ByComponents, solution(s.x, s.y, q.Name, q.Twin))
	} else if alone[0] != nil {
		q.Solves = Pair{"sumx", ""}
	} else {
		q.Solves = Pair{"sumy", ""}
	}
	q.Mistakes = s.mistaken(h)
	add("from-x", "from-sum-x", ByComponents, alone[0])
	add("from-y", "from-sum-y", ByComponents, alone[1])
	if i, ok := s.corner(h); ok {
		for _, o := range s.parts {
			if j, _ := s.corner(o); o != h {
				ratio := func(up, down string) expr.Node {
					return expr.Div(expr.Mul(o.f, expr.Sin(expr.S(up))), expr.Sin(expr.S(down)))
				}
				add("sine-law-"+o.n, "sine-law-forces", ByTriangle, ratio(corners[i], corners[j]))
				add("lami-"+o.n, "lami", ByTriangle, ratio(between[i], between[j]))
			}
		}
	}
}

// mistaken are the wrong ways to an unknown force under one load: half of it,
// or its part along the force, the other support left out.
func (s *rest) mistaken(h *holder) []Mistake {
	var load *holder
	for _, o := range s.parts {
		if !o.unknown && load != nil {
			return nil
		}
		if !o.unknown {
			load = o
		}
	}
	if load == nil {
		return nil
	}
	all := []Mistake{{"shared-equally", expr.Div(load.f, expr.N(2))}}
	if a := h.leads[0].angle; a != "" {
		all = append(all, Mistake{"load-resolved", expr.Mul(load.f, expr.Sin(expr.S(a)))}, Mistake{"load-resolved", expr.Mul(load.f, expr.Cos(expr.S(a)))})
	}
	return all
}

// other is the second unknown force, or nil.
func (s *rest) other(h *holder) *holder {
	for _, o := range s.open {
		if o != h && !o.wandered {
			return o
		}
	}
	return nil
}

// ways is the worked solution by the sums and, for three forces of known
// directions, by their triangle.
func (s *rest) ways() {
	var before, sums, angles, parts, last []Step
	for i := range s.lesson.Quantities {
		q := &s.lesson.Quantities[i]
		if q.Given {
			continue
		}
		step := Step{q.Name, q.Routes[0].ID}
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
	bySums := slices.Concat(before, sums, parts)
	byTriangle := slices.Concat(before, angles)
	triangle := len(angles) == 6
	for _, step := range s.inOrder() {
		bySums = append(bySums, step)
		for _, r := range s.lesson.find(step.Quantity).Routes {
			if of, ok := strings.CutPrefix(r.ID, "sine-law-"); ok && !s.lesson.find("F"+of).Answer {
				byTriangle = append(byTriangle, Step{step.Quantity, r.ID})
				break
			}
		}
	}
	s.lesson.Ways = []Way{{ByComponents, append(bySums, last...)}}
	if triangle {
		s.lesson.Ways = append(s.lesson.Ways, Way{ByTriangle, append(byTriangle, last...)})
	}
}

// inOrder lists the unknowns in an order, and by routes, in which each can be
// found: first one that a single sum gives, where there is one.
func (s *rest) inOrder() []Step {
	var steps []Step
	found := map[string]bool{}
	for range s.open {
		for _, h := range s.open {
			q := s.lesson.find("F" + h.n)
			if found[q.Name] {
				continue
			}
			for _, r := range q.Routes {
				ready := r.Method == ByComponents && (r.ID != "eliminate" || len(found) == 0 && !s.single())
				for _, name := range expr.Symbols(r.Tree) {
					in := s.lesson.find(name)
					ready = ready && (!in.Answer || found[name])
				}
				if ready {
					steps, found[q.Name] = append(steps, Step{q.Name, r.ID}), true
					break
				}
			}
		}
	}
	for _, h := range s.open {
		if h.wandered {
			steps = append(steps, Step{"theta" + h.n, "arctangent"})
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
