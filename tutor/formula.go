package tutor

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
}

// numbers is r's formula for q with numbers in the place of what env knows. A
// direction that comes out more than half a turn from +x is brought back by
// whole turns, so that the line is true as it stands.
func (l *Lesson) numbers(q *Quantity, r *Route, env expr.Env, d Digits) expr.Node {
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

// written puts numbers in the place of every symbol that env knows, rounded to
// the digits kept while working; the others stay symbols.
func (l *Lesson) written(tree expr.Node, env expr.Env, d Digits) expr.Node {
	return expr.Substitute(tree, func(name string) (expr.Node, bool) {
		q := l.Quantity(name)
		v := env(name)
		if q == nil || v != v {
			return nil, false
		}
		if !q.Given {
			v = d.roundTo(q.Dim, v)
		}
		return l.literal(q, v), true
	})
}

// Text is a formula of the lesson as plain text.
func (l *Lesson) Text(n expr.Node) string { return expr.Plain(n, l.Symbol) }

// SymbolText is the plain text of q's symbol.
func (l *Lesson) SymbolText(q *Quantity) string { return l.plain(q.Name) }

// plain is the plain text of a quantity's symbol.
func (l *Lesson) plain(name string) string { return expr.Plain(expr.S(name), l.Symbol) }

// SolutionStep is a step of the worked solution.
type SolutionStep struct {
	Formula
	Why string // the principle, in a sentence
}

// Solution is the worked solution by one method.
type Solution struct {
	Method Method
	Steps  []SolutionStep
}

// Solve writes out the worked solution, both ways or by the method asked for,
// at the digits of s.
func (l *Lesson) Solve(s Settings) []Solution {
	var all []Solution
	for _, way := range l.Ways {
		if s.Method != AnyMethod && way.Method != s.Method {
			continue
		}
		sol := Solution{Method: way.Method}
		for _, step := range way.Steps {
			q := l.Quantity(step.Quantity)
			r := q.Route(step.Route)
			sol.Steps = append(sol.Steps, SolutionStep{
				Formula: Formula{q, r, l.numbers(q, r, l.Truth, s.Work), l.ends(q, q.True, s.kept(q))},
				Why:     l.Say("principle." + r.Principle),
			})
		}
		all = append(all, sol)
	}
	return all
}

// kept is the digits a worked solution shows of q: those kept on the way, or
// those asked where they are finer.
func (s *Settings) kept(q *Quantity) Digits {
	a := s.asked(q)
	return Digits{max(a.Magnitude, s.Work.Magnitude), max(a.Angle, s.Work.Angle)}
}
