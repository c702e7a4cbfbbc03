package trial

import (
	"math"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/slipped"
)

// sheet is what a learner writes for a quantity, and how it came about.
type sheet struct {
	text       string
	value      float64 // as the calculator holds it
	fault      fault
	expression bool // written as a formula with numbers
	written    bool // a slip was made in writing: the value held is what is written
	none       bool // there is no value to write: the learner sees that something is wrong before
}

// attempt works a chain with a mishap and returns what is written. A slip that
// leaves no value (the root of a negative number) is one the learner sees: she
// works the chain again without.
func (p *learner) attempt(chain []step, m mishap) sheet {
	last := chain[len(chain)-1]
	if m.noise {
		v := p.anything(last.quantity)
		return sheet{text: p.written(last.quantity, v), value: v, fault: fault{noise: true}}
	}
	for _, s := range chain {
		end := s == last
		h, tree := p.find(s, m, end)
		if math.IsNaN(h.value) || math.IsInf(h.value, 0) {
			if len(m.slips) == 0 && m.early == nil {
				return sheet{none: true}
			}
			return p.attempt(chain, mishap{})
		}
		if !end {
			p.mind[s.quantity.Name] = h
			continue
		}
		return p.sheet(s.quantity, h, tree, m)
	}
	panic("trial: a chain without an end")
}

// sheet writes down the value found for q by tree.
func (p *learner) sheet(q *lesson.Quantity, h held, tree expr.Node, m mishap) sheet {
	s := sheet{value: h.value, fault: h.fault}
	if q.Equation {
		s.text = p.equation(tree)
		return s
	}
	for _, x := range m.slips {
		if !x.written {
			continue
		}
		if text, ok := p.miswritten(q, h.value, x.id); ok {
			s.fault = s.fault.with(fault{slips: []made{{x.id, q.Name}}})
			s.text, s.written = text, true
			return s
		}
	}
	if m.early == nil && p.die.chance(p.habits.Expressions) {
		if text, ok := p.formula(tree); ok {
			s.text, s.expression = text, true
			return s
		}
	}
	s.text = p.written(q, h.value)
	return s
}

// find works one step: the formula, with a slip where one is made there, every
// value rounded as this learner does. It returns the formula too. The value
// itself is kept as it comes when it is to be written down.
func (p *learner) find(s step, m mishap, end bool) (held, expr.Node) {
	tree, f := p.slipped(s, m)
	if p.radians && !s.quantity.Equation {
		if pressed := inRadians(tree); !p.same(s.quantity, pressed, tree) {
			tree, f = pressed, f.with(fault{slips: []made{{"radian-mode", calculator}}})
		}
	}
	for _, in := range expr.Symbols(tree) {
		if h, ok := p.mind[in]; ok && h.fault.any() && p.leavesTrace(s.quantity, tree, in) {
			f = f.with(h.fault)
		}
	}
	site := -1
	if m.early != nil && m.early.at == s.quantity {
		site, f.early = m.early.site, true
	}
	v := turned(s.quantity, p.evaluate(tree, site, m.early, end))
	return held{v, f}, tree
}

// slipped is the formula of a step with the slips made there, and those of them
// that leave a trace: one that does not change the value has not been made, as
// far as anyone can tell.
func (p *learner) slipped(s step, m mishap) (expr.Node, fault) {
	var here []slip
	for _, x := range m.slips {
		if x.at == s.quantity && x.tree != nil {
			here = append(here, x)
		}
	}
	if len(here) == 0 {
		return s.route.Tree, fault{}
	}
	last := here[len(here)-1]
	same := func(tree expr.Node) bool { return p.same(s.quantity, tree, last.tree) }
	if same(s.route.Tree) {
		return s.route.Tree, fault{}
	}
	if len(here) == 2 {
		switch {
		case same(here[0].tree):
			here = here[:1]
		case slices.ContainsFunc(p.alone(s, last.id), same):
			here = here[1:]
		}
	}
	var f fault
	for _, x := range here {
		f.slips = append(f.slips, made{x.id, x.at.Name})
	}
	return here[len(here)-1].tree, f
}

// alone lists the formulas that one slip makes of a step.
func (p *learner) alone(s step, id string) []expr.Node {
	var all []expr.Node
	for _, x := range slipped.Rewrites(p.lesson.Lesson, s.quantity, s.route.Tree) {
		if x.ID == id {
			all = append(all, x.Tree)
		}
	}
	return all
}

// same tells whether two formulas for q have one value, no digit lost.
func (p *learner) same(q *lesson.Quantity, a, b expr.Node) bool {
	return equal(turned(q, expr.Eval(a, p.value)), turned(q, expr.Eval(b, p.value)))
}

func equal(v, w float64) bool { return math.Abs(v-w) <= 1e-9*max(1, math.Abs(v)) }

// leavesTrace tells whether the value of a formula for q would be another if
// the value held for in were true.
func (p *learner) leavesTrace(q *lesson.Quantity, tree expr.Node, in string) bool {
	truly := func(name string) float64 {
		if name == in {
			return p.lesson.Truth(name)
		}
		return p.value(name)
	}
	return !equal(turned(q, expr.Eval(tree, p.value)), turned(q, expr.Eval(tree, truly)))
}

// calculator is where a slip sits that a calculator's mode makes in every step.
const calculator = "calculator"

// inRadians is a formula with every trigonometric key pressed in radians.
func inRadians(tree expr.Node) expr.Node {
	pressed, _ := expr.RewriteAll(tree, func(n expr.Node) (expr.Node, bool) {
		k, ok := n.(expr.Fn)
		if !ok || k.Func == expr.FnSqrt || k.Func == expr.FnAbs {
			return n, false
		}
		k.Mode = expr.InRadians
		return k, true
	})
	return pressed
}

// turned is a direction brought by whole turns to where the lesson's formulas
// read it: half a turn at most from the true one. Other values stay.
func turned(q *lesson.Quantity, v float64) float64 {
	if !q.Turns || math.Abs(v-q.True) <= 180+1e-6 {
		return v
	}
	return v + 360*math.Round((q.True-v)/360)
}

// evaluate works a formula out. The value at site, if any, is rounded too soon.
func (p *learner) evaluate(tree expr.Node, site int, e *early, end bool) float64 {
	env := p.value
	if site >= 0 {
		if sym, ok := expr.At(tree, site).(expr.Sym); ok {
			env = func(name string) float64 {
				v := p.value(name)
				if name == sym.Name {
					v = e.keep.value(v, isAngle(p.lesson, sym))
				}
				return v
			}
		}
	}
	return expr.EvalEach(tree, env, func(n expr.Node, at int, v float64) float64 {
		switch {
		case at == site:
			return e.keep.value(v, isAngle(p.lesson, n))
		case at == 0 && end:
			return v
		}
		return p.keep.value(v, isAngle(p.lesson, n))
	})
}

// value is what this learner uses for a name: a given as stated, a value held,
// otherwise one found rightly for the purpose.
func (p *learner) value(name string) float64 {
	q := p.lesson.Quantity(name)
	if q == nil {
		return math.NaN()
	}
	if q.Given {
		return q.True
	}
	if h, ok := p.mind[name]; ok {
		return h.value
	}
	return p.keep.value(q.True, isAngle(p.lesson, expr.S(name)))
}
