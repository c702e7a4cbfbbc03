package tutor

import (
	"math"
	"slices"
	"strings"

	"closingside/statics/expr"
)

// commonRow is the prior from which a row is thought of together with another:
// two rare slips at once explain almost any value, and so none.
const commonRow = 0.5

// soleRows are rows that make arbitrary digits; with a second slip they would
// explain anything.
var soleRows = []string{"given-miscopied", "digits-swapped", "decimal-place"}

// mayPair tells whether a row is thought of together with another.
func mayPair(id string) bool {
	return slipByID(id).Prior >= commonRow && !slices.Contains(soleRows, id)
}

// pairsIn lists the trees that two slips make of one formula of q, the one
// after the other; made once for a lesson.
func (l *Lesson) pairsIn(q int) []variant {
	prep := l.ready()
	if prep.pairs[q] != nil {
		return prep.pairs[q]
	}
	quantity := &l.Quantities[q]
	singles := map[expr.Node]bool{}
	for _, v := range l.variantsOf(q) {
		singles[v.tree] = true
	}
	out := []variant{}
	seen := map[string]map[expr.Node]bool{}
	for _, v := range l.variantsOf(q) {
		if !mayPair(v.id) {
			continue
		}
		for _, row := range catalogue {
			if row.ID == v.id || !mayPair(row.ID) {
				continue
			}
			id := joined(v.id, row.ID)
			l.each(row, quantity, v.tree, func(t expr.Node, alternatives int) {
				if singles[t] || seen[id][t] {
					return
				}
				if seen[id] == nil {
					seen[id] = map[expr.Node]bool{}
				}
				seen[id][t] = true
				out = append(out, l.variant(id, v.prior*row.Prior/float64(alternatives), t))
			})
		}
	}
	prep.pairs[q] = out
	return out
}

// twoSlips lists what two slips together predict for q: both in one formula,
// one in a step done in the head and one in the formula that goes on from it,
// or one in writing the value down.
func (s *state) twoSlips(q int) *table {
	l := s.w.Lesson
	quantity := &l.Quantities[q]
	var firsts []outcome
	pairs := l.pairsIn(q)
	for i := range pairs {
		if o, ok := s.predict(quantity, &pairs[i], s.own); ok {
			firsts = append(firsts, o)
		}
	}
	direct := s.slipsIn(q)
	for i := range direct {
		o := &direct[i]
		if id := o.ids[0]; mayPair(id) && o.tree != nil {
			for _, p := range s.written(q, o.value, id, o.weight) {
				if second, _ := split(p.ids[0], id); mayPair(second) {
					p.tree, p.prog = o.tree, o.prog
					firsts = append(firsts, p)
				}
			}
		}
	}
	out := make([]guess, 0, 8*len(firsts))
	for i := range firsts {
		out = append(out, guess{value: firsts[i].value, weight: firsts[i].weight, first: &firsts[i]})
	}
	for in := range s.own {
		if in == q || s.standing.has(in) {
			continue
		}
		for i, plans := 0, l.plans(q, in, s.standing); i < len(plans); i++ {
			if p := &plans[i]; !p.blunt() {
				out = s.twice(out, p, s.slipsIn(in))
			}
		}
	}
	single := s.outcomes(q)
	out = slices.DeleteFunc(out, func(g guess) bool { return single.holds(g.value) })
	return s.newTable(q, out)
}

// twice appends what the last quantity of a plan comes to when a slip in
// finding the first is followed by another in the last step.
func (s *state) twice(out []guess, p *plan, wrong []outcome) []guess {
	last := &p.steps[len(p.steps)-1]
	variants := s.w.Lesson.variantsOf(last.quantity)
	values := s.scratch
	for i := range wrong {
		o := &wrong[i]
		if o.tree == nil || !o.other("") {
			continue
		}
		p.run(s.fresh(), o.came(), &s.tape)
		values[last.quantity] = s.own[last.quantity]
		for k := range variants {
			v := &variants[k]
			if v.route != last.route || !v.pairs || v.reads&p.found == 0 || !o.other(v.id) {
				continue
			}
			if value := v.prog.Run(values, &s.tape); !math.IsNaN(value) {
				out = append(out, guess{value: value, weight: o.weight * v.prior * p.weight, first: o, plan: p, second: v})
			}
		}
	}
	return out
}

// other tells whether one of the ids of o is thought of together with id.
func (o *outcome) other(id string) bool {
	return slices.ContainsFunc(o.ids, func(first string) bool { return first != id && mayPair(first) })
}

// blunt tells whether a step of p takes the other angle of a sine.
func (p *plan) blunt() bool {
	return slices.ContainsFunc(p.steps, func(st planStep) bool { return st.supplement })
}

// split takes the first of two ids joined apart from the other.
func split(pair, first string) (second string, ok bool) {
	if rest, found := strings.CutPrefix(pair, first+"+"); found {
		return rest, true
	}
	return strings.CutSuffix(pair, "+"+first)
}
