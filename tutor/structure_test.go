package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// Squares subtracted and a minus left outside a square come to one value; how it
// is written out tells which of the two was done.
func TestSquaresAreToldApartByForm(t *testing.T) {
	left := kinds.FromComponentsSource("", "M", "-310 N", "545 N")
	below := kinds.FromComponentsSource("", "M", "545 N", "-310 N")
	right := kinds.FromComponentsSource("", "M", "310 N", "545 N")
	rows := []struct {
		problem     lesson.Source
		entry, told string
	}{
		{left, "sqrt(545^2-310^2)", "squares-subtracted"},
		{left, "sqrt(545^2-(-310)^2)", "squares-subtracted"},
		{left, "sqrt(Fy^2-Fx^2)", "squares-subtracted"},
		{left, "sqrt(-310^2+545^2)", "minus-outside-square"},
		{left, "sqrt(545^2+-310^2)", "minus-outside-square"},
		{below, "sqrt(545^2-310^2)", "squares-subtracted"},
		{below, "sqrt(545^2+-310^2)", "minus-outside-square"},
		{right, "sqrt(545^2-310^2)", "squares-subtracted"},
		{right, "sqrt(-310^2+545^2)", "squares-subtracted"}, // no minus is given that could be left outside
	}
	for _, row := range rows {
		t.Run(row.entry, func(t *testing.T) {
			r := NewWork(solvedBy(t, row.problem), lesson.DefaultSettings()).Enter("F", row.entry)
			require.Equal(t, verdict.SlipFound, r.Verdict, r.Feedback)
			assert.Equal(t, []string{row.told}, r.Slips[0].IDs)
		})
	}
}
