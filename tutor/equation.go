package tutor

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/balance"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// A quantity that is an equation (Quantity.Equation) is a sum that is zero. Its
// routes write the sum out; its true value is zero. What a learner enters for
// it is an equation, right when it is a consequence of the lesson's: written as
// a sum of products of unknowns that is zero, it is a combination of theirs,
// coefficient by coefficient, as closely as the numbers in it were typed. So it
// may be scaled, rearranged, belong to another pair of axes, or hold the value
// of an unknown that was found before.

// judgeEquation gives the verdict on an equation.
func (w *Work) judgeEquation(q *lesson.Quantity, r *Reply) {
	views := w.views()
	entered := views[0].entered(&r.Reading)
	switch {
	case entered == nil:
		w.unlike(q, r, "feedback.equation.form")
		return
	case entered.Size <= balance.Tolerance*w.largest():
		w.unlike(q, r, "feedback.equation.nothing")
		return
	}
	for _, v := range views {
		if e := v.entered(&r.Reading); e != nil && v.holds(e) {
			w.accept(q, r, v, e)
			return
		}
	}
	w.explainEquation(q, r, views)
}

// accept is the verdict on an equation that holds under a view.
func (w *Work) accept(q *lesson.Quantity, r *Reply, v *view, e *balance.Equation) {
	symbol := w.Lesson.SymbolText(q.Name)
	switch same := w.repeats(q, v, e); {
	case same != "":
		w.unlike(q, r, "feedback.equation.repeated", "other", w.Lesson.SymbolText(same))
	case v.from != "":
		r.Verdict, r.From = verdict.Carried, v.from
		r.Feedback = w.Lesson.Say("feedback.carried", "symbol", symbol, "from", w.Lesson.SymbolText(v.from))
		w.escalate(q, r)
	default:
		r.Verdict = verdict.Correct
		if coarse(w, &r.Reading) || !v.holds(v.entered(asWritten(&r.Reading))) {
			r.Notes = []string{"digit-more"}
		}
		r.Feedback = w.Lesson.Say("feedback.equation.correct")
		for _, n := range r.Notes {
			r.Feedback += " " + w.Lesson.Say("note.equation."+n)
		}
	}
}

// unlike is the verdict on an equation that nothing explains.
func (w *Work) unlike(q *lesson.Quantity, r *Reply, key string, holes ...string) {
	r.Verdict, r.Unexplained, r.Feedback = verdict.Unexplained, 1, w.Lesson.Say(key, holes...)
	w.escalate(q, r)
}

// repeats is another equation the learner has already, of which e is but a
// multiple; "" where there is none.
func (w *Work) repeats(q *lesson.Quantity, v *view, e *balance.Equation) string {
	for i := range w.Lesson.Quantities {
		o := &w.Lesson.Quantities[i]
		if !o.Equation || o == q || !w.Found(o.Name) {
			continue
		}
		if before := v.entered(&w.Standing(o.Name).Reading); before != nil && before.Size > 0 && e.MultipleOf(before) && !w.apart(e, before) {
			return o.Name
		}
	}
	return ""
}

// apart tells whether two equations that say the same are the two sums all the same,
// with an unknown at its value: of 1084.9 cos 40 = T₂ cos 30 along x and 1084.9 sin 40
// + T₂ sin 30 = 1177.2 along y each gives T₂.
func (w *Work) apart(e, before *balance.Equation) bool {
	for i := range w.Lesson.Quantities {
		if !w.Lesson.Quantities[i].Unknown {
			continue
		}
		v := &view{w: w, paper: set(0).with(i)}
		sums := v.lesson()
		if len(sums) == 2 && (e.Equals(sums[0]) && before.Equals(sums[1]) || e.Equals(sums[1]) && before.Equals(sums[0])) {
			return true
		}
	}
	return false
}

// coarseDigits are so few, in a number of an equation, that one more is asked.
const coarseDigits = 2

// mayBeOff is by how much a number of an equation that holds may be off: half a
// unit of its last digit, as far as that lets no other number pass. What the
// statement gives and the whole numbers of a formula (see stated) are exact. A whole
// number is held to half a percent, slack and all: 32 for 32.2 is another g.
func mayBeOff(l entry.Literal) float64 {
	most := balance.LiteralTolerance * l.Value
	if l.Decimals == 0 {
		most /= balance.Slack
	}
	return min(max(l.Half, l.Coarse/balance.Slack), most)
}

// roundedFar is by how much a number may be off that was rounded further than
// an equation allows: as far as any rounding is followed.
func roundedFar(l entry.Literal) float64 { return min(l.Half, limit.rel*l.Value) }

// literals is the uncertainty of the numbers on one side of an equation.
func (w *Work) literals(r *entry.Reading, right bool, off func(entry.Literal) float64) func(site int) float64 {
	return func(site int) float64 {
		for _, l := range r.Literals {
			if l.Site == site && l.Right == right && !w.stated(l.Value) {
				return off(l)
			}
		}
		return 0
	}
}

// roundedTooSoon is the number behind which an equation, else right, was rounded
// too far; nil where there is none. Slips are looked for first.
func (w *Work) roundedTooSoon(r *entry.Reading, views []*view) *Rounded {
	var most *entry.Literal
	for i := range r.Literals {
		if l := &r.Literals[i]; w.mayBeRounded(l) && (most == nil || l.Half*most.Value > most.Half*l.Value) {
			most = l
		}
	}
	holds := func(v *view) bool {
		e := v.enteredAs(r, roundedFar)
		return v.from == "" && e != nil && v.holds(e)
	}
	if most == nil || !slices.ContainsFunc(views, holds) {
		return nil
	}
	return &Rounded{What: expr.FormatNumber(most.Value, most.Digits), Digits: most.Digits, Keep: max(w.Settings.Work.Magnitude, most.Digits+1)}
}

// coarse tells whether an equation holds a number of so few digits that the
// answer suffers.
func coarse(w *Work, r *entry.Reading) bool {
	return slices.ContainsFunc(r.Literals, func(l entry.Literal) bool {
		return w.mayBeRounded(&l) && l.Decimals > 0 && l.Digits <= coarseDigits
	})
}

// mayBeRounded tells whether a number of an equation may be a rounded one: it is not
// stated, nor the very sine or cosine of a direction that is: 0.5 of 30°, 0.8 of 3:4.
func (w *Work) mayBeRounded(l *entry.Literal) bool {
	exact := func(h statics.Heading) bool {
		sin, cos := math.Sincos(float64(h.Angle()))
		return math.Abs(math.Abs(sin)-l.Value) <= 1e-9 || math.Abs(math.Abs(cos)-l.Value) <= 1e-9
	}
	return !w.stated(l.Value) && !w.heading(exact)
}

// asWritten is an equation whose numbers are known to their last digit, final
// zeros among them.
func asWritten(r *entry.Reading) *entry.Reading {
	fine := *r
	fine.Literals = slices.Clone(r.Literals)
	for i := range fine.Literals {
		fine.Literals[i].Coarse = fine.Literals[i].Half
	}
	return &fine
}
