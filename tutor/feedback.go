package tutor

import (
	"math"
	"strings"

	"closingside/statics/expr"
)

// praise is what is said of a right answer, with its notes.
func (w *Work) praise(notes []string) string {
	parts := []string{w.Lesson.Say("feedback.correct")}
	for _, n := range notes {
		parts = append(parts, w.Lesson.Say("note."+n, "unit", w.Lesson.Unit.Symbol))
	}
	return strings.Join(parts, " ")
}

// askAbout is the question about the step where a slip sits. Where several
// slips give the same value, the likeliest row's question serves for all.
func (w *Work) askAbout(s Suspect) string {
	best := s.IDs[0]
	weight := -1.0
	for _, id := range s.IDs {
		first, _, _ := strings.Cut(id, "+")
		if p := slipByID(first).Prior; p > weight {
			best, weight = first, p
		}
	}
	at := w.Lesson.Quantity(s.At)
	return w.Lesson.Say("slip."+best+".ask", "at", w.Lesson.plain(s.At), "what", w.Lesson.Sentence(at, "what"))
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
	return w.Lesson.Say(key, "symbol", w.Lesson.plain(q.Name), "lo", w.Lesson.Show(q, lo, d), "hi", w.Lesson.Show(q, hi, d))
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
