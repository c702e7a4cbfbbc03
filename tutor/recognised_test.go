package tutor

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/slipped"
	"closingside/tutor/verdict"
)

// Wrong values worked by hand with the formulas beside them, and the rows that
// give them.
func TestRowsThatAreMadeInSeveralWays(t *testing.T) {
	rad := math.Pi / 180
	derrick := pair(t, "7.5 kN", "205 deg", "5.1 kN", "318 deg") // Rx < 0
	over := pair(t, "520 N", "105 deg", "310 N", "118 deg")      // directions add up to more than 180°
	quay := pair(t, "340 N", "25 deg", "420 N", "S 59 W")        // 211°, or −149°
	hawser := func(name, pull, direction string) lesson.Source {
		return lesson.Branch("", lesson.Leaf("name", name), lesson.Leaf("is", "force"), lesson.Leaf("force", pull), lesson.Leaf("direction", direction))
	}
	buoy := solvedBy(t, lesson.Branch("", lesson.Leaf("kind", "particle-equilibrium"), lesson.Branch("parts",
		hawser("P", "220 N", "16 deg"), hawser("Q", "500 N", "36 deg"), lesson.Branch("", lesson.Leaf("name", "C"), lesson.Leaf("is", "cable")))))
	bargeR := 682.635
	rows := []struct {
		name, quantity, entry string
		lesson                *Lesson
		ids                   []string
	}{
		{"tails together, by components", "R", "sqrt((340*cos(25)-610*cos(118))^2+(340*sin(25)-610*sin(118))^2)", barge(t), []string{"other-diagonal"}},
		{"heads together, by components", "R", "sqrt((610*cos(118)-340*cos(25))^2+(610*sin(118)-340*sin(25))^2)", barge(t), []string{"other-diagonal"}},
		{"tails together, by the cosine law", "R", "sqrt(340^2+610^2-2*340*610*cos(93))", barge(t), []string{"cosine-sign", "included-for-interior", "other-diagonal"}},
		{"the other diagonal's component", "Rx", "594.5 N", barge(t), []string{"other-diagonal", "sign-lost"}},
		{"the same from the other end", "Rx", "-594.5 N", barge(t), []string{"other-diagonal"}},
		{"the closing side reversed", "Rx", "-21.77 N", barge(t), []string{"resultant-reversed", "sign-lost"}},
		{"no square in the cosine law for an angle", "alpha", degreesOf(math.Acos((610 + bargeR - 340) / (2 * 610 * bargeR))), barge(t), []string{"squares-missing"}},
		{"taken from 90° and turned round", "gamma", "3°", barge(t), []string{"complement-for-supplement"}},
		{"the tangent as it stands, Rx < 0", "theta", strconv.FormatFloat(math.Tan(-114.55466*rad), 'f', 4, 64), derrick, []string{"inverse-missing"}},
		{"directions added, brought below 180°", "phi", "137°", over, []string{"directions-added"}},
		{"both turned round, brought above −180°", "phi", "-137°", over, []string{"clockwise"}},
		{"by the acute angle, in radians", "F2x", "-410.8 N", barge(t), []string{"radian-mode"}},        // −610 cos 62
		{"by the acute angle, in gradians", "F2x", "-342.9 N", barge(t), []string{"gradian-mode"}},      // −610 cos 62
		{"a direction counted clockwise, in radians", "F2x", "-93.97 N", quay, []string{"radian-mode"}}, // 420 cos −149
		{"the same counted counter-clockwise", "F2x", "-365.9 N", quay, []string{"radian-mode"}},        // 420 cos 211
		{"directions of two hawsers added", "phi3", "52°", buoy, []string{"directions-added"}},
		{"directions added", "phi", "223°", over, []string{"clockwise", "directions-added"}},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			got := NewWork(r.lesson, lesson.DefaultSettings()).Enter(r.quantity, r.entry)
			require.NotEmpty(t, got.Slips, "%+v", got)
			for _, id := range r.ids {
				assert.Contains(t, got.Slips[0].IDs, id, "%+v", got.Slips)
			}
			if got.Reading.Form == entry.Expression {
				assert.Equal(t, r.ids, got.Slips[0].IDs, "told by its form")
			}
		})
	}
}

func degreesOf(rad float64) string {
	return strconv.FormatFloat(rad*180/math.Pi, 'f', 2, 64) + "°"
}

// The law of cosines for an angle, no magnitude squared, is one slip.
func TestNoSquareInTheLawForAnAngle(t *testing.T) {
	l := barge(t)
	q := l.Quantity("alpha")
	f1, f2, r := expr.S("F1"), expr.S("F2"), expr.S("R")
	want := expr.Acos(expr.Div(expr.Sub(expr.Add(f2, r), f1), expr.Mul(expr.N(2), f2, r)))
	assert.Contains(t, slipped.Rewrites(l.Lesson, q, q.Route("cosine-law").Tree), slipped.Rewrite{ID: "squares-missing", Tree: want})
}

// Values seen in trying, which were unexplained or taken for something else.
func TestSlipsSeenInTrying(t *testing.T) {
	slug := solvedBy(t, kinds.EquilibriumSource("", kinds.PartSource("A cable", "direction: 40 deg above -x"), kinds.PartSource("B cable", "direction: 30 deg above +x"), kinds.PartSource("W weight", "mass: 10 slug")))
	kilo := solvedBy(t, kinds.EquilibriumSource("", kinds.PartSource("A cable", "direction: 40 deg above -x", "force: 5 kN"), kinds.PartSource("B cable", "direction: 30 deg above +x"), kinds.PartSource("C cable", "direction: 80 deg above +x"), kinds.PartSource("W weight", "mass: 1000 kg")))
	crate := bankLesson(t, &kinds.ParticleEquilibrium, 0)
	slope := solvedBy(t, kinds.ComponentsSource("", "P", "500 N", "3:4 up left"))
	for _, r := range []struct {
		lesson          *Lesson
		quantity, entry string
		id              string
	}{
		{slug, "F3", "10*9.81", "gravity-other"},
		{slug, "F3", "98.1 lb", "gravity-other"},
		{crate, "F3", "1176", "gravity-other"},
		{crate, "F3", "120*10", "gravity-other"},
		{kilo, "F4", "1000*9.81", "prefix"},
		{kilo, "F4", "9810", "prefix"},
		{slope, "Fy", "500 N", "magnitudes-for-components"},
	} {
		got := NewWork(r.lesson, lesson.DefaultSettings()).Enter(r.quantity, r.entry)
		require.Equal(t, verdict.SlipFound, got.Verdict, "%s: %s", r.entry, got.Feedback)
		assert.Contains(t, got.Slips[0].IDs, r.id, r.entry)
	}
}

// A formula right but for one number is met by asking for that number.
func TestAFormulaWithOneNumberOff(t *testing.T) {
	for _, r := range []struct{ quantity, entry, id, says string }{
		{"R", "sqrt(340^2+610^2-2*340*610*cos(88))", "", "88"},
		{"gamma", "180-94", "", "94"},
		{"F1x", "340 cos 26", "given-miscopied", "θP"},
		{"F1x", "345.5 cos 25", "given-miscopied", "the P you"},
	} {
		got := NewWork(barge(t), lesson.DefaultSettings()).Enter(r.quantity, r.entry)
		assert.Contains(t, got.Feedback, r.says, r.entry)
		if r.id == "" {
			assert.Equal(t, verdict.Unexplained, got.Verdict, r.entry)
			continue
		}
		require.Equal(t, verdict.SlipFound, got.Verdict, r.entry)
		assert.Equal(t, []string{r.id}, got.Slips[0].IDs, r.entry)
	}
}

// A Greek symbol may be spelled out with its index.
func TestASpelledSymbolIsRead(t *testing.T) {
	l := bankLesson(t, &kinds.ParticleEquilibrium, 3) // the chain C holds the buoy
	for _, entry := range []string{"C cos theta3 + 2.5 cos 20 + 1.8 cos 75 = 0", "C cos thetaC + 2.5 cos 20 + 1.8 cos 75 = 0", "C cos θC + 2.5 cos 20 + 1.8 cos 75 = 0"} {
		assert.Equal(t, verdict.Correct, NewWork(l, lesson.DefaultSettings()).Enter("sumx", entry).Verdict, entry)
	}
}

// A formula that fits but for the rounding of its numbers accuses nobody.
func TestAFormulaOfRoundedNumbers(t *testing.T) {
	l := solvedBy(t, lesson.Branch("", lesson.Leaf("kind", "concurrent-forces"), lesson.Branch("forces", kinds.ForceSource("A", "400 N", "20 deg"), kinds.ForceSource("B", "300 N", "110 deg"), kinds.ForceSource("D", "250 N", "215 deg"))))
	for entry, want := range map[string]verdict.Verdict{"376-103-205": verdict.EarlyRounding, "375.9-102.6-204.8": verdict.Correct, "376-103-230": verdict.Unexplained} {
		r := NewWork(l, lesson.DefaultSettings()).Enter("Rx", entry)
		assert.Equal(t, want, r.Verdict, "%s: %s", entry, r.Feedback)
		if want == verdict.EarlyRounding {
			assert.Equal(t, 3, r.Rounded.Digits)
			assert.Equal(t, 4, r.Rounded.Keep)
		}
	}
}
