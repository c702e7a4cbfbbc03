package expr_test

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	. "closingside/statics/expr"
)

// An unknown out of one sum that is zero, as it is written out.
func TestIsolate(t *testing.T) {
	u, c := S("u"), S("c")
	for _, r := range []struct {
		name string
		sum  Node
		want string // "" for none
	}{
		{"the rest on the other side", Sub(u, c), "c"},
		{"a sign of its own", Add(u, c), "−c"},
		{"minus on both", Sub(c, u), "c"},
		{"a coefficient", Sub(Mul(u, Cos(S("theta"))), c), "c/cos theta"},
		{"a divisor", Sub(Div(u, N(2)), c), "c/(1/2)"},
		{"two terms of it", Sub(Add(Mul(N(2), u), Mul(N(3), u)), c), "c/(2 + 3)"},
		{"a bracket", Sub(Mul(N(2), Add(u, S("d"))), c), "(c − d·2)/2"},
		{"nothing but the unknown", Mul(N(2), u), ""},
		{"no unknown", Sub(c, N(1)), ""},
		{"its square", Sub(Sq(u), c), ""},
		{"under a fraction line", Sub(Div(N(1), u), c), ""},
		{"in a function", Sub(Sin(u), c), ""},
	} {
		t.Run(r.name, func(t *testing.T) {
			got := Isolate(r.sum, "u")
			if r.want == "" {
				assert.Nil(t, got)
				return
			}
			require.NotNil(t, got)
			assert.Equal(t, r.want, Plain(got, plainly))
		})
	}
}

// plainly prints symbols by their names.
func plainly(name string) Symbol { return Symbol{Letter: name} }

// What is eliminated from two random sums makes both zero, whatever their terms.
func TestEliminateSolvesBoth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		number := rapid.Map(rapid.IntRange(1, 50), func(i int) float64 { return float64(i) / 4 })
		term := func(unknown Node, minus bool) Term {
			return Term{Minus: minus, Node: Mul(N(number.Draw(t, "a")), unknown)}
		}
		sum := func() Node {
			return Sum([]Term{term(S("u"), rapid.Bool().Draw(t, "minus")), term(S("v"), rapid.Bool().Draw(t, "minus")),
				{Minus: rapid.Bool().Draw(t, "minus"), Node: N(number.Draw(t, "c"))}})
		}
		x, y := sum(), sum()
		u, v := Eval(Eliminate(x, y, "u", "v"), nil), Eval(Eliminate(x, y, "v", "u"), nil)
		if math.IsNaN(u) || math.Abs(u) > 1e6 { // on parallel lines
			t.Skip()
		}
		at := func(name string) float64 { return map[string]float64{"u": u, "v": v}[name] }
		for _, s := range []Node{x, y} {
			if left := Eval(s, at); math.Abs(left) > 1e-6*max(1, math.Abs(u), math.Abs(v)) {
				t.Fatalf("%s = %v at u = %v, v = %v", Plain(s, plainly), left, u, v)
			}
		}
	})
}

func TestEliminateWithoutASecondSumIsolates(t *testing.T) {
	x, y := Sub(S("u"), S("c")), Sub(S("v"), S("c"))
	assert.Equal(t, Isolate(x, "u"), Eliminate(x, nil, "u", "v"))
	assert.Equal(t, Isolate(x, "u"), Eliminate(x, y, "u", ""))
	assert.Nil(t, Eliminate(Sub(Sq(S("u")), S("v")), y, "u", "v"), "not linear")
	assert.Nil(t, Eliminate(x, Sub(Mul(S("u"), S("v")), S("c")), "u", "v"), "a product of unknowns")
}

// A sum begins with a term that is added, where there is one.
func TestSum(t *testing.T) {
	a, b := Term{Node: S("a")}, Term{Minus: true, Node: S("b")}
	for _, r := range []struct {
		terms []Term
		want  string
	}{
		{[]Term{a, b}, "a − b"},
		{[]Term{b, a}, "a − b"},
		{[]Term{b, b}, "−b − b"},
		{[]Term{{}, b}, "1 − b"},
		{Negated([]Term{a, b}), "b − a"},
		{[]Term{a.Times(b)}, "−a·b"},
		{[]Term{b.Times(b), {}}, "b·b + 1"},
	} {
		assert.Equal(t, r.want, Plain(Sum(r.terms), plainly))
	}
	assert.Nil(t, Sum(nil))
	terms := []Term{b, a}
	before := slices.Clone(terms)
	Sum(terms)
	Negated(terms)
	assert.Equal(t, before, terms, "left as they were")
}
