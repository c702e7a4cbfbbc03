package entry

import (
	"flag"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"closingside/statics"
	"closingside/statics/expr"
)

// scopesAsked are the scopes that hostile text is read in.
var scopesAsked = []string{"R", "beta", "sum", "kN", "moment", "balance"}

// FuzzRead: no panic, errors that point into the text, and what was read is
// read again from what is printed.
func FuzzRead(f *testing.F) {
	eachRow(func(asked, entry, _ string) { f.Add(entry, uint8(max(0, slices.Index(scopesAsked, asked)))) })
	f.Fuzz(func(t *testing.T, s string, which uint8) { survives(t, s, which) })
}

var hostile = flag.Int("hostile", 20_000, "entries that TestHostileText makes up")

// TestHostileText throws together words, numbers, marks and bytes that the
// reader knows, which gets deeper into it than random bytes do.
func TestHostileText(t *testing.T) {
	pieces := strings.Split("0 1 2 3 30 87 90 180 340 1.518 1,234 1.2e3 12.5 .5 5. ½ ² ³ ⁻¹ ⁰ + - − * × · / ÷ ^ ** = ≈ | ( ) [ ] { } , ; : . ° ′ ″ ' \" "+
		"√ sqrt sin cos tan sin⁻¹ asin arc inv abs π pi rad grad deg min sec N kN lb kip m ft N·m lb-ft kN/m m/s² P Q R F1 γ gamma θ theta T1 Rx x X e _ β "+
		"from toward above below left right of up down clockwise cw ccw azimuth north E S W y axis the or and at is about quadrant Q1 third in wrt o ^0 ∠ @ → -> => \\frac \\cdot \\circ \\left kg·m/s² 10 102 atan2( i # % ? \xff ́ ￼ ＋ ５ ٣ Р \u00a0 \u202f \u200b", " ")
	pieces = append(pieces, " ", " ", " ")
	const seed = 5
	r := rand.New(rand.NewPCG(seed, 0))
	var b strings.Builder
	for i := range *hostile {
		b.Reset()
		for range 1 + r.IntN(14) {
			b.WriteString(pieces[r.IntN(len(pieces))])
		}
		survives(t, b.String(), uint8(i))
		if t.Failed() {
			t.Fatalf("entry %d of seed %d: %q", i, seed, b.String())
		}
	}
}

// survives reads s in one of the scopes in every way.
func survives(t *testing.T, s string, which uint8) {
	r, err := Read(s, scopeFor(scopesAsked[int(which)%len(scopesAsked)]))
	if err != nil {
		checkError(t, s, err)
	} else if r.Form != Equation && r.Form != Affine && (math.IsNaN(r.Value) || math.IsInf(r.Value, 0)) {
		t.Fatalf("Read(%q) = %v", s, r.Value)
	}
	directionSurvives(t, s)
	for _, n := range []expr.Node{r.Tree, r.Right} {
		if n != nil {
			readsBack(t, s, n)
		}
	}
	for _, l := range r.Literals {
		tree := r.Tree
		if l.Right {
			tree = r.Right
		}
		if v := expr.Eval(expr.At(tree, l.Site), nil); v != l.Value || !(l.Half > 0) {
			t.Fatalf("Read(%q): literal %v, node %v", s, l, v)
		}
	}
	if h, err := ReadHeading(s); err != nil {
		checkError(t, s, err)
	} else if again, err := ReadHeading(h.String()); err != nil || math.Abs((again.Angle()-h.Angle()).Degrees()) > 1e-6*max(1, h.Turn.Abs().Degrees()) {
		t.Fatalf("ReadHeading(%q) = %v, which reads as %v, %v", s, h, again, err)
	}
	if _, _, err := ReadMeasure(s, statics.DimForce); err != nil {
		checkError(t, s, err)
	}
}

// readsBack: n, which was read from s, is printed and read again.
func readsBack(t *testing.T, s string, n expr.Node) {
	plain := expr.Plain(n, testNaming)
	got, err := parse(plain, testNames)
	if err != nil && (err.Key == "entry.too-long" || err.Key == "entry.too-deep") {
		return // brackets that printing adds may pass the limits
	}
	require.Nil(t, err, "%q prints as %q", s, plain)
	if got != printed(n) {
		t.Fatalf("%q prints as %q, which reads as %q", s, plain, expr.Plain(got, testNaming))
	}
}

// directionSurvives: s read where a direction may be told from a thing given,
// and what it shows as is the same direction.
func directionSurvives(t *testing.T, s string) {
	scope := scopeFor("beta")
	scope.Direction, scope.Things = true, Things{"P": 25, "E": 118, "F1": -40}
	r, err := Read(s, scope)
	if err != nil {
		checkError(t, s, err)
		return
	}
	if r.Form != Direction {
		return
	}
	if again, err := Read(r.Shown(scope.Unit), scope); err != nil || math.Abs(again.Value-r.Value) > 1e-6*max(1, math.Abs(r.Value)) {
		t.Fatalf("Read(%q) shows as %q, which reads as %v, %v", s, r.Shown(scope.Unit), again.Value, err)
	}
}
