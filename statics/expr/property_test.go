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

// What is put at a site is all that changes.
func TestReplacingChangesOneSite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := anyTree().Draw(t, "tree")
		site := rapid.IntRange(0, Size(n)-1).Draw(t, "site")
		changed := Replace(n, site, S("elsewhere"))
		if At(changed, site) != S("elsewhere") || Replace(changed, site, At(n, site)) != n {
			t.Fatalf("site %d of %s", site, Plain(n, nil))
		}
	})
}

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
