package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// A product of numbers with their units is the force they make, whatever unit
// the statement's forces are in: g, masses, stiffnesses and lengths by their
// definitions (NIST SP 811, appendix B.8).
func TestAForceAsAProductOfUnits(t *testing.T) {
	cables := []lesson.Source{kinds.PartSource("T1 cable", "direction: 40 deg"), kinds.PartSource("T2 cable", "direction: 150 deg")}
	spring := func(stiffness, stretch string) []lesson.Source {
		return []lesson.Source{kinds.PartSource("T1 cable", "direction: 150 deg"), kinds.PartSource("S spring", "direction: 35 deg", "stiffness: "+stiffness, "stretch: "+stretch), kinds.PartSource("W weight")}
	}
	slugs := append(cables[:2:2], kinds.PartSource("W weight", "mass: 10 slug"))
	kilos := append([]lesson.Source{kinds.PartSource("P weight", "force: 2 kN")}, append(cables[:2:2], kinds.PartSource("W weight", "mass: 1000 kg"))...)
	rows := []struct {
		parts           []lesson.Source
		quantity, entry string
	}{
		{slugs, "F3", "10 slug * 32.2 ft/s^2"},
		{slugs, "F3", "10 slug * g"},
		{slugs, "F3", "10*32.2"},
		{slugs, "F3", "m g"},
		{slugs, "sumy", "T1 sin 40 + T2 sin 30 = 10 slug * 32.2 ft/s^2"},
		{slugs, "sumy", "T1 sin 40 + T2 sin 30 = (10 slug)(32.2)"},
		{kilos, "F4", "1000 kg * 9.81 m/s^2"},
		{kilos, "F4", "1000 kg * g"},
		{kilos, "F4", "m g"},
		{kilos, "F4", "m g/1000"},
		{kilos, "sumy", "T1 sin 40 + T2 sin 30 = 2 + 1000 kg * 9.81 m/s^2"},
		{spring("20 lb/in", "6 in"), "F2", "20 lb/in * 6 in"},
		{spring("20 lb/in", "6 in"), "F2", "240 lb/ft * 0.5 ft"},
		{spring("20 lb/in", "6 in"), "F2", "k s"},
		{spring("20 lb/in", "6 in"), "sumx", "T1 cos 30 = 20 lb/in * 6 in * cos 35"},
		{spring("2 kN/m", "150 mm"), "F2", "2 kN/m * 150 mm"},
		{spring("2 kN/m", "150 mm"), "F2", "2000 N/m * 0.15 m"},
	}
	for _, row := range rows {
		t.Run(row.entry, func(t *testing.T) {
			l := solvedBy(t, kinds.EquilibriumSource("", row.parts...))
			r := NewWork(l, lesson.DefaultSettings()).Enter(row.quantity, row.entry)
			assert.Equal(t, verdict.Correct, r.Verdict, r.Feedback)
		})
	}
}
