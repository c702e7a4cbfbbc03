package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// Books call the resultant F_R too, and its components the sums of the others.
func TestOtherNamesOfTheResultant(t *testing.T) {
	for _, e := range [][2]string{
		{"R", "F_R = 682.6 N"}, {"R", "FR = 682.6 N"}, {"R", "Fr = 682.6 N"}, {"Rx", "ΣFx = 21.77 N"}, {"Ry", "∑F_y = 682.3 N"}, {"Ry", "F_{Ry} = 682.3 N"},
	} {
		assert.Equal(t, verdict.Correct, NewWork(barge(t), lesson.DefaultSettings()).Enter(e[0], e[1]).Verdict, e)
	}
	w := NewWork(barge(t), lesson.DefaultSettings())
	w.Enter("Rx", "21.77 N")
	assert.Equal(t, verdict.Correct, w.Enter("R", "sqrt(ΣFx² + 682.29²)").Verdict)
}

// A script's name for a direction may be written with its letter.
func TestDirectionsByTheirNumber(t *testing.T) {
	for _, e := range []string{"P cos θ1", "Pcosθ₁", "P cos theta_1", "P cos θ_P"} {
		r := NewWork(barge(t), lesson.DefaultSettings()).Enter("F1x", e)
		assert.Equal(t, verdict.Correct, r.Verdict, "%s: %s", e, r.Feedback)
	}
}

// A thing keeps its own name, whatever a script calls another by.
func TestAThingIsReadByItsOwnName(t *testing.T) {
	p, err := kinds.All.Read(kinds.TwoForcesSource("", kinds.ForceSource("F2", "340 N", "25 deg"), kinds.ForceSource("F1", "610 N", "118 deg")))
	require.NoError(t, err)
	l, err := Open(p)
	require.NoError(t, err)
	for range 20 {
		r := NewWork(l, lesson.DefaultSettings()).Enter("F1x", "F2 cos 25")
		assert.Equal(t, verdict.Correct, r.Verdict, r.Feedback)
		r = NewWork(l, lesson.DefaultSettings()).Enter("F1x", "F_2 cos 25")
		assert.Equal(t, verdict.Correct, r.Verdict, r.Feedback)
		r = NewWork(l, lesson.DefaultSettings()).Enter("F2x", "F1 cos theta1")
		assert.Equal(t, verdict.Correct, r.Verdict, r.Feedback)
	}
}
