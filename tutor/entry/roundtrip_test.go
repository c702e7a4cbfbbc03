package entry

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"closingside/statics/expr"
)

func testNaming(name string) expr.Symbol {
	return map[string]expr.Symbol{
		"F1": {Letter: "F", Sub: "1"}, "F2": {Letter: "F", Sub: "2"}, "F1x": {Letter: "F", Sub: "1x"}, "Ry": {Letter: "R", Sub: "y"},
		"gamma": {Letter: "γ"}, "theta": {Letter: "θ"}, "theta1": {Letter: "θ", Sub: "1"},
	}[name]
}

// printed is n with its numbers as they print: to ten significant digits.
func printed(n expr.Node) expr.Node {
	round := func(v float64) float64 {
		r, err := strconv.ParseFloat(strings.ReplaceAll(expr.FormatNumber(v, 10), "−", "-"), 64)
		if err != nil {
			panic(err)
		}
		return r
	}
	n, _ = expr.RewriteAll(n, func(n expr.Node) (expr.Node, bool) {
		switch n := n.(type) {
		case expr.Num:
			return expr.Num{Value: round(n.Value)}, true
		case expr.Ang:
			return expr.Ang{Value: round(n.Value), Unit: n.Unit}, true
		}
		return n, false
	})
	return n
}

// trees generates what an entry may say, to the given depth.
func trees(depth int) *rapid.Generator[expr.Node] {
	return rapid.Custom(func(t *rapid.T) expr.Node {
		shape := rapid.IntRange(0, 8).Draw(t, "shape")
		if depth <= 1 {
			shape %= 4
		}
		sub := func() expr.Node { return trees(depth-1).Draw(t, "sub") }
		value := func() float64 {
			return float64(rapid.IntRange(0, 99999).Draw(t, "digits")) / math.Pow10(rapid.IntRange(0, 4).Draw(t, "places"))
		}
		switch shape {
		case 0:
			return expr.S(rapid.SampledFrom([]string{"F1", "F2", "F1x", "R", "Ry", "gamma", "theta", "theta1"}).Draw(t, "name"))
		case 1:
			return expr.Num{Value: value()}
		case 2:
			return expr.Ang{Value: value(), Unit: expr.AngleUnit(rapid.IntRange(0, 2).Draw(t, "unit"))}
		case 3:
			return expr.Pi{}
		case 4:
			return expr.Neg{X: sub()}
		case 5:
			return expr.Fn{Func: expr.Func(rapid.IntRange(0, int(expr.FnAtan)).Draw(t, "key")), X: sub()}
		}
		return expr.Bin{Op: expr.Op(rapid.IntRange(0, int(expr.OpPow)).Draw(t, "op")), L: sub(), R: sub()}
	})
}

func TestPlainReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := trees(5).Draw(t, "tree")
		s := expr.Plain(n, testNaming)
		if len([]rune(s)) > maxRunes {
			t.Skip("longer than an entry may be")
		}
		got, err := parse(s, testNames)
		if err != nil {
			t.Fatalf("Parse(%q): %v", s, err)
		}
		if want := printed(n); got != want {
			t.Fatalf("Parse(%q) = %s", s, expr.Plain(got, testNaming))
		}
	})
}

// TestLiteralsFindTheirSites: every literal's site holds its value, whatever
// the order of tokens (sin² puts the exponent first).
func TestLiteralsFindTheirSites(t *testing.T) {
	s := scopeFor("R")
	for _, row := range []struct{ entry, want string }{
		{"2·340·cos 87°", "2@2 340@3 87@5"},
		{"sin^2 30 + 1.50", "30@3 1.5@5"},
		{"cos² (12.5°)·3²", "12.5@3 3@6"},
		{"(0.3 + 0.25 kN)·2", "0.3@3 0.25@4 2@6"},
		{"0.34 kN·2", "340@1 2@2"},
		{"½·4", "4@2"},
	} {
		t.Run(row.entry, func(t *testing.T) {
			r, err := Read(row.entry, s)
			require.Nil(t, err)
			var got []string
			for _, l := range r.Literals {
				got = append(got, number6(l.Value)+"@"+strconv.Itoa(l.Site))
				assert.Equal(t, l.Value, expr.Eval(expr.At(r.Tree, l.Site), nil))
			}
			assert.Equal(t, row.want, strings.Join(got, " "), "%s", expr.Plain(r.Tree, nil))
		})
	}
	r, err := Read("T1 cos 40 = 25.0 T2", scopeFor("sum"))
	require.Nil(t, err)
	assert.Equal(t, []Literal{{Value: 40, Half: 0.5, Coarse: 5, Digits: 2, Site: 3}, {Value: 25, Half: 0.05, Coarse: 0.05, Digits: 3, Decimals: 1, Site: 1, Right: true}}, r.Literals)
}

// TestEveryNodeIsRead: the rows of TestRead together hold every kind of node.
func TestEveryNodeIsRead(t *testing.T) {
	seen := map[string]bool{}
	note := func(_ int, n expr.Node) {
		switch n := n.(type) {
		case expr.Num:
			seen["number"] = true
		case expr.Pi:
			seen["pi"] = true
		case expr.Sym:
			seen["symbol"] = true
		case expr.Neg:
			seen["minus"] = true
		case expr.Ang:
			seen["angle "+strconv.Itoa(int(n.Unit))] = true
		case expr.Bin:
			seen["op "+strconv.Itoa(int(n.Op))] = true
		case expr.Fn:
			seen["key "+strconv.Itoa(int(n.Func))] = true
		}
	}
	forms := map[Form]bool{}
	eachRow(func(asked, entry, _ string) {
		r, err := Read(entry, scopeFor(asked))
		if err == nil {
			forms[r.Form] = true
			expr.Walk(r.Tree, note)
		}
	})
	assert.Len(t, seen, 4+3+5+8)
	assert.Len(t, forms, 5)
}
