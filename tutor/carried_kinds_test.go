package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// What is gone on from, and what only looks so, in the other kinds. The values are
// worked by hand.
func TestCarriedInOtherKinds(t *testing.T) {
	held := func(parts ...lesson.Source) lesson.Source { return kinds.EquilibriumSource("", parts...) }
	wide := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "550 N", "-132 deg"), kinds.AxisSource("u", "176 deg"), kinds.AxisSource("v", "-68 deg"))
	low := kinds.ObliqueComponentsSource("", kinds.ForceSource("F", "660 N", "-66 deg"), kinds.AxisSource("a", "-51 deg"), kinds.AxisSource("b", "-102 deg"))
	flat := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "510 N", "-10 deg"), kinds.AxisSource("u", "8 deg"), kinds.AxisSource("v", "-57 deg"))
	pulled := held(kinds.PartSource("P force", "force: 620 N", "direction: -93 deg"), kinds.PartSource("Q force", "force: 430 N", "direction: -167 deg"), kinds.PartSource("C cable"))
	strut := held(kinds.PartSource("T cable", "direction: 24 deg above -x"), kinds.PartSource("B strut", "direction: 30 deg below -x"), kinds.PartSource("W weight", "force: 620 N"))
	least := kinds.MissingForceSource("", kinds.ForceSource("P", "360 N", "140 deg"), kinds.MissingSource("Q"), kinds.DirectedSource("167 deg"), lesson.Leaf("find", "smallest"))
	two := held(kinds.PartSource("T cable", "direction: 61 deg above -x"), kinds.PartSource("F cable", "force: 799 N"), kinds.PartSource("W weight", "force: 940 N"))
	for _, r := range []struct {
		name    string
		problem lesson.Source
		entries string
		want    verdict.Verdict
		told    string // the entry it rests on, or the slip
	}{
		{"more than half a turn below zero", wide, "phi 378; gamma -198.00", verdict.Carried, "phi"},
		{"the same, a turn further on", wide, "phi 378; gamma 162", verdict.Carried, "phi"},
		{"an angle in which the wrong one cancels", low, "alpha -168; phi 129", verdict.SlipFound, "included-for-interior"},
		{"a sign squared away", pulled, "F3x -451.4; F3y 522.4; F3 690.4", verdict.Carried, "F3y"},
		{"an angle that cancels with the force found by it", flat, "alpha 40.7; phi 6.5; gamma 173.5; Fu 2938; Fv 1392", verdict.Carried, "phi"},
		{"both components count", pulled, "F3x -387.0; F3y 522.4; F3 650.1", verdict.Carried, "F3x"},
		{"from a force that is another's", strut, "F1 620; F2 654.0", verdict.Carried, "F1"},
		{"the resultant from the smallest force by squares", least, "F2 183.4; R 309.8", verdict.Carried, "F2"},
		{"the smallest force from the resultant by squares", least, "R 163.4; F2 320.8", verdict.Carried, "R"},
		{"near neither of two solutions", two, "F2y -353.1; F2x 2667; theta2 -7.54", verdict.Carried, "F2x"},
		{"the other solution's", two, "F2y -353.1; F2x 2667; theta2 84.22", verdict.SlipFound, "branches-mixed"},
	} {
		t.Run(r.name, func(t *testing.T) {
			got := enterAll(solvedBy(t, r.problem), r.entries, "; ")
			require.Equal(t, r.want, got.Verdict, "%s %v", got.Feedback, got.Slips)
			if r.want == verdict.Carried {
				assert.Equal(t, r.told, got.From)
				return
			}
			assert.Contains(t, got.Slips[0].IDs, r.told)
		})
	}
}
