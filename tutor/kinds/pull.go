package kinds

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// pull is a force of a lesson: its names there, and what is true of it. Force
// number 1 has the magnitude F1, the direction theta1 and the components F1x
// and F1y.
type pull struct {
	name    string // of the magnitude; the components add x and y
	dir     string // of the direction
	symbol  expr.Symbol
	heading statics.Heading // as the statement gives it
	size    float64         // in the lesson's unit
	at      float64         // the direction as given, degrees
	vec     r2.Vec
	back    bool // a component against its axis: in a triangle it is a side of −size, 180° round
}

// forceFields are the fields of a force given in full, with examples of what
// stands in them.
func forceFields(magnitude, direction string) []lesson.FieldSpec {
	return []lesson.FieldSpec{
		{Key: "name", Is: lesson.NameField, Example: "P"},
		{Key: "magnitude", Is: lesson.ForceField, Example: magnitude},
		{Key: "direction", Is: lesson.DirectionField, Example: direction},
	}
}

// newPull is a force of a statement; n is its number.
func newPull(it lesson.Item, n string, unit statics.Unit) pull {
	m, d := it.Field("magnitude"), it.Field("direction")
	p := pull{name: "F" + n, dir: "theta" + n, symbol: it.Symbol(), heading: d.Heading, at: d.Value}
	p.size, _ = m.Unit.Convert(m.Value, unit) // it was read as a force
	p.vec = statics.Polar(p.size, d.Heading.Angle())
	return p
}

// force and direction are the symbols of a pull in formulas. A component against
// its axis is taken as the side of a triangle that it makes.
func (p pull) force() expr.Node {
	if p.back {
		return expr.Neg{X: expr.S(p.name)}
	}
	return expr.S(p.name)
}

func (p pull) direction() expr.Node {
	if p.back {
		return expr.Add(expr.S(p.dir), expr.Deg(180))
	}
	return expr.S(p.dir)
}

// points is the direction of a pull as a side of a triangle, in degrees.
func (p pull) points() float64 {
	if p.back {
		return p.at + 180
	}
	return p.at
}

// magnitude and heading are a pull's quantities; a kind says which are given.
func (p pull) magnitude() lesson.Quantity {
	return lesson.Quantity{Name: p.name, Symbol: p.symbol, Dim: statics.DimForce, True: p.size}
}

func (p pull) bearing() lesson.Quantity {
	return lesson.Quantity{Name: p.dir, Symbol: directionSymbol(p.symbol), Dim: statics.DimAngle, Turns: true, True: p.at}
}

// given are a pull's magnitude and direction as givens; twin is the other
// force's number, "" where there is none.
func (p pull) given(twin string) []lesson.Quantity {
	m, d := p.magnitude(), p.bearing()
	m.Given, d.Given, d.Heading = true, true, p.heading
	if twin != "" {
		m.Twin, d.Twin = "F"+twin, "theta"+twin
	}
	return []lesson.Quantity{m, d}
}

// directionSymbol is θ with the force's own index, or its name as the index.
func directionSymbol(force expr.Symbol) expr.Symbol {
	sub := force.Sub
	if force.Letter != "F" || sub == "" {
		sub = force.Letter + force.Sub
	}
	return expr.Symbol{Letter: "θ", Sub: sub, Spoken: "theta " + sub}
}

// coordinate is one of the two axes along which forces are taken apart and
// summed.
type coordinate int

const (
	alongX coordinate = iota
	alongY
)

func (c coordinate) String() string { return [...]string{"x", "y"}[c] }

// across is the other coordinate.
func (c coordinate) across() coordinate { return alongY - c }

// of is the component of v.
func (c coordinate) of(v r2.Vec) float64 { return [...]float64{v.X, v.Y}[c] }

// part is the component along c of the force v called name, without routes.
func part(of expr.Symbol, name string, c coordinate, v r2.Vec) lesson.Quantity {
	axis := c.String()
	sym := expr.Symbol{Letter: of.Letter, Sub: of.Sub + axis, Spoken: of.Spoken + " " + axis}
	return lesson.Quantity{Name: name + axis, Symbol: sym, Dim: statics.DimForce, Signed: true, Mate: name + c.across().String(), True: c.of(v)}
}

// parts are a pull's components: by the way its direction is given, where that
// is not from +x, and by its direction from +x. twin is the name of the force
// whose component is taken for this one's by mistake.
func (p pull) parts(twin string) []lesson.Quantity {
	x, y := part(p.symbol, p.name, alongX, p.vec), part(p.symbol, p.name, alongY, p.vec)
	if twin != "" {
		x.Twin, y.Twin = twin+"x", twin+"y"
	}
	x.Routes, y.Routes = resolve(p.force(), p.direction())
	p.asGiven(&x, &y)
	bound := [2]expr.Node{expr.Neg{X: p.force()}, p.force()}
	x.Between, y.Between = bound, bound
	return []lesson.Quantity{x, y}
}

// resolve are the routes from magnitude and direction to components.
func resolve(f, dir expr.Node) (x, y []lesson.Route) {
	return []lesson.Route{route("resolve", "resolve", lesson.ByComponents, expr.Mul(f, expr.Cos(dir)))},
		[]lesson.Route{route("resolve", "resolve", lesson.ByComponents, expr.Mul(f, expr.Sin(dir)))}
}

// asGiven puts before the routes of a pull's components the one by the way its
// direction is given: by rise and run, or by the turn from some other axis.
func (p pull) asGiven(x, y *lesson.Quantity) {
	h := p.heading
	switch {
	case h.Form == statics.Slope && h.Rise > 0 && h.Run > 0:
		p.bySlope(x, y)
	case h.Form == statics.Slope || h.Axis == statics.PlusX && h.Sense == statics.CounterClockwise || h.Turn == 0:
	default:
		along, across := expr.Cos(expr.Deg(lesson.Degrees(h.Turn))), expr.Sin(expr.Deg(lesson.Degrees(h.Turn)))
		to := h.Axis + 1
		if h.Sense == statics.Clockwise {
			to = h.Axis + 3
		}
		for _, leg := range []struct {
			axis statics.Axis
			key  expr.Node
		}{{h.Axis & 3, along}, {to & 3, across}} {
			q, tree := x, expr.Mul(p.force(), leg.key)
			if leg.axis == statics.PlusY || leg.axis == statics.MinusY {
				q = y
			}
			if leg.axis == statics.MinusX || leg.axis == statics.MinusY {
				tree = expr.Neg{X: tree}
			}
			q.Routes = append([]lesson.Route{route("from-axis", "from-axis", lesson.ByComponents, tree)}, q.Routes...)
		}
	}
}

// fromX tells whether the direction is given as it is meant, from +x.
func (p pull) fromX() bool {
	return p.heading.Form == statics.FromAxis && p.heading.Axis == statics.PlusX && p.heading.Sense == statics.CounterClockwise
}

// acute is the acute angle from a direction given from +x to the x axis; nil
// where that is the direction itself, or is none.
func (p pull) acute() expr.Node {
	acute, v := lesson.Degrees(statics.Angle(math.Abs(math.Remainder(p.at, 180)))*statics.Degree), statics.Polar(1, p.heading.Angle())
	if !p.fromX() || v.X >= 0 && v.Y >= 0 || acute < 1e-6 || acute > 90-1e-6 {
		return nil
	}
	return expr.Deg(acute)
}

// byReference adds to a pull's components, where its direction from +x lies
// beyond the first quadrant, the ways by the acute angle to the x axis, the
// signs taken from the sketch.
func (p pull) byReference(parts []lesson.Quantity) []lesson.Quantity {
	acute := p.acute()
	if acute == nil {
		return parts
	}
	for i, key := range []expr.Node{expr.Cos(acute), expr.Sin(acute)} {
		tree := expr.Mul(p.force(), key)
		if parts[i].True < 0 {
			tree = expr.Neg{X: tree}
		}
		parts[i].Aside = append(parts[i].Aside, tree)
	}
	return parts
}

// bySlope is the route by the slope triangle, and the wrong ways with it: legs
// exchanged, and a leg over the other leg.
func (p pull) bySlope(x, y *lesson.Quantity) {
	rise, run := expr.N(p.heading.Rise), expr.N(p.heading.Run)
	leg := func(q *lesson.Quantity, leg, other expr.Node) {
		signed := func(tree expr.Node) expr.Node {
			if q.True < 0 {
				return expr.Neg{X: tree}
			}
			return tree
		}
		by := func(top, under expr.Node) expr.Node { return signed(expr.Div(expr.Mul(p.force(), top), under)) }
		long := hypotenuse(p.heading.Rise, p.heading.Run)
		q.Routes = append([]lesson.Route{route("slope", "slope", lesson.ByComponents, by(leg, long))}, q.Routes...)
		if p.heading.Rise != p.heading.Run {
			q.Mistakes = append(q.Mistakes, mistake("slope-inverted", by(other, long)), mistake("leg-over-leg", by(leg, other)))
			q.Mistakes = append(q.Mistakes, mistake("legs-added", by(leg, expr.Add(rise, run))), mistake("root-missing", by(leg, expr.Add(expr.Sq(rise), expr.Sq(run)))))
		}
	}
	leg(x, run, rise)
	leg(y, rise, run)
}

// hypotenuse is the long side of a slope triangle: a whole number where it is
// one, otherwise the root of the sum of squares.
func hypotenuse(rise, run float64) expr.Node {
	if h := math.Hypot(rise, run); h == math.Round(h) && rise == math.Round(rise) && run == math.Round(run) {
		return expr.N(h)
	}
	return expr.Sqrt(expr.Add(expr.Sq(expr.N(rise)), expr.Sq(expr.N(run))))
}

// total is a component of the resultant r of several forces, by their sum and by
// the resultant's own magnitude and direction.
func total(pulls []pull, c coordinate, r r2.Vec) lesson.Quantity {
	q := part(lesson.ParseSymbol("R"), "R", c, r)
	var parts, whole []expr.Node
	for _, p := range pulls {
		parts, whole = append(parts, expr.S(p.name+c.String())), append(whole, p.force())
	}
	sum := route("sum", "sum-of-components", lesson.ByComponents, expr.Add(parts[0], parts[1], parts[2:]...))
	x, y := resolve(symR, symTheta)
	q.Routes = append([]lesson.Route{sum}, [...][]lesson.Route{x, y}[c]...)
	q.Mistakes = []lesson.Mistake{mistake("resultant-reversed", expr.Neg{X: sum.Tree}), mistake("magnitudes-added", expr.Add(whole[0], whole[1], whole[2:]...))}
	for i, p := range pulls {
		mixed := slices.Clone(parts)
		mixed[i] = expr.S(p.name + c.across().String())
		q.Mistakes = append(q.Mistakes, mistake("part-in-other-sum", expr.Add(mixed[0], mixed[1], mixed[2:]...)))
	}
	if len(pulls) > 2 { // all of them; of two, it is one
		q.Mistakes = append(q.Mistakes, mistake("sign-lost", expr.Add(expr.Abs(parts[0]), expr.Abs(parts[1]), unsigned(parts[2:])...)))
	}
	return q
}

// unsigned are the values of nodes without their signs.
func unsigned(nodes []expr.Node) []expr.Node {
	var all []expr.Node
	for _, n := range nodes {
		all = append(all, expr.Abs(n))
	}
	return all
}

// magnitudeOf is the route from two components to a magnitude.
func magnitudeOf(x, y expr.Node) lesson.Route {
	return route("components", "right-angle-theorem", lesson.ByComponents, expr.Sqrt(expr.Add(expr.Sq(x), expr.Sq(y))))
}

// directionOf is the route from two components to a direction.
func directionOf(x, y expr.Node, v r2.Vec) lesson.Route {
	return route("arctangent", "arctangent", lesson.ByComponents, arctangent(x, y, v))
}

// arctangent is the direction of v with components x and y, the quadrant
// already chosen.
func arctangent(x, y expr.Node, v r2.Vec) expr.Node {
	acute := expr.Atan(expr.Div(y, x))
	switch {
	case v.X > 0 && v.X > 1e-9*math.Abs(v.Y):
		return acute
	case v.X < 0 && -v.X > 1e-9*math.Abs(v.Y) && v.Y >= 0:
		return expr.Add(expr.Deg(180), acute)
	case v.X < 0 && -v.X > 1e-9*math.Abs(v.Y):
		return expr.Sub(acute, expr.Deg(180))
	case v.Y > 0: // along the y axis the fraction is turned over
		return expr.Sub(expr.Deg(90), expr.Atan(expr.Div(x, y)))
	}
	return expr.Sub(expr.Neg{X: expr.Deg(90)}, expr.Atan(expr.Div(x, y)))
}

// byMagnitude are the ways to a direction from one component and the magnitude,
// cos⁻¹(x/f) and sin⁻¹(y/f), on the side where v lies, and what they come to
// without the inverse key.
func byMagnitude(x, y, f expr.Node, v r2.Vec) (ways []expr.Node, wrong []lesson.Mistake) {
	cosine, sine := expr.Div(x, f), expr.Div(y, f)
	byX, byY := expr.Node(expr.Acos(cosine)), expr.Node(expr.Asin(sine))
	if v.Y < 0 {
		byX = expr.Neg{X: byX}
	}
	switch {
	case v.X < 0 && v.Y >= 0:
		byY = expr.Sub(expr.Deg(180), byY)
	case v.X < 0:
		byY = expr.Sub(expr.Neg{X: expr.Deg(180)}, byY)
	}
	return []expr.Node{byX, byY}, []lesson.Mistake{mistake("inverse-missing", cosine), mistake("inverse-missing", sine)}
}

// componentWay is the worked solution by components: each of the named
// quantities by the route it puts first.
func componentWay(qs []lesson.Quantity, names ...string) lesson.Way {
	way := lesson.Way{Method: lesson.ByComponents}
	for _, name := range names {
		for _, q := range qs {
			if q.Name == name {
				way.Steps = append(way.Steps, step(name, q.Routes[0].ID))
			}
		}
	}
	return way
}

// complete takes a pull's magnitude from its vector, and its direction too
// unless that is given.
func (p *pull) complete(directed bool) {
	p.size = r2.Norm(p.vec)
	if !directed {
		dir, _ := statics.Direction(p.vec)
		p.at, p.heading = lesson.Degrees(dir), statics.Heading{}
	}
}

// ForceSource is the Source of a named force.
func ForceSource(name, magnitude, direction string) lesson.Source {
	return lesson.Branch("", lesson.Leaf("name", name), lesson.Leaf("magnitude", magnitude), lesson.Leaf("direction", direction))
}
