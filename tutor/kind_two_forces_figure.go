package tutor

import (
	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/tutor/figure"
)

// scenesTwoForces shows the forces as given and what the work is at: on the way
// by the triangle the parallelogram until γ is found, then the forces head to
// tail; on the way by components each force with its own, then the resultant.
// What is not found shows its symbol alone.
func scenesTwoForces(w *Work) []figure.Scene {
	f := w.forceFigures()
	scenes := []figure.Scene{figure.Given(f[0], f[1])}
	closed, order := w.sketched()
	by := w.method()
	p := figure.Pair{First: f[0], Second: f[1], Resultant: w.label("R")}
	if by == ByTriangle && w.Found("phi") {
		p.Between, p.AtJoint = w.label("phi"), w.label("gamma")
		scenes = append(scenes, figure.Parallelogram(p))
		p.Between = figure.Label{}
	}
	if closed || by == ByTriangle && (w.Found("gamma") || !w.Found("phi")) {
		p.AtTail, p.AtJoint, p.AtHead = w.label("beta"), w.label("gamma"), w.label("alpha")
		if closed && order[0] == 1 {
			p.First, p.Second, p.AtTail, p.AtHead = p.Second, p.First, p.AtHead, p.AtTail
		}
		if w.Found("theta") {
			p.Direction = w.label("theta")
		}
		scenes = append(scenes, figure.HeadToTail(p))
	}
	if by == ByComponents {
		scenes = append(scenes, w.componentFigure(append(f, w.resultantFigure())))
	}
	return scenes
}

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
		l = l.Is(w.Lesson.Show(q, a.Reading.Value, w.Settings.asked(q)))
	}
	return l
}
