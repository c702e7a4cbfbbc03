package tutor

import (
	_ "embed"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

//go:embed testdata/rounding_chain.txt
var roundingChain string

// Books round on the way too: every printed answer that a rounded or cut
// intermediate moved is right, or named as early rounding. The sources stand
// in the rows. A rounded given of the recast rows is no step of this lesson.
func TestPrintedRoundingChains(t *testing.T) {
	rows := 0
	for _, line := range strings.Split(strings.TrimSpace(roundingChain), "\n") {
		if strings.HasPrefix(line, "#") {
			continue
		}
		rows++
		f := strings.Split(line, " | ")
		require.Len(t, f, 8, line)
		t.Run(f[0], func(t *testing.T) {
			got := NewWork(pair(t, f[2], f[3], f[4], f[5]), lesson.DefaultSettings()).Enter(f[6], f[7])
			assert.Contains(t, []verdict.Verdict{verdict.Correct, verdict.EarlyRounding}, got.Verdict, "%+v", got)
			t.Log(got.Verdict, got.Feedback)
		})
	}
	assert.Equal(t, 8, rows)
}

// The same where another kind of problem takes the book's givens as they stand.
// Of the other rows of this sort in the check values, up2-t7 and up2-e19 are in
// space, and up2-e18, up2-t15 and up2-e19 ask for moments and products of
// vectors. That up5-e7 divides by a mass first is no step of a lesson; its last
// step is among the recast rows.
func TestPrintedRoundingChainsOfOtherKinds(t *testing.T) {
	weight := lesson.Branch("", lesson.Leaf("name", "W"), lesson.Leaf("is", "weight"), lesson.Leaf("mass", "70 kg"))
	cable := func(name, direction string) lesson.Source {
		return lesson.Branch("", lesson.Leaf("name", name), lesson.Leaf("is", "cable"), lesson.Leaf("direction", direction))
	}
	known := kinds.ForceSource("P", "121 N", "0 deg")
	rows := []struct {
		name            string
		src             lesson.Source
		quantity, entry string
	}{
		{"pre81-t2, OpenStax Precalculus 2e, section 8.1, Try It 2", kinds.MissingForceSource("", known, kinds.MissingSource("Q", "magnitude", "120 N"), kinds.DirectedSource("80 deg")), "R", "6.8 N"},
		{"up2-p19, OpenStax University Physics Volume 1, Chapter 2 Problem 43", kinds.ComponentsSource("", "P", "3.8 N", "120 deg"), "Fy", "3.290 N"},
		{"up2-p21, OpenStax University Physics Volume 1, Chapter 2 Problem 45", kinds.FromComponentsSource("", "A", "2 N", "-4 N"), "theta", "1.647π rad"},
		{"up2-e10, OpenStax University Physics Volume 1, Example 2.10",
			kinds.ConcurrentForcesSource("", kinds.ForceSource("A", "160 N", "55 deg S of E"), kinds.ForceSource("B", "200 N", "60 deg E of N"), kinds.ForceSource("C", "140 N", "55 deg W of N")), "R", "158.1 N"},
		{"up5-e13, OpenStax University Physics Volume 1, Example 5.13", lesson.Branch("", lesson.Leaf("kind", "particle-equilibrium"),
			lesson.Branch("parts", cable("T1", "5 deg above -x"), cable("T2", "5 deg above +x"), weight), lesson.Branch("gravity", lesson.Leaf("g", "9.8 m/s²"))), "F1", "3930 N"},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			got := NewWork(solvedBy(t, r.src), lesson.DefaultSettings()).Enter(r.quantity, r.entry)
			assert.Contains(t, []verdict.Verdict{verdict.Correct, verdict.EarlyRounding}, got.Verdict, "%+v", got)
		})
	}
}

func TestEarlyRoundingNamesTheIntermediate(t *testing.T) {
	rows := []struct {
		name, quantity, entry string
		what                  string
		digits, keep          int
	}{
		// sin β = 610 · sin 87° / 682.635 = 0.89237
		{"a sine to one digit", "beta", "64.16°", "sin β", 1, 4},
		{"a sine to two digits", "beta", "62.87°", "sin β", 2, 4},
		{"a sine to one digit, in the head", "theta", "89.16°", "sin β", 1, 4},
		{"a sine to one digit, as it is written", "beta", "arcsin(.9)", "sin β", 1, 4},
		{"a sine to two digits, as it is written", "beta", "sin⁻¹(0.89)", "sin β", 2, 4},
		{"a sine to two digits, on the way to a sum", "theta", "25 + asin .89", "sin β", 2, 4},
		{"an angle so found, in a sum", "theta", "25° + 62.87°", "sin β", 2, 4},
		// cos 25° = 0.90631, sin 118° = 0.88295
		{"a cosine to one digit, in a formula", "F1x", "340·0.9", "cos θP", 1, 4},
		{"a sine to one digit, in a formula", "F2y", "610·0.9 N", "sin θQ", 1, 4},
		// cos 87° = 0.052336, to one digit 0.05: R = 684.2 lies within 0.5 %
		{"inside the band", "R", "684.2 N", "", 0, 0},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			got := NewWork(barge(t), lesson.DefaultSettings()).Enter(r.quantity, r.entry)
			if r.what == "" {
				assert.Equal(t, verdict.Correct, got.Verdict, "%+v", got)
				return
			}
			require.Equal(t, verdict.EarlyRounding, got.Verdict, "%+v", got)
			assert.Equal(t, r.what, got.Rounded.What)
			assert.Equal(t, r.digits, got.Rounded.Digits)
			assert.Equal(t, r.keep, got.Rounded.Keep)
			assert.Contains(t, got.Feedback, r.what)
		})
	}
}

// A sine beside its sign, and the angle of a slope, are rounded like others.
func TestSizesAndSlopesAreRoundedToo(t *testing.T) {
	bow := pair(t, "890 N", "152 deg", "690 N", "-60 deg")
	sloped := solvedBy(t, kinds.ConcurrentForcesSource("", kinds.ForceSource("A", "48 N", "35 deg above -x"), kinds.ForceSource("B", "510 N", "5:12 up right")))
	rows := []struct {
		l                     *Lesson
		quantity, entry, what string
		digits                int
	}{
		{bow, "F1x", "-890·0.9", "cos 28°", 1},
		{bow, "F1x", "890·(−0.9)", "cos θP", 1},
		{sloped, "F2x", "469.5 N", "tan⁻¹(5/12)", 0}, // 510·cos 23°
		{sloped, "F2y", "199.3 N", "tan⁻¹(5/12)", 0}, // 510·sin 23°
		{sloped, "F2y", "189.4 N", "5/12", 1},        // 510·sin(tan⁻¹ 0.4)
	}
	for _, r := range rows {
		got := NewWork(r.l, lesson.DefaultSettings()).Enter(r.quantity, r.entry)
		require.Equal(t, verdict.EarlyRounding, got.Verdict, "%s %+v", r.entry, got)
		assert.Equal(t, r.what, got.Rounded.What)
		assert.Equal(t, r.digits, got.Rounded.Digits)
	}
}

// The digits of an entry are counted on the value written: 103.1 has four, though
// the right one, 98.08, would have three with as many decimals.
func TestDigitsAreThoseOfTheValueWritten(t *testing.T) {
	src := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "260 N", "-21 deg"), kinds.AxisSource("u", "-58 deg"), kinds.AxisSource("v", "-3 deg"))
	got := NewWork(solvedBy(t, src), lesson.DefaultSettings()).Enter("Fu", "103.1 N") // by a tangent
	assert.NotEqual(t, verdict.EarlyRounding, got.Verdict, "%+v", got)
}

// A right value with too few digits accuses nobody, and neither does what
// correct rounding comes to where the problem multiplies it beyond the limit.
func TestRoundingAloneIsNoSlip(t *testing.T) {
	small := pair(t, "0.91506351 N", "0 deg", "8.25 N", "-90 deg")
	steep := pair(t, "851 N", "125 deg", "669 N", "-33 deg")
	left := solvedBy(t, kinds.ComponentsSource("", "F", "850 N", "30 deg below -x"))
	three := lesson.DefaultSettings()
	three.Answer, three.Work = lesson.Digits{Magnitude: 3, Angle: 1}, lesson.Digits{Magnitude: 3, Angle: 1}
	rows := []struct {
		name            string
		l               *Lesson
		settings        lesson.Settings
		quantity, entry string
		what            string
		digits, keep    int
	}{
		{"R to one digit", barge(t), lesson.DefaultSettings(), "R", "700 N", "R", 1, 3},
		{"R to one digit, in kN", barge(t), lesson.DefaultSettings(), "R", "0.7 kN", "R", 1, 3},
		{"a whole degree", barge(t), lesson.DefaultSettings(), "beta", "63", "β", 0, 2},
		{"a whole degree, three tens", barge(t), lesson.DefaultSettings(), "alpha", "30°", "α", 0, 2},
		{"radians to three digits", left, lesson.DefaultSettings(), "theta", "3.67 rad", "θ", 3, 4},  // −150°
		{"gradians to three digits", left, lesson.DefaultSettings(), "theta", "−167 gon", "θ", 3, 4}, // −166.7
		{"a half rounded up", small, lesson.DefaultSettings(), "Ry", "-8.3 N", "Ry", 2, 4},
		// R² = 851² + 669² − 2·851·669·cos 22°, each to three digits: 110 000, R = 332 (340.64)
		{"a small difference of squares", steep, three, "R", "332 N", "P² + Q²", 3, 4},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			got := NewWork(r.l, r.settings).Enter(r.quantity, r.entry)
			require.Equal(t, verdict.EarlyRounding, got.Verdict, "%+v", got)
			assert.Empty(t, got.Slips)
			said := got.Rounded
			assert.Equal(t, []any{r.what, r.digits, r.keep, false}, []any{said.What, said.Digits, said.Keep, said.several})
			assert.Contains(t, got.Feedback, r.what)
		})
	}
}

// Of a value that is itself written too short, as many digits are asked as its
// field asks: of an answer those of an answer.
func TestAValueWrittenShortIsAskedForAsItsFieldAsks(t *testing.T) {
	src := kinds.ConcurrentForcesSource("", kinds.ForceSource("F1", "2.6 kN", "3:4 up right"), kinds.ForceSource("F2", "1.9 kN", "5:12 up left"), kinds.ForceSource("F3", "3.1 kN", "25 deg below +x"))
	for _, r := range []struct {
		quantity, entry string
		keep            int
	}{
		{"theta", "17 deg", 1}, // 17.37°
		{"R", "3 kN", 3},       // 3.286 kN
		{"F2y", "0.73 kN", 4},  // 0.7308 kN, found on the way
	} {
		w := NewWork(solvedBy(t, src), lesson.DefaultSettings())
		got := w.Enter(r.quantity, r.entry)
		require.Equal(t, verdict.EarlyRounding, got.Verdict, "%s %s: %+v", r.quantity, r.entry, got)
		assert.Equal(t, r.keep, got.Rounded.Keep, r.quantity)
		assert.Contains(t, w.Asked(w.Lesson.Quantity(r.quantity)), strconv.Itoa(r.keep))
	}
}

// cos(-177°) = -0.9986 kept to two digits is 1.0, and cos(-116°) = -0.4384 is 0.44,
// which makes -237.6 of -236.7: whether it was rounded so, or left out, or two digits
// of the value exchanged, asking for more of them accuses nobody, and the slip stays
// listed.
func TestRoundingOrSlip(t *testing.T) {
	rows := []struct {
		lesson      *Lesson
		entry       string
		slip, words string
	}{
		{pair(t, "500 N", "-177 deg", "290 N", "113 deg"), "-500.0 N", "magnitudes-for-components", "The way is right"},
		{pair(t, "540 N", "-116 deg", "560 N", "-147 deg"), "-237.6 N", "digits-swapped", "cos θP rounded to 2 digits on the way, or “two digits exchanged"},
	}
	for _, r := range rows {
		got := NewWork(r.lesson, lesson.DefaultSettings()).Enter("F1x", r.entry)
		require.Equal(t, verdict.EarlyRounding, got.Verdict, "%+v", got)
		assert.Equal(t, 2, got.Rounded.Digits)
		require.NotEmpty(t, got.Slips)
		assert.Contains(t, got.Slips[0].IDs, r.slip)
		assert.Contains(t, got.Feedback, r.words)
		sum := got.Unexplained
		for _, s := range got.Slips {
			sum += s.Probability
		}
		assert.Less(t, sum, 1.0, "the rest is that it was rounded")
	}
}

// Where the way only may be right, the help for the same value again does not stop at
// keeping digits: it goes on to the step itself.
func TestHelpWhereRoundingIsNotSure(t *testing.T) {
	w := NewWork(pair(t, "540 N", "-116 deg", "560 N", "-147 deg"), lesson.DefaultSettings())
	w.Enter("F1x", "-237.6 N")
	again := w.Enter("F1x", "-237.6 N")
	assert.Contains(t, again.Feedback, text.Say("feedback.again.keep.if"))
	again = w.Enter("F1x", "-237.6 N")
	assert.Contains(t, again.Feedback, w.HintAt("F1x", 1).Sentence)
	assert.NotContains(t, again.Feedback, text.Say("feedback.again.memory"))

	sure := NewWork(pair(t, "500 N", "-177 deg", "290 N", "113 deg"), lesson.DefaultSettings())
	sure.Enter("F1x", "-500.0 N")
	assert.Contains(t, sure.Enter("F1x", "-500.0 N").Feedback, text.Say("feedback.again.keep"))
	assert.Contains(t, sure.Enter("F1x", "-500.0 N").Feedback, text.Say("feedback.again.memory"))
}

// A value written to the digits asked for is not told that it was rounded to those:
// that moved it by no more than half a unit of the last.
func TestDigitsAskedForAreNotTooFew(t *testing.T) {
	for _, e := range []string{"679 N", "0.679 kN"} {
		got := NewWork(barge(t), lesson.DefaultSettings()).Enter("R", e) // 682.6 N
		assert.NotContains(t, got.Feedback, "looks rounded to 3 digits", e)
		assert.NotEqual(t, verdict.Correct, got.Verdict, e)
	}
	got := NewWork(barge(t), lesson.DefaultSettings()).Enter("R", "680 N")
	assert.Equal(t, verdict.Correct, got.Verdict)
}

// A value that is exact at the digits kept (β is the 35° that the two directions are
// apart) is never named as what was rounded.
func TestAnExactValueIsNotNamedAsRounded(t *testing.T) {
	l := missing(t)
	for r := 697; r <= 718; r++ {
		if got := NewWork(l, lesson.DefaultSettings()).Enter("R", strconv.Itoa(r)+" N"); got.Rounded != nil {
			assert.NotEqual(t, "β", got.Rounded.What, r)
		}
	}
}

// Where only all values on the way together may have moved an answer so far, no single
// one of them is said to have: 410·sin 98.3° to three digits moves R by half a newton,
// not by the four that 711 N is off.
func TestRoundingOfManyIsNotLaidOnOne(t *testing.T) {
	got := NewWork(missing(t), lesson.DefaultSettings()).Enter("R", "711 N")
	require.Equal(t, verdict.EarlyRounding, got.Verdict)
	assert.Contains(t, got.Feedback, "Values on the way")
	assert.Contains(t, got.Feedback, "together")
}

// missing is a problem with A = 520 N at 35° and B = 410 N, whose resultant lies
// along x: R = 707.3 N, or 144.6 N.
func missing(t *testing.T) *Lesson {
	leaf := func(key, text string) lesson.Source { return lesson.Source{Key: key, Text: text} }
	return solvedBy(t, lesson.Source{Kids: []lesson.Source{leaf("kind", "missing-force"),
		{Key: "known", Kids: []lesson.Source{leaf("name", "A"), leaf("magnitude", "520 N"), leaf("direction", "35 deg")}},
		{Key: "missing", Kids: []lesson.Source{leaf("name", "B"), leaf("magnitude", "410 N")}},
		{Key: "resultant", Kids: []lesson.Source{leaf("direction", "0 deg")}}}})
}

// Who keeps one value short goes on from what the calculator holds of the others:
// what the entry of the short one hides moves nothing.
func TestRoundedTooSoonAfterRightEntries(t *testing.T) {
	rows := []struct {
		name            string
		given           [4]string
		before          [][2]string
		quantity, entry string
		what            string
	}{
		// −200 + 259.541
		{"one of two components", [4]string{"510 N", "-115 deg", "270 N", "-16 deg"}, [][2]string{{"F1x", "-215.5 N"}, {"F2x", "259.5 N"}}, "Rx", "59.54 N", "Px"},
		// cos⁻¹(14 000/(2·167·57.1511)), of 14 255.2
		{"a difference of squares", [4]string{"130 N", "5 deg", "167 N", "202 deg"}, [][2]string{{"R", "57.15 N"}}, "alpha", "42.83°", "Q² + R² − P²"},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			w := NewWork(pair(t, r.given[0], r.given[1], r.given[2], r.given[3]), lesson.DefaultSettings())
			for _, e := range r.before {
				require.Equal(t, verdict.Correct, w.Enter(e[0], e[1]).Verdict)
			}
			got := w.Enter(r.quantity, r.entry)
			require.Equal(t, verdict.EarlyRounding, got.Verdict, "%+v", got)
			assert.Equal(t, r.what, got.Rounded.What)
		})
	}
}

// Where two parts are kept to one digit, the one that did more is not told of as if it
// had done it all: 300 − 300 = 0 for 308.1 − 286.4.
func TestPartsKeptShortTogetherAreToldTogether(t *testing.T) {
	r := NewWork(barge(t), lesson.DefaultSettings()).Enter("Rx", "0")
	assert.Equal(t, verdict.EarlyRounding, r.Verdict)
	assert.Contains(t, r.Feedback, "among")
	r = NewWork(barge(t), lesson.DefaultSettings()).Enter("Rx", "8.1") // 308.1 − 300
	assert.NotContains(t, r.Feedback, "among")
}
