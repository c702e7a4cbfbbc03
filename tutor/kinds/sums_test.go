package kinds

import (
	"math"
	"strconv"
	"testing"

	"closingside/statics"
	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/spatial/r2"
	"pgregory.net/rapid"
)

func decimal(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// headings draws a direction in any of the ways a statement may give it.
var headings = rapid.Custom(func(t *rapid.T) string {
	turn := decimal(float64(rapid.IntRange(1, 899).Draw(t, "turn")) / 10)
	pick := func(name string, from ...string) string { return rapid.SampledFrom(from).Draw(t, name) }
	switch rapid.IntRange(0, 5).Draw(t, "form") {
	case 0:
		return decimal(rapid.Float64Range(-720, 720).Draw(t, "angle")) + " deg"
	case 1:
		return pick("slope", "3:4", "12:5", "1:2", "2:7.5") + pick("up", " up ", " down ") + pick("left", "left", "right")
	case 2:
		return pick("n", "N ", "S ") + turn + pick("e", " E", " W")
	case 3:
		return turn + pick("above", " deg above ", " deg below ") + pick("x", "+x", "-x")
	case 4:
		return turn + " deg clockwise from " + pick("axis", "+x", "-x", "+y", "-y")
	}
	return "azimuth " + decimal(float64(rapid.IntRange(1, 359).Draw(t, "azimuth")))
})

// A force taken apart and put together again is the same force, whichever way
// its direction is given; every route agrees on the way.
func TestComponentsThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		size := rapid.Float64Range(0.1, 9999).Draw(t, "size")
		unit := rapid.SampledFrom([]string{" N", " kN", " lb", " kip"}).Draw(t, "unit")
		p, err := All.Read(ComponentsSource("", "P", decimal(size)+unit, headings.Draw(t, "heading")))
		require.NoError(t, err)
		l, err := tutor.Open(p)
		require.NoError(t, err)
		checkRoutes(t, l)
		h := p.Group("force")[0].Field("direction").Heading
		want := statics.Polar(size, h.Angle())
		assert.InDelta(t, 0, r2.Norm(r2.Sub(want, r2.Vec{X: l.Truth("Fx"), Y: l.Truth("Fy")})), 1e-9*size)
		assert.InEpsilon(t, size, mat.Norm(mat.NewVecDense(2, []float64{l.Truth("Fx"), l.Truth("Fy")}), 2), 1e-9)
		back, err := All.Read(FromComponentsSource("", "P", decimal(l.Truth("Fx"))+unit, decimal(l.Truth("Fy"))+unit))
		require.NoError(t, err)
		m, err := tutor.Open(back)
		require.NoError(t, err)
		checkRoutes(t, m)
		assert.InEpsilon(t, size, m.Truth("F"), 1e-9)
		assert.InDelta(t, 0, math.Remainder(m.Truth("theta")-h.Angle().Degrees(), 360), 1e-7)
	})
}

// The sum by gonum's matrices, ΣF − R = 0 by substitution; and the resultant
// turns with the frame and grows with the loads.
func TestConcurrentForcesAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 6).Draw(t, "n")
		var forces []lesson.Source
		for i := range n {
			forces = append(forces, ForceSource("F"+strconv.Itoa(i+1), decimal(rapid.Float64Range(10, 2000).Draw(t, "size"))+" lb", headings.Draw(t, "heading")))
		}
		p, err := All.Read(ConcurrentForcesSource("", forces...))
		require.NoError(t, err)
		l, err := tutor.Open(p)
		if err != nil {
			t.Skip(err)
		}
		checkRoutes(t, l)
		dirs, sizes := mat.NewDense(2, n, nil), mat.NewVecDense(n, nil)
		for i, it := range p.Group("forces") {
			a := it.Field("direction").Heading.Angle().Radians()
			dirs.Set(0, i, math.Cos(a))
			dirs.Set(1, i, math.Sin(a))
			sizes.SetVec(i, it.Field("magnitude").Value)
		}
		var sum mat.VecDense
		sum.MulVec(dirs, sizes)
		scale := largestForce(l)
		assert.InDelta(t, sum.AtVec(0), l.Truth("Rx"), 1e-9*scale)
		assert.InDelta(t, sum.AtVec(1), l.Truth("Ry"), 1e-9*scale)
		assert.InDelta(t, mat.Norm(&sum, 2), l.Truth("R"), 1e-9*scale)
		r := statics.Polar(l.Truth("R"), statics.Angle(l.Truth("theta"))*statics.Degree)
		for i := range n {
			r = r2.Sub(r, r2.Vec{X: l.Truth("F" + strconv.Itoa(i+1) + "x"), Y: l.Truth("F" + strconv.Itoa(i+1) + "y")})
		}
		assert.LessOrEqual(t, r2.Norm(r), 1e-9*scale, "ΣF − R")

		turn := float64(rapid.IntRange(-179, 179).Draw(t, "turn"))
		grow := rapid.Float64Range(0.1, 10).Draw(t, "grow")
		moved, err := tutor.Open(turnedAndScaled(p, turn, grow))
		require.NoError(t, err)
		assert.InEpsilon(t, grow*l.Truth("R"), moved.Truth("R"), 1e-6)
		assert.InDelta(t, 0, math.Remainder(moved.Truth("theta")-l.Truth("theta")-turn, 360), 1e-6)
	})
}

func TestForcesThatBalanceAreRefused(t *testing.T) {
	for name, src := range map[string]lesson.Source{
		"zero": ConcurrentForcesSource("", ForceSource("A", "100 N", "0 deg"), ForceSource("B", "100 N", "120 deg"), ForceSource("C", "100 N", "240 deg")),
		"1000": ConcurrentForcesSource("", ForceSource("A", "1 N", "0 deg"), ForceSource("B", "1.1 kN", "120 deg")),
	} {
		t.Run(name, func(t *testing.T) {
			p, err := All.Read(src)
			require.NoError(t, err)
			_, err = tutor.Open(p)
			assert.ErrorContains(t, err, name)
		})
	}
	for name, src := range map[string]lesson.Source{
		"either":    lesson.Branch("", lesson.Leaf("kind", "components"), lesson.Branch("force", lesson.Leaf("name", "P"), lesson.Leaf("magnitude", "1 N"), lesson.Leaf("x", "1 N"))),
		"Both comp": FromComponentsSource("", "P", "0 N", "0 kN"),
	} {
		t.Run(name, func(t *testing.T) {
			p, err := All.Read(src)
			require.NoError(t, err)
			_, err = tutor.Open(p)
			assert.ErrorContains(t, err, name[:4])
		})
	}
}

// Slips of these kinds, each by its name: what a learner would write, and what
// is said. Values worked by hand from the givens.
func TestSlipsOfComponentsAreNamed(t *testing.T) {
	slope := banked(t, &Components, 1)       // 6.5 kN, 3:4 down left: −5.2, −3.9
	bearing := banked(t, &Components, 2)     // 420 N, S 35° E: 240.9, −344.0
	back := banked(t, &Components, 4)        // −310 N, 545 N: 627.0 N at 119.6°
	three := banked(t, &ConcurrentForces, 0) // 420 at 20°, 350 at 115°, 510 at −70°
	known := banked(t, &MissingForce, 0)
	least := banked(t, &MissingForce, 2) // C = 850 lb at 65°, along 20°
	rows := []struct {
		l                   *tutor.Lesson
		quantity, entry, id string
	}{
		{slope, "Fx", "-3.9 kN", "slope-inverted"}, // 6.5·3/5
		{slope, "Fx", "-8.667 kN", "leg-over-leg"}, // 6.5·4/3
		{slope, "Fx", "5.2 kN", "sign-lost"},       //
		{banked(t, &Components, 0), "Fx", "340 N", "magnitudes-for-components"},
		{bearing, "Fx", "344.0 N", "sine-cosine-swapped"}, // 420 cos 35°
		{bearing, "Fy", "344.0 N", "sign-lost"},
		{back, "F", "855 N", "components-added"},
		{back, "F", "448.2 N", "squares-subtracted"}, // √(545² − 310²)
		{back, "theta", "-60.37", "quadrant-missed"},
		{back, "theta", "60.37", "reference-angle"},
		{three, "Rx", decimal(math.Round((420*math.Cos(20*math.Pi/180)+350*math.Cos(115*math.Pi/180))*10)/10) + " N", "term-missing"}, // the third
		{three, "R", "1280 N", "magnitudes-added"},
		{known, "F2x", "499.7 N", "known-added"},                           // 560 cos 70° + 340 cos 25°
		{known, "F2x", "191.5 N", "term-missing"},                          // 560 cos 70° alone
		{known, "F2x", "-308.1 N", "term-missing"},                         // −340 cos 25° alone
		{known, "F1x", "116.3 N", "other-force"},                           // 340 cos 70°
		{known, "Ry", "236.7 N", "other-force"},                            // 560 sin 25°
		{banked(t, &ObliqueComponents, 0), "Fx", "507.5 N", "other-force"}, // 560 cos 25°
		{least, "F2", "850 lb", "perpendicular-to-given"},                  // 850 tan 45°
	}
	for _, r := range rows {
		t.Run(r.id, func(t *testing.T) {
			got := tutor.NewWork(r.l, lesson.DefaultSettings()).Enter(r.quantity, r.entry)
			require.Equal(t, verdict.SlipFound, got.Verdict, "%s: %v, unexplained %v", r.entry, got.Slips, got.Unexplained)
			assert.Contains(t, got.Slips[0].IDs, r.id)
		})
	}
}
