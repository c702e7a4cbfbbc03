package tutor

import (
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"testing"

	"closingside/statics/expr"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// finePair is a pair of forces with directions to a hundredth of a degree: with
// whole degrees, the values of different mistakes often coincide, and which
// coincide depends on the axes.
func finePair(t *testing.T, m1, m2, d1, d2 int) (*Lesson, bool) {
	direction := func(d int) string { return strconv.FormatFloat(float64(d)/100, 'f', 2, 64) + " deg" }
	p, err := kinds.All.Read(kinds.TwoForcesSource("", kinds.ForceSource("P", strconv.Itoa(m1)+" N", direction(d1)), kinds.ForceSource("Q", strconv.Itoa(m2)+" N", direction(d2))))
	require.NoError(t, err)
	l, err := Open(p)
	if err != nil {
		return nil, false
	}
	for _, q := range l.Quantities {
		if !q.Given && !q.Turns && q.IsAngle() && (q.True < 12 || q.True > 168 || math.Abs(q.True-90) < 5) {
			return nil, false
		}
	}
	return l, true
}

// image is a problem seen another way: what a quantity is called there, and
// what a value of it is.
type image struct {
	lesson *Lesson
	name   func(string) string
	turn   float64 // of directions
}

// Swapping the forces, or turning both by the same angle, changes neither what is
// right nor the verdict on what a slip in the triangle gives; but turned, the digits
// of a direction that may have been miscopied are others, which tells (of one value in
// twenty thousand) where another mistake gives the same value as one of these.
func TestSymmetryOfVerdicts(t *testing.T) {
	const seed = 8
	rng := rand.New(rand.NewPCG(seed, 1))
	compared, differ := 0, 0
	twins := map[string]string{"alpha": "beta", "beta": "alpha"}
	same := func(name string) string { return name }
	swap := func(name string) string {
		if o, ok := twins[name]; ok {
			return o
		}
		return name
	}
	for range problems() / 100 {
		m1, m2, d1, d2, turn := 100+rng.IntN(900), 100+rng.IntN(900), rng.IntN(36000)-18000, rng.IntN(36000)-18000, rng.IntN(30000)+2000
		l, ok := finePair(t, m1, m2, d1, d2)
		if !ok {
			continue
		}
		swapped, ok1 := finePair(t, m2, m1, d2, d1)
		turned, ok2 := finePair(t, m1, m2, d1+turn, d2+turn)
		require.True(t, ok1 && ok2)
		images := []image{{swapped, swap, 0}, {turned, same, float64(turn) / 100}}
		for _, name := range []string{"R", "gamma", "phi", "alpha", "beta", "theta"} {
			for k, v := range slipValues(l, turned, name, float64(turn)/100) {
				text := func(v float64) string { return strconv.FormatFloat(v, 'f', 10, 64) }
				want := NewWork(l, lesson.DefaultSettings()).judge(l.Quantity(name), text(v)).Verdict
				for _, im := range images {
					o, x := im.lesson.Quantity(im.name(name)), v
					if o.Turns {
						x += im.turn
					}
					got := NewWork(im.lesson, lesson.DefaultSettings()).judge(o, text(x)).Verdict
					compared++
					if k == 0 || im.turn == 0 || (got == verdict.Correct) != (want == verdict.Correct) {
						require.Equal(t, want, got, "%s = %v; %s", name, v, described(l, NewWork(l, lesson.DefaultSettings())))
					}
					if got != want {
						differ++
						t.Logf("%s = %v: %v, %v; %s", name, v, want, got, described(l, NewWork(l, lesson.DefaultSettings())))
					}
				}
			}
		}
	}
	t.Logf("%d compared, %d differ", compared, differ)
	assert.LessOrEqual(t, differ, compared/10000)
}

// slipValues is the true value of a quantity, then what slips make of it that
// turn with the forces: those that look at the triangle alone, and for θ those
// that come out further by the turn, by the same slip.
func slipValues(l, turned *Lesson, name string, turn float64) []float64 {
	q := l.Quantity(name)
	values := []float64{q.True}
	triangle := set(0)
	for _, name := range []string{"F1", "F2", "phi", "gamma", "R", "alpha", "beta"} {
		triangle = triangle.with(l.index[name])
	}
	further := func(x float64, ids []string) bool {
		return slices.ContainsFunc(turned.variantsOf(l.index[name]), func(v variant) bool {
			return share(v.ids, ids) && math.Abs(math.Remainder(expr.Eval(v.tree, turned.Truth)-x-turn, 360)) <= 1e-6
		})
	}
	for _, v := range l.variantsOf(l.index[name]) {
		x := expr.Eval(v.tree, l.Truth)
		if x != x || !q.Turns && v.reads&^triangle != 0 || q.Turns && !further(x, v.ids) {
			continue
		}
		values = append(values, x)
	}
	return values
}
