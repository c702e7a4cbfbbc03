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
