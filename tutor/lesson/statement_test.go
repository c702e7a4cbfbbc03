package lesson_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/statics"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// A learner reads a symbol in the same letters everywhere: T₁ in the statement as in the task.
func TestANameIsReadAlikeEverywhere(t *testing.T) {
	for _, k := range kinds.All {
		for _, p := range k.BankProblems() {
			l, err := p.Build()
			require.NoError(t, err)
			for _, said := range append(l.Given(), l.Task()) {
				assert.NotRegexp(t, `\b[A-Z][0-9]`, said, p.Story)
			}
		}
	}
	p, err := kinds.All.Read(lesson.Branch("", lesson.Leaf("kind", "two-forces"), lesson.Branch("forces", kinds.ForceSource("F1", "340 N", "25 deg"), kinds.ForceSource("F2", "610 N", "25 deg"))))
	require.NoError(t, err)
	_, err = p.Build()
	assert.ErrorContains(t, err, "F₁ and F₂")
}

// A hyphen typed for a minus is shown as a minus.
func TestAStatementShowsAMinus(t *testing.T) {
	l := built(t, kinds.FromComponentsSource("", "M", "-310 N", "875 N"))
	assert.Contains(t, l.Problem.Statements()[0], "−310 N")
	assert.NotContains(t, l.Problem.Statements()[0], "-310")
}

// Pounds and newtons in one problem: worked in the first force's unit, and it
// is said. NIST SP 811 (2008), B.8: 1 lbf = 4.448 222 N.
func TestSystemsAreNeverMixedSilently(t *testing.T) {
	l := pair(t, "340 N", "25 deg", "100 lb", "118 deg")
	assert.Equal(t, []string{"The statement mixes systems of units. This is worked in N: 100 lb is 444.822 N."}, l.Converted())
	assert.InEpsilon(t, 444.8222, l.Truth("F2"), 1e-7)
	assert.Empty(t, pair(t, "340 N", "25 deg", "1.2 kN", "118 deg").Converted())
	assert.Equal(t, statics.USCustomary, pair(t, "340 lb", "25 deg", "1.2 kip", "118 deg").Unit.System())
}
