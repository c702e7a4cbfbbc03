package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Books call the resultant F_R too, and its components the sums of the others.
func TestOtherNamesOfTheResultant(t *testing.T) {
	for _, e := range [][2]string{
		{"R", "F_R = 682.6 N"}, {"R", "FR = 682.6 N"}, {"R", "Fr = 682.6 N"}, {"Rx", "ΣFx = 21.77 N"}, {"Ry", "∑F_y = 682.3 N"}, {"Ry", "F_{Ry} = 682.3 N"},
	} {
		assert.Equal(t, Correct, NewWork(barge(t), DefaultSettings()).Enter(e[0], e[1]).Verdict, e)
	}
	w := NewWork(barge(t), DefaultSettings())
	w.Enter("Rx", "21.77 N")
	assert.Equal(t, Correct, w.Enter("R", "sqrt(ΣFx² + 682.29²)").Verdict)
}
