package tutor

import (
	"cmp"
	"math"
	"slices"

	"closingside/statics/expr"
)

// wrongEquation is an equation that a slip makes of one of the lesson's.
type wrongEquation struct {
	ids    []string
	at     string // the equation it was made of
	weight float64
	tree   expr.Node
}

// explainEquation looks for the slip behind a wrong equation: the one that
// makes of one of the lesson's sums a multiple of what was entered.
func (w *Work) explainEquation(q *Quantity, r *Reply, views []*view) {
	hits := w.hits(r, views, (*Lesson).singles)
	rate := rateSlip
	if len(hits) == 0 {
		hits, rate = w.hits(r, views[:1], (*Lesson).doubles), rateTwo
	}
	total := 0.0
	for _, h := range hits {
		total += h.weight
	}
	if total == 0 {
		w.unlike(r, "feedback.equation.unexplained", "symbol", w.Lesson.plain(q.Name))
		w.escalate(q, r)
		return
	}
	// A wrong equation that nothing explains agrees with one of these by
	// chance: once in so many cells of the coefficients that are free.
	chance := rateUnexplained * math.Pow(2*coarsest(views[0].entered(&r.Reading)), 2) * chanceScale
	sum := rate + chance
	for _, h := range hits {
		r.Slips = append(r.Slips, Suspect{IDs: h.ids, Probability: rate * h.weight / total / sum, At: h.at})
	}
	slices.SortStableFunc(r.Slips, func(a, b Suspect) int { return cmp.Compare(b.Probability, a.Probability) })
	r.Slips = r.Slips[:min(len(r.Slips), maxSuspects)]
	r.Unexplained = chance / sum
	switch {
	case r.Slips[0].sure():
		r.Verdict, r.Feedback = SlipFound, w.askAbout(r.Slips[0])
	case len(r.Slips) > 1 && !r.Slips[0].double() && r.Slips[0].Probability+r.Slips[1].Probability >= sureEnough && w.separable(r.Slips[0], r.Slips[1]):
		r.Verdict, r.Feedback = SlipFound, w.askWhich(r.Slips[0], r.Slips[1])
	default:
		w.unlikeAmong(r, q)
	}
	w.escalate(q, r)
}

// chanceScale is how many of the catalogue's equations there are about that a
// cell could meet (order of magnitude).
const chanceScale = 100

func (w *Work) unlikeAmong(r *Reply, q *Quantity) {
	r.Verdict, r.Feedback = Unexplained, w.Lesson.Say("feedback.equation.unexplained", "symbol", w.Lesson.plain(q.Name))
}

// coarsest is the widest tolerance of a term, relative to the largest term.
func coarsest(b *balance) float64 {
	widest := 0.0
	for _, p := range b.terms.products() {
		widest = max(widest, b.tolerance(p)/b.size)
	}
	return min(widest, 0.1)
}

// hits lists the slips that make what was entered, those of the same equation
// together, under the first view that has any.
func (w *Work) hits(r *Reply, views []*view, wrongs func(*Lesson) []wrongEquation) []wrongEquation {
	for _, v := range views {
		e := v.entered(&r.Reading)
		if e == nil || e.size == 0 {
			continue
		}
		var hits []wrongEquation
		var sums []*balance
		for _, x := range wrongs(w.Lesson) {
			b := v.balance(x.tree, expr.N(0), noLiterals, noLiterals)
			if b == nil || b.size == 0 || v.holds(b) || !e.multipleOf(b) {
				continue
			}
			i := slices.IndexFunc(sums, func(o *balance) bool { return o.multipleOf(b) })
			if i < 0 {
				hits, sums = append(hits, x), append(sums, b)
				continue
			}
			hits[i].join(x)
		}
		if len(hits) > 0 {
			return hits
		}
	}
	return nil
}

// join adds another way to the same equation.
func (x *wrongEquation) join(o wrongEquation) {
	for _, id := range o.ids {
		if !slices.Contains(x.ids, id) {
			x.ids = append(slices.Clone(x.ids), id)
			x.weight += o.weight
			slices.Sort(x.ids)
		}
	}
}

// singles lists what one slip makes of the lesson's equations.
func (l *Lesson) singles() []wrongEquation {
	return l.wrongEquations(func(i int) []variant { return l.ready().variants[i] })
}

// doubles lists what two slips make of them.
func (l *Lesson) doubles() []wrongEquation {
	return l.wrongEquations(func(i int) []variant { return l.pairsIn(i) })
}

func (l *Lesson) wrongEquations(of func(quantity int) []variant) []wrongEquation {
	var all []wrongEquation
	for i := range l.Quantities {
		if !l.Quantities[i].Equation {
			continue
		}
		for _, v := range of(i) {
			all = append(all, wrongEquation{ids: []string{v.id}, at: l.Quantities[i].Name, weight: v.prior, tree: v.tree})
		}
	}
	return all
}

// everyKey is a sum with sine and cosine exchanged throughout, as when all
// angles are taken from the other axis.
func everyKey(tree expr.Node) expr.Node {
	swapped, _ := expr.RewriteAll(tree, func(n expr.Node) (expr.Node, bool) {
		k, ok := n.(expr.Fn)
		to, swap := otherKey[k.Func]
		if !ok || !swap {
			return n, false
		}
		k.Func = to
		return k, true
	})
	return swapped
}

// isCosineRow tells the rows about the cosine law.
func isCosineRow(id string) bool {
	return slices.ContainsFunc(cosineSlips, func(s Slip) bool { return s.ID == id })
}
