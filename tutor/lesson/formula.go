package lesson

import (
	"math"

	"closingside/statics/expr"
)

// Formula is one step written out: a quantity, the route to it in symbols and
// with numbers, and the value.
type Formula struct {
	Quantity *Quantity
	Route    *Route
	Numbers  expr.Node // the route with numbers in the place of what is known
	Value    string    // "" where it is not to be shown

	Digits Digits // of Value
}

// digitsOf is how finely each quantity is written in a line of working.
type digitsOf = func(q *Quantity) Digits

// Numbers is r's formula for q with numbers in the place of what env knows, each
// quantity as finely as d says; env tells NaN of what it does not know, which stays
// a symbol. A direction that comes out more than half a turn from +x is brought
// back by whole turns, so that the line is true as it stands.
func (l *Lesson) Numbers(q *Quantity, r *Route, env expr.Env, d digitsOf) expr.Node {
	if q.Equation { // what it is to find stays a symbol
		return l.written(r.Tree, func(name string) float64 {
			if l.FollowsFromUnknown(l.Quantity(name)) {
				return math.NaN()
			}
			return env(name)
		}, d)
	}
	n := l.written(r.Tree, env, d)
	turns := math.Round((expr.Eval(n, nil) - q.True) / 360) // NaN while something is unknown
	switch {
	case !q.Turns:
	case turns > 0:
		return expr.Sub(n, expr.Deg(360*turns))
	case turns < 0:
		return expr.Add(n, expr.Deg(-360*turns))
	}
	return n
}

// written puts numbers in the place of every symbol that env knows, as finely
// as d says; the others stay symbols. A given is written as it is given, unless
// that takes many digits, as the angle of a slope does.
func (l *Lesson) written(tree expr.Node, env expr.Env, d digitsOf) expr.Node {
	return expr.Substitute(tree, func(name string) (expr.Node, bool) {
		q := l.Quantity(name)
		v := env(name)
		if q == nil || v != v {
			return nil, false
		}
		at := d(q)
		if q.Given && (Digits{at.Magnitude + asGiven, at.Angle + asGiven}).Round(q.Dim, v) == v {
			return q.Literal(v), true
		}
		return q.Literal(at.Round(q.Dim, v)), true
	})
}

// asGiven is how many digits more than those kept a given may have and still
// be written out.
const asGiven = 2

// AgreesWith tells whether what numbers come to is written, at d, like q's true
// value; so it does where either is not a number.
func (q *Quantity) AgreesWith(numbers expr.Node, d Digits) bool {
	v := expr.Eval(numbers, nil)
	if q.Turns && d.Round(q.Dim, v) <= -180 {
		v += 360
	}
	return v != v || q.True != q.True || d.Written(q.Dim, v) == d.Written(q.Dim, q.True)
}

// carry finds how finely each quantity of a way must be written for the numbers
// of every step to come to the value shown: s.kept, and further digits where
// values nearly cancel.
func (l *Lesson) carry(way Way, s Settings) digitsOf {
	need := map[string]Digits{}
	d := func(q *Quantity) Digits {
		if n, ok := need[q.Name]; ok {
			return n
		}
		return s.DigitsKept(q)
	}
	for range Finest.Magnitude * len(way.Steps) {
		settled := true
		for i := len(way.Steps) - 1; i >= 0; i-- {
			q := l.Quantity(way.Steps[i].Quantity)
			r := q.Route(way.Steps[i].Route)
			if q.AgreesWith(l.Numbers(q, r, l.Truth, d), d(q)) {
				continue
			}
			for _, name := range expr.Symbols(r.Tree) {
				if in := l.Quantity(name); d(in) != Finest {
					need[name], settled = d(in).Further(), false
				}
			}
		}
		if settled {
			break
		}
	}
	return func(q *Quantity) Digits { // no zeros behind what is exact without them
		if kept := s.DigitsKept(q); math.Abs(kept.Round(q.Dim, q.True)-q.True) <= 1e-9*max(1, math.Abs(q.True)) {
			return kept
		}
		return d(q)
	}
}

// IsAsGiven tells whether n is a given without its sign, or a given times a number,
// such as 2·P, or a leg of a slope in the place of the number, P·3: as clean as the
// given, it is not rounded. (The formula with the forces exchanged has 2·Q.)
func (l *Lesson) IsAsGiven(n expr.Node) bool {
	if x, ok := expr.Argument(n, expr.FnAbs); ok {
		n = x
	}
	if number, given, ok := expr.Operands(n, expr.OpMul); ok {
		if _, last := given.(expr.Num); last {
			number, given = given, number
		}
		if _, constant := number.(expr.Num); constant {
			n = given
		}
	}
	s, symbol := n.(expr.Sym)
	return symbol && l.Quantity(s.Name).Given
}
