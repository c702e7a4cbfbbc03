package expr_test

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	. "closingside/statics/expr"
)

// written is what pieces of a formula show, a | between two.
func written(t *testing.T, pieces []Markup) string {
	var all []string
	for _, p := range pieces {
		all = append(all, regexp.MustCompile(`<[^>]*>`).ReplaceAllString(render(t, p), ""))
	}
	return strings.Join(all, "|")
}

func TestMathPieces(t *testing.T) {
	a, b, c, d, e := S("a"), S("b"), S("c"), S("d"), S("e")
	four := Sub(Add(Sub(a, b), c), d)
	for _, row := range []struct {
		name string
		n    Node
		want string
	}{
		{"a short sum is one", Sub(Add(a, b), c), "a+b−c"},
		{"a long one is cut before its signs", four, "a|−b|+c|−d"},
		{"a bracket stays whole", Add(Sub(Sub(a, Add(b, c)), d), e), "a|−(b+c)|−d|+e"},
		{"a minus at the head", Add(Add(Add(Neg{a}, b), c), N(-4)), "−a|+b|+c|+(−4)"},
		{"a sum under a root can't be cut", Sqrt(four), "a−b+c−d"},
		{"a quotient is written on the line", Div(four, b), "(a|−b|+c|−d)|/b"},
		{"with brackets below", Div(four, Mul(b, c)), "(a|−b|+c|−d)|/(b⋅c)"},
		{"and a sum below", Div(four, Sub(b, c)), "(a|−b|+c|−d)|/(b|−c)"},
		{"a long sum below a short one stays there", Div(a, four), "aa−b+c−d"},
	} {
		t.Run(row.name, func(t *testing.T) {
			assert.Equal(t, row.want, written(t, MathPieces(row.n, nil)))
		})
	}
	for _, p := range MathPieces(four, nil)[1:] {
		assert.Contains(t, render(t, p), `<mo form="infix">`, "it is spaced as between two")
	}
}

// TestPiecesShowTheWhole: where nothing was divided, the pieces put together are what
// Math shows.
func TestPiecesShowTheWhole(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		n := Node(Mul(N(2), S("a")))
		for range rapid.IntRange(0, 7).Draw(r, "more") {
			next := rapid.SampledFrom([]Node{S("b"), Neg{S("c")}, Add(S("d"), N(1)), Mul(S("e"), Cos(Deg(30))), N(-3)}).Draw(r, "next")
			if rapid.Bool().Draw(r, "minus") {
				n = Sub(n, next)
			} else {
				n = Add(n, next)
			}
		}
		whole := written(t, []Markup{Math(n, nil)})
		if got := strings.ReplaceAll(written(t, MathPieces(n, nil)), "|", ""); got != whole {
			r.Fatalf("%s, want %s", got, whole)
		}
	})
}
