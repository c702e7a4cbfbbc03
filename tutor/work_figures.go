package tutor

import (
	"closingside/tutor/entry"
	"closingside/tutor/figure"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// Scenes are the figures of the work as it stands.
func (w *Work) Scenes() []figure.Scene { return w.Lesson.Kind.Scenes(w.Lesson.Lesson, w) }

// Opening is what the problem looks like before any work: what its statement
// describes, where its kind shows that, and the first figure of the work.
func (w *Work) Opening() []figure.Scene {
	first := w.Scenes()[:1]
	if scene, ok := w.Lesson.Situation(); ok {
		return append([]figure.Scene{scene}, first...)
	}
	return first
}

// Label is a quantity's symbol in a figure, with the learner's own value once
// it is found.
func (w *Work) Label(name string) figure.Label {
	q := w.Lesson.Quantity(name)
	l := figure.Symbol(q.Symbol.Letter, q.Symbol.Sub)
	if a := w.Standing(name); !q.Given && a != nil && a.Verdict == verdict.Correct {
		l = l.Is(w.Lesson.Show(q, a.Reading.Value, w.asWritten(q, a.Reading)))
	}
	return l
}

// asWritten is the digits a right entry is shown to beside itself: those asked,
// or as many more as were typed of those kept while working.
func (w *Work) asWritten(q *lesson.Quantity, r entry.Reading) lesson.Digits {
	d := w.Settings.DigitsOf(q)
	d.Magnitude = max(d.Magnitude, min(r.Digits, w.Settings.Work.Magnitude))
	d.Angle = max(d.Angle, min(r.Decimals, w.Settings.Work.Angle))
	return d
}
