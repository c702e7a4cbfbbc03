package tutor

import (
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/sketch"
	"closingside/tutor/verdict"
)

// Sketch is the sketch of this work, or nil where the kind of problem has none
// or the settings leave it out.
func (w *Work) Sketch() *sketch.Sketch {
	if w.sketch == nil && w.Settings.Sketch && w.Lesson.Kind.Sketch != nil {
		w.sketch = sketch.New(w.Lesson.Lesson, w)
	}
	return w.sketch
}

// Sketched is the order in which the learner laid the arrows head to tail, and
// whether the sketch is closed and put away.
func (w *Work) Sketched() (closed bool, order []int) {
	s := w.sketch
	if s == nil || s.Stage() < sketch.Estimating || s.IsOpen() {
		return false, nil
	}
	return true, s.Order()
}

// ReadEstimate reads what was estimated for q from the sketch: its value as
// asked first, then from +x. There is none in an entry in terms of an unknown.
func (w *Work) ReadEstimate(q *lesson.Quantity, text string) ([]float64, *entry.Error) {
	scope := w.scope(q)
	scope.UnitRequired = false // a round number does
	r, bad := entry.Read(text, scope)
	if bad != nil || r.Form == entry.Affine {
		return nil, bad
	}
	var values []float64
	for _, sense := range w.senses(q, r) {
		values = append(values, sense.Value)
	}
	return values, nil
}

// compare adds the learner's own estimate to what is said of a wrong value
// that lies far from it.
func (w *Work) compare(q *lesson.Quantity, r *Reply) {
	if r.Verdict == verdict.Correct || r.Verdict == verdict.Unreadable || r.Reading.Form == entry.Affine {
		return
	}
	if s := w.sketch; !s.Near(q, r.Reading.Value) {
		r.estimate = w.Lesson.Say("feedback.estimate", "estimate", s.EstimateText(q.Name))
		r.Feedback += " " + r.estimate
	}
}
