package expr_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"gonum.org/v1/gonum/diff/fd"

	. "closingside/statics/expr"
)

func TestTraceCosineLaw(t *testing.T) {
	n := cosineLaw()
	points := Trace(n, harbour)
	assert.Len(t, points, Size(n))
	for site, p := range points {
		assert.Equal(t, site, p.Site)
		assert.Equal(t, At(n, site), p.Node)
		assert.Equal(t, Eval(p.Node, harbour), p.Value)
		// The slope at a site is what a small change of its value does to the root.
		x := Replace(n, site, S("at"))
		want := fd.Derivative(func(v float64) float64 {
			return Eval(x, func(name string) float64 {
				if name == "at" {
					return v
				}
				return harbour(name)
			})
		}, p.Value, &fd.Settings{Formula: fd.Central, Step: 1e-5 * (1 + math.Abs(p.Value))})
		assert.InEpsilon(t, want, p.Slope, 1e-6, "site %d", site)
	}
	// dR/dγ = F1·F2·sin γ/R, per radian: the law of cosines differentiated.
	want := 340 * 610 * math.Sin(87*math.Pi/180) / Eval(n, harbour) * math.Pi / 180
	assert.InEpsilon(t, want, Partial(n, harbour, "gamma"), 1e-12)
	assert.Zero(t, Partial(n, harbour, "theta1"))
}

// Slopes at the edges of what is defined, from the definitions (std).
func TestSlopesAtEdges(t *testing.T) {
	zero := func(string) float64 { return 0 }
	none := math.NaN()
	x := S("x")
	for _, row := range []struct {
		name string
		n    Node
		want float64 // at x = 0
	}{
		{"constant power", Pow(x, N(0)), 0},
		{"square", Sq(x), 0},
		{"cube", Pow(x, N(3)), 0},
		{"exponent of zero", Pow(N(0), Add(x, N(2))), 0},
		{"exponent of a negative", Pow(N(-2), Add(x, N(2))), none},
		{"root", Sqrt(x), none},
		{"root of a square", Sqrt(Sq(x)), none},
		{"absolute value", Abs(x), none},
		{"inverse sine at 1", Asin(Add(x, N(1))), none},
		{"inverse cosine at −1", Acos(Sub(x, N(1))), none},
		{"tangent at 90°", Tan(Add(x, N(90))), none},
		{"undefined beside it", Add(x, Sqrt(N(-1))), none},
		{"a root at zero that does not hold it", Add(x, Sqrt(N(0))), 1},
		{"sine per degree", Sin(x), math.Pi / 180},
		{"inverse sine in degrees", Asin(x), 180 / math.Pi},
	} {
		t.Run(row.name, func(t *testing.T) {
			traced := 0.0
			for _, p := range Trace(row.n, zero) {
				if p.Node == x {
					traced += p.Slope
				}
			}
			for _, got := range []float64{Partial(row.n, zero, "x"), traced} {
				if math.IsNaN(row.want) {
					assert.True(t, math.IsNaN(got), "%v, want none", got)
				} else {
					assert.InDelta(t, row.want, got, 1e-12*math.Abs(row.want))
				}
			}
		})
	}
}
