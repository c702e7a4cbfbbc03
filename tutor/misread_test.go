package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
)

// Every given misread, a force forgotten among them, sits at a quantity that can
// be asked about: one without ended the program.
func TestMisreadingsSitSomewhere(t *testing.T) {
	l := solvedBy(t, kinds.ConcurrentForcesSource("", kinds.ForceSource("A", "240 lb", "144 deg"), kinds.ForceSource("B", "770 lb", "40 deg above -x"), kinds.ForceSource("C", "160 lb", "44 deg")))
	all := l.misreadings()
	require.NotEmpty(t, all)
	for _, m := range all {
		assert.NotNil(t, l.Quantity(m.outcome.at), "%v", m.outcome.ids)
	}
}
