package tutor

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/lesson"
	"closingside/tutor/slips"
	"closingside/tutor/verdict"
)

// What learners wrote whose mistake was once not seen, or another one named.
// The values are worked by hand, with four digits kept on the way where that is
// said.
func TestMistakesToldApart(t *testing.T) {
	rows := []struct {
		name           string
		problem        string // magnitudes in N and directions in degrees
		entries, slips string // slips: the ids of the first, where it is carried from, or what was rounded
		verdict        verdict.Verdict
	}{
		{"a sign lost behind an arctangent, the quadrant by the signs left", "54.62 293 89.35 344", "Rx 107.2, Ry -74.91, theta -145.05", "sign-lost", verdict.SlipFound},
		{"directions added and one counted clockwise", "81.29 140 202.3 94", "phi 126", "clockwise directions-added", verdict.SlipFound},
		{"one force reversed, the angle taken as drawn", "81.29 140 202.3 94", "theta 115.85", "cosine-sign included-for-interior opposite-sense", verdict.SlipFound},
		{"only rounding of what was entered tells these apart", "81.29 140 202.3 94", "gamma 134, R 265.3, alpha 167.27", "cosine-sign included-for-interior obtuse-assumed", verdict.SlipFound},
		{"a force left out, four digits kept: 597 · 0.9336", "1340 310 597 201", "Rx -557.4", "term-missing", verdict.SlipFound},
		{"a force left out, four digits kept: 1340 · 0.6428", "1340 310 597 201", "Rx 861.4", "term-missing", verdict.SlipFound},
		{"forces added as numbers for a component", "81.29 140 202.3 94", "Rx 283.6", "magnitudes-added", verdict.SlipFound},
		{"radians", "134.4 244 990 131", "gamma 67, R 945.6, alpha 0.1312", "radian-mode", verdict.SlipFound},
		{"a sine", "134.4 244 990 131", "gamma 67, R 945.6, alpha 0.1308", "inverse-missing", verdict.SlipFound},
		{"a decimal point moved below zero", "360 12 240 284", "theta -210.7", "decimal-place", verdict.SlipFound},
		{"three digits of a cosine: 54.62 · 0.391", "54.62 293 89.35 344", "F1x 21.4", "Px", verdict.EarlyRounding},
		{"the obtuse angle, after a γ of the same sine", "340 25 610 118", "gamma 93, R 682.6, beta 116.8", "obtuse-assumed", verdict.SlipFound},
		{"carried, and hardly off in itself", "97 82 408 46", "gamma 142, R 488.1, beta 30.98", "gamma", verdict.Carried},
		{"carried further", "97 82 408 46", "gamma 142, R 488.1, beta 30.98, theta 51.02", "gamma", verdict.Carried},
		{"right from a coarse entry, and far from right", "97 82 408 46", "R 488.1, beta 30.98", "", verdict.Correct},
		{"right from a coarse entry, after a slip", "97 82 408 46", "R 488.1, beta 149.02, beta 30.98", "", verdict.Correct},
		{"right from a coarse entry, what was carried from that slip still there", "97 82 408 46", "R 488.1, beta 149.02, theta -67.02, beta 30.98", "", verdict.Correct},
		{"carried to within a tenth of a degree", "180 188 135 224", "gamma 142, R 298.2, beta 16.26", "gamma", verdict.Carried},
		{"a whole force where its component is written already", "270 -10 280 46", "F1y -46.89, Ry 471.4", "magnitudes-for-components", verdict.SlipFound},
		{"a whole force with a sign, further on", "760 10 900 -51", "F2x 566.4, F2y -699.4, Rx 1315, R 1671", "magnitudes-for-components", verdict.SlipFound},
		{"right from a coarse entry, a step in the head between", "4200 15 2900 72", "R 6243, theta 38.19", "", verdict.Correct},
		{"from a right angle, below zero", "500 7 700 126", "gamma -29", "complement-for-supplement given-miscopied", verdict.SlipFound},
		{"a whole force with the sign of the sketch", "640 160 590 46", "F1x -640", "digits-swapped magnitudes-for-components", verdict.SlipFound},
		{"a written component kept to three digits", "220 64 170 36", "F1x 96.36, F2x 137.5, Rx 234.4", "Qx", verdict.EarlyRounding},
		{"an angle whole by chance, rounded work", "500 -111 500 33", "gamma 36, R 309.0, theta 105.01", "wrong-side", verdict.SlipFound},
		{"digits exchanged beyond a turn", "859 343 115 32", "theta 384.31", "digits-swapped", verdict.SlipFound},
		{"digits exchanged beyond a turn, nothing else", "466 72 568 191", "theta 411.01", "digits-swapped", verdict.SlipFound},
		{"what a sine of one digit does not come to: 2800 · 0.2", "2800 347 2070 3", "F1y -561.6", "", verdict.Unexplained},
		{"sines of one digit in two steps: 580 · 0.8 − 290 · 0.5", "580 52 290 -148", "Ry 319.0", "sin", verdict.EarlyRounding},
		{"carried, and near the right value cut short", "271 298 4600 345", "F2x 4473, Rx 4600", "F2x", verdict.Carried},
		{"a whole force, or its component of two digits", "530 174 350 95", "F1x -530.0", "Px", verdict.EarlyRounding},
		{"a complement three steps back, none of them written, and another angle obtuse with it", "460 -42 210 25", "beta 116.90", "complement-for-supplement", verdict.SlipFound},
		{"a cosine of −0.974 kept to −1: a whole force seldom has a minus", "670 -128 290 -167", "F2x -290.0", "cos", verdict.EarlyRounding},
		{"a sine kept to one digit, or a slip, and hardly anything else", "220 -79 510 70", "beta 128.82", "sin β", verdict.EarlyRounding},
		{"a complement in the head: a quarter turn on, and no digits of 813.50", "740 98 60 349", "phi 109, R 722.7, theta 183.50", "complement-for-supplement given-miscopied sine-cosine-swapped", verdict.SlipFound},
		{"a complement in the head: a quarter turn on, and no digits of −721.02", "140 38 635 351", "gamma 133, R 737.6, theta 88.98", "complement-for-supplement", verdict.SlipFound},
		{"digits exchanged in a sum beyond a turn: 394.40", "950 84 755 321", "theta 349.40", "digits-swapped", verdict.SlipFound},
		{"radians of the acute angle, left as the key gives them", "862 158 435 111", "Rx -955.1, R 1202, theta -0.65", "radian-mode", verdict.SlipFound},
		{"gradians of the acute angle, left as the key gives them", "349 212 585 137", "F1y -184.9, Ry 214.1, theta -18.31", "gradian-mode", verdict.SlipFound},
		{"carried, or a slip that gives nearly the same", "1300 34 1100 359", "phi 35, gamma 145, R 1703, beta 40.24", "R", verdict.Carried},
	}
	for _, row := range rows {
		t.Run(row.name, func(t *testing.T) {
			f := strings.Fields(row.problem)
			r := enterAll(pair(t, f[0]+" N", f[1]+" deg", f[2]+" N", f[3]+" deg"), row.entries, ", ")
			require.Equal(t, row.verdict, r.Verdict, "%s %v", r.Feedback, r.Slips)
			switch r.Verdict {
			case verdict.SlipFound:
				for _, id := range strings.Fields(row.slips) {
					assert.Contains(t, r.Slips[0].IDs, id)
				}
			case verdict.Carried:
				assert.Equal(t, row.slips, r.From)
			case verdict.EarlyRounding:
				assert.Contains(t, r.Rounded.What, row.slips)
			}
		})
	}
}

// An angle that is 70° may be written as 700 or 07, and 70.5 is neither.
func TestDigitsOfAnAngleMovedAndExchanged(t *testing.T) {
	l := pair(t, "340 N", "20 deg", "610 N", "90 deg")
	for entry, want := range map[string]string{"700.00°": "decimal-place", "700°": "decimal-place", "7.0": "decimal-place", "70.5": "", "430.5": "", "07": "decimal-place"} {
		r := NewWork(l, lesson.DefaultSettings()).Enter("phi", entry)
		if want == "" {
			assert.Equal(t, verdict.Unexplained, r.Verdict, entry)
			continue
		}
		require.Equal(t, verdict.SlipFound, r.Verdict, entry)
		assert.Contains(t, r.Slips[0].IDs, want, entry)
	}
	for _, s := range slips.ByID("minutes-as-decimals").Written(&slips.Context{Lesson: l.Lesson, Quantity: l.Quantity("phi")}, 69.99999999999999) {
		assert.InDelta(t, 70, s, 1e-9, "no sixty minutes")
	}
}

// Who keeps a digit less than asked throughout is told to keep one more.
func TestOneDigitLessThroughout(t *testing.T) {
	w := NewWork(pair(t, "640 N", "-23 deg", "860 N", "84 deg"), lesson.DefaultSettings())
	q := w.Lesson.Quantity("beta")
	// no further off than the cosine law with three digits kept may carry it
	r := w.Enter("beta", w.Lesson.Show(q, q.True+0.3, lesson.Digits{Magnitude: 3, Angle: 1}))
	require.Equal(t, verdict.EarlyRounding, r.Verdict, r.Feedback)
	assert.Equal(t, 3, r.Rounded.Digits)
}

// A value that a slip gives as well as rounding is told with both: 530 N is the whole
// force, and its component, 527.1 N, to two digits.
func TestRoundingOrASlipIsAsked(t *testing.T) {
	l := pair(t, "530 N", "174 deg", "350 N", "95 deg")
	r := enterAll(l, "F1x -530.0", ", ")
	assert.Contains(t, r.Feedback, "Px itself rounded to 2 digits")
	assert.Contains(t, r.Feedback, "a whole force used where its component belongs")
	assert.NotContains(t, r.Feedback, "527")
	assert.Equal(t, l.Say("verdict.early-rounding.perhaps"), l.Heading(&r))
}
