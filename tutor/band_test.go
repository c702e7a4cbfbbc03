package tutor

import (
	"math"
	"math/rand/v2"
	"strconv"
	"testing"

	"closingside/statics/expr"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A learner who takes any route, and rounds every value written on the way
// correctly, is never refused: at 3 and at 4 digits, every step entered or
// done in the head. Where the limit of the band cuts off what rounding can
// produce (a sine near 1 above all), refusal is not the learner's fault but
// the route's: those are counted apart, and are said to be rounding.
func TestCorrectRoundingIsNeverRefused(t *testing.T) {
	const seed = 20261125
	for _, digits := range []int{3, 4} {
		for _, enter := range []bool{true, false} {
			t.Run(strconv.Itoa(digits)+" digits, steps entered "+strconv.FormatBool(enter), func(t *testing.T) {
				rng := rand.New(rand.NewPCG(seed, uint64(digits)))
				entries, limited, accused, silent := 0, 0, 0, 0
				for range problems() / 4 {
					l := randomLesson(t, rng)
					s := lesson.DefaultSettings()
					s.Work = lesson.Digits{Magnitude: digits, Angle: digits - 2}
					s.Answer = lesson.Digits{Magnitude: digits, Angle: digits - 2}
					for i := range l.Quantities {
						q := &l.Quantities[i]
						if q.Given {
							continue
						}
						for j := range q.Routes {
							k := &walker{t: t, rng: rng, w: NewWork(l, s)}
							v := k.work(q, &q.Routes[j], enter)
							entries++
							if k.enter(q, &q.Routes[j], v) == verdict.Correct {
								continue
							}
							if rounded := s.DigitsOf(q).Round(q.Dim, v); k.beyond || q.Distance(rounded, q.True) > k.w.limit(q) {
								limited++
								switch k.w.Past[len(k.w.Past)-1].Verdict {
								case verdict.SlipFound:
									accused++
								case verdict.Unexplained:
									silent++
								}
								continue
							}
							t.Fatalf("seed %d: %s by %s = %v refused, true %v, band ±%v; %v", seed, q.Name, q.Routes[j].ID, v, q.True,
								k.w.Band(q).Half, described(l, k.w))
						}
					}
				}
				t.Logf("%d entries, %d beyond the band's limit: %d called a slip, %d unexplained, the others rounding", entries, limited, accused, silent)
				assert.Less(t, limited, entries/20)
				assert.LessOrEqual(t, accused, max(1, entries/10000), "a slip named where correct rounding did it")
				assert.LessOrEqual(t, silent, entries/2000)
			})
		}
	}
}

func described(l *Lesson, w *Work) string {
	s := ""
	for _, q := range l.Quantities {
		if q.Given {
			s += q.Name + "=" + strconv.FormatFloat(q.True, 'g', -1, 64) + " "
		}
	}
	for _, a := range w.Past {
		s += a.Quantity + ":" + a.Entry + "(" + a.Verdict.String() + ") "
	}
	return s
}

// loose works q by route j with every written value off by a random share of
// half a unit, as sway counts it.
func loose(w *Work, rng *rand.Rand, i, j int, on set) float64 {
	q := &w.Lesson.Quantities[i]
	values := make(map[string]float64)
	for _, name := range expr.Symbols(q.Routes[j].Tree) {
		k := w.Lesson.index[name]
		in := &w.Lesson.Quantities[k]
		if in.Given {
			values[name] = in.True
			continue
		}
		if on.has(k) {
			return math.NaN()
		}
		var taken []int
		for r, f := range w.Lesson.ready().of[k].routes {
			if f.taken {
				taken = append(taken, r)
			}
		}
		v := loose(w, rng, k, taken[rng.IntN(len(taken))], on.with(k))
		values[name] = v + jitter(rng)*w.Settings.Work.HalfUnit(in.Dim, in.True)
	}
	return expr.EvalEach(q.Routes[j].Tree, func(name string) float64 { return values[name] }, func(n expr.Node, site int, v float64) float64 {
		if site == 0 {
			return v
		}
		return v + jitter(rng)*w.Settings.Work.HalfUnit(w.Lesson.dimension(n), v)
	})
}

func jitter(rng *rand.Rand) float64 { return 2*rng.Float64() - 1 }

// The band is at most twice as wide as the extremes of random roundings (or
// its floor), never beyond its limits, and nothing outside it is accepted.
func TestTheBandIsNoWiderThanRoundingNeeds(t *testing.T) {
	const seed, roundings = 77, 10_000
	rng := rand.New(rand.NewPCG(seed, 1))
	widest := 0.0
	for range max(3, problems()/330) {
		l := randomLesson(t, rng)
		w := NewWork(l, lesson.DefaultSettings())
		for i := range l.Quantities {
			q := &l.Quantities[i]
			if q.Given {
				continue
			}
			extreme := 0.0
			for j := range q.Routes {
				for range roundings {
					if v := loose(w, rng, i, j, set(0).with(i)); v == v {
						extreme = max(extreme, q.Distance(v, q.True))
					}
				}
			}
			asked := w.Settings.DigitsOf(q).HalfUnit(q.Dim, q.True)
			floor := floorWork
			if q.Answer {
				floor = floorAnswer
			}
			least := max(floor.of(q), asked)
			if q.Signed {
				least = max(least, w.Settings.DigitsOf(q).HalfUnit(q.Dim, w.largest()))
			}
			half := w.Band(q).Half
			if half > least*(1+1e-9) {
				widest = max(widest, half/(extreme+asked))
				assert.LessOrEqual(t, half, 2*(extreme+asked), "seed %d: %s, %s", seed, q.Name, described(l, w))
			}
			assert.LessOrEqual(t, half, max(w.limit(q), least)*(1+1e-9), q.Name)
		}
	}
	t.Logf("band at most %.2f times the extremes", widest)
}

func TestNothingOutsideTheBandIsAccepted(t *testing.T) {
	const seed = 5
	rng := rand.New(rand.NewPCG(seed, 1))
	for n := range problems() {
		l := randomLesson(t, rng)
		w := NewWork(l, lesson.DefaultSettings())
		accepted := func(q *lesson.Quantity, v float64) bool {
			text := strconv.FormatFloat(v, 'f', 8, 64)
			if n%40 == 0 { // by what is answered, which takes a hundred times as long
				return w.judge(q, text).Verdict == verdict.Correct
			}
			r, bad := w.Read(q.Name, text)
			require.Nil(t, bad)
			return w.right(q, r)
		}
		for i := range l.Quantities {
			q := &l.Quantities[i]
			if q.Given {
				continue
			}
			half := w.Band(q).Half
			for _, off := range []float64{-4, -1.01, -0.99, 0, 0.5, 1.01, 1.5} {
				v := q.True + off*half
				require.Equal(t, math.Abs(off) < 1, accepted(q, v), "seed %d, problem %d: %s = %v, true %v ± %v", seed, n, q.Name, v, q.True, half)
			}
		}
	}
}

// Rounding carries a cosine over a power of ten, where its digits are coarser
// than those of the true one: found among 100,000 random problems.
func TestRoundingOverAPowerOfTenIsNotRefused(t *testing.T) {
	rows := []struct {
		digits         int
		m1, m2, d1, d2 int
		entered        [][2]string
	}{
		{3, 943, 762, 132, 34, [][2]string{{"F1x", "-631"}, {"F2x", "632"}, {"F1y", "701"}, {"F2y", "426"}, {"Ry", "1130"}, {"R", "1130"}, {"theta", "89.9"}, {"Rx", "1.98"}}},
		{4, 297, 118, 29, -79, [][2]string{{"R", "283.7"}, {"phi", "108.00"}, {"gamma", "72.00"}, {"alpha", "84.75"}, {"theta", "5.75"}, {"Ry", "28.43"}}},
	}
	for _, r := range rows {
		l, ok := randomPair(t, r.m1, r.m2, r.d1, r.d2)
		require.True(t, ok)
		s := lesson.DefaultSettings()
		s.Answer, s.Work = lesson.Digits{Magnitude: r.digits, Angle: r.digits - 2}, lesson.Digits{Magnitude: r.digits, Angle: r.digits - 2}
		w := NewWork(l, s)
		for _, e := range r.entered {
			assert.Equal(t, verdict.Correct, w.Enter(e[0], e[1]).Verdict, "%s = %s, band ±%v", e[0], e[1], w.Band(l.Quantity(e[0])).Half)
		}
	}
}

// A component that follows from its force alone is held to its own size: however
// large the other forces are, and whichever way its direction is given.
func TestAComponentOfOneForceIsHeldToItsOwnSize(t *testing.T) {
	small := kinds.MissingForceSource("", kinds.ForceSource("A", "12 kip", "64 deg"), kinds.MissingSource("B"), kinds.ResultantSource("1.5 kip", "-11 deg")) // Ry = 1.5 sin(−11°) = −0.28621
	upright := kinds.ComponentsSource("", "F", "400 N", "89 deg above -x")                                                                                   // Fx = −400 cos 89° = −6.9810
	for _, row := range []struct {
		problem         lesson.Source
		quantity, entry string
		right           bool
	}{
		{small, "Ry", "-0.2862", true}, {small, "Ry", "-0.286", true}, {small, "Ry", "-0.2800", false}, {small, "Ry", "-0.2916", false}, {small, "Ry", "-0.2920", false},
		{upright, "Fx", "-6.981", true}, {upright, "Fx", "-6.98", true}, {upright, "Fx", "-7.3", false},
	} {
		got := NewWork(solvedBy(t, row.problem), lesson.DefaultSettings()).Enter(row.quantity, row.entry)
		assert.Equal(t, row.right, got.Verdict == verdict.Correct, row.entry)
	}
}
