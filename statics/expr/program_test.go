package expr_test

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	. "closingside/statics/expr"
)

// A program gives what the tree gives, at every node, and the same slopes.
func TestProgramsEvaluateAndDifferentiateLikeTrees(t *testing.T) {
	var tape Tape
	rapid.Check(t, func(t *rapid.T) {
		n := anyTree().Draw(t, "tree")
		names := Symbols(n)
		values := make([]float64, len(names))
		for i, name := range names {
			values[i] = berth(name)
		}
		p := Compile(n, func(name string) int { return slices.Index(names, name) }, named("theta"))
		alike := func(what string, got, want float64) {
			if got != want && !(math.IsNaN(got) && math.IsNaN(want)) {
				t.Fatalf("%s = %v, want %v", what, got, want)
			}
		}
		alike("value", p.Run(values, &tape), Eval(n, berth))
		p.Differentiate(&tape)
		points := Trace(n, berth)
		require.Equal(t, len(points), p.Len())
		for i, site := range postOrder(n, 0) {
			at := points[site]
			require.Equal(t, at.Node, p.Node(i))
			require.Equal(t, IsAngle(at.Node, named("theta")), p.Angle(i))
			alike("node", tape.Values[i], at.Value)
			alike("slope", tape.Slopes[i], at.Slope)
		}
	})
}

// postOrder lists the sites of n, which stands at a site, as a Program numbers its
// nodes: operands first.
func postOrder(n Node, site int) []int {
	var below []int
	switch n := n.(type) {
	case Neg:
		below = postOrder(n.X, site+1)
	case Bin:
		below = append(postOrder(n.L, site+1), postOrder(n.R, site+1+Size(n.L))...)
	case Fn:
		below = postOrder(n.X, site+1)
	}
	return append(below, site)
}

// named tells some names from all others.
func named(some ...string) func(string) bool {
	return func(name string) bool { return slices.Contains(some, name) }
}

func TestAProgramTakesAnotherValueAtANode(t *testing.T) {
	// √(3² + 4²) with the 3² come out as 0
	p := Compile(Sqrt(Add(Sq(S("a")), Sq(S("b")))), func(name string) int { return int(name[0] - 'a') }, named())
	var tape Tape
	require.Equal(t, 5.0, p.Run([]float64{3, 4}, &tape))
	square := slices.IndexFunc([]int{0, 1, 2, 3, 4, 5, 6, 7}, func(i int) bool { return p.Node(i) == Sq(S("a")) })
	require.Equal(t, 4.0, p.RunWith([]float64{3, 4}, &tape, square, 0))
	require.Equal(t, 5.0, p.Run([]float64{3, 4}, &tape))
	require.Equal(t, 0, p.Symbol(0))
	require.Equal(t, -1, p.Symbol(square))
	require.True(t, math.IsNaN(Compile(S("a"), func(string) int { return -1 }, named()).Run(nil, &tape)))
}

func TestAProgramRoundsWhatItIsTold(t *testing.T) {
	// 3·0.7·a with the product of numbers kept whole
	tree := Mul(N(3), N(0.7), S("a"))
	p := Compile(tree, func(string) int { return 0 }, named())
	var tape Tape
	got := p.RunEach([]float64{10}, &tape, func(place int, v float64) float64 {
		if _, product := p.Node(place).(Bin); product {
			return math.Round(v)
		}
		return v
	})
	require.InDelta(t, 20, got, 1e-12)
	require.InDelta(t, 21, p.Run([]float64{10}, &tape), 1e-12)
}

func BenchmarkProgram(b *testing.B) {
	names := []string{"F1", "F2", "gamma"}
	n := Sqrt(Sub(Add(Sq(S("F1")), Sq(S("F2"))), Mul(N(2), S("F1"), S("F2"), Cos(S("gamma")))))
	p := Compile(n, func(name string) int { return slices.Index(names, name) }, named("gamma"))
	values := []float64{340, 610, 87}
	var tape Tape
	b.ReportAllocs()
	for b.Loop() {
		p.Run(values, &tape)
	}
	require.InDelta(b, 682.6353677846, p.Run(values, &tape), 1e-9)
}
