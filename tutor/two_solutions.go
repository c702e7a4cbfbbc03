package tutor

import (
	"math"

	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
	"closingside/tutor/verdict"
)

// Where a statement fits two sketches, its lesson has a second one: Other, a
// lesson of the same quantities with the values and routes of that sketch.
// Work stands in one of the two. An entry that is right only in the other
// takes the work there, unless an accepted entry holds it where it is: then
// two solutions were mixed, and that is said.

// Solutions are the lesson itself and the other one, where there are two.
func (l *Lesson) Solutions() []*Lesson {
	if l.Other == nil {
		return []*Lesson{l}
	}
	return []*Lesson{l, l.Other}
}

// judgeEither judges an entry where the work stands and, where it is not right
// there, in the other solution. switched tells whether the work went over.
func (w *Work) judgeEither(q *lesson.Quantity, entered string) (r Reply, switched bool) {
	r = w.judge(q, entered)
	if w.Lesson.Other == nil || r.Verdict == verdict.Correct || r.Verdict == verdict.Unreadable {
		return r, false
	}
	var o Reply
	free, there := false, false
	w.inOther(func() {
		other := w.Lesson.Quantity(q.Name)
		free = w.allRight(q.Name)
		o = w.judge(other, entered)
		there = o.Verdict == verdict.Correct && (free || w.isOf(other, o.Reading))
	})
	named := o.Verdict == verdict.SlipFound || o.Verdict == verdict.EarlyRounding
	switch {
	case free && (o.Verdict == verdict.Correct || named && r.Verdict == verdict.Unexplained):
		w.Lesson, w.states = w.Lesson.Other, nil
		return o, true
	case there:
		r.Verdict, r.Slips, r.Unexplained = verdict.SlipFound, []Suspect{{IDs: []string{slips.BranchesMixed}, Likely: slips.BranchesMixed, Probability: sureMixed, At: q.Name}}, 1-sureMixed
		r.From, r.Rounded = "", nil
		r.Asked = false
		r.Feedback = w.Lesson.Say("feedback.case", "case", w.Lesson.CaseText()) + " " + w.askAbout(r.Slips[0])
		w.escalate(q, &r)
	}
	return r, false
}

// isOf tells whether an accepted entry is the value of this solution, and does not
// only follow from entries that are right in another.
func (w *Work) isOf(q *lesson.Quantity, r entry.Reading) bool {
	return q.Equation || r.Form == entry.Affine || q.Distance(r.Value, q.True) <= w.limit(q)
}

// sureMixed is the probability that a value right in the other solution was
// found for it (judgement: a slip seldom meets it by chance).
const sureMixed = 0.95

// inOther runs do with the work standing in the other solution.
func (w *Work) inOther(do func()) {
	here, states := w.Lesson, w.states
	w.Lesson, w.states, w.elsewhere = here.Other, nil, true
	do()
	w.Lesson, w.states, w.elsewhere = here, states, false
}

// allRight tells whether every accepted entry but that for name is right where
// the work stands.
func (w *Work) allRight(name string) bool {
	for other, i := range w.latest {
		a := &w.Past[i]
		if other == name || a.Verdict != verdict.Correct {
			continue
		}
		again := Reply{Quantity: a.Quantity, Entry: a.Entry, Reading: a.Reading, typed: a.typed}
		w.hide(i, func() { w.decide(w.Lesson.Quantity(other), &again) })
		if again.Verdict != verdict.Correct {
			return false
		}
	}
	return true
}

// caseNote is the note on a right answer that has another solution.
func (w *Work) caseNote(q *lesson.Quantity) []string {
	if math.IsNaN(q.Also) || !q.Answer {
		return nil
	}
	return []string{"two-solutions"}
}
