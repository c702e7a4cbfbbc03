package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// Who writes one force's value down for another is asked about the two, also where
// another slip comes to the same, as W·sin 30° does to W/2.
func TestAForceWrittenForAnotherIsAskedAboutAsSuch(t *testing.T) {
	hung := kinds.EquilibriumSource("", kinds.PartSource("T1 cable", "direction: 40 deg above -x"),
		kinds.PartSource("T2 cable", "direction: 30 deg above +x"), kinds.PartSource("W weight", "force: 1200 N"))
	rows := []struct{ quantity, entry, asks string }{
		{"F2", "1200 N", "T₂ is that of W"},
		{"F2", "W", "T₂ is that of W"},
		{"F2", "1.2 kN", "T₂ is that of W"},
		{"F1", "1200 N", "T₁ is that of W"},
	}
	for _, row := range rows {
		t.Run(row.quantity+" "+row.entry, func(t *testing.T) {
			r := NewWork(solvedBy(t, hung), lesson.DefaultSettings()).Enter(row.quantity, row.entry)
			require.Equal(t, verdict.SlipFound, r.Verdict)
			assert.Contains(t, r.Feedback, row.asks)
			assert.Equal(t, "other-force", r.Slips[0].Told())
		})
	}
	t.Run("what is not found is not spoken of", func(t *testing.T) {
		r := crate(t).Enter("F1", "1177.2 N")
		assert.NotContains(t, r.Feedback, "that of W")
		assert.Contains(t, r.Slips[0].IDs, "other-force")
	})
}
