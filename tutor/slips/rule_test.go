package slips_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/statics/expr"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
)

// tugs is the lesson of two tugs at a barge, P 340 N at 25° and Q 610 N at 118°.
func tugs(t *testing.T) *lesson.Lesson {
	t.Helper()
	l, err := kinds.TwoForces.BankProblems()[0].Build()
	require.NoError(t, err)
	return l
}

// What stands in a formula where a rule applies, site by site. The formulas are
// the lesson's own routes.
func TestRulesRewriteRoutes(t *testing.T) {
	l := tugs(t)
	for _, r := range []struct {
		slip, quantity, route string
		want                  string // every rewrite, in the order of sites
	}{
		{"cosine-sign", "R", "cosine-law", "√(P² + Q² + 2·P·Q·cos γ)"},
		{"two-missing", "R", "cosine-law", "√(P² + Q² − P·Q·cos γ)"},
		{"root-missing", "R", "cosine-law", "P² + Q² − 2·P·Q·cos γ"},
		{"cross-term-missing", "R", "cosine-law", "√(P² + Q²)"},
		{"sum-squared", "R", "cosine-law", "√((P + Q)² − 2·P·Q·cos γ)"},
		{"sine-cosine-swapped", "R", "cosine-law", "√(P² + Q² − 2·P·Q·sin γ)"},
		{"included-for-interior", "R", "cosine-law", "√(P² + Q² − 2·P·Q·cos φ)"},
		{"precedence", "R", "cosine-law", "√((P² + Q² − 2·P·Q)·cos γ)"},
		{"complement-for-supplement", "gamma", "adjacent-angles", "90° − φ"},
		{"angles-not-halved", "gamma", "four-angles", "360° − 2·φ"},
		{"directions-added", "phi", "difference-of-directions", "θQ + θP"},
		{"inverse-missing", "alpha", "sine-law", "P·sin(γ)/R"},
		{"ratio-inverted", "alpha", "sine-law", "sin⁻¹(R/(P·sin γ)); sin⁻¹(R·sin(γ)/P)"},
		{"wrong-side", "theta", "from-first", "θP − β"},
		{"reference-missing", "theta", "from-first", "β"},
		{"wrong-neighbour", "theta", "from-first", "θP + α"},
		{"components-added", "R", "components", "|Rx| + |Ry|"},
		{"root-split", "R", "components", "|Rx| + |Ry|"},
		{"magnitudes-for-components", "F1x", "resolve", "P"},
		{"obtuse-missed", "R", "cosine-law", ""},
		{"bracket-lost", "R", "cosine-law", ""},
	} {
		t.Run(r.slip+" of "+r.quantity, func(t *testing.T) {
			q := l.Quantity(r.quantity)
			tree := q.Route(r.route).Tree
			row := slips.ByID(r.slip)
			var got []string
			for site := range expr.Size(tree) {
				for _, n := range row.Rule(&slips.Context{Lesson: l, Quantity: q, Site: site}, expr.At(tree, site)) {
					got = append(got, l.Text(expr.Replace(tree, site, n)))
				}
			}
			assert.Equal(t, r.want, strings.Join(got, "; "))
		})
	}
}

// What stands before a cosine is gathered in the cosine law alone: nobody reads
// a difference of components so.
func TestPrecedenceIsOfTheCosineLaw(t *testing.T) {
	l, err := kinds.ObliqueComponents.BankProblems()[0].Build()
	require.NoError(t, err)
	for route, want := range map[string]int{"two-equations": 0, "cosine-law": 1} {
		q, made := l.Quantity("Fu"), 0
		tree := q.Route(route).Tree
		for site := range expr.Size(tree) {
			made += len(slips.ByID("precedence").Rule(&slips.Context{Lesson: l, Quantity: q, Site: site}, expr.At(tree, site)))
		}
		assert.Equal(t, want, made, route)
	}
}

// A calculator's mode is that of all keys of a step, or of one sort alone.
func TestModesOfACalculator(t *testing.T) {
	l := tugs(t)
	tree := l.Quantity("alpha").Route("sine-law").Tree // sin⁻¹(P·sin γ/R)
	got := slips.ByID("radian-mode").Rule(&slips.Context{Lesson: l, Quantity: l.Quantity("alpha")}, tree)
	both, ok := slips.InMode(tree, expr.InRadians, func(n expr.Node) bool { return expr.IsTrig(n) || expr.IsInverseTrig(n) })
	require.True(t, ok)
	require.Len(t, got, 3, "forward, inverse, both")
	assert.Equal(t, both, got[2])
	assert.NotEqual(t, got[0], got[1])
	_, ok = slips.InMode(expr.S("R"), expr.InRadians, expr.IsTrig)
	assert.False(t, ok, "no key is pressed")
}

// What is written down instead of a value.
func TestWrittenWrongly(t *testing.T) {
	l := tugs(t)
	for _, r := range []struct {
		slip, quantity string
		value          float64
		want           []float64
	}{
		{"prefix", "R", 682.6, []float64{682600, 0.6826}},
		{"prefix", "gamma", 87, nil},
		{"decimal-place", "gamma", 87, []float64{870, 8.7}},
		{"unit-system", "R", 4.4482216152605, []float64{4.4482216152605 * 4.4482216152605, 1}}, // NIST SP 811: 1 lbf
		{"unit-system", "gamma", 87, nil},
		{"minutes-as-decimals", "gamma", 36.5, []float64{36.3}},
		{"minutes-as-decimals", "R", 36.5, nil},
		{"digits-swapped", "R", 682.6, []float64{862.6, 628.6, 686.2}},
	} {
		t.Run(r.slip+" "+r.quantity, func(t *testing.T) {
			got := slips.ByID(r.slip).Written(&slips.Context{Lesson: l, Quantity: l.Quantity(r.quantity)}, r.value)
			assert.InDeltaSlice(t, r.want, append([]float64{}, got...), 1e-9)
		})
	}
}

func TestDigitSwaps(t *testing.T) {
	for _, r := range []struct {
		v, half float64
		want    []float64
	}{
		{682.6, 0.05, []float64{862.6, 628.6, 686.2}},
		{-15.3, 0.05, []float64{-51.3, -13.5}},
		{88.2, 0.05, []float64{82.8}},
		{25, 0.005, []float64{52, 20.5}}, // 25.00: not 25.00 again
		{10, 0.5, nil},                   // 01 is not written
		{7, 0.5, nil},
	} {
		assert.Equal(t, r.want, slips.DigitSwaps(r.v, r.half), "%v ± %v", r.v, r.half)
	}
}

func TestZeroFromFront(t *testing.T) {
	for v, want := range map[float64]float64{2.84: 20.84, -6.1: -60.1, 28.4: 208.4, 284: 2084} {
		got, ok := slips.ZeroFromFront(v)
		assert.True(t, ok)
		assert.InDelta(t, want, got, 1e-9)
	}
	_, ok := slips.ZeroFromFront(0.284)
	assert.False(t, ok)
}

func TestMiscopies(t *testing.T) {
	for _, r := range []struct {
		v    float64
		want []float64
	}{
		{75, []float64{775, 77, 55, 57, 755}},
		{4, []float64{44}},
		{-30, []float64{-330, -33, 0, -3, -300}},
		{2.5, []float64{22.5, 2.55}},
	} {
		assert.Equal(t, r.want, slips.Miscopies(r.v), "%v", r.v)
	}
}

func TestSineAndCosineSwapped(t *testing.T) {
	x := expr.S("x")
	for _, r := range [][2]expr.Node{
		{expr.Add(expr.Sin(x), expr.Cos(x)), expr.Add(expr.Cos(x), expr.Sin(x))},
		{expr.Asin(expr.Tan(x)), expr.Acos(expr.Tan(x))},
		{x, x},
	} {
		assert.Equal(t, r[1], slips.SwapSineCosine(r[0]))
	}
}
