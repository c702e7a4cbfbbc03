package tutor

import (
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/spatial/r2"
	"pgregory.net/rapid"
)

func sketchOf(t testing.TB, l *Lesson) *Sketch {
	t.Helper()
	s := NewWork(l, lesson.DefaultSettings()).Sketch()
	require.NotNil(t, s)
	return s
}

// act is one act on a sketch of two forces, by the names of corners: "t0" is
// the tail of the first, "h1" the head of the second.
type act struct {
	do       string // put, side
	from, to string
	verdict  Verdict
	slip     string
	stage    Stage
}

func end(name string) End {
	return End{int(name[1] - '0'), name[0] == 'h'}
}

func TestSketchByChoice(t *testing.T) {
	rows := map[string][]act{
		"first then second":    {{"put", "t1", "h0", Correct, "", Closing}, {"side", "t0", "h1", Correct, "", Estimating}},
		"second then first":    {{"put", "t0", "h1", Correct, "", Closing}, {"side", "t1", "h0", Correct, "", Estimating}},
		"by its head":          {{"put", "h1", "t0", Correct, "", Closing}, {"side", "t1", "h0", Correct, "", Estimating}},
		"closed the wrong way": {{"put", "t1", "h0", Correct, "", Closing}, {"side", "h1", "t0", SlipFound, "resultant-reversed", Closing}, {"side", "t0", "h1", Correct, "", Estimating}},
		"tails joined":         {{"side", "h0", "h1", SlipFound, "other-diagonal", Arranging}, {"side", "h1", "h0", SlipFound, "other-diagonal", Arranging}},
		"heads joined":         {{"put", "h1", "h0", SlipFound, "other-diagonal", Arranging}, {"side", "t0", "t1", SlipFound, "other-diagonal", Arranging}},
		"one force left out":   {{"put", "t1", "h0", Correct, "", Closing}, {"side", "t0", "h0", Unexplained, "", Closing}},
		"back to the start":    {{"put", "t1", "h0", Correct, "", Closing}, {"put", "t1", "t0", Unexplained, "", Arranging}},
	}
	for name, acts := range rows {
		t.Run(name, func(t *testing.T) {
			s := sketchOf(t, barge(t))
			for i, a := range acts {
				var got SketchReply
				if a.do == "put" {
					got = s.Put(end(a.from), end(a.to))
				} else {
					got = s.Close(end(a.from), end(a.to))
				}
				require.Equal(t, a.verdict, got.Verdict, "act %d: %s", i, got.Feedback)
				assert.NotEmpty(t, got.Feedback)
				assert.Equal(t, a.stage, s.Stage())
				if a.slip != "" {
					assert.Equal(t, []string{a.slip}, got.Slips)
					assert.Contains(t, got.Feedback, "?", "a question about the step")
				} else {
					assert.Empty(t, got.Slips)
				}
			}
			for range acts {
				require.True(t, s.Undo())
			}
			assert.False(t, s.Undo())
			assert.Equal(t, Arranging, s.Stage())
			for _, tail := range s.now.tails {
				assert.Equal(t, r2.Vec{}, tail)
			}
		})
	}
}

// anyPair is a problem of two forces from nearly parallel to nearly opposite,
// of magnitudes up to 50:1.
func anyPair(t *rapid.T, tb testing.TB) *Lesson {
	m := rapid.IntRange(20, 1000)
	d1, d2 := rapid.IntRange(-180, 180).Draw(t, "d1"), rapid.IntRange(-180, 180).Draw(t, "d2")
	if (d1-d2)%180 == 0 {
		d2 += 7
	}
	n := strconv.Itoa
	return pair(tb, n(m.Draw(t, "m1"))+" N", n(d1)+" deg", n(m.Draw(t, "m2"))+" N", n(d2)+" deg")
}

// shaky is a place as an unsteady hand hits it: anywhere within the reach.
func shaky(t *rapid.T, s *Sketch, p r2.Vec) r2.Vec {
	return landed(t, 0.98*s.reach, p)
}

// aimed is where an unsteady hand lays the tail of arrow i that is meant for p:
// within the reach, and nearer to p than to any other place where the arrow
// would come to lie just as well.
func aimed(t *rapid.T, s *Sketch, i int, p r2.Vec) r2.Vec {
	off := 0.98 * s.reach
	for _, m := range s.meetings(i, p, 2*s.reach) {
		if m.off > 1e-9*s.reach {
			off = min(off, 0.49*m.off)
		}
	}
	return landed(t, off, p)
}

// landed is a place no farther than off from p.
func landed(t *rapid.T, off float64, p r2.Vec) r2.Vec {
	d := rapid.Float64Range(0, off).Draw(t, "off")
	sin, cos := math.Sincos(rapid.Float64Range(0, 2*math.Pi).Draw(t, "way"))
	return r2.Vec{X: p.X + d*cos, Y: p.Y + d*sin}
}

// A right sketch by an unsteady hand is right, in either order, whatever the
// forces are.
func TestARightSketchIsAlwaysRight(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := sketchOf(t, anyPair(rt, t))
		first := rapid.IntRange(0, 1).Draw(rt, "first")
		second := 1 - first
		got := s.Move(second, r2.Vec{}, shaky(rt, s, s.head(first)))
		require.Equal(rt, Correct, got.Verdict, got.Feedback)
		order := s.Order()
		require.Len(rt, order, 2)
		got = s.Draw(shaky(rt, s, s.tail(order[0])), shaky(rt, s, s.head(order[1])))
		require.Equal(rt, Correct, got.Verdict, got.Feedback)
		require.Equal(rt, Estimating, s.Stage())
		side, sum := s.now.side, r2.Add(s.Plan.Forces[0].Vec, s.Plan.Forces[1].Vec)
		require.InDelta(rt, 0, r2.Norm(r2.Sub(r2.Sub(side.To, side.From), sum)), 1e-9*r2.Norm(sum), "drawn from corner to corner")
		require.Empty(rt, s.Met())
	})
}

// apart tells whether every two corners lie so far apart that no unsteady hand
// can take one for another.
func (s *Sketch) cornersApart() bool {
	at, _ := s.Corners()
	for i := range at {
		for j := range i {
			if r2.Norm(r2.Sub(at[i], at[j])) <= 2.5*s.reach {
				return false
			}
		}
	}
	return true
}

// Where corners are not too close to tell apart, each slip of the catalogue is
// named, and only that.
func TestSlipsOfASketchAreNamed(t *testing.T) {
	named := map[string]int{}
	rapid.Check(t, func(rt *rapid.T) {
		l := anyPair(rt, t)
		s := sketchOf(t, l)
		if !s.cornersApart() {
			return
		}
		got := s.Draw(shaky(rt, s, s.head(0)), shaky(rt, s, s.head(1)))
		require.Equal(rt, []string{"other-diagonal"}, got.Slips, got.Feedback)
		named["tails joined"]++

		got = s.Move(1, r2.Vec{}, shaky(rt, s, r2.Sub(s.head(0), s.Plan.Forces[1].Vec)))
		if s.cornersApart() && s.Order() == nil {
			require.Equal(rt, []string{"other-diagonal"}, got.Slips, got.Feedback)
			got = s.Draw(shaky(rt, s, s.tail(0)), shaky(rt, s, s.tail(1)))
			require.Equal(rt, []string{"other-diagonal"}, got.Slips, got.Feedback)
			named["heads joined"]++
		}

		s = sketchOf(t, l)
		s.Move(1, r2.Vec{}, s.head(0))
		if s.cornersApart() {
			got = s.Draw(shaky(rt, s, s.head(1)), shaky(rt, s, s.tail(0)))
			require.Equal(rt, []string{"resultant-reversed"}, got.Slips, got.Feedback)
			named["reversed"]++
		}
	})
	for _, what := range []string{"tails joined", "heads joined", "reversed"} {
		assert.Greater(t, named[what], 10, "%s: met often enough to mean something", what)
	}
}

// Nothing is named by chance: what an act on random places is called is what
// it is, by the ends it joined.
func TestNoSlipByChance(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := sketchOf(t, anyPair(rt, t))
		at := func(label string) r2.Vec {
			lo, hi := s.Hold[0], s.Hold[1]
			return r2.Vec{X: rapid.Float64Range(lo.X, hi.X).Draw(rt, label+"x"), Y: rapid.Float64Range(lo.Y, hi.Y).Draw(rt, label+"y")}
		}
		for range rapid.IntRange(1, 6).Draw(rt, "acts") {
			var got SketchReply
			if rapid.Bool().Draw(rt, "draws") {
				got = s.Draw(at("a"), at("b"))
				if len(got.Slips) > 0 {
					d, sum := r2.Sub(s.now.side.To, s.now.side.From), r2.Add(s.Plan.Forces[0].Vec, s.Plan.Forces[1].Vec)
					diff := r2.Sub(s.Plan.Forces[0].Vec, s.Plan.Forces[1].Vec)
					near := func(p r2.Vec) bool { return r2.Norm(r2.Sub(d, p)) <= 1e-6*s.reach }
					if got.Slips[0] == "resultant-reversed" {
						require.True(rt, near(r2.Scale(-1, sum)))
					} else {
						require.True(rt, near(diff) || near(r2.Scale(-1, diff)))
					}
				}
			} else {
				i := rapid.IntRange(0, 1).Draw(rt, "arrow")
				got = s.Move(i, at("c"), at("d"))
				if len(got.Slips) > 0 {
					require.True(rt, s.same(s.head(0), s.head(1)))
				}
			}
			require.NotEmpty(rt, got.Feedback)
			for i := range s.Plan.Forces {
				lo, hi := s.Hold[0], s.Hold[1]
				for _, p := range []r2.Vec{s.tail(i), s.head(i)} {
					slack := 1e-9 * (hi.X - lo.X + hi.Y - lo.Y)
					require.True(rt, p.X > lo.X-slack && p.X < hi.X+slack && p.Y > lo.Y-slack && p.Y < hi.Y+slack)
				}
			}
			if s.Stage() == Estimating {
				break
			}
		}
	})
}

// The diagonal of the parallelogram, drawn before an arrow is moved, is right.
func TestParallelogramIsRight(t *testing.T) {
	s := sketchOf(t, barge(t))
	sum := r2.Add(s.Plan.Forces[0].Vec, s.Plan.Forces[1].Vec)
	got := s.Draw(r2.Vec{X: 0.3 * s.reach}, r2.Add(sum, r2.Vec{Y: 0.5 * s.reach}))
	assert.Equal(t, Correct, got.Verdict, got.Feedback)
	assert.Equal(t, Estimating, s.Stage())
	assert.Equal(t, []int{0, 1}, s.Order())
}

func closed(t testing.TB, l *Lesson) *Work {
	w := NewWork(l, lesson.DefaultSettings())
	w.Sketch().Put(end("t1"), end("h0"))
	w.Sketch().Close(end("t0"), end("h1"))
	require.Equal(t, Estimating, w.Sketch().Stage())
	return w
}

func TestEstimates(t *testing.T) {
	rows := []struct {
		r, theta string
		kept     []bool
	}{
		{"700", "90", []bool{true, true}},
		{"0.7 kN", "1.5 rad", []bool{true, true}},
		{"560 N", "75°", []bool{true, true}},
		{"500", "60", []bool{false, false}},
		{"1200", "-90", []bool{false, false}},
		{"", "seventy", []bool{false, false}},
		{"300", "100", []bool{false, true}},
	}
	for _, row := range rows {
		t.Run(row.r+" "+row.theta, func(t *testing.T) {
			w := closed(t, barge(t))
			got := w.Sketch().Estimate(map[string]string{"R": row.r, "theta": row.theta})
			require.Len(t, got, 2)
			for i, r := range got {
				_, kept := w.Sketch().Estimated(r.Quantity)
				assert.Equal(t, row.kept[i], kept, "%s: %s", r.Quantity, r.Feedback)
				assert.Equal(t, kept, r.Verdict == Correct)
				assert.NotEmpty(t, r.Feedback)
			}
			assert.Equal(t, row.kept[0] && row.kept[1], w.Sketch().Stage() == Sketched)
		})
	}
}

// A wrong value far from the learner's own estimate is compared with it; one
// that goes with it is not, nor is a right one.
func TestWrongValuesAreComparedWithTheEstimate(t *testing.T) {
	rows := []struct {
		quantity, entry string
		compared        bool
	}{
		{"R", "466000 N", true}, {"R", "270 N", true}, {"R", "713.7 N", false}, {"R", "682.6 N", false},
		{"theta", "30°", true}, {"theta", "86°", false}, {"theta", "88.2", false}, {"gamma", "93", false},
	}
	for _, row := range rows {
		t.Run(row.quantity+" "+row.entry, func(t *testing.T) {
			w := closed(t, barge(t))
			plain := w.Enter(row.quantity, row.entry).Feedback
			w = closed(t, barge(t))
			w.Sketch().Estimate(map[string]string{"R": "700", "theta": "90"})
			got := w.Enter(row.quantity, row.entry).Feedback
			if !row.compared {
				assert.Equal(t, plain, got)
				return
			}
			assert.Contains(t, got, plain)
			assert.Contains(t, got, map[string]string{"R": "700 N", "theta": "90°"}[row.quantity])
		})
	}
}

// An estimate that is kept lies near what is drawn, whatever the problem; the
// value itself is always kept.
func TestEstimatesGoWithTheSketch(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		l := anyPair(rt, t)
		w := closed(t, l)
		r, theta := l.Quantity("R"), l.Quantity("theta")
		w.Sketch().Estimate(map[string]string{"R": strconv.FormatFloat(r.True, 'f', 3, 64), "theta": strconv.FormatFloat(theta.True, 'f', 3, 64)})
		require.Equal(rt, Sketched, w.Sketch().Stage())
		w = closed(t, l)
		v := rapid.Float64Range(0.1, 3).Draw(rt, "share") * r.True
		w.Sketch().Estimate(map[string]string{"R": strconv.FormatFloat(v, 'f', 3, 64)})
		if kept, ok := w.Sketch().Estimated("R"); ok {
			require.InDelta(rt, r.True, kept, max(0.2*r.True, 0.12*(l.Truth("F1")+l.Truth("F2")))+0.001)
		}
	})
}

func TestSketchMayBeOff(t *testing.T) {
	s := lesson.DefaultSettings()
	s.Sketch = false
	w := NewWork(barge(t), s)
	assert.Nil(t, w.Sketch())
	assert.False(t, w.Sketch().Open())
	assert.NotEmpty(t, w.Enter("R", "1 N").Feedback)
}

// Forces of any number are laid head to tail in any order by an unsteady hand.
func TestAnyNumberOfForces(t *testing.T) {
	k := kinds.All.ByName("concurrent-forces")
	var problems []*lesson.Problem
	problems = append(problems, k.BankProblems()...)
	for seed := range uint64(20) {
		problems = append(problems, Generate(k, seed))
	}
	rapid.Check(t, func(rt *rapid.T) {
		l, err := Open(rapid.SampledFrom(problems).Draw(rt, "problem"))
		require.NoError(rt, err)
		s := sketchOf(t, l)
		n := len(s.Plan.Forces)
		all := make([]int, n)
		for i := range all {
			all[i] = i
		}
		order := rapid.Permutation(all).Draw(rt, "order")
		for k := 1; k < n; k++ {
			require.Nil(rt, s.Order())
			got := s.Move(order[k], r2.Vec{}, aimed(rt, s, order[k], s.head(order[k-1])))
			require.Empty(rt, got.Slips)
		}
		require.NotNil(rt, s.Order())
		got := s.Draw(shaky(rt, s, s.tail(s.Order()[0])), shaky(rt, s, s.head(s.Order()[n-1])))
		require.Equal(rt, Correct, got.Verdict, got.Feedback)
		for s.Undo() {
		}
		require.Equal(rt, Arranging, s.Stage())
	})
}

// Of three forces, two joined by their heads leave a side that goes against
// one of them.
func TestThreeForcesWrong(t *testing.T) {
	l, err := Open(kinds.All.ByName("concurrent-forces").BankProblems()[0])
	require.NoError(t, err)
	s := sketchOf(t, l)
	assert.Equal(t, Unexplained, s.Close(end("h0"), end("t0")).Verdict)
	s.Put(end("t1"), end("h0"))
	assert.Equal(t, Arranging, s.Stage())
	got := s.Close(end("h2"), end("h1"))
	assert.Equal(t, []string{"other-diagonal"}, got.Slips)
	assert.Equal(t, l.Say("sketch.other"), got.Feedback)
	got = s.Close(end("t0"), end("h1"))
	assert.Contains(t, got.Feedback, "C", "what is left out is named")
}
