package tutor

import (
	"errors"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/tutor/text"
)

// missingForce is the force that, added to a given one, makes a resultant of
// which the magnitude, the direction or both are required.
//
// The triangle is that of two-forces: the given force F₁, the missing one F₂,
// the closing side R; α is opposite F₁, β opposite F₂, γ opposite R.
var missingForce = Kind{
	Name: "missing-force",
	Groups: []Group{
		{Key: "known", Min: 1, Max: 1, Fields: []FieldSpec{
			{Key: "name", Is: NameField, Example: "P"},
			{Key: "magnitude", Is: ForceField, Example: "340 N"},
			{Key: "direction", Is: DirectionField, Example: "25 deg"},
		}},
		{Key: "missing", Min: 1, Max: 1, Fields: []FieldSpec{
			{Key: "name", Is: NameField, Example: "Q"},
			{Key: "magnitude", Is: ForceField, Example: "300 N", Optional: true},
			{Key: "direction", Is: DirectionField, Example: "118 deg", Optional: true},
		}},
		{Key: "resultant", Min: 1, Max: 1, Fields: []FieldSpec{
			{Key: "magnitude", Is: ForceField, Example: "500 N", Optional: true},
			{Key: "direction", Is: DirectionField, Example: "60 deg", Optional: true},
		}},
		{Key: "find", Min: 0, Max: 1, Fields: []FieldSpec{{Key: "force", Is: ChoiceField, Example: "smallest", Choices: []string{"smallest"}, Optional: true}}},
	},
	Build:  buildMissingForce,
	Scenes: scenesMissingForce,
	Draw:   drawMissingForce,
	Rule:   "xmt7",
	Bank: []Source{
		missing("Two tugs are to bring a barge straight ahead; one has its line out already.", force("P", "340 N", "25 deg"), free("Q"), required("560 N", "70 deg")),
		missing("A second line is to bring the pull on the bollard along the quay.", force("F1", "4.2 kN", "55 deg"), free("F2", "direction", "-40 deg"), along("0 deg")),
		missing("What is the least pull that brings the buoy's chain into line with the channel?", force("C", "850 lb", "65 deg"), free("D"), along("20 deg"), leaf("find", "smallest")),
		missing("A second tug of known strength is to turn the pull on the dredger to due east.", force("A", "520 N", "35 deg"), free("B", "magnitude", "410 N"), along("0 deg")),
		missing("The winch rope holds part of a boat's pull on the slipway.", force("W", "2.4 kip", "160 deg"), free("E"), required("3.1 kip", "115 deg")),
	},
}

// free is the missing force, with at most one value known.
func free(name string, known ...string) Source {
	src := branch("missing", leaf("name", name))
	if len(known) == 2 {
		src.Kids = append(src.Kids, leaf(known[0], known[1]))
	}
	return src
}

func required(magnitude, direction string) Source {
	return branch("resultant", leaf("magnitude", magnitude), leaf("direction", direction))
}

func along(direction string) Source { return branch("resultant", leaf("direction", direction)) }

func missing(story string, known, free, resultant Source, more ...Source) Source {
	known.Key = "known"
	return branch("", append([]Source{leaf("kind", "missing-force"), leaf("story", story), known, free, resultant}, more...)...)
}

// drawMissingForce draws one of the four questions.
func drawMissingForce(d *Draw) Source {
	stories := []string{"One tug pulls already; a second is to help.", "One line holds a pontoon; a second is to be made fast.",
		"A rope pulls on a mooring ring; another is to turn the pull.", "One guy holds the derrick's mast head; a second is to be rigged."}
	story := stories[d.Below(len(stories))]
	names := [][2]string{{"P", "Q"}, {"F1", "F2"}, {"A", "B"}}[d.Below(3)]
	unit := []string{" N", " N", " lb"}[d.Below(3)]
	size := func() string { return itoa(d.Step(150, 950, 10)) + unit }
	way := func() string { return itoa(d.Direction(1)) + " deg" }
	known := force(names[0], size(), way())
	switch d.Below(4) {
	case 0:
		return missing(story, known, free(names[1]), required(size(), way()))
	case 1:
		return missing(story, known, free(names[1], "direction", way()), along(way()))
	case 2:
		return missing(story, known, free(names[1], "magnitude", size()), along(way()))
	}
	return missing(story, known, free(names[1]), along(way()), leaf("find", "smallest"))
}

// question says which values of the missing force and of the resultant are
// given.
type question uint8

// The questions.
const (
	wholeResultant question = iota // R and θ given
	bothDirections                 // θ₂ and θ
	sizeAndTurn                    // F₂ and θ: up to two solutions
	turnAndSize                    // θ₂ and R: up to two solutions
	smallestForce                  // θ, and F₂ the smallest
)

// asks tells which question a statement puts.
func asks(free, r Item, smallest bool) (question, bool) {
	has := [4]bool{free.Field("magnitude").Given(), free.Field("direction").Given(), r.Field("magnitude").Given(), r.Field("direction").Given()}
	if smallest {
		return smallestForce, has == [4]bool{3: true}
	}
	q, ok := map[[4]bool]question{
		{false, false, true, true}: wholeResultant, {false, true, false, true}: bothDirections,
		{true, false, false, true}: sizeAndTurn, {false, true, true, false}: turnAndSize}[has]
	return q, ok
}

func buildMissingForce(p *Problem) (*Lesson, error) {
	known, free, result := p.Group("known")[0], p.Group("missing")[0], p.Group("resultant")[0]
	find := p.Group("find")
	say := func(key string) error {
		return errors.New(text.Say("missing-force.refuse."+key, "P", known.Field("name").Written, "Q", free.Field("name").Written))
	}
	ask, ok := asks(free, result, len(find) > 0 && find[0].Field("force").Given())
	if !ok {
		return nil, say("givens")
	}
	t := triangle{unit: known.Field("magnitude").Unit, ask: ask}
	t.first, t.second, t.result = newPull(known, "1", t.unit), newPull(free, "2", t.unit), newPull(result, "", t.unit)
	t.result.name, t.result.dir, t.result.symbol = "R", "theta", symbolOf("R")
	var lessons []*Lesson
	why, ways := "", []bool{true, false}
	if ask != sizeAndTurn && ask != turnAndSize {
		ways = ways[:1]
	}
	for _, far := range ways {
		s := t
		if key := s.close(far); key != "" {
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
	}
	return lessons[0], nil
}

// close finds the sides that are not given. Where there are two ways to, far
// chooses the one that makes the unknown side longer: α is acute there. It
// returns the key of the reason where there is no such triangle.
func (t *triangle) close(far bool) string {
	f := t.first.vec
	unitAt := func(p pull) r2.Vec { return statics.Polar(1, p.heading.Angle()) }
	switch t.ask {
	case wholeResultant:
		t.second.vec = r2.Sub(t.result.vec, f)
	case bothDirections:
		u, v := unitAt(t.second), unitAt(t.result)
		across := r2.Cross(u, v)
		if math.Abs(across) < 1e-9 {
			return "parallel"
		}
		size := -r2.Cross(f, v) / across
		if size <= 0 || -r2.Cross(f, u)/across <= 0 {
			return "sense"
		}
		t.second.vec = r2.Scale(size, u)
	case smallestForce:
		v := unitAt(t.result)
		if r2.Dot(f, v) <= 0 {
			return "backwards"
		}
		t.second.vec = r2.Sub(r2.Scale(r2.Dot(f, v), v), f)
	case sizeAndTurn:
		v := unitAt(t.result)
		reach, ok := leg(t.second.size, r2.Cross(v, f), far)
		if !ok {
			return "short"
		}
		t.second.vec = r2.Sub(r2.Scale(r2.Dot(f, v)+reach, v), f)
		if r2.Dot(f, v)+reach <= 0 {
			return "backwards"
		}
	case turnAndSize:
		u := unitAt(t.second)
		reach, ok := leg(t.result.size, r2.Cross(u, f), far)
		if !ok {
			return "short"
		}
		if reach-r2.Dot(f, u) <= 0 {
			return "sense"
		}
		t.second.vec = r2.Scale(reach-r2.Dot(f, u), u)
	}
	return t.measure()
}

// leg is the part of a side of the given size along a line that it reaches
// over a distance across; forwards where it is to be far. ok is false where the
// side is too short, or only just reaches, so that two triangles run together.
func leg(size, across float64, far bool) (_ float64, ok bool) {
	const just = 1e-3 // of the side, squared: an angle within 2° of 90°
	along := size*size - across*across
	if along < just*size*size {
		return 0, false
	}
	if far {
		return math.Sqrt(along), true
	}
	return -math.Sqrt(along), true
}

// measure fills in what follows from the vectors; it returns the key of the
// reason where they make no triangle worth drawing.
func (t *triangle) measure() string {
	t.result.vec = r2.Add(t.first.vec, t.second.vec)
	t.second.complete(t.ask == bothDirections || t.ask == turnAndSize)
	t.result.complete(t.ask != turnAndSize)
	t.alpha = statics.Between(t.second.vec, t.result.vec).Degrees()
	t.beta = statics.Between(t.first.vec, t.result.vec).Degrees()
	t.gamma = statics.Between(r2.Scale(-1, t.first.vec), t.second.vec).Degrees()
	t.ccw = r2.Cross(t.first.vec, t.second.vec) > 0
	least := min(t.first.size, t.second.size, t.result.size)
	most := max(t.first.size, t.second.size, t.result.size)
	switch {
	case min(t.alpha, t.beta, t.gamma) < minInterior || max(t.alpha, t.beta, t.gamma) > 180-minInterior:
		return "parallel"
	case most > maxRatio*least:
		return "ratio"
	}
	return ""
}
