package tutor

import (
	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/tutor/entry"
	"closingside/tutor/figure"
)

// resultantFigure is the resultant of a lesson as figures show it.
func (w *Work) resultantFigure() figure.Force {
	return figure.Force{Vec: r2.Vec{X: w.Lesson.Truth("Rx"), Y: w.Lesson.Truth("Ry")}, Label: w.label("R"), Name: "R",
		Turn: statics.Angle(w.Lesson.Truth("theta")) * statics.Degree, Angle: w.label("theta"), Hidden: !w.Found("theta")}
}

// sketchForces has the forces of a statement laid head to tail.
func sketchForces(w *Work) SketchPlan {
	return SketchPlan{Forces: w.forceFigures(), Size: "R", Direction: "theta"}
}

// forceFigures are the forces of a statement as figures show them.
func (w *Work) forceFigures() []figure.Force {
	var all []figure.Force
	for i, it := range w.Lesson.Problem.Group("forces") {
		name := "F" + itoa(i+1)
		h := it.Field("direction").Heading
		all = append(all, drawn(w.label(name).Is(it.Field("magnitude").Written), name, h, statics.Polar(w.Lesson.Truth(name), h.Angle())))
	}
	return all
}

// label is a quantity's symbol in a figure, with the learner's own value once
// it is found.
func (w *Work) label(name string) figure.Label {
	q := w.Lesson.Quantity(name)
	l := figure.Symbol(q.Symbol.Letter, q.Symbol.Sub)
	if a := w.Standing(name); !q.Given && a != nil && a.Verdict == Correct {
		l = l.Is(w.Lesson.Show(q, a.Reading.Value, w.asWritten(q, a.Reading)))
	}
	return l
}

// asWritten is the digits a right entry is shown to beside itself: those asked,
// or as many more as were typed of those kept while working.
func (w *Work) asWritten(q *Quantity, r entry.Reading) Digits {
	d := w.Settings.asked(q)
	d.Magnitude = max(d.Magnitude, min(r.Digits, w.Settings.Work.Magnitude))
	d.Angle = max(d.Angle, min(r.Decimals, w.Settings.Work.Angle))
	return d
}
