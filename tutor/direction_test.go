package tutor

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/verdict"
)

// The barge's θ is 88.17°, the other pair's −138.11° (221.89°).
func TestADirectionIsReportedAsAsked(t *testing.T) {
	up := func(t *testing.T) *Lesson { return barge(t) }
	back := func(t *testing.T) *Lesson { return pair(t, "420 N", "-35 deg", "590 N", "-182 deg") }
	rows := []struct {
		of      func(*testing.T) *Lesson
		asked   string
		entry   string
		want    verdict.Verdict
		notes   string
		feeding string // in the feedback
	}{
		{up, "from +x", "88.2°", verdict.Correct, "", ""},
		{up, "from +x", "88.2", verdict.Correct, "", ""},
		{up, "from +x", "-271.8°", verdict.Correct, "angle-otherwise", "counter-clockwise from the positive x axis"},
		{up, "from +x", "448.2°", verdict.Correct, "angle-otherwise", ""},
		{up, "from +x", "1.539 rad", verdict.Correct, "angle-otherwise", "in degrees"},
		{up, "from +x", "N 1.8 E", verdict.Correct, "angle-otherwise", ""},
		{up, "from +x", "63.2° from P", verdict.Correct, "angle-otherwise", ""},
		{up, "from +x", "63.2°", verdict.SlipFound, "", ""},
		{back, "from +x", "221.9°", verdict.Correct, "", ""},
		{back, "from +x", "-138.1°", verdict.Correct, "", ""},

		{up, "from P", "63.2°", verdict.Correct, "", ""},
		{up, "from P", "63.2° from P", verdict.Correct, "", ""},
		{up, "from P", "63.2° from P toward Q", verdict.Correct, "", ""},
		{up, "from P", "88.2°", verdict.Correct, "angle-otherwise", "from P"},
		{up, "from P", "29.8° cw from Q", verdict.Correct, "angle-otherwise", "from P"},
		{up, "from Q", "-29.8°", verdict.Correct, "", ""},
		{up, "from Q", "29.8° clockwise from Q", verdict.Correct, "", ""},
		{up, "from Q", "29.8°", verdict.SlipFound, "", ""},
		{up, "from P", "-63.2°", verdict.SlipFound, "", ""},
		{up, "from P", "29.8° from Q", verdict.Unreadable, "", "On which side"},
		{up, "from +x", "29.8° from Q", verdict.Unreadable, "", "On which side"},
		{up, "from +x", "29.8° counter-clockwise from Q", verdict.SlipFound, "", ""},
		{up, "from Q", "29.8° from Q", verdict.SlipFound, "", ""},

		{up, "bearing", "N 1.8 E", verdict.Correct, "", ""},
		{up, "bearing", "azimuth 1.8", verdict.Correct, "", ""},
		{up, "bearing", "1.8°", verdict.Correct, "", ""},
		{up, "bearing", "88.2°", verdict.Correct, "angle-otherwise", "N 30° E"},
		{up, "bearing", "N 1.8 W", verdict.SlipFound, "", ""},
		{back, "bearing", "S 48.1 W", verdict.Correct, "", ""},
		{back, "bearing", "228.1", verdict.Correct, "", ""},
		{back, "bearing", "41.9° S of W", verdict.Correct, "angle-otherwise", ""},
		{back, "bearing", "N 48.1 E", verdict.SlipFound, "", ""},

		{up, "from the vertical", "1.8° right of +y", verdict.Correct, "", ""},
		{up, "from the vertical", "1.8° from the vertical to the right", verdict.Correct, "", ""},
		{up, "from the vertical", "1.8°", verdict.Unreadable, "", "On which side"},
		{up, "from the vertical", "88.2° above +x", verdict.Correct, "angle-otherwise", "left of +y"},
		{up, "from the vertical", "1.8° left of +y", verdict.SlipFound, "", ""},
		{back, "from the vertical", "48.1° left of −y", verdict.Correct, "", ""},
		{back, "from the vertical", "221.9°", verdict.Correct, "angle-otherwise", ""},

		{up, "from P", "63.2° counterclockwise", verdict.Correct, "", ""},
		{up, "from Q", "29.8° clockwise", verdict.Correct, "", ""},
		{up, "bearing", "1.8° clockwise", verdict.Correct, "", ""},
		{up, "from the vertical", "1.8° clockwise", verdict.Correct, "", ""},
		{up, "from +x", "88.2° counterclockwise", verdict.Correct, "", ""},

		{up, "acute", "88.2° in the first quadrant", verdict.Correct, "", ""},
		{up, "acute", "88.2°, Q1", verdict.Correct, "", ""},
		{back, "acute", "41.9° in quadrant III", verdict.Correct, "", ""},
		{back, "acute", "41.9° in quadrant IV", verdict.SlipFound, "", ""},
		{up, "from +x", "88.2° QI", verdict.Correct, "angle-otherwise", ""},
		{up, "acute", "88.2° above +x", verdict.Correct, "", ""},
		{up, "acute", "N 1.8 E", verdict.Correct, "", ""},
		{up, "acute", "88.2°", verdict.Unreadable, "", "In which quadrant"},
		{back, "acute", "41.9° below −x", verdict.Correct, "", ""},
		{back, "acute", "41.9° above +x", verdict.SlipFound, "", ""},
		{back, "acute", "-138.1°", verdict.Correct, "angle-otherwise", "below"},
	}
	for _, r := range rows {
		t.Run(r.asked+": "+r.entry, func(t *testing.T) {
			w := asking(t, r.of(t), "direction: "+r.asked)
			got := w.Enter("theta", r.entry)
			require.Equal(t, r.want, got.Verdict, "%+v", got)
			assert.Equal(t, r.notes, strings.Join(got.Notes, " "))
			assert.Contains(t, got.Feedback, r.feeding)
		})
	}
}

// What is shown of a direction is in the form that is asked, and is accepted
// without a note when entered.
func TestWhatIsShownOfADirectionIsAsAsked(t *testing.T) {
	rows := []struct{ asked, told, within, asks, label string }{
		{"from +x", "88.2°", "88.17°", "counter-clockwise from the positive x axis", "in degrees, to 1 after the point"},
		{"from P", "63.2° from P", "63.17° from P", "Give θ counter-clockwise from P", "in degrees from P"},
		{"from Q", "29.8° clockwise from Q", "29.83° clockwise from Q", "Give θ counter-clockwise from Q", "in degrees from Q"},
		{"from the vertical", "1.8° right of +y", "88.17°, that is 1.83° right of +y", "from the vertical", "from the vertical"},
		{"bearing", "N 1.8° E", "88.17°, that is N 1.83° E", "Give θ as a bearing", "as a bearing"},
		{"acute", "88.2° above +x", "88.17° above +x", "acute angle with its quadrant", "with its quadrant"},
	}
	for _, r := range rows {
		t.Run(r.asked, func(t *testing.T) {
			w := asking(t, barge(t), "direction: "+r.asked)
			theta := w.Lesson.Quantity("theta")
			assert.Equal(t, r.told, w.Lesson.Reported(theta, theta.True, w.Settings.Answer))
			assert.Contains(t, strings.Join(w.Lesson.Conditions(), " "), r.asks)
			assert.Contains(t, w.Asked(theta), r.label)
			assert.Contains(t, w.HintAt("theta", HintLevels).Formula.Value, r.told)
			for _, way := range w.Lesson.Solve(w.Settings) {
				assert.Contains(t, way.Steps[len(way.Steps)-1].Value, r.within)
			}
			got := w.Enter("theta", r.told)
			assert.Equal(t, verdict.Correct, got.Verdict)
			assert.Empty(t, got.Notes)
		})
	}
	t.Run("a later step goes on from it", func(t *testing.T) {
		w := asking(t, barge(t), "direction: from P")
		require.Equal(t, verdict.Correct, w.Enter("theta", "63.2°").Verdict)
		assert.Equal(t, verdict.Correct, w.Enter("alpha", "118° − θ").Verdict)
		v, _ := w.typed("alpha")
		assert.InDelta(t, 29.8, v, 1e-9)
	})
}

// Correcting an entry judges a reported direction again as it was typed.
func TestAReportedDirectionIsJudgedAgainAsTyped(t *testing.T) {
	w := asking(t, barge(t), "direction: from P")
	w.Enter("beta", "61.0°")
	require.Equal(t, verdict.Carried, w.Enter("theta", "61.0°").Verdict)
	got := w.Enter("beta", "63.17°")
	require.Equal(t, verdict.Correct, got.Verdict)
	assert.Equal(t, []string{"theta"}, got.Changed)
	require.Equal(t, verdict.Correct, w.Enter("theta", "63.2°").Verdict)
	assert.Empty(t, w.Enter("beta", "63.2°").Changed)
	assert.Equal(t, verdict.Correct, w.Standing("theta").Verdict)
}

// A solution entered step by step is done, however directions are reported.
func TestASolutionIsDoneHoweverDirectionsAreReported(t *testing.T) {
	for _, asked := range []string{"from +x", "from P", "from the vertical", "bearing", "acute"} {
		w := asking(t, barge(t), "direction: "+asked)
		for _, sol := range w.Lesson.Solve(w.Settings) {
			assert.True(t, w.Lesson.Worked(sol).Done(), asked)
		}
	}
}
