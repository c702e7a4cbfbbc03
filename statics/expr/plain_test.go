package expr_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	. "closingside/statics/expr"
)

func TestPlain(t *testing.T) {
	a, b, c := S("a"), S("b"), S("c")
	for _, row := range []struct {
		n    Node
		want string
	}{
		{cosineLaw(), "√(F₁² + F₂² − 2·F₁·F₂·cos γ)"},
		{Asin(Div(Mul(S("F2"), Sin(S("gamma"))), S("R"))), "sin⁻¹(F₂·sin(γ)/R)"},
		{Sub(Deg(118), S("theta1")), "118° − θ₁"},
		{Div(Sub(Deg(360), Mul(N(2), S("phi"))), N(2)), "(360° − 2·phi)/2"},
		{Sqrt(Add(Sq(S("F1x")), Sq(S("Ry")))), "√(F₁x² + Ry²)"},
		{Add(Neg{a}, b), "−a + b"},
		{Sub(a, Neg{b}), "a − (−b)"},
		{Neg{Neg{a}}, "−(−a)"},
		{Neg{Mul(a, b)}, "−a·b"},
		{Mul(Neg{a}, b), "(−a)·b"},
		{Mul(a, Neg{b}), "a·(−b)"},
		{Neg{Add(a, b)}, "−(a + b)"},
		{Neg{Sq(a)}, "−a²"},
		{Sq(Neg{a}), "(−a)²"},
		{Sub(a, Sub(b, c)), "a − (b − c)"},
		{Sub(Sub(a, b), c), "a − b − c"},
		{Add(a, Add(b, c)), "a + (b + c)"},
		{Div(a, Mul(b, c)), "a/(b·c)"},
		{Div(Mul(a, b), c), "a·b/c"},
		{Mul(Div(a, b), c), "(a/b)·c"},
		{Div(Div(a, b), c), "(a/b)/c"},
		{Mul(a, Mul(b, c)), "a·(b·c)"},
		{Mul(Cos(a), b), "cos(a)·b"},
		{Mul(a, Mul(Cos(b), c)), "a·(cos(b)·c)"},
		{Sq(Cos(a)), "(cos a)²"},
		{Cos(Neg{a}), "cos(−a)"},
		{Cos(Deg(87)), "cos 87°"},
		{Cos(Deg(-87)), "cos(−87°)"},
		{Cos(Ang{1.518, UnitRad}), "cos(1.518 rad)"},
		{Mul(Ang{1.5, UnitRad}, N(2)), "(1.5 rad)·2"},
		{Add(Ang{100, UnitGrad}, Ang{1, UnitRad}), "100 grad + 1 rad"},
		{Sq(Deg(30)), "(30°)²"},
		{Pow(Pow(a, b), c), "(a^b)^c"},
		{Pow(a, Pow(b, c)), "a^(b^c)"},
		{Pow(a, N(3)), "a³"},
		{Pow(a, N(0.5)), "a^0.5"},
		{Pow(a, N(-1)), "a^(−1)"},
		{Mul(Sqrt(N(2)), a), "√(2)·a"},
		{Mul(a, Sqrt(N(2))), "a·√2"},
		{Sqrt(Sq(a)), "√(a²)"},
		{Sq(Sqrt(a)), "(√a)²"},
		{Abs(Sub(a, b)), "|a − b|"},
		{Sq(Abs(a)), "|a|²"},
		{Mul(Abs(a), Abs(b)), "|a|·|b|"},
		{Abs(Mul(a, Abs(b))), "abs(a·|b|)"},
		{Mul(Pi{}, a), "π·a"},
		{Sq(N(1.5e15)), "(1.5e15)²"},
		{Fn{FnCos, InRadians, a}, "cos_rad a"},
		{Fn{FnAsin, InGradians, a}, "sin⁻¹_grad(a)"},
	} {
		t.Run(row.want, func(t *testing.T) {
			assert.Equal(t, row.want, Plain(row.n, naming))
		})
	}
	assert.Equal(t, "F1 − 2·R", Plain(Sub(S("F1"), Mul(N(2), S("R"))), nil), "no naming: canonical names")
}

// readsBack holds of every tree: its plain text reads back to it, by the
// stated rules and by a reader who lets a bare function run on.
func readsBack(t *rapid.T) {
	n := treeOptions{modes: true, powers: true}.trees(6).Draw(t, "tree")
	text := Plain(n, naming)
	for _, greedy := range []bool{false, true} {
		got, err := readPlain(text, greedy)
		if err != nil {
			t.Fatal(err)
		}
		if got != n {
			t.Fatalf("%s reads back as %s (greedy %v)", text, Plain(got, naming), greedy)
		}
	}
}

func TestPlainReadsBack(t *testing.T) { rapid.Check(t, readsBack) }

func FuzzPlainReadsBack(f *testing.F) { f.Fuzz(rapid.MakeFuzz(readsBack)) }
