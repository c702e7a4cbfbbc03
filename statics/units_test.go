package statics

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The factors as printed, to seven significant digits unless they end sooner,
// in NIST SP 811 (2008), appendix B.8, "Factors for units listed
// alphabetically".
func TestFactorsAgainstNIST(t *testing.T) {
	for _, row := range []struct {
		unit, entry string
		factor      float64
		digits      int // printed significant digits; 0 for an exact (bold) factor
	}{
		{"lbf", "pound-force", 4.448222, 7},
		{"lb", "pound-force", 4.448222, 7},
		{"kip", "kip (1 kip = 1000 lbf)", 4.448222e3, 7},
		{"kgf", "kilogram-force", 9.80665, 0},
		{"ft", "foot", 0.3048, 0},
		{"in", "inch", 0.0254, 0},
		{"yd", "yard", 0.9144, 0},
		{"mi", "mile", 1609.344, 0},
		{"nmi", "mile, nautical", 1852, 0},
		{"lb·ft", "pound-force foot", 1.355818, 7},
		{"lb·in", "pound-force inch", 0.1129848, 7},
		{"lb/ft", "pound-force per foot", 14.59390, 7},
		{"lb/in", "pound-force per inch", 175.1268, 7},
		{"lbm", "pound (avoirdupois)", 0.4535924, 7},
		{"slug", "slug", 14.59390, 7},
		{"t", "metric ton", 1000, 0},
		{"ft/s²", "foot per second squared", 0.3048, 0},
		{"gon", "gon (also called grade), to degree", 0.9, 0},
	} {
		t.Run(row.entry, func(t *testing.T) {
			u, ok := UnitBySymbol(row.unit)
			require.True(t, ok)
			halfUnit := 1e-15 * row.factor
			if row.digits > 0 {
				halfUnit = 0.5 * math.Pow10(int(math.Floor(math.Log10(row.factor)))-row.digits+1)
			}
			assert.InDelta(t, row.factor, u.Factor, halfUnit*(1+1e-9))
		})
	}
}

// Angles by NIST SP 811 (2008), appendix B.8: degree, minute, second and gon in
// radians, to seven digits.
func TestAngleFactorsAgainstNIST(t *testing.T) {
	rad, ok := UnitBySymbol("rad")
	require.True(t, ok)
	for symbol, want := range map[string]float64{
		"deg": 1.745329e-2, "′": 2.908882e-4, "″": 4.848137e-6, "gon": 1.570796e-2,
	} {
		u, ok := UnitBySymbol(symbol)
		require.True(t, ok)
		got, ok := u.Convert(1, rad)
		require.True(t, ok)
		assert.InEpsilon(t, want, got, 3e-7, symbol)
	}
}

// The unit-conversion rows of the published check values that use units of this
// package. The books round some factors (1609 m to the mile, 0.454 kg to the
// pound), so it is the printed answers that ours are held to.
func TestPublishedConversions(t *testing.T) {
	t.Run("up1-p32: 1 deg in rad", func(t *testing.T) {
		row := published(t, "up1-p32")
		assertPrinted(t, row, "angle", convert(t, row.number(t, "angle"), "deg", "rad"))
	})
	t.Run("up1-e2: 10 mi in 20 min", func(t *testing.T) {
		row := published(t, "up1-e2")
		metres := convert(t, row.number(t, "distance"), "mi", "m")
		assertPrinted(t, row, "speed", metres/(60*row.number(t, "time")))
	})
	t.Run("up1-p18: 100 km/h in m/s and mi/h", func(t *testing.T) {
		row := published(t, "up1-p18")
		assertPrinted(t, row, "a", convert(t, row.number(t, "speed"), "km", "m")/3600)
		assertPrinted(t, row, "b", convert(t, row.number(t, "speed"), "km", "mi"))
	})
	t.Run("up1-p30: density of water in lbm/ft³", func(t *testing.T) {
		row := published(t, "up1-p30")
		cubicFoot := math.Pow(convert(t, 1, "ft", "m"), 3)
		got := convert(t, row.number(t, "density_water")*cubicFoot, "kg", "lbm")
		assertPrinted(t, row, "density", got)
	})
	t.Run("up1-p24: 29028 ft, the book's foot is 1/3.281 m", func(t *testing.T) {
		row := published(t, "up1-p24")
		exact := convert(t, row.number(t, "height"), "ft", "km")
		assertPrinted(t, row, "height", exact/(row.number(t, "ft_per_m")*foot))
	})
}

func convert(t *testing.T, v float64, from, to string) float64 {
	t.Helper()
	f, ok := UnitBySymbol(from)
	require.True(t, ok)
	u, ok := UnitBySymbol(to)
	require.True(t, ok)
	got, ok := f.Convert(v, u)
	require.True(t, ok)
	return got
}

func TestConvertRefusesAnotherDimension(t *testing.T) {
	n, _ := UnitBySymbol("N")
	m, _ := UnitBySymbol("m")
	v, ok := n.Convert(1, m)
	assert.False(t, ok)
	assert.True(t, math.IsNaN(v))
}

func TestUnitBySymbol(t *testing.T) {
	for _, row := range []struct{ written, symbol string }{
		{"N", "N"}, {"n", "N"}, {"newtons", "N"}, {"kN", "kN"}, {"KN", "kN"}, {"Kn", "kN"},
		{"mN", "mN"}, {"MN", "MN"}, {"lb", "lb"}, {"LBS", "lb"}, {"lb.", "lb"}, {"pounds", "lb"},
		{"lbf", "lbf"}, {"kip", "kip"}, {"kips", "kip"}, {"lbm", "lbm"},
		{"deg", "deg"}, {"°", "deg"}, {"Degrees", "deg"}, {"rad", "rad"}, {"grad", "gon"},
		{"ft", "ft"}, {"in.", "in"}, {"feet", "ft"}, {"Mm", "mm"},
		{"N·m", "N·m"}, {"Nm", "N·m"}, {"N m", "N·m"}, {"N-m", "N·m"}, {"N*m", "N·m"}, {"kN⋅m", "kN·m"},
		{"ft-lb", "lb·ft"}, {"lb ft", "lb·ft"}, {"lbf·ft", "lb·ft"}, {"kip-ft", "kip·ft"}, {"in · lb", "lb·in"},
		{"N/m", "N/m"}, {"kN/m", "kN/m"}, {"lb/in", "lb/in"}, {"lb/in.", "lb/in"}, {"lbf/ft", "lb/ft"},
		{"slugs", "slug"}, {"kg", "kg"}, {"m/s2", "m/s²"}, {"m/s^2", "m/s²"}, {"ft/s²", "ft/s²"}, {"", ""},
	} {
		t.Run(row.written, func(t *testing.T) {
			u, ok := UnitBySymbol(row.written)
			require.True(t, ok)
			assert.Equal(t, row.symbol, u.Symbol)
		})
	}
	for _, written := range []string{"mn", "Mn", "mn·m", "N/", "newt", "ton", "x"} {
		t.Run("not "+written, func(t *testing.T) {
			u, ok := UnitBySymbol(written)
			assert.False(t, ok, "got %v", u)
		})
	}
}

func TestUnitTable(t *testing.T) {
	base := map[Dimension]string{}
	for _, u := range units {
		got, ok := UnitBySymbol(u.Symbol)
		assert.True(t, ok && got == u, "%q finds itself", u.Symbol)
		assert.Positive(t, u.Factor, u.Symbol)
		if u.Factor == 1 {
			base[u.Dim] = u.Symbol
		}
	}
	for symbol := range aliases {
		_, ok := UnitBySymbol(symbol)
		assert.True(t, ok, "aliases of %q, which is no unit", symbol)
	}
	for d := DimRatio; d <= DimAcceleration; d++ {
		assert.Contains(t, base, d, "a base unit for %v", d)
	}
}

// NIST SP 811 (2008), 7.2.
func TestUnitAfterNumber(t *testing.T) {
	for symbol, want := range map[string]string{
		"N": "5 N", "deg": "5°", "′": "5′", "rad": "5 rad", "": "5", "lb·ft": "5 lb·ft",
	} {
		u, ok := UnitBySymbol(symbol)
		require.True(t, ok)
		assert.Equal(t, want, u.After("5"))
	}
}
