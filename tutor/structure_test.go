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

// A number of the statement in an expression is that, though a value on the way would
// round to it: 410 is B, not 2 digits of R·sin β, and 45 is an angle, not one of which
// the sine was kept to a digit.
func TestAStatedNumberIsNoRoundedOne(t *testing.T) {
	missing := kinds.MissingForceSource("", kinds.ForceSource("A", "520 N", "35 deg"), kinds.MissingSource("B", "magnitude", "410 N"), kinds.DirectedSource("0 deg"))
	oblique := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "560 N", "70 deg"), kinds.AxisSource("u", "25 deg"), kinds.AxisSource("v", "118 deg"))
	rows := []struct {
		problem               lesson.Source
		quantity, entry, told string
	}{
		{missing, "R", "√(520²+410²)", "cross-term-missing"},
		{oblique, "Fu", "560 sin 45/sin 87", "other-force"},
	}
	for _, row := range rows {
		r := NewWork(solvedBy(t, row.problem), lesson.DefaultSettings()).Enter(row.quantity, row.entry)
		require.Equal(t, verdict.SlipFound, r.Verdict, "%s: %s", row.entry, r.Feedback)
		assert.Contains(t, r.Slips[0].IDs, row.told)
	}
}

// A formula that finds another quantity, and no one slip's, is told as that: no two
// slips are looked for behind it.
func TestAFormulaForAnotherQuantityIsToldSo(t *testing.T) {
	rows := []struct{ quantity, entry, of string }{
		{"R", "340 cos 25 + 610 cos 118", "Rx"},
		{"R", "610 sin 118 + 340 sin 25", "Ry"},
		{"R", "340 sin 25", "Py"},
	}
	for _, row := range rows {
		r := NewWork(barge(t), lesson.DefaultSettings()).Enter(row.quantity, row.entry)
		require.Equal(t, verdict.Unexplained, r.Verdict, "%s: %s", row.entry, r.Feedback)
		assert.Contains(t, r.Feedback, row.of)
		assert.Empty(t, r.Slips)
	}
	one := NewWork(barge(t), lesson.DefaultSettings()).Enter("gamma", "118 − 25") // φ: one slip's
	assert.Equal(t, verdict.SlipFound, one.Verdict)
}

// The form of an expression tells what was done though it holds rounded values found on
// the way: 682.6 is R.
func TestTheFormIsReadWithRoundedValuesInIt(t *testing.T) {
	rows := []struct{ quantity, entry, told string }{
		{"alpha", "cos⁻¹((600² + 682.6² − 340²)/(2·610·682.6))", "given-miscopied"},
		{"alpha", "cos⁻¹((610² + 682.6² − 300²)/(2·610·682.6))", "given-miscopied"},
		{"alpha", "cos⁻¹((160² + 682.6² − 340²)/(2·610·682.6))", "given-miscopied"},
		{"beta", "sin⁻¹(610·sin(29.83°)/330)", "given-miscopied"},
		{"Rx", "682.6/cos 88.17°", "ratio-inverted"},
	}
	for _, row := range rows {
		r := NewWork(barge(t), lesson.DefaultSettings()).Enter(row.quantity, row.entry)
		require.Equal(t, verdict.SlipFound, r.Verdict, "%s: %s", row.entry, r.Feedback)
		assert.Contains(t, r.Slips[0].IDs, row.told, row.entry)
	}
}

// A formula of a slip's form is that slip's, though the rounding of the numbers in it
// would reach the right value: cos 22° stands where cos 25° should. And no rounding is
// told of that moves a value beyond all bounds, as where it divides by nearly nothing.
func TestAFormulaOfASlipIsNotTheRightWayRounded(t *testing.T) {
	oblique := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "560 N", "70 deg"), kinds.AxisSource("u", "25 deg"), kinds.AxisSource("v", "118 deg"))
	w := NewWork(solvedBy(t, oblique), lesson.DefaultSettings())
	r := w.Enter("Fu", "(191.5·sin 62° − 526.2·(−cos 62°))/(cos(22°)·sin 62° − sin(25°)·(−cos 62°))")
	assert.NotEqual(t, verdict.EarlyRounding, r.Verdict, r.Feedback)

	stay := lesson.Branch("", lesson.Leaf("name", "A"), lesson.Leaf("is", "cable"), lesson.Leaf("direction", "5:12 up left"))
	guy := lesson.Branch("", lesson.Leaf("name", "B"), lesson.Leaf("is", "cable"), lesson.Leaf("direction", "58 deg above +x"))
	load := lesson.Branch("", lesson.Leaf("name", "W"), lesson.Leaf("is", "weight"), lesson.Leaf("force", "450.8 lb"))
	w = NewWork(solvedBy(t, kinds.EquilibriumSource("", stay, guy, load)), lesson.DefaultSettings())
	r = w.Enter("F1", "450.8·cos(58°)/(cos(22.62°)·cos 58° + cos(180° − 22.62°)·cos 58°)")
	assert.NotEqual(t, verdict.EarlyRounding, r.Verdict, r.Feedback)
}
