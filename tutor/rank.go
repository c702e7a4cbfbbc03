package tutor

import (
	"cmp"
	"math"
	"slices"
	"sync"

	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// Base rates among wrong entries and the mix of rounding habits: starting
// values by judgement, to be measured by trial.
const (
	rateSlip        = 0.62
	rateCarried     = 0.10
	rateRounding    = 0.08
	rateTwo         = 0.08
	rateUnexplained = 0.12

	// rateCarriedAfter is the share of carried values among wrong entries that
	// can rest on an earlier wrong one: most learners go on with what they have
	// (judgement).
	rateCarriedAfter = 0.6
)

// maxSuspects is how many explanations a reply lists.
const maxSuspects = 5

// weighed is what an entry's value says of the ways it may have come about.
// The shares of all, with the unexplained one, sum to 1.
type weighed struct {
	slips                      []Suspect // best first
	unexplained                float64   // that none of the slips is it
	carried, rounded           *outcome  // the likeliest of each, nil where none is
	carriedShare, roundedShare float64
}

// group is the outcomes of one sort of mistake, and how often it is met.
type group struct {
	rate  float64
	table *table
}

// weigh ranks every hypothesis about a wrong entry, and "nothing explains it";
// more is what may have been meant beside what meanings finds.
func (w *Work) weigh(q *lesson.Quantity, r entry.Reading, more ...meant) weighed {
	if len(r.Halves) == 0 {
		r.Halves = []float64{w.formulaHalf(q, r)}
	}
	typed := r
	r = anyWriting(q, r)
	r.Tree, _ = w.asFound(q, r, w.now(q).own)
	all := append(w.meanings(q, r), more...)
	s, done := w.asItStands(q)
	defer done()
	i := w.Lesson.index[q.Name]
	groups := []group{{rateSlip, s.outcomes(i)}, {rateCarried, s.carriedTo(i)}, {rateRounding * w.Lesson.prep.of[i].inexact, s.near(i, r)}}
	if len(groups[1].table.cells) > 0 { // most learners go on with what they wrote
		for g := range groups {
			groups[g].rate *= (1 - rateCarriedAfter) / (1 - rateCarried)
		}
		groups[1].rate = rateCarriedAfter
	}
	k := ranking{w: w, q: q, r: r, hidden: sync.OnceValue(func() bool { return w.hiddenStep(q, typed) }), noise: rateUnexplained * w.density(q, r, groups[0].table)}
	k.sum = k.noise
	for _, g := range groups {
		k.look(g)
	}
	one, two := s.misstated(i, r, all, groups[0].table, groups[1].table)
	k.add(groups[0].rate, one)
	if r.Form == entry.Expression { // its form tells what was done
		alone := k
		alone.slips = slices.Clone(k.slips)
		c := alone.shares()
		if c.unexplained-c.carriedShare-c.roundedShare <= 1-sureEnough {
			return c
		}
	}
	k.add(rateTwo*shareWritten, two)
	k.addDoubles(rateTwo*(1-shareWritten), s.doublesNear(i, r))
	return k.shares()
}

// asItStands is the state of the work for weighing an entry for q: on a sheet that is
// as good as empty, the lesson's own. done gives it free.
func (w *Work) asItStands(q *lesson.Quantity) (s *state, done func()) {
	if len(w.latest) > 0 {
		if s = w.now(q); s.standing != 0 || w.equationStands() {
			return s, func() {}
		}
	}
	return w.Lesson.blank(q, w.Settings)
}

// equationStands tells whether an equation was entered: its unknowns may be
// carried from it.
func (w *Work) equationStands() bool {
	for name := range w.latest {
		if w.Lesson.Quantity(name).Equation {
			return true
		}
	}
	return false
}

// ranking gathers what may explain an entry.
type ranking struct {
	w   *Work
	q   *lesson.Quantity
	r   entry.Reading
	sum float64 // of the probabilities, before they are brought to 1

	noise float64 // of these, that nothing explains the entry

	hidden func() bool // a step in the head stands behind a number of the entry

	slips          []met
	carried, early []met
}

// met is an explanation met: the cell of a table, two slips, or what may have been
// meant: a right value, or that of a cell.
type met struct {
	p     float64
	table *table
	cell  *cell
	hits  []doubleHit // of one value
	meant *meant
}

// what is what an explanation says.
func (k *ranking) what(m *met) outcome {
	switch {
	case m.meant != nil:
		return m.meant.outcome(k.q, k.r.Value, m.table, m.cell)
	case m.hits != nil:
		return jointly(k.q, m.hits)
	}
	return m.table.outcome(m.cell)
}

// look adds what a group of hypotheses says.
func (k *ranking) look(g group) {
	g.table.near(k.r.Value, k.w.reachOf(k.q, k.r), func(cell *cell) {
		first := g.table.guesses[cell.from].first
		if first.written || !g.table.written(cell, k.r) && !k.hidden() { // of what was written down wrongly, see misstated
			return
		}
		m := met{p: g.rate * cell.weight / g.table.total * g.table.likelihood(cell, k.r), table: g.table, cell: cell}
		if m.p <= 0 {
			return
		}
		k.sum += m.p
		switch {
		case first.from != "":
			k.carried = append(k.carried, m)
		case first.rounded != nil:
			k.early = append(k.early, m)
		default:
			k.slips = append(k.slips, m)
		}
	})
}

// add adds explanations that are met with a rate.
func (k *ranking) add(rate float64, all []met) {
	k.slips = slices.Grow(k.slips, len(all))
	for _, m := range all {
		m.p *= rate
		k.sum += m.p
		k.slips = append(k.slips, m)
	}
}

// addDoubles adds two slips together that are met with a rate.
func (k *ranking) addDoubles(rate float64, all []doubleHit) {
	alike(k.q, all, func(same []doubleHit) {
		p := rate * chance(same)
		k.sum += p
		k.slips = append(k.slips, met{p: p, hits: same})
	})
}

// shareOtherForm is how likely a slip that leads to another formula is to be
// behind one that has the very form of some slip (judgement).
const shareOtherForm = 0.05

// byForm makes little of the slips that lead to other formulas than the one
// entered, of rounding and of chance, where that is the very formula some slip leads to.
func (k *ranking) byForm() {
	if k.r.Form != entry.Expression {
		return
	}
	formed := make([]bool, len(k.slips))
	for i := range k.slips {
		o := k.what(&k.slips[i])
		formed[i] = len(o.told(k.w.Lesson, k.r)) > 0
	}
	if !slices.Contains(formed, true) {
		return
	}
	k.sum -= k.noise * (1 - shareOtherForm)
	for i := range k.slips {
		if m := &k.slips[i]; !formed[i] {
			k.sum -= m.p * (1 - shareOtherForm)
			m.p *= shareOtherForm
		}
	}
	for i := range k.early {
		k.sum -= k.early[i].p * (1 - shareOtherForm)
		k.early[i].p *= shareOtherForm
	}
}

// shares works out the probabilities.
func (k *ranking) shares() weighed {
	var c weighed
	k.byForm()
	c.carried, c.carriedShare = k.likeliest(k.carried)
	c.rounded, c.roundedShare = k.likeliest(k.early)
	likely := slices.DeleteFunc(k.slips, func(m met) bool { return m.p/k.sum < leastWeighed })
	slices.SortStableFunc(likely, func(a, b met) int { return cmp.Compare(b.p, a.p) })
	for i := range likely[:min(len(likely), maxWeighed)] {
		m := &likely[i]
		o := k.what(m)
		c.slips = addSuspect(k.q, c.slips, k.w.suspect(k.q, &o, k.r, m.p/k.sum), k.r.Halves[0])
	}
	slices.SortStableFunc(c.slips, func(a, b Suspect) int { return cmp.Compare(b.Probability, a.Probability) })
	c.slips = c.slips[:min(len(c.slips), maxSuspects)]
	kept := 0.0
	for i, s := range c.slips {
		if i > 0 && s.Probability < leastShown {
			c.slips = c.slips[:i]
			break
		}
		kept += s.Probability
	}
	c.unexplained = max(0, 1-kept)
	return c
}

// likeliest is the likeliest of several explanations and the share of all.
func (k *ranking) likeliest(all []met) (*outcome, float64) {
	share, best := 0.0, -1
	for i := range all {
		share += all[i].p / k.sum
		if best < 0 || all[i].p > all[best].p {
			best = i
		}
	}
	if best < 0 {
		return nil, 0
	}
	o := k.what(&all[best])
	return &o, share
}

// hiddenStep tells whether an entry is a formula for q in which the value of a step
// done in the head stands, and is not right: 25° + 62.87°.
func (w *Work) hiddenStep(q *lesson.Quantity, r entry.Reading) bool {
	written, of := w.numberOff(q, r)
	return of != nil && !of.Given && !w.stated(written)
}

// written tells whether an expression may come of a cell: a value rounded too
// soon would stand in it, and not as a number of the statement, unless it is hidden in
// a step done in the head. Any number may.
func (t *table) written(c *cell, r entry.Reading) bool {
	if r.Form != entry.Expression || t.guesses[c.from].first.rounded == nil {
		return true
	}
	return slices.ContainsFunc(t.guesses[c.from:c.to], func(g guess) bool {
		v := math.Abs(g.first.rounded.value)
		return slices.ContainsFunc(r.Literals, func(l entry.Literal) bool {
			return math.Abs(math.Abs(l.Value)-v) <= 1e-9*v && !t.s.w.stated(l.Value)
		})
	})
}
