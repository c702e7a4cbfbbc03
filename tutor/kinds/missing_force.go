package kinds

import (
	"errors"
	"slices"
	"strconv"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/figure"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// MissingForce is the force that, added to a given one, makes a resultant of
// which the magnitude, the direction or both are required.
//
// The triangle is that of two-forces: the given force F₁, the missing one F₂,
// the closing side R; α is opposite F₁, β opposite F₂, γ opposite R.
var MissingForce = lesson.Kind{
	Name: "missing-force",
	Groups: []lesson.Group{
		{Key: "known", Min: 1, Max: 1, Fields: forceFields("340 N", "25 deg")},
		{Key: "missing", Min: 1, Max: 1, Fields: []lesson.FieldSpec{
			{Key: "name", Is: lesson.NameField, Example: "Q"},
			{Key: "magnitude", Is: lesson.ForceField, Example: "300 N", Optional: true},
			{Key: "direction", Is: lesson.DirectionField, Example: "118 deg", Optional: true},
		}},
		{Key: "resultant", Min: 1, Max: 1, Fields: []lesson.FieldSpec{
			{Key: "magnitude", Is: lesson.ForceField, Example: "500 N", Optional: true},
			{Key: "direction", Is: lesson.DirectionField, Example: "60 deg", Optional: true},
		}},
		{Key: "find", Min: 0, Max: 1, Fields: []lesson.FieldSpec{{Key: "force", Is: lesson.ChoiceField, Example: "smallest", Choices: []string{"smallest"}, Optional: true}}},
	},
	Build:  buildMissingForce,
	Scenes: scenesMissingForce,
	Draw:   drawMissingForce,
	Rule:   "wmmn",
	Bank: []lesson.Source{
		MissingForceSource("Two tugs are to bring a barge straight ahead; one has its line out already.", ForceSource("P", "340 N", "25 deg"), MissingSource("Q"), ResultantSource("560 N", "70 deg")),
		MissingForceSource("A second line is to bring the pull on the bollard along the quay.", ForceSource("F1", "4.2 kN", "55 deg"), MissingSource("F2", "direction", "-40 deg"), DirectedSource("0 deg")),
		MissingForceSource("What is the least pull that brings the buoy's chain into line with the channel?", ForceSource("C", "850 lb", "65 deg"), MissingSource("D"), DirectedSource("20 deg"), lesson.Leaf("find", "smallest")),
		MissingForceSource("A second tug of known strength is to turn the pull on the dredger to due east.", ForceSource("A", "520 N", "35 deg"), MissingSource("B", "magnitude", "410 N"), DirectedSource("0 deg")),
		MissingForceSource("The winch rope holds part of a boat's pull on the slipway.", ForceSource("W", "2.4 kip", "160 deg"), MissingSource("E"), ResultantSource("3.1 kip", "115 deg")),
	},
}

// MissingSource is the missing force; where known, the key of a field and its value.
func MissingSource(name string, known ...string) lesson.Source {
	src := lesson.Branch("missing", lesson.Leaf("name", name))
	if len(known) == 2 {
		src.Kids = append(src.Kids, lesson.Leaf(known[0], known[1]))
	}
	return src
}

// ResultantSource is the resultant required, in magnitude and direction.
func ResultantSource(magnitude, direction string) lesson.Source {
	return lesson.Branch("resultant", lesson.Leaf("magnitude", magnitude), lesson.Leaf("direction", direction))
}

// DirectedSource is the resultant of which the direction alone is required.
func DirectedSource(direction string) lesson.Source {
	return lesson.Branch("resultant", lesson.Leaf("direction", direction))
}

// MissingForceSource is the Source of a problem of this kind: a ForceSource, a
// MissingSource, a ResultantSource or DirectedSource, and more groups of the kind.
func MissingForceSource(story string, known, free, resultant lesson.Source, more ...lesson.Source) lesson.Source {
	known.Key = "known"
	return lesson.Branch("", append([]lesson.Source{lesson.Leaf("kind", "missing-force"), lesson.Leaf("story", story), known, free, resultant}, more...)...)
}

// drawMissingForce draws one of the four questions.
func drawMissingForce(d *lesson.Draw) lesson.Source {
	stories := []string{"One tug pulls already; a second is to help.", "One line holds a pontoon; a second is to be made fast.",
		"A rope pulls on a mooring ring; another is to turn the pull.", "One guy holds the derrick's mast head; a second is to be rigged."}
	story := stories[d.Below(len(stories))]
	names := [][2]string{{"P", "Q"}, {"F1", "F2"}, {"A", "B"}}[d.Below(3)]
	unit := []string{" N", " N", " lb"}[d.Below(3)]
	size := func() string { return strconv.Itoa(d.Step(150, 950, 10)) + unit }
	way := func() string { return strconv.Itoa(d.Direction(1)) + " deg" }
	known := ForceSource(names[0], size(), way())
	switch d.Below(4) {
	case 0:
		return MissingForceSource(story, known, MissingSource(names[1]), ResultantSource(size(), way()))
	case 1:
		return MissingForceSource(story, known, MissingSource(names[1], "direction", way()), DirectedSource(way()))
	case 2:
		return MissingForceSource(story, known, MissingSource(names[1], "magnitude", size()), DirectedSource(way()))
	}
	return MissingForceSource(story, known, MissingSource(names[1]), DirectedSource(way()), lesson.Leaf("find", "smallest"))
}

// asks tells which question a statement puts.
func asks(free, r lesson.Item, smallest bool) (question, bool) {
	has := [4]bool{free.Field("magnitude").Given(), free.Field("direction").Given(), r.Field("magnitude").Given(), r.Field("direction").Given()}
	if smallest {
		return smallestForce, has == [4]bool{3: true}
	}
	q, ok := map[[4]bool]question{
		{false, false, true, true}: wholeResultant, {false, true, false, true}: bothDirections,
		{true, false, false, true}: sizeAndTurn, {false, true, true, false}: turnAndSize}[has]
	return q, ok
}

func buildMissingForce(p *lesson.Problem) (*lesson.Lesson, error) {
	known, free, result := p.Group("known")[0], p.Group("missing")[0], p.Group("resultant")[0]
	find := p.Group("find")
	say := func(key string) error {
		return errors.New(text.Say("missing-force.refuse."+key, "P", known.Shown(), "Q", free.Shown()))
	}
	ask, ok := asks(free, result, len(find) > 0 && find[0].Field("force").Given())
	if !ok {
		return nil, say("givens")
	}
	t := triangle{unit: known.Field("magnitude").Unit, ask: ask}
	t.first, t.second, t.result = newPull(known, "1", t.unit), newPull(free, "2", t.unit), newPull(result, "", t.unit)
	t.result.name, t.result.dir, t.result.symbol = "R", "theta", lesson.ParseSymbol("R")
	var lessons []*lesson.Lesson
	why, ways := "", []reach{reachFar, reachNear}
	if ask != sizeAndTurn && ask != turnAndSize {
		ways = ways[:1]
	}
	for _, way := range ways {
		s := t
		if key := s.close(way); key != "" {
			why = key
			continue
		}
		lessons = append(lessons, s.lesson())
	}
	switch {
	case len(lessons) == 0:
		return nil, say(why)
	case len(lessons) == 2:
		lessons[0].Other = lessons[1]
		lessons[0].Case, lessons[1].Case = "acute", "obtuse"
		leaveOpen(lessons[0])
		leaveOpen(lessons[1])
	}
	return lessons[0], nil
}

// leaveOpen has the sine law leave open which of the two angles of one sine is meant.
func leaveOpen(l *lesson.Lesson) {
	for i := range l.Quantities {
		for j := range l.Quantities[i].Routes {
			if r := &l.Quantities[i].Routes[j]; r.Principle == "sine-law" {
				r.Principle = "sine-law-either"
			}
		}
	}
}

// lesson declares every quantity of the triangle for its question.
func (t *triangle) lesson() *lesson.Lesson {
	question := questions[t.ask]
	known := t.first.given("")
	second, result := t.second.magnitude(), t.result.magnitude()
	second.Routes = append(t.sideRoutes(1), magnitudeOf(expr.S("F2x"), expr.S("F2y")))
	result.Routes = append(t.sideRoutes(2), magnitudeOf(symRx, symRy))
	turn, heading := t.directions()
	second.Given, turn.Given = t.ask == sizeAndTurn, t.ask == bothDirections || t.ask == turnAndSize
	result.Given, heading.Given = t.ask == wholeResultant || t.ask == turnAndSize, t.ask != turnAndSize
	turn.Mistakes = t.besideFirst()
	question.special(t, &second, &result, &turn)
	second.Mistakes = append(second.Mistakes, t.wrongPairs(1)...)
	result.Mistakes = append(result.Mistakes, t.wrongPairs(2)...)
	var givens, asked []lesson.Quantity
	for _, q := range append(known, second, turn, result, heading) {
		if q.Given {
			givens = append(givens, q)
		} else {
			asked = append(asked, q)
		}
	}
	qs := givens
	for _, name := range question.angles {
		switch name {
		case "phi":
			qs = append(qs, t.phi())
		default:
			q := t.angle(map[string]int{"alpha": 0, "beta": 1, "gamma": 2}[name])
			if sine := q.Route("sine-law-F2"); name == "alpha" && sine != nil { // the resultant for the known force
				q.Mistakes = append(q.Mistakes, takenForOther(sine.Tree, f1, symR)...)
			}
			if t.ask == bothDirections && name != "gamma" {
				q = betweenOthers(q)
			}
			qs = append(qs, q)
		}
	}
	qs = pruned(append(append(qs, asked...), t.parts()...))
	l := &lesson.Lesson{Unit: t.unit, Asks: question.asked}
	for i := range qs {
		for _, name := range question.answers {
			qs[i].Answer = qs[i].Answer || qs[i].Name == name
		}
	}
	l.Ways = append(l.Ways, way(lesson.ByTriangle, question.triangle...))
	if question.components != nil {
		l.Ways = append(l.Ways, way(lesson.ByComponents, firstRoutes(qs, question.components)...))
	}
	stepsFirst(qs, l.Ways)
	l.Quantities = qs
	return l
}

// missingSide is a side of the triangle as figures show it: the thing of a group,
// whose magnitude and direction are the quantities called size and dir.
func missingSide(l *lesson.Lesson, w lesson.Progress, group, size, dir string) figure.Force {
	it := l.Problem.Group(group)[0]
	label := w.Label(size)
	if it.Field("magnitude").Given() {
		label = label.Is(it.Field("magnitude").Written)
	}
	at := statics.Angle(l.Truth(dir)) * statics.Degree
	f := drawn(label, size, it.Field("direction").Heading, statics.Polar(l.Truth(size), at))
	if !it.Field("direction").Given() {
		f.Hidden, f.Turn, f.Angle = !w.Found(dir), at, figure.Label{}
	}
	return f
}

// scenesMissingForce shows what is given and, once the triangle is begun, the
// forces head to tail.
func scenesMissingForce(l *lesson.Lesson, w lesson.Progress) []figure.Scene {
	first, second, result := missingSide(l, w, "known", "F1", "theta1"), missingSide(l, w, "missing", "F2", "theta2"), missingSide(l, w, "resultant", "R", "theta")
	scenes := []figure.Scene{missingGiven(l.Problem, first, second, result)}
	begun := slices.ContainsFunc(angleNames[:], func(name string) bool { return w.Found(name) })
	if m := w.Method(); m == lesson.ByTriangle || begun && m != lesson.ByComponents {
		pair := figure.Pair{First: first, Second: second, Resultant: result.Label}
		for name, at := range map[string]*figure.Label{"beta": &pair.AtTail, "gamma": &pair.AtJoint, "alpha": &pair.AtHead} {
			if l.Quantity(name) != nil {
				*at = w.Label(name)
			}
		}
		scenes = append(scenes, figure.HeadToTail(pair))
	}
	return scenes
}

// missingGiven shows what is given: a dashed line where only a direction is.
func missingGiven(p *lesson.Problem, first, second, result figure.Force) figure.Scene {
	free, whole := p.Group("missing")[0], p.Group("resultant")[0]
	shown := []figure.Force{first}
	if free.Field("direction").Given() {
		shown = append(shown, second)
	}
	if whole.Field("direction").Given() {
		shown = append(shown, result)
	}
	given := figure.Given(shown...)
	for i := len(given.Arrows) - 1; i >= 0; i-- {
		switch a := &given.Arrows[i]; {
		case a.Name == "R" && whole.Field("magnitude").Given():
			a.Class = figure.ClassResultant
		case a.Name == "R" || a.Name == "F2": // only its line is known
			given.Lines = append(given.Lines, figure.Line{From: a.From, To: a.To, Class: figure.ClassConstruction, Label: a.Label, Step: a.Step})
			given.Arrows = slices.Delete(given.Arrows, i, i+1)
		}
	}
	return given
}
