package tutor

import (
	"math"
	"strings"

	"closingside/statics/expr"
)

// praise is what is said of a right answer, with its notes.
func (w *Work) praise(q *Quantity, notes []string) string {
	parts := []string{w.Lesson.Say("feedback.correct")}
	for _, n := range notes {
		parts = append(parts, w.Lesson.Say("note."+n, "unit", w.Lesson.UnitOf(q).Symbol, "how", w.howAngle(q), "case", w.Lesson.CaseText()))
	}
	return strings.Join(parts, " ")
}

// askAbout is the question about the step where a slip sits. Where several
// slips give the same value, the question is that of the likeliest.
func (w *Work) askAbout(s Suspect) string {
	return w.Lesson.Say("slip."+s.first()+".ask", "at", w.Lesson.plain(s.At))
}

// first is the slip to ask about: the likeliest, or the first of two together.
func (s Suspect) first() string {
	first, _, _ := strings.Cut(s.Likely, "+")
	return first
}

// separable tells whether one question can tell two suspects apart: they are
// different rows, or sit at different steps.
func (w *Work) separable(a, b Suspect) bool {
	return a.Likely != b.Likely || a.At != b.At
}

// askWhich is the question that separates two suspects.
func (w *Work) askWhich(a, b Suspect) string {
	title := func(s Suspect) string { return w.Lesson.Say("slip." + s.first() + ".title") }
	return w.Lesson.Say("feedback.which", "a", title(a), "at", w.Lesson.plain(a.At), "b", title(b), "bt", w.Lesson.plain(b.At))
}

// sendTo sends the learner to the first wrong entry.
func (w *Work) sendTo(q *Quantity, from string) string {
	key := "feedback.carried"
	if w.Found(from) { // corrected since
		key = "feedback.corrected"
	}
	return w.Lesson.Say(key, "symbol", w.Lesson.plain(q.Name), "from", w.Lesson.plain(from))
}

// keepDigits says what was rounded too soon and how far that moved the value.
func (w *Work) keepDigits(q *Quantity, r *Rounded, v float64) string {
	key := "feedback.rounded"
	if r.angle {
		key = "feedback.rounded.angle"
	}
	if r.Digits == 1 {
		key += ".one"
	}
	moved := Digits{Magnitude: 1, Angle: max(0, -leading(q.gap(v, q.True)))}
	return w.Lesson.Say(key, "what", r.What, "digits", itoa(r.Digits), "keep", itoa(r.Keep),
		"moved", w.Lesson.Show(q, q.gap(v, q.True), moved), "symbol", w.Lesson.plain(q.Name))
}

// escalate adds help where the same wrong value comes again: first where to
// look, then the principle of the step, then what the formula needs.
func (w *Work) escalate(q *Quantity, r *Reply) {
	again := 0
	for i := range w.Past {
		if a := &w.Past[i]; !a.Undone && a.Quantity == q.Name && a.Verdict != Correct &&
			q.apart(a.Reading.Value, r.Reading.Value) <= 1e-9*max(1, math.Abs(r.Reading.Value)) {
			again++
		}
	}
	if again == 0 {
		return
	}
	at := q
	switch {
	case r.Verdict == Carried:
		at = w.Lesson.Quantity(r.From)
	case r.Verdict == SlipFound:
		at = w.Lesson.Quantity(r.Slips[0].At)
	}
	if at.Given { // a given misread: the step that reads it is the place to look
		at = q
	}
	parts := []string{w.Lesson.Say("feedback.again"), r.Feedback}
	if w.Settings.Hints != HelpOff {
		parts = append(parts, w.HintAt(at.Name, min(again, 3)).Sentence)
	}
	r.Feedback = strings.Join(parts, " ")
}

// bounds is what a sketch would show of a value that nothing explains.
func (w *Work) bounds(q *Quantity, v float64) string {
	lo, hi := w.limits(q)
	if math.IsNaN(lo) || math.IsNaN(hi) {
		return w.Lesson.Say("feedback.unexplained")
	}
	key := "feedback.outside"
	if inside(q, v, lo, hi) {
		key = "feedback.inside"
	}
	d := w.Settings.Answer
	return w.Lesson.Say(key, "symbol", w.Lesson.plain(q.Name), "lo", w.Lesson.Reported(q, lo, d), "hi", w.Lesson.Reported(q, hi, d))
}

// limits are the values between which a sketch shows q to lie.
func (w *Work) limits(q *Quantity) (lo, hi float64) {
	if q.Between[0] == nil {
		return math.NaN(), math.NaN()
	}
	lo, hi = expr.Eval(q.Between[0], w.Lesson.Truth), expr.Eval(q.Between[1], w.Lesson.Truth)
	if q.Turns {
		lo, hi = wrap(lo), wrap(hi)
	}
	return lo, hi
}

// inside tells whether v lies from lo to hi, counter-clockwise for a direction.
func inside(q *Quantity, v, lo, hi float64) bool {
	if q.Turns {
		return turn(v-lo) <= turn(hi-lo)
	}
	return lo <= v && v <= hi
}

// turn brings an angle into [0°, 360°).
func turn(deg float64) float64 {
	d := math.Mod(deg, 360)
	if d < 0 {
		d += 360
	}
	return d
}
