package tutor

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// A value that is right in every digit typed is not told that its last one is
// off, even where one digit fewer was asked and both round apart.
func TestTheLastDigitIsOffOnlyWhereItIs(t *testing.T) {
	for entry, off := range map[string]bool{
		"396.5 N": false, // 396.523 N
		"397 N":   false,
		"396.52":  false,
		"396 N":   true,
		"396.4 N": true,
	} {
		t.Run(entry, func(t *testing.T) {
			w := NewWork(bankLesson(t, &kinds.ObliqueComponents, 0), lesson.DefaultSettings())
			r := w.Enter("Fv", entry)
			assert.Equal(t, verdict.Correct, r.Verdict)
			if off {
				assert.Contains(t, r.Notes, "last-digit")
			} else {
				assert.NotContains(t, r.Notes, "last-digit")
			}
		})
	}
}

// What follows from an entry a little off is said to, written as a number or as the
// formula. By the cosine law with R = 488.1 N, cos β = 81 187/94 691: 30.98°, for 29.315°.
func TestWhatFollowsFarFromRightIsSaidTo(t *testing.T) {
	for _, beta := range []string{"30.98", "acos((97^2+488.1^2-408^2)/(2*97*488.1))"} {
		w := NewWork(pair(t, "97 N", "82 deg", "408 N", "46 deg"), lesson.DefaultSettings())
		assert.Equal(t, verdict.Correct, w.Enter("R", "488.1 N").Verdict)
		r := w.Enter("beta", beta)
		assert.Equal(t, verdict.Correct, r.Verdict, beta)
		assert.Contains(t, r.Notes, "as-follows", beta)
	}
}

// The unit is missed of a length, too; of an angle, degrees go without saying.
func TestTheUnitIsMissedOfWhateverHasOne(t *testing.T) {
	l := bankLesson(t, &kinds.ParticleEquilibrium, 4) // a lamp between a cable and a spring
	for _, r := range []struct {
		quantity, entry string
		missed          bool
	}{
		{"s2", "0.185", true},
		{"s2", "0.185 m", false},
		{"F1", "580.7", true},
		{"gamma", "85", false},
	} {
		got := NewWork(l, lesson.DefaultSettings()).Enter(r.quantity, r.entry)
		assert.Equal(t, verdict.Correct, got.Verdict, r.entry)
		assert.Equal(t, r.missed, slices.Contains(got.Notes, "unit-missing"), r.entry)
	}
}

// An angle of the figure may be written a turn off, as calculations give it; that
// is noted. Several turns off it is a slip of the pen that ends there by chance.
func TestAngleOfTheFigureATurnOff(t *testing.T) {
	rows := []struct {
		entry string
		want  verdict.Verdict
		notes []string
	}{
		{"87°", verdict.Correct, nil},
		{"447°", verdict.Correct, []string{"angle-otherwise"}},
		{"-273°", verdict.Correct, []string{"angle-otherwise"}},
		{"807°", verdict.Unexplained, nil},
		{"-633°", verdict.Unexplained, nil},
	}
	for _, r := range rows {
		got := NewWork(barge(t), lesson.DefaultSettings()).Enter("gamma", r.entry)
		assert.Equal(t, r.want, got.Verdict, "%s: %+v", r.entry, got)
		assert.Equal(t, r.notes, got.Notes, r.entry)
	}
}
