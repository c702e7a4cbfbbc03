package site

import (
	"closingside/tutor"
	"closingside/tutor/verdict"
)

// told is what a log tells of the work on a desk without judging it again: the
// log keeps the outcome of every entry. For a list of problems that is enough;
// the work itself is brought back when its desk is looked at.
type told struct {
	entries []judgement // that stand, oldest first
	begun   bool        // something could be read
	awaited string      // the quantity of an entry whose outcome comes next; "" where none does
	gap     bool        // an entry has no outcome: the page was closed before
}

// judgement is what was said of an entry.
type judgement struct{ quantity, said string }

// hear takes a line of the log.
func (t *told) hear(f Form) {
	switch f.Get("do") {
	case "enter":
		t.gap = t.gap || t.awaited != ""
		t.awaited = f.Get("quantity")
	case "outcome": // of an entry; one of drawing the problem names no quantity
		t.outcome(judgement{f.Get("quantity"), f.Get("verdict")})
	case "undo":
		t.entries = t.entries[:max(0, len(t.entries)-1)]
	case "again":
		*t = told{}
	}
}

// outcome takes the outcome of an entry, or of one before that was judged again.
func (t *told) outcome(v judgement) {
	if t.awaited != "" && v.quantity == t.awaited {
		t.awaited = ""
		if v.said != verdict.Unreadable.String() {
			t.entries, t.begun = append(t.entries, v), true
		}
		return
	}
	if i := t.latest(v.quantity); i >= 0 {
		t.entries[i] = v
	}
}

// latest is the place of the entry that stands for a quantity; −1 where none does.
func (t *told) latest(quantity string) int {
	for i := len(t.entries) - 1; i >= 0; i-- {
		if t.entries[i].quantity == quantity {
			return i
		}
	}
	return -1
}

// whole tells whether the log holds every outcome.
func (t *told) whole() bool { return !t.gap && t.awaited == "" }

// done tells whether every answer of a lesson was found.
func (t *told) done(l *tutor.Lesson) bool {
	for _, q := range l.Quantities {
		if i := t.latest(q.Name); q.Answer && (i < 0 || t.entries[i].said != verdict.Correct.String()) {
			return false
		}
	}
	return true
}

// howFar is how far the work on a desk is: by the log, where it is not
// brought back yet.
func (s *session) howFar(d *desk) (begun, done bool) {
	if len(d.past) > 0 && d.told.whole() {
		return d.told.begun, d.told.done(d.lesson)
	}
	work := s.work(d)
	return len(work.Past) > 0, work.Done()
}

// work is the work on a desk, brought back where it is not.
func (s *session) work(d *desk) *tutor.Work {
	if len(d.past) > 0 {
		s.turnTo(d)
	}
	return d.work
}

// turnTo brings the work on a desk back for something to be done on it.
func (s *session) turnTo(d *desk) {
	d.catchUp()
	s.keep(d)
}

// keep keeps what was made for checks on this desk and on the one before, and
// gives it up for the others.
func (s *session) keep(d *desk) {
	if d == s.lately[0] {
		return
	}
	if old := s.lately[1]; old != nil && old != d {
		old.work.Forget()
		if s.warmed == old {
			s.warmed = nil
		}
	}
	s.lately[0], s.lately[1] = d, s.lately[0]
}
