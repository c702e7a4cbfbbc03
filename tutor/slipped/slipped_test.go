package slipped

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/statics/expr"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
)

// built is the lesson of a source as written.
func built(t *testing.T, src lesson.Source) *lesson.Lesson {
	t.Helper()
	p, err := kinds.All.Read(src)
	require.NoError(t, err)
	l, err := p.Build()
	require.NoError(t, err)
	return l
}

// barge is two forces with γ = 87°.
func barge(t *testing.T) *lesson.Lesson {
	t.Helper()
	return built(t, kinds.TwoForcesSource("", kinds.ForceSource("P", "340 N", "25 deg"), kinds.ForceSource("Q", "610 N", "118 deg")))
}

func TestRewrites(t *testing.T) {
	l := barge(t)
	r := l.Quantity("R")
	tree := r.Route("cosine-law").Tree
	all := Rewrites(l, r, tree)
	radicand := tree.(expr.Fn).X
	assert.Contains(t, all, Rewrite{"root-missing", radicand})
	for i, s := range all {
		assert.NotEqual(t, tree, s.Tree)
		assert.NotContains(t, all[:i], s)
		assert.Contains(t, slips.Groups(), slips.GroupOf(s.ID))
	}
}

func TestValues(t *testing.T) {
	l := barge(t)
	var got []float64
	prior := 0.0
	for _, v := range Values(l, l.Quantity("R"), 682.6) {
		if v.Row.ID == "decimal-place" {
			got = append(got, v.Value)
			prior += v.Prior
		}
	}
	assert.InDeltaSlice(t, []float64{6826, 68.26}, got, 1e-9)
	assert.InDelta(t, slips.ByID("decimal-place").Prior, prior, 1e-12, "shared among its values")
}

// Whatever the kind, a wrong formula reads quantities of the lesson alone, is named
// by a row, and weighs something.
func TestFormulas(t *testing.T) {
	for i := range kinds.All {
		k := kinds.All[i]
		for _, p := range k.BankProblems() {
			l, err := p.Build()
			require.NoError(t, err)
			met := 0
			for i := range l.Quantities {
				q := &l.Quantities[i]
				for _, f := range Formulas(l, q) {
					met++
					require.Positive(t, f.Prior, f.ID)
					require.LessOrEqual(t, f.Prior, slips.ByID(f.ID).Prior*(1+1e-12), f.ID)
					require.GreaterOrEqual(t, f.Route, Worded)
					require.LessOrEqual(t, f.Route, len(q.Routes))
					for _, name := range expr.Symbols(f.Tree) {
						require.NotNil(t, l.Quantity(name), "%s reads %s", f.ID, name)
					}
				}
			}
			assert.Greater(t, met, 50, k.Name)
		}
	}
}

// A slip before or without the 180° − of an obtuse angle is made in the inverse
// sine alone, too.
func TestBases(t *testing.T) {
	sine := expr.Asin(expr.S("x"))
	obtuse := expr.Sub(expr.Deg(180), sine)
	assert.Equal(t, []expr.Node{obtuse, sine}, Bases(obtuse))
	assert.Equal(t, []expr.Node{sine}, Bases(sine))
}

// The angle between two arrows that a slip takes beyond 180° or below zero is also
// taken as the one drawn, and the two share the row's weight.
func TestAnAngleBeyondIsTakenAsDrawn(t *testing.T) {
	l := barge(t)
	phi := l.Quantity("phi") // 118° − 25°
	got := map[float64]float64{}
	for _, f := range Formulas(l, phi) {
		if f.ID == "reflex-angle" {
			got[math.Round(expr.Eval(f.Tree, l.Truth))] += f.Prior
		}
	}
	prior := slips.ByID("reflex-angle").Prior
	assert.Equal(t, map[float64]float64{267: prior * (1 - shareDrawnAngle), 93: prior * shareDrawnAngle}, got)
}
