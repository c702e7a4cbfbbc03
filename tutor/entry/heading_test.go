package entry

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"closingside/statics"
	"closingside/tutor/text"
)

// TestReadHeading: the angle from +x and how it is written back, or where the
// error points and its key. Forms of bearings and azimuths: common practice of
// surveying.
func TestReadHeading(t *testing.T) {
	for _, row := range []struct{ text, want string }{
		{"25°", "25 25° from +x"},
		{"25 deg", "25 25° from +x"},
		{"25", "25 25° from +x"},
		{"-25 deg", "-25 −25° from +x"},
		{"400°", "400 400° from +x"},
		{"25° from +x", "25 25° from +x"},
		{"25° counter-clockwise from +x", "25 25° from +x"},
		{"25° clockwise from +x", "-25 25° clockwise from +x"},
		{"clockwise 25° from +x", "-25 25° clockwise from +x"},
		{"25° cw", "-25 25° clockwise from +x"},
		{"20 deg from +y clockwise", "70 20° clockwise from +y"},
		{"20 deg ccw from y", "110 20° counter-clockwise from +y"},
		{"20° anti-clockwise from the negative y-axis", "290 20° counter-clockwise from −y"},
		{"20° measured anticlockwise from the positive x axis", "20 20° from +x"},
		{"0.5 rad", "28.6479 28.64788976° from +x"},
		{"50 grad", "45 45° from +x"},
		{"52°30′ from +x", "52.5 52.5° from +x"},
		{"52 deg 30 min from +x", "52.5 52.5° from +x"},
		{"30 deg below -x", "210 30° below −x"},
		{"30° above +x", "30 30° above +x"},
		{"30° above x", "30 30° above +x"},
		{"15° left of +y", "105 15° left of +y"},
		{"15° to the right of −y", "285 15° right of −y"},
		{"N 30 E", "60 N 30° E"},
		{"N30E", "60 N 30° E"},
		{"n 30° e", "60 N 30° E"},
		{"South 12.5 deg West", "257.5 S 12.5° W"},
		{"N 7°30′ W", "97.5 N 7.5° W"},
		{"37° N of E", "37 37° N of E"},
		{"37° south of west", "217 37° S of W"},
		{"azimuth 120", "-30 azimuth 120°"},
		{"az 120°", "-30 azimuth 120°"},
		{"120° azimuth", "-30 azimuth 120°"},
		{"120 bearing", "-30 azimuth 120°"},
		{"N", "90 N"},
		{"due south", "270 S"},
		{"NW", "135 N 45° W"},
		{"20° from +y", "error 1+11 heading-side"},
		{"20° from the negative x axis", "error 1+23 heading-side"},
		{"0° from −x", "180 −x"},
		{"due south-east", "315 S 45° E"},
		{"northeast", "45 N 45° E"},
		{"N W", "135 N 45° W"},
		{"sw", "225 S 45° W"},
		{"+x", "0 0° from +x"},
		{"-y", "270 −y"},
		{"left", "180 −x"},
		{"3:4 up left", "143.13 3:4 up left"},
		{"3 : 4 left and up", "143.13 3:4 up left"},
		{"5 in 12 down and to the right", "-22.6199 5:12 down right"},
		{"3/4 up right", "36.8699 3:4 up right"},
		{"1.5:2 down left", "216.87 1.5:2 down left"},
		{"３０° below −x", "210 30° below −x"},
		{"N 30 E.", "60 N 30° E"},
		{"20° from the vertical to the left", "110 20° left of +y"},
		{"20° left of the vertical", "110 20° left of +y"},
		{"20° from −y to the right", "290 20° right of −y"},
		{"20° above the horizontal", "20 20° above +x"},
		{"20° off +y clockwise", "70 20° clockwise from +y"},

		{"", "error 1+0 empty"},
		{"30 degrees upwind", "error 12+6 heading-word"},
		{"3O deg below -x", "error 2+1 letter-digit"},
		{"2O below -x", "error 2+1 letter-zero"},
		{"N 2l E", "error 4+1 letter-digit"},
		{"30 m above +x", "error 4+1 heading-unit"},
		{"30° below", "error 5+5 heading-unfinished"},
		{"30° above +y", "error 1+12 heading-range"},
		{"120° above +x", "error 1+13 heading-range"},
		{"E 30 N", "30 E 30° N"},
		{"W 42.75 N", "137.25 W 42.75° N"},
		{"N 30 S", "error 1+6 heading-range"},
		{"azimuth 400", "error 1+11 heading-range"},
		{"N 30", "error 3+2 heading-unfinished"},
		{"3:4", "error 1+3 heading-ways"},
		{"3:4 up", "error 5+2 heading-unfinished"},
		{"3:4 up down", "error 1+11 heading-range"},
		{"0:0 up left", "error 1+11 heading-range"},
		{"3°:4 up left", "error 1+4 heading-slope"},
		{"3: up left", "error 4+2 heading"},
		{"25° from", "error 5+4 heading-unfinished"},
		{"25° 30", "error 5+2 minutes"},
		{"20° from P", "error 10+1 heading-word"},
		{"20° toward P", "error 12+1 heading-word"},
		{"25° from +x 30", "error 13+2 heading"},
		{"from +x", "error 1+4 heading"},
		{"25° N E", "error 7+1 heading"},
		{"25 ? 3", "error 4+1 character"},
	} {
		t.Run(row.text, func(t *testing.T) {
			h, err := ReadHeading(row.text)
			got := describe(Reading{}, err)
			if err == nil {
				got = number6(h.Angle().Degrees()) + " " + h.String()
			} else {
				checkError(t, row.text, err)
			}
			assert.Equal(t, row.want, got, "ReadHeading(%q)", row.text)
		})
	}
}

// TestDirectionsFromAThing: a direction told from a force that is given.
func TestDirectionsFromAThing(t *testing.T) {
	s := scopeFor("beta")
	s.Direction, s.Things = true, Things{"P": 25, "E": 118, "F1": -40}
	for _, row := range []struct{ text, want string }{
		{"20° from P", "45 20° from P"},
		{"20° counter-clockwise from P", "45 20° from P"},
		{"20° clockwise from P", "5 20° clockwise from P"},
		{"20 deg from the P clockwise", "5 20° clockwise from P"},
		{"20° from P toward E", "45 20° from P"},
		{"20° from E towards P", "98 20° clockwise from E"},
		{"20° from F1", "-20 20° from F1"},
		{"20° from F_1", "-20 20° from F1"},
		{"20° from F₁ cw", "-60 20° clockwise from F1"},
		{"N 30 E", "60 N 30° E"},
		{"30° N of E", "30 30° N of E"},
		{"20° from E", "138 20° from E"},
		{"20° from east", "20 20° from +x"},
		{"20° from P toward", "error 12+6 heading-unfinished"},
		{"20° from P toward P 3", "error 21+1 heading"},
		{"20° from P above", "error 12+5 heading"},
		{"20° from Z", "error 10+1 heading-word"},
		{"20° from P clockwise toward E", "error 22+6 heading"},
	} {
		t.Run(row.text, func(t *testing.T) {
			r, err := Read(row.text, s)
			got := describe(Reading{}, err)
			if err == nil {
				got = number6(r.Value) + " " + r.Shown(s.Unit)
			} else {
				checkError(t, row.text, err)
			}
			assert.Equal(t, row.want, got)
		})
	}
}

// TestHeadingReadsBack: what a heading prints as is the same heading.
func TestHeadingReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		axis := statics.Axis(rapid.IntRange(0, 3).Draw(t, "axis"))
		sense := statics.Sense(rapid.IntRange(0, 1).Draw(t, "sense"))
		turn := statics.Angle(rapid.IntRange(0, 9000).Draw(t, "turn")) / 100 * statics.Degree
		beside := (axis + 1) & 3
		if sense == statics.Clockwise {
			beside = (axis + 3) & 3
		}
		rise, run := float64(rapid.IntRange(0, 99).Draw(t, "rise"))/4, float64(rapid.IntRange(1, 99).Draw(t, "run"))/4
		var h statics.Heading
		var ok bool
		switch rapid.IntRange(0, 5).Draw(t, "form") {
		case 0:
			h, ok = statics.From(axis, turn, sense)
		case 1:
			h, ok = statics.Toward(statics.Beside, axis, beside, turn)
		case 2:
			h, ok = statics.Toward(statics.Bearing, axis|1, (axis|1)+1, turn)
			if axis|1 == 3 {
				h, ok = statics.Toward(statics.Bearing, 3, 0, turn)
			}
		case 3:
			h, ok = statics.Toward(statics.Compass, axis, beside, turn)
		case 4:
			h, ok = statics.FromSlope(rise, run, axis|1, axis&2)
		case 5:
			h, ok = statics.FromNorth(4 * turn)
		}
		if !ok {
			t.Fatalf("no heading: %v", h)
		}
		got, err := ReadHeading(h.String())
		if err != nil {
			t.Fatalf("ReadHeading(%q): %v", h.String(), err)
		}
		if d := (got.Angle() - h.Angle()).Degrees(); d > 1e-9 || d < -1e-9 || got.String() != h.String() {
			t.Fatalf("ReadHeading(%q) = %v", h.String(), got)
		}
	})
}

func TestReadMeasure(t *testing.T) {
	for _, row := range []struct {
		text string
		dim  statics.Dimension
		want string
	}{
		{"340 N", statics.DimForce, "340 N"},
		{"0.34 kN", statics.DimForce, "0.34 kN"},
		{"-2 kip", statics.DimForce, "-2 kip"},
		{"+2 kip", statics.DimForce, "2 kip"},
		{"1,234.5 lb", statics.DimForce, "1234.5 lb"},
		{"1.2e3 N", statics.DimForce, "1200 N"},
		{"25 deg", statics.DimAngle, "25 deg"},
		{"25", statics.DimAngle, "25 deg"},
		{"52°30′", statics.DimAngle, "52.5 deg"},
		{"0.5 rad", statics.DimAngle, "0.5 rad"},
		{"0.3", statics.DimRatio, "0.3 "},
		{"3 ft", statics.DimLength, "3 ft"},
		{"12 kN·m", statics.DimMoment, "12 kN·m"},
		{"250 lb/in", statics.DimStiffness, "250 lb/in"},
		{"9.81 m/s²", statics.DimAcceleration, "9.81 m/s²"},
		{"32.2 ft/s^2", statics.DimAcceleration, "32.2 ft/s²"},

		{"", statics.DimForce, "error 1+0 empty"},
		{"340", statics.DimForce, "error 1+3 measure-unit"},
		{"340 m", statics.DimForce, "error 1+5 measure-dimension"},
		{"340 stones", statics.DimForce, "error 5+6 unknown-unit"},
		{"N", statics.DimForce, "error 1+1 measure"},
		{"340 N 2", statics.DimForce, "error 5+1 measure"},
		{"340 610 N", statics.DimForce, "error 1+7 space"},
		{"340, 610 N", statics.DimForce, "error 4+1 two-values"},
		{"1,234 N", statics.DimForce, "error 1+5 comma"},
		{"3*4 N", statics.DimForce, "error 2+1 measure"},
		{"nan", statics.DimForce, "error 1+3 measure"},
	} {
		t.Run(row.text, func(t *testing.T) {
			v, u, err := ReadMeasure(row.text, row.dim)
			got := describe(Reading{}, err)
			if err == nil {
				got = strconv.FormatFloat(v, 'g', -1, 64) + " " + u.Symbol
			} else {
				checkError(t, row.text, err)
			}
			assert.Equal(t, row.want, got, "ReadMeasure(%q, %v)", row.text, row.dim)
		})
	}
}

// TestSettings: what an instructor may ask for.
func TestSettings(t *testing.T) {
	numbers, units := scopeFor("R"), scopeFor("R")
	numbers.NumbersOnly, units.UnitRequired = true, true
	angle, ratio := scopeFor("beta"), scopeFor("ratio")
	angle.NumbersOnly, angle.UnitRequired, ratio.UnitRequired = true, true, true
	for _, row := range []struct {
		entry string
		scope Scope
		want  string
	}{
		{"682.6 N", numbers, "number 682.6 ± 0.05 N"},
		{"1.2×10³", numbers, "number 1200 ± 50"},
		{"340 + 342.6", numbers, "error 1+11 numbers-only"},
		{"R = 340 + 342.6 N", numbers, "error 5+13 numbers-only"},
		{"340 = 342.6", numbers, "number 342.6 ± 0.05"},
		{"118 = θ + 3", angle, "error 1+11 numbers-only"},
		{"118° − θ", angle, "error 1+8 numbers-only"},
		{"30° below −x", angle, "direction 210 ± 0.5 5 deg | 30° below −x"},
		{"682.6", units, "error 1+5 unit-required"},
		{"682.6 N", units, "number 682.6 ± 0.05 N"},
		{"P + 342.6", units, "expression 682.6 | F1 + 342.6"},
		{"87", angle, "error 1+2 unit-required"},
		{"87°", angle, "number 87 ± 0.5 deg"},
		{"0.6", ratio, "number 0.6 ± 0.05"},
	} {
		t.Run(row.entry, func(t *testing.T) {
			r, err := Read(row.entry, row.scope)
			assert.Equal(t, row.want, describe(r, err), "Read(%q)", row.entry)
		})
	}
}

// TestAffineKeepsItsUnknown: an unknown stays one even where it has a value.
func TestAffineKeepsItsUnknown(t *testing.T) {
	s := scopeFor("beta")
	s.Known = func(name string) float64 {
		if name == "theta" {
			return 88.2
		}
		return testKnown(name)
	}
	r, err := Read("118° − θ", s)
	require.Nil(t, err)
	assert.Equal(t, Affine, r.Form)
	assert.InDelta(t, 29.8, r.Value, 1e-12)
}

// TestErrorsKeepTheTree: a reading that fails for its names or its value can
// still be shown.
func TestErrorsKeepTheTree(t *testing.T) {
	for _, entry := range []string{"Q cos β", "R/2", "1/0", "cos(1.518)", "682 m"} {
		r, err := Read(entry, scopeFor("R"))
		assert.NotNil(t, err, entry)
		assert.NotNil(t, r.Tree, entry)
	}
}

// TestLimits: hostile length and depth end in a sentence.
func TestLimits(t *testing.T) {
	for entry, key := range map[string]string{
		strings.Repeat("(", 3_000_000): "too-long",
		strings.Repeat("(", 300):       "too-deep",
		strings.Repeat("-", 300) + "1": "too-deep",
		strings.Repeat("√", 300) + "1": "too-deep",
		strings.Repeat("|", 300) + "1": "too-deep",
		strings.Repeat("sin ", 90):     "too-deep",
		strings.Repeat("2^", 150):      "too-deep",
		strings.Repeat("9", 399):       "too-large",
	} {
		_, err := Read(entry, scopeFor("R"))
		require.NotNil(t, err)
		assert.Equal(t, "entry."+key, err.Key, "%.9s…", entry)
		checkError(t, entry, err)
	}
	deep := strings.Repeat("(", maxDepth) + "1" + strings.Repeat(")", maxDepth)
	_, err := Read(deep, scopeFor("R"))
	assert.Nil(t, err)
	_, err = Read(strings.Repeat("1+", 199)+"1", scopeFor("R"))
	assert.Nil(t, err)
}

// TestEverySentenceIsReached: each sentence of the reader stands for an error
// that some row of these tests makes.
func TestEverySentenceIsReached(t *testing.T) {
	said := map[string]bool{}
	eachRow(func(asked, entry, want string) {
		r, err := Read(entry, scopeFor(asked))
		if err == nil {
			err = r.Unequal
		}
		if err != nil {
			said[err.Key] = true
		}
	})
	for _, key := range text.Keys() {
		if !strings.HasPrefix(key, "entry.") || said[key] {
			continue
		}
		rest := strings.TrimPrefix(key, "entry.")
		others := strings.HasPrefix(rest, "heading") || strings.HasPrefix(rest, "measure") || strings.HasPrefix(rest, "dimension") ||
			rest == "too-long" || rest == "too-deep" || rest == "numbers-only" || rest == "unit-required" || rest == "unknown-unit" || rest == "degrees" || rest == "value-asked"
		assert.True(t, others, "no row is answered %s", key)
	}
}
