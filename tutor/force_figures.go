package tutor

import (
	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/tutor/figure"
)

// resultantFigure is the resultant of a lesson as figures show it.
func resultantFigure(l *Lesson, w Progress) figure.Force {
	return figure.Force{Vec: r2.Vec{X: l.Truth("Rx"), Y: l.Truth("Ry")}, Label: w.Label("R"), Name: "R",
		Turn: statics.Angle(l.Truth("theta")) * statics.Degree, Angle: w.Label("theta"), Hidden: !w.Found("theta")}
}

// sketchForces has the forces of a statement laid head to tail.
func sketchForces(l *Lesson, w Progress) SketchPlan {
	return SketchPlan{Forces: forceFigures(l, w), Size: "R", Direction: "theta"}
}

// forceFigures are the forces of a statement as figures show them.
func forceFigures(l *Lesson, w Progress) []figure.Force {
	var all []figure.Force
	for i, it := range l.Problem.Group("forces") {
		name := "F" + itoa(i+1)
		h := it.Field("direction").Heading
		all = append(all, drawn(w.Label(name).Is(it.Field("magnitude").Written), name, h, statics.Polar(l.Truth(name), h.Angle())))
	}
	return all
}
