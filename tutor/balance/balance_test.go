package balance_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/statics/expr"
	"closingside/tutor/balance"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// crate is a crate of 120 kg that hangs from two cables, 40° above −x and 30° above
// +x: F1 and F2 are unknown, F3 is its weight.
func crate(t *testing.T) *lesson.Lesson {
	t.Helper()
	l, err := kinds.ParticleEquilibrium.BankProblems()[0].Build()
	require.NoError(t, err)
	return l
}

// sorter takes the unknowns of a lesson for unknown, and all else for exact.
func sorter(l *lesson.Lesson) *balance.Sorter {
	return &balance.Sorter{
		Value: func(name string) (balance.Coef, bool) {
			q := l.Quantity(name)
			return balance.Coef{Value: q.True}, !q.Unknown
		},
		Tree: func(string) expr.Node { return nil },
	}
}

var f1, f2, f3 = expr.S("F1"), expr.S("F2"), expr.S("F3")

// side writes a sum of both cables: a·F1 + b·F2.
func side(a, b float64) expr.Node {
	signed := func(v float64, f expr.Node) expr.Node {
		if v < 0 {
			return expr.Neg{X: expr.Mul(expr.N(-v), f)}
		}
		return expr.Mul(expr.N(v), f)
	}
	return expr.Add(signed(a, f1), signed(b, f2))
}

// An equation may be scaled, its sides exchanged, its terms divided by a known
// value; what then differs is another one.
func TestMultiples(t *testing.T) {
	l := crate(t)
	weigh := func(left, right expr.Node) *balance.Equation {
		terms, ok := sorter(l).Terms(balance.Exact(left), balance.Exact(right))
		require.True(t, ok)
		return balance.Weigh(l, terms, l.Truth("F3"))
	}
	sum := weigh(side(2, 3), f3)
	for _, r := range []struct {
		name        string
		left, right expr.Node
		want        bool
	}{
		{"itself", side(2, 3), f3, true},
		{"twice", side(4, 6), expr.Mul(expr.N(2), f3), true},
		{"turned round", f3, side(2, 3), true},
		{"turned over", side(-2, -3), expr.Neg{X: f3}, true},
		{"by the weight", expr.Div(side(2, 3), f3), expr.N(1), true},
		{"unknowns below the line", expr.Div(f3, side(2, 3)), expr.N(1), true},
		{"a sign", side(2, -3), f3, false},
		{"a coefficient", side(2, 3.1), f3, false},
		{"a term left out", side(2, 3), expr.N(0), false},
	} {
		t.Run(r.name, func(t *testing.T) { assert.Equal(t, r.want, weigh(r.left, r.right).MultipleOf(sum)) })
	}
	assert.True(t, weigh(side(3, 2), f3).SpannedBy([]*balance.Equation{weigh(side(3, 0), f3), weigh(side(0, 1), expr.N(0))}))
	assert.False(t, weigh(side(3, 2), f3).SpannedBy([]*balance.Equation{weigh(side(1, 0), f3), weigh(side(2, 0), expr.Mul(expr.N(2), f3))}), "of one equation taken twice")
}

// A number that may be off lets the equation be off by as much, and by no more.
func TestRoundedNumbers(t *testing.T) {
	l := crate(t)
	off := func(by float64) func(int) float64 { return func(int) float64 { return by } }
	weigh := func(b float64, literal func(int) float64) *balance.Equation {
		terms, ok := sorter(l).Terms(balance.Side{Tree: expr.Add(f1, expr.Mul(expr.N(b), f2)), Literal: literal}, balance.Exact(expr.Div(f3, expr.N(2))))
		require.True(t, ok)
		return balance.Weigh(l, terms, l.Truth("F3"))
	}
	right := weigh(0.8660254, off(0))
	assert.False(t, weigh(0.866, off(0)).MultipleOf(right), "0.866 is not the root of 3/4")
	assert.True(t, weigh(0.866, off(0.0005)).MultipleOf(right), "but may stand for it")
	assert.False(t, weigh(0.876, off(0.0005)).MultipleOf(right), "as 0.876 may not")
	assert.Greater(t, weigh(0.866, off(0.0005)).ByChance(), right.ByChance())
}

// What is sorted, and what is not.
func TestSorting(t *testing.T) {
	l := crate(t)
	theta := expr.S("theta1") // given
	for _, r := range []struct {
		name string
		left expr.Node
		want bool
	}{
		{"a known power", expr.Mul(f1, expr.Sq(f3)), true},
		{"a known angle", expr.Mul(f1, expr.Cos(theta)), true},
		{"unknowns multiplied", expr.Mul(f1, f2), true},
		{"an unknown in a power", expr.Sq(f1), false},
		{"an unknown under a root", expr.Sqrt(f1), false},
		{"five unknowns multiplied", expr.Mul(f1, f2, f1, f2, f1), false},
		{"no value", expr.Add(f1, expr.Sqrt(expr.Neg{X: f3})), false},
	} {
		t.Run(r.name, func(t *testing.T) {
			_, ok := sorter(l).Terms(balance.Exact(r.left), balance.Exact(expr.N(0)))
			assert.Equal(t, r.want, ok)
		})
	}
}

// An unknown angle may stand in a sine or a cosine beside a known one: a sum of two
// angles is taken apart.
func TestAnUnknownAngle(t *testing.T) {
	l, err := kinds.ParticleEquilibrium.BankProblems()[3].Build() // C is known in nothing
	require.NoError(t, err)
	f, theta := expr.S("F3"), expr.S("theta3")
	weigh := func(left, right expr.Node) *balance.Equation {
		terms, ok := sorter(l).Terms(balance.Exact(left), balance.Exact(right))
		require.True(t, ok)
		return balance.Weigh(l, terms, 1)
	}
	turned := weigh(expr.Mul(f, expr.Cos(expr.Sub(theta, expr.Deg(30)))), expr.N(2))
	apart := weigh(expr.Add(expr.Mul(f, expr.Cos(theta), expr.Cos(expr.Deg(30))), expr.Mul(f, expr.Sin(theta), expr.Sin(expr.Deg(30)))), expr.N(2))
	assert.True(t, turned.MultipleOf(apart))
	assert.False(t, turned.Multiplies(), "a force times a cosine is no product of two unknowns")
	assert.Equal(t, 2, balance.CountProducts([]*balance.Equation{turned, apart}))
}

// Two equations give their unknown; one that lacks it, or the same one twice, does
// not.
func TestSolve(t *testing.T) {
	l := crate(t)
	terms := func(left, right expr.Node) balance.Terms {
		t, _ := sorter(l).Terms(balance.Exact(left), balance.Exact(right))
		return t
	}
	x, y := terms(side(2, 3), expr.N(8)), terms(side(1, -1), expr.N(-1)) // F1 = 1, F2 = 2
	assert.InDelta(t, 1, balance.Solve(x, y, "F1", "F2"), 1e-12)
	assert.InDelta(t, 2, balance.Solve(x, y, "F2", "F1"), 1e-12)
	assert.InDelta(t, 4, balance.Solve(terms(side(2, 0), expr.N(8)), nil, "F1", ""), 1e-12)
	for _, r := range [][2]balance.Terms{{x, x}, {terms(expr.Mul(f1, f2), expr.N(2)), y}} {
		assert.True(t, math.IsNaN(balance.Solve(r[0], r[1], "F1", "F2")))
	}
}
