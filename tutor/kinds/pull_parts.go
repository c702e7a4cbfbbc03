package kinds

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// coordinate is one of the two axes along which forces are taken apart and
// summed.
type coordinate int

const (
	alongX coordinate = iota
	alongY
)

// String is the name of the axis.
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

// acute is the acute angle to the x axis from a direction given from +x or by a
// slope; nil where that is the direction itself, or is none.
func (p pull) acute() expr.Node {
	acute, v := lesson.Degrees(statics.Angle(math.Abs(math.Remainder(p.at, 180)))*statics.Degree), p.unit()
	switch h := p.heading; {
	case v.X >= 0 && v.Y >= 0 || acute < 1e-6 || acute > 90-1e-6:
		return nil
	case h.Form == statics.Slope:
		return expr.Atan(expr.Div(expr.N(h.Rise), expr.N(h.Run)))
	case p.fromX():
		return expr.Deg(acute)
	}
	return nil
}

// byReference adds to a pull's components, where its direction from +x lies
// beyond the first quadrant, the ways by the acute angle to the x axis, the
// signs taken from the sketch; otherwise that of byOtherTurn.
func (p pull) byReference(parts []lesson.Quantity) []lesson.Quantity {
	parts = p.byOtherTurn(parts)
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

// byOtherTurn adds to a pull's components, where its direction is not told from +x
// and lies below the x axis, the ways by that direction counted the other way round
// from +x: to a calculator in degrees −121° is 239°, to one in radians it is not.
func (p pull) byOtherTurn(parts []lesson.Quantity) []lesson.Quantity {
	if p.fromX() || p.vec.Y >= 0 {
		return parts
	}
	dir := expr.Node(expr.Deg(p.at + 360))
	if p.at > 0 {
		dir = expr.Neg{X: expr.Deg(360 - p.at)}
	}
	x, y := resolve(p.force(), dir)
	parts[0].Aside, parts[1].Aside = append(parts[0].Aside, x[0].Tree), append(parts[1].Aside, y[0].Tree)
	return parts
}

// byDirection adds to components what a pull would have of one direction: its own
// components by another's direction, or another's by its magnitude.
func (p pull) byDirection(parts []lesson.Quantity, dir string) {
	x, y := resolve(p.force(), expr.S(dir))
	for i, r := range []lesson.Route{x[0], y[0]} {
		parts[i].Mistakes = append(parts[i].Mistakes, mistakeAside("other-force", r.Tree))
	}
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
			wrong := func(slip string, top, under expr.Node) { // the fraction is worked out first by some, and rounded
				q.Mistakes = append(q.Mistakes, mistake(slip, signed(expr.Mul(p.force(), expr.Div(top, under)))))
			}
			wrong("slope-inverted", other, long)
			wrong("leg-over-leg", leg, other)
			wrong("legs-added", leg, expr.Add(rise, run))
			wrong("root-missing", leg, expr.Add(expr.Sq(rise), expr.Sq(run)))
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
