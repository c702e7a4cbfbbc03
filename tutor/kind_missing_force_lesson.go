package tutor

import (
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/figure"
)

// plan of a question: what is asked, which angles are worth a line, and the
// worked solution by the triangle and by components.
var missingPlans = [...]struct {
	asked      string
	answers    []string
	angles     []string
	triangle   []Step
	components []Step
}{
	wholeResultant: {"asked.force", []string{"F2", "theta2"}, []string{"alpha", "beta", "gamma"},
		[]Step{{"beta", "directions"}, {"F2", "cosine-law"}, {"alpha", "sine-law-F2"}, {"theta2", "from-resultant"}},
		[]Step{{"F1x", ""}, {"F1y", ""}, {"Rx", "resolve"}, {"Ry", "resolve"}, {"F2x", "difference"}, {"F2y", "difference"}, {"F2", "components"}, {"theta2", "arctangent"}}},
	bothDirections: {"asked.sizes", []string{"F2", "R"}, []string{"alpha", "beta", "gamma", "phi"},
		[]Step{{"phi", "directions"}, {"gamma", "adjacent-angles"}, {"beta", "directions"}, {"alpha", "triangle-sum"}, {"F2", "sine-law-F1"}, {"R", "sine-law-F1"}},
		[]Step{{"F2", "across"}, {"R", "along"}}},
	sizeAndTurn: {"asked.turn", []string{"theta2", "R"}, []string{"alpha", "beta", "gamma"},
		[]Step{{"beta", "directions"}, {"alpha", "sine-law-F2"}, {"gamma", "triangle-sum"}, {"R", "sine-law-F2"}, {"theta2", "from-resultant"}}, nil},
	turnAndSize: {"asked.size", []string{"F2", "theta"}, []string{"alpha", "beta", "gamma", "phi"},
		[]Step{{"phi", "directions"}, {"gamma", "adjacent-angles"}, {"alpha", "sine-law-R"}, {"beta", "triangle-sum"}, {"F2", "sine-law-R"}, {"theta", "from-first"}}, nil},
	smallestForce: {"asked.smallest", []string{"F2", "theta2"}, []string{"beta"},
		[]Step{{"beta", "directions"}, {"F2", "perpendicular"}, {"theta2", "perpendicular"}, {"R", "perpendicular"}},
		[]Step{{"F1x", ""}, {"F1y", ""}, {"R", "along"}, {"Rx", "resolve"}, {"Ry", "resolve"}, {"F2x", "difference"}, {"F2y", "difference"}, {"F2", "components"}, {"theta2", "arctangent"}}},
}

// lesson declares every quantity of the triangle for its question.
func (t *triangle) lesson() *Lesson {
	plan := missingPlans[t.ask]
	known := t.first.given("")
	second, result := t.second.magnitude(), t.result.magnitude()
	second.Routes = append(t.sideRoutes(1), magnitudeOf(expr.S("F2x"), expr.S("F2y")))
	result.Routes = append(t.sideRoutes(2), magnitudeOf(symRx, symRy))
	turn, heading := t.directions()
	second.Given, turn.Given = t.ask == sizeAndTurn, t.ask == bothDirections || t.ask == turnAndSize
	result.Given, heading.Given = t.ask == wholeResultant || t.ask == turnAndSize, t.ask != turnAndSize
	t.special(&second, &result, &turn)
	var givens, asked []Quantity
	for _, q := range append(known, second, turn, result, heading) {
		if q.Given {
			givens = append(givens, q)
		} else {
			asked = append(asked, q)
		}
	}
	qs := givens
	for _, name := range plan.angles {
		switch name {
		case "phi":
			qs = append(qs, t.phi())
		default:
			qs = append(qs, t.angle(map[string]int{"alpha": 0, "beta": 1, "gamma": 2}[name]))
		}
	}
	qs = keep(append(append(qs, asked...), t.parts()...))
	l := &Lesson{Unit: t.unit, Asks: plan.asked}
	for i := range qs {
		for _, name := range plan.answers {
			qs[i].Answer = qs[i].Answer || qs[i].Name == name
		}
	}
	l.Ways = append(l.Ways, Way{ByTriangle, plan.triangle})
	if plan.components != nil {
		l.Ways = append(l.Ways, Way{ByComponents, firstRoutes(qs, plan.components)})
	}
	take(qs, l.Ways)
	l.Quantities = qs
	return l
}

// firstRoutes names the route of steps that take whichever a quantity puts
// first.
func firstRoutes(qs []Quantity, steps []Step) []Step {
	var named []Step
	for _, s := range steps {
		for _, q := range qs {
			if q.Name == s.Quantity && s.Route == "" {
				s.Route = q.Routes[0].ID
			}
		}
		named = append(named, s)
	}
	return named
}

// special adds what only some questions have: the perpendicular of the
// smallest force, the sums along and across the resultant, the wrong ways.
func (t *triangle) special(second, result, turn *Quantity) {
	beta := expr.S("beta")
	difference, sum := expr.Abs(expr.Sub(symR, f1)), expr.Add(f1, f2)
	if t.ask != turnAndSize {
		across, along := t.across()
		if t.ask != smallestForce {
			second.Routes = append(second.Routes, across)
		} else {
			along.Tree = expr.Mul(f1, expr.Cos(expr.Sub(symTheta, theta1)))
		}
		if t.ask == bothDirections || t.ask == smallestForce {
			result.Routes = append(result.Routes, along)
		}
	}
	switch t.ask {
	case wholeResultant:
		second.Mistakes = []Mistake{{"magnitudes-subtracted", difference}, {"magnitudes-added", expr.Add(f1, symR)}}
		second.Between = [2]expr.Node{difference, expr.Add(f1, symR)}
		turn.Mistakes = []Mistake{t.other()}
	case bothDirections:
		second.Mistakes = []Mistake{{"right-triangle-assumed", expr.Mul(f1, expr.Sin(beta))}, {"right-triangle-assumed", expr.Mul(f1, expr.Tan(beta))}}
		result.Mistakes = []Mistake{{"right-triangle-assumed", expr.Mul(f1, expr.Cos(beta))}, {"magnitudes-added", sum}}
	case sizeAndTurn:
		result.Mistakes = []Mistake{{"magnitudes-added", sum}, {"magnitudes-subtracted", expr.Abs(expr.Sub(f1, f2))}}
		result.Between = [2]expr.Node{expr.Abs(expr.Sub(f1, f2)), sum}
	case turnAndSize:
		second.Mistakes = []Mistake{{"magnitudes-subtracted", difference}}
		second.Between = [2]expr.Node{difference, expr.Add(f1, symR)}
	case smallestForce:
		second.Routes = append(second.Routes, Route{"perpendicular", "smallest", ByTriangle, expr.Mul(f1, expr.Sin(beta))})
		result.Routes = append(result.Routes, Route{"perpendicular", "smallest", ByTriangle, expr.Mul(f1, expr.Cos(beta))})
		turn.Routes = append(turn.Routes, Route{"perpendicular", "smallest", ByTriangle, t.square(symTheta)})
		second.Mistakes = []Mistake{{"perpendicular-to-given", expr.Mul(f1, expr.Tan(beta))}}
		result.Mistakes = []Mistake{{"perpendicular-to-given", expr.Div(f1, expr.Cos(beta))}}
		turn.Mistakes = []Mistake{{"perpendicular-to-given", t.square(theta1)}}
		second.Between = [2]expr.Node{expr.N(0), f1}
		result.Between = second.Between
	}
}

// scenesMissingForce shows what is given, with a dashed line where only a
// direction is, and, once the triangle is begun, the forces head to tail.
func scenesMissingForce(w *Work) []figure.Scene {
	p, l := w.Lesson.Problem, w.Lesson
	side := func(group, size, dir string) (figure.Force, bool, bool) {
		it := p.Group(group)[0]
		label := w.label(size)
		if it.Field("magnitude").Given() {
			label = label.Is(it.Field("magnitude").Written)
		}
		v := statics.Polar(l.Truth(size), statics.Angle(l.Truth(dir))*statics.Degree)
		f := drawn(label, size, it.Field("direction").Heading, v)
		aimed := it.Field("direction").Given()
		if !aimed {
			f.Hidden, f.Turn, f.Angle = !w.Found(dir), statics.Angle(l.Truth(dir))*statics.Degree, figure.Label{}
		}
		return f, aimed, it.Field("magnitude").Given()
	}
	first, _, _ := side("known", "F1", "theta1")
	second, aimed, _ := side("missing", "F2", "theta2")
	result, led, sized := side("resultant", "R", "theta")
	shown := []figure.Force{first}
	if aimed {
		shown = append(shown, second)
	}
	if led {
		shown = append(shown, result)
	}
	given := figure.Given(shown...)
	for i := len(given.Arrows) - 1; i >= 0; i-- {
		switch a := &given.Arrows[i]; {
		case a.Name == "R" && sized:
			a.Class = figure.ClassResultant
		case a.Name == "R" || a.Name == "F2": // only its line is known
			given.Lines = append(given.Lines, figure.Line{From: a.From, To: a.To, Class: figure.ClassConstruction, Label: a.Label, Step: a.Step})
			given.Arrows = append(given.Arrows[:i], given.Arrows[i+1:]...)
		}
	}
	scenes := []figure.Scene{given}
	begun := slices.ContainsFunc(angleNames[:], func(name string) bool { return w.Found(name) })
	if m := w.method(); m == ByTriangle || begun && m != ByComponents {
		pair := figure.Pair{First: first, Second: second, Resultant: result.Label}
		for name, at := range map[string]*figure.Label{"beta": &pair.AtTail, "gamma": &pair.AtJoint, "alpha": &pair.AtHead} {
			if l.Quantity(name) != nil {
				*at = w.label(name)
			}
		}
		scenes = append(scenes, figure.HeadToTail(pair))
	}
	return scenes
}
