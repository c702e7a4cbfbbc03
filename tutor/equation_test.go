package tutor

import (
	"math"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"closingside/statics/expr"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

// right is an entry for q that is right: the value to so many digits, or the
// equation.
func (l *Lesson) right(q *lesson.Quantity, d lesson.Digits) string {
	if q.Equation {
		return l.Text(q.Routes[0].Tree) + " = 0"
	}
	return l.Show(q, q.True, d)
}

func TestEquationsThatHold(t *testing.T) {
	for _, entry := range []string{
		"T1 cos 40 - T2 cos 30 = 0",
		"T2 cos 30 = T1 cos 40",
		"−T1·cos 40° + T2·cos 30° = 0",
		"ΣFx = T2 cos 30 - T1 cos 40",
		"2 T1 cos 40 - 2 T2 cos 30 = 0",
		"T1 = T2 cos(30)/cos(40)",
		"T1/cos 30 = T2/cos 40",
		"0.7660 T1 - 0.8660 T2 = 0",
		"T1 cos θ1 = T2 cos θ2",
		"T1 sin 40 + T2 sin 30 - 1177 = 0",
		"T1 sin 40 + T2 sin 30 = m g",
		"T1 sin 40 + T2 sin 30 = 120*9.81",
		"T1 sin 40 + T2 sin 30 = W",
		"T1 sin 40 + T2 sin 30 = 1.177 kN",
		"W = T1 cos 50 + T2 cos 60",
		"T1 sin 70 = W cos 30",         // along the normal to T2
		"T2 sin 70 - W cos 40 = 0",     // along the normal to T1
		"T1 + T2 cos 110 - W cos 50=0", // along T1: 110° to T2, 130° to W
		"T1/sin 120 = W/sin 110",       // the sine law
	} {
		t.Run(entry, func(t *testing.T) {
			r := crate(t).Enter("sumx", entry)
			assert.Equal(t, verdict.Correct, r.Verdict, r.Feedback)
			assert.Empty(t, r.Slips)
		})
	}
}

func TestEquationsThatDoNotHold(t *testing.T) {
	rows := []struct{ entry, slip string }{
		{"T1 cos 40 + T2 cos 30 = 0", "sign-lost"},
		{"T1 sin 40 - T2 sin 30 = W", "sign-lost"},
		{"T1 sin 40 + T2 sin 30 + W = 0", "sign-lost"},
		{"T1 sin 40 + T2 sin 30 + W = 0", "sense-reversed"},
		{"T1 cos 40 + T2 sin 30 = W", "sine-cosine-swapped"},
		{"T1 cos 40 + T2 cos 30 = W", "sine-cosine-swapped"},
		{"T1 sin 40 = T2 sin 30", "sine-cosine-swapped"},
		{"T1 sin 40 = W", "term-missing"},
		{"T1 sin 40 + T2 sin 30 = 0", "term-missing"},
		{"T1 sin 40 + T2 sin 30 = 120", "mass-for-weight"},
		{"T1 sin 40 + T2 sin 30 = m", "mass-for-weight"},
		{"T1 sin 40 + T2 sin 30 = 120/9.81", "gravity-inverted"},
		{"T1 sin 40 + T2 = W", "magnitudes-for-components"},
		{"T1 sin 04 + T2 sin 30 = W", "given-miscopied"},
		{"T1 cos 40 = 0", "term-missing"},
		{"T2 cos 30 = 0", "term-missing"},
		{"T2 cos 30 = T2 cos 40", "other-force"},
		{"0.643 T1 - 0.500 T2 = 1177", "sign-lost"},
		{"T1 + T2 = W", "magnitudes-for-components"},
		{"T1 = T2", "magnitudes-for-components"},
	}
	for _, row := range rows {
		t.Run(row.entry+" "+row.slip, func(t *testing.T) {
			r := crate(t).Enter("sumy", row.entry)
			require.Equal(t, verdict.SlipFound, r.Verdict, r.Feedback)
			assert.Contains(t, r.Slips[0].IDs, row.slip)
			sum := r.Unexplained
			for _, s := range r.Slips {
				sum += s.Probability
			}
			assert.InDelta(t, 1, sum, 1e-9)
		})
	}
	for _, entry := range []string{"T1 = 2 T2", "777 + T1 sin 33 = 5 T2", "T1 - T1 = 0", "T1 T2 = 5 N", "T1 cos 41 - T2 cos 30 = 0.3"} {
		t.Run(entry, func(t *testing.T) {
			w := crate(t)
			w.Enter("F1", "778.9 N")
			r := w.Enter("sumy", entry)
			assert.Equal(t, verdict.Unexplained, r.Verdict, r.Feedback)
		})
	}
	for _, entry := range []string{"682", "0 = 0", "ΣFx = 0", "T1 cos 40 =", "T1 = T2 = 3", ""} {
		t.Run(entry+" can't be read", func(t *testing.T) {
			assert.Equal(t, verdict.Unreadable, crate(t).Enter("sumx", entry).Verdict)
		})
	}
}

// A product of two unknown forces can't be a sum of forces, and is told so; one
// that comes of multiplying out may stand.
func TestAnEquationThatIsNotLinearIsToldSo(t *testing.T) {
	form := text.Say("feedback.equation.form")
	for _, entry := range []string{"T1 T2 = 5 N", "T1 T2 = 0", "T1 (T2 + W) = 3", "T1^2 = 4", "sqrt(T1) = 3"} {
		r := crate(t).Enter("sumx", entry)
		assert.Equal(t, verdict.Unexplained, r.Verdict, entry)
		assert.Equal(t, form, r.Feedback, entry)
	}
	assert.Equal(t, verdict.Correct, crate(t).Enter("sumx", "T1/T2 = cos 30/cos 40").Verdict)
	assert.NotEqual(t, form, crate(t).Enter("sumx", "T1/T2 = 3").Feedback)
}

// What was found on paper may stand in a sum without having been entered, the
// direction of a force and its size alike; a slip beside it is still seen.
func TestAnEquationMayHoldWhatWasFoundOnPaper(t *testing.T) {
	l := solvedBy(t, kinds.EquilibriumSource("", kinds.PartSource("P force", "direction: 172 deg", "force: 360 N"), kinds.PartSource("Q force", "direction: 21 deg", "force: 570 N"), kinds.PartSource("C cable")))
	for _, entry := range []string{
		"C cos(-124.62) + 570 cos 21 + 360 cos 172 = 0",
		"570 cos 21 + 360 cos 172 = C cos 55.38",
		"570 cos 21 + 360 cos 172 = C sin 34.62",
		"309.1 cos θC + 570 cos 21 + 360 cos 172 = 0",
		"C sin(55.38) = 570 sin 21 + 360 sin 172",
	} {
		r := NewWork(l, lesson.DefaultSettings()).Enter("sumx", entry)
		assert.Equal(t, verdict.Correct, r.Verdict, "%s: %s", entry, r.Feedback)
	}
	for entry, slip := range map[string]string{
		"C cos(-124.62) + 570 sin 21 + 360 cos 172 = 0": "sine-cosine-swapped",
		"C cos(-124.62) + 570 cos 21 - 360 cos 172 = 0": "sign-lost",
		"309.1 sin θC + 570 cos 21 + 360 cos 172 = 0":   "sine-cosine-swapped",
	} {
		r := NewWork(l, lesson.DefaultSettings()).Enter("sumx", entry)
		require.Equal(t, verdict.SlipFound, r.Verdict, entry)
		assert.Contains(t, r.Slips[0].IDs, slip, entry)
	}
	for _, entry := range []string{"C cos(-127) + 570 cos 21 + 360 cos 172 = 0"} {
		assert.Equal(t, verdict.Unexplained, NewWork(l, lesson.DefaultSettings()).Enter("sumx", entry).Verdict, entry)
	}
}

func TestASecondEquationHasToSayMore(t *testing.T) {
	w := crate(t)
	require.Equal(t, verdict.Correct, w.Enter("sumx", "T1 cos 40 = T2 cos 30").Verdict)
	r := w.Enter("sumy", "3 T1 cos 40 - 3 T2 cos 30 = 0")
	assert.Equal(t, verdict.Unexplained, r.Verdict)
	assert.Contains(t, r.Feedback, "same")
	assert.Equal(t, verdict.Correct, w.Enter("sumy", "T1 sin 70 = W cos 30").Verdict)
}

func TestAnEquationMayRestOnWhatWasEntered(t *testing.T) {
	w := crate(t)
	w.Enter("F1", "1085 N")
	require.True(t, w.Found("F1"))
	assert.Equal(t, verdict.Correct, w.Enter("sumx", "1085 cos 40 = T2 cos 30").Verdict)

	w = crate(t)
	require.Equal(t, verdict.SlipFound, w.Enter("F3", "120 N").Verdict)
	r := w.Enter("sumy", "T1 sin 40 + T2 sin 30 = 120")
	assert.Equal(t, verdict.Carried, r.Verdict)
	assert.Equal(t, "F3", r.From)
	assert.Equal(t, verdict.Correct, w.Enter("sumy", "T1 sin 40 + T2 sin 30 = W").Verdict, "the equation itself is right")
	r = w.Enter("F1", "110.6 N")
	assert.Equal(t, verdict.Carried, r.Verdict)
	assert.Equal(t, "F3", r.From)
}

func TestAnUnknownFollowsFromOnesOwnEquations(t *testing.T) {
	w := crate(t)
	require.Equal(t, verdict.SlipFound, w.Enter("sumx", "T1 sin 40 - T2 cos 30 = 0").Verdict)
	require.Equal(t, verdict.Correct, w.Enter("sumy", "T1 sin 40 + T2 sin 30 = W").Verdict)
	// T1 = T2 cos 30/sin 40, T2 (cos 30 + sin 30) = W
	t2 := 1177.2 / (math.Cos(math.Pi/6) + 0.5)
	r := w.Enter("F2", strconv.FormatFloat(t2, 'f', 1, 64)+" N")
	assert.Equal(t, verdict.Carried, r.Verdict)
	assert.Equal(t, "sumx", r.From)
}

// What follows from an equation put another way wrong is looked for anew.
func TestAnotherWrongEquationCarriesOtherValues(t *testing.T) {
	w := crate(t)
	require.Equal(t, verdict.SlipFound, w.Enter("sumx", "T1 sin 40 - T2 cos 30 = 0").Verdict)
	require.Equal(t, verdict.Correct, w.Enter("sumy", "T1 sin 40 + T2 sin 30 = W").Verdict)
	first, second := 1177.2/(math.Cos(math.Pi/6)+0.5), 1177.2/(math.Sin(math.Pi/6)*math.Tan(40*math.Pi/180)+0.5)
	require.Equal(t, verdict.Carried, w.Enter("F2", strconv.FormatFloat(first, 'f', 1, 64)+" N").Verdict)
	require.Equal(t, verdict.SlipFound, w.Enter("sumx", "T1 cos 40 - T2 sin 30 = 0").Verdict)
	r := w.Enter("F2", strconv.FormatFloat(second, 'f', 1, 64)+" N")
	assert.Equal(t, verdict.Carried, r.Verdict, r.Feedback)
	assert.NotEqual(t, verdict.Carried, w.Enter("F2", strconv.FormatFloat(first, 'f', 1, 64)+" N").Verdict)
}

// Any combination of the two sums is right, and with a coefficient changed it
// is not.
func TestEquivalentSystemsAreAccepted(t *testing.T) {
	lessons := []*Lesson{}
	for i := range kinds.ParticleEquilibrium.Bank {
		lessons = append(lessons, bankLesson(t, &kinds.ParticleEquilibrium, i))
	}
	rapid.Check(t, func(t *rapid.T) {
		l := rapid.SampledFrom(lessons).Draw(t, "lesson")
		var sums []expr.Node
		for _, q := range l.Quantities {
			if q.Equation {
				sums = append(sums, q.Routes[0].Tree)
			}
		}
		number := rapid.SampledFrom([]float64{1, 2, 3, 5, 0.5, 1.25, 7})
		combination := expr.Mul(expr.N(number.Draw(t, "a")), sums[0])
		if len(sums) == 2 {
			other := expr.Mul(expr.N(number.Draw(t, "b")), sums[1])
			if rapid.Bool().Draw(t, "minus") {
				combination = expr.Sub(combination, other)
			} else {
				combination = expr.Add(combination, other)
			}
		}
		entry := l.Text(combination) + " = 0"
		r := NewWork(l, lesson.DefaultSettings()).Enter("sumy", entry)
		if r.Verdict != verdict.Correct {
			t.Fatalf("%s: %v %s", entry, r.Verdict, r.Feedback)
		}
		wrong := l.Text(expr.Add(combination, expr.Mul(expr.N(rapid.SampledFrom([]float64{0.02, 0.3, 2}).Draw(t, "off")), sums[0]))) + " = " + l.SymbolText(l.unknownForce())
		if r := NewWork(l, lesson.DefaultSettings()).Enter("sumy", wrong); r.Verdict == verdict.Correct {
			t.Fatalf("%s: accepted", wrong)
		}
	})
}

func (l *Lesson) unknownForce() string {
	for _, q := range l.Quantities {
		if q.Unknown {
			return q.Name
		}
	}
	panic("no unknown")
}

// Rounding the numbers of an equation to four digits keeps it right; moving one
// by a percent does not.
func TestRoundedNumbersInAnEquation(t *testing.T) {
	w := crate(t)
	for a := 0; a < 180; a += 7 {
		turn := float64(a) * math.Pi / 180
		at := func(deg float64) float64 { return math.Cos(deg*math.Pi/180 - turn) }
		t1, t2, load := at(140), at(30), 1177.2*at(-90)
		text := func(v float64) string { return strconv.FormatFloat(v, 'f', 4, 64) }
		if math.Min(math.Abs(t1), math.Min(math.Abs(t2), math.Abs(at(-90)))) < 0.05 {
			continue // four decimals of a number near zero are few digits
		}
		right := text(t1) + " T1 + (" + text(t2) + ") T2 + (" + strconv.FormatFloat(load, 'f', 2, 64) + ") = 0"
		wrong := text(t1*1.02) + " T1 + (" + text(t2) + ") T2 + (" + strconv.FormatFloat(load, 'f', 2, 64) + ") = 0"
		assert.Equal(t, verdict.Correct, w.Enter("sumx", right).Verdict, right)
		assert.NotEqual(t, verdict.Correct, w.Enter("sumx", wrong).Verdict, wrong)
	}
}

// The sine of 30° has one digit and is not rounded: of 0.65 and 0.5 it is the 0.65
// (sin 40° = 0.6428) that is told of.
func TestTheSineOfThirtyIsNotRounded(t *testing.T) {
	got := crate(t).Enter("sumy", "0.65 T1 + 0.5 T2 = 1177")
	require.Equal(t, verdict.EarlyRounding, got.Verdict, got.Feedback)
	assert.Equal(t, "0.65", got.Rounded.What)
}

// Nor are 0.8 and 0.6 of a slope 3:4; 0.77 for cos 40° is asked for with a digit more.
func TestExactPartsOfASlopeAreNotRounded(t *testing.T) {
	part := func(name, is, direction string, more ...lesson.Source) lesson.Source {
		return lesson.Branch("", append([]lesson.Source{lesson.Leaf("name", name), lesson.Leaf("is", is), lesson.Leaf("direction", direction)}, more...)...)
	}
	weight := lesson.Branch("", lesson.Leaf("name", "W"), lesson.Leaf("is", "weight"), lesson.Leaf("mass", "20 kg"))
	for _, row := range []struct {
		other, entry string
		notes        []string
	}{
		{"60 deg above -x", "0.8 K = 0.5 A", nil},
		{"40 deg above -x", "0.8 K = 0.77 A", []string{"digit-more"}},
	} {
		l := solvedBy(t, kinds.EquilibriumSource("", part("A", "cable", row.other), part("K", "cable", "3:4 up right"), weight))
		got := NewWork(l, lesson.DefaultSettings()).Enter("sumx", row.entry)
		require.Equal(t, verdict.Correct, got.Verdict, "%s: %s", row.entry, got.Feedback)
		assert.Equal(t, row.notes, got.Notes, row.entry)
	}
}

// An equation whose numbers agree and whose units do not is not taken: it says
// which side measures what, and nothing is recorded against the learner.
func TestAnEquationOfDifferentUnitsIsNotTaken(t *testing.T) {
	w := NewWork(solvedBy(t, kinds.EquilibriumSource("", kinds.PartSource("T1 cable", "direction: 40 deg above -x"), kinds.PartSource("T2 cable", "direction: 30 deg above +x"), kinds.PartSource("W weight", "force: 600 N"))), lesson.DefaultSettings())
	for _, entry := range []string{"T1 sin 40 + T2 sin 30 = 600 kg", "600 kg = T1 sin 40 + T2 sin 30", "T1 sin 40 + T2 sin 30 = 600 m"} {
		r := w.Enter("sumy", entry)
		assert.Equal(t, verdict.Unreadable, r.Verdict, entry)
		assert.Contains(t, r.Feedback, "can't equal", entry)
	}
	for _, entry := range []string{"T1 sin 40 + T2 sin 30 = 600 N", "T1 sin 40 + T2 sin 30 = 0.6 kN", "T1 sin 40 + T2 sin 30 = 600"} {
		assert.Equal(t, verdict.Correct, w.Enter("sumy", entry).Verdict, entry)
	}
	assert.Equal(t, verdict.SlipFound, crate(t).Enter("sumy", "T1 sin 40 + T2 sin 30 = 120 kg").Verdict, "a mass for its weight")
}

// Where the mass is asked, it may stand in a sum for its weight too.
func TestAMassAskedForItsWeight(t *testing.T) {
	w := NewWork(solvedBy(t, kinds.EquilibriumSource("", kinds.PartSource("T1 cable", "direction: 40 deg above -x", "force: 500 N"), kinds.PartSource("T2 cable", "direction: 30 deg above +x"), kinds.PartSource("W weight", "find: mass"))), lesson.DefaultSettings())
	assert.Equal(t, verdict.Correct, w.Enter("sumy", "500 sin 40 + T2 sin 30 = m g").Verdict)
	for entry, slip := range map[string]string{"500 sin 40 + T2 sin 30 = m": "mass-for-weight", "500 sin 40 + T2 sin 30 = m/g": "gravity-inverted"} {
		r := w.Enter("sumy", entry)
		require.Equal(t, verdict.SlipFound, r.Verdict, entry)
		assert.Equal(t, []string{slip}, r.Slips[0].IDs, entry)
	}
}

// Final zeros may only hold the place: 1180 is 1177.2 at three digits, and is
// asked for a digit more; 1170 and 1200 are not.
func TestAPlacedZeroInAnEquation(t *testing.T) {
	w := crate(t)
	for number, want := range map[string]verdict.Verdict{"1177": verdict.Correct, "1180": verdict.Correct, "1177.2": verdict.Correct, "1178": verdict.SlipFound, "1170": verdict.Unexplained, "1210": verdict.Unexplained} {
		r := w.Enter("sumy", "T1 sin 40 + T2 sin 30 = "+number)
		assert.Equal(t, want, r.Verdict, number)
		assert.Equal(t, number == "1180", slices.Contains(r.Notes, "digit-more"), number)
	}
}
