package statics

import (
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/spatial/r2"
	"pgregory.net/rapid"
)

func solve(t require.TestingT, p Particle, want Outcome) []float64 {
	e, err := p.Solve()
	require.NoError(t, err)
	require.Equal(t, want, e.Outcome, "%+v", p)
	if want == Determinate {
		require.Len(t, e.Values, len(p.Unknown))
	} else {
		require.Nil(t, e.Values)
	}
	return e.Values
}

// remainder substitutes the values back: ΣF, which equilibrium makes zero.
func remainder(p Particle, values []float64) r2.Vec {
	forces := append([]r2.Vec(nil), p.Known...)
	for i, v := range values {
		forces = append(forces, r2.Scale(v, p.Unknown[i]))
	}
	var sum r2.Vec
	for _, f := range forces {
		sum = r2.Add(sum, f)
	}
	return sum
}

func drawParticle(t *rapid.T) Particle {
	var p Particle
	for range rapid.IntRange(1, 4).Draw(t, "known") {
		p.Known = append(p.Known, Polar(drawSide.Draw(t, "f"), drawAngle.Draw(t, "direction")))
	}
	first := drawAngle.Draw(t, "line")
	apart := Angle(rapid.Float64Range(0.1, 179.9).Draw(t, "apart")) * Degree
	p.Unknown = []r2.Vec{
		Polar(rapid.Float64Range(0.1, 10).Draw(t, "per unit"), first),
		Polar(rapid.Float64Range(0.1, 10).Draw(t, "per unit"), first+apart),
	}
	return p
}

func TestTwoUnknownsAgainstGonum(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawParticle(t)
		values := solve(t, p, Determinate)
		a := mat.NewDense(2, 2, []float64{p.Unknown[0].X, p.Unknown[1].X, p.Unknown[0].Y, p.Unknown[1].Y})
		load := Resultant(p.Known...)
		var want mat.VecDense
		require.NoError(t, want.SolveVec(a, mat.NewVecDense(2, []float64{-load.X, -load.Y})))
		sin := math.Abs(r2.Cross(unit(p.Unknown[0]), unit(p.Unknown[1])))
		largest := newLoad(p.Known).scale / sin // that a cable can carry
		require.InDelta(t, 0, r2.Norm(remainder(p, values)), 1e-14*largest)
		for i, v := range values {
			require.InDelta(t, want.AtVec(i), v, 1e-14*largest/sin/r2.Norm(p.Unknown[i]))
		}
	})
}

// Equilibrium does not care which way the page is turned, nor what the unit of
// force is.
func TestEquilibriumInvariance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawParticle(t)
		values := solve(t, p, Determinate)
		turn, factor := drawAngle.Draw(t, "turn"), rapid.Float64Range(1e-6, 1e6).Draw(t, "factor")
		var q Particle
		for _, f := range p.Known {
			q.Known = append(q.Known, r2.Scale(factor, r2.Rotate(f, float64(turn), r2.Vec{})))
		}
		for _, u := range p.Unknown {
			q.Unknown = append(q.Unknown, r2.Rotate(u, float64(turn), r2.Vec{}))
		}
		for i, v := range solve(t, q, Determinate) {
			// A value is at most load/sin δ; turning the lines by a rounding moves
			// it by as many roundings over sin δ again.
			sin := r2.Cross(unit(p.Unknown[0]), unit(p.Unknown[1]))
			largest := factor * newLoad(p.Known).scale / (sin * sin) / r2.Norm(p.Unknown[i])
			require.InDelta(t, factor*values[i], v, 1e-14*largest)
		}
	})
}

func TestOutcomes(t *testing.T) {
	down := r2.Vec{Y: -100}
	cable := func(degrees Angle) r2.Vec { return Polar(1, degrees*Degree) }
	for _, row := range []struct {
		name    string
		known   []r2.Vec
		unknown []r2.Vec
		outcome Outcome
		values  []float64
	}{
		{"nothing at all", nil, nil, Determinate, nil},
		{"forces that balance", []r2.Vec{Polar(9, 25*Degree), Polar(9, 205*Degree)}, nil, Determinate, nil},
		{"forces that do not", []r2.Vec{down}, nil, Inconsistent, nil},
		{"a lamp on one cable", []r2.Vec{down}, []r2.Vec{cable(90)}, Determinate, []float64{100}},
		{"pushed into its cable", []r2.Vec{{Y: 100}}, []r2.Vec{cable(90)}, Determinate, []float64{-100}},
		{"one cable aslant", []r2.Vec{down}, []r2.Vec{cable(60)}, Inconsistent, nil},
		{"two cables in line, load along them", []r2.Vec{down}, []r2.Vec{cable(90), cable(270)}, Indeterminate, nil},
		{"two cables in line, load across", []r2.Vec{down}, []r2.Vec{cable(0), cable(180)}, Mechanism, nil},
		{"three vertical rollers, sideways load", []r2.Vec{{X: 5}}, []r2.Vec{cable(90), cable(90), cable(90)}, Mechanism, nil},
		{"two cables without a load", nil, []r2.Vec{cable(30), cable(150)}, Determinate, []float64{0, 0}},
		{"a slack cable", []r2.Vec{down}, []r2.Vec{cable(90), cable(30)}, Determinate, []float64{100, 0}},
		{"three cables", []r2.Vec{down}, []r2.Vec{cable(30), cable(90), cable(150)}, Indeterminate, nil},
		{"an unknown that does nothing", []r2.Vec{{X: 1}, {X: -1}}, []r2.Vec{{}}, Indeterminate, nil},
		{"and cannot help", []r2.Vec{down}, []r2.Vec{{}}, Inconsistent, nil},
		{"nor can two", []r2.Vec{down}, []r2.Vec{{}, {}}, Mechanism, nil},
		{"an unknown mass, kg", []r2.Vec{{Y: 98.1}}, []r2.Vec{{Y: -9.81}}, Determinate, []float64{10}},
	} {
		t.Run(row.name, func(t *testing.T) {
			got := solve(t, Particle{Known: row.known, Unknown: row.unknown}, row.outcome)
			assert.InDeltaSlice(t, row.values, got, 1e-12)
			for i, v := range row.values {
				if v == 0 {
					assert.Zero(t, got[i], "no force is no force, not noise")
				}
			}
		})
	}
	assert.Equal(t, "indeterminate", Indeterminate.String())
}

func TestConditionWarns(t *testing.T) {
	particle := func(apart Angle) Particle {
		return Particle{Known: []r2.Vec{{Y: -100}}, Unknown: []r2.Vec{Polar(3, 25*Degree), Polar(1, 25*Degree+apart)}}
	}
	for _, apart := range []Angle{90 * Degree, 1 * Degree, 0.001 * Degree, 179.999 * Degree} {
		_, err := particle(apart).Solve()
		assert.NoError(t, err, "%v apart", apart)
	}
	for _, apart := range []Angle{1e-4 * Degree, 1e-9 * Degree, -1e-9 * Degree, 180*Degree - 1e-8*Degree} {
		e, err := particle(apart).Solve()
		var c Condition
		require.True(t, errors.As(err, &c), "%v apart", apart)
		assert.Equal(t, Determinate, e.Outcome)
		// The condition number that gonum's singular values give, on unit vectors.
		u, v := unit(particle(apart).Unknown[0]), unit(particle(apart).Unknown[1])
		want := mat.Cond(mat.NewDense(2, 2, []float64{u.X, v.X, u.Y, v.Y}), 2)
		assert.InEpsilon(t, want, float64(c), 1e-15*want)
		assert.Contains(t, err.Error(), "condition number")
	}
	e, err := particle(1e-14 * Degree).Solve()
	require.NoError(t, err)
	assert.Equal(t, Mechanism, e.Outcome, "lines within the noise of a direction are one")
}

func TestForcesMustBeFinite(t *testing.T) {
	for _, bad := range []r2.Vec{{X: math.NaN()}, {Y: math.Inf(-1)}} {
		for _, p := range []Particle{{Known: []r2.Vec{bad}}, {Unknown: []r2.Vec{bad}}} {
			e, err := p.Solve()
			require.ErrorIs(t, err, ErrNotFinite)
			assert.Equal(t, "unsolved", e.Outcome.String())
		}
	}
}
