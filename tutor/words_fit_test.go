package tutor

import (
	"strings"
	"testing"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
)

// A question speaks of what is there: of a right triangle only at a rectangular
// component, and of acute and obtuse only at an angle.
func TestAQuestionFitsTheStepItAsksAbout(t *testing.T) {
	beyond := solvedBy(t, kinds.ObliqueComponentsSource("", kinds.ForceSource("T", "720 N", "76 deg"), kinds.AxisSource("u", "45 deg"), kinds.AxisSource("v", "-20 deg")))
	due := solvedBy(t, kinds.MissingForceSource("", kinds.ForceSource("A", "520 N", "35 deg"), kinds.MissingSource("B", "magnitude", "410 N"), kinds.DirectedSource("0 deg")))
	hung := solvedBy(t, kinds.EquilibriumSource("",
		kinds.PartSource("T1 cable", "direction: 40 deg above -x"),
		kinds.PartSource("T2 cable", "direction: 30 deg above +x"),
		kinds.PartSource("W weight", "mass: 120 kg")))
	rows := []struct {
		lesson          *Lesson
		quantity, entry string
		says            string
		never           string
	}{
		{beyond, "Fv", "-279.04 N", "sine of the angle, or its cosine", "right triangle"},
		{beyond, "Fv", "-322.98 N", "which quantity belongs on top", "right triangle"}, // the fraction upside down
		{beyond, "Fv", "-172.92 N", "the tangent of the angle", "right triangle"},
		{hung, "F1", "889.42 N", "the tangent of the angle", "right triangle"},
		{due, "R", "613.8 N", "?", "acute"},
		{lamp(t), "phi3", "165", "carry a minus", "three angles"}, // 180° − 50° + 35°: no angle of the triangle
		{hung, "gamma", "170", "three angles", "carry a minus"},
		{barge(t), "alpha", "156.17", "three angles", "carry a minus"},
		{barge(t), "F1x", "143.7 N", "right triangle", "tangent"},
		{barge(t), "F1x", "158.5 N", "right triangle", "sine"}, // 340 tan 25°
		{barge(t), "alpha", "150.17", "acute or obtuse", "right triangle"},
	}
	for _, r := range rows {
		t.Run(r.quantity+" "+r.entry, func(t *testing.T) {
			got := NewWork(r.lesson, lesson.DefaultSettings()).Enter(r.quantity, r.entry)
			assert.Equal(t, verdict.SlipFound, got.Verdict, "%+v", got)
			assert.Contains(t, got.Feedback, r.says)
			assert.NotContains(t, got.Feedback, r.never)
		})
	}
}

// The arrows of a free-body diagram are listed with a single “and”.
func TestTheArrowsAreOneList(t *testing.T) {
	got := NewWork(lamp(t), lesson.DefaultSettings()).Enter("F1", "-2235.2 N")
	assert.Equal(t, verdict.SlipFound, got.Verdict, "%+v", got)
	list, _, _ := strings.Cut(got.Feedback, ".")
	assert.Contains(t, list, "spring")
	assert.Equal(t, 1, strings.Count(list, " and "), list)
}

// An angle of the triangle written with a turn more is right, and is told how it is asked.
func TestAnAngleOfTheTriangleIsAskedWithinItsRange(t *testing.T) {
	got := NewWork(barge(t), lesson.DefaultSettings()).Enter("gamma", "-273°")
	assert.Equal(t, verdict.Correct, got.Verdict)
	assert.Contains(t, got.Feedback, "from 0° to 180°")
}

// A value at the very edge of what a sketch shows is not called outside it.
func TestAValueAtTheEdgeIsNotOutside(t *testing.T) {
	due := solvedBy(t, kinds.MissingForceSource("", kinds.ForceSource("W", "2.4 kip", "160 deg"), kinds.MissingSource("E"), kinds.ResultantSource("3.1 kip", "115 deg")))
	got := NewWork(due, lesson.DefaultSettings()).Enter("F2", "0.7 kip")
	assert.NotContains(t, got.Feedback, "outside")
}

// A magnitude with a minus is asked about its minus.
func TestAMinusBeforeAMagnitudeIsAskedAbout(t *testing.T) {
	got := NewWork(barge(t), lesson.DefaultSettings()).Enter("R", "-682.6 N")
	assert.Equal(t, verdict.Unexplained, got.Verdict, "%+v", got)
	assert.Contains(t, got.Feedback, "minus")
	assert.NotContains(t, NewWork(barge(t), lesson.DefaultSettings()).Enter("R", "5000 N").Feedback, "minus")
	assert.Contains(t, crate(t).Enter("F3", "-1177 N").Feedback, "minus", "a weight, whichever way is up")
}

// A direction may be asked otherwise than from +x: no question about finding one says how.
func TestNoQuestionTellsFromWhereADirectionIsAsked(t *testing.T) {
	w := NewWork(barge(t), lesson.DefaultSettings())
	for _, row := range slips.Catalogue() {
		assert.NotContains(t, w.askAbout(Suspect{Likely: row.ID, IDs: row.IDs, At: "theta"}), "+x", row.ID)
	}
}

// Who wrote a right value down too short is told to write more of it, not to round
// less on the way.
func TestAValueWrittenShortIsHelpedAsThat(t *testing.T) {
	w := NewWork(barge(t), lesson.DefaultSettings())
	w.Enter("beta", "63")
	again := w.Enter("beta", "63")
	assert.Equal(t, verdict.EarlyRounding, again.Verdict)
	assert.Contains(t, again.Feedback, "Write down 2 decimals of what your calculator shows for β.")
	assert.NotContains(t, again.Feedback, "until the last step")
	assert.Equal(t, "whole degrees", again.Rounded.Kept())
	assert.Equal(t, "2 decimals", again.Rounded.Wanted())
}

// lamp is a weight that hangs between a cable and a spring.
func lamp(t testing.TB) *Lesson {
	return solvedBy(t, kinds.EquilibriumSource("",
		kinds.PartSource("T cable", "direction: 35 deg above -x"),
		kinds.PartSource("S spring", "direction: 50 deg above +x", "stiffness: 4 kN/m"),
		kinds.PartSource("W weight", "force: 900 N")))
}
