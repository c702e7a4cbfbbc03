package expr

import "math"

// Env gives the value of a symbol by its canonical name: angles in degrees,
// NaN when it is not known.
type Env func(name string) float64

// degPerRad is the number of degrees in a radian.
const degPerRad = 180 / math.Pi

// exactTurns bounds the angles that sine reduces by one subtraction: up to
// 1e15 a whole number of quarter turns is exact in a float64.
const exactTurns = 1e15

// Degrees is the angle in degrees, whatever unit it was written in.
func (a Ang) Degrees() float64 {
	switch a.Unit {
	case UnitDeg:
		return a.Value
	case UnitRad:
		return a.Value * degPerRad
	case UnitGrad:
		return a.Value * 9 / 10
	}
	panic("expr: unknown angle unit")
}

// Eval is the value of n; an angle is its number of degrees. It is NaN
// wherever n has no finite value: an unknown symbol, a division by zero, the
// root of a negative number, tan 90°, an inverse sine or cosine beyond ±1, a
// result too large for a float64. In degree and gradian mode the sine, cosine
// and tangent of a multiple of a right angle are exact. A nil env knows no
// symbol. Eval does not allocate.
func Eval(n Node, env Env) float64 {
	switch n := n.(type) {
	case Num:
		return finite(n.Value)
	case Ang:
		return finite(n.Degrees())
	case Pi:
		return math.Pi
	case Sym:
		return lookUp(env, n.Name)
	case Neg:
		return -Eval(n.X, env)
	case Bin:
		return binary(n.Op, Eval(n.L, env), Eval(n.R, env))
	case Fn:
		return apply(n.Func, n.Mode, Eval(n.X, env))
	}
	panic("expr: unknown node")
}

// EvalEach evaluates n like Eval, but passes every result that is worked out
// (each Neg, Bin and Fn, the root included; a given or a literal is not worked
// out) through each, in post-order, and goes on with what each returns. With a
// hook that rounds it is the learner who writes rounded numbers down.
func EvalEach(n Node, env Env, each func(n Node, site int, v float64) float64) float64 {
	v, _ := evalEach(n, env, each, 0)
	return v
}

// evalEach is the value of n, whose site is site, and the site that follows
// the last one below n.
func evalEach(n Node, env Env, each func(Node, int, float64) float64, site int) (float64, int) {
	switch t := n.(type) {
	case Neg:
		x, next := evalEach(t.X, env, each, site+1)
		return finite(each(n, site, -x)), next
	case Bin:
		l, right := evalEach(t.L, env, each, site+1)
		r, next := evalEach(t.R, env, each, right)
		return finite(each(n, site, binary(t.Op, l, r))), next
	case Fn:
		x, next := evalEach(t.X, env, each, site+1)
		return finite(each(n, site, apply(t.Func, t.Mode, x))), next
	}
	return Eval(n, env), site + 1
}

// finite is v, or NaN when v is infinite.
func finite(v float64) float64 {
	if v-v != 0 {
		return math.NaN()
	}
	return v
}

func lookUp(env Env, name string) float64 {
	if env == nil {
		return math.NaN()
	}
	return finite(env(name))
}

// binary is l op r.
func binary(op Op, l, r float64) float64 {
	switch op {
	case OpAdd:
		return finite(l + r)
	case OpSub:
		return finite(l - r)
	case OpMul:
		return finite(l * r)
	case OpDiv:
		return finite(l / r)
	case OpPow:
		return power(l, r)
	}
	panic("expr: unknown operation")
}

// power is l^r. It is 1 for 0^0, as on a calculator that answers at all
// (IEEE 754-2019, 9.2.1), but an undefined operand stays undefined.
func power(l, r float64) float64 {
	switch {
	case r == 2:
		return finite(l * l)
	case l != l || r != r:
		return math.NaN()
	}
	return finite(math.Pow(l, r))
}

// apply presses the key f in the given mode with x on the display.
func apply(f Func, mode Mode, x float64) float64 {
	switch f {
	case FnSqrt:
		return math.Sqrt(x)
	case FnAbs:
		return math.Abs(x)
	case FnSin:
		return sine(mode, x, 0)
	case FnCos:
		return sine(mode, x, 1)
	case FnTan:
		return finite(sine(mode, x, 0)/sine(mode, x, 1)) + 0 // no −0 at 180°
	case FnAsin:
		// atan2 keeps the digits that asin loses near ±1.
		x = atMostOne(x)
		return math.Atan2(x, math.Sqrt((1-x)*(1+x))) / perUnit(mode)
	case FnAcos:
		x = atMostOne(x)
		return 2 * math.Atan2(math.Sqrt(1-x), math.Sqrt(1+x)) / perUnit(mode)
	case FnAtan:
		return math.Atan(x) / perUnit(mode)
	}
	panic("expr: unknown function")
}

// beyondOne is how far the last bits of a sine or cosine worked out may lie
// beyond 1; calculators, which keep twelve digits or so, show 1 there.
const beyondOne = 1e-12

// atMostOne is x, brought back to 1 or −1 where it lies beyond by its last bits.
func atMostOne(x float64) float64 {
	if size := math.Abs(x); size > 1 && size < 1+beyondOne {
		return math.Copysign(1, x)
	}
	return x
}

// perUnit is the number of radians in what the mode's keys call one.
func perUnit(mode Mode) float64 {
	switch mode {
	case InDegrees:
		return math.Pi / 180
	case InRadians:
		return 1
	case InGradians:
		return math.Pi / 200
	}
	panic("expr: unknown mode")
}

// sine is the sine of x plus the given number of quarter turns.
func sine(mode Mode, x float64, quarters int64) float64 {
	var right float64 // the mode's right angle
	switch mode {
	case InDegrees:
		right = 90
	case InGradians:
		right = 100
	case InRadians:
		if quarters == 1 {
			return math.Cos(x)
		}
		return math.Sin(x)
	default:
		panic("expr: unknown mode")
	}
	if x != x {
		return x
	}
	if math.Abs(x) > exactTurns {
		x = math.Mod(x, 4*right)
	}
	// The nearest multiple of a right angle leaves at most an eighth of a
	// turn, and the subtraction is exact (Sterbenz).
	q := math.RoundToEven(x / right)
	rest := (x - q*right) * perUnit(mode)
	switch (int64(q) + quarters) & 3 {
	case 0:
		return math.Sin(rest)
	case 1:
		return math.Cos(rest)
	case 2:
		return 0 - math.Sin(rest) // not −Sin: the sine of 180° is 0, not −0
	default:
		return 0 - math.Cos(rest)
	}
}
