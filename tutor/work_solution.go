package tutor

import "closingside/tutor/lesson"

// Worked is work on l in which every step of the solution was entered.
func (l *Lesson) Worked(sol lesson.Solution) *Work {
	w := NewWork(l, l.Problem.Settings)
	for _, s := range sol.Steps {
		if w.Offered(s.Quantity) {
			w.Enter(s.Quantity.Name, l.asEntered(s.Quantity, w.Settings))
		}
	}
	return w
}

// asEntered is q's true value as an entry, finely; a direction as it is asked.
func (l *Lesson) asEntered(q *lesson.Quantity, s lesson.Settings) string {
	if q.IsReported() {
		return l.Reported(q, q.True, s.DigitsKept(q))
	}
	return l.ShowKept(q, q.True, s)
}
