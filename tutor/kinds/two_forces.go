package kinds

import (
	"errors"
	"math"
	"strconv"

	"closingside/tutor/figure"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// TwoForces is the resultant of two concurrent forces, by the force triangle
// or by rectangular components.
//
// Standard triangle notation: a side and the angle opposite it share a letter,
// so α is opposite F₁, β opposite F₂ and γ opposite R.
var TwoForces = lesson.Kind{
	Name:   "two-forces",
	Groups: []lesson.Group{{Key: "forces", Min: 2, Max: 2, Fields: forceFields("340 N", "25 deg")}},
	Build:  buildTwoForces,
	Scenes: scenesTwoForces,
	Sketch: sketchForces,
	Draw:   drawTwoForces,
	Rule:   "ffjr",
	Bank: []lesson.Source{
		TwoForcesSource("Two tugs hold a barge off the quay.", ForceSource("P", "340 N", "25 deg"), ForceSource("Q", "610 N", "118 deg")),
		TwoForcesSource("Two mooring lines pull on one bollard of the quay.", ForceSource("F1", "4.2 kN", "15 deg"), ForceSource("F2", "2.9 kN", "72 deg")),
		TwoForcesSource("A buoy is pulled by its chain and by the tide.", ForceSource("C", "850 N", "-62 deg"), ForceSource("D", "430 N", "12 deg")),
		TwoForcesSource("The derrick's two guys pull on its mast head.", ForceSource("A", "7.5 kN", "205 deg"), ForceSource("B", "5.1 kN", "318 deg")),
		TwoForcesSource("A boat on the slipway is held by a winch rope and pushed by a fender.", ForceSource("W", "1250 N", "152 deg"), ForceSource("E", "780 N", "34 deg")),
		TwoForcesSource("Wind and current act on a moored dredger.", ForceSource("F1", "520 lb", "140 deg"), ForceSource("F2", "310 lb", "218 deg")),
	},
}

// TwoForcesSource is the Source of a problem of this kind, of two ForceSources.
func TwoForcesSource(story string, forces ...lesson.Source) lesson.Source {
	return lesson.Branch("", lesson.Leaf("kind", "two-forces"), lesson.Leaf("story", story), lesson.Branch("forces", forces...))
}

// drawTwoForces draws two clean forces and a story that fits any two.
func drawTwoForces(d *lesson.Draw) lesson.Source {
	stories := []string{
		"Two tugs pull on a barge.", "Two lines hold a pontoon.", "Two ropes pull on a mooring ring.",
		"Two guys pull on the derrick's mast head.", "Wind and current push a moored buoy.", "Two winches pull a boat up the slipway.",
	}
	story := stories[d.Below(len(stories))]
	names := [][2]string{{"P", "Q"}, {"F1", "F2"}, {"A", "B"}}[d.Below(3)]
	draw := func(name string) lesson.Source {
		return ForceSource(name, strconv.Itoa(d.Step(150, 950, 10))+" N", strconv.Itoa(d.Direction(1))+" deg")
	}
	return TwoForcesSource(story, draw(names[0]), draw(names[1]))
}

// plane is the two given forces and the sketch they make.
type plane struct {
	f     [2]float64 // magnitudes, in the first force's unit
	th    [2]float64 // directions as given, degrees
	phi   float64    // angle between them, 0–180°
	ccw   bool       // the second lies less than 180° counter-clockwise of the first
	turns float64    // whole turns between the directions as given, in degrees
}

func buildTwoForces(p *lesson.Problem) (*lesson.Lesson, error) {
	forces := p.Group("forces")
	unit := forces[0].Field("magnitude").Unit
	var s plane
	var pulls []pull
	for i := range forces {
		f := newPull(forces[i], strconv.Itoa(i+1), unit)
		s.f[i], s.th[i] = f.size, f.at
		pulls = append(pulls, f)
	}
	s.measure()
	if err := s.refuse(forces); err != nil {
		return nil, err
	}
	l := &lesson.Lesson{Unit: unit}
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

func (s *plane) refuse(forces []lesson.Item) error {
	a, b := forces[0].Shown(), forces[1].Shown()
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

// ways is the worked solution by either method. The triangle's finds the angle
// opposite the smaller force: it is acute, so the inverse sine can't mislead.
func (s *plane) ways(qs []lesson.Quantity) []lesson.Way {
	angle, direction := "beta", "from-first"
	if s.f[0] < s.f[1] {
		angle, direction = "alpha", "from-second"
	}
	return []lesson.Way{
		way(lesson.ByTriangle, step("phi", "difference-of-directions"), step("gamma", "adjacent-angles"),
			step("R", "cosine-law"), step(angle, "sine-law"), step("theta", direction)),
		way(lesson.ByComponents, append(componentWay(qs, "F1x", "F1y", "F2x", "F2y", "Rx", "Ry").Steps,
			step("R", "components"), step("theta", "arctangent"))...),
	}
}

// scenesTwoForces shows the forces as given and what the work is at: on the way
// by the triangle the parallelogram until γ is found, then the forces head to
// tail; on the way by components each force with its own, then the resultant.
// What is not found shows its symbol alone.
func scenesTwoForces(l *lesson.Lesson, w lesson.Progress) []figure.Scene {
	f := forceFigures(l)
	scenes := []figure.Scene{figure.Given(f[0], f[1])}
	closed, order := w.Sketched()
	by := w.Method()
	p := figure.Pair{First: f[0], Second: f[1], Resultant: w.Label("R")}
	if by == lesson.ByTriangle && w.Found("phi") {
		p.Between, p.AtJoint = w.Label("phi"), w.Label("gamma")
		scenes = append(scenes, figure.Parallelogram(p))
		p.Between = figure.Label{}
	}
	if closed || by == lesson.ByTriangle && (w.Found("gamma") || !w.Found("phi")) {
		p.AtTail, p.AtJoint, p.AtHead = w.Label("beta"), w.Label("gamma"), w.Label("alpha")
		if closed && order[0] == 1 {
			p.First, p.Second, p.AtTail, p.AtHead = p.Second, p.First, p.AtHead, p.AtTail
		}
		if w.Found("theta") {
			p.Direction = w.Label("theta")
		}
		scenes = append(scenes, figure.HeadToTail(p))
	}
	if by == lesson.ByComponents {
		scenes = append(scenes, componentFigure(w, append(f, resultantFigure(l, w))))
	}
	return scenes
}
