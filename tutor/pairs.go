package tutor

import (
	"math"
	"slices"
	"strings"

	"closingside/statics/expr"
)

// commonRow is the prior from which a row is thought of together with another:
// two rare slips at once explain almost any value, and so none.
const commonRow = 1.0

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
	for _, v := range prep.variants[q] {
		singles[v.tree] = true
	}
	out := []variant{}
	seen := map[string]map[expr.Node]bool{}
	for _, v := range prep.variants[q] {
		if !mayPair(v.id) {
			continue
		}
		for _, row := range catalogue {
			if row.ID == v.id || !mayPair(row.ID) {
				continue
			}
			id := joined(v.id, row.ID)
			for _, t := range l.apply(row, quantity, v.tree) {
				if singles[t] || seen[id][t] {
					continue
				}
				if seen[id] == nil {
					seen[id] = map[expr.Node]bool{}
				}
				seen[id][t] = true
				out = append(out, l.variant(id, v.prior*row.Prior, t))
			}
		}
	}
	prep.pairs[q] = out
	return out
}

// twoSlips lists what two slips together predict for q: both in one formula,
// one in a step done in the head and one in the formula that reads it, or one
// in writing the value down.
func (s *state) twoSlips(q int) *table {
	l := s.w.Lesson
	quantity := &l.Quantities[q]
	env := l.env(s.own)
	var out []outcome
	pairs := l.pairsIn(q)
	for i := range pairs {
		if o, ok := predict(quantity, &pairs[i], s.own, env); ok {
			out = append(out, o)
		}
	}
	values := slices.Clone(s.own)
	for in := range s.own {
		if in == q || l.ready().givens.has(in) || s.standing.has(in) {
			continue
		}
		out = s.afterHead(out, q, in, values)
	}
	for _, o := range s.slipsIn(q) {
		if id := o.ids[0]; mayPair(id) && o.plan.at < 0 && len(o.forms) > 0 {
			for _, p := range s.written(q, o.value, id, o.weight) {
				if second, _ := split(p.ids[0], id); mayPair(second) {
					out = append(out, p)
				}
			}
		}
	}
	single := s.outcomes(q)
	same := 1e-9 * max(1, math.Abs(quantity.True))
	out = slices.DeleteFunc(out, func(o outcome) bool { return len(single.near(quantity, o.value, same)) > 0 })
	return newTable(quantity, out)
}

// afterHead appends what q comes to when a slip in finding in, in the head, is
// followed by another in the formula for q.
func (s *state) afterHead(out []outcome, q, in int, values []float64) []outcome {
	l := s.w.Lesson
	for _, o := range s.slipsIn(in) {
		if !slices.ContainsFunc(o.ids, mayPair) {
			continue
		}
		values[in] = o.value
		for i := range l.ready().variants[q] {
			v := &l.ready().variants[q][i]
			if !v.reads.has(in) || !mayPair(v.id) {
				continue
			}
			value := expr.Eval(v.tree, l.env(values))
			if math.IsNaN(value) {
				continue
			}
			p := outcome{value: value, at: o.at, weight: o.weight * v.prior * perStepInHead,
				plan: &plan{at: in, tree: v.tree}, start: s.own, given: o.value}
			for _, id := range o.ids {
				if mayPair(id) {
					p.ids = append(p.ids, joined(id, v.id))
				}
			}
			out = append(out, p)
		}
	}
	values[in] = s.own[in]
	return out
}

// split takes the first of two ids joined apart from the other.
func split(pair, first string) (second string, ok bool) {
	if rest, found := strings.CutPrefix(pair, first+"+"); found {
		return rest, true
	}
	return strings.CutSuffix(pair, "+"+first)
}
