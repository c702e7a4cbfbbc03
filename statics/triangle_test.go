package statics

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// area by NIST DLMF 4.42.7, its form in two sides and the angle between them.
func area(tri Triangle) float64 {
	sin, _ := tri.Alpha.Sincos()
	return tri.B * tri.C * sin / 2
}

// identities checks a triangle against the laws of NIST DLMF §4.42(ii), in math's
// own sines and cosines, and against the sum of its angles. The tolerance is
// relative to the largest term of each law.
func identities(t require.TestingT, tri Triangle, relTol float64) {
	sides := [3]float64{tri.A, tri.B, tri.C}
	angles := [3]Angle{tri.Alpha, tri.Beta, tri.Gamma}
	sum := 0.0
	for i := range 3 {
		j, k := (i+1)%3, (i+2)%3
		a, b, c := sides[i], sides[j], sides[k]
		alpha, beta, gamma := float64(angles[i]), float64(angles[j]), float64(angles[k])
		sum += alpha
		require.Greater(t, alpha, 0.0)
		require.InDelta(t, 0, a*math.Sin(beta)-b*math.Sin(alpha), relTol*(a+b), "4.42.4, the sine law, in %+v", tri)
		require.InDelta(t, 0, c*c-(a*a+b*b-2*a*b*math.Cos(gamma)), relTol*(a+b)*(a+b), "4.42.5, the cosine law, in %+v", tri)
		require.InDelta(t, a, b*math.Cos(gamma)+c*math.Cos(beta), relTol*(b+c), "4.42.6 in %+v", tri)
	}
	s := (tri.A + tri.B + tri.C) / 2
	heron := s * (s - tri.A) * (s - tri.B) * (s - tri.C)
	require.InDelta(t, heron, area(tri)*area(tri), relTol*s*s*s*s, "4.42.7, the area, in %+v", tri)
	require.InDelta(t, math.Pi, sum, 2e-15+relTol, "the angles of %+v", tri)
}

// Sides in the ratio of at most 1000 to 1, as lessons have them, and corners
// down to a hundredth of a degree.
var (
	drawSide   = rapid.Float64Range(1, 1000)
	drawCorner = rapid.Float64Range(0.01, 179.99)
)

func TestSASObeysTheLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawSide.Draw(t, "a"), drawSide.Draw(t, "b")
		gamma := Angle(drawCorner.Draw(t, "gamma")) * Degree
		tri, ok := SAS(a, gamma, b)
		require.True(t, ok)
		identities(t, tri, 1e-14)
	})
}

func TestSSSUndoesSAS(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawSide.Draw(t, "a"), drawSide.Draw(t, "b")
		gamma := Angle(drawCorner.Draw(t, "gamma")) * Degree
		want, ok := SAS(a, gamma, b)
		require.True(t, ok)
		got, ok := SSS(a, b, want.C)
		if !ok { // the rounding of c closed the triangle
			require.Less(t, math.Min(a+b-want.C, math.Min(a, b)), 1e-6*(a+b))
			return
		}
		identities(t, got, 1e-13)
		// c² = a² + b² − 2ab·cos γ: what one rounding of c does to γ.
		slope := want.C * want.C / (a * b * math.Sin(float64(gamma)))
		require.InDelta(t, float64(gamma), float64(got.Gamma), 1e-13*(1+slope))
	})
}

func TestASAAndAASObeyTheLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		alpha := drawCorner.Draw(t, "alpha")
		beta := rapid.Float64Range(0.005, 0.995).Draw(t, "share") * (180 - alpha)
		side := drawSide.Draw(t, "side")
		tri, ok := ASA(Angle(alpha)*Degree, side, Angle(beta)*Degree)
		require.True(t, ok)
		identities(t, tri, 1e-11) // a side over a corner of 5e-5°
		again, ok := AAS(tri.Alpha, tri.Beta, tri.A)
		require.True(t, ok)
		require.InEpsilon(t, side, again.C, 1e-9)
	})
}

func TestSSAFindsEveryTriangle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawSide.Draw(t, "a"), drawSide.Draw(t, "b")
		alpha := Angle(drawCorner.Draw(t, "alpha")) * Degree
		found := SSA(a, b, alpha)
		// How many there are: the far corner, b·sin α off the third side, is swung
		// about at radius a.
		h := b * math.Sin(float64(alpha))
		want := 0
		switch acute := alpha < 90*Degree; {
		case a > b:
			want = 1
		case acute && a == b:
			want = 1
		case acute && a > h:
			want = 2
		}
		if math.Abs(a-h) > 1e-12*b {
			require.Len(t, found, want)
		}
		for _, tri := range found {
			require.Equal(t, [3]float64{a, b, float64(alpha)}, [3]float64{tri.A, tri.B, float64(tri.Alpha)})
			identities(t, tri, 1e-12)
		}
		if len(found) == 2 {
			require.InDelta(t, math.Pi, float64(found[0].Beta+found[1].Beta), 1e-14)
			require.Less(t, found[0].Beta, found[1].Beta)
		}
	})
}

// Right triangles come out exactly right: 5·sin 30° must just reach.
func TestSSATangent(t *testing.T) {
	for _, row := range []struct{ a, b, alpha, c float64 }{
		{5, 10, 30, 10 * math.Cos(math.Pi/6)},
		{300 * math.Sqrt2 / 2, 300, 45, 300 * math.Sqrt2 / 2},
		{10 * math.Sqrt(3) / 2, 10, 60, 5},
	} {
		found := SSA(row.a, row.b, Angle(row.alpha)*Degree)
		require.Len(t, found, 1, "SSA(%v, %v, %v°)", row.a, row.b, row.alpha)
		assert.Equal(t, 90*Degree, found[0].Beta)
		assert.InEpsilon(t, row.c, found[0].C, 1e-14)
	}
	assert.Empty(t, SSA(4.9999, 10, 30*Degree))
	assert.Len(t, SSA(5.0001, 10, 30*Degree), 2)
	assert.Empty(t, SSA(10, 10, 90*Degree), "two right angles")
	assert.Len(t, SSA(10, 10, 60*Degree), 1)
	assert.Empty(t, SSA(9, 10, 120*Degree))
}

// Exact triangles (from memory: Pythagorean triples; the equilateral triangle).
func TestExactTriangles(t *testing.T) {
	tri := must(t)(SSS(3, 4, 5))
	assert.InDelta(t, 90, tri.Gamma.Degrees(), 1e-13)
	assert.InDelta(t, math.Atan2(3, 4), float64(tri.Alpha), 1e-15)
	tri = must(t)(SAS(5, 90*Degree, 12))
	assert.InDelta(t, 13, tri.C, 2e-15*13)
	tri = must(t)(SSS(7, 7, 7))
	for _, a := range []Angle{tri.Alpha, tri.Beta, tri.Gamma} {
		assert.Equal(t, 60.0, a.Degrees())
	}
}

// A needle-like triangle, where the cosine law as taught loses half its digits:
// two sides equal, c = 2·a·sin(γ/2) exactly.
func TestNeedles(t *testing.T) {
	for _, gamma := range []Angle{1 * Degree, 0.01 * Degree, 1e-4 * Degree, 1e-8 * Degree} {
		tri := must(t)(SAS(500, gamma, 500))
		want := 1000 * math.Sin(float64(gamma)/2)
		assert.InEpsilon(t, want, tri.C, 1e-15)
		assert.InDelta(t, (math.Pi-float64(gamma))/2, float64(tri.Alpha), 5e-16)
		assert.InDelta(t, (math.Pi-float64(gamma))/2, float64(tri.Beta), 5e-16)
		back := must(t)(SSS(500, 500, want))
		assert.InEpsilon(t, float64(gamma), float64(back.Gamma), 1e-15)
	}
}

func TestNoTriangle(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for name, ok := range map[string]bool{
		"SSS of a flat one":    refuse(SSS(1, 2, 3)),
		"SSS that can't close": refuse(SSS(1, 2, 3.5)),
		"SSS with a zero":      refuse(SSS(0, 2, 2)),
		"SSS with NaN":         refuse(SSS(nan, 2, 2)),
		"SSS with Inf":         refuse(SSS(inf, inf, 2)),
		"SAS at 0°":            refuse(SAS(1, 0, 2)),
		"SAS at 180°":          refuse(SAS(1, 180*Degree, 2)),
		"SAS at NaN":           refuse(SAS(1, Angle(nan), 2)),
		"SAS with minus":       refuse(SAS(-1, 60*Degree, 2)),
		"ASA beyond 180°":      refuse(ASA(100*Degree, 5, 81*Degree)),
		"ASA at 180°":          refuse(ASA(118*Degree, 5, 62*Degree)),
		"AAS with no angle":    refuse(AAS(100*Degree, 0, 5)),
		"AAS with no side":     refuse(AAS(60*Degree, 60*Degree, 0)),
	} {
		assert.True(t, ok, name)
	}
	assert.Empty(t, SSA(0, 2, 40*Degree))
	assert.Empty(t, SSA(nan, 2, 40*Degree))
	assert.Empty(t, SSA(3, 2, 180*Degree))
}

func refuse(_ Triangle, ok bool) bool { return !ok }
