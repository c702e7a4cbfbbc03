package expr

import "math"

// Point is what is known of one site once a tree has been evaluated.
type Point struct {
	Site  int
	Node  Node
	Value float64 // the node's own value
	Slope float64 // d(root)/d(this node), per degree where the node is an angle
}

// Trace evaluates n and differentiates it with respect to every site at once
// (reverse mode). It returns one Point a site, in pre-order, so that
// Trace(n, env)[s].Site == s.
//
// A Slope is NaN where no finite derivative exists: below an undefined root,
// of a root or an absolute value at 0, of an inverse sine or cosine at ±1, and
// of an exponent on a negative base (which is defined at whole exponents
// alone).
func Trace(n Node, env Env) []Point {
	points := forward(make([]Point, 0, Size(n)), n, env)
	slope := 1.0
	if math.IsNaN(points[0].Value) {
		slope = math.NaN()
	}
	backward(points, 0, slope)
	return points
}

// forward appends the points of n, without their slopes.
func forward(points []Point, n Node, env Env) []Point {
	site := len(points)
	points = append(points, Point{Site: site, Node: n})
	var v float64
	switch n := n.(type) {
	case Neg:
		points = forward(points, n.X, env)
		v = -points[site+1].Value
	case Bin:
		points = forward(points, n.L, env)
		right := len(points)
		points = forward(points, n.R, env)
		v = binary(n.Op, points[site+1].Value, points[right].Value)
	case Fn:
		points = forward(points, n.X, env)
		v = apply(n.Func, n.Mode, points[site+1].Value)
	default:
		v = Eval(n, env)
	}
	points[site].Value = v
	return points
}

// backward sets the slope of the tree at site and, from it, those below. It
// returns the site that follows.
func backward(points []Point, site int, slope float64) int {
	p := &points[site]
	p.Slope = slope
	switch n := p.Node.(type) {
	case Neg:
		return backward(points, site+1, -slope)
	case Bin:
		// The right operand stands after the whole of the left one.
		right := site + 1 + Size(n.L)
		l, r := points[site+1].Value, points[right].Value
		dl, dr := binarySlopes(n.Op, l, r, p.Value)
		backward(points, site+1, finite(slope*dl))
		return backward(points, right, finite(slope*dr))
	case Fn:
		d := keySlope(n.Func, n.Mode, points[site+1].Value, p.Value)
		return backward(points, site+1, finite(slope*d))
	}
	return site + 1
}

// Partial is d(n)/d(name), per degree where the symbol is an angle; 0 when n
// does not hold the symbol, NaN where the derivative does not exist (see
// Trace). It works forwards and does not allocate.
func Partial(n Node, env Env, name string) float64 {
	v, d, _ := dual(n, env, name)
	if math.IsNaN(v) {
		return v
	}
	return d
}

// dual is the value of n, its derivative by the symbol called name, and
// whether n holds that symbol at all (where it does not, an infinite slope
// above must not turn 0 into NaN).
func dual(n Node, env Env, name string) (v, d float64, holds bool) {
	switch n := n.(type) {
	case Sym:
		if n.Name == name {
			return lookUp(env, name), 1, true
		}
	case Neg:
		v, d, holds = dual(n.X, env, name)
		return -v, -d, holds
	case Bin:
		l, dl, inL := dual(n.L, env, name)
		r, dr, inR := dual(n.R, env, name)
		v = binary(n.Op, l, r)
		sl, sr := binarySlopes(n.Op, l, r, v)
		if inL {
			d += sl * dl
		}
		if inR {
			d += sr * dr
		}
		return v, finite(d), inL || inR
	case Fn:
		x, dx, in := dual(n.X, env, name)
		v = apply(n.Func, n.Mode, x)
		if in {
			d = finite(dx * keySlope(n.Func, n.Mode, x, v))
		}
		return v, d, in
	}
	return Eval(n, env), 0, false
}

// binarySlopes are the derivatives of v = l op r by l and by r; NaN where they
// do not exist.
func binarySlopes(op Op, l, r, v float64) (dl, dr float64) {
	switch op {
	case OpAdd:
		return 1, 1
	case OpSub:
		return 1, -1
	case OpMul:
		return r, l
	case OpDiv:
		return finite(1 / r), finite(-v / r)
	case OpPow:
		return baseSlope(l, r), exponentSlope(l, r, v)
	}
	panic("expr: unknown operation")
}

func baseSlope(l, r float64) float64 {
	switch r {
	case 0:
		return 0
	case 2:
		return 2 * l
	}
	return finite(r * power(l, r-1))
}

func exponentSlope(l, r, v float64) float64 {
	if l == 0 && r > 0 {
		return 0
	}
	return finite(v * math.Log(l))
}

// keySlope is the derivative of v = f(x); NaN where it does not exist.
func keySlope(f Func, mode Mode, x, v float64) float64 {
	switch f {
	case FnSqrt:
		return finite(1 / (2 * v))
	case FnAbs:
		return finite(x / v)
	case FnSin:
		return perUnit(mode) * sine(mode, x, 1)
	case FnCos:
		return -perUnit(mode) * sine(mode, x, 0)
	case FnTan:
		return perUnit(mode) * (1 + v*v)
	case FnAsin:
		return finite(1 / (perUnit(mode) * math.Sqrt((1-x)*(1+x))))
	case FnAcos:
		return finite(-1 / (perUnit(mode) * math.Sqrt((1-x)*(1+x))))
	case FnAtan:
		return 1 / (perUnit(mode) * (1 + x*x))
	}
	panic("expr: unknown function")
}
