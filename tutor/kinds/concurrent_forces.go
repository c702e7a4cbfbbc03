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

// ConcurrentForces is the resultant of two to six forces at one point, by
// summing components.
var ConcurrentForces = lesson.Kind{
	Name:   "concurrent-forces",
	Groups: []lesson.Group{{Key: "forces", Min: 2, Max: 6, Fields: forceFields("340 N", "25 deg")}},
	Build:  buildConcurrentForces,
	Scenes: scenesConcurrentForces,
	Sketch: sketchForces,
	Draw:   drawConcurrentForces,
	Rule:   "3vsk",
	Bank: []lesson.Source{
		ConcurrentForcesSource("Three tugs turn a dredger in the basin.", ForceSource("A", "420 N", "20 deg"), ForceSource("B", "350 N", "115 deg"), ForceSource("C", "510 N", "-70 deg")),
		ConcurrentForcesSource("Three lines are made fast to one bollard.", ForceSource("F1", "2.6 kN", "3:4 up right"), ForceSource("F2", "1.9 kN", "5:12 up left"), ForceSource("F3", "3.1 kN", "25 deg below +x")),
		ConcurrentForcesSource("Wind, current and its chain act on a buoy.", ForceSource("W", "180 lb", "N 40 E"), ForceSource("C", "260 lb", "S 75 E"), ForceSource("T", "210 lb", "S 70 W")),
		ConcurrentForcesSource("Four guys hold the derrick's mast head.", ForceSource("F1", "650 N", "35 deg"), ForceSource("F2", "480 N", "130 deg"), ForceSource("F3", "720 N", "200 deg"), ForceSource("F4", "390 N", "-65 deg")),
		ConcurrentForcesSource("Five ropes pull on the ring of a floating pontoon.", ForceSource("F1", "1.2 kip", "15 deg"), ForceSource("F2", "0.9 kip", "80 deg"), ForceSource("F3", "1.5 kip", "150 deg"), ForceSource("F4", "0.7 kip", "235 deg"), ForceSource("F5", "1.1 kip", "-40 deg")),
	},
}

// ConcurrentForcesSource is the Source of a problem of this kind, of ForceSources.
func ConcurrentForcesSource(story string, forces ...lesson.Source) lesson.Source {
	return lesson.Branch("", lesson.Leaf("kind", "concurrent-forces"), lesson.Leaf("story", story), lesson.Branch("forces", forces...))
}

// drawConcurrentForces draws three or four forces, some by slope or bearing.
func drawConcurrentForces(d *lesson.Draw) lesson.Source {
	stories := []string{"Tugs pull on a barge.", "Lines hold a pontoon.", "Ropes pull on a mooring ring.",
		"Guys pull on the derrick's mast head.", "Wind, current and chains act on a moored buoy."}
	story := stories[d.Below(len(stories))]
	unit := []string{" N", " N", " lb"}[d.Below(3)]
	letters := [][]string{{"A", "B", "C", "D"}, {"F1", "F2", "F3", "F4"}, {"P", "Q", "S", "T"}}[d.Below(3)]
	var forces []lesson.Source
	for i := range 3 + d.Below(2) {
		forces = append(forces, ForceSource(letters[i], strconv.Itoa(d.Step(150, 950, 10))+unit, d.Heading()))
	}
	return ConcurrentForcesSource(story, forces...)
}

// minPart is the least a resultant may be of the largest force: below it the
// forces all but balance, and what is left drowns in rounding.
const minPart = 0.001

func buildConcurrentForces(p *lesson.Problem) (*lesson.Lesson, error) {
	forces := p.Group("forces")
	unit := forces[0].Field("magnitude").Unit
	var pulls []pull
	var r r2.Vec
	least, most := math.Inf(1), 0.0
	for i := range forces {
		f := newPull(forces[i], strconv.Itoa(i+1), unit)
		pulls = append(pulls, f)
		r = r2.Add(r, f.vec)
		least, most = min(least, f.size), max(most, f.size)
	}
	switch {
	case most > maxRatio*least:
		return nil, errors.New(text.Say("concurrent-forces.refuse.ratio"))
	case r2.Norm(r) < minPart*most:
		return nil, errors.New(text.Say("concurrent-forces.refuse.balanced"))
	}
	l := &lesson.Lesson{Unit: unit}
	var parts []lesson.Quantity
	names := []string{}
	for i, f := range pulls {
		next := pulls[(i+1)%len(pulls)].name
		l.Quantities = append(l.Quantities, f.given(next[1:])...)
		parts = append(parts, f.byReference(f.parts(next))...)
		names = append(names, f.name+"x", f.name+"y")
	}
	l.Quantities = append(l.Quantities, parts...)
	l.Quantities = append(l.Quantities, total(pulls, alongX, r), total(pulls, alongY, r))
	l.Quantities = append(l.Quantities, resultantOf(pulls, r)...)
	l.Ways = []lesson.Way{componentWay(l.Quantities, append(names, "Rx", "Ry", "R", "theta")...)}
	return l, nil
}

// resultantOf declares magnitude and direction of the resultant.
func resultantOf(pulls []pull, r r2.Vec) []lesson.Quantity {
	sum := expr.Add(pulls[0].force(), pulls[1].force())
	for _, f := range pulls[2:] {
		sum = expr.Add(sum, f.force())
	}
	size := lesson.Quantity{Name: "R", Symbol: expr.Symbol{Letter: "R", Spoken: "R"}, Dim: statics.DimForce, Answer: true, True: r2.Norm(r),
		Routes: []lesson.Route{magnitudeOf(symRx, symRy)}, Mistakes: []lesson.Mistake{mistake("magnitudes-added", sum)},
		Between: [2]expr.Node{expr.N(0), sum}}
	dir, _ := statics.Direction(r)
	theta := lesson.Quantity{Name: "theta", Symbol: expr.Symbol{Letter: "θ", Spoken: "theta"}, Dim: statics.DimAngle, Answer: true, Turns: true,
		True: lesson.Degrees(dir), Routes: []lesson.Route{directionOf(symRx, symRy, r)}}
	theta.Onward, theta.Mistakes = byMagnitude(symRx, symRy, symR, r)
	return []lesson.Quantity{size, theta}
}

// scenesConcurrentForces shows the forces at their point and, once a sum is
// found, the force polygon: the forces head to tail, and the closing side.
func scenesConcurrentForces(l *lesson.Lesson, w lesson.Progress) []figure.Scene {
	forces := forceFigures(l)
	scenes := []figure.Scene{figure.Given(forces...)}
	closed, order := w.Sketched()
	if closed || w.Found("Rx") || w.Found("Ry") || w.Found("R") || w.Found("theta") {
		chain := forces
		if closed {
			chain = nil
			for _, i := range order {
				chain = append(chain, forces[i])
			}
		}
		scenes = append(scenes, figure.ForcePolygon(chain, w.Label("R")))
	}
	return scenes
}
