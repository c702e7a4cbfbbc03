package tutor

import (
	"slices"
	"strconv"

	"closingside/tutor/lesson"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

// Offered tells whether q is among what the learner is asked to enter: with a
// method asked for, what that method's solution finds or one of its routes
// leads to.
func (w *Work) Offered(q *lesson.Quantity) bool {
	m := w.Settings.Method
	if q.Given {
		return false
	}
	if m == lesson.AnyMethod || q.Answer {
		return true
	}
	if slices.ContainsFunc(q.Routes, func(r lesson.Route) bool { return r.Method == m }) {
		return true
	}
	for _, way := range w.Lesson.Ways {
		if way.Method == m && slices.ContainsFunc(way.Steps, func(s lesson.Step) bool { return s.Quantity == q.Name }) {
			return true
		}
	}
	return false
}

// MayHint tells whether a hint on the quantity called name may be asked for.
// Delayed ones may after a wrong entry for it.
func (w *Work) MayHint(name string) bool {
	switch w.Settings.Hints {
	case lesson.HelpOn:
		return true
	case lesson.HelpDelayed:
		return w.tried(func(q *lesson.Quantity) bool { return q.Name == name })
	}
	return false
}

// MaySolve tells whether the worked solution may be asked for. A delayed one
// may after a wrong entry for an answer, and once every answer is found.
func (w *Work) MaySolve() bool {
	switch w.Settings.Solution {
	case lesson.HelpOn:
		return true
	case lesson.HelpDelayed:
		return w.Done() || w.tried(func(q *lesson.Quantity) bool { return q.Answer })
	}
	return false
}

// tried tells whether a wrong entry was made for one of the quantities; one
// taken back counts, so that taking back takes no help away.
func (w *Work) tried(of func(*lesson.Quantity) bool) bool {
	return slices.ContainsFunc(w.Past, func(a Attempt) bool {
		return a.Verdict != verdict.Correct && of(w.Lesson.Quantity(a.Quantity))
	})
}

// Asked says in which unit, and how finely, q is asked.
func (w *Work) Asked(q *lesson.Quantity) string {
	d := w.Settings.DigitsOf(q)
	if q.Equation {
		return text.Say("asked.equation")
	}
	if q.IsReported() {
		r := w.Settings.Direction
		return text.Say("reported.asked."+r.As.Key(), "places", strconv.Itoa(d.Angle), "thing", lesson.ParseSymbol(r.Thing).String())
	}
	if q.IsAngle() {
		return text.Say("asked.angle", "places", strconv.Itoa(d.Angle))
	}
	return text.Say("asked.magnitude", "unit", w.Lesson.UnitOf(q).Symbol, "digits", strconv.Itoa(d.Magnitude))
}
