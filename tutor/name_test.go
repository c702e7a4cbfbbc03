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

// A name is what the reader makes of it: letters of other scripts are those they
// look like, and case alone tells no two things apart.
func TestNamesThatReadAlikeAreRefused(t *testing.T) {
	named := func(names ...string) error {
		var forces []lesson.Source
		for i, name := range names {
			forces = append(forces, kinds.ForceSource(name, "340 N", []string{"25 deg", "118 deg"}[i]))
		}
		p, err := kinds.All.Read(kinds.TwoForcesSource("", forces...))
		if err == nil {
			_, err = Open(p)
		}
		return err
	}
	for _, row := range []struct{ one, other, says string }{
		{"A", "А", "read alike"}, // the second is Cyrillic
		{"P", "p", "read alike"},
		{"F1", "F₁", "letters and digits"},
		{"P", "P", "Two things are called “P”"},
		{"P", "R", "“R” is"},
		{"γ", "Q", "“γ” is"},
		{"gamma", "Q", "“gamma” is"},
		{"P", "Px", "“Px” is"},
		{"P", "q", ""},
		{"F2", "F1", ""},
		{"r", "Q", ""},
	} {
		err := named(row.one, row.other)
		if row.says == "" {
			assert.NoError(t, err, "%s, %s", row.one, row.other)
		} else {
			assert.ErrorContains(t, err, row.says, "%s, %s", row.one, row.other)
		}
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

// A learner reads a symbol in the same letters everywhere: T₁ in the statement as in the task.
func TestANameIsReadAlikeEverywhere(t *testing.T) {
	for _, k := range kinds.All {
		for _, p := range k.BankProblems() {
			l, err := Open(p)
			require.NoError(t, err)
			for _, said := range append(l.Given(), l.Task()) {
				assert.NotRegexp(t, `\b[A-Z][0-9]`, said, p.Story)
			}
		}
	}
	p, err := kinds.All.Read(lesson.Branch("", lesson.Leaf("kind", "two-forces"), lesson.Branch("forces", kinds.ForceSource("F1", "340 N", "25 deg"), kinds.ForceSource("F2", "610 N", "25 deg"))))
	require.NoError(t, err)
	_, err = Open(p)
	assert.ErrorContains(t, err, "F₁ and F₂")
}

// A hyphen typed for a minus is shown as a minus.
func TestAStatementShowsAMinus(t *testing.T) {
	l := solvedBy(t, kinds.FromComponentsSource("", "M", "-310 N", "875 N"))
	assert.Contains(t, l.Problem.Statements()[0], "−310 N")
	assert.NotContains(t, l.Problem.Statements()[0], "-310")
}
