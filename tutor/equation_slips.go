package tutor

import (
	"cmp"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/balance"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// wrongEquation is an equation that a slip makes of one of the lesson's.
type wrongEquation struct {
	ids    []string
	lead   string // of ids the most common
	prior  float64
	at     string // the equation it was made of
	weight float64
	tree   expr.Node
}

// explainEquation looks for the slip behind a wrong equation: the one that
// makes of one of the lesson's sums a multiple of what was entered.
func (w *Work) explainEquation(q *lesson.Quantity, r *Reply, views []*view) {
	hits, chance := w.hits(r, views, w.singles())
	rate := rateSlip
	if len(hits) == 0 {
		hits, chance = w.hits(r, views[:1], w.doubles())
		rate = rateTwo
	}
	total := 0.0
	for _, h := range hits {
		total += h.weight
	}
	if total == 0 && views[0].entered(&r.Reading).Multiplies() {
		w.unlike(q, r, "feedback.equation.form")
		return
	}
	if o := w.roundedTooSoon(&r.Reading, views); total == 0 && o != nil {
		r.Verdict, r.Rounded, r.Unexplained = verdict.EarlyRounding, o, 0.5
		r.Feedback = w.Lesson.Say("feedback.equation.rounded", "what", o.What, "kept", o.Kept(), "keep", o.Wanted())
		w.escalate(q, r)
		return
	}
	if total == 0 {
		w.unlike(q, r, "feedback.equation.unexplained", "symbol", w.Lesson.SymbolText(q.Name))
		return
	}
	sum := rate + chance
	for _, h := range hits {
		r.Slips = append(r.Slips, Suspect{IDs: h.ids, Likely: h.lead, Probability: rate * h.weight / total / sum, At: h.at})
	}
	slices.SortStableFunc(r.Slips, func(a, b Suspect) int { return cmp.Compare(b.Probability, a.Probability) })
	r.Slips = r.Slips[:min(len(r.Slips), maxSuspects)]
	r.Unexplained = chance / sum
	switch {
	case r.Slips[0].sure():
		r.Verdict, r.Feedback = verdict.SlipFound, w.askAbout(r.Slips[0])
	case w.rivals(r.Slips):
		w.askOrSettle(q, r)
	default:
		r.Verdict, r.Feedback = verdict.Unexplained, w.Lesson.Say("feedback.equation.unexplained", "symbol", w.Lesson.SymbolText(q.Name))
	}
	w.escalate(q, r)
}

// hits lists the slips that make what was entered, those of the same equation
// together, under the first view that has any, and how often chance would.
func (w *Work) hits(r *Reply, views []*view, wrongs []wrongEquation) (hits []wrongEquation, chance float64) {
	for _, v := range views {
		e := v.entered(&r.Reading)
		if e == nil || e.Size == 0 {
			continue
		}
		var sums []*balance.Equation
		for _, x := range wrongs {
			b := v.balance(balance.Exact(x.tree), balance.Exact(expr.N(0)))
			if b == nil || b.Size == 0 || v.holds(b) || !e.Matches(b) {
				continue
			}
			i := slices.IndexFunc(sums, func(o *balance.Equation) bool { return o.Matches(b) })
			if i < 0 {
				hits, sums = append(hits, x), append(sums, b)
				continue
			}
			hits[i].join(x)
		}
		if len(hits) > 0 {
			return hits, rateUnexplained * float64(len(wrongs)) * e.ByChance()
		}
	}
	return nil, 0
}

// join adds another way to the same equation.
func (x *wrongEquation) join(o wrongEquation) {
	for _, id := range o.ids {
		if !slices.Contains(x.ids, id) {
			x.ids = append(slices.Clone(x.ids), id)
			x.weight += o.weight
			slices.Sort(x.ids)
			if o.prior > x.prior {
				x.lead, x.prior = o.lead, o.prior
			}
		}
	}
}

// singles lists what one slip makes of the lesson's equations, in writing them
// down or in a step before that was done in the head.
func (w *Work) singles() []wrongEquation {
	l := w.Lesson
	all := l.wrongEquations(l.variantsOf)
	for i := range l.Quantities {
		q := &l.Quantities[i]
		if !q.Equation {
			continue
		}
		for _, name := range expr.Symbols(q.Routes[0].Tree) {
			in := l.Quantity(name)
			if in.Given || l.FollowsFromUnknown(in) || w.Standing(name) != nil {
				continue
			}
			for _, v := range l.variantsOf(l.index[name]) {
				tree := expr.Substitute(q.Routes[0].Tree, func(n string) (expr.Node, bool) { return v.tree, n == name })
				all = append(all, wrongEquation{ids: v.ids, lead: v.id, prior: v.prior, at: name, weight: v.prior * perStepInHead, tree: tree})
			}
		}
	}
	return all
}

// doubles lists what two slips make of them.
func (w *Work) doubles() []wrongEquation {
	return w.Lesson.wrongEquations(w.Lesson.slippedTwice)
}

func (l *Lesson) wrongEquations(of func(quantity int) []variant) []wrongEquation {
	var all []wrongEquation
	for i := range l.Quantities {
		if !l.Quantities[i].Equation {
			continue
		}
		for _, v := range of(i) {
			all = append(all, wrongEquation{ids: v.ids, lead: v.id, prior: v.prior, at: l.Quantities[i].Name, weight: v.prior, tree: v.tree})
		}
	}
	return all
}
