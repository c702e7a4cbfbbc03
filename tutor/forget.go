package tutor

import "sync"

// What is made for checks (tables, lists of two slips, plans, misreadings)
// takes megabytes a problem. Who keeps many problems open gives it up for those
// not in use; what is known of the work stays.

// forget gives up what was made for checks of the lesson and of its other
// solution. It is made again when it is asked for. Nothing may be judged on the
// lesson meanwhile, and works of it that go on have to Forget, too.
func (l *Lesson) forget() {
	for _, one := range l.Solutions() {
		if one.prep == nil {
			continue
		}
		for i := range one.prep.of { // a list begun waits in a coroutine
			one.prep.of[i].doubles.forget()
		}
		one.once, one.prep = sync.Once{}, nil
	}
}

// Forget gives up what was made for checks of the work and of its lesson (see
// Lesson.forget). Entries, verdicts and hints stay.
func (w *Work) Forget() {
	w.states, w.kept, w.doubleHits = nil, nil, nil
	w.Lesson.forget()
}
