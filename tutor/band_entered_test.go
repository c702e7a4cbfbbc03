package tutor

import (
	"math/rand/v2"
	"strconv"
	"testing"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// A learner who enters every value on the way, rounded correctly to the digits
// asked, and keys each formula in at once, is never refused: not by any route,
// not at three digits, not beyond any limit, for each value follows from those
// entered before it. (Who rounds inside the formulas, too, may be carried beyond
// the limits: TestCorrectRoundingIsNeverRefused.)
func TestWhoEntersEveryValueIsNeverRefused(t *testing.T) {
	const seed = 20261128
	settings := func(digits int) lesson.Settings {
		s := lesson.DefaultSettings()
		s.Work = lesson.Digits{Magnitude: digits, Angle: digits - 2}
		s.Answer = s.Work
		return s
	}
	for _, digits := range []int{3, 4} {
		t.Run("any two forces "+strconv.Itoa(digits), func(t *testing.T) {
			rng := rand.New(rand.NewPCG(seed, uint64(digits)))
			entries := 0
			for range problems() / 4 {
				entries += enterByEveryRoute(t, rng, randomLesson(t, rng), settings(digits))
			}
			t.Logf("%d entries", entries)
		})
	}
	for _, kind := range kinds.All {
		for _, digits := range []int{3, 4} {
			t.Run(kind.Name+" "+strconv.Itoa(digits), func(t *testing.T) {
				rng := rand.New(rand.NewPCG(seed, uint64(digits)))
				entries := 0
				for n := range uint64(max(4, problems()/50)) {
					l, err := Open(Generate(kind, n))
					if err != nil {
						t.Fatal(err)
					}
					entries += enterByEveryRoute(t, rng, l, settings(digits))
				}
				t.Logf("%d entries", entries)
			})
		}
	}
}

// enterByEveryRoute lets a learner find and enter every quantity by each of its
// routes, on a new sheet each time, and returns how many were entered last.
func enterByEveryRoute(t *testing.T, rng *rand.Rand, l *Lesson, s lesson.Settings) (entries int) {
	for i := range l.Quantities {
		q := &l.Quantities[i]
		if q.Given || q.Equation || q.True != q.True {
			continue
		}
		for j := range q.Routes {
			k := &walker{t: t, rng: rng, w: NewWork(l, s), keyed: true}
			if !k.acyclic(q, &q.Routes[j], 0) {
				continue
			}
			k.enter(q, &q.Routes[j], k.work(q, &q.Routes[j], true))
			for _, r := range k.w.Past {
				entries++
				if r.Verdict != verdict.Correct {
					t.Fatalf("%s by %s: %s; %v", q.Name, q.Routes[j].ID, r.Feedback, described(l, k.w))
				}
			}
		}
	}
	return entries
}
