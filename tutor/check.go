package tutor

import (
	"math"
	"unicode/utf8"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// judge gives the verdict on an entry for q, without recording it.
func (w *Work) judge(q *lesson.Quantity, text string) Reply {
	r := Reply{Quantity: q.Name, Entry: text}
	reading, bad := w.Read(q.Name, text)
	if bad != nil {
		r.Verdict, r.Fault, r.Feedback = verdict.Unreadable, bad, bad.Message()
		return r
	}
	r.Reading, r.typed = reading, reading
	w.decide(q, &r)
	if r.Verdict != verdict.Correct && reading.Form == entry.Expression {
		if o := w.withUnits(q, text); o != nil && o.Verdict == verdict.Correct {
			return *o
		}
	}
	if key := w.untold(reading); r.Verdict != verdict.Correct && key != "" {
		r = Reply{Quantity: q.Name, Entry: text, Verdict: verdict.Unreadable, Fault: &entry.Error{Col: 1, Len: utf8.RuneCountInString(text), Key: key}}
		r.Feedback = r.Fault.Message()
	}
	if r.Verdict == verdict.Correct && reading.Unequal != nil { // its numbers agree, its units don't
		r.Verdict, r.Notes = verdict.Unreadable, nil
		r.Fault, r.Feedback = reading.Unequal, reading.Unequal.Message()
	}
	return r
}

// decide gives the verdict on what was read, in the sense in which it is right
// or else can be explained.
func (w *Work) decide(q *lesson.Quantity, r *Reply) {
	best := *r
	for i, sense := range w.senses(q, r.typed) {
		one := *r
		one.Reading = sense
		w.decideAs(q, &one)
		if i == 0 || one.Verdict == verdict.Correct || best.Verdict == verdict.Unexplained && one.Verdict != verdict.Unexplained {
			best = one
		}
		if best.Verdict == verdict.Correct {
			if !w.asAsked(q, r.typed, i > 0) {
				best.Notes = append(best.Notes, "angle-otherwise")
				best.Feedback = w.praise(q, best.Notes)
			}
			break
		}
	}
	*r = best
}

// decideAs gives the verdict on a value.
func (w *Work) decideAs(q *lesson.Quantity, r *Reply) {
	switch {
	case q.Equation:
		w.judgeEquation(q, r)
	case r.Reading.Form == entry.Affine:
		w.judgeAffine(q, r)
	case w.right(q, r.Reading):
		r.Verdict, r.Notes = verdict.Correct, w.notes(q, r.Reading)
		r.Feedback = w.praise(q, r.Notes)
	default:
		w.explain(q, r)
	}
	w.compare(q, r)
}

// right tells whether a value is correct: inside the band, or what follows
// rightly from the learner's own accepted entries as typed, however far that is.
// Beyond every limit it may as well follow from a wrong one, where one stands before it.
func (w *Work) right(q *lesson.Quantity, r entry.Reading) bool {
	if q.IsAngle() && !q.Turns && math.Abs(r.Value-q.True) > 540 { // no angle of a figure is written several turns off
		return false
	}
	half, exact := w.Settings.DigitsOf(q).HalfUnit(q.Dim, r.Value), w.unrounded(r)
	if exact {
		half = exactly * math.Abs(r.Value)
		if q.Distance(r.Value, q.True) <= exactly*max(1, math.Abs(q.True)) {
			return true
		}
	}
	band := w.Band(q)
	if !exact && (w.followsEquations(q, r.Value, half) || w.inUnit(band, q, r).Holds(q, r.Value)) {
		return true
	}
	return (!w.beyondLimits(q, r.Value) || !w.elsewhere && !w.wrongBefore(q)) && w.follows(q, r.Value, half) != nil
}

// beyondLimits tells whether a value lies where no band of q reaches.
func (w *Work) beyondLimits(q *lesson.Quantity, v float64) bool {
	return q.Distance(v, q.True) > max(w.limit(q), w.Band(q).Half)
}

// wrongBefore tells whether an entry that is not right stands on which one for q
// may rest: none for q itself, and none carried from that.
func (w *Work) wrongBefore(q *lesson.Quantity) bool {
	for name := range w.latest {
		if !w.Found(name) && w.root(name) != q.Name && w.Lesson.mayRestOn(q.Name, name) {
			return true
		}
	}
	return false
}

// judgeAffine judges an entry in terms of a direction, such as 118° − θ: right
// when it has the coefficient and, modulo 360°, the constant of a route.
func (w *Work) judgeAffine(q *lesson.Quantity, r *Reply) {
	for _, route := range q.Routes {
		coef := expr.Partial(route.Tree, w.Lesson.Truth, r.Reading.In)
		if coef == 0 || math.Abs(coef-r.Reading.Coef) > 1e-9 {
			continue
		}
		constant := expr.Eval(route.Tree, func(name string) float64 {
			if name == r.Reading.In {
				return 0
			}
			return w.Lesson.Truth(name)
		})
		if math.Abs(math.Remainder(constant-r.Reading.Const, 360)) <= 1e-6 {
			r.Verdict, r.Feedback = verdict.Correct, w.praise(q, nil)
			return
		}
	}
	r.Verdict, r.Unexplained, r.Feedback = verdict.Unexplained, 1, w.Lesson.Say("feedback.affine", "in", w.Lesson.SymbolText(r.Reading.In))
	w.escalate(q, r)
}

// notes lists what may be said of a right answer.
func (w *Work) notes(q *lesson.Quantity, r entry.Reading) []string {
	notes := w.caseNote(q)
	if !r.UnitWritten && !q.IsAngle() && q.Dim != statics.DimRatio {
		notes = append(notes, "unit-missing")
	}
	if w.beyondLimits(q, r.Value) {
		return append(notes, "as-follows")
	}
	if len(r.Halves) == 0 {
		return notes
	}
	asked := w.Settings.DigitsOf(q)
	exact := asked.Round(q.Dim, q.True)
	off := q.Distance(r.Value, q.True)
	if r.Halves[0] > asked.HalfUnit(q.Dim, q.True)*(1+1e-9) && off > 1e-9*max(1, math.Abs(q.True)) {
		notes = append(notes, "digit-more")
	} else if off > r.Halves[0]*(1+1e-9) && q.Distance(asked.Round(q.Dim, r.Value), exact) > 1e-9*max(1, math.Abs(exact)) {
		notes = append(notes, "last-digit")
	}
	return notes
}
