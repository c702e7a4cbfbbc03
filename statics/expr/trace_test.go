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
