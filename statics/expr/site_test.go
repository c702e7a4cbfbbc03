package expr_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	. "closingside/statics/expr"
)

func TestSitesArePreOrder(t *testing.T) {
	n := Add(Neg{S("a")}, Mul(Cos(S("b")), N(3)))
	want := []Node{n, Neg{S("a")}, S("a"), Mul(Cos(S("b")), N(3)), Cos(S("b")), S("b"), N(3)}
	var got []Node
	Walk(n, func(site int, x Node) {
		assert.Equal(t, len(got), site)
		got = append(got, x)
	})
	assert.Equal(t, want, got)
	assert.Equal(t, len(want), Size(n))
	for site, x := range want {
		assert.Equal(t, x, At(n, site))
		assert.Equal(t, S("z"), At(Replace(n, site, S("z")), site))
		assert.Equal(t, n, Replace(n, site, x))
	}
	for _, site := range []int{-1, len(want), len(want) + 5} {
		assert.Panics(t, func() { At(n, site) }, "At(%d)", site)
		assert.Panics(t, func() { Replace(n, site, n) }, "Replace(%d)", site)
	}
}

func TestRewriteAll(t *testing.T) {
	radians := func(n Node) (Node, bool) {
		f, ok := n.(Fn)
		if !ok || f.Func < FnSin {
			return n, false
		}
		f.Mode = InRadians
		return f, true
	}
	got, ok := RewriteAll(Sqrt(Neg{Sin(Asin(S("a")))}), radians)
	assert.True(t, ok)
	assert.Equal(t, Sqrt(Neg{Fn{FnSin, InRadians, Fn{FnAsin, InRadians, S("a")}}}), got)

	got, ok = RewriteAll(Sqrt(S("a")), radians)
	assert.False(t, ok)
	assert.Equal(t, Sqrt(S("a")), got)
}

func TestSymbolsAndSubstitute(t *testing.T) {
	assert.Equal(t, []string{"F1", "F2", "gamma"}, Symbols(cosineLaw()))
	got := Substitute(Add(S("a"), Mul(S("b"), S("a"))), func(name string) (Node, bool) {
		// a becomes −a: what is put in place is not searched again.
		return Neg{S("a")}, name == "a"
	})
	assert.Equal(t, Add(Neg{S("a")}, Mul(S("b"), Neg{S("a")})), got)
	assert.Empty(t, Symbols(N(2)))
}
