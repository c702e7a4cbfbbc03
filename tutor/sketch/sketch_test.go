package sketch

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/spatial/r2"
	"pgregory.net/rapid"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// sketchOf begins a sketch on which nothing is estimated.
func sketchOf(l *lesson.Lesson) *Sketch { return New(l, nil) }

// tugs is the lesson of the two tugs at the barge.
func tugs(t testing.TB) *lesson.Lesson { return lessonOf(t, kinds.TwoForces.BankProblems()[0]) }

func lessonOf(t testing.TB, p *lesson.Problem) *lesson.Lesson {
	t.Helper()
	l, err := p.Build()
	require.NoError(t, err)
	return l
}

// act is one act on a sketch of two forces, by the names of corners: "t0" is
// the tail of the first, "h1" the head of the second.
type act struct {
	do       string // put, side
	from, to string
	verdict  verdict.Verdict
	slip     string
	stage    Stage
}

func end(name string) End {
	return End{int(name[1] - '0'), name[0] == 'h'}
}

func TestSketchByChoice(t *testing.T) {
	rows := map[string][]act{
		"first then second":    {{"put", "t1", "h0", verdict.Correct, "", Closing}, {"side", "t0", "h1", verdict.Correct, "", Estimating}},
		"second then first":    {{"put", "t0", "h1", verdict.Correct, "", Closing}, {"side", "t1", "h0", verdict.Correct, "", Estimating}},
		"by its head":          {{"put", "h1", "t0", verdict.Correct, "", Closing}, {"side", "t1", "h0", verdict.Correct, "", Estimating}},
		"closed the wrong way": {{"put", "t1", "h0", verdict.Correct, "", Closing}, {"side", "h1", "t0", verdict.SlipFound, "resultant-reversed", Closing}, {"side", "t0", "h1", verdict.Correct, "", Estimating}},
		"tails joined":         {{"side", "h0", "h1", verdict.SlipFound, "other-diagonal", Arranging}, {"side", "h1", "h0", verdict.SlipFound, "other-diagonal", Arranging}},
		"heads joined":         {{"put", "h1", "h0", verdict.SlipFound, "other-diagonal", Arranging}, {"side", "t0", "t1", verdict.SlipFound, "other-diagonal", Arranging}},
		"one force left out":   {{"put", "t1", "h0", verdict.Correct, "", Closing}, {"side", "t0", "h0", verdict.Unexplained, "", Closing}},
		"back to the start":    {{"put", "t1", "h0", verdict.Correct, "", Closing}, {"put", "t1", "t0", verdict.Unexplained, "", Arranging}},
	}
	for name, acts := range rows {
		t.Run(name, func(t *testing.T) {
			s := sketchOf(tugs(t))
			for i, a := range acts {
				var got Reply
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
func anyPair(t *rapid.T, tb testing.TB) *lesson.Lesson {
	m := rapid.IntRange(20, 1000)
	d1, d2 := rapid.IntRange(-180, 180).Draw(t, "d1"), rapid.IntRange(-180, 180).Draw(t, "d2")
	if (d1-d2)%180 == 0 {
		d2 += 7
	}
	n := strconv.Itoa
	p, err := kinds.All.Read(kinds.TwoForcesSource("Two tugs hold a barge.",
		kinds.ForceSource("P", n(m.Draw(t, "m1"))+" N", n(d1)+" deg"), kinds.ForceSource("Q", n(m.Draw(t, "m2"))+" N", n(d2)+" deg")))
	require.NoError(tb, err)
	return lessonOf(tb, p)
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
		s := sketchOf(anyPair(rt, t))
		first := rapid.IntRange(0, 1).Draw(rt, "first")
		second := 1 - first
		got := s.Move(second, r2.Vec{}, shaky(rt, s, s.head(first)))
		require.Equal(rt, verdict.Correct, got.Verdict, got.Feedback)
		order := s.Order()
		require.Len(rt, order, 2)
		got = s.Draw(shaky(rt, s, s.tail(order[0])), shaky(rt, s, s.head(order[1])))
		require.Equal(rt, verdict.Correct, got.Verdict, got.Feedback)
		require.Equal(rt, Estimating, s.Stage())
		side, sum := s.now.side, r2.Add(s.Plan.Forces[0].Vec, s.Plan.Forces[1].Vec)
		require.InDelta(rt, 0, r2.Norm(r2.Sub(r2.Sub(side.To, side.From), sum)), 1e-9*r2.Norm(sum), "drawn from corner to corner")
		require.Empty(rt, s.Met())
	})
}

// cornersApart tells whether every two corners lie so far apart that no unsteady hand
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
		s := sketchOf(l)
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

		s = sketchOf(l)
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
		s := sketchOf(anyPair(rt, t))
		at := func(label string) r2.Vec {
			lo, hi := s.room[0], s.room[1]
			return r2.Vec{X: rapid.Float64Range(lo.X, hi.X).Draw(rt, label+"x"), Y: rapid.Float64Range(lo.Y, hi.Y).Draw(rt, label+"y")}
		}
		for range rapid.IntRange(1, 6).Draw(rt, "acts") {
			var got Reply
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
				lo, hi := s.room[0], s.room[1]
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
	s := sketchOf(tugs(t))
	sum := r2.Add(s.Plan.Forces[0].Vec, s.Plan.Forces[1].Vec)
	got := s.Draw(r2.Vec{X: 0.3 * s.reach}, r2.Add(sum, r2.Vec{Y: 0.5 * s.reach}))
	assert.Equal(t, verdict.Correct, got.Verdict, got.Feedback)
	assert.Equal(t, Estimating, s.Stage())
	assert.Equal(t, []int{0, 1}, s.Order())
}

// Forces of any number are laid head to tail in any order by an unsteady hand.
func TestAnyNumberOfForces(t *testing.T) {
	k := &kinds.ConcurrentForces
	var problems []*lesson.Problem
	problems = append(problems, k.BankProblems()...)
	for d := lesson.NewDraw(20, 1); len(problems) < 30; {
		if p, err := kinds.All.Read(k.Draw(d)); err == nil {
			problems = append(problems, p)
		}
	}
	rapid.Check(t, func(rt *rapid.T) {
		s := sketchOf(lessonOf(t, rapid.SampledFrom(problems).Draw(rt, "problem")))
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
		require.Equal(rt, verdict.Correct, got.Verdict, got.Feedback)
		for s.Undo() {
		}
		require.Equal(rt, Arranging, s.Stage())
	})
}

// Of three forces, two joined by their heads leave a side that goes against
// one of them.
func TestThreeForcesWrong(t *testing.T) {
	l := lessonOf(t, kinds.ConcurrentForces.BankProblems()[0])
	s := sketchOf(l)
	assert.Equal(t, verdict.Unexplained, s.Close(end("h0"), end("t0")).Verdict)
	s.Put(end("t1"), end("h0"))
	assert.Equal(t, Arranging, s.Stage())
	got := s.Close(end("h2"), end("h1"))
	assert.Equal(t, []string{"other-diagonal"}, got.Slips)
	assert.Equal(t, l.Say("sketch.other"), got.Feedback)
	got = s.Close(end("t0"), end("h1"))
	assert.Contains(t, got.Feedback, "C", "what is left out is named")
}

// The description of a sketch tells where every arrow lies, and what is wrong
// with it can be heard.
func TestASketchIsHeard(t *testing.T) {
	s := sketchOf(tugs(t))
	assert.Contains(t, s.Scene().Desc, "The tail of P is at the common point")
	s.Put(end("h1"), end("h0"))
	assert.Contains(t, s.Scene().Desc, "The heads of P and Q are at one place.")
	s.Put(end("t1"), end("h0"))
	assert.Contains(t, s.Scene().Desc, "The tail of Q is at the head of P.")
	s.Close(end("h1"), end("t0"))
	assert.Contains(t, s.Scene().Desc, "The side you drew runs from the head of Q to the common point. It points down and to the left.")
	s.Close(end("t0"), end("h1"))
	assert.Contains(t, s.Scene().Desc, "The closing side R runs from the common point to the head of Q. It points up and to the right.")
}
