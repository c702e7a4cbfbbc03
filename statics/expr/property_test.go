package expr_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	. "closingside/statics/expr"
)

func anyTree() *rapid.Generator[Node] {
	return treeOptions{modes: true, powers: true}.trees(6)
}

// same is equality that takes undefined for undefined.
func same(a, b float64) bool { return a == b || a != a && b != b }

func evaluatesAlike(t *rapid.T) {
	n := anyTree().Draw(t, "tree")
	want := Eval(n, berth)
	if math.IsInf(want, 0) {
		t.Fatalf("an infinite value")
	}
	var sites []int
	got := EvalEach(n, berth, func(x Node, site int, v float64) float64 {
		if x != At(n, site) || !same(v, Eval(x, berth)) {
			t.Fatalf("site %d: %v of %v", site, v, x)
		}
		sites = append(sites, site)
		return v
	})
	if !same(got, want) {
		t.Fatalf("EvalEach = %v, Eval = %v", got, want)
	}
	if worked := Size(n) > 1; worked != (len(sites) > 0) || worked && sites[len(sites)-1] != 0 {
		t.Fatalf("sites %v of %d", sites, Size(n))
	}
	for site, p := range Trace(n, berth) {
		if p.Site != site || p.Node != At(n, site) || !same(p.Value, Eval(p.Node, berth)) {
			t.Fatalf("point %d is %+v", site, p)
		}
		if math.IsInf(p.Slope, 0) || math.IsNaN(want) && !math.IsNaN(p.Slope) {
			t.Fatalf("slope %v under %v", p.Slope, want)
		}
	}
}

func TestEvaluatesAlike(t *testing.T) { rapid.Check(t, evaluatesAlike) }

func FuzzEvaluatesAlike(f *testing.F) { f.Fuzz(rapid.MakeFuzz(evaluatesAlike)) }

// slips stands for the catalogue: rules of one, two and no results.
func slips(n Node) []Node {
	switch n := n.(type) {
	case Bin:
		return []Node{Bin{n.Op, n.R, n.L}, n.L}
	case Fn:
		if n.Func == FnCos {
			return []Node{Sin(n.X)}
		}
	case Sym:
		return []Node{S("R"), N(0)}
	}
	return nil
}

func rewritesOneSite(t *rapid.T) {
	n := anyTree().Draw(t, "tree")
	want := 0
	Walk(n, func(site int, x Node) {
		if x != At(n, site) {
			t.Fatalf("site %d", site)
		}
		for _, with := range slips(x) {
			if with != x {
				want++
			}
		}
	})
	changes := RewriteOne(n, slips)
	if len(changes) != want {
		t.Fatalf("%d changes, want %d", len(changes), want)
	}
	last := 0
	for _, c := range changes {
		if c.Tree == n || c.Site < last {
			t.Fatalf("no change, or out of order: %+v", c)
		}
		last = c.Site
		if Replace(c.Tree, c.Site, At(n, c.Site)) != n {
			t.Fatalf("site %d is not the only change in %s", c.Site, Plain(c.Tree, nil))
		}
	}
}

func TestRewritesOneSite(t *testing.T) { rapid.Check(t, rewritesOneSite) }

func FuzzRewritesOneSite(f *testing.F) { f.Fuzz(rapid.MakeFuzz(rewritesOneSite)) }

// Substituting values for symbols and evaluating is evaluating with them.
func TestSubstitutionIsEvaluation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := anyTree().Draw(t, "tree")
		numbers := Substitute(n, func(name string) (Node, bool) { return N(berth(name)), true })
		if names := Symbols(numbers); len(names) > 0 {
			t.Fatalf("%v are left", names)
		}
		if got, want := Eval(numbers, nil), Eval(n, berth); !same(got, want) {
			t.Fatalf("%v, want %v", got, want)
		}
	})
}
