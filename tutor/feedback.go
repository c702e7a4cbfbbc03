package tutor

import (
	"math"
	"slices"
	"strings"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

// praise is what is said of a right answer, with its notes.
func (w *Work) praise(q *lesson.Quantity, notes []string) string {
	parts := []string{w.Lesson.Say("feedback.correct")}
	for _, n := range notes {
		parts = append(parts, w.Lesson.Say("note."+n, "unit", w.Lesson.UnitOf(q).Symbol, "how", w.howAngle(q), "case", w.Lesson.CaseText()))
	}
	return strings.Join(parts, " ")
}

// say is what is said of a value that is not right, as the verdict on it stands.
func (w *Work) say(q *lesson.Quantity, r *Reply) string {
	switch {
	case r.Verdict == verdict.Carried:
		return w.sendTo(q, r.From)
	case r.Verdict == verdict.EarlyRounding && r.perhaps && r.maybeSlip() && !w.Lesson.tooCoarse(q, r.Rounded):
		return w.askRounded(q, r)
	case r.Verdict == verdict.EarlyRounding:
		return w.keepDigits(q, r.Rounded, r.Reading.Value, r.perhaps)
	case r.Verdict == verdict.SlipFound && r.Asked && r.Chosen == Unsaid:
		return w.askWhich(r.rivals[0], r.rivals[1])
	case r.Verdict == verdict.SlipFound:
		return w.askAbout(r.Slips[0])
	case r.finds != "":
		return w.Lesson.Say("feedback.finds", "of", w.Lesson.SymbolText(r.finds), "symbol", w.Lesson.SymbolText(q.Name))
	case r.numberOff != "":
		return w.Lesson.Say("feedback.number", "number", r.numberOff)
	}
	return w.bounds(q, r.Reading.Value)
}

// askAbout is the question about the step where a slip sits. Where several
// slips give the same value, the question is that of the likeliest; of two
// together it is about the first.
func (w *Work) askAbout(s Suspect) string {
	id, at := w.first(s), w.Lesson.Quantity(s.At)
	key := "slip." + id + ".ask"
	switch {
	case at.Given && text.Has(key+".given"):
		key += ".given"
	case at.Given:
		key = "slip.any.ask.given"
	case at.Mate != "" && text.Has(key+".part"): // a rectangular one: no other stands in a right triangle
		key += ".part"
	case id == otherForce && s.same != "":
		key += ".same"
	case at.Route("triangle-sum") == nil && text.Has(key+".around"): // an angle, but none of the triangle's
		key += ".around"
	case at.IsAngle() && share(s.IDs, supplements) && text.Has(key+".supplement"):
		key += ".supplement"
	}
	ask := w.Lesson.Say(key, "at", w.Lesson.SymbolText(s.At), "where", w.where(s.At), "other", s.same)
	if s.double() {
		ask = w.Lesson.Say("feedback.two") + " " + ask
	}
	return ask
}

// supplements are the slips that give what an angle lacks of 180°, by the sine law.
var supplements = []string{"obtuse-assumed", "obtuse-missed"}

// where is the step in which a quantity is found, or read.
func (w *Work) where(name string) string {
	key := "feedback.where"
	if w.Lesson.Quantity(name).Given {
		key += ".given"
	}
	return w.Lesson.Say(key, "at", w.Lesson.SymbolText(name))
}

// first is the slip to ask about: the likeliest, or of two together the one
// that can be made where the first of them sits.
func (w *Work) first(s Suspect) string {
	a, b, two := strings.Cut(s.Likely, "+")
	if two && !w.Lesson.mayHold(s.At, a) && w.Lesson.mayHold(s.At, b) {
		return b
	}
	return a
}

// mayHold tells whether the slip called id can be made in a formula for the
// quantity called name, or in reading it.
func (l *Lesson) mayHold(name, id string) bool {
	return slices.ContainsFunc(l.variantsOf(l.index[name]), func(v variant) bool { return slices.Contains(v.ids, id) })
}

// separable tells whether one question can tell two suspects apart: they are
// different rows, or sit at different steps.
func (w *Work) separable(a, b Suspect) bool {
	return a.Likely != b.Likely || a.At != b.At
}

// askWhich is the question that separates two suspects.
func (w *Work) askWhich(a, b Suspect) string {
	key := "feedback.which"
	if a.At == b.At {
		key += ".here"
	}
	return w.Lesson.Say(key, "a", w.title(a), "where", w.where(a.At), "b", w.title(b), "elsewhere", w.where(b.At))
}

// title is what a suspect says was done, in a few words.
func (w *Work) title(s Suspect) string {
	return w.Lesson.Say("slip." + s.fitting(w.first(s)) + ".title")
}

// Told is the slip by whose title s is told where one stands for all.
func (s Suspect) Told() string {
	id, _, _ := strings.Cut(s.Likely, "+")
	return s.fitting(id)
}

// fitting is id, or what fits whichever law an angle was found by: the wrong one
// of two angles that make 180° together, for a sign in the cosine law.
func (s Suspect) fitting(id string) string {
	for _, other := range supplements {
		if id == "cosine-sign" && slices.Contains(s.IDs, other) {
			return other
		}
	}
	return id
}

// sendTo sends the learner to the first wrong entry.
func (w *Work) sendTo(q *lesson.Quantity, from string) string {
	key := "feedback.carried"
	if w.Found(from) { // corrected since
		key = "feedback.corrected"
	}
	return w.Lesson.Say(key, "symbol", w.Lesson.SymbolText(q.Name), "from", w.Lesson.SymbolText(from))
}

// keepDigits says what was rounded too soon and about how far that moved the
// value v: to the nearest of 1, 2, 5, 10 and so on, and not to which side, so that
// it shows how much but not where the value lies. The way is right, or perhaps so.
func (w *Work) keepDigits(q *lesson.Quantity, r *Rounded, v float64, perhaps bool) string {
	moved := roughly(q.FoldedDistance(v, q.True))
	symbol, way := w.Lesson.SymbolText(q.Name), "way"
	if perhaps {
		way = "perhaps"
	}
	key := "feedback.rounded"
	switch {
	case w.Lesson.tooCoarse(q, r):
		key += ".coarse"
	case r.among:
		key += ".among"
	case w.Lesson.ofItself(q, r):
		key += ".itself"
	case r.several:
		key += ".several"
	}
	return w.Lesson.Say(key, "way", w.Lesson.Say("feedback.rounded."+way), "what", r.What, "kept", r.Kept(), "keep", r.Wanted(),
		"moved", w.Lesson.Show(q, moved, lesson.Digits{Magnitude: 1, Angle: max(0, -lesson.DecimalExponent(moved))}), "symbol", symbol)
}

// askRounded asks whether it was rounding or a slip that led to a value.
func (w *Work) askRounded(q *lesson.Quantity, r *Reply) string {
	key := "feedback.rounding"
	switch {
	case r.Rounded.among:
		key += ".among"
	case w.Lesson.ofItself(q, r.Rounded):
		key += ".itself"
	}
	rounding := w.Lesson.Say(key, "what", r.Rounded.What, "kept", r.Rounded.Kept())
	return w.Lesson.Say("feedback.rounded.or", "rounding", rounding, "slip", w.title(r.Slips[0]), "where", w.where(r.Slips[0].At))
}

// tooCoarse tells whether a value itself was kept to one digit, which fits many
// wrong ways, too.
func (l *Lesson) tooCoarse(q *lesson.Quantity, r *Rounded) bool {
	return l.ofItself(q, r) && r.Digits == 1 && !r.angle
}

// ofItself tells whether it is q's own value that was kept to few digits.
func (l *Lesson) ofItself(q *lesson.Quantity, r *Rounded) bool { return r.What == l.SymbolText(q.Name) }

// Heading is the verdict on an entry in a word or two.
func (l *Lesson) Heading(r *Reply) string {
	key := "verdict." + r.Verdict.String()
	switch {
	case r.Verdict != verdict.EarlyRounding:
	case l.tooCoarse(l.Quantity(r.Quantity), r.Rounded):
		key += ".coarse"
	case r.perhaps:
		key += ".perhaps"
	}
	return l.Say(key)
}

// roughly is x > 0 to the nearest of 1, 2 and 5 times a power of ten.
func roughly(x float64) float64 {
	unit := math.Pow10(lesson.DecimalExponent(x))
	switch m := x / unit; {
	case m < 1.5:
		return unit
	case m < 3.5:
		return 2 * unit
	case m < 7.5:
		return 5 * unit
	}
	return 10 * unit
}

// bounds is what a sketch would show of a value that nothing explains.
func (w *Work) bounds(q *lesson.Quantity, v float64) string {
	lo, hi := w.Limits(q)
	if v < 0 && (q.Mass != "" || lo >= 0 && !q.IsAngle()) {
		return w.Lesson.Say("feedback.negative", "symbol", w.Lesson.SymbolText(q.Name))
	}
	if math.IsNaN(lo) || math.IsNaN(hi) {
		return w.Lesson.Say("feedback.unexplained")
	}
	lo, hi = seen(q, lo, math.Floor), seen(q, hi, math.Ceil)
	key := "feedback.outside"
	switch in := q.Within(v, lo, hi); {
	case in && q.Signed:
		key = "feedback.inside.part"
	case in && q.IsAngle() && lo == 0 && (hi == 90 || hi == 180): // any such angle is
		key = "feedback.inside.angle"
	case in:
		key = "feedback.inside"
	}
	if q.Turns && (!q.IsReported() || w.Settings.Direction.As == lesson.FromX) { // as one turns from the one to the other
		hi = lo + lesson.Wrap360(hi-lo)
	}
	return w.Lesson.Say(key, "symbol", w.Lesson.SymbolText(q.Name), "lo", w.bound(q, lo), "hi", w.bound(q, hi), "middle", w.bound(q, (lo+hi)/2))
}

// seen is a limit as a sketch shows it, rounded outwards (by math.Floor or
// math.Ceil): a size to two digits, an angle to whole degrees.
func seen(q *lesson.Quantity, v float64, outwards func(float64) float64) float64 {
	unit := 1.0
	if !q.IsAngle() {
		unit = math.Pow10(lesson.DecimalExponent(v) - 1)
	}
	n := v / unit
	if near := math.Round(n); math.Abs(n-near) <= 1e-9 {
		n = near
	}
	return outwards(n) * unit
}

// bound is such a limit, in words.
func (w *Work) bound(q *lesson.Quantity, v float64) string {
	d := lesson.Digits{Magnitude: 2}
	if v == 0 {
		d.Magnitude = 1
	}
	return w.Lesson.Reported(q, v, d)
}

// Limits are the values between which a sketch shows q to lie, as far as they
// follow from what is given or found: they must not tell another value.
func (w *Work) Limits(q *lesson.Quantity) (lo, hi float64) {
	if q.Between[0] == nil {
		return math.NaN(), math.NaN()
	}
	lo, hi = expr.Eval(q.Between[0], w.accepted), expr.Eval(q.Between[1], w.accepted)
	switch {
	case q.Turns:
		lo, hi = lesson.Wrap(lo), lesson.Wrap(hi)
	case q.IsAngle() && math.IsNaN(hi): // any angle of a triangle
		hi = 180
	}
	return lo, hi
}
