package kinds

import (
	"strconv"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/tutor/figure"
	"closingside/tutor/lesson"
)

// resultantFigure is the resultant of a lesson as figures show it.
func resultantFigure(l *lesson.Lesson, w lesson.Progress) figure.Force {
	return figure.Force{Vec: r2.Vec{X: l.Truth("Rx"), Y: l.Truth("Ry")}, Label: w.Label("R"), Name: "R",
		Turn: statics.Angle(l.Truth("theta")) * statics.Degree, Angle: w.Label("theta"), Hidden: !w.Found("theta")}
}

// sketchForces has the forces of a statement laid head to tail.
func sketchForces(l *lesson.Lesson) lesson.SketchPlan {
	return lesson.SketchPlan{Forces: forceFigures(l), Size: "R", Direction: "theta"}
}

// forceFigures are the forces of a statement as figures show them.
func forceFigures(l *lesson.Lesson) []figure.Force {
	var all []figure.Force
	for i, it := range l.Problem.Group("forces") {
		name := "F" + strconv.Itoa(i+1)
		h := it.Field("direction").Heading
		all = append(all, drawn(symbolLabel(l.Quantity(name)).Is(it.Field("magnitude").Written), name, h, statics.Polar(l.Truth(name), h.Angle())))
	}
	return all
}

// symbolLabel is a quantity's symbol in a figure.
func symbolLabel(q *lesson.Quantity) figure.Label {
	return figure.Symbol(q.Symbol.Letter, q.Symbol.Sub)
}
