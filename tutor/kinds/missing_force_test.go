package kinds

import (
	"math"
	"strings"
	"testing"

	"closingside/statics"
	"closingside/tutor"
	"closingside/tutor/draw"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/spatial/r2"
	"pgregory.net/rapid"
)

// turned is a problem of two solutions, by hand: F₁ = 520 N at 35°, F₂ = 410 N,
// the resultant along +x. Across it F₁ has 520 sin 35° = 298.26 N, so
// sin α = 298.26/410 and α = 46.67° or 133.33°; θ₂ = −α; R = 425.96 ± 281.32 N.
func turned(t testing.TB) *tutor.Lesson { return banked(t, &MissingForce, 3) }

func TestTwoSolutionsAreBothAccepted(t *testing.T) {
	for _, row := range []struct{ theta, r, says string }{
		{"-46.67", "707.3 N", "acute"}, {"-133.3", "144.6 N", "obtuse"},
	} {
		t.Run(row.says, func(t *testing.T) {
			w := tutor.NewWork(turned(t), lesson.DefaultSettings())
			first := w.Enter("theta2", row.theta)
			require.Equal(t, verdict.Correct, first.Verdict)
			assert.Contains(t, first.Notes, "two-solutions")
			assert.Contains(t, first.Feedback, row.says)
			require.Equal(t, verdict.Correct, w.Enter("R", row.r).Verdict)
			assert.True(t, w.Done())
		})
	}
	l := turned(t)
	require.NotNil(t, l.Other)
	assert.Len(t, l.Solve(lesson.DefaultSettings()), 2, "both are worked out")
}

// Where two triangles fit, the sine law is not said to give an acute angle.
func TestTheSineLawOfTwoSolutionsLeavesBothOpen(t *testing.T) {
	for _, s := range turned(t).Solve(lesson.DefaultSettings()) {
		for _, step := range s.Steps {
			assert.NotContains(t, step.Why, "it is acute", s.Case)
		}
	}
	assert.Contains(t, tutor.NewWork(turned(t), lesson.DefaultSettings()).HintAt("alpha", 2).Sentence, "obtuse")
	one := banked(t, &MissingForce, 4)
	assert.Contains(t, tutor.NewWork(one, lesson.DefaultSettings()).HintAt("alpha", 2).Sentence, "acute")
}

// R of one triangle with the direction of the other is no solution: it is said,
// and putting either right makes one.
func TestMixedSolutionsAreNamed(t *testing.T) {
	for name, enter := range map[string][2]string{"acute first": {"707.3 N", "-133.3"}, "obtuse first": {"144.6 N", "-46.67"}} {
		t.Run(name, func(t *testing.T) {
			w := tutor.NewWork(turned(t), lesson.DefaultSettings())
			require.Equal(t, verdict.Correct, w.Enter("R", enter[0]).Verdict)
			r := w.Enter("theta2", enter[1])
			require.Equal(t, verdict.SlipFound, r.Verdict)
			assert.Equal(t, []string{slips.BranchesMixed}, r.Slips[0].IDs)
			assert.InDelta(t, 1, r.Slips[0].Probability+r.Unexplained, 1e-12)
			assert.False(t, w.Done())
			other := map[string]string{"-133.3": "144.6 N", "-46.67": "707.3 N"}[enter[1]]
			w.Enter("R", other)
			assert.False(t, strings.Contains(w.Standing("theta2").Verdict.String(), "unexplained"))
		})
	}
}

// The learner goes over to the other triangle by replacing both values; the
// first replaced is mixed until the second follows, and then right.
func TestGoingOverToTheOtherSolution(t *testing.T) {
	w := tutor.NewWork(turned(t), lesson.DefaultSettings())
	w.Enter("R", "707.3 N")
	w.Enter("theta2", "-46.67")
	require.True(t, w.Done())
	require.Equal(t, verdict.SlipFound, w.Enter("R", "144.6 N").Verdict)
	require.Equal(t, verdict.Correct, w.Enter("theta2", "-133.3").Verdict)
	assert.True(t, w.Found("R"), "judged again in the triangle now worked")
	assert.True(t, w.Done())
}

// A slip in the second triangle is named there.
func TestSlipInTheOtherSolution(t *testing.T) {
	w := tutor.NewWork(turned(t), lesson.DefaultSettings())
	require.Equal(t, verdict.Correct, w.Enter("alpha", "133.33").Verdict)
	r := w.Enter("theta2", "133.33") // laid off on the wrong side
	require.Equal(t, verdict.SlipFound, r.Verdict)
}

func TestImpossibleForcesAreRefusedWithAReason(t *testing.T) {
	p := ForceSource("P", "340 N", "25 deg")
	rows := []struct {
		name string
		src  lesson.Source
		says string
	}{
		{"all of the missing force", MissingForceSource("", p, lesson.Branch("missing", lesson.Leaf("name", "Q"), lesson.Leaf("magnitude", "1 N"), lesson.Leaf("direction", "0 deg")), DirectedSource("10 deg")), "two values"},
		{"too little", MissingForceSource("", p, MissingSource("Q"), DirectedSource("10 deg")), "two values"},
		{"too small", MissingForceSource("", p, MissingSource("Q", "magnitude", "100 N"), DirectedSource("70 deg")), "too small"},
		{"just long enough", MissingForceSource("", p, MissingSource("Q", "magnitude", "340 N"), DirectedSource("115 deg")), "only just"},
		{"would push", MissingForceSource("", p, MissingSource("Q", "direction", "-60 deg"), DirectedSource("70 deg")), "push"},
		{"backwards", MissingForceSource("", p, MissingSource("Q"), DirectedSource("150 deg"), lesson.Leaf("find", "smallest")), "backwards"},
		{"in line", MissingForceSource("", p, MissingSource("Q"), ResultantSource("500 N", "25 deg")), "one line"},
		{"smallest, but known", MissingForceSource("", p, MissingSource("Q", "magnitude", "340 N"), DirectedSource("50 deg"), lesson.Leaf("find", "smallest")), "two values"},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) { refused(t, r.src, r.says) })
	}
}

// Substituted back, F₁ + F₂ = R in both components, whatever is asked; turned
// by any angle and scaled by any factor, the triangle stays the same.
func TestMissingForceClosesTheTriangle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		turn := float64(rapid.IntRange(-179, 179).Draw(t, "turn"))
		scale := rapid.Float64Range(0.01, 100).Draw(t, "scale")
		p := draw.Generate(&MissingForce, rapid.Uint64().Draw(t, "seed"))
		l, err := tutor.Open(p)
		require.NoError(t, err)
		moved, err := tutor.Open(turnedAndScaled(p, turn, scale))
		require.NoError(t, err)
		for i, s := range l.Solutions() {
			vec := func(m, d string) r2.Vec { return statics.Polar(s.Truth(m), statics.Angle(s.Truth(d))*statics.Degree) }
			off := r2.Sub(r2.Add(vec("F1", "theta1"), vec("F2", "theta2")), vec("R", "theta"))
			assert.LessOrEqual(t, r2.Norm(off), 1e-9*largestForce(s))
			for _, n := range []string{"F2", "R"} {
				assert.InEpsilon(t, scale*s.Truth(n), moved.Solutions()[i].Truth(n), 1e-9)
			}
			for _, n := range []string{"theta2", "theta"} {
				assert.InDelta(t, 0, math.Remainder(moved.Solutions()[i].Truth(n)-s.Truth(n)-turn, 360), 1e-7)
			}
		}
		if p.Group("find") != nil { // no force off the perpendicular does it with less
			off := math.Remainder(l.Truth("theta2")-l.Truth("theta"), 360)
			assert.InDelta(t, 90, math.Abs(off), 1e-9)
		}
	})
}

// turnedAndScaled is p with every direction turned and every force scaled.
func turnedAndScaled(p *lesson.Problem, turn, scale float64) *lesson.Problem {
	q := *p
	q.Items = nil
	for _, it := range p.Items {
		moved := it
		moved.Fields = nil
		for _, f := range it.Fields {
			switch p.Spec(it.Group, f.Key).Is {
			case lesson.ForceField, lesson.ComponentField:
				f.Value *= scale
			case lesson.DirectionField:
				if f.Given() {
					f.Heading, _ = statics.From(statics.PlusX, f.Heading.Angle()+statics.Angle(turn)*statics.Degree, statics.CounterClockwise)
					f.Value = f.Heading.Angle().Degrees()
				}
			}
			moved.Fields = append(moved.Fields, f)
		}
		q.Items = append(q.Items, moved)
	}
	return &q
}
