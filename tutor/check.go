package tutor

import (
	"math"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/entry"
)

// judge gives the verdict on an entry for q, without recording it.
func (w *Work) judge(q *Quantity, text string) Reply {
	r := Reply{Quantity: q.Name, Entry: text}
	reading, bad := entry.Read(text, w.scope(q))
	if bad != nil {
		r.Verdict, r.Fault, r.Feedback = Unreadable, bad, bad.Message()
		return r
	}
	r.Reading = reading
	if reading.Form == entry.Affine {
		return w.judgeAffine(q, r)
	}
	switch {
	case w.right(q, reading):
		r.Verdict, r.Notes = Correct, w.notes(q, reading)
		r.Feedback = w.praise(r.Notes)
	default:
		w.explain(q, &r)
	}
	return r
}

// right tells whether a value is correct: inside the band, or what follows
// rightly from the learner's own accepted entries as typed.
func (w *Work) right(q *Quantity, r entry.Reading) bool {
	band := w.Band(q)
	if len(r.Halves) == 0 { // an expression without rounded literals
		return q.apart(r.Value, q.True) <= 1e-6*max(1, math.Abs(q.True)) || w.follows(q, r.Value, 1e-6*math.Abs(r.Value))
	}
	return band.Holds(q, r.Value) || w.follows(q, r.Value, w.Settings.asked(q).halfUnit(q.Dim, r.Value))
}

// follows tells whether v is what a route gives from accepted entries as
// typed, to within the given half-width and the rounding on that route.
func (w *Work) follows(q *Quantity, v, half float64) bool {
	for _, route := range q.Routes {
		entered, accepted := false, true
		for _, name := range expr.Symbols(route.Tree) {
			if w.Standing(name) == nil {
				continue
			}
			entered = true
			accepted = accepted && w.Found(name)
		}
		if !entered || !accepted {
			continue
		}
		inner, ok := w.routeRounding(q, route, map[string]bool{q.Name: true})
		if value := expr.Eval(route.Tree, w.own); ok && q.apart(v, value) <= min(half+inner, limit.of(q)) {
			return true
		}
	}
	return false
}

// explain looks for the mistake behind a wrong value.
func (w *Work) explain(q *Quantity, r *Reply) {
	now := w.now(q)
	r.Slips, r.Unexplained = w.rank(q, r.Reading, now.outcomes(w.Lesson.index[q.Name]))
	if len(r.Slips) > 0 && r.Slips[0].Probability >= sureEnough {
		r.Verdict, r.Feedback = SlipFound, w.askAbout(r.Slips[0])
		return
	}
	r.Verdict, r.Feedback = Unexplained, w.bounds(q, r.Reading.Value)
}

// judgeAffine judges an entry in terms of a direction, such as 118° − θ: right
// when it has the coefficient and, modulo 360°, the constant of a route.
func (w *Work) judgeAffine(q *Quantity, r Reply) Reply {
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
			r.Verdict, r.Feedback = Correct, w.praise(nil)
			return r
		}
	}
	r.Verdict, r.Unexplained, r.Feedback = Unexplained, 1, w.Lesson.Say("feedback.affine", "in", w.Lesson.plain(r.Reading.In))
	return r
}

// notes lists what may be said of a right answer.
func (w *Work) notes(q *Quantity, r entry.Reading) []string {
	var notes []string
	if !r.UnitWritten && q.Dim == statics.DimForce {
		notes = append(notes, "unit-missing")
	}
	if len(r.Halves) == 0 {
		return notes
	}
	asked := w.Settings.asked(q)
	exact := asked.roundTo(q.Dim, q.True)
	if r.Halves[0] > asked.halfUnit(q.Dim, q.True)*(1+1e-9) && q.apart(r.Value, q.True) > 1e-9*max(1, math.Abs(q.True)) {
		notes = append(notes, "digit-more")
	} else if q.apart(asked.roundTo(q.Dim, r.Value), exact) > 1e-9*max(1, math.Abs(exact)) {
		notes = append(notes, "last-digit")
	}
	return notes
}
