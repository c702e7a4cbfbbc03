package entry

import (
	"testing"

	"closingside/statics"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestShownIsInTheProblemsUnit(t *testing.T) {
	newton, _ := statics.UnitBySymbol("N")
	r, bad := Read("0.6826 kN", Scope{Dim: statics.DimForce, Unit: newton, Force: newton})
	require.Nil(t, bad)
	assert.Equal(t, "682.6 N", r.Shown(newton))
}

// Nobody who types three digits reads ten.
func TestShownHasAFewDigitsMoreThanTyped(t *testing.T) {
	newton, _ := statics.UnitBySymbol("N")
	for typed, want := range map[string]string{
		"399 lb":        "1774.84 N",
		"0.6826 kN":     "682.6 N",
		"12345.678 N":   "12345.678 N",
		"1234567890 N":  "1234567890 N",
		"0.00012345 kN": "0.12345 N",
	} {
		r, err := Read(typed, Scope{Unit: newton, Dim: statics.DimForce})
		require.Nil(t, err, typed)
		assert.Equal(t, want, r.Shown(newton))
	}
}
