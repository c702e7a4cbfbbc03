package statics

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestSincosIsExactAtQuarterTurns(t *testing.T) {
	// The values at multiples of 90° are the definition's: NIST DLMF §4.14 and
	// table 4.17.1.
	want := [4][2]float64{{0, 1}, {1, 0}, {0, -1}, {-1, 0}}
	for n := -40; n <= 40; n++ {
		for _, a := range []Angle{
			Angle(n*90) * Degree,
			Angle(n) * (math.Pi / 2),
			Angle(n*90-25)*Degree + 25*Degree,
			Angle(n*90+118)*Degree - 118*Degree,
		} {
			sin, cos := a.Sincos()
			assert.Equal(t, want[n&3], [2]float64{sin, cos}, "Sincos(%v), n = %d", a, n)
		}
	}
}

func TestSincosAgreesWithMathElsewhere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(-100, 100).Draw(t, "a")
		sin, cos := Angle(a).Sincos()
		if got, want := math.Hypot(sin-math.Sin(a), cos-math.Cos(a)), angleNoise(a); got > want {
			t.Fatalf("Sincos(%v rad) is %v from math's, want within %v", a, got, want)
		}
	})
	sin, cos := Angle(math.NaN()).Sincos()
	require.True(t, math.IsNaN(sin) && math.IsNaN(cos))
}

func TestNormalizedAndPositive(t *testing.T) {
	for _, row := range []struct{ in, normalized, positive float64 }{
		{0, 0, 0},
		{25, 25, 25},
		{180, 180, 180},
		{-180, 180, 180},
		{-90, -90, 270},
		{270, -90, 270},
		{360, 0, 0},
		{-360, 0, 0},
		{540, 180, 180},
		{-540, 180, 180},
		{725, 5, 5},
		{-62.5, -62.5, 297.5},
		{-1e-15, 0, 0}, // would come out as 360° otherwise
	} {
		a := Angle(row.in) * Degree
		t.Run(a.String(), func(t *testing.T) {
			assert.Equal(t, row.normalized, a.Normalized().Degrees(), "Normalized(%v)", a)
			assert.Equal(t, row.positive, a.Positive().Degrees(), "Positive(%v)", a)
		})
	}
}

// Just outside the noise below 0°, where adding a turn rounds into it.
func TestPositiveNeverReachesATurn(t *testing.T) {
	for _, a := range []Angle{-5.6066262743570405e-15, -1.2 * angleAbsTol, -2 * angleAbsTol, -1e-14} {
		p := a.Positive()
		assert.Less(t, p, Turn)
		assert.Equal(t, p, p.Positive(), "%g rad", float64(a))
	}
}

func TestNormalizedKeepsTheDirection(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := Angle(rapid.Float64Range(-50, 50).Draw(t, "a"))
		n, p := a.Normalized(), a.Positive()
		if n <= -math.Pi || n > math.Pi || p < 0 || p >= Turn {
			t.Fatalf("%v: Normalized = %v, Positive = %v, out of range", a, n, p)
		}
		if n.Normalized() != n || p.Positive() != p {
			t.Fatalf("%v: normalizing twice gives something else", a)
		}
		s0, c0 := a.Sincos()
		for _, b := range []Angle{n, p} {
			if s, c := b.Sincos(); math.Hypot(s-s0, c-c0) > 1e-13 {
				t.Fatalf("%v became %v, another direction", a, b)
			}
		}
	})
}

func TestDegreesGiveBackWhatWasPutIn(t *testing.T) {
	require.Equal(t, 60.0, (60 * Degree).Degrees())
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(-4_000_000, 4_000_000).Draw(t, "n")
		decimals := math.Pow10(rapid.IntRange(0, 6).Draw(t, "decimals"))
		d := float64(n) / decimals
		if math.Abs(d) > 720 {
			d = math.Mod(d, 720)
			d = math.Round(d*decimals) / decimals
		}
		if got := (Angle(d) * Degree).Degrees(); got != d {
			t.Fatalf("Degrees(%v·Degree) = %v", d, got)
		}
		if got := (180*Degree - Angle(d)*Degree).Degrees(); math.Abs(got-(180-d)) > 1e-13*math.Max(1, math.Abs(d)) {
			t.Fatalf("Degrees(180° − %v°) = %v", d, got)
		}
	})
	// Sums of whole degrees stay whole.
	for d := -720; d <= 720; d++ {
		assert.Equal(t, float64(180-d), (180*Degree - Angle(d)*Degree).Degrees())
		assert.Equal(t, float64(d-118), (Angle(d)*Degree - 118*Degree).Degrees())
	}
}

func TestAngleString(t *testing.T) {
	for want, a := range map[string]Angle{
		"60°":          60 * Degree,
		"−62.5°":       -62.5 * Degree,
		"57.29577951°": 1,
		"90°":          100 * Gradian,
		"360°":         Turn,
	} {
		assert.Equal(t, want, a.String())
	}
}
