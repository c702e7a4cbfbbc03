package writing

import "closingside/tutor/lesson"

// Habit is the mix of learners who keep full precision on the way, 4 digits
// and 3 digits.
type Habit struct{ Full, Four, Three float64 }

// Who writes a value down finely has rarely kept fewer digits on the way
// (judgement).
var (
	habitFine   = Habit{0.64, 0.30, 0.06} // writes 4 digits or more, hundredths of a degree
	habitCoarse = Habit{0.50, 0.25, 0.25} // writes fewer

	Rounder = Habit{0.64, 0.26, 0.10} // has rounded a value too soon, and so rather others too
)

// HabitFor is the mix among those who write a value of q as v ± half.
func HabitFor(q *lesson.Quantity, v, half float64) Habit {
	if half <= habits[0].HalfUnit(q.Dim, v)*(1+1e-9) {
		return habitFine
	}
	return habitCoarse
}

// Given is the mix h after what was seen, which has such likelihoods (of any
// size); none at all leaves it.
func (h Habit) Given(seen Habit) Habit {
	h = h.And(seen)
	sum := h.Full + h.Four + h.Three
	return Habit{h.Full / sum, h.Four / sum, h.Three / sum}
}

// And is what two say together, of any size.
func (h Habit) And(o Habit) Habit {
	return Habit{h.Full * o.Full, h.Four * o.Four, h.Three * o.Three}
}

// Against is each share against the largest, none less than least; false where
// there is nothing.
func (h Habit) Against(least float64) (Habit, bool) {
	most := max(h.Full, h.Four, h.Three)
	if !(most > 0) {
		return Habit{}, false
	}
	return Habit{max(least, h.Full/most), max(least, h.Four/most), max(least, h.Three/most)}, true
}

// Chances are those of v ± half for a value x under each habit alone.
func Chances(q *lesson.Quantity, v, half, x float64, blur Spread) Habit {
	by := func(h Habit) float64 { return h.Chance(q, v, half, x, blur) }
	return Habit{by(Habit{Full: 1}), by(Habit{Four: 1}), by(Habit{Three: 1})}
}

// Plus adds so much of o.
func (h Habit) Plus(share float64, o Habit) Habit {
	return Habit{h.Full + share*o.Full, h.Four + share*o.Four, h.Three + share*o.Three}
}

// Chance is the probability that x, with its spread, is typed as v ± half.
func (h Habit) Chance(q *lesson.Quantity, v, half, x float64, s Spread) float64 {
	d := q.FoldedDistance(v, x)
	switch {
	case s.exact:
		return within(d <= half*(1+1e-9))
	case Unrounded(q, v, half):
		return s.worked(q, v, half, x, typed(q, v, x, half))
	}
	inside := typed(q, v, x, half)
	full := s.worked(q, v, half, x, inside)
	return h.Full*full + h.Four*blurred(d, half, s.four, inside) + h.Three*blurred(d, half, s.three, inside)
}
