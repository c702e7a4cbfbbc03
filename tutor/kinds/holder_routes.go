package kinds

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// routes are the ways to an unknown force.
func (s *rest) routes(h *holder, q *lesson.Quantity) {
	if s.aimed != nil {
		s.besideAimed(h, q)
	}
	if h.wandered {
		s.fromOwnParts(h, q)
		return
	}
	s.fromSums(h, q)
	q.Mistakes = append(q.Mistakes, s.mistaken(h)...)
	s.aroundTriangle(h, q)
}

// fromOwnParts are the ways to a force of unknown direction: from its components,
// and as the side that closes the triangle of three.
func (s *rest) fromOwnParts(h *holder, q *lesson.Quantity) {
	q.Routes = []lesson.Route{magnitudeOf(expr.S(q.Name+"x"), expr.S(q.Name+"y"))}
	q.Mistakes = s.numbersAlone(h)
	if i, ok := s.corner(h); ok {
		a, b := s.parts[(i+1)%3].f, s.parts[(i+2)%3].f
		q.Routes = append(q.Routes, route("cosine-law", "cosine-law", lesson.ByTriangle, expr.Sqrt(expr.Sub(
			expr.Add(expr.Sq(a), expr.Sq(b)), expr.Mul(expr.N(2), a, b, expr.Cos(expr.S(angleNames[i])))))))
	}
}

// fromSums are the ways to a force from the sums: out of both where another force
// is unknown too, and from each in which it is the only one.
func (s *rest) fromSums(h *holder, q *lesson.Quantity) {
	add := func(id, principle string, tree expr.Node) {
		if tree != nil {
			q.Routes = append(q.Routes, route(id, principle, lesson.ByComponents, tree))
		}
	}
	var alone [2]expr.Node
	for i, tree := range []expr.Node{s.x, s.y} {
		if tree == nil {
			continue
		}
		alone[i] = expr.Isolate(tree, q.Name)
		if part, key, ok := expr.Operands(alone[i], expr.OpDiv); ok && expr.IsTrig(key) { // its part along the axis taken for it
			q.Mistakes = append(q.Mistakes, mistakeAside("magnitudes-for-components", part))
		}
	}
	other := s.other(h)
	switch {
	case other != nil:
		q.Twin = "F" + other.n
		q.Solves = [2]string{"sumx", "sumy"}
		add("eliminate", "eliminate", expr.Eliminate(s.x, s.y, q.Name, q.Twin))
	case alone[0] != nil:
		q.Solves = [2]string{"sumx", ""}
	default:
		q.Solves = [2]string{"sumy", ""}
	}
	add("from-x", "from-sum-x", alone[0])
	add("from-y", "from-sum-y", alone[1])
}

// aroundTriangle are the ways to a force from either other of three, by the sine
// law in the triangle they make and by the angles between them.
func (s *rest) aroundTriangle(h *holder, q *lesson.Quantity) {
	i, ok := s.corner(h)
	if !ok {
		return
	}
	for _, o := range s.parts {
		if o == h {
			continue
		}
		j, _ := s.corner(o)
		ratio := func(up, down string) expr.Node {
			return expr.Div(expr.Mul(o.f, expr.Sin(expr.S(up))), expr.Sin(expr.S(down)))
		}
		q.Routes = append(q.Routes, route("sine-law-"+o.n, "sine-law-forces", lesson.ByTriangle, ratio(angleNames[i], angleNames[j])),
			route("lami-"+o.n, "lami", lesson.ByTriangle, ratio(betweenNames[i], betweenNames[j])))
		q.Mistakes = append(q.Mistakes, wrongPairs(o.f, i, j, angleNames)...)
	}
}

// numbersAlone are the wrong ways to a force that holds two others, whose sizes
// are added or subtracted as numbers.
func (s *rest) numbersAlone(h *holder) []lesson.Mistake {
	var others []expr.Node
	for _, o := range s.parts {
		if o != h {
			others = append(others, o.f)
		}
	}
	if len(others) != 2 {
		return nil
	}
	return []lesson.Mistake{mistake("magnitudes-added", expr.Add(others[0], others[1])), mistake("magnitudes-subtracted", expr.Abs(expr.Sub(others[0], others[1])))}
}

// besideAimed is the way to the one unknown force T beside a force F of unknown
// direction: with the known forces taken along and across T,
//
//	T = ±√(F² − K⊥²) − K∥
func (s *rest) besideAimed(h *holder, q *lesson.Quantity) {
	var along, across []expr.Term
	for _, o := range s.parts {
		if o == h || o == s.aimed {
			continue
		}
		for i, l := range o.leads {
			angle := statics.Between(l.unitVector(), h.acts())
			sin, cos := angle.Sincos()
			node := l.to(h.leads[0])
			if k, ok := s.corner(s.aimed); ok && i == 0 {
				node = expr.S(betweenNames[k])
			}
			if math.Abs(cos) > 1e-9 {
				along = append(along, expr.Term{Minus: false, Node: expr.Mul(o.f, expr.Cos(node))})
			}
			if math.Abs(sin) > 1e-9 {
				across = append(across, expr.Term{Minus: r2.Cross(h.acts(), l.unitVector()) < 0, Node: expr.Mul(o.f, expr.Sin(node))})
			}
		}
	}
	root := s.aimed.f
	if len(across) > 0 {
		root = expr.Sqrt(expr.Sub(expr.Sq(s.aimed.f), expr.Sq(expr.Sum(across))))
	}
	back := r2.Dot(s.aimed.acts(), h.acts()) < 0 // the aimed force pulls against T
	q.Routes = append(q.Routes, route("along-across", "along-across", lesson.ByComponents, expr.Sum(append([]expr.Term{{Minus: !back, Node: root}}, expr.Negated(along)...))))
}

// mistaken are the wrong ways to an unknown force under one load: half of it,
// or its part along the force, the other support left out.
func (s *rest) mistaken(h *holder) []lesson.Mistake {
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
	all := []lesson.Mistake{mistake("shared-equally", expr.Div(load.f, expr.N(2)))}
	if up, ok := h.leads[0].along(alongY); ok && up.Node != nil && math.Abs(load.acts().X) < 1e-9 { // half of it held up by each
		all = append(all, mistake("shared-equally", expr.Div(load.f, expr.Mul(expr.N(2), up.Node))))
	}
	if a := h.leads[0].angle; a != "" {
		all = append(all, mistake("load-resolved", expr.Mul(load.f, expr.Sin(expr.S(a)))), mistake("load-resolved", expr.Mul(load.f, expr.Cos(expr.S(a)))))
	}
	return all
}
