package kinds

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// quantities declares everything the learner may enter, with its true value
// from the force vectors and every route to it in this sketch.
func (s *plane) quantities(pulls []pull) []lesson.Quantity {
	v := [2]r2.Vec{pulls[0].vec, pulls[1].vec}
	r := statics.Resultant(v[0], v[1])
	phi, gamma := s.betweenForces(v)
	alpha, beta := s.besideResultant(v, r)
	all := []lesson.Quantity{phi, gamma, resultantOfTwo(r), alpha, beta, s.resultantDirection(v, r)}
	all = append(all, pulls[0].byReference(pulls[0].parts("F2"))...)
	all = append(all, pulls[1].byReference(pulls[1].parts("F1"))...)
	for c, t := range []lesson.Quantity{total(pulls, alongX, r), total(pulls, alongY, r)} {
		axis := coordinate(c).String()
		first, second := expr.S("F1"+axis), expr.S("F2"+axis)
		t.Mistakes = append(t.Mistakes, mistake("other-diagonal", expr.Sub(first, second)), mistake("other-diagonal", expr.Sub(second, first)))
		all = append(all, t)
	}
	return all
}

// angleBetween declares an angle of the sketch.
func angleBetween(name, letter string, a, b r2.Vec) lesson.Quantity {
	return lesson.Quantity{Name: name, Symbol: expr.Symbol{Letter: letter, Spoken: name}, Dim: statics.DimAngle, True: statics.Between(a, b).Degrees()}
}

// betweenForces declares the angle between the forces with their tails together,
// and with the second on the first.
func (s *plane) betweenForces(v [2]r2.Vec) (phi, gamma lesson.Quantity) {
	phi, gamma = angleBetween("phi", "φ", v[0], v[1]), angleBetween("gamma", "γ", r2.Scale(-1, v[0]), v[1])
	phi.Supplement, gamma.Supplement = "gamma", "phi"
	phi.Routes = []lesson.Route{route("difference-of-directions", "difference-of-directions", lesson.AnyMethod, s.between("theta1", "theta2", s.th[0], s.th[1], s.phi))}
	gamma.Routes = s.interior()
	phi.Mistakes = directionsAdded(s.th[0] + s.th[1])
	gamma.Mistakes = []lesson.Mistake{mistake("directions-added", expr.Sub(expr.Deg(180), expr.Add(theta1, theta2)))}
	for _, turn := range []float64{-360, 360} { // a direction counted the other way round
		if math.Abs(180-s.th[0]-s.th[1]+turn) < 360 {
			gamma.Mistakes = append(gamma.Mistakes, mistakeAside("directions-added", expr.Sub(expr.Deg(180+turn), expr.Add(theta1, theta2))))
		}
	}
	phi.Between = [2]expr.Node{expr.Deg(0), expr.Deg(180)}
	gamma.Between = phi.Between
	return phi, gamma
}

// resultantOfTwo declares the magnitude of the resultant r.
func resultantOfTwo(r r2.Vec) lesson.Quantity {
	return lesson.Quantity{Name: "R", Symbol: expr.Symbol{Letter: "R", Spoken: "R"}, Dim: statics.DimForce, Answer: true,
		True: r2.Norm(r), Routes: resultantRoutes(), Between: [2]expr.Node{expr.Abs(expr.Sub(f1, f2)), expr.Add(f1, f2)},
		Mistakes: []lesson.Mistake{
			mistake("magnitudes-added", expr.Add(f1, f2)),
			mistake("magnitudes-subtracted", expr.Abs(expr.Sub(f1, f2))),
			mistake("other-diagonal", otherDiagonal(f1, theta1, f2, theta2)),
			mistake("other-diagonal", otherDiagonal(f2, theta2, f1, theta1)),
			mistake("other-diagonal", expr.Sqrt(expr.Sub(expr.Add(expr.Sq(f1), expr.Sq(f2)), expr.Mul(expr.N(2), f1, f2, expr.Cos(symPhi)))))}}
}

// besideResultant declares the angles between the resultant r and each force.
func (s *plane) besideResultant(v [2]r2.Vec, r r2.Vec) (alpha, beta lesson.Quantity) {
	alpha, beta = angleBetween("alpha", "α", v[1], r), angleBetween("beta", "β", v[0], r)
	dir, _ := statics.Direction(r)
	theta := dir.Degrees()
	alpha.Twin, beta.Twin = "beta", "alpha"
	alpha.Routes, alpha.Mistakes = s.corner(corner{own: f1, other: f2, twin: "beta", dir: "theta2", at: s.th[1], sign: -1}, alpha.True, theta)
	beta.Routes, beta.Mistakes = s.corner(corner{own: f2, other: f1, twin: "alpha", dir: "theta1", at: s.th[0], sign: 1}, beta.True, theta)
	alpha.Between = [2]expr.Node{expr.Deg(0), symPhi}
	beta.Between = alpha.Between
	return alpha, beta
}

// resultantDirection declares the direction of the resultant r.
func (s *plane) resultantDirection(v [2]r2.Vec, r r2.Vec) lesson.Quantity {
	dir, _ := statics.Direction(r)
	q := lesson.Quantity{Name: "theta", Symbol: expr.Symbol{Letter: "θ", Spoken: "theta"}, Dim: statics.DimAngle, True: dir.Degrees(), Answer: true, Turns: true}
	q.Between[0], q.Between[1] = sense[expr.Node](s, theta1, theta2)
	q.Routes, q.Mistakes = s.directionRoutes(r), s.directionMistakes(v)
	return q
}

// otherDiagonal is the length of F − G from what each has along x and y.
func otherDiagonal(f, fAt, g, gAt expr.Node) expr.Node {
	leg := func(of func(expr.Node) expr.Node) expr.Node {
		return expr.Sq(expr.Sub(expr.Mul(f, of(fAt)), expr.Mul(g, of(gAt))))
	}
	return expr.Sqrt(expr.Add(leg(expr.Cos), leg(expr.Sin)))
}

// sense orders a pair counter-clockwise: (a, b) as it is where the second
// force lies counter-clockwise of the first, (b, a) otherwise.
func sense[T any](s *plane, a, b T) (T, T) {
	if s.ccw {
		return a, b
	}
	return b, a
}

// between is the angle from a counter-clockwise to b, or from b to a where the
// second force lies clockwise; whole turns are added or taken off as the
// directions given require to reach want.
func (s *plane) between(a, b string, va, vb, want float64) expr.Node {
	from, to := sense(s, expr.S(a), expr.S(b))
	vf, vt := sense(s, va, vb)
	return difference(to, from, vt-vf, want)
}

// interior lists the routes to γ.
func (s *plane) interior() []lesson.Route {
	from, to := sense(s, theta1, theta2)
	vf, vt := sense(s, s.th[0], s.th[1])
	turns := math.Round((s.phi-(vt-vf))/360) * 360
	// γ = 180° − φ = from + (180° − turns − to)
	alternate := expr.Add(from, expr.Sub(expr.Deg(180), to))
	if turns > 0 {
		alternate = expr.Sub(expr.Sub(from, to), expr.Deg(turns-180))
	} else if turns < 0 {
		alternate = expr.Add(from, expr.Sub(expr.Deg(180-turns), to))
	}
	return []lesson.Route{
		route("adjacent-angles", "adjacent-angles", lesson.ByTriangle, expr.Sub(expr.Deg(180), symPhi)),
		route("four-angles", "four-angles", lesson.ByTriangle, expr.Div(expr.Sub(expr.Deg(360), expr.Mul(expr.N(2), symPhi)), expr.N(2))),
		route("alternate-angles", "alternate-angles", lesson.ByTriangle, alternate),
	}
}

func resultantRoutes() []lesson.Route {
	squares := expr.Add(expr.Sq(f1), expr.Sq(f2))
	cross := func(angle expr.Node) expr.Node { return expr.Mul(expr.N(2), f1, f2, expr.Cos(angle)) }
	return []lesson.Route{
		route("cosine-law", "cosine-law", lesson.ByTriangle, expr.Sqrt(expr.Sub(squares, cross(symGamma)))),
		magnitudeOf(symRx, symRy),
		route("parallelogram", "parallelogram-diagonal", lesson.ByTriangle, expr.Sqrt(expr.Add(squares, cross(symPhi)))),
	}
}

// corner is a triangle angle at the resultant's end of one force: opposite
// the side own, between R and the side other.
type corner struct {
	own, other expr.Node
	twin       string  // the other such angle
	dir        string  // direction of the side other
	at         float64 // that direction as given, degrees
	sign       float64 // +1 where θ lies counter-clockwise of dir in a counter-clockwise sketch
}

// corner lists the routes to α or β, whose true value is v, and the ways a
// right angle or a bisector is assumed there.
func (s *plane) corner(c corner, v, theta float64) ([]lesson.Route, []lesson.Mistake) {
	twin, dir := expr.S(c.twin), expr.S(c.dir)
	// own/sin(angle) = R/sin γ = other/sin(twin); sines on top.
	bySides := inverseSine(expr.Div(expr.Mul(c.own, expr.Sin(symGamma)), symR), v)
	byTwin := inverseSine(expr.Div(expr.Mul(c.own, expr.Sin(twin)), c.other), v)
	cosine := expr.Acos(expr.Div(
		expr.Sub(expr.Add(expr.Sq(c.other), expr.Sq(symR)), expr.Sq(c.own)),
		expr.Mul(expr.N(2), c.other, symR)))
	to, from, d := symTheta, dir, theta-c.at
	if (c.sign > 0) != s.ccw {
		to, from, d = dir, symTheta, c.at-theta
	}
	routes := []lesson.Route{
		route("sine-law", "sine-law", lesson.ByTriangle, bySides),
		route("cosine-law", "cosine-law-angle", lesson.ByTriangle, cosine),
		route("triangle-sum", "triangle-sum", lesson.ByTriangle, expr.Sub(expr.Sub(expr.Deg(180), symGamma), twin)),
		route("sine-law-twin", "sine-law", lesson.ByTriangle, byTwin),
		route("from-direction", "angle-from-direction", lesson.AnyMethod, difference(to, from, d, v)),
	}
	return routes, []lesson.Mistake{
		mistake("right-triangle-assumed", expr.Asin(expr.Div(c.own, symR))),
		mistake("right-triangle-assumed", expr.Acos(expr.Div(c.other, symR))),
		mistake("right-triangle-assumed", expr.Atan(expr.Div(c.own, c.other))),
		mistake("bisector-assumed", expr.Div(symPhi, expr.N(2))),
	}
}

func (s *plane) directionRoutes(r r2.Vec) []lesson.Route {
	plus, minus := expr.Add, expr.Sub
	fromFirst, fromSecond := plus(theta1, expr.S("beta")), minus(theta2, expr.S("alpha"))
	if !s.ccw {
		fromFirst, fromSecond = minus(theta1, expr.S("beta")), plus(theta2, expr.S("alpha"))
	}
	return []lesson.Route{
		route("from-first", "laid-off", lesson.ByTriangle, fromFirst),
		directionOf(symRx, symRy, r),
		route("from-second", "laid-off", lesson.ByTriangle, fromSecond),
	}
}

// directionMistakes are the wrong ways to θ that belong to the sketch.
func (s *plane) directionMistakes(v [2]r2.Vec) []lesson.Mistake {
	diff := statics.Resultant(v[0], r2.Scale(-1, v[1]))
	x := expr.Sub(expr.S("F1x"), expr.S("F2x"))
	y := expr.Sub(expr.S("F1y"), expr.S("F2y"))
	alpha, beta := expr.Node(expr.Sub(theta1, expr.S("alpha"))), expr.Node(expr.Add(theta2, expr.S("beta"))) // turned as from their own forces
	if !s.ccw {
		alpha, beta = expr.Add(theta1, expr.S("alpha")), expr.Sub(theta2, expr.S("beta"))
	}
	return []lesson.Mistake{
		mistake("bisector-assumed", expr.Div(expr.Add(theta1, theta2), expr.N(2))),
		mistake("other-diagonal", arctangent(x, y, diff)),
		mistake("other-diagonal", arctangent(expr.Neg{X: x}, expr.Neg{X: y}, r2.Scale(-1, diff))),
		mistakeAside("wrong-neighbour", alpha), mistakeAside("wrong-neighbour", beta),
	}
}
