package kinds

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/spatial/r2"
	"pgregory.net/rapid"

	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
	"closingside/tutor/verdict"
)

// steered is a lantern of 100 N on a cable 30° above −x and a line of known
// pull F, of which the direction is open. By hand: across the cable the load
// has 100 sin 60° = 86.60 N, so F = 95 N reaches √(95² − 7500) = 39.05 N along
// it, and T = 100 sin 30° ± 39.05 N.
func steered(t testing.TB, force string) *tutor.Lesson {
	return lessonOf(t, EquilibriumSource("", PartSource("T cable", "direction: 30 deg above -x"), PartSource("F cable", "force: "+force), PartSource("W weight", "force: 100 N")))
}

func TestAnOpenDirectionOfTwoSolutions(t *testing.T) {
	l := steered(t, "95 N")
	require.Len(t, l.Solutions(), 2)
	assert.InDelta(t, 89.05, l.Truth("F1"), 0.005)
	assert.InDelta(t, 10.95, l.Other.Truth("F1"), 0.005)
	for _, s := range l.Solutions() {
		checkRoutes(t, s)
		assert.Len(t, s.Ways, 2)
	}
	for i, s := range l.Solutions() {
		for _, other := range []string{"F1", "theta2"} {
			w := tutor.NewWork(l, lesson.DefaultSettings())
			first := map[string]string{"F1": "theta2", "theta2": "F1"}[other]
			r := w.Enter(first, rightEntry(s, s.Quantity(first), lesson.Digits{Magnitude: 4, Angle: 2}))
			require.Equal(t, verdict.Correct, r.Verdict, r.Feedback)
			assert.Contains(t, r.Notes, "two-solutions")
			assert.Contains(t, r.Feedback, []string{"larger", "smaller"}[i])
			r = w.Enter(other, rightEntry(s, s.Quantity(other), lesson.Digits{Magnitude: 4, Angle: 2}))
			require.Equal(t, verdict.Correct, r.Verdict, r.Feedback)
			assert.True(t, w.Done())
			mixed := l.Solutions()[1-i]
			r = w.Enter(other, rightEntry(mixed, mixed.Quantity(other), lesson.Digits{Magnitude: 4, Angle: 2}))
			require.Equal(t, verdict.SlipFound, r.Verdict, r.Feedback)
			assert.Equal(t, []string{slips.BranchesMixed}, r.Slips[0].IDs)
		}
	}
	assert.Len(t, l.Solve(lesson.DefaultSettings()), 4, "both, by two ways each")
}

func TestAnOpenDirectionOfOneSolution(t *testing.T) {
	// More than the load: on the other side the cable would have to push.
	l := steered(t, "120 N")
	require.Len(t, l.Solutions(), 1)
	assert.InDelta(t, 50+math.Sqrt(120*120-7500), l.Truth("F1"), 1e-9)
	checkRoutes(t, l)
	// Along an axis a single sum tells the angle: 125 sin θ = 100.
	l = lessonOf(t, EquilibriumSource("", PartSource("T cable", "direction: 180 deg"), PartSource("F cable", "force: 125 N"), PartSource("W weight", "force: 100 N")))
	require.Len(t, l.Solutions(), 1)
	assert.InDelta(t, 53.1301, l.Truth("theta2"), 1e-4)
	assert.InDelta(t, 75, l.Truth("F1"), 1e-9)
	checkRoutes(t, l)
	w := tutor.NewWork(l, lesson.DefaultSettings())
	assert.Equal(t, verdict.Correct, w.Enter("sumy", "F sin θF = 100").Verdict)
	assert.Equal(t, verdict.Correct, w.Enter("sumx", "125 cos θF - T = 0").Verdict)
	assert.Equal(t, verdict.Correct, w.Enter("theta2", "asin(100/125)").Verdict)
	assert.NotEqual(t, verdict.Correct, tutor.NewWork(l, lesson.DefaultSettings()).Enter("theta2", "126.87").Verdict, "there the cable would push")
}

func TestWhatAnOpenDirectionCannotBe(t *testing.T) {
	load, cable := PartSource("W weight", "force: 100 N"), PartSource("T cable", "direction: 30 deg above -x")
	aimed := PartSource("F cable", "force: 95 N")
	rows := []struct {
		name  string
		parts []lesson.Source
		says  string
	}{
		{"too small", []lesson.Source{cable, PartSource("F cable", "force: 80 N"), load}, "too small"},
		{"just large enough", []lesson.Source{cable, PartSource("F cable", "force: 86.6026 N"), load}, "only just"},
		{"a cable would push both ways", []lesson.Source{PartSource("T cable", "direction: 45 deg below +x"), PartSource("F cable", "force: 95 N"), load}, "only pull"},
		{"nothing else open", []lesson.Source{aimed, load}, "All that is left open"},
		{"two directions", []lesson.Source{aimed, PartSource("G cable", "force: 60 N"), load}, "both open"},
		{"three values", []lesson.Source{aimed, cable, PartSource("S cable", "direction: 10 deg"), load}, "more unknowns"},
		{"round the particle", []lesson.Source{aimed, PartSource("T cable", "direction: 120 deg", "second: 60 deg"), load}, "runs round"},
		{"no load", []lesson.Source{aimed, cable}, "Add a load"},
	}
	for _, row := range rows {
		t.Run(row.name, func(t *testing.T) { refused(t, EquilibriumSource("", row.parts...), row.says) })
	}
}

// Whatever else pulls, each solution balances, agrees with every route, and
// turns and grows with the problem.
func TestOpenDirectionsBalance(t *testing.T) {
	two, one := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		turn := float64(rapid.IntRange(-180, 180).Draw(t, "turn"))
		scale := rapid.Float64Range(0.01, 100).Draw(t, "scale")
		deg := func(v float64) string { return "direction: " + strconv.FormatFloat(v, 'f', -1, 64) + " deg" }
		newtons := func(v float64) string { return "force: " + strconv.FormatFloat(v, 'f', -1, 64) + " N" }
		at, size := float64(rapid.IntRange(0, 359).Draw(t, "cable")), float64(rapid.IntRange(20, 900).Draw(t, "force"))
		is := rapid.SampledFrom([]string{"T cable", "T strut"}).Draw(t, "is")
		more := rapid.IntRange(1, 3).Draw(t, "loads")
		var loads [3][2]float64
		for i := range more {
			loads[i] = [2]float64{float64(rapid.IntRange(0, 359).Draw(t, "at")), float64(rapid.IntRange(20, 900).Draw(t, "load"))}
		}
		build := func(turn, scale float64) *tutor.Lesson {
			parts := []lesson.Source{PartSource(is, deg(at+turn)), PartSource("F cable", newtons(size*scale))}
			for i := range more {
				parts = append(parts, PartSource("P"+strconv.Itoa(i+1)+" force", deg(loads[i][0]+turn), newtons(loads[i][1]*scale)))
			}
			p, err := All.Read(EquilibriumSource("", parts...))
			require.NoError(t, err)
			l, err := tutor.Open(p)
			if err != nil {
				return nil
			}
			return l
		}
		plain, moved := build(0, 1), build(turn, scale)
		if plain == nil {
			require.Nil(t, moved)
			return
		}
		require.NotNil(t, moved)
		if len(plain.Solutions()) == 2 {
			two++
		} else {
			one++
		}
		for i, s := range plain.Solutions() {
			sum, all := balance(s.Lesson)
			assert.LessOrEqual(t, r2.Norm(sum), 1e-9*all)
			checkRoutes(t, s)
			o := moved.Solutions()[i]
			assert.Equal(t, s.Case, o.Case)
			assert.InEpsilon(t, scale*s.Truth("F1"), o.Truth("F1"), 1e-7)
			assert.InDelta(t, 0, math.Remainder(o.Truth("theta2")-s.Truth("theta2")-turn, 360), 1e-6)
		}
	})
	t.Log(two, "of two solutions,", one, "of one")
	assert.NotZero(t, two)
	assert.NotZero(t, one)
}

func TestASpringMayPush(t *testing.T) {
	// A beam seat: the spring stands below the ring and carries what the cable doesn't.
	l := lessonOf(t, EquilibriumSource("", PartSource("T cable", "direction: 180 deg"), PartSource("S spring", "direction: 40 deg below -x", "stiffness: 2 kN/m"), PartSource("W weight", "force: 300 N")))
	// S pushes up to the right: S sin 40° = 300, T = S cos 40°.
	assert.InDelta(t, 300/math.Sin(40*math.Pi/180), l.Truth("F2"), 1e-9)
	assert.InDelta(t, 300/math.Tan(40*math.Pi/180), l.Truth("F1"), 1e-9)
	assert.InDelta(t, l.Truth("F2")/2000, l.Truth("s2"), 1e-12)
	assert.Contains(t, l.Given()[len(l.Given())-1], "compressed")
	checkRoutes(t, l)
	sum, size := balance(l.Lesson)
	assert.LessOrEqual(t, r2.Norm(sum), 1e-9*size)
	w := tutor.NewWork(l, lesson.DefaultSettings())
	assert.Equal(t, verdict.Correct, w.Enter("sumx", "S cos 40 = T").Verdict)
	assert.Equal(t, verdict.Correct, w.Enter("s2", "233.4 mm").Verdict)
	// Given as compressed, it loads the ring as a strut of k·s would.
	l = lessonOf(t, EquilibriumSource("", PartSource("T cable", "direction: 180 deg"), PartSource("S spring", "direction: 40 deg below -x", "stiffness: 2 kN/m", "compression: 0.15 m"), PartSource("W weight", "find: mass")))
	assert.InDelta(t, 300*math.Sin(40*math.Pi/180)/9.81, l.Truth("m3"), 1e-9)
	assert.InDelta(t, 300*math.Cos(40*math.Pi/180), l.Truth("F1"), 1e-9)
	checkRoutes(t, l)
	for says, spring := range map[string]lesson.Source{
		"given as stretched":  PartSource("S spring", "direction: 40 deg below -x", "stretch: 0.1 m"),
		"given as compressed": PartSource("S spring", "direction: 40 deg above +x", "compression: 0.1 m"),
	} {
		p, err := All.Read(EquilibriumSource("", PartSource("T cable", "direction: 180 deg"), spring, PartSource("W weight", "force: 300 N")))
		require.NoError(t, err)
		_, err = tutor.Open(p)
		assert.ErrorContains(t, err, says)
	}
}
