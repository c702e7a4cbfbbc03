package kinds

import (
	"errors"
	"math"
	"strconv"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/figure"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// ObliqueComponents is a force taken apart along two axes that need not be at
// right angles. Where it lies outside their angle, a component is negative.
//
// The triangle is that of two-forces with the components as its sides: the one
// along the first axis (Fu), the one along the second (Fv), and the force F
// closes it; α is opposite Fu, β opposite Fv, γ opposite F.
var ObliqueComponents = lesson.Kind{
	Name: "oblique-components",
	Groups: []lesson.Group{
		{Key: "force", Min: 1, Max: 1, Fields: forceFields("560 N", "70 deg")},
		{Key: "axes", Min: 2, Max: 2, Fields: []lesson.FieldSpec{
			{Key: "name", Is: lesson.NameField, Example: "u"},
			{Key: "direction", Is: lesson.DirectionField, Example: "25 deg"},
		}},
	},
	Build:  buildObliqueComponents,
	Scenes: scenesObliqueComponents,
	Draw:   drawObliqueComponents,
	Rule:   "jrxq",
	Bank: []lesson.Source{
		ObliqueComponentsSource("A tug's pull is carried by two lines of a bridle.", ForceSource("P", "560 N", "70 deg"), AxisSource("u", "25 deg"), AxisSource("v", "118 deg")),
		ObliqueComponentsSource("The pull of a mooring is split along the quay and along a finger of the jetty.", ForceSource("M", "6.4 kN", "52 deg"), AxisSource("a", "0 deg"), AxisSource("b", "75 deg")),
		ObliqueComponentsSource("A load on the derrick is carried by its boom and by its topping lift.", ForceSource("W", "850 lb", "-65 deg"), AxisSource("u", "-20 deg"), AxisSource("v", "-130 deg")),
		ObliqueComponentsSource("The tide's push on a buoy is held along two chains.", ForceSource("T", "1.2 kip", "160 deg"), AxisSource("c", "3:4 up left"), AxisSource("d", "195 deg")),
		ObliqueComponentsSource("The winch's pull is taken apart along the slipway and along a guide rail.", ForceSource("F", "930 N", "215 deg"), AxisSource("s", "20 deg below -x"), AxisSource("r", "262 deg")),
		ObliqueComponentsSource("A tow's pull is taken apart along the channel and along a leading line that lies beyond it.", ForceSource("T", "720 N", "80 deg"), AxisSource("u", "45 deg"), AxisSource("v", "-20 deg")),
	},
}

// AxisSource is the Source of a named axis.
func AxisSource(name, direction string) lesson.Source {
	return lesson.Branch("", lesson.Leaf("name", name), lesson.Leaf("direction", direction))
}

// ObliqueComponentsSource is the Source of a problem of this kind: a ForceSource
// and the AxisSources of both axes.
func ObliqueComponentsSource(story string, f, u, v lesson.Source) lesson.Source {
	f.Key = "force"
	return lesson.Branch("", lesson.Leaf("kind", "oblique-components"), lesson.Leaf("story", story), f, lesson.Branch("axes", u, v))
}

// drawObliqueComponents draws a force and an axis on either side of it.
func drawObliqueComponents(d *lesson.Draw) lesson.Source {
	stories := []string{"A tug's pull is carried by two lines of a bridle.", "A mooring's pull is split along two edges of the quay.",
		"A push on a pontoon is held along two chains.", "A load is carried by the derrick's boom and its topping lift."}
	story := stories[d.Below(len(stories))]
	names := [][3]string{{"P", "u", "v"}, {"F", "a", "b"}, {"Q", "u", "v"}}[d.Below(3)]
	size := strconv.Itoa(d.Step(150, 950, 10)) + []string{" N", " N", " lb"}[d.Below(3)]
	at := d.Direction(1)
	first, second := at-d.Step(15, 75, 1), at+d.Step(15, 75, 1)
	if d.Below(4) == 0 { // outside the angle of the axes: one component is negative
		second = first - d.Step(25, 80, 1)
	}
	if d.Below(2) == 1 {
		first, second = second, first
	}
	whole := func(a int) string { return strconv.Itoa((a+180+360)%360-180) + " deg" }
	return ObliqueComponentsSource(story, ForceSource(names[0], size, strconv.Itoa(at)+" deg"), AxisSource(names[1], whole(first)), AxisSource(names[2], whole(second)))
}

// minOblique is the least angle of the triangle in degrees: with less, the
// components are too large to be drawn beside the force.
const minOblique = 1.0

func buildObliqueComponents(p *lesson.Problem) (*lesson.Lesson, error) {
	given, axes := p.Group("force")[0], p.Group("axes")
	names := [2]string{axes[0].Field("name").Written, axes[1].Field("name").Written}
	say := func(key string) error {
		return errors.New(text.Say("oblique-components.refuse."+key, "F", given.Shown(), "u", axes[0].Shown(), "v", axes[1].Shown()))
	}
	for _, n := range names {
		if n == "x" || n == "y" {
			return nil, say("names")
		}
	}
	t := triangle{unit: given.Field("magnitude").Unit}
	t.result = newPull(given, "", t.unit)
	f, u, v := t.result.vec, unitAlong(axes[0]), unitAlong(axes[1])
	apart := statics.Between(u, v).Degrees()
	whole := r2.Cross(u, v)
	sizes := [2]float64{r2.Cross(f, v) / whole, r2.Cross(u, f) / whole} // f = sizes·(u, v)
	for i, side := range []*pull{&t.first, &t.second} {
		d := axes[i].Field("direction")
		n := []string{"u", "v"}[i]
		*side = pull{name: "F" + n, dir: "theta" + n, heading: d.Heading, at: d.Value, size: sizes[i], back: sizes[i] < 0, vec: statics.Polar(sizes[i], d.Heading.Angle()),
			symbol: expr.Symbol{Letter: t.result.symbol.Letter, Sub: t.result.symbol.Sub + names[i], Spoken: t.result.symbol.Spoken + " " + names[i]}}
	}
	first, second := t.first.vec, t.second.vec
	t.ccw = r2.Cross(first, second) > 0
	t.alpha, t.beta, t.gamma = statics.Between(f, second).Degrees(), statics.Between(first, f).Degrees(), statics.Between(first, r2.Scale(-1, second)).Degrees()
	switch {
	case apart < minOblique || apart > 180-minOblique:
		return nil, say("parallel")
	case min(t.alpha, t.beta, 180-t.alpha, 180-t.beta) < minOblique:
		return nil, say("along")
	}
	l := t.oblique(names)
	l.Words = []string{"u", axes[0].Shown(), "v", axes[1].Shown()}
	return l, nil
}

// unitAlong is the vector of length 1 along an axis.
func unitAlong(axis lesson.Item) r2.Vec {
	return statics.Polar(1, axis.Field("direction").Heading.Angle())
}

// oblique declares the quantities: the force and the axes given, the
// triangle's angles, the rectangular components, and what is asked.
func (t *triangle) oblique(names [2]string) *lesson.Lesson {
	qs := t.result.given("")
	for i, p := range []pull{t.first, t.second} {
		dir := p.bearing()
		dir.Heading = p.heading
		dir.Given, dir.Symbol = true, expr.Symbol{Letter: "θ", Sub: names[i], Spoken: "theta " + names[i]}
		dir.Twin = []string{"thetav", "thetau"}[i]
		qs = append(qs, dir)
	}
	phi := t.phi()
	if t.first.back != t.second.back { // one component points against its axis
		phi.Mistakes = append(phi.Mistakes, mistakeAside("axes-for-components", expr.Sub(expr.Deg(180), phi.Routes[0].Tree)))
	}
	phi.Mistakes = append(phi.Mistakes, mistakeAside("other-force", expr.S("alpha")), mistakeAside("other-force", expr.S("beta")))
	qs = append(qs, phi, betweenOthers(theOtherWayRound(t.angle(0))), betweenOthers(theOtherWayRound(t.angle(1))), t.angle(2))
	whole := t.result.byReference(t.result.parts(""))
	for _, axis := range []pull{t.first, t.second} {
		t.result.byDirection(whole, axis.dir)
	}
	qs = append(qs, whole...)
	alpha, beta := expr.S("alpha"), expr.S("beta")
	for i, p := range []pull{t.first, t.second} {
		near, far := []expr.Node{beta, alpha}[i], []expr.Node{alpha, beta}[i] // to this axis, and to the other
		q := p.magnitude()
		q.Answer, q.Twin, q.Signed = true, []string{"Fv", "Fu"}[i], t.first.back || t.second.back
		q.Sums = sumsOf(expr.S("Fx"), expr.S("Fy"), t.first, t.second)
		q.Routes, q.Onward = append(t.sideRoutes(i), route("two-equations", "two-equations", lesson.ByComponents, t.twoEquations(i, legs))), t.oneEquation(i)
		if t.first.acute() != nil || t.second.acute() != nil {
			q.Aside = []expr.Node{t.twoEquations(i, acuteLegs)}
		}
		q.Mistakes = t.wrongPairs(i)
		q.Mistakes = append(q.Mistakes, mistakeAside("magnitudes-for-components", t.result.force()))
		q.Mistakes = append(q.Mistakes, leftOver(t.result.force(), []pull{t.second, t.first}[i].force(), p.back)...)
		for _, tree := range []expr.Node{expr.Mul(t.result.force(), expr.Cos(near)), expr.Mul(t.result.force(), expr.Sin(far)), expr.Div(t.result.force(), expr.Cos(near))} {
			if p.back {
				tree = expr.Neg{X: tree}
			}
			q.Mistakes = append(q.Mistakes, mistake("right-triangle-assumed", tree))
		}
		qs = append(qs, q)
	}
	l := &lesson.Lesson{Unit: t.unit, Ways: []lesson.Way{
		way(lesson.ByTriangle, step("phi", "directions"), step("gamma", "adjacent-angles"), step("alpha", "directions"), step("Fu", "sine-law-F"),
			step("beta", "directions"), step("Fv", "sine-law-F")),
		way(lesson.ByComponents, firstRoutes(qs, []lesson.Step{step("Fx", ""), step("Fy", ""), step("Fu", "two-equations"), step("Fv", "two-equations")})...),
	}}
	l.Quantities = pruned(qs)
	stepsFirst(l.Quantities, l.Ways)
	return l
}

// theOtherWayRound is an angle by directions with the mistake of turning the long way
// from one to the other.
func theOtherWayRound(q lesson.Quantity) lesson.Quantity {
	q.Mistakes = append(q.Mistakes, mistakeAside("reflex-angle", expr.Sub(expr.Deg(360), q.Route("directions").Tree)))
	return q
}

// betweenOthers is an angle at one end of a side with the mistake of taking that between
// the two other sides, as they point or head to tail.
func betweenOthers(q lesson.Quantity) lesson.Quantity {
	q.Mistakes = append(q.Mistakes, mistakeAside("other-force", symPhi), mistakeAside("other-force", symGamma))
	return q
}

// leftOver are the wrong ways to a component from the other one: by squares, as if
// the axes were at right angles, and as what the other leaves of the force, or the
// force of the other.
func leftOver(force, other expr.Node, back bool) []lesson.Mistake {
	squares := expr.Sqrt(expr.Sub(expr.Sq(force), expr.Sq(other)))
	if back {
		squares = expr.Neg{X: squares}
	}
	return []lesson.Mistake{mistakeAside("right-triangle-assumed", squares), mistakeAside("magnitudes-subtracted", expr.Sub(force, other)), mistakeAside("magnitudes-subtracted", expr.Sub(other, force))}
}

// twoEquations is side i from what both have along x and along y:
// Fu cos θu + Fv cos θv = Fx and Fu sin θu + Fv sin θv = Fy, the other unknown
// taken out. by is how the sines and cosines are written.
func (t *triangle) twoEquations(i int, by func(pull) (cosine, sine expr.Node)) expr.Node {
	x, y := expr.S("Fx"), expr.S("Fy")
	cosOwn, sinOwn := by([]pull{t.first, t.second}[i])
	cosOther, sinOther := by([]pull{t.second, t.first}[i])
	return expr.Div(
		expr.Sub(expr.Mul(x, sinOther), expr.Mul(y, cosOther)),
		expr.Sub(expr.Mul(cosOwn, sinOther), expr.Mul(sinOwn, cosOther)))
}

// legs are the cosine and the sine of an axis's direction.
func legs(axis pull) (cosine, sine expr.Node) {
	return expr.Cos(expr.S(axis.dir)), expr.Sin(expr.S(axis.dir))
}

// acuteLegs are the same by the acute angle to the x axis, the signs taken from
// the sketch.
func acuteLegs(axis pull) (cosine, sine expr.Node) {
	acute := axis.acute()
	if acute == nil {
		return legs(axis)
	}
	v := axis.unit()
	signed := func(key expr.Node, part float64) expr.Node {
		if part < 0 {
			return expr.Neg{X: key}
		}
		return key
	}
	return signed(expr.Cos(acute), v.X), signed(expr.Sin(acute), v.Y)
}

// sumsOf are the sums along x and y that two forces of known directions make
// with what they come to together, x and y.
func sumsOf(x, y expr.Node, first, second pull) [2]expr.Node {
	part := func(p pull, key func(expr.Node) expr.Node) expr.Node {
		return expr.Mul(expr.S(p.name), key(expr.S(p.dir)))
	}
	return [2]expr.Node{
		expr.Sub(expr.Add(part(first, expr.Cos), part(second, expr.Cos)), x),
		expr.Sub(expr.Add(part(first, expr.Sin), part(second, expr.Sin)), y),
	}
}

// oneEquation is side i from the other one, by what both have along x or y.
func (t *triangle) oneEquation(i int) []expr.Node {
	own, other := t.first, t.second
	if i == 1 {
		own, other = other, own
	}
	var ways []expr.Node
	for _, along := range []struct {
		axis string
		key  func(expr.Node) expr.Node
		part float64
	}{{"x", expr.Cos, own.vec.X}, {"y", expr.Sin, own.vec.Y}} {
		if math.Abs(along.part) < leastAlong*math.Abs(own.size) {
			continue
		}
		left := expr.Sub(expr.S("F"+along.axis), expr.Mul(expr.S(other.name), along.key(expr.S(other.dir))))
		ways = append(ways, expr.Div(left, along.key(expr.S(own.dir))))
	}
	return ways
}

// leastAlong is how much of a side must lie along an axis for it to be found from
// what is left there.
const leastAlong = 0.1

// scenesObliqueComponents shows the force and the two axes and, once the work
// is begun, the parallelogram along them with the force as its diagonal.
func scenesObliqueComponents(l *lesson.Lesson, w lesson.Progress) []figure.Scene {
	p := l.Problem
	it := p.Group("force")[0]
	f := drawn(w.Label("F").Is(it.Field("magnitude").Written), "F", it.Field("direction").Heading,
		statics.Polar(l.Truth("F"), it.Field("direction").Heading.Angle()))
	shown := []figure.Force{f}
	var sides [2]figure.Force
	for i, ax := range p.Group("axes") {
		h, n := ax.Field("direction").Heading, []string{"u", "v"}[i]
		line := drawn(figure.Symbol(ax.Field("name").Written, ""), n, h, statics.Polar(l.Truth("F"), h.Angle()))
		shown = append(shown, line)
		sides[i] = drawn(w.Label("F"+n), "F"+n, h, statics.Polar(l.Truth("F"+n), h.Angle()))
	}
	given := figure.Given(shown...)
	for i := range given.Arrows {
		if given.Arrows[i].Name != "F" {
			given.Arrows[i].Class = figure.ClassAxis
		}
	}
	given.Desc = text.Say("oblique-components.figure", "force", given.Desc)
	scenes := []figure.Scene{given}
	if w.Method() == lesson.AnyMethod || w.Method() == lesson.ByComponents && !w.Found("Fu") && !w.Found("Fv") {
		return scenes
	}
	pair := figure.Pair{First: sides[0], Second: sides[1], Resultant: f.Label,
		Between: w.Label("phi"), AtJoint: w.Label("gamma"), AtTail: w.Label("beta"), AtHead: w.Label("alpha")}
	if w.Found("alpha") || w.Found("beta") { // both fill the angle between the axes
		pair.Between = figure.Label{}
	} else {
		pair.AtTail, pair.AtHead = figure.Label{}, figure.Label{}
	}
	return append(scenes, figure.Parallelogram(pair))
}
