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

// Components is the rectangular components of one force: from its magnitude
// and direction (an angle, a slope, a bearing), or back from the components to
// magnitude and direction.
//
// α is the acute angle between the force and the x axis.
var Components = lesson.Kind{
	Name: "components",
	Groups: []lesson.Group{{Key: "force", Min: 1, Max: 1, Fields: []lesson.FieldSpec{
		{Key: "name", Is: lesson.NameField, Example: "P"},
		{Key: "magnitude", Is: lesson.ForceField, Example: "340 N", Optional: true},
		{Key: "direction", Is: lesson.DirectionField, Example: "3:4 up left", Optional: true},
		{Key: "x", Is: lesson.ComponentField, Example: "-272 N", Optional: true},
		{Key: "y", Is: lesson.ComponentField, Example: "204 N", Optional: true},
	}}},
	Build:  buildComponents,
	Scenes: scenesComponents,
	Draw:   drawComponents,
	Rule:   "atyk",
	Bank: []lesson.Source{
		ComponentsSource("A tug pulls the barge's bow line.", "T", "340 N", "25 deg"),
		ComponentsSource("A guy runs from the derrick's mast head down to the quay.", "G", "6.5 kN", "3:4 down left"),
		ComponentsSource("The tide pushes a buoy.", "B", "420 N", "S 35 E"),
		ComponentsSource("A winch hauls a boat up the slipway.", "W", "1.8 kip", "20 deg above -x"),
		FromComponentsSource("A gauge on the bollard reads the pull of a mooring line in two parts.", "M", "-310 N", "545 N"),
		FromComponentsSource("A pile of the jetty carries a push in two parts.", "P", "-2.4 kip", "-1.7 kip"),
	},
}

// ComponentsSource is the Source of a problem of this kind that gives magnitude and
// direction.
func ComponentsSource(story, name, magnitude, direction string) lesson.Source {
	return lesson.Branch("", lesson.Leaf("kind", "components"), lesson.Leaf("story", story),
		lesson.Branch("force", lesson.Leaf("name", name), lesson.Leaf("magnitude", magnitude), lesson.Leaf("direction", direction)))
}

// FromComponentsSource is the Source of a problem of this kind that gives both
// components.
func FromComponentsSource(story, name, x, y string) lesson.Source {
	return lesson.Branch("", lesson.Leaf("kind", "components"), lesson.Leaf("story", story),
		lesson.Branch("force", lesson.Leaf("name", name), lesson.Leaf("x", x), lesson.Leaf("y", y)))
}

// drawComponents draws a force in one of the ways books give it.
func drawComponents(d *lesson.Draw) lesson.Source {
	stories := []string{"A tug pulls on a tow line.", "A mooring line pulls on a bollard.", "A chain holds a buoy.",
		"A guy pulls on the derrick's mast head.", "The wind pushes a moored boat."}
	story := stories[d.Below(len(stories))]
	name := []string{"P", "F", "T"}[d.Below(3)]
	unit, size := " N", d.Step(120, 980, 10)
	if d.Below(3) == 0 {
		unit = " lb"
	}
	if d.Below(3) == 0 {
		sign := func() string { return []string{"", "-"}[d.Below(2)] }
		return FromComponentsSource(story, name, sign()+strconv.Itoa(d.Step(110, 890, 10))+unit, sign()+strconv.Itoa(d.Step(115, 895, 10))+unit)
	}
	return ComponentsSource(story, name, strconv.Itoa(size)+unit, d.Heading())
}

func buildComponents(p *lesson.Problem) (*lesson.Lesson, error) {
	it := p.Group("force")[0]
	polar := [2]bool{it.Field("magnitude").Given(), it.Field("direction").Given()}
	parts := [2]bool{it.Field("x").Given(), it.Field("y").Given()}
	switch {
	case polar == [2]bool{true, true} && parts == [2]bool{}:
		return resolveForce(it), nil
	case parts == [2]bool{true, true} && polar == [2]bool{}:
		return composeForce(it)
	}
	return nil, errors.New(text.Say("components.refuse.givens", "name", it.Shown()))
}

// resolveForce asks for the components of a force given by magnitude and
// direction.
func resolveForce(it lesson.Item) *lesson.Lesson {
	unit := it.Field("magnitude").Unit
	f := newPull(it, "", unit)
	size := f.magnitude()
	size.Given = true
	theta := f.bearing()
	theta.Symbol = expr.Symbol{Letter: "θ", Spoken: "theta"}
	l := &lesson.Lesson{Unit: unit}
	h := f.heading
	if h.Form == statics.FromAxis && h.Axis == statics.PlusX && h.Sense == statics.CounterClockwise {
		theta.Given = true
	} else {
		theta.True = lesson.Wrap(lesson.Degrees(h.Angle()))
		theta.Routes = []lesson.Route{route("heading", "heading", lesson.AnyMethod, headingTree(h))}
	}
	qs := []lesson.Quantity{size, theta}
	xy := f.byOtherTurn(f.parts(""))
	if acute, ok := acuteAngle(f.vec); ok {
		if theta := &qs[1]; !theta.Given {
			theta.Onward = []expr.Node{fromAcute(f.vec, symAlpha)}
			theta.Mistakes = []lesson.Mistake{mistake("other-axis", fromAcute(f.vec, expr.Sub(expr.Deg(90), symAlpha)))}
		}
		addRoute(&acute, route("from-direction", "acute-from-direction", lesson.AnyMethod, acuteTree(symTheta, theta.True)))
		qs = append(qs, acute)
		byAcute(xy, f.force())
	}
	for i := range xy {
		xy[i].Answer = true
	}
	l.Quantities = append(qs, xy...)
	names := []string{"Fx", "Fy"}
	if xy[0].Routes[0].ID == "resolve" && !theta.Given {
		names = append([]string{"theta"}, names...)
	}
	l.Ways = []lesson.Way{componentWay(l.Quantities, names...)}
	return l
}

// composeForce asks for magnitude and direction of a force given by its
// components.
func composeForce(it lesson.Item) (*lesson.Lesson, error) {
	unit := it.Field("x").Unit
	x := it.Field("x")
	y := it.Field("y")
	var v r2.Vec
	v.X = x.Value
	v.Y, _ = y.Unit.Convert(y.Value, unit)
	dir, ok := statics.Direction(v)
	if !ok {
		return nil, errors.New(text.Say("components.refuse.zero", "name", it.Shown()))
	}
	sym := it.Symbol()
	px, py := part(sym, "F", alongX, v), part(sym, "F", alongY, v)
	px.Given, py.Given = true, true
	fx, fy := expr.S("Fx"), expr.S("Fy")
	size := lesson.Quantity{Name: "F", Symbol: sym, Dim: statics.DimForce, Answer: true, True: r2.Norm(v), Routes: []lesson.Route{magnitudeOf(fx, fy)}}
	size.Between = [2]expr.Node{larger(fx, fy, v), expr.Add(expr.Abs(fx), expr.Abs(fy))}
	theta := lesson.Quantity{Name: "theta", Symbol: expr.Symbol{Letter: "θ", Spoken: "theta"}, Dim: statics.DimAngle, Turns: true, Answer: true, True: lesson.Degrees(dir)}
	theta.Routes = []lesson.Route{directionOf(fx, fy, v)}
	theta.Onward, theta.Mistakes = byMagnitude(fx, fy, expr.S("F"), v)
	l := &lesson.Lesson{Unit: unit, Quantities: []lesson.Quantity{px, py}, Asks: "asked.F"}
	if acute, ok := acuteAngle(v); ok {
		addRoute(&acute, route("from-components", "acute-from-components", lesson.ByComponents, expr.Atan(expr.Div(expr.Abs(fy), expr.Abs(fx)))))
		cosine, sine := expr.Div(expr.Abs(fx), expr.S("F")), expr.Div(expr.Abs(fy), expr.S("F"))
		acute.Onward = []expr.Node{expr.Acos(cosine), expr.Asin(sine)}
		acute.Mistakes = append(acute.Mistakes, mistake("inverse-missing", cosine), mistake("inverse-missing", sine))
		l.Quantities = append(l.Quantities, acute)
		size.Routes = append(size.Routes,
			route("by-cosine", "leg-over-cosine", lesson.ByComponents, expr.Div(expr.Abs(fx), expr.Cos(symAlpha))),
			route("by-sine", "leg-over-cosine", lesson.ByComponents, expr.Div(expr.Abs(fy), expr.Sin(symAlpha))))
		theta.Routes = append(theta.Routes, route("quadrant", "quadrant", lesson.ByComponents, fromAcute(v, symAlpha)))
	}
	l.Quantities = append(l.Quantities, size, theta)
	l.Ways = []lesson.Way{componentWay(l.Quantities, "F", "theta")}
	return l, nil
}

var symAlpha = expr.S("alpha")

// larger is the larger of the two components, without its sign.
func larger(x, y expr.Node, v r2.Vec) expr.Node {
	if math.Abs(v.X) >= math.Abs(v.Y) {
		return expr.Abs(x)
	}
	return expr.Abs(y)
}

// acuteAngle is α of a force along v; false where it lies along an axis.
func acuteAngle(v r2.Vec) (lesson.Quantity, bool) {
	a := math.Atan2(math.Abs(v.Y), math.Abs(v.X)) * 180 / math.Pi
	q := lesson.Quantity{Name: "alpha", Symbol: expr.Symbol{Letter: "α", Spoken: "alpha"}, Dim: statics.DimAngle, True: a,
		Between: [2]expr.Node{expr.Deg(0), expr.Deg(90)}}
	return q, a > 1e-6 && a < 90-1e-6
}

// addRoute gives an acute angle its route, and the wrong way from the other axis.
func addRoute(q *lesson.Quantity, r lesson.Route) {
	q.Routes = []lesson.Route{r}
	q.Mistakes = []lesson.Mistake{mistake("other-axis", expr.Sub(expr.Deg(90), r.Tree))}
}

// headingTree is a direction from +x as the turn from the axis it is given by.
func headingTree(h statics.Heading) expr.Node {
	turn := expr.Node(expr.Deg(lesson.Degrees(h.Turn)))
	if h.Form == statics.Slope {
		turn = expr.Atan(expr.Div(expr.N(h.Rise), expr.N(h.Run)))
	}
	at := lesson.Degrees(h.Axis.Angle())
	switch {
	case at == 0 && h.Sense == statics.Clockwise:
		return expr.Neg{X: turn}
	case at == 0:
		return turn
	case h.Sense == statics.Clockwise:
		return expr.Sub(expr.Deg(at), turn)
	}
	return expr.Add(expr.Deg(at), turn)
}

// acuteTree is the acute angle to the x axis of a direction, whose value is at:
// what is left of it beside the nearest half turn.
func acuteTree(dir expr.Node, at float64) expr.Node {
	half := 180 * math.Round(at/180)
	switch {
	case half == 0 && at < 0:
		return expr.Neg{X: dir}
	case half == 0:
		return dir
	case half < 0 && at < half:
		return expr.Sub(expr.Neg{X: expr.Deg(-half)}, dir)
	case half < 0:
		return expr.Add(dir, expr.Deg(-half))
	case at < half:
		return expr.Sub(expr.Deg(half), dir)
	}
	return expr.Sub(dir, expr.Deg(half))
}

// fromAcute is the direction of v by its acute angle to the x axis and the
// quadrant.
func fromAcute(v r2.Vec, acute expr.Node) expr.Node {
	switch {
	case v.X > 0 && v.Y > 0:
		return acute
	case v.X > 0:
		return expr.Neg{X: acute}
	case v.Y > 0:
		return expr.Sub(expr.Deg(180), acute)
	}
	return expr.Sub(acute, expr.Deg(180))
}

// byAcute adds the routes by α to the components of the force f.
func byAcute(xy []lesson.Quantity, f expr.Node) {
	for i, key := range []expr.Node{expr.Cos(symAlpha), expr.Sin(symAlpha)} {
		tree := expr.Mul(f, key)
		if xy[i].True < 0 {
			tree = expr.Neg{X: tree}
		}
		xy[i].Routes = append(xy[i].Routes, route("acute", "from-axis", lesson.ByComponents, tree))
	}
}

// scenesComponents shows the force with its two components. What is not found
// shows its symbol alone.
func scenesComponents(l *lesson.Lesson, w lesson.Progress) []figure.Scene {
	it := l.Problem.Group("force")[0]
	label := w.Label("F")
	if it.Field("magnitude").Given() {
		label = label.Is(it.Field("magnitude").Written)
	}
	f := drawn(label, "F", it.Field("direction").Heading, vectorOf(l))
	x, y := w.Label("Fx"), w.Label("Fy")
	if it.Field("x").Given() {
		x, y = x.Is(it.Field("x").Shown()), y.Is(it.Field("y").Shown())
		f.Hidden, f.Turn, f.Angle = !w.Found("theta"), statics.Angle(l.Truth("theta"))*statics.Degree, w.Label("theta")
	}
	return []figure.Scene{figure.Rectangular(f, x, y)}
}

// vectorOf is the one force of a lesson with components Fx and Fy.
func vectorOf(l *lesson.Lesson) r2.Vec { return r2.Vec{X: l.Truth("Fx"), Y: l.Truth("Fy")} }
