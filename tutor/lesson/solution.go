package lesson

import "closingside/tutor/text"

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

// SolveCase is Solve for this solution alone, where the statement allows two.
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

// Heading is the heading of a worked solution: its method, with the case where
// there are two.
func (s Solution) Heading() string {
	method := text.Say(s.Method.Key())
	if s.Case == "" {
		return method
	}
	return text.Say("method.case", "method", method, "case", s.Case)
}
