package tutor

import (
	"strconv"
	"testing"

	"closingside/statics/expr"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestVerdicts(t *testing.T) {
	rows := []struct {
		quantity, entry string
		want            verdict.Verdict
		id              string
	}{
		{"phi", "93°", verdict.Correct, ""},
		{"gamma", "87", verdict.Correct, ""},
		{"gamma", "93°", verdict.SlipFound, "included-for-interior"},
		{"gamma", "1.52 rad", verdict.Correct, ""},
		{"R", "682.6 N", verdict.Correct, ""},
		{"R", "0.6826 kN", verdict.Correct, ""},
		{"R", "683", verdict.Correct, ""},
		{"R", "sqrt(340^2+610^2-2*340*610*cos(87))", verdict.Correct, ""},
		{"R", "713.7 N", verdict.SlipFound, "included-for-interior"},
		{"R", "950.0 N", verdict.SlipFound, "magnitudes-added"},
		{"R", "466000 N", verdict.SlipFound, "root-missing"},
		{"R", "698.4 N", verdict.SlipFound, "cross-term-missing"},
		{"R", "511.11 N", verdict.Unexplained, ""},
		{"R", "banana", verdict.Unreadable, ""},
		{"R", "682.6 m", verdict.Unreadable, ""},
		{"phi", "118 - 25 = 93", verdict.Correct, ""},
		{"R", "√(340²+610²−2·340·610·cos 87) = 682.6 N", verdict.Correct, ""},
		{"beta", "63 = θ − 25", verdict.Unreadable, ""},
		{"theta", "88.2°", verdict.Correct, ""},
		{"theta", "-271.8°", verdict.Correct, ""},
		{"theta", "63.2 deg", verdict.SlipFound, "reference-missing"},
		{"beta", "θ − 25°", verdict.Correct, ""},
		{"alpha", "118° − θ", verdict.Correct, ""},
		{"alpha", "θ − 118°", verdict.Unexplained, ""},
	}
	for _, r := range rows {
		t.Run(r.quantity+" "+r.entry, func(t *testing.T) {
			got := NewWork(barge(t), lesson.DefaultSettings()).Enter(r.quantity, r.entry)
			require.Equal(t, r.want, got.Verdict, "%+v", got)
			assert.NotEmpty(t, got.Feedback)
			if r.id != "" {
				assert.Contains(t, got.Slips[0].IDs, r.id)
			}
		})
	}
}

// Every value that one slip in the quantity itself gives, entered at four
// digits with nothing else entered, must be explained by that slip: named, or
// among the suspects where another slip lies within the entry's last digit.
func TestEverySingleSlipIsRecognisedAlone(t *testing.T) {
	for _, l := range []*Lesson{barge(t), pair(t, "420 N", "-35 deg", "290 N", "-128 deg"), pair(t, "730 N", "160 deg", "510 N", "-127 deg")} {
		missed, blurred, met := 0, 0, map[string]bool{}
		for i := range l.Quantities {
			q := &l.Quantities[i]
			if q.Given {
				continue
			}
			w := NewWork(l, lesson.DefaultSettings())
			for _, o := range w.now(q).slipsIn(i) {
				entry := strconv.FormatFloat(roundedEntry(q, o.came()), 'f', -1, 64)
				if q.IsAngle() { // 28.20, not 28.2
					entry = strconv.FormatFloat(o.came(), 'f', 2, 64)
				}
				r := w.judge(q, entry)
				if r.Verdict == verdict.Correct { // the slip does not leave the band
					continue
				}
				if r.Verdict == verdict.EarlyRounding && len(r.Slips) == 0 { // nor the reach of a rounded step
					blurred++
					continue
				}
				met[o.ids[0]] = true
				if r.Verdict != verdict.SlipFound && len(r.Slips) == 0 {
					missed++
					t.Logf("%s = %s (%v, true %v) by %v: %s", q.Name, entry, o.value, q.True, o.ids, r.Verdict)
				}
			}
		}
		assert.Zero(t, missed)
		assert.LessOrEqual(t, blurred, 6)
		assert.Greater(t, len(met), 30)
	}
}

func roundedEntry(q *lesson.Quantity, v float64) float64 {
	return lesson.Digits{Magnitude: 4, Angle: 2}.Round(q.Dim, v)
}

// A learner who takes either way of the worked solution and rounds every
// value written at four digits is never refused.
func TestTheWorkedSolutionIsAccepted(t *testing.T) {
	for seed := range uint64(300) {
		l, err := Open(Generate(&kinds.TwoForces, seed))
		require.NoError(t, err)
		for _, way := range l.Ways {
			w := NewWork(l, lesson.DefaultSettings())
			for _, step := range way.Steps {
				q := l.Quantity(step.Quantity)
				v := expr.EvalEach(q.Route(step.Route).Tree, w.own, func(n expr.Node, _ int, v float64) float64 {
					return w.Settings.Work.Round(w.Lesson.dimension(n), v)
				})
				entry := w.Settings.DigitsOf(q).Written(q.Dim, v)
				require.Equal(t, verdict.Correct, w.Enter(q.Name, entry).Verdict, "seed %d: %s = %s, true %v", seed, q.Name, entry, q.True)
			}
			assert.True(t, w.Done())
			assert.Empty(t, w.Next())
		}
	}
}

func TestHintsClimbAndDoNotLeakUnfoundValues(t *testing.T) {
	w := NewWork(barge(t), lesson.DefaultSettings())
	assert.Equal(t, "phi", w.Next())
	for level := 1; level <= HintLevels; level++ {
		h := w.Hint("R")
		assert.Equal(t, level, h.Level)
		assert.NotEmpty(t, h.Sentence)
	}
	assert.Equal(t, HintLevels, w.Hint("R").Level)
	w = NewWork(barge(t), lesson.DefaultSettings())
	h := w.HintAt("R", 3)
	assert.Contains(t, expr.Plain(h.Formula.Numbers, w.Lesson.Symbol), "cos γ", "γ is not found yet")
	require.Equal(t, verdict.Correct, w.Enter("gamma", "87").Verdict)
	assert.Contains(t, expr.Plain(w.HintAt("R", 3).Formula.Numbers, w.Lesson.Symbol), "cos 87°")
}

func TestUndoBringsTheEntryBeforeBack(t *testing.T) {
	w := NewWork(barge(t), lesson.DefaultSettings())
	w.Enter("gamma", "87")
	w.Enter("gamma", "93")
	assert.False(t, w.Found("gamma"))
	assert.Equal(t, "gamma", w.Undo())
	assert.True(t, w.Found("gamma"))
	assert.Equal(t, "gamma", w.Undo())
	assert.Nil(t, w.Standing("gamma"))
	assert.Empty(t, w.Undo())
}

func TestLatestIsWhatUndoTakesBack(t *testing.T) {
	l, err := Open(kinds.TwoForces.BankProblems()[0])
	require.NoError(t, err)
	w := NewWork(l, lesson.DefaultSettings())
	assert.Nil(t, w.Latest())
	w.Enter("phi", "93")
	w.Enter("gamma", "87")
	for _, want := range []string{"gamma", "phi"} {
		assert.Equal(t, want, w.Latest().Quantity)
		assert.Equal(t, want, w.Undo())
	}
	assert.Nil(t, w.Latest())
}

func TestWorkedSolutionBothWays(t *testing.T) {
	l := barge(t)
	ways := l.Solve(lesson.DefaultSettings())
	require.Len(t, ways, 2)
	var lines []string
	for _, way := range ways {
		for _, s := range way.Steps {
			lines = append(lines, l.SymbolText(s.Quantity.Name)+" = "+expr.Plain(s.Numbers, l.Symbol)+" = "+s.Value)
		}
	}
	assert.Equal(t, []string{
		"φ = 118° − 25° = 93.00°", "γ = 180° − 93° = 87.00°",
		"R = √(340² + 610² − 2·340·610·cos 87°) = 682.6 N",
		"α = sin⁻¹(340·sin(87°)/682.6) = 29.83°", "θ = 118° − 29.83° = 88.17°",
		"Px = 340·cos 25° = 308.145 N", "Py = 340·sin 25° = 143.7 N",
		"Qx = 610·cos 118° = −286.378 N", "Qy = 610·sin 118° = 538.6 N",
		"Rx = 308.145 + (−286.378) = 21.77 N", "Ry = 143.7 + 538.6 = 682.3 N",
		"R = √(21.77² + 682.3²) = 682.6 N", "θ = tan⁻¹(682.3/21.77) = 88.17°",
	}, lines)
}

// A written step must be true as it stands: a direction that comes out beyond
// half a turn is brought back in the numbers, not only in the value.
func TestWorkedNumbersComeToTheValueShown(t *testing.T) {
	for _, l := range []*Lesson{barge(t), pair(t, "7.5 kN", "205 deg", "5.1 kN", "318 deg"), pair(t, "730 N", "160 deg", "510 N", "-127 deg")} {
		for _, way := range l.Solve(lesson.DefaultSettings()) {
			for _, s := range way.Steps {
				got := expr.Eval(s.Numbers, nil)
				within := 0.0005 * (l.Truth("F1") + l.Truth("F2")) // four digits of the forces
				if s.Quantity.Dim == lesson.AngleUnit.Dim {
					within = 0.02
				}
				assert.InDelta(t, s.Quantity.True, got, within, s.Quantity.Name)
			}
		}
	}
}
