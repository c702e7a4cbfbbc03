package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// The values that follow from γ = 93° were worked by hand with the formulas
// of the force triangle (from memory).
func TestCarriedNamesTheFirstWrongEntry(t *testing.T) {
	rows := []struct {
		name    string
		entries [][2]string
		want    verdict.Verdict
		from    string
	}{
		{"one step", [][2]string{{"gamma", "93°"}, {"R", "713.7 N"}}, verdict.Carried, "gamma"},
		{"three digits", [][2]string{{"gamma", "93°"}, {"R", "714 N"}}, verdict.Carried, "gamma"},
		{"as an expression", [][2]string{{"gamma", "93°"}, {"R", "sqrt(340^2+610^2-2*340*610*cos(93))"}}, verdict.Carried, "gamma"},
		{"by a name", [][2]string{{"gamma", "93°"}, {"R", "sqrt(340^2+610^2-2*340*610*cos(gamma))"}}, verdict.Carried, "gamma"},
		{"two steps", [][2]string{{"gamma", "93°"}, {"R", "713.7 N"}, {"alpha", "28.41°"}}, verdict.Carried, "gamma"},
		{"three steps", [][2]string{{"gamma", "93°"}, {"R", "713.7 N"}, {"alpha", "28.41°"}, {"theta", "89.6°"}}, verdict.Carried, "gamma"},
		{"a step in the head", [][2]string{{"gamma", "93°"}, {"R", "713.7 N"}, {"theta", "89.6°"}}, verdict.Carried, "gamma"},
		{"two steps in the head", [][2]string{{"gamma", "93°"}, {"theta", "89.6°"}}, verdict.Carried, "gamma"},
		{"components", [][2]string{{"F2x", "286.4 N"}, {"Rx", "594.5 N"}}, verdict.Carried, "F2x"},
		{"components, to R", [][2]string{{"F2x", "286.4 N"}, {"Rx", "594.5 N"}, {"R", "905.0 N"}}, verdict.Carried, "F2x"},
		{"half the angle, what is left of 180°", [][2]string{{"beta", "46.5°"}, {"alpha", "46.5°"}}, verdict.Carried, "beta"},
		{"what an angle exchanged leaves of 180°", [][2]string{{"beta", "29.83°"}, {"alpha", "63.17°"}}, verdict.Carried, "beta"},
		{"sin φ = sin γ", [][2]string{{"R", "682.6 N"}, {"gamma", "93°"}, {"alpha", "29.83°"}}, verdict.Correct, ""},
		{"a slip in the head is no carried error", [][2]string{{"phi", "93°"}, {"R", "713.7 N"}}, verdict.SlipFound, ""},
		{"a new slip after a wrong entry", [][2]string{{"gamma", "93°"}, {"R", "950.0 N"}}, verdict.SlipFound, ""},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			w := NewWork(barge(t), lesson.DefaultSettings())
			var last Reply
			for _, e := range r.entries {
				last = w.Enter(e[0], e[1])
			}
			require.Equal(t, r.want, last.Verdict, "%+v", last)
			assert.Equal(t, r.from, last.From)
			if r.want == verdict.Carried {
				assert.Contains(t, last.Feedback, w.Lesson.SymbolText(r.from))
			}
		})
	}
}

// A magnitude that cancels on the way to an angle was not slipped in: sin α =
// P·sin β/Q whatever R is, though a learner may find γ by it before.
func TestASlipThatCancelsExplainsNothing(t *testing.T) {
	l := solvedBy(t, kinds.MissingForceSource("", kinds.ForceSource("P", "240 N", "60 deg"), kinds.MissingSource("Q", "magnitude", "420 N"), kinds.DirectedSource("-159 deg")))
	w := NewWork(l, lesson.DefaultSettings())
	require.Equal(t, verdict.SlipFound, w.Enter("beta", "159°").Verdict)
	r := w.Enter("alpha", "11.82°") // sin⁻¹(240·sin 159°/420)
	require.Equal(t, verdict.Carried, r.Verdict, "%+v", r)
	assert.Equal(t, "beta", r.From)
}

func TestCorrectingAnEntryJudgesWhatFollowedAgain(t *testing.T) {
	w := NewWork(barge(t), lesson.DefaultSettings())
	require.Equal(t, verdict.SlipFound, w.Enter("gamma", "93°").Verdict)
	require.Equal(t, verdict.Carried, w.Enter("R", "713.7 N").Verdict)
	require.Equal(t, verdict.Correct, w.Enter("F1x", "308.1 N").Verdict)
	fixed := w.Enter("gamma", "87°")
	require.Equal(t, verdict.Correct, fixed.Verdict)
	assert.Equal(t, []string{"R"}, fixed.Changed)
	assert.Equal(t, verdict.Carried, w.Standing("R").Verdict, "no slip was made at R")
	assert.NotContains(t, w.Standing("R").Feedback, "683")
	require.Equal(t, verdict.Correct, w.Enter("R", "682.6 N").Verdict)
	assert.True(t, w.Found("F1x"))
}

func TestAWorseCorrectionTurnsWhatFollowedIntoCarried(t *testing.T) {
	w := NewWork(barge(t), lesson.DefaultSettings())
	w.Enter("gamma", "80°")
	require.NotEqual(t, verdict.Carried, w.Enter("R", "713.7 N").Verdict)
	fixed := w.Enter("gamma", "93°")
	assert.Equal(t, []string{"R"}, fixed.Changed)
	assert.Equal(t, verdict.Carried, w.Standing("R").Verdict)
	assert.Equal(t, "gamma", w.Undo())
	assert.NotEqual(t, verdict.Carried, w.Standing("R").Verdict)
}
