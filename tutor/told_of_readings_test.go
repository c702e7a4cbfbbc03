package tutor

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/statics/expr"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// Slips in reading a direction from the statement, and a neighbour's value in
// place of a force's own. The values are worked by hand; most were once not seen,
// or told as two slips.
func TestMisreadingsAndNeighboursAreTold(t *testing.T) {
	tugs := kinds.TwoForcesSource("", kinds.ForceSource("P", "2.82 kN", "S 22 E"), kinds.ForceSource("Q", "6.61 kN", "4:3 down left"))
	buoy := kinds.TwoForcesSource("", kinds.ForceSource("P", "161 N", "76 deg"), kinds.ForceSource("Q", "46 N", "39 deg above -x"))
	slip := kinds.TwoForcesSource("", kinds.ForceSource("P", "70 N", "33 deg above -x"), kinds.ForceSource("Q", "41 N", "12:5 up left"))
	tow := kinds.TwoForcesSource("", kinds.ForceSource("P", "448 lb", "-62 deg"), kinds.ForceSource("Q", "570 lb", "12 deg above -x"))
	dredger := kinds.TwoForcesSource("", kinds.ForceSource("P", "2.52 kN", "S 34 W"), kinds.ForceSource("Q", "8.64 kN", "81 deg"))
	barge := kinds.TwoForcesSource("", kinds.ForceSource("P", "280 N", "86 deg"), kinds.ForceSource("Q", "260 N", "-50 deg"))
	hawsers := kinds.ConcurrentForcesSource("", kinds.ForceSource("A", "4.66 kN", "37 deg above -x"), kinds.ForceSource("B", "7.65 kN", "S 44 E"), kinds.ForceSource("C", "9.62 kN", "62 deg below +x"))
	whole := kinds.MissingForceSource("", kinds.ForceSource("A", "510 N", "-160 deg"), kinds.MissingSource("B"), kinds.ResultantSource("800 N", "158 deg"))
	ahead := kinds.MissingForceSource("", kinds.ForceSource("A", "530 N", "-26 deg"), kinds.MissingSource("B"), kinds.ResultantSource("560 N", "17 deg"))
	sized := kinds.MissingForceSource("", kinds.ForceSource("P", "110 lb", "-161 deg"), kinds.MissingSource("Q", "magnitude", "464 lb"), kinds.DirectedSource("-53 deg"))
	derrick := kinds.EquilibriumSource("", kinds.PartSource("P force", "direction: 80 deg", "force: 880 N"), kinds.PartSource("Q force", "direction: -154 deg", "force: 530 N"), kinds.PartSource("C cable"))
	outward := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "51 N", "42 deg"), kinds.AxisSource("u", "35 deg"), kinds.AxisSource("v", "115 deg"))
	sloped := kinds.ComponentsSource("", "T", "180 N", "2:3 down left")
	pontoon := kinds.ConcurrentForcesSource("", kinds.ForceSource("P", "610 lb", "2:3 up right"), kinds.ForceSource("Q", "190 lb", "S 32 E"), kinds.ForceSource("S", "250 lb", "72 deg"))
	rows := []struct {
		name    string
		problem lesson.Source
		entries string
		told    string // by the first slip, among others of the same value
	}{
		// tan⁻¹(4/3) = 53.13°; 4/3 = 1.333; in radians 0.9273, in gradians 59.03. P points to −68°.
		{"a slope without the inverse key", tugs, "phi 110.67", "inverse-missing"},
		{"a slope's angle in gradians", tugs, "phi 52.97", "gradian-mode"},
		{"a slope's angle in radians, gone on from", tugs, "R 6.184", "radian-mode"},
		{"a slope's fraction upside down", tugs, "phi 75.13", "ratio-inverted slope-inverted"},
		{"a slope's angle in the wrong quadrant", slip, "phi 214.38", "quadrant-missed opposite-sense"},
		{"90° − 39° for 180° − 39°", buoy, "phi 25", "complement-for-supplement"},
		// 360° − (78° + 62°); ten times the right 130° is 1300°, three turns and 220°
		{"the same, where a point moved leads there too", tow, "phi 220", "complement-for-supplement"},
		// 34° and 81° from south and from +x: −124° + 81°, and 236° + 81°
		{"directions added, one counted below the axis", dredger, "phi 155; gamma 223", "directions-added"},
		{"directions added, counted all round", dredger, "phi 155; gamma -137", "directions-added"},
		// α = 73.24° and β = 62.76°: θ = 86° − β = −50° + α
		{"α laid off from the other force as from its own", barge, "theta 159.24", "wrong-neighbour"},
		{"another's angle to one's own sides", hawsers, "F3x 6.920", "other-force"},

		{"the other magnitude with one's own direction", whole, "F1x -751.8", "other-force"},
		{"the other magnitude for the resultant", whole, "Rx -472.9", "other-force"},
		{"the other magnitude, of the missing force", sized, "F1x -438.7", "other-force"},
		{"one magnitude twice in the cosine law", ahead, "beta 43; F2 428.5", "other-force"},
		{"the resultant's acute angle in gradians", whole, "Ry 271.0", "gradian-mode"},
		{"sine for cosine of the resultant's acute angle", whole, "Rx -299.7", "sine-cosine-swapped"},

		{"the neighbour's magnitude in a sum", derrick, "F3x 638.1", "other-force"},
		{"one arrow's head for its tail", derrick, "phi3 306", "opposite-sense"},
		{"one direction clockwise", derrick, "phi3 286", "clockwise"},
		{"one direction from the other axis", derrick, "phi3 164", "other-axis"},
		{"the whole force for its part", outward, "phi 80; Fu 51.00", "magnitudes-for-components"},

		// 100.7 + 77.25, and 610·(√13/3) for 610·(3/√13)
		{"a force left out of a sum of slopes", pontoon, "F2x 100.7; F3x 77.25; Rx 177.9", "term-missing"},
		{"the long side over a leg", pontoon, "F1x 733.1", "ratio-inverted"},

		// 180·(3/13) and 180·(2/13) with the fraction kept to four digits
		{"a root left out, the fraction rounded", sloped, "Fy -27.68", "root-missing"},
	}
	for _, row := range rows {
		t.Run(row.name, func(t *testing.T) {
			r := enterAll(solvedBy(t, row.problem), row.entries, "; ")
			require.Equal(t, verdict.SlipFound, r.Verdict, "%s %v", r.Feedback, r.Slips)
			for _, id := range strings.Fields(row.told) {
				assert.Contains(t, r.Slips[0].IDs, id)
			}
		})
	}
}

// What one slip surely gives, far from the right value, is not told as the work of
// rounding, and what exact products come to was not rounded.
func TestFarFromTheRightValueIsNotRounding(t *testing.T) {
	narrow := kinds.MissingForceSource("", kinds.ForceSource("P", "370 N", "-85 deg"), kinds.MissingSource("Q"), kinds.ResultantSource("371 N", "-77 deg"))
	r := NewWork(solvedBy(t, narrow), lesson.DefaultSettings()).Enter("alpha", "95.11") // 180° − 84.89°
	require.NotEmpty(t, r.Slips)
	assert.Equal(t, verdict.SlipFound, r.Verdict, "%s", r.Feedback)
	assert.Contains(t, r.Slips[0].IDs, "obtuse-assumed")

	mooring := kinds.ConcurrentForcesSource("", kinds.ForceSource("P", "310 N", "15:8 up right"), kinds.ForceSource("Q", "550 N", "-61 deg"), kinds.ForceSource("S", "830 N", "63 deg below +x"))
	r = NewWork(solvedBy(t, mooring), lesson.DefaultSettings()).Enter("F1x", "141.2 N") // 300 for 310; 310·8 to two digits is 2500
	require.NotEmpty(t, r.Slips)
	assert.Equal(t, verdict.SlipFound, r.Verdict, "%s", r.Feedback)
	assert.Contains(t, r.Slips[0].IDs, "given-miscopied")
}

// Values that are whole are not rounded to whole degrees on the way, and nobody
// takes 2 for √5.
func TestWhatNobodyRoundsIsNotBlamed(t *testing.T) {
	bridle := kinds.ObliqueComponentsSource("", kinds.ForceSource("F", "570 N", "42 deg"), kinds.AxisSource("a", "12 deg"), kinds.AxisSource("b", "78 deg"))
	sides := kinds.FromComponentsSource("", "F", "29 N", "-130 N")
	steep := kinds.ConcurrentForcesSource("", kinds.ForceSource("A", "168 N", "1:2 up right"), kinds.ForceSource("B", "880 N", "27 deg below -x"), kinds.ForceSource("C", "177 N", "-71 deg"))
	for _, row := range []struct {
		problem               lesson.Source
		quantity, entry, told string
	}{
		{bridle, "phi", "65.00", "given-miscopied"},   // 66°, of 77° for 78°
		{sides, "alpha", "73.83°", "given-miscopied"}, // 100 for 130, which is given
		{steep, "F1y", "84.00 N", "leg-over-leg"},     // 168·1/2
	} {
		r := NewWork(solvedBy(t, row.problem), lesson.DefaultSettings()).Enter(row.quantity, row.entry)
		require.Equal(t, verdict.SlipFound, r.Verdict, "%s %v", r.Feedback, r.Slips)
		assert.Contains(t, r.Slips[0].IDs, row.told)
	}
}

// However a direction is told, the formula it is read by comes to it; where it is
// told from +x, nothing is worked out.
func TestReadingComesToTheDirection(t *testing.T) {
	for _, told := range []string{"40 deg below +x", "40 deg above -x", "40 deg below -x", "N 40 E", "N 40 W", "S 40 E", "S 40 W",
		"40 deg N of W", "3:4 up right", "3:4 up left", "3:4 down right", "3:4 down left", "20 deg clockwise from +y"} {
		q := solvedBy(t, kinds.TwoForcesSource("", kinds.ForceSource("P", "340 N", told), kinds.ForceSource("Q", "610 N", "75 deg"))).Quantity("theta1")
		require.NotNil(t, q.Reading(), told)
		assert.InDelta(t, q.True, expr.Eval(q.Reading(), nil), 1e-9, told)
	}
	plain := kinds.TwoForcesSource("", kinds.ForceSource("P", "340 N", "140 deg"), kinds.ForceSource("Q", "610 N", "40 deg above +x"))
	assert.Nil(t, solvedBy(t, plain).Quantity("theta1").Reading())
	assert.Nil(t, solvedBy(t, plain).Quantity("theta2").Reading())
}

// Of a force drawn against its sense, the question speaks of the parts that there
// are: where forces alone act on the particle, of no cable and no strut.
func TestTheQuestionOnArrowsFitsTheParts(t *testing.T) {
	cable, strut, weight := "a cable pulls away", "a strut pushes towards", "a weight pulls down"
	forces := kinds.EquilibriumSource("", kinds.PartSource("P force", "force: 300 N", "direction: 30 deg"), kinds.PartSource("Q force", "force: 450 N", "direction: 120 deg"), kinds.PartSource("F force"))
	braced := kinds.EquilibriumSource("", kinds.PartSource("T cable", "direction: 56 deg above -x"), kinds.PartSource("B strut", "direction: 26 deg below -x"), kinds.PartSource("W weight", "force: 520 N"))
	hung := kinds.EquilibriumSource("", kinds.PartSource("T1 cable", "direction: 40 deg above -x"), kinds.PartSource("T2 cable", "direction: 30 deg above +x"), kinds.PartSource("W weight", "force: 520 N"))
	sprung := kinds.EquilibriumSource("", kinds.PartSource("T cable", "direction: 27 deg above -x"), kinds.PartSource("S spring", "direction: 36 deg below -x", "stiffness: 10 kN/m"), kinds.PartSource("W weight", "force: 430 N"))
	rows := []struct {
		problem    lesson.Source
		entry      string
		says, lack []string
	}{
		{forces, "sumx Fx - 300 cos 30 + 450 cos 60 = 0", []string{"balances the others"}, []string{cable, strut, weight}},
		{braced, "sumx -T cos 56 - B cos 26 = 0", []string{cable, strut, weight}, []string{"spring"}},
		{hung, "sumy T1 sin 40 + T2 sin 30 + W = 0", []string{cable, weight}, []string{strut, "force acts"}},
		{sprung, "sumx -T cos 27 - S cos 36 = 0", []string{cable, "stretched spring", weight}, []string{strut}},
	}
	for _, row := range rows {
		r := enterAll(solvedBy(t, row.problem), row.entry, "; ")
		require.Equal(t, verdict.SlipFound, r.Verdict, r.Feedback)
		require.Contains(t, r.Slips[0].IDs, "sense-reversed")
		for _, s := range row.says {
			assert.Contains(t, r.Feedback, s)
		}
		for _, s := range row.lack {
			assert.NotContains(t, r.Feedback, s)
		}
	}
}
