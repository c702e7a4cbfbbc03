package tutor

import (
	"math"
	"strconv"

	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

// escalate adds help where the same wrong value comes again, before the
// question: first where to look, then the principle of the step, what it takes,
// and ways to look at it afresh. It never says the same twice.
func (w *Work) escalate(q *lesson.Quantity, r *Reply) {
	again := w.times(q, r)
	if again == 0 {
		return
	}
	helps := w.helps(w.place(q, r), r)
	came := w.Lesson.Say("feedback.again")
	if again > len(helps) {
		came = w.Lesson.Say("feedback.again.times", "n", strconv.Itoa(again+1))
	}
	r.help = came + " " + helps[min(again, len(helps))-1]
	r.Feedback = r.help + " " + r.Feedback
}

// times is how often the value of r was entered for q before, and refused.
func (w *Work) times(q *lesson.Quantity, r *Reply) int {
	n := 0
	for i := range w.Past {
		if a := &w.Past[i]; !a.Undone && a.Quantity == q.Name && a.Verdict != verdict.Correct && sameEntry(q, &r.Reading, &a.Reading) {
			n++
		}
	}
	return n
}

// sameEntry tells whether two readings for q are of the same value.
func sameEntry(q *lesson.Quantity, a, b *entry.Reading) bool {
	switch {
	case q.Equation:
		return a.Tree == b.Tree && a.Right == b.Right
	case a.Form == entry.Affine || b.Form == entry.Affine:
		return a.Form == b.Form && a.In == b.In && a.Coef == b.Coef && q.Distance(a.Const, b.Const) <= 1e-9
	}
	return q.Distance(a.Value, b.Value) <= 1e-9*max(1, math.Abs(b.Value))
}

// place is the quantity at whose step help begins.
func (w *Work) place(q *lesson.Quantity, r *Reply) *lesson.Quantity {
	at := q
	switch {
	case r.Verdict == verdict.Carried:
		at = w.Lesson.Quantity(r.From)
	case r.Verdict == verdict.SlipFound:
		at = w.Lesson.Quantity(r.Slips[0].At)
	}
	if at.Given { // a given misread: the step that reads it is the place to look
		return q
	}
	return at
}

// helps lists what is said, one after the other, where a value is repeated.
func (w *Work) helps(at *lesson.Quantity, r *Reply) []string {
	var all []string
	rounded := r.Verdict == verdict.EarlyRounding
	short := rounded && w.Lesson.ofItself(w.Lesson.Quantity(r.Quantity), r.Rounded)
	if short {
		all = append(all, w.Lesson.Say("feedback.again.write", "keep", r.Rounded.Wanted(), "at", r.Rounded.What))
	}
	if rounded && r.perhaps {
		all = append(all, w.Lesson.Say("feedback.again.keep.if"))
	}
	switch {
	case short && !r.perhaps:
	case rounded && !r.perhaps:
		all = append(all, w.Lesson.Say("feedback.again.keep"), w.Lesson.Say("feedback.again.memory"))
	case w.Settings.Hints != lesson.HelpOff:
		all = append(all, w.HintAt(at.Name, 1).Sentence, w.HintAt(at.Name, 2).Sentence)
		if s := w.takes(at); s != "" && !at.Equation && r.Reading.Form != entry.Affine {
			all = append(all, s)
		}
	}
	for _, key := range []string{"fresh", "numbers", "stand"} {
		all = append(all, w.Lesson.Say("feedback.again."+key, "at", w.Lesson.SymbolText(at.Name)))
	}
	return all
}

// takes says which values the step for q takes and which of them is still to be
// found; "" where it takes none.
func (w *Work) takes(q *lesson.Quantity) string {
	r := w.nearest(q)
	var all, open []string
	for _, name := range expr.Symbols(r.Tree) {
		all = append(all, w.Lesson.SymbolText(name))
		if !w.Lesson.Quantity(name).Given && !w.Found(name) {
			open = append(open, w.Lesson.SymbolText(name))
		}
	}
	if len(all) == 0 {
		return ""
	}
	key := "feedback.again.takes"
	if len(open) > 0 {
		key += ".open"
	}
	return w.Lesson.Say(key, "at", w.Lesson.SymbolText(q.Name), "all", text.List(all), "open", text.List(open))
}
