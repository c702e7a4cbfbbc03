package statics

import (
	"errors"
	"math"
	"strconv"

	"gonum.org/v1/gonum/spatial/r2"
)

// Particle is a particle at rest under forces through one point of the plane,
// some known and some known but for their size.
type Particle struct {
	// Known are the forces given in full.
	Known []r2.Vec
	// Unknown holds, for each unknown, the force that one unit of it exerts: a
	// unit vector along a cable, the sum of two where one cable runs over a
	// pulley, g·(0, −1) where the unknown is a mass.
	Unknown []r2.Vec
}

// Outcome says what equilibrium makes of a particle's unknowns.
type Outcome uint8

// The outcomes. The zero Outcome is that of a particle nobody could solve.
const (
	// Determinate: one set of values keeps the particle at rest.
	Determinate Outcome = iota + 1
	// Indeterminate: infinitely many do. There are more unknowns than two
	// directions can settle, or two on one line.
	Indeterminate
	// Mechanism: none does. The unknowns all act along one line and the known
	// forces push the particle across it.
	Mechanism
	// Inconsistent: none does. There is at most one unknown, and what is known
	// contradicts equilibrium.
	Inconsistent
)

// String names the outcome in lower case: "determinate".
func (o Outcome) String() string {
	names := [...]string{"unsolved", "determinate", "indeterminate", "mechanism", "inconsistent"}
	if int(o) >= len(names) {
		panic("statics: unknown outcome")
	}
	return names[o]
}

// Equilibrium is what ΣF = 0 yields.
type Equilibrium struct {
	Outcome Outcome
	// Values holds the unknowns in order where the outcome is Determinate, and
	// is nil otherwise. A negative value acts against its vector: a cable in
	// compression.
	Values []float64
}

// Condition is the condition number of two lines of action that are nearly one:
// how much larger than the uncertainty of the forces, relative to the known
// ones, the uncertainty of the answer may be. As an error it warns; the values
// beside it are still good to about 16 − log₁₀(Condition) digits where the
// directions are exact, and no better than the directions are known otherwise.
type Condition float64

func (c Condition) Error() string {
	return "statics: lines of action nearly coincide, condition number " + strconv.FormatFloat(float64(c), 'g', 3, 64)
}

// ErrNotFinite is the error for forces that are infinite or not a number.
var ErrNotFinite = errors.New("statics: a force is not finite")

// Solve finds the unknowns. The outcome is decided on unit vectors, so neither
// the unit of force nor the sizes of the unknowns matter to it. The error is
// [ErrNotFinite], or a [Condition] beyond which fewer than ten digits of the
// values can be trusted.
func (p Particle) Solve() (Equilibrium, error) {
	for _, fs := range [...][]r2.Vec{p.Known, p.Unknown} {
		for _, f := range fs {
			if !finite(f.X) || !finite(f.Y) {
				return Equilibrium{}, ErrNotFinite
			}
		}
	}
	load := newLoad(p.Known)
	n := len(p.Unknown)
	if spread(p.Unknown) > rankAbsTol { // two directions: any load can be held
		if n == 2 {
			return p.solveTwo(load)
		}
		return Equilibrium{Outcome: Indeterminate}, nil
	}
	switch line := lineOf(p.Unknown); {
	case !load.liesAlong(line) && n >= 2:
		return Equilibrium{Outcome: Mechanism}, nil
	case !load.liesAlong(line):
		return Equilibrium{Outcome: Inconsistent}, nil
	case n == 0:
		return Equilibrium{Outcome: Determinate}, nil
	case n == 1 && line != r2.Vec{}:
		value := load.clean(-r2.Dot(load.sum, line)) / r2.Norm(p.Unknown[0])
		return Equilibrium{Determinate, []float64{value}}, nil
	}
	return Equilibrium{Outcome: Indeterminate}, nil
}

// solveTwo is the case of two unknowns on two lines, by Cramer's rule on unit
// vectors.
func (p Particle) solveTwo(load load) (Equilibrium, error) {
	u, v := unit(p.Unknown[0]), unit(p.Unknown[1])
	det := r2.Cross(u, v)
	values := []float64{
		load.clean(-r2.Cross(load.sum, v)) / det / r2.Norm(p.Unknown[0]),
		load.clean(-r2.Cross(u, load.sum)) / det / r2.Norm(p.Unknown[1]),
	}
	// The singular values of two unit vectors δ apart are √(1 ± cos δ), and
	// (1 + cos)(1 − cos) is det².
	var warning error
	if c := Condition((1 + math.Abs(r2.Dot(u, v))) / math.Abs(det)); c > maxCondition {
		warning = c
	}
	return Equilibrium{Determinate, values}, warning
}

// load is the sum of the known forces, and the sum of their magnitudes as the
// measure of its noise.
type load struct {
	sum   r2.Vec
	scale float64
}

func newLoad(forces []r2.Vec) load {
	l := load{sum: Resultant(forces...)}
	for _, f := range forces {
		l.scale += r2.Norm(f)
	}
	return l
}

// clean returns a component of the load, exactly 0 where it is only noise.
func (l load) clean(component float64) float64 {
	if math.Abs(component) <= sumRelTol*l.scale {
		return 0
	}
	return component
}

// liesAlong reports whether the load has no component across a line, given by
// a unit vector; a load of nothing lies along any, even the zero vector.
func (l load) liesAlong(line r2.Vec) bool {
	if line == (r2.Vec{}) {
		return l.sum == r2.Vec{}
	}
	return l.clean(r2.Cross(line, l.sum)) == 0
}

// spread returns the sine of the widest angle between the lines of two of the
// vectors: 0 where all are on one line.
func spread(vs []r2.Vec) (sine float64) {
	for i, u := range vs {
		for _, v := range vs[:i] {
			sine = math.Max(sine, math.Abs(r2.Cross(unit(u), unit(v))))
		}
	}
	return sine
}

// lineOf returns the unit vector of the first that has one, or zero.
func lineOf(vs []r2.Vec) r2.Vec {
	for _, v := range vs {
		if v != (r2.Vec{}) {
			return unit(v)
		}
	}
	return r2.Vec{}
}

// unit returns v over its length, and zero for zero.
func unit(v r2.Vec) r2.Vec {
	if v == (r2.Vec{}) {
		return v
	}
	n := r2.Norm(v)
	return r2.Vec{X: v.X / n, Y: v.Y / n}
}
