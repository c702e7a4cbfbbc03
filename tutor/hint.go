package tutor

import (
	"math"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// Hint is one level of help on a quantity.
type Hint struct {
	Quantity string
	Level    int             // 1 what to look for, 2 the principle, 3 the formula with numbers, 4 the value
	Sentence string          // a sentence for the learner
	Formula  *lesson.Formula // level 3 and 4
}

// HintLevels is the number of levels of help on each quantity.
const HintLevels = 4

// Hint gives the next level of help on a quantity; the last is repeated.
func (w *Work) Hint(name string) Hint {
	level := min(w.hints[name]+1, HintLevels)
	w.hints[name] = level
	return w.HintAt(name, level)
}

// Hinted is the number of levels shown so far.
func (w *Work) Hinted(name string) int { return w.hints[name] }

// HintAt is one level of help on a quantity, along the route that is nearest
// from where the work stands.
func (w *Work) HintAt(name string, level int) Hint {
	q := w.Lesson.Quantity(name)
	r := w.nearest(q)
	h := Hint{Quantity: name, Level: level}
	switch level {
	case 1:
		h.Sentence = w.Lesson.Sentence(q, "look")
	case 2:
		h.Sentence = w.Lesson.Say("principle." + r.Principle)
	default:
		h.Formula = &lesson.Formula{Quantity: q, Route: r, Numbers: w.numbers(q, r)}
		h.Sentence = w.missing(q, r)
		if level == HintLevels {
			h.Formula.Value = w.Lesson.Ending(q, q.True, w.Settings.DigitsOf(q))
			h.Sentence = w.Lesson.Say("hint.value")
			if q.Equation {
				h.Sentence = w.Lesson.Say("hint.equation.whole")
			}
		}
	}
	return h
}

// numbers is r's formula with what the learner has found, as typed. Where that
// is too coarse for the value that is to be shown, what was found is written
// more finely.
func (w *Work) numbers(q *lesson.Quantity, r *lesson.Route) expr.Node {
	at := w.Settings.Work
	d := func(*lesson.Quantity) lesson.Digits { return at }
	n := w.Lesson.Numbers(q, r, w.accepted, d)
	found := func(name string) float64 {
		if v := w.accepted(name); v != v {
			return v
		}
		return w.Lesson.Truth(name)
	}
	for ; !q.AgreesWith(n, w.Settings.DigitsOf(q)) && at != lesson.Finest; at = at.Further() {
		n = w.Lesson.Numbers(q, r, found, d)
	}
	return n
}

// nearest is the route to q with the fewest values still to be found, in the
// method asked for and, among equals, in the method already begun.
func (w *Work) nearest(q *lesson.Quantity) *lesson.Route {
	best, least := &q.Routes[0], math.Inf(1)
	for i := range q.Routes {
		r := &q.Routes[i]
		cost := float64(w.unfound(r)) + 0.01*float64(i)
		if m := w.Method(); !r.Fits(m) {
			cost += 0.5
			if w.Settings.Method != lesson.AnyMethod {
				cost += 1000 // it is not asked for
			}
		}
		if cost < least {
			best, least = r, cost
		}
	}
	return best
}

// Method is the method asked for, or the one most of the entries belong to.
func (w *Work) Method() lesson.Method {
	if w.Settings.Method != lesson.AnyMethod {
		return w.Settings.Method
	}
	var count [3]int
	for name := range w.latest {
		if routes := w.Lesson.Quantity(name).Routes; len(routes) > 0 {
			count[routes[0].Method]++
		}
	}
	switch {
	case count[lesson.ByComponents] > count[lesson.ByTriangle]:
		return lesson.ByComponents
	case count[lesson.ByTriangle] > 0:
		return lesson.ByTriangle
	}
	return lesson.AnyMethod
}

func (w *Work) unfound(r *lesson.Route) int {
	n := 0
	for _, name := range expr.Symbols(r.Tree) {
		if !w.Lesson.Quantity(name).Given && !w.Found(name) {
			n++
		}
	}
	return n
}

// missing says what the formula still needs, or that all of it is at hand.
func (w *Work) missing(q *lesson.Quantity, r *lesson.Route) string {
	if q.Equation { // written to find what is unknown in it
		return w.Lesson.Say("hint.equation")
	}
	for _, name := range expr.Symbols(r.Tree) {
		if in := w.Lesson.Quantity(name); !in.Given && !w.Found(name) {
			return w.Lesson.Say("hint.needs", "what", w.Lesson.Sentence(in, "what"), "symbol", w.Lesson.SymbolText(name))
		}
	}
	return w.Lesson.Say("hint.ready")
}

// Next is the quantity to find next on the way the work is going: the first
// step of that way not yet found whose value is still of use, or "" when all
// answers are found.
func (w *Work) Next() string {
	if w.Done() {
		return ""
	}
	way := w.Going()
	for _, step := range way.Steps {
		if !w.Found(step.Quantity) && !w.spare(way, step.Quantity) {
			return step.Quantity
		}
	}
	return ""
}

// spare tells whether nothing on the way still waits for a value that is no
// answer: each step that uses it is found, is spare itself, or is an answer that
// follows by another route from what the learner found.
func (w *Work) spare(way lesson.Way, name string) bool {
	if w.Lesson.Quantity(name).Answer {
		return false
	}
	used := false
	for _, s := range way.Steps {
		q := w.Lesson.Quantity(s.Quantity)
		if !slices.Contains(expr.Symbols(q.Route(s.Route).Tree), name) {
			continue
		}
		used = true
		if !w.Found(s.Quantity) && !(q.Answer && w.reachedBeside(way, q)) && !w.spare(way, s.Quantity) {
			return false
		}
	}
	return used
}

// reachedBeside tells whether q follows from values found by a route of the way's method
// that leaves the way: from one that is none of its steps.
func (w *Work) reachedBeside(way lesson.Way, q *lesson.Quantity) bool {
	beside := func(name string) bool {
		return !w.Lesson.Quantity(name).Given && !slices.ContainsFunc(way.Steps, func(s lesson.Step) bool { return s.Quantity == name })
	}
	return slices.ContainsFunc(q.Routes, func(r lesson.Route) bool {
		return w.unfound(&r) == 0 && (r.Method == way.Method || r.Method == lesson.AnyMethod) && slices.ContainsFunc(expr.Symbols(r.Tree), beside)
	})
}

// ShowSolution records that the worked solution was shown and returns it.
func (w *Work) ShowSolution() []lesson.Solution {
	w.shown = true
	return w.Lesson.Solve(w.Settings)
}

// Solution is the worked solution in which the work stands; of two, the one
// that its entries belong to.
func (w *Work) Solution() []lesson.Solution { return w.Lesson.SolveCase(w.Settings) }

// SolutionShown tells whether the worked solution was shown.
func (w *Work) SolutionShown() bool { return w.shown }
