package writing

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"closingside/statics"
	"closingside/tutor/lesson"
)

var (
	force     = &lesson.Quantity{Name: "R", Dim: statics.DimForce, True: 682.6}
	direction = &lesson.Quantity{Name: "theta", Dim: statics.DimAngle, Turns: true, True: 88.2}
)

// A value is written somehow: over all that may stand on paper its chances add up
// to one, whatever is known of the value and whoever writes.
func TestChancesAddUpToOne(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		unit := func(name string) float64 { return rapid.Float64Range(0, 1).Draw(rt, name) }
		q := rapid.SampledFrom([]*lesson.Quantity{force, direction}).Draw(rt, "q")
		half := rapid.SampledFrom([]float64{0.5, 0.05}).Draw(rt, "half")
		x := q.True + 0.0137 + float64(rapid.IntRange(0, 400).Draw(rt, "x"))/20 // on no cell's edge
		blur := Spread{four: 0.3 * unit("four"), three: 2 * unit("three"), shift: unit("shift") - 0.5, held: 0.3 * unit("held")}
		full := unit("full")
		h := Habit{Full: full, Four: (1 - full) * 0.6, Three: (1 - full) * 0.4}
		sum, cells := 0.0, int(15/half)
		for i := -cells; i <= cells; i++ {
			v := (math.Round(x/(2*half)) + float64(i)) * 2 * half
			sum += h.Chance(q, v, half, x, blur)
		}
		if math.Abs(sum-1) > 1e-3 {
			rt.Fatalf("%s = %v ± %v, %+v, %+v: %v", q.Name, x, half, blur, h, sum)
		}
	})
}

// What rounding does to a value is found again by rounding many: the mean square of
// what a factor of four digits moves a product by.
func TestDriftIsTheVarianceOfRounding(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	const slope, n = 3.7, 200000
	sum, d := 0.0, Drift{}
	for range n {
		v := 100 + 899*rng.Float64() // one power of ten: one size of the last digit
		off := slope * (lesson.Digits{Magnitude: 4, Angle: 2}.Round(statics.DimForce, v) - v)
		sum += off * off
	}
	d.Round(slope, 500, statics.DimForce)
	assert.InEpsilon(t, sum/n, d.Four, 0.02)
	assert.InEpsilon(t, 100*d.Four, d.Three, 1e-9, "a digit less is ten times as much")

	var carried Drift
	carried.Add(-2, d)
	assert.InEpsilon(t, 4*d.Four, carried.Four, 1e-12)
	carried.Add(math.NaN(), d)
	assert.InEpsilon(t, 4*d.Four, carried.Four, 1e-12, "a slope that is none moves nothing")
}

// Who is seen to keep three digits is taken for one who does.
func TestHabitsLeanToWhatWasSeen(t *testing.T) {
	x := 512.3456
	seen, any := Chances(force, 513.0, 0.05, x, Spread{four: 0.05, three: 0.5}).Against(0.1)
	assert.True(t, any)
	lean := HabitFor(force, 513.0, 0.05).Given(seen)
	assert.Greater(t, lean.Three, HabitFor(force, 513.0, 0.05).Three)
	assert.InDelta(t, 1, lean.Full+lean.Four+lean.Three, 1e-12)
	_, any = Habit{}.Against(0.1)
	assert.False(t, any, "nothing was seen")
}
