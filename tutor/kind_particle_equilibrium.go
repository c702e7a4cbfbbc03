package tutor

import (
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/tutor/figure"
	"closingside/tutor/text"
)

// particleEquilibrium is a particle at rest under what holds and loads it: by
// the sums of components, or by the triangle of three forces.
//
// Fᵢ is the force of the i-th part on the particle, θᵢ the angle its direction
// is given by. A direction leads from the particle along the part: a cable or a
// spring pulls that way, a strut pushes against it.
var particleEquilibrium = Kind{
	Name: "particle-equilibrium",
	Groups: []Group{
		{Key: "parts", Min: 2, Max: 6, Fields: []FieldSpec{
			{Key: "name", Is: NameField, Example: "T1"},
			{Key: "is", Is: ChoiceField, Example: "cable", Choices: []string{"cable", "strut", "spring", "pulley", "weight", "force"}},
			{Key: "direction", Is: DirectionField, Example: "40 deg above +x", Optional: true},
			{Key: "second", Is: DirectionField, Example: "65 deg above -x", Optional: true},
			{Key: "force", Is: ForceField, Example: "340 N", Optional: true},
			{Key: "mass", Is: MassField, Example: "120 kg", Optional: true},
			{Key: "stiffness", Is: StiffnessField, Example: "2 kN/m", Optional: true},
			{Key: "stretch", Is: LengthField, Example: "0.15 m", Optional: true},
			{Key: "find", Is: ChoiceField, Example: "mass", Optional: true, Choices: []string{"mass"}},
			{Key: "compression", Is: LengthField, Example: "0.08 m", Optional: true},
		}},
		{Key: "gravity", Min: 0, Max: 1, Fields: []FieldSpec{{Key: "g", Is: AccelerationField, Example: "9.81 m/s²"}}},
	},
	Build:  buildEquilibrium,
	Scenes: scenesEquilibrium, Situation: situationEquilibrium,
	Draw: drawEquilibrium,
	Rule: "2j7e",
	Bank: []Source{
		atRest("A crate hangs from two cables under the quay's gantry.",
			heldBy("T1 cable", "direction: 40 deg above -x"), heldBy("T2 cable", "direction: 30 deg above +x"), heldBy("W weight", "mass: 120 kg")),
		atRest("The derrick's boom and its topping lift hold a load at the boom's head.",
			heldBy("T cable", "direction: 20 deg above -x"), heldBy("B strut", "direction: 48 deg below -x"), heldBy("W weight", "force: 8.5 kN")),
		atRest("A fender is held off the pile by a level line while it hangs from a rope.",
			heldBy("T cable", "direction: 25 deg right of +y"), heldBy("H cable", "direction: 180 deg"), heldBy("W weight", "force: 260 lb")),
		atRest("Two hawsers pull on a mooring buoy. Its chain holds it.",
			heldBy("P force", "direction: 20 deg", "force: 2.5 kN"), heldBy("Q force", "direction: 75 deg", "force: 1.8 kN"), heldBy("C cable")),
		atRest("A lamp hangs from a ring between a cable and a spring.",
			heldBy("T cable", "direction: 35 deg above -x"), heldBy("S spring", "direction: 50 deg above +x", "stiffness: 4 kN/m"), heldBy("W weight", "force: 900 N")),
		atRest("A boat's anchor hangs from a ring, held by a line and by a cable that runs over a pulley to a counterweight.",
			heldBy("T cable", "direction: 3:4 up left"), heldBy("C pulley", "direction: 55 deg above +x", "mass: 45 kg"), heldBy("W weight", "find: mass")),
		atRest("A snatch block carries a buoy on a rope that comes in from one side and leaves to the other.",
			heldBy("T cable", "direction: 62 deg above -x", "second: 62 deg above +x"), heldBy("W weight", "force: 1.2 kip")),
		atRest("A sinker of the harbour's survey hangs from two lines.",
			heldBy("A cable", "direction: 5:12 up left"), heldBy("B cable", "direction: 58 deg above +x"), heldBy("W weight", "mass: 14 slug")),
		atRest("A lantern hangs on a wire. A second line is hauled with a known pull: in which direction?",
			heldBy("T cable", "direction: 30 deg above -x"), heldBy("F cable", "force: 190 N"), heldBy("W weight", "force: 200 N")),
		atRest("A buffer spring under the end of a gangway takes the load that its stay leaves.",
			heldBy("T cable", "direction: 25 deg above -x"), heldBy("S spring", "direction: 62 deg below -x", "stiffness: 30 kN/m"), heldBy("W weight", "force: 2.4 kN")),
	},
}

// atRest is the Source of a problem of this kind.
func atRest(story string, parts ...Source) Source {
	return branch("", leaf("kind", "particle-equilibrium"), leaf("story", story), branch("parts", parts...))
}

// heldBy is the Source of a part: its name and what it is, and fields.
func heldBy(named string, fields ...string) Source {
	name, is, _ := strings.Cut(named, " ")
	src := branch("", leaf("name", name), leaf("is", is))
	for _, f := range fields {
		key, value, _ := strings.Cut(f, ": ")
		src.Kids = append(src.Kids, leaf(key, value))
	}
	return src
}

// drawEquilibrium draws a particle held in one of the ways of the bank. Where
// directions are wanted in some quadrants alone, cable and strut share one, or
// the buoy's hawsers lie there.
func drawEquilibrium(d *Draw) Source {
	turn := func(lo, hi int, where string) string {
		return "direction: " + itoa(d.Step(lo, hi, 1)) + " deg " + where
	}
	force := func(unit string) string { return "force: " + itoa(d.Step(150, 950, 10)) + unit }
	ways := 8
	if d.within != [4]bool{true, true, true, true} {
		ways = 2
	}
	switch d.Below(ways) {
	case 0:
		return d.bracket()
	case 1:
		unit := []string{" N", " lb"}[d.Below(2)]
		return atRest("Two hawsers pull on a buoy. Its chain holds it.",
			heldBy("P force", "direction: "+itoa(d.Direction(1))+" deg", force(unit)),
			heldBy("Q force", "direction: "+itoa(d.Direction(1))+" deg", force(unit)), heldBy("C cable"))
	case 2:
		return atRest("A load hangs from two cables.", heldBy("T1 cable", turn(20, 70, "above -x")), heldBy("T2 cable", turn(20, 70, "above +x")), d.weight())
	case 3:
		return atRest("A derrick's boom and its topping lift hold a load.", heldBy("T cable", turn(12, 40, "above -x")), heldBy("B strut", turn(30, 70, "below -x")), d.weight())
	case 4:
		return atRest("A ring hangs between a cable and a spring and carries a load.", heldBy("T cable", turn(20, 70, "above -x")),
			heldBy("S spring", turn(20, 70, "above +x"), "stiffness: "+itoa(d.Step(2, 9, 1))+" kN/m"), heldBy("W weight", force(" N")))
	case 5:
		return atRest("A buffer spring and a stay hold the end of a gangway.", heldBy("T cable", turn(15, 40, "above -x")),
			heldBy("S spring", turn(35, 70, "below -x"), "stiffness: "+itoa(d.Step(8, 40, 2))+" kN/m"), heldBy("W weight", force(" N")))
	case 6:
		w, share := d.Step(150, 950, 10), d.Step(70, 140, 5)
		return atRest("A lantern hangs on a wire. A second line is hauled with a known pull: in which direction?", heldBy("T cable", turn(20, 65, "above -x")),
			heldBy("F cable", "force: "+itoa(w*share/100)+" N"), heldBy("W weight", "force: "+itoa(w)+" N"))
	}
	return atRest("A line and a counterweight over a pulley hold a load.", heldBy("T cable", turn(20, 65, "above -x")),
		heldBy("C pulley", turn(20, 65, "above +x"), "mass: "+itoa(d.Step(15, 90, 5))+" kg"), heldBy("W weight", "find: mass"))
}

// bracket draws a cable and a strut on one side of the load.
func (d *Draw) bracket() Source {
	q := d.quadrant()
	where := []string{"above +x", "above -x", "below -x", "below +x"}[q]
	steep, flat := itoa(d.Step(46, 78, 1)), itoa(d.Step(13, 44, 1))
	cable, strut := steep, flat
	if q > 1 { // from below the strut carries
		cable, strut = flat, steep
	}
	return atRest("A bracket of a cable and a strut on the quay wall carries a load.",
		heldBy("T cable", "direction: "+cable+" deg "+where), heldBy("B strut", "direction: "+strut+" deg "+where), d.weight())
}

// weight draws a load, as a force or as a mass.
func (d *Draw) weight() Source {
	switch d.Below(4) {
	case 0:
		return heldBy("W weight", "force: "+itoa(d.Step(150, 950, 10))+" N")
	case 1:
		return heldBy("W weight", "force: "+itoa(d.Step(120, 900, 10))+" lb")
	case 2:
		return heldBy("W weight", "mass: "+itoa(d.Step(2, 30, 1))+" slug")
	}
	return heldBy("W weight", "mass: "+itoa(d.Step(20, 400, 5))+" kg")
}

func buildEquilibrium(p *Problem) (*Lesson, error) {
	s, err := restOf(p, false)
	if err != nil {
		return nil, err
	}
	s.declare()
	if s.two {
		o, err := restOf(p, true)
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
	l.Senses = s.senses()
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
	for _, q := range []Quantity{s.sumOf(alongX, s.x), s.sumOf(alongY, s.y)} {
		if q.Routes[0].Tree != nil {
			l.Quantities = append(l.Quantities, q)
		}
	}
	l.Quantities = append(l.Quantities, s.triangle()...)
	var last []Quantity
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
func situationEquilibrium(l *Lesson) (figure.Scene, bool) {
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
func scenesEquilibrium(l *Lesson, w Progress) []figure.Scene {
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
	if whole && (w.Method() == ByTriangle || w.Done()) {
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
