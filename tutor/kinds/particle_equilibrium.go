package kinds

import (
	"strconv"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/tutor/figure"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// ParticleEquilibrium is a particle at rest under what holds and loads it: by
// the sums of components, or by the triangle of three forces.
//
// Fᵢ is the force of the i-th part on the particle, θᵢ the angle its direction
// is given by. A direction leads from the particle along the part: a cable or a
// spring pulls that way, a strut pushes against it.
var ParticleEquilibrium = lesson.Kind{
	Name: "particle-equilibrium",
	Groups: []lesson.Group{
		{Key: "parts", Min: 2, Max: 6, Fields: []lesson.FieldSpec{
			{Key: "name", Is: lesson.NameField, Example: "T1"},
			{Key: "is", Is: lesson.ChoiceField, Example: "cable", Choices: []string{"cable", "strut", "spring", "pulley", "weight", "force"}},
			{Key: "direction", Is: lesson.DirectionField, Example: "40 deg above +x", Optional: true},
			{Key: "second", Is: lesson.DirectionField, Example: "65 deg above -x", Optional: true},
			{Key: "force", Is: lesson.ForceField, Example: "340 N", Optional: true},
			{Key: "mass", Is: lesson.MassField, Example: "120 kg", Optional: true},
			{Key: "stiffness", Is: lesson.StiffnessField, Example: "2 kN/m", Optional: true},
			{Key: "stretch", Is: lesson.LengthField, Example: "0.15 m", Optional: true},
			{Key: "find", Is: lesson.ChoiceField, Example: "mass", Optional: true, Choices: []string{"mass"}},
			{Key: "compression", Is: lesson.LengthField, Example: "0.08 m", Optional: true},
		}},
		{Key: "gravity", Min: 0, Max: 1, Fields: []lesson.FieldSpec{{Key: "g", Is: lesson.AccelerationField, Example: "9.81 m/s²"}}},
	},
	Build:  buildEquilibrium,
	Scenes: scenesEquilibrium, Situation: situationEquilibrium,
	Draw: drawEquilibrium,
	Rule: "2j7e",
	Bank: []lesson.Source{
		EquilibriumSource("A crate hangs from two cables under the quay's gantry.",
			PartSource("T1 cable", "direction: 40 deg above -x"), PartSource("T2 cable", "direction: 30 deg above +x"), PartSource("W weight", "mass: 120 kg")),
		EquilibriumSource("The derrick's boom and its topping lift hold a load at the boom's head.",
			PartSource("T cable", "direction: 20 deg above -x"), PartSource("B strut", "direction: 48 deg below -x"), PartSource("W weight", "force: 8.5 kN")),
		EquilibriumSource("A fender is held off the pile by a level line while it hangs from a rope.",
			PartSource("T cable", "direction: 25 deg right of +y"), PartSource("H cable", "direction: 180 deg"), PartSource("W weight", "force: 260 lb")),
		EquilibriumSource("Two hawsers pull on a mooring buoy. Its chain holds it.",
			PartSource("P force", "direction: 20 deg", "force: 2.5 kN"), PartSource("Q force", "direction: 75 deg", "force: 1.8 kN"), PartSource("C cable")),
		EquilibriumSource("A lamp hangs from a ring between a cable and a spring.",
			PartSource("T cable", "direction: 35 deg above -x"), PartSource("S spring", "direction: 50 deg above +x", "stiffness: 4 kN/m"), PartSource("W weight", "force: 900 N")),
		EquilibriumSource("A boat's anchor hangs from a ring, held by a line and by a cable that runs over a pulley to a counterweight.",
			PartSource("T cable", "direction: 3:4 up left"), PartSource("C pulley", "direction: 55 deg above +x", "mass: 45 kg"), PartSource("W weight", "find: mass")),
		EquilibriumSource("A snatch block carries a buoy on a rope that comes in from one side and leaves to the other.",
			PartSource("T cable", "direction: 62 deg above -x", "second: 62 deg above +x"), PartSource("W weight", "force: 1.2 kip")),
		EquilibriumSource("A sinker of the harbour's survey hangs from two lines.",
			PartSource("A cable", "direction: 5:12 up left"), PartSource("B cable", "direction: 58 deg above +x"), PartSource("W weight", "mass: 14 slug")),
		EquilibriumSource("A lantern hangs on a wire. A second line is hauled with a known pull: in which direction?",
			PartSource("T cable", "direction: 30 deg above -x"), PartSource("F cable", "force: 190 N"), PartSource("W weight", "force: 200 N")),
		EquilibriumSource("A buffer spring under the end of a gangway takes the load that its stay leaves.",
			PartSource("T cable", "direction: 25 deg above -x"), PartSource("S spring", "direction: 62 deg below -x", "stiffness: 30 kN/m"), PartSource("W weight", "force: 2.4 kN")),
	},
}

// EquilibriumSource is the Source of a problem of this kind, of PartSources.
func EquilibriumSource(story string, parts ...lesson.Source) lesson.Source {
	return lesson.Branch("", lesson.Leaf("kind", "particle-equilibrium"), lesson.Leaf("story", story), lesson.Branch("parts", parts...))
}

// PartSource is the Source of a part: its name and what it is, "T1 cable", and
// fields, "mass: 45 kg".
func PartSource(named string, fields ...string) lesson.Source {
	name, is, _ := strings.Cut(named, " ")
	src := lesson.Branch("", lesson.Leaf("name", name), lesson.Leaf("is", is))
	for _, f := range fields {
		key, value, _ := strings.Cut(f, ": ")
		src.Kids = append(src.Kids, lesson.Leaf(key, value))
	}
	return src
}

// drawEquilibrium draws a particle held in one of the ways of the bank. Where
// directions are wanted in some quadrants alone, cable and strut share one, or
// the buoy's hawsers lie there.
func drawEquilibrium(d *lesson.Draw) lesson.Source {
	turn := func(lo, hi int, where string) string {
		return "direction: " + strconv.Itoa(d.Step(lo, hi, 1)) + " deg " + where
	}
	force := func(unit string) string { return "force: " + strconv.Itoa(d.Step(150, 950, 10)) + unit }
	ways := 8
	if d.Within != [4]bool{true, true, true, true} {
		ways = 2
	}
	switch d.Below(ways) {
	case 0:
		return drawBracket(d)
	case 1:
		unit := []string{" N", " lb"}[d.Below(2)]
		return EquilibriumSource("Two hawsers pull on a buoy. Its chain holds it.",
			PartSource("P force", "direction: "+strconv.Itoa(d.Direction(1))+" deg", force(unit)),
			PartSource("Q force", "direction: "+strconv.Itoa(d.Direction(1))+" deg", force(unit)), PartSource("C cable"))
	case 2:
		return EquilibriumSource("A load hangs from two cables.", PartSource("T1 cable", turn(20, 70, "above -x")), PartSource("T2 cable", turn(20, 70, "above +x")), drawWeight(d))
	case 3:
		return EquilibriumSource("A derrick's boom and its topping lift hold a load.", PartSource("T cable", turn(12, 40, "above -x")), PartSource("B strut", turn(30, 70, "below -x")), drawWeight(d))
	case 4:
		return EquilibriumSource("A ring hangs between a cable and a spring and carries a load.", PartSource("T cable", turn(20, 70, "above -x")),
			PartSource("S spring", turn(20, 70, "above +x"), "stiffness: "+strconv.Itoa(d.Step(2, 9, 1))+" kN/m"), PartSource("W weight", force(" N")))
	case 5:
		return EquilibriumSource("A buffer spring and a stay hold the end of a gangway.", PartSource("T cable", turn(15, 40, "above -x")),
			PartSource("S spring", turn(35, 70, "below -x"), "stiffness: "+strconv.Itoa(d.Step(8, 40, 2))+" kN/m"), PartSource("W weight", force(" N")))
	case 6:
		w, share := d.Step(150, 950, 10), d.Step(70, 140, 5)
		return EquilibriumSource("A lantern hangs on a wire. A second line is hauled with a known pull: in which direction?", PartSource("T cable", turn(20, 65, "above -x")),
			PartSource("F cable", "force: "+strconv.Itoa(w*share/100)+" N"), PartSource("W weight", "force: "+strconv.Itoa(w)+" N"))
	}
	return EquilibriumSource("A line and a counterweight over a pulley hold a load.", PartSource("T cable", turn(20, 65, "above -x")),
		PartSource("C pulley", turn(20, 65, "above +x"), "mass: "+strconv.Itoa(d.Step(15, 90, 5))+" kg"), PartSource("W weight", "find: mass"))
}

// drawBracket draws a cable and a strut on one side of the load.
func drawBracket(d *lesson.Draw) lesson.Source {
	q := d.Quadrant()
	where := []string{"above +x", "above -x", "below -x", "below +x"}[q]
	steep, flat := strconv.Itoa(d.Step(46, 78, 1)), strconv.Itoa(d.Step(13, 44, 1))
	cable, strut := steep, flat
	if q > 1 { // from below the strut carries
		cable, strut = flat, steep
	}
	return EquilibriumSource("A bracket of a cable and a strut on the quay wall carries a load.",
		PartSource("T cable", "direction: "+cable+" deg "+where), PartSource("B strut", "direction: "+strut+" deg "+where), drawWeight(d))
}

// drawWeight draws a load, as a force or as a mass.
func drawWeight(d *lesson.Draw) lesson.Source {
	switch d.Below(4) {
	case 0:
		return PartSource("W weight", "force: "+strconv.Itoa(d.Step(150, 950, 10))+" N")
	case 1:
		return PartSource("W weight", "force: "+strconv.Itoa(d.Step(120, 900, 10))+" lb")
	case 2:
		return PartSource("W weight", "mass: "+strconv.Itoa(d.Step(2, 30, 1))+" slug")
	}
	return PartSource("W weight", "mass: "+strconv.Itoa(d.Step(20, 400, 5))+" kg")
}

func buildEquilibrium(p *lesson.Problem) (*lesson.Lesson, error) {
	s, err := restOf(p, mainSolution)
	if err != nil {
		return nil, err
	}
	s.declare()
	if s.two {
		o, err := restOf(p, otherSolution)
		if err != nil {
			return nil, err
		}
		o.declare()
		s.lesson.Other = o.lesson
		s.lesson.Case, o.lesson.Case = s.caseBeside(o), o.caseBeside(s)
	}
	return s.lesson, nil
}

// declare lists the quantities: what is stated, what follows from it alone, the
// two sums, the angles of the force triangle, and what is asked.
func (s *rest) declare() {
	l := s.lesson
	l.Senses, l.Words = s.senses(), []string{"arrows", s.arrows()}
	for _, h := range s.parts {
		l.Quantities = append(l.Quantities, s.stated(h)...)
	}
	for _, h := range s.parts {
		if h.either && h.leads[0].push {
			l.Assumed = append(l.Assumed, text.Say("particle-equilibrium.compressed", "name", h.shown()))
		}
	}
	if q, ok := s.gravityGiven(); ok {
		l.Quantities = append(l.Quantities, q)
	}
	for _, h := range s.parts {
		if h.derived != nil {
			l.Quantities = append(l.Quantities, s.force(h))
		}
	}
	for _, q := range []lesson.Quantity{s.sumOf(alongX, s.x), s.sumOf(alongY, s.y)} {
		if q.Routes[0].Tree != nil {
			l.Quantities = append(l.Quantities, q)
		}
	}
	l.Quantities = append(l.Quantities, s.triangleAngles()...)
	var last []lesson.Quantity
	for _, h := range s.openInOrder() {
		if h.wandered {
			l.Quantities = append(l.Quantities, s.components(h)...)
		}
		if h.unknown {
			l.Quantities = append(l.Quantities, s.force(h))
		}
		if h.wandered {
			l.Quantities = append(l.Quantities, s.direction(h))
		}
		last = append(last, s.beyond(h)...)
	}
	l.Quantities = append(l.Quantities, last...)
	s.ways()
}

// situationEquilibrium shows what holds the particle.
func situationEquilibrium(l *lesson.Lesson) (figure.Scene, bool) {
	var parts []figure.Part
	things := 0
	for _, h := range partsOf(l).parts {
		drawn := h.drawParts(l)
		if len(drawn) == 0 && h.is != "force" { // without it what is left would not hang so
			return figure.Scene{}, false
		}
		parts = append(parts, drawn...)
		if h.is != "force" {
			things += len(drawn)
		}
	}
	return figure.Space(parts...), things > 0 && len(parts) > 1
}

// scenesEquilibrium shows the free-body diagram and, once the work has come to
// it, the triangle (or polygon) of forces. The free-body diagram is not to
// scale: an unknown force shows its symbol alone.
func scenesEquilibrium(l *lesson.Lesson, w lesson.Progress) []figure.Scene {
	s := partsOf(l)
	var body, polygon []figure.Force
	whole := true
	for _, h := range s.parts {
		body = append(body, s.drawForces(w, h)...)
		for _, l := range h.leads {
			polygon = append(polygon, figure.Force{Vec: r2.Scale(h.size, l.unitVector()), Label: s.forceLabel(w, h), Name: "F" + h.n})
		}
		whole = whole && (!h.wandered || w.Found("theta"+h.n))
	}
	scenes := []figure.Scene{figure.FreeBody(body...)}
	if whole && (w.Method() == lesson.ByTriangle || w.Done()) {
		scenes = append(scenes, s.closed(w, polygon))
	}
	return scenes
}

// senses says which way each sort of part acts that has a direction.
func (s *rest) senses() string {
	has := map[string]bool{}
	for _, h := range s.parts {
		if h.is != "weight" {
			has[h.is] = true
		}
	}
	has["cable"] = has["cable"] || has["pulley"]
	var list []string
	say := func(key string) { list = append(list, text.Say("particle-equilibrium.senses."+key)) }
	switch {
	case has["cable"] && has["spring"]:
		say("cable.spring")
	case has["cable"]:
		say("cable")
	case has["spring"]:
		say("spring")
	}
	switch {
	case has["strut"] && has["spring"]:
		say("push.both")
	case has["strut"]:
		say("push.strut")
	case has["spring"]:
		say("push.spring")
	}
	if has["force"] {
		say("force")
	}
	return text.Say("particle-equilibrium.senses", "list", text.List(list))
}

// arrows says which way each sort of part acts on the particle, for a question on the
// arrows of a free-body diagram.
func (s *rest) arrows() string {
	has := map[string]bool{}
	for _, h := range s.parts {
		switch {
		case h.wandered:
			has["open"] = true
		case h.is == "pulley":
			has["cable"] = true
		default:
			has[h.is] = true
		}
	}
	var list []string
	for _, sort := range []string{"cable", "strut", "spring", "force", "weight", "open"} {
		if has[sort] {
			list = append(list, text.Say("particle-equilibrium.arrow."+sort))
		}
	}
	return text.List(list)
}
