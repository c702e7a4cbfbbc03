package expr_test

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	. "closingside/statics/expr"
)

func TestFormatNumber(t *testing.T) {
	for _, row := range []struct {
		v      float64
		digits int
		want   string
	}{
		{682.6353284, 4, "682.6"},
		{682.6353284, 10, "682.6353284"},
		{682.04, 4, "682"},
		{0.1, 17, "0.1"},
		{1.0 / 3, 3, "0.333"},
		{-25, 4, "−25"},
		{0, 4, "0"},
		{math.Copysign(0, -1), 4, "0"},
		{9999.96, 5, "10000"},
		{466000, 3, "466000"},
		{466999, 3, "467000"},
		{1e-6, 4, "0.000001"},
		{1.234e-6, 4, "0.000001234"},
		{9.99e-7, 4, "9.99e−7"},
		{9.9999e-7, 2, "0.000001"},
		{999999999999, 12, "999999999999"},
		{999999999999, 4, "1e12"},
		{1.25e15, 4, "1.25e15"},
		{-1.25e-15, 4, "−1.25e−15"},
		{12345, 0, "10000"},
		{12345, -3, "10000"},
		{math.Pi, 99, "3.141592653589793"},
		{math.NaN(), 4, "NaN"},
		{math.Inf(1), 4, "∞"},
		{math.Inf(-1), 4, "−∞"},
		{math.SmallestNonzeroFloat64, 4, "5e−324"},
		{math.MaxFloat64, 4, "1.798e308"},
	} {
		t.Run(row.want, func(t *testing.T) {
			assert.Equal(t, row.want, FormatNumber(row.v, row.digits))
		})
	}
}

// What FormatNumber writes is the number rounded as strconv rounds it, and no
// longer than need be.
func TestFormatNumberIsTheRoundedNumber(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64Range(-1e300, 1e300).Draw(t, "v")
		digits := rapid.IntRange(1, 17).Draw(t, "digits")
		s := FormatNumber(v, digits)
		got, err := strconv.ParseFloat(strings.ReplaceAll(s, "−", "-"), 64)
		want, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'g', digits, 64), 64)
		if err != nil || got != want {
			t.Fatalf("FormatNumber(%g, %d) = %q, want %g", v, digits, s, want)
		}
		head, _, power := strings.Cut(s, "e")
		if strings.Contains(head, ".") && strings.HasSuffix(head, "0") {
			t.Fatalf("%q ends in 0", s)
		}
		if size := math.Abs(want); power != (size != 0 && (size < 1e-6 || size >= 1e12)) {
			t.Fatalf("%q: power of ten", s)
		}
		if n := len(strings.Trim(strings.NewReplacer(".", "", "−", "").Replace(head), "0")); n > digits {
			t.Fatalf("%q has %d digits, want at most %d", s, n, digits)
		}
	})
}
