package tutor

import (
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// habit is the mix of learners who keep full precision on the way, 4 digits
// and 3 digits.
type habit struct{ full, four, three float64 }

// Who writes a value down finely has rarely kept fewer digits on the way
// (judgement).
var (
	habitFine   = habit{0.64, 0.30, 0.06} // writes 4 digits or more, hundredths of a degree
	habitCoarse = habit{0.50, 0.25, 0.25} // writes fewer

	habitRounder = habit{0.55, 0.25, 0.20} // has rounded one value too soon, and so maybe others
)

// habitOf is the mix for a value of q written as v ± half, by a learner whose
// accepted entries lean to some habit.
func (s *state) habitOf(q *lesson.Quantity, v, half float64) habit {
	if half <= habits[0].HalfUnit(q.Dim, v)*(1+1e-9) {
		return habitFine.given(s.leaning)
	}
	return habitCoarse.given(s.leaning)
}

// given is the mix h after what was seen, which has such likelihoods (of any
// size); none at all leaves it.
func (h habit) given(seen habit) habit {
	h = habit{h.full * seen.full, h.four * seen.four, h.three * seen.three}
	sum := h.full + h.four + h.three
	return habit{h.full / sum, h.four / sum, h.three / sum}
}

// leastSeen is how little an entry may speak for a habit, against the one it
// speaks for most: it may have come about by a way we do not follow (judgement).
const leastSeen = 0.1

// seen is what an entry for q that is right says of the digits kept on the way:
// how likely it is under each habit, worked from what was entered before.
func (s *state) seen(q *lesson.Quantity, r entry.Reading) habit {
	none := habit{1, 1, 1}
	if r.Form != entry.Number || len(r.Halves) == 0 || q.Equation {
		return none
	}
	var sum habit
	v, half := r.Value, r.Halves[0]
	i := s.w.Lesson.index[q.Name]
	for j := range q.Routes {
		f := &s.w.Lesson.ready().of[i].routes[j]
		blur := s.blurringFrom(s.own).last(f.prog).spread()
		x := f.prog.Run(s.own, &s.tape)
		by := func(h habit) float64 { return f.share * h.chance(q, v, half, x, blur, false) }
		sum = habit{sum.full + by(habit{full: 1}), sum.four + by(habit{four: 1}), sum.three + by(habit{three: 1})}
	}
	most := max(sum.full, sum.four, sum.three)
	if !(most > 0) {
		return none
	}
	return habit{max(leastSeen, sum.full/most), max(leastSeen, sum.four/most), max(leastSeen, sum.three/most)}
}

// leaning is what all right entries that stand say together.
func (w *Work) leaning() habit {
	all := habit{1, 1, 1}
	for i := range w.Lesson.Quantities {
		if a := w.Standing(w.Lesson.Quantities[i].Name); a != nil && a.Verdict == verdict.Correct && a.seen != (habit{}) {
			all = habit{all.full * a.seen.full, all.four * a.seen.four, all.three * a.seen.three}
		}
	}
	most := max(all.full, all.four, all.three)
	return habit{max(leastLeaning, all.full/most), max(leastLeaning, all.four/most), max(leastLeaning, all.three/most)}
}

// leastLeaning bounds what all of them say together (judgement).
const leastLeaning = 0.03
