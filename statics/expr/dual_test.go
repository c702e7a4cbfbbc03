package expr_test

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/diff/fd"
	"gonum.org/v1/gonum/num/dual"

	. "closingside/statics/expr"
)

// berth is an environment in which generated trees are mostly defined.
func berth(name string) float64 {
	switch name {
	case "F1":
		return 3.4
	case "F2":
		return 0.61
	case "F1x":
		return 0.3081
	case "R":
		return 6.826
	case "Ry":
		return -0.53
	case "gamma":
		return 87
	case "theta1":
		return 25.5
	}
	return math.NaN()
}

// byDual evaluates n and its derivative by the symbol called by with gonum's
// dual numbers, a library of general purpose. Every result is off by the
// fraction wobble or less, one way or the other (uneven, so that no two
// cancel): how far that moves the root tells how much rounding error the tree
// can hold.
func byDual(n Node, by string, wobble float64) dual.Number {
	off := func(d dual.Number) dual.Number {
		if math.IsInf(d.Real, 0) {
			d.Real = math.NaN() // as a calculator, which stops at an error
		}
		return dual.Scale(1+wobble, d)
	}
	real := func(v float64) dual.Number { return off(dual.Number{Real: v}) }
	switch n := n.(type) {
	case Num:
		return real(n.Value)
	case Ang:
		return real(n.Degrees())
	case Pi:
		return real(math.Pi)
	case Sym:
		d := dual.Number{Real: berth(n.Name)}
		if n.Name == by {
			d.Emag = 1
		}
		return off(d)
	case Neg:
		return dual.Scale(-1, byDual(n.X, by, -0.7*wobble))
	case Bin:
		l, r := byDual(n.L, by, 0.6*wobble), byDual(n.R, by, -0.55*wobble)
		switch n.Op {
		case OpAdd:
			return off(dual.Add(l, r))
		case OpSub:
			return off(dual.Sub(l, r))
		case OpMul:
			return off(dual.Mul(l, r))
		case OpDiv:
			return off(dual.Mul(l, dual.Inv(r)))
		}
		return off(dual.PowReal(l, n.R.(Num).Value))
	}
	f := n.(Fn)
	x, unit := byDual(f.X, by, -0.7*wobble), map[Mode]float64{InDegrees: 180, InRadians: math.Pi, InGradians: 200}[f.Mode]/math.Pi
	switch f.Func {
	case FnSqrt:
		return off(dual.Sqrt(x))
	case FnAbs:
		return off(dual.Abs(x))
	case FnSin:
		return off(dual.Sin(dual.Scale(1/unit, x)))
	case FnCos:
		return off(dual.Cos(dual.Scale(1/unit, x)))
	case FnTan:
		return off(dual.Tan(dual.Scale(1/unit, x)))
	case FnAsin:
		return off(dual.Scale(unit, dual.Asin(x)))
	case FnAcos:
		return off(dual.Scale(unit, dual.Acos(x)))
	}
	return off(dual.Scale(unit, dual.Atan(x)))
}

// certain is the number that three evaluations, two of them wobbled by 1e-13,
// settle, and how far another evaluation may be from it. It is NaN where all
// three are undefined; ok is false where they leave it open.
func certain(v, up, down float64) (want, tolerance float64, ok bool) {
	undefined := func(v float64) bool { return math.IsNaN(v - v) }
	if undefined(v) && undefined(up) && undefined(down) {
		return math.NaN(), 0, true
	}
	tolerance = 10*math.Max(math.Abs(up-v), math.Abs(down-v)) + 1e-12*math.Abs(v)
	return v, tolerance, tolerance <= 1e-5*math.Abs(v)
}

func agree(got, want, tolerance float64) bool {
	if math.IsNaN(want) {
		return math.IsNaN(got)
	}
	return math.Abs(got-want) <= tolerance
}

// Eval, Partial and Trace against gonum's dual numbers, on generated trees.
func TestAgainstDualNumbers(t *testing.T) {
	trees := treeOptions{modes: true, smooth: true}.trees(7)
	values, undefined, slopes := 0, 0, 0
	for seed := range 40_000 {
		n := trees.Example(seed)
		by := "F1"
		if names := Symbols(n); len(names) > 0 {
			by = names[0]
		}
		v, up, down := byDual(n, by, 0), byDual(n, by, 1e-13), byDual(n, by, -1e-13)

		want, tolerance, ok := certain(v.Real, up.Real, down.Real)
		if !ok || Size(n) == 1 {
			continue
		}
		got := Eval(n, berth)
		require.True(t, agree(got, want, tolerance), "seed %d: %s = %v, want %v", seed, Plain(n, nil), got, want)
		if math.IsNaN(want) {
			undefined++
			require.True(t, math.IsNaN(Partial(n, berth, by)), "seed %d: the slope of an undefined value", seed)
			continue
		}
		values++

		want, tolerance, ok = certain(v.Emag, up.Emag, down.Emag)
		if !ok || math.IsNaN(want) || want == 0 {
			continue
		}
		slopes++
		d := Partial(n, berth, by)
		require.True(t, agree(d, want, tolerance), "seed %d: d(%s)/d%s = %v, want %v", seed, Plain(n, nil), by, d, want)
		sum := 0.0
		for _, p := range Trace(n, berth) {
			if p.Node == S(by) {
				sum += p.Slope
			}
		}
		require.True(t, agree(sum, want, tolerance), "seed %d: traced d(%s)/d%s = %v, want %v", seed, Plain(n, nil), by, sum, want)
	}
	t.Logf("%d values, %d undefined, %d derivatives", values, undefined, slopes)
	require.Greater(t, values, 10_000)
	require.Greater(t, undefined, 1_000)
	require.Greater(t, slopes, 5_000)
}

// Every slope of a trace against a central difference at that site.
func TestTraceAgainstDifferences(t *testing.T) {
	trees := treeOptions{modes: true, smooth: true}.trees(5)
	checked := 0
	for seed := range 3_000 {
		n := trees.Example(seed)
		points := Trace(n, berth)
		if slices.ContainsFunc(points, func(p Point) bool { return math.Abs(p.Value) > 1e6 }) {
			continue // beside a large number a small step is lost
		}
		for _, p := range points {
			at := Replace(n, p.Site, S("at"))
			f := func(v float64) float64 {
				return Eval(at, func(name string) float64 {
					if name == "at" {
						return v
					}
					return berth(name)
				})
			}
			step := 1e-4 * (math.Abs(p.Value) + 0.01)
			wide := fd.Derivative(f, p.Value, &fd.Settings{Formula: fd.Central, Step: step})
			narrow := fd.Derivative(f, p.Value, &fd.Settings{Formula: fd.Central, Step: step / 2})
			// The difference of the two is thrice the error of the narrow one.
			spread := math.Abs(wide - narrow)
			if !(spread < 1e-4*math.Abs(narrow)) {
				continue // not differentiable nearby, or lost in rounding
			}
			checked++
			lost := 1e-15 * math.Abs(f(p.Value)) / step // the root's rounding
			require.InDelta(t, narrow, p.Slope, 10*spread+lost+1e-5*math.Abs(narrow), "seed %d: site %d of %s", seed, p.Site, Plain(n, nil))
		}
	}
	t.Logf("%d slopes", checked)
	require.Greater(t, checked, 3_000)
}
