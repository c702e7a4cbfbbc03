package tutor

import (
	"math/rand/v2"
	"testing"

	"closingside/statics/expr"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
)

// acyclic tells whether every route that a walker may take to what r reads ends
// at givens without passing through q again.
func (k *walker) acyclic(q *lesson.Quantity, r *lesson.Route, on set) bool {
	l := k.w.Lesson
	on = on.with(l.index[q.Name])
	for _, name := range expr.Symbols(r.Tree) {
		in := l.Quantity(name)
		if in.Given {
			continue
		}
		if on.has(l.index[name]) {
			return false
		}
		for j, f := range l.ready().of[l.index[name]].routes {
			if f.taken && !k.acyclic(in, &in.Routes[j], on) {
				return false
			}
		}
	}
	return true
}

// In every kind, a learner who rounds every value written on the way correctly
// is not refused, but where rounding itself goes beyond the band's limit.
func TestCorrectRoundingIsNeverRefusedInAnyKind(t *testing.T) {
	const seed = 99
	for _, kind := range kinds.All {
		t.Run(kind.Name, func(t *testing.T) {
			rng := rand.New(rand.NewPCG(seed, 1))
			entries, limited := 0, 0
			for n := range uint64(max(4, problems()/50)) {
				l, err := Open(Generate(kind, n))
				if err != nil {
					t.Fatal(err)
				}
				s := lesson.DefaultSettings()
				if n%2 == 0 {
					s.Answer, s.Work = lesson.Digits{Magnitude: 4, Angle: 2}, lesson.Digits{Magnitude: 4, Angle: 2}
				}
				for i := range l.Quantities {
					q := &l.Quantities[i]
					if q.Given || q.Equation || q.True != q.True {
						continue
					}
					for j := range q.Routes {
						k := &walker{t: t, rng: rng, w: NewWork(l, s)}
						if !k.acyclic(q, &q.Routes[j], 0) {
							continue
						}
						v := k.work(q, &q.Routes[j], n%4 < 2)
						entries++
						if k.enter(q, &q.Routes[j], v) == verdict.Correct {
							continue
						}
						if rounded := s.DigitsOf(q).Round(q.Dim, v); k.beyond || q.Distance(rounded, q.True) > k.w.limit(q) {
							limited++
							continue
						}
						t.Fatalf("seed %d: %s by %s = %v refused, true %v, band ±%v; %v", n, q.Name, q.Routes[j].ID, v, q.True, k.w.Band(q).Half, described(l, k.w))
					}
				}
			}
			t.Logf("%d entries, %d beyond the band's limit", entries, limited)
			assert.LessOrEqual(t, limited, entries/20)
		})
	}
}

// In every kind nothing outside the band is accepted, and what is inside is.
func TestNothingOutsideTheBandIsAcceptedInAnyKind(t *testing.T) {
	for _, kind := range kinds.All {
		t.Run(kind.Name, func(t *testing.T) {
			for n := range uint64(max(3, problems()/200)) {
				l, err := Open(Generate(kind, n))
				if err != nil {
					t.Fatal(err)
				}
				w := NewWork(l, lesson.DefaultSettings())
				for i := range l.Quantities {
					q := &l.Quantities[i]
					if q.Given || q.Equation || q.True != q.True {
						continue
					}
					half := w.Band(q).Half
					for _, off := range []float64{-4, -1.5, -1.01, -0.99, 0, 0.5, 0.99, 1.01, 1.5, 7} {
						v := q.True + off*half
						if q.Also == q.Also && q.Distance(v, q.Also) < 2*half {
							continue // the other solution is right too
						}
						got := w.judge(q, lesson.Digits{Magnitude: 9, Angle: 8}.Written(q.Dim, v)).Verdict
						assert.Equal(t, off >= -1 && off <= 1, got == verdict.Correct, "%s = %v, true %v ± %v, of %d", q.Name, v, q.True, half, n)
					}
				}
			}
		})
	}
}
