package lesson

import (
	"math"

	"closingside/statics/expr"
	"closingside/tutor/text"
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
type digitsOf func(q *Quantity) Digits

// Numbers is r's formula for q with numbers in the place of what env knows. A
// direction that comes out more than half a turn from +x is brought back by
// whole turns, so that the line is true as it stands.
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

// Finest is where carrying further digits ends.
var Finest = Digits{Magnitude: 10, Angle: 8}

// Further is one digit more.
func (d Digits) Further() Digits {
	return Digits{min(d.Magnitude+1, Finest.Magnitude), min(d.Angle+1, Finest.Angle)}
}

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

// Text is a formula of the lesson as plain text.
func (l *Lesson) Text(n expr.Node) string { return expr.Plain(n, l.Symbol) }

// SymbolText is the plain text of q's symbol.
func (l *Lesson) SymbolText(q *Quantity) string { return l.Plain(q.Name) }

// Plain is the plain text of a quantity's symbol.
func (l *Lesson) Plain(name string) string { return expr.Plain(expr.S(name), l.Symbol) }

// SolutionStep is a step of the worked solution.
type SolutionStep struct {
	Formula
	Why string // the principle, in a sentence
}

// Solution is the worked solution by one method.
type Solution struct {
	Method Method
	Case   string // which of two solutions, in a sentence; "" where there is one
	Steps  []SolutionStep
}

// Solve writes out the worked solution, both ways or by the method asked for,
// at the digits of s and further ones where the arithmetic needs them; where
// the statement allows two solutions, both.
func (l *Lesson) Solve(s Settings) []Solution {
	var all []Solution
	for _, each := range l.both() {
		all = append(all, each.SolveCase(s)...)
	}
	return all
}

// both are the lesson itself and the other one, where there are two.
func (l *Lesson) both() []*Lesson {
	if l.Other == nil {
		return []*Lesson{l}
	}
	return []*Lesson{l, l.Other}
}

func (l *Lesson) SolveCase(s Settings) []Solution {
	var all []Solution
	for _, way := range l.Ways {
		if s.Method != AnyMethod && way.Method != s.Method {
			continue
		}
		sol, d := Solution{Method: way.Method, Case: l.CaseText()}, l.carry(way, s)
		for _, step := range way.Steps {
			q := l.Quantity(step.Quantity)
			r := q.Route(step.Route)
			sol.Steps = append(sol.Steps, SolutionStep{
				Formula: Formula{q, r, l.Numbers(q, r, l.Truth, d), l.Ending(q, q.True, d(q)), d(q)},
				Why:     l.Say("principle." + r.Principle),
			})
		}
		all = append(all, sol)
	}
	return all
}

// DigitsKept is the digits a worked solution shows of q: those kept on the way, or
// those asked where they are finer.
func (s *Settings) DigitsKept(q *Quantity) Digits {
	a := s.DigitsOf(q)
	return Digits{max(a.Magnitude, s.Work.Magnitude), max(a.Angle, s.Work.Angle)}
}

// ShowKept is v, a value of q, as a student writes it: with its unit, at the
// digits kept on the way or those asked where they are finer.
func (l *Lesson) ShowKept(q *Quantity, v float64, s Settings) string {
	return l.Show(q, v, s.DigitsKept(q))
}

// Definition is the formula that stands for q in an equation.
func (q *Quantity) Definition() expr.Node {
	if q.Means != nil {
		return q.Means
	}
	return q.Routes[0].Tree
}

// FollowsFromUnknown tells whether q follows from an unknown, as the stretch of a
// spring does from the force in it.
func (l *Lesson) FollowsFromUnknown(q *Quantity) bool {
	return l.FollowsFrom(q, func(q *Quantity) bool { return q.Unknown })
}

// FollowsFrom tells whether q is one of these, or is defined by one: the
// definitions are followed back to what is given or unknown.
func (l *Lesson) FollowsFrom(q *Quantity, these func(*Quantity) bool) bool {
	return l.followsWithin(mostDefinitions, q, these)
}

// mostDefinitions bounds the chain of definitions that is followed: an unknown
// force, its component, the stretch of its spring.
const mostDefinitions = 9

func (l *Lesson) followsWithin(steps int, q *Quantity, these func(*Quantity) bool) bool {
	if these(q) || q.Unknown || q.Given || steps == 0 {
		return these(q)
	}
	return expr.Contains(q.Definition(), func(n expr.Node) bool {
		s, ok := n.(expr.Sym)
		return ok && l.followsWithin(steps-1, l.Quantity(s.Name), these)
	})
}

// CaseText says which of two solutions the lesson is; "" where there is one.
func (l *Lesson) CaseText() string {
	if l.Case == "" {
		return ""
	}
	return l.Say(l.Kind.Name + ".case." + l.Case)
}

// InCase is a sentence about the lesson's values, with the case it holds in
// where there are two solutions.
func (l *Lesson) InCase(said string) string {
	if l.Case == "" {
		return said
	}
	return text.Say("case.values", "case", l.CaseText(), "said", said)
}

// Heading is a method's heading in a worked solution: with the case, where
// there are two.
func (s Solution) Heading(method string) string {
	if s.Case == "" {
		return method
	}
	return text.Say("method.case", "method", method, "case", s.Case)
}
