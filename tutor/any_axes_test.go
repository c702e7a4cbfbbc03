package tutor

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"closingside/tutor/lesson"
)

// What is accepted before a component is entered does not depend on how the
// axes lie. F1 = 444 N at −125.22°, F2 = 191 N at −41.69° is the problem on
// which a slip's β = 22.2933° was right along some axes and wrong along others.
func TestTheBandDoesNotTurnWithTheAxes(t *testing.T) {
	rng := rand.New(rand.NewPCG(21, 1))
	rows := [][4]int{{444, 191, -12522, -4169}}
	for len(rows) < 40 {
		rows = append(rows, [4]int{100 + rng.IntN(900), 100 + rng.IntN(900), rng.IntN(36000) - 18000, rng.IntN(36000) - 18000})
	}
	for _, r := range rows {
		l, ok := finePair(t, r[0], r[1], r[2], r[3])
		if !ok {
			continue
		}
		for _, turn := range []int{913, 4500, 9000, 17321} {
			turned, ok := finePair(t, r[0], r[1], r[2]+turn, r[3]+turn)
			if !ok {
				continue
			}
			for _, name := range []string{"R", "alpha", "beta", "theta"} {
				want := NewWork(l, lesson.DefaultSettings()).Band(l.Quantity(name)).Half
				got := NewWork(turned, lesson.DefaultSettings()).Band(turned.Quantity(name)).Half
				assert.InEpsilon(t, want, got, 1e-9, "%s turned by %d: %v", name, turn, r)
			}
		}
	}
}
