package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// What a learner goes on from need not be what stands written: the calculator
// holds it with all its digits, and a formula is typed with a value that was
// rounded, though it may also be a given with a digit left out.
func TestWhatFollowsFromAValueHeldIsRight(t *testing.T) {
	long := kinds.MissingForceSource("", kinds.ForceSource("A", "760 N", "141 deg"), kinds.MissingSource("B", "magnitude", "840 N"), kinds.DirectedSource("123 deg"))
	even := kinds.MissingForceSource("", kinds.ForceSource("A", "400 N", "23 deg"), kinds.MissingSource("B", "magnitude", "440 N"), kinds.DirectedSource("68 deg"))
	for _, row := range []struct {
		problem      lesson.Source
		before, q, v string
		right        bool
	}{
		{long, "1526", "Rx", "-831.1", true},  // 1526 cos 123°
		{long, "1526", "Rx", "-830.9", true},  // 1525.6 cos 123°
		{long, "1526", "Rx", "-830.6", false}, // 1525.0 cos 123°
		{even, "", "theta2", "68 + 40.00", true},
		{even, "", "theta2", "68 + 40", true}, // α is 40.005°, and a given 400 N
		{even, "", "theta2", "68 + 44", false},
	} {
		w := NewWork(solvedBy(t, row.problem), lesson.DefaultSettings())
		if row.before != "" {
			assert.Equal(t, verdict.Correct, w.Enter("R", row.before).Verdict)
		}
		assert.Equal(t, row.right, w.Enter(row.q, row.v).Verdict == verdict.Correct, row.v)
	}
}
