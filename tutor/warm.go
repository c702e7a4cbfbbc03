package tutor

import "closingside/tutor/lesson"

// What a check looks in takes longer to make than to look in. A page makes it
// ahead, a little at a time, while the learner reads and works.

// Warm makes some of what checks of this work will look in, the next value's
// first, and stops where it is late or all is made; it tells which.
func (w *Work) Warm(late func() bool) (made bool) {
	if next := w.Lesson.Quantity(w.Next()); next != nil && !w.warm(next, late) {
		return false
	}
	for i := range w.Lesson.Quantities {
		q := &w.Lesson.Quantities[i]
		if !q.Given && !q.Equation && !w.Found(q.Name) && !w.warm(q, late) {
			return false
		}
	}
	return true
}

// warm makes what a check of q looks in, one piece after the other.
func (w *Work) warm(q *lesson.Quantity, late func() bool) (made bool) {
	if q.Equation {
		return true
	}
	i := w.Lesson.index[q.Name]
	if !w.Lesson.ready().of[i].doubles.make(w.Lesson, i, late) {
		return false
	}
	s, done := w.now(q), func() {}
	if s.standing == 0 {
		s, done = w.Lesson.blank(q, w.Settings)
	}
	defer done()
	for _, piece := range []struct {
		made bool
		make func(q int) *table
	}{
		{s.tables[i] != nil, s.outcomes},
		{s.carries[i] != nil, s.carriedTo},
		{s.rounding != nil, s.soon},
	} {
		if !piece.made && late() || !piece.make(i).blurAhead(late) {
			return false
		}
	}
	return true
}

// Cool gives up what Warm has begun and not made whole.
func (w *Work) Cool() {
	for i := range w.Lesson.ready().of {
		w.Lesson.prep.of[i].doubles.forget()
	}
}
