package tutor

import (
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
	"closingside/tutor/writing"
)

// habitOf is the mix for a value of q written as v ± half, by a learner whose
// accepted entries lean to some habit.
func (s *state) habitOf(q *lesson.Quantity, v, half float64) writing.Habit {
	return writing.HabitFor(q, v, half).Given(s.leaning)
}

// leastSeen is how little an entry may speak for a habit, against the one it
// speaks for most: it may have come about by a way we do not follow (judgement).
const leastSeen = 0.1

// seen is what an entry for q that is right says of the digits kept on the way:
// how likely it is under each habit, worked from what was entered before.
func (s *state) seen(q *lesson.Quantity, r entry.Reading) writing.Habit {
	none := writing.Habit{Full: 1, Four: 1, Three: 1}
	if r.Form != entry.Number || len(r.Halves) == 0 || q.Equation {
		return none
	}
	var sum writing.Habit
	v, half := r.Value, r.Halves[0]
	i := s.w.Lesson.index[q.Name]
	for j := range q.Routes {
		f := &s.w.Lesson.ready().of[i].routes[j]
		blur := s.blurringFrom(s.own).last(f.prog).Spread()
		x := f.prog.Run(s.own, &s.tape)
		sum = sum.Plus(f.share, writing.Chances(q, v, half, x, blur))
	}
	if seen, any := sum.Against(leastSeen); any {
		return seen
	}
	return none
}

// leaning is what all right entries that stand say together.
func (w *Work) leaning() writing.Habit {
	all := writing.Habit{Full: 1, Four: 1, Three: 1}
	for i := range w.Lesson.Quantities {
		if a := w.Standing(w.Lesson.Quantities[i].Name); a != nil && a.Verdict == verdict.Correct && a.seen != (writing.Habit{}) {
			all = all.And(a.seen)
		}
	}
	leaning, _ := all.Against(leastLeaning)
	return leaning
}

// leastLeaning bounds what all of them say together (judgement).
const leastLeaning = 0.03
