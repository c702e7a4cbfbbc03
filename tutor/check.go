package tutor

import (
	"math"
	"slices"
	"unicode/utf8"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
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
	if r.Verdict != verdict.Correct && reading.Open { // the other end may be meant
		r = Reply{Quantity: q.Name, Entry: text, Verdict: verdict.Unreadable, Fault: &entry.Error{Col: 1, Len: utf8.RuneCountInString(text), Key: "entry.heading-end"}}
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
// Beyond every limit it may as well follow from a wrong one, where one stands.
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
	return (!w.beyondLimits(q, r.Value) || !w.elsewhere && !w.wrongStands()) && w.follows(q, r.Value, half) != nil
}

// beyondLimits tells whether a value lies where no band of q reaches.
func (w *Work) beyondLimits(q *lesson.Quantity, v float64) bool {
	return q.Distance(v, q.True) > max(w.limit(q), w.Band(q).Half)
}

// wrongStands tells whether an entry stands that is not right.
func (w *Work) wrongStands() bool {
	for name := range w.latest {
		if !w.Found(name) {
			return true
		}
	}
	return false
}

// unrounded tells whether an entry is an expression of givens and whole
// numbers of a formula alone, so that it must match to the last digit. A name
// stands for what was entered, rounded; a number that is no given was rounded
// on the way, unless it is a given miscopied.
func (w *Work) unrounded(r entry.Reading) bool {
	if len(r.Halves) > 0 || r.Form == entry.Number {
		return false
	}
	if expr.Contains(r.Tree, func(n expr.Node) bool {
		s, ok := n.(expr.Sym)
		return ok && !w.Lesson.Quantity(s.Name).Given
	}) {
		return false
	}
	return !slices.ContainsFunc(r.Literals, func(l entry.Literal) bool { return !w.statedAs(r, l) })
}

// statedAs tells whether a number of an expression is stated, degrees written as
// radians or gradians by mistake among them. One that a value on the way rounds
// to is that value, but for the 1 and the 2 of formulas: x² and 2·P·Q hold them
// whatever comes to 2.1.
func (w *Work) statedAs(r entry.Reading, l entry.Literal) bool {
	switch {
	case w.side(l.Value), l.Value == 1, l.Value == 2:
		return true
	case w.roundsOne(l):
		return false
	}
	if w.stated(l.Value) {
		return true
	}
	if _, angle := expr.At(r.Tree, l.Site).(expr.Ang); !angle || l.Right {
		return false
	}
	return w.stated(l.Value*math.Pi/180) || w.stated(l.Value/0.9)
}

// roundsOne tells whether a value worked out, with more digits, is written as l.
func (w *Work) roundsOne(l entry.Literal) bool {
	for i := range w.Lesson.Quantities {
		q := &w.Lesson.Quantities[i]
		if off := math.Abs(math.Abs(q.True) - l.Value); !q.Given && off <= l.Half && off > exactly*l.Value {
			return true
		}
	}
	return false
}

// side tells whether v is a side of a slope triangle that gives a direction.
func (w *Work) side(v float64) bool {
	return w.heading(func(h statics.Heading) bool {
		return h.Form == statics.Slope && (v == h.Rise || v == h.Run || v == math.Hypot(h.Rise, h.Run))
	})
}

// heading tells whether a direction of the statement is such.
func (w *Work) heading(such func(statics.Heading) bool) bool {
	return slices.ContainsFunc(w.Lesson.Problem.Items, func(it lesson.Item) bool {
		return slices.ContainsFunc(it.Fields, func(f lesson.Field) bool { return such(f.Heading) })
	})
}

// stated tells whether v is a number of the statement, one miscopied from it,
// the true value of a quantity, or a whole number that a formula holds.
func (w *Work) stated(v float64) bool {
	switch v {
	case 1, 2, 90, 180, 270, 360:
		return true
	}
	turned := func(h statics.Heading) bool { return math.Abs(lesson.Degrees(h.Turn)) == v }
	if w.side(v) || v != 0 && w.heading(turned) {
		return true
	}
	for i := range w.Lesson.Quantities {
		q := &w.Lesson.Quantities[i]
		same := func(x float64) bool { return math.Abs(math.Abs(x)-v) <= 1e-9*max(1, v) }
		if same(q.True) || q.Given && slices.ContainsFunc(slips.Miscopies(q.True), same) {
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
	if len(r.Halves) == 0 {
		return notes
	}
	asked := w.Settings.DigitsOf(q)
	exact := asked.Round(q.Dim, q.True)
	off := q.Distance(r.Value, q.True)
	if w.beyondLimits(q, r.Value) {
		return append(notes, "as-follows")
	}
	if r.Halves[0] > asked.HalfUnit(q.Dim, q.True)*(1+1e-9) && off > 1e-9*max(1, math.Abs(q.True)) {
		notes = append(notes, "digit-more")
	} else if off > r.Halves[0]*(1+1e-9) && q.Distance(asked.Round(q.Dim, r.Value), exact) > 1e-9*max(1, math.Abs(exact)) {
		notes = append(notes, "last-digit")
	}
	return notes
}
