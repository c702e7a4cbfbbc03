package tutor

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// A slip far upstream, everything after it rightly done in the head. The values
// are worked here by the formulas of the force triangle and of rectangular
// components (from memory), for 340 N at 25° and 610 N at 118°.
func TestSlipsInTheHeadAreFollowedByEveryWay(t *testing.T) {
	deg := math.Pi / 180
	sin, cos := func(d float64) float64 { return math.Sin(d * deg) }, func(d float64) float64 { return math.Cos(d * deg) }
	x1, y1, x2, y2 := 340*cos(25), 340*sin(25), 610*cos(118), 610*sin(118)
	law := func(f1, f2, gamma float64) float64 { return math.Sqrt(f1*f1 + f2*f2 - 2*f1*f2*cos(gamma)) }
	rows := []struct {
		name, quantity string
		value          float64
		id             string
	}{
		{"sine for cosine in one component, to R", "R", math.Hypot(340*sin(25)+x2, y1+y2), "sine-cosine-swapped"},
		{"a sign lost in one component, to the direction", "theta", math.Atan2(y1+y2, x1-x2) / deg, "sign-lost"},
		{"a sign lost that turns the arrow over", "theta", math.Atan2(y1+y2, -x1+x2) / deg, "sign-lost"},
		{"a given miscopied in the whole formula", "R", law(430, 610, 87), "given-miscopied"},
		{"a direction clockwise from the start", "R", math.Hypot(x1+610*cos(-118), y1+610*sin(-118)), "clockwise"},
		{"no 2 in the cosine law, to the direction", "theta", 118 - math.Asin(340*sin(87)/math.Sqrt(340*340+610*610-340*610*cos(87)))/deg, "two-missing"},
		{"radians from first to last", "R", math.Hypot(340*math.Cos(25)+610*math.Cos(118), 340*math.Sin(25)+610*math.Sin(118)), "radian-mode"},
		{"one force pointing backward", "gamma", 93, "opposite-sense"},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			l := barge(t)
			got := NewWork(l, lesson.DefaultSettings()).Enter(r.quantity, lesson.Digits{Magnitude: 4, Angle: 2}.Written(l.Quantity(r.quantity).Dim, r.value))
			require.NotEmpty(t, got.Slips)
			assert.Contains(t, got.Slips[0].IDs, r.id, "%+v", got.Slips)
		})
	}
}

// Whoever goes on from a wrong component chooses the quadrant by its sign, and
// whoever slips in writing down what follows has carried nothing else wrong.
func TestWrongEntriesAreGoneOnFromAsTheyStand(t *testing.T) {
	rows := []struct {
		name    string
		before  [2]string
		entry   [2]string
		verdict verdict.Verdict
		id      string
	}{
		// tan⁻¹(682.3 / −200) lies in the second quadrant: 106.3°
		{"the quadrant of the wrong component", [2]string{"Rx", "-200 N"}, [2]string{"theta", "106.34°"}, verdict.Carried, ""},
		// R follows as 713.7 N from γ = 93°
		{"digits exchanged in what is carried", [2]string{"gamma", "93°"}, [2]string{"R", "731.7 N"}, verdict.SlipFound, "digits-swapped"},
		{"a point misplaced in what is carried", [2]string{"gamma", "93°"}, [2]string{"R", "7137 N"}, verdict.SlipFound, "decimal-place"},
		// 340 sin 25° + 500 = 643.7
		{"a sum with what was entered wrong", [2]string{"F2y", "500 N"}, [2]string{"Ry", "643.7 N"}, verdict.Carried, ""},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			w := NewWork(barge(t), lesson.DefaultSettings())
			require.NotEqual(t, verdict.Correct, w.Enter(r.before[0], r.before[1]).Verdict)
			got := w.Enter(r.entry[0], r.entry[1])
			require.Equal(t, r.verdict, got.Verdict, "%+v", got)
			if r.id != "" {
				assert.Contains(t, got.Slips[0].IDs, r.id)
			}
		})
	}
}

// A row that one value may come of at many places or by many routes is not
// thought of more often for it: the slip in the step itself stays first.
func TestManyWaysOnDoNotOutweighTheStepItself(t *testing.T) {
	got := NewWork(barge(t), lesson.DefaultSettings()).Enter("R", "713.7 N")
	require.Equal(t, verdict.SlipFound, got.Verdict)
	assert.Equal(t, "R", got.Slips[0].At)
	assert.Contains(t, []string{"cosine-sign", "included-for-interior"}, got.Slips[0].Likely)
	for _, s := range got.Slips {
		assert.True(t, slices.IsSortedFunc(s.IDs, singlesFirst))
	}
}

// A small number with few digits is a rounded one, whatever its unit: 324.32 N
// over 14 kN/m, of which 324.3 N is written, is 0.02317 m.
func TestASmallNumberIsReadAsRounded(t *testing.T) {
	w := NewWork(solvedBy(t, kinds.EquilibriumSource("", kinds.PartSource("T cable", "direction: 18 deg above -x"), kinds.PartSource("S spring", "direction: 39 deg below -x", "stiffness: 14 kN/m"), kinds.PartSource("W weight", "force: 350 N"))), lesson.DefaultSettings())
	require.Equal(t, verdict.Correct, w.Enter("F1", "324.3 N").Verdict)
	require.Equal(t, verdict.Correct, w.Enter("F2", "396.9 N").Verdict)
	r := w.Enter("s2", "0.02317 m")
	require.Equal(t, verdict.SlipFound, r.Verdict)
	assert.Equal(t, []string{"other-force"}, r.Slips[0].IDs)
}
