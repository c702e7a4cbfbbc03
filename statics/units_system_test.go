package statics

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// The system of every unit of the table: NIST SP 811 (2008), tables 1, 2, 3, 6
// (SI and units used with it) and appendix B.8 (the others).
func TestSystemOfUnits(t *testing.T) {
	rows := map[System][]string{
		NoSystem:    {"", "deg", "′", "″", "rad", "gon", "kgf", "nmi"},
		SI:          {"N", "mN", "daN", "kN", "MN", "m", "mm", "cm", "km", "N·m", "N·mm", "mN·m", "kN·m", "MN·m", "kg", "g", "t", "N/m", "N/mm", "N/cm", "kN/m", "m/s²"},
		USCustomary: {"lb", "lbf", "kip", "ft", "in", "yd", "mi", "lb·ft", "lb·in", "kip·ft", "kip·in", "lbm", "slug", "lb/ft", "lb/in", "kip/ft", "kip/in", "ft/s²"},
	}
	n := 0
	for want, symbols := range rows {
		for _, s := range symbols {
			n++
			t.Run(s, func(t *testing.T) {
				u, ok := UnitBySymbol(s)
				assert.True(t, ok)
				assert.Equal(t, want, u.System())
			})
		}
	}
	assert.Equal(t, len(units), n, "every unit has a row")
}
