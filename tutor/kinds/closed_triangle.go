package kinds

import (
	"slices"
	"strconv"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// Three forces that balance make a triangle, head to tail. Its corner facing
// the i-th force is what the angle between the two others, tails together, lacks
// of 180°; the sines of the two are equal (Lamy's theorem is the sine law).

// betweenNames are the names of the angles between two forces, each by the third;
// the corners are called by angleNames.
var betweenNames = [3]string{"phi1", "phi2", "phi3"}

// corner is the place of a part among three that make a triangle; false where
// the forces make none, being more or fewer, or on one line.
func (s *rest) corner(h *holder) (i int, ok bool) {
	if len(s.parts) != 3 {
		return 0, false
	}
	for k, o := range s.parts {
		if o == h {
			i = k
		}
		if phi := s.between(k); len(o.leads) != 1 || phi < minInterior || phi > 180-minInterior {
			return 0, false
		}
	}
	return i, true
}

// between is the angle between the two forces other than the i-th.
func (s *rest) between(i int) float64 {
	return statics.Between(s.parts[(i+1)%3].acts(), s.parts[(i+2)%3].acts()).Degrees()
}

// triangleAngles declares the angles between the forces and those of their triangle:
// all of them, or the one between two forces of which the third is to find.
// Where only the direction of a force is unknown, its corner is the first known,
// and the sine law gives the corner that faces the other known force.
func (s *rest) triangleAngles() []lesson.Quantity {
	if _, ok := s.corner(nil); !ok { // not three, or on one line
		return nil
	}
	var all []lesson.Quantity
	for _, i := range s.cornersInOrder() {
		q, c := s.angleAndCorner(i)
		all = append(all, q, c)
	}
	return all
}

// cornersInOrder lists the corners a lesson has, in the order they are found.
func (s *rest) cornersInOrder() []int {
	for i, h := range s.parts {
		switch {
		case h.wandered && h != s.aimed:
			return []int{i}
		case h.wandered && s.parts[(i+1)%3].unknown:
			return []int{i, (i + 2) % 3, (i + 1) % 3}
		case h.wandered:
			return []int{i, (i + 1) % 3, (i + 2) % 3}
		}
	}
	return []int{0, 1, 2}
}

// angleAndCorner declares the angle between the two forces other than the i-th, and
// the corner that faces that.
func (s *rest) angleAndCorner(i int) (q, c lesson.Quantity) {
	own, a, b := s.parts[i], s.parts[(i+1)%3], s.parts[(i+2)%3]
	phi := s.between(i)
	q = lesson.Quantity{Name: betweenNames[i], Symbol: expr.Symbol{Letter: "φ", Sub: strconv.Itoa(i + 1), Spoken: "phi " + strconv.Itoa(i+1)}, Dim: statics.DimAngle, True: phi, Supplement: angleNames[i],
		Routes: []lesson.Route{route("directions", "angle-between-forces", lesson.ByTriangle, a.leads[0].to(b.leads[0]))}}
	c = lesson.Quantity{Name: angleNames[i], Symbol: expr.Symbol{Letter: angleLetters[i], Spoken: angleNames[i]}, Dim: statics.DimAngle, True: 180 - phi, Supplement: betweenNames[i],
		Routes: []lesson.Route{route("supplement", "triangle-corner", lesson.ByTriangle, expr.Sub(expr.Deg(180), expr.S(betweenNames[i])))}}
	if !own.wandered || own == s.aimed { // the other corners are there too
		rest := func(whole float64, names [3]string) expr.Node {
			return expr.Sub(expr.Sub(expr.Deg(whole), expr.S(names[(i+1)%3])), expr.S(names[(i+2)%3]))
		}
		q.Routes = append(q.Routes, route("full-turn", "full-turn", lesson.ByTriangle, rest(360, betweenNames)))
		c.Routes = append(c.Routes, route("triangle-sum", "triangle-sum", lesson.ByTriangle, rest(180, angleNames)))
	}
	switch {
	case s.aimed == nil:
	case own == s.aimed: // the way by components needs it too
		q.Routes[0].Method = lesson.AnyMethod
	default:
		s.beside(i, &q, &c)
	}
	if a.leads[0].push != b.leads[0].push { // the one taken to act as the other does
		q.Mistakes = []lesson.Mistake{mistake("sense-reversed", expr.Sub(expr.Deg(180), q.Routes[0].Tree))}
	}
	q.Mistakes = append(q.Mistakes, fromOtherAxis(q.Routes[0].Tree, a.leads[0], b.leads[0])...)
	if !own.wandered || own == s.aimed {
		q.Mistakes = append(q.Mistakes, takenForOneOf(betweenNames, i)...)
		c.Mistakes = append(c.Mistakes, takenForOneOf(angleNames, i)...)
	}
	if a.leads[0].fromX() && b.leads[0].fromX() {
		q.Mistakes = append(q.Mistakes, mistakeAside("directions-added", expr.Add(a.leads[0].direction(), b.leads[0].direction())))
		q.Mistakes = append(q.Mistakes, misdirected(q.Routes[0].Tree, a.leads[0].direction(), b.leads[0].direction())...)
	}
	q.Between, c.Between = [2]expr.Node{expr.Deg(0), expr.Deg(180)}, [2]expr.Node{expr.Deg(0), expr.Deg(180)}
	return q, c
}

// beside are the routes to an angle at the force of unknown direction: by the
// sine law, and from the other corners.
func (s *rest) beside(i int, q, c *lesson.Quantity) {
	k, _ := s.corner(s.aimed)
	sine := route("sine-law", "sine-law", lesson.ByTriangle, inverseSine(expr.Div(expr.Mul(s.parts[i].f, expr.Sin(expr.S(angleNames[k]))), s.aimed.f), c.True))
	supplement, sum := c.Routes[0], c.Routes[1]
	c.Routes = []lesson.Route{sine, sum, supplement}
	if s.parts[i].unknown {
		c.Routes = []lesson.Route{sum, sine, supplement}
	}
	directions, turn := q.Routes[0], q.Routes[1]
	q.Routes = []lesson.Route{route("supplement", "triangle-corner", lesson.ByTriangle, expr.Sub(expr.Deg(180), expr.S(angleNames[i]))), turn, directions}
}

// takenForOneOf are the mistakes in which an angle of three is another of them.
func takenForOneOf(names [3]string, i int) []lesson.Mistake {
	return []lesson.Mistake{mistakeAside("other-force", expr.S(names[(i+1)%3])), mistakeAside("other-force", expr.S(names[(i+2)%3]))}
}

// fromOtherAxis are the mistakes of an angle between forces in which the angle that
// one is given by is taken from the other axis.
func fromOtherAxis(tree expr.Node, leads ...lead) []lesson.Mistake {
	var all []lesson.Mistake
	for _, l := range leads {
		if l.angle == "" || l.fromX() || l.heading.Form == statics.Slope {
			continue
		}
		taken := expr.Substitute(tree, func(name string) (expr.Node, bool) {
			return expr.Sub(expr.Deg(90), expr.S(name)), name == l.angle
		})
		if taken != tree { // it reads that angle
			all = append(all, mistakeAside("other-axis", taken))
		}
	}
	return all
}

// misdirected are the mistakes of a formula in which a direction from +x is taken the
// wrong way round, from the other axis, or from head to tail.
func misdirected(tree expr.Node, directions ...expr.Node) []lesson.Mistake {
	var all []lesson.Mistake
	expr.Walk(tree, func(site int, n expr.Node) {
		if !slices.Contains(directions, n) {
			return
		}
		for _, m := range []lesson.Mistake{
			mistakeAside("clockwise", expr.Neg{X: n}),
			mistakeAside("other-axis", expr.Sub(expr.Deg(90), n)),
			mistakeAside("opposite-sense", expr.Add(n, expr.Deg(180))),
		} {
			m.Tree = expr.Replace(tree, site, m.Tree)
			all = append(all, m)
		}
	})
	return all
}
