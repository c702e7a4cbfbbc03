package tutor

import (
	"errors"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/figure"
	"closingside/tutor/text"
)

// twoForces is the resultant of two concurrent forces, by the force triangle
// or by rectangular components.
//
// Standard triangle notation: a side and the angle opposite it share a letter,
// so α is opposite F₁, β opposite F₂ and γ opposite R.
var twoForces = Kind{
	Name:   "two-forces",
	Groups: []Group{{Key: "forces", Min: 2, Max: 2, Fields: forceFields("340 N", "25 deg")}},
	Build:  buildTwoForces,
	Scenes: scenesTwoForces,
	Sketch: sketchForces,
	Draw:   drawTwoForces,
	Rule:   "ffjr",
	Bank: []Source{
		harbour("Two tugs hold a barge off the quay.", force("P", "340 N", "25 deg"), force("Q", "610 N", "118 deg")),
		harbour("Two mooring lines pull on one bollard of the quay.", force("F1", "4.2 kN", "15 deg"), force("F2", "2.9 kN", "72 deg")),
		harbour("A buoy is pulled by its chain and by the tide.", force("C", "850 N", "-62 deg"), force("D", "430 N", "12 deg")),
		harbour("The derrick's two guys pull on its mast head.", force("A", "7.5 kN", "205 deg"), force("B", "5.1 kN", "318 deg")),
		harbour("A boat on the slipway is held by a winch rope and pushed by a fender.", force("W", "1250 N", "152 deg"), force("E", "780 N", "34 deg")),
		harbour("Wind and current act on a moored dredger.", force("F1", "520 lb", "140 deg"), force("F2", "310 lb", "218 deg")),
	},
}

func harbour(story string, forces ...Source) Source {
	return branch("", leaf("kind", "two-forces"), leaf("story", story), branch("forces", forces...))
}

// drawTwoForces draws two clean forces and a story that fits any two.
func drawTwoForces(d *Draw) Source {
	stories := []string{
		"Two tugs pull on a barge.", "Two lines hold a pontoon.", "Two ropes pull on a mooring ring.",
		"Two guys pull on the derrick's mast head.", "Wind and current push a moored buoy.", "Two winches pull a boat up the slipway.",
	}
	story := stories[d.Below(len(stories))]
	names := [][2]string{{"P", "Q"}, {"F1", "F2"}, {"A", "B"}}[d.Below(3)]
	draw := func(name string) Source {
		return force(name, itoa(d.Step(150, 950, 10))+" N", itoa(d.Direction(1))+" deg")
	}
	return harbour(story, draw(names[0]), draw(names[1]))
}

// plane is the two given forces and the sketch they make.
type plane struct {
	f     [2]float64 // magnitudes, in the first force's unit
	th    [2]float64 // directions as given, degrees
	phi   float64    // angle between them, 0–180°
	ccw   bool       // the second lies less than 180° counter-clockwise of the first
	turns float64    // whole turns between the directions as given, in degrees
}

func buildTwoForces(p *Problem) (*Lesson, error) {
	forces := p.Group("forces")
	unit := forces[0].Field("magnitude").Unit
	var s plane
	var pulls []pull
	for i := range forces {
		f := newPull(forces[i], itoa(i+1), unit)
		s.f[i], s.th[i] = f.size, f.at
		pulls = append(pulls, f)
	}
	s.measure()
	if err := s.refuse(forces); err != nil {
		return nil, err
	}
	l := &Lesson{Unit: unit}
	l.Quantities = append(pulls[0].given("2"), pulls[1].given("1")...)
	l.Quantities = append(l.Quantities, s.quantities(pulls)...)
	l.Ways = s.ways(l.Quantities)
	return l, nil
}

// measure fills in how the second force lies to the first.
func (s *plane) measure() {
	d := s.th[1] - s.th[0]
	turn := math.Remainder(d, 360) // −180…180
	s.ccw = turn > 0
	s.phi = math.Abs(turn)
	s.turns = math.Round(math.Abs(d-turn)/360) * 360
	if (d < 0) != (turn < 0) {
		s.turns = -s.turns
	}
}

// Limits of a triangle worth drawing.
const (
	maxRatio    = 1000.0 // of the magnitudes; beyond it the smaller force is lost in rounding
	minInterior = 0.1    // degrees; below it the triangle is a line
)

func (s *plane) refuse(forces []Item) error {
	a, b := forces[0].shown(), forces[1].shown()
	say := func(key string) error { return errors.New(text.Say("two-forces.refuse."+key, "P", a, "Q", b)) }
	switch {
	case s.phi < minInterior:
		return say("parallel")
	case s.phi > 180-minInterior:
		if s.f[0] == s.f[1] {
			return say("balanced")
		}
		return say("opposite")
	case s.f[0] > maxRatio*s.f[1] || s.f[1] > maxRatio*s.f[0]:
		return say("ratio")
	}
	return nil
}

// quantities declares everything the learner may enter, with its true value
// from the force vectors and every route to it in this sketch.
func (s *plane) quantities(pulls []pull) []Quantity {
	v := [2]r2.Vec{pulls[0].vec, pulls[1].vec}
	r := statics.Resultant(v[0], v[1])
	phi, gamma := s.betweenForces(v)
	alpha, beta := s.besideResultant(v, r)
	all := []Quantity{phi, gamma, resultantOfTwo(r), alpha, beta, s.resultantDirection(v, r)}
	all = append(all, pulls[0].parts("F2")...)
	all = append(all, pulls[1].parts("F1")...)
	for c, t := range []Quantity{total(pulls, alongX, r), total(pulls, alongY, r)} {
		axis := coordinate(c).String()
		first, second := expr.S("F1"+axis), expr.S("F2"+axis)
		t.Mistakes = append(t.Mistakes, Mistake{"other-diagonal", expr.Sub(first, second)}, Mistake{"other-diagonal", expr.Sub(second, first)})
		all = append(all, t)
	}
	return all
}

// angleBetween declares an angle of the sketch.
func angleBetween(name, letter string, a, b r2.Vec) Quantity {
	return Quantity{Name: name, Symbol: expr.Symbol{Letter: letter, Spoken: name}, Dim: statics.DimAngle, True: statics.Between(a, b).Degrees()}
}

// betweenForces declares the angle between the forces with their tails together,
// and with the second on the first.
func (s *plane) betweenForces(v [2]r2.Vec) (phi, gamma Quantity) {
	phi, gamma = angleBetween("phi", "φ", v[0], v[1]), angleBetween("gamma", "γ", r2.Scale(-1, v[0]), v[1])
	phi.Supplement, gamma.Supplement = "gamma", "phi"
	phi.Routes = []Route{{"difference-of-directions", "difference-of-directions", AnyMethod, s.between("theta1", "theta2", s.th[0], s.th[1], s.phi)}}
	gamma.Routes = s.interior()
	phi.Mistakes = directionsAdded(s.th[0] + s.th[1])
	gamma.Mistakes = []Mistake{{"directions-added", expr.Sub(expr.Deg(180), expr.Add(theta1, theta2))}}
	phi.Between = [2]expr.Node{expr.Deg(0), expr.Deg(180)}
	gamma.Between = phi.Between
	return phi, gamma
}

// resultantOfTwo declares the magnitude of the resultant r.
func resultantOfTwo(r r2.Vec) Quantity {
	return Quantity{Name: "R", Symbol: expr.Symbol{Letter: "R", Spoken: "R"}, Dim: statics.DimForce, Answer: true,
		True: r2.Norm(r), Routes: resultantRoutes(), Between: [2]expr.Node{expr.Abs(expr.Sub(f1, f2)), expr.Add(f1, f2)},
		Mistakes: []Mistake{
			{"magnitudes-added", expr.Add(f1, f2)},
			{"magnitudes-subtracted", expr.Abs(expr.Sub(f1, f2))},
			{"other-diagonal", otherDiagonal(f1, theta1, f2, theta2)},
			{"other-diagonal", otherDiagonal(f2, theta2, f1, theta1)},
			{"other-diagonal", expr.Sqrt(expr.Sub(expr.Add(expr.Sq(f1), expr.Sq(f2)), expr.Mul(expr.N(2), f1, f2, expr.Cos(symPhi))))}}}
}

// besideResultant declares the angles between the resultant r and each force.
func (s *plane) besideResultant(v [2]r2.Vec, r r2.Vec) (alpha, beta Quantity) {
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
func (s *plane) resultantDirection(v [2]r2.Vec, r r2.Vec) Quantity {
	dir, _ := statics.Direction(r)
	q := Quantity{Name: "theta", Symbol: expr.Symbol{Letter: "θ", Spoken: "theta"}, Dim: statics.DimAngle, True: dir.Degrees(), Answer: true, Turns: true}
	q.Between[0], q.Between[1] = sense[expr.Node](s, theta1, theta2)
	q.Routes, q.Mistakes = s.directionRoutes(r), s.directionMistakes(v)
	return q
}

// directionsAdded are the directions of two forces added for the angle between
// them, and what that leaves of a full turn where it is more than half of one.
func directionsAdded(sum float64) []Mistake {
	added := expr.Add(theta1, theta2)
	all := []Mistake{{"directions-added", added}}
	if over := turn(sum); over > 180 {
		all = append(all, Mistake{"directions-added", expr.Sub(expr.Deg(360+math.Round(sum-over)), added)})
	}
	return all
}

// otherDiagonal is the length of F − G from what each has along x and y.
func otherDiagonal(f, fAt, g, gAt expr.Node) expr.Node {
	leg := func(of func(expr.Node) expr.Node) expr.Node {
		return expr.Sq(expr.Sub(expr.Mul(f, of(fAt)), expr.Mul(g, of(gAt))))
	}
	return expr.Sqrt(expr.Add(leg(expr.Cos), leg(expr.Sin)))
}

// The symbols of the lesson's formulas.
var (
	f1, f2         = expr.S("F1"), expr.S("F2")
	theta1, theta2 = expr.S("theta1"), expr.S("theta2")
	symPhi         = expr.S("phi")
	symGamma       = expr.S("gamma")
	symR           = expr.S("R")
	symTheta       = expr.S("theta")
	symRx, symRy   = expr.S("Rx"), expr.S("Ry")
)

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

// difference is to − from, whose value is d, brought to want by whole turns.
func difference(to, from expr.Node, d, want float64) expr.Node {
	turns := math.Round((want-d)/360) * 360
	switch {
	case turns > 0:
		return expr.Sub(expr.Deg(turns), expr.Sub(from, to))
	case turns < 0:
		return expr.Sub(expr.Sub(to, from), expr.Deg(-turns))
	}
	return expr.Sub(to, from)
}

// interior lists the routes to γ.
func (s *plane) interior() []Route {
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
	return []Route{
		{"adjacent-angles", "adjacent-angles", ByTriangle, expr.Sub(expr.Deg(180), symPhi)},
		{"four-angles", "four-angles", ByTriangle, expr.Div(expr.Sub(expr.Deg(360), expr.Mul(expr.N(2), symPhi)), expr.N(2))},
		{"alternate-angles", "alternate-angles", ByTriangle, alternate},
	}
}

func resultantRoutes() []Route {
	squares := expr.Add(expr.Sq(f1), expr.Sq(f2))
	cross := func(angle expr.Node) expr.Node { return expr.Mul(expr.N(2), f1, f2, expr.Cos(angle)) }
	return []Route{
		{"cosine-law", "cosine-law", ByTriangle, expr.Sqrt(expr.Sub(squares, cross(symGamma)))},
		magnitudeOf(symRx, symRy),
		{"parallelogram", "parallelogram-diagonal", ByTriangle, expr.Sqrt(expr.Add(squares, cross(symPhi)))},
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
func (s *plane) corner(c corner, v, theta float64) ([]Route, []Mistake) {
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
	routes := []Route{
		{"sine-law", "sine-law", ByTriangle, bySides},
		{"cosine-law", "cosine-law-angle", ByTriangle, cosine},
		{"triangle-sum", "triangle-sum", ByTriangle, expr.Sub(expr.Sub(expr.Deg(180), symGamma), twin)},
		{"sine-law-twin", "sine-law", ByTriangle, byTwin},
		{"from-direction", "angle-from-direction", AnyMethod, difference(to, from, d, v)},
	}
	return routes, []Mistake{
		{"right-triangle-assumed", expr.Asin(expr.Div(c.own, symR))},
		{"right-triangle-assumed", expr.Acos(expr.Div(c.other, symR))},
		{"right-triangle-assumed", expr.Atan(expr.Div(c.own, c.other))},
		{"bisector-assumed", expr.Div(symPhi, expr.N(2))},
	}
}

// inverseSine is the angle of a triangle whose sine is x: the acute one, or
// its supplement where the true angle v is obtuse.
func inverseSine(x expr.Node, v float64) expr.Node {
	if v > 90 {
		return expr.Sub(expr.Deg(180), expr.Asin(x))
	}
	return expr.Asin(x)
}

func (s *plane) directionRoutes(r r2.Vec) []Route {
	plus, minus := expr.Add, expr.Sub
	fromFirst, fromSecond := plus(theta1, expr.S("beta")), minus(theta2, expr.S("alpha"))
	if !s.ccw {
		fromFirst, fromSecond = minus(theta1, expr.S("beta")), plus(theta2, expr.S("alpha"))
	}
	return []Route{
		{"from-first", "laid-off", ByTriangle, fromFirst},
		directionOf(symRx, symRy, r),
		{"from-second", "laid-off", ByTriangle, fromSecond},
	}
}

// directionMistakes are the wrong ways to θ that belong to the sketch.
func (s *plane) directionMistakes(v [2]r2.Vec) []Mistake {
	diff := statics.Resultant(v[0], r2.Scale(-1, v[1]))
	x := expr.Sub(expr.S("F1x"), expr.S("F2x"))
	y := expr.Sub(expr.S("F1y"), expr.S("F2y"))
	return []Mistake{
		{"bisector-assumed", expr.Div(expr.Add(theta1, theta2), expr.N(2))},
		{"other-diagonal", arctangent(x, y, diff)},
		{"other-diagonal", arctangent(expr.Neg{X: x}, expr.Neg{X: y}, r2.Scale(-1, diff))},
	}
}

// ways is the worked solution by either method. The triangle's finds the angle
// opposite the smaller force: it is acute, so the inverse sine can't mislead.
func (s *plane) ways(qs []Quantity) []Way {
	angle, direction := "beta", "from-first"
	if s.f[0] < s.f[1] {
		angle, direction = "alpha", "from-second"
	}
	return []Way{
		{ByTriangle, []Step{{"phi", "difference-of-directions"}, {"gamma", "adjacent-angles"},
			{"R", "cosine-law"}, {angle, "sine-law"}, {"theta", direction}}},
		{ByComponents, append(componentWay(qs, "F1x", "F1y", "F2x", "F2y", "Rx", "Ry").Steps,
			Step{"R", "components"}, Step{"theta", "arctangent"})},
	}
}

// scenesTwoForces shows the forces as given and what the work is at: on the way
// by the triangle the parallelogram until γ is found, then the forces head to
// tail; on the way by components each force with its own, then the resultant.
// What is not found shows its symbol alone.
func scenesTwoForces(w *Work) []figure.Scene {
	f := w.forceFigures()
	scenes := []figure.Scene{figure.Given(f[0], f[1])}
	closed, order := w.sketched()
	by := w.method()
	p := figure.Pair{First: f[0], Second: f[1], Resultant: w.label("R")}
	if by == ByTriangle && w.Found("phi") {
		p.Between, p.AtJoint = w.label("phi"), w.label("gamma")
		scenes = append(scenes, figure.Parallelogram(p))
		p.Between = figure.Label{}
	}
	if closed || by == ByTriangle && (w.Found("gamma") || !w.Found("phi")) {
		p.AtTail, p.AtJoint, p.AtHead = w.label("beta"), w.label("gamma"), w.label("alpha")
		if closed && order[0] == 1 {
			p.First, p.Second, p.AtTail, p.AtHead = p.Second, p.First, p.AtHead, p.AtTail
		}
		if w.Found("theta") {
			p.Direction = w.label("theta")
		}
		scenes = append(scenes, figure.HeadToTail(p))
	}
	if by == ByComponents {
		scenes = append(scenes, w.componentFigure(append(f, w.resultantFigure())))
	}
	return scenes
}
