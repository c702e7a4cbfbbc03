package tutor

import (
	"cmp"
	"math"
	"slices"

	"closingside/statics"
	"closingside/tutor/entry"
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

// habit is the mix of learners who keep full precision on the way, 4 digits
// and 3 digits.
type habit struct{ full, four, three float64 }

// Who writes a value down finely has rarely kept fewer digits on the way
// (judgement).
var (
	habitFine   = habit{0.64, 0.30, 0.06} // writes 4 digits or more, hundredths of a degree
	habitCoarse = habit{0.50, 0.25, 0.25} // writes fewer

	habitRounder = habit{0.55, 0.25, 0.20} // has rounded one value too soon, and so maybe others
)

// habitOf is the mix for a value of q written as v ± half.
func habitOf(q *Quantity, v, half float64) habit {
	if half <= habits[0].halfUnit(q.Dim, v)*(1+1e-9) {
		return habitFine
	}
	return habitCoarse
}

// exactly is how closely an expression without rounded numbers must match.
const exactly = 1e-6

// sureEnough is the probability from which a slip is named, halfSure the one
// from which an entry is sent back to an earlier one: that accuses nobody.
// Rounding too soon is said of a step, and so lies between.
const (
	sureEnough     = 0.8
	halfSure       = 0.5
	sureOfRounding = 0.6

	// sureOfTwo is the probability from which two slips together are named:
	// there are so many pairs that noise often meets one.
	sureOfTwo = 0.9
)

// maxSuspects is how many explanations a reply lists.
const maxSuspects = 5

// reachOf is how far from an entry outcomes are looked for: as far as three
// digits kept on the way may move a value in a well conditioned formula.
func reachOf(q *Quantity, r entry.Reading) float64 {
	reach := 0.02 * math.Abs(r.Value)
	if q.Dim == statics.DimAngle {
		reach = 2
	}
	for _, h := range r.Halves {
		reach = max(reach, 2*h)
	}
	return reach
}

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

// weigh ranks every hypothesis about a wrong entry, and "nothing explains it".
// Two slips together are looked at where one does not do.
func (w *Work) weigh(q *Quantity, r entry.Reading) weighed {
	s, i := w.now(q), w.Lesson.index[q.Name]
	if s.standing == 0 && !w.equationStands() { // as on an empty sheet
		var done func()
		s, done = w.Lesson.blank(q, w.Settings)
		defer done()
	}
	groups := []group{{rateSlip, s.outcomes(i)}, {rateCarried, s.carriedTo(i)}, {rateRounding, s.near(i, r)}}
	if len(groups[1].table.cells) > 0 { // most learners go on with what they wrote
		for g := range groups {
			groups[g].rate *= (1 - rateCarriedAfter) / (1 - rateCarried)
		}
		groups[1].rate = rateCarriedAfter
	}
	c := w.share(q, r, groups)
	if q.Dim != statics.DimAngle && c.unexplained-c.carriedShare-c.roundedShare > 1-sureEnough {
		c = w.share(q, r, append(groups, group{rateTwo, made(&s.two, func() *table { return s.twoSlips(i) })}))
	}
	return c
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

// made is the table at t, made when first asked for.
func made(t **table, make func() *table) *table {
	if *t == nil {
		*t = make()
	}
	return *t
}

// share works out the probabilities.
func (w *Work) share(q *Quantity, r entry.Reading, groups []group) weighed {
	type met struct {
		table *table
		cell  *cell
		p     float64
	}
	var c weighed
	var slips []met
	sum := rateUnexplained * w.density(q, r, groups[0].table)
	best := [2]met{}
	for _, g := range groups {
		g.table.near(r.Value, reachOf(q, r), func(cell *cell) {
			p := g.rate * cell.weight / g.table.total * g.table.likelihood(cell, r)
			if p <= 0 {
				return
			}
			sum += p
			m := met{g.table, cell, p}
			switch first := g.table.guesses[cell.from].first; {
			case first.from != "":
				c.carriedShare += p
				if p > best[0].p {
					best[0] = m
				}
			case first.rounded != nil:
				c.roundedShare += p
				if p > best[1].p {
					best[1] = m
				}
			default:
				slips = append(slips, m)
			}
		})
	}
	c.carriedShare /= sum
	c.roundedShare /= sum
	for i, o := range [2]**outcome{&c.carried, &c.rounded} {
		if best[i].p > 0 {
			all := best[i].table.outcome(best[i].cell)
			*o = &all
		}
	}
	slices.SortStableFunc(slips, func(a, b met) int { return cmp.Compare(b.p, a.p) })
	kept := 0.0
	for _, m := range slips {
		p := m.p / sum
		if len(c.slips) == maxSuspects || p < leastShown {
			break
		}
		o := m.table.outcome(m.cell)
		c.slips = addSuspect(c.slips, w.suspect(&o, r, p))
		kept += p
	}
	slices.SortStableFunc(c.slips, func(a, b Suspect) int { return cmp.Compare(b.Probability, a.Probability) })
	c.unexplained = max(0, 1-kept)
	return c
}

// suspect is o as an explanation of an entry.
func (w *Work) suspect(o *outcome, r entry.Reading, p float64) Suspect {
	s := Suspect{IDs: o.read(w, r), Probability: p, At: o.at, Likely: o.lead()}
	if !slices.Contains(s.IDs, s.Likely) {
		s.Likely = s.IDs[0]
	}
	return s
}

// addSuspect adds a suspect; one with the same ids as another, made at another
// place or by another route, is the same accusation.
func addSuspect(all []Suspect, s Suspect) []Suspect {
	for i := range all {
		if slices.Equal(all[i].IDs, s.IDs) {
			all[i].Probability += s.Probability
			return all
		}
	}
	return append(all, s)
}

// leastShown is the probability from which a suspect is listed.
const leastShown = 0.005

// likelihood is the probability of the entry's cell (the values that would be
// typed alike) under an outcome: a mixture over habits of rounding.
func (t *table) likelihood(c *cell, r entry.Reading) float64 {
	q := &t.s.w.Lesson.Quantities[t.q]
	if len(r.Halves) == 0 {
		return t.inCell(q, c, r.Value, exactly*max(1, math.Abs(q.True)))
	}
	p, weight, sum := 0.0, 1.0, 0.0
	for _, half := range r.Halves {
		p += weight * t.inCell(q, c, r.Value, half)
		sum += weight
		weight *= placeholder
	}
	return p / sum
}

// placeholder is how much less likely it is that one more final zero of a
// whole number only holds its place (judgement: learners are told to write the
// digits asked).
const placeholder = 0.2

// inCell is the probability that the value of a cell is typed as v ± half.
func (t *table) inCell(q *Quantity, c *cell, v, half float64) float64 {
	d := q.gap(v, c.value)
	inside := within(d <= half*(1+1e-9))
	if t.exact(c) {
		return inside
	}
	s := t.blur(c)
	h := habitOf(q, v, half)
	if t.guesses[c.from].first.rounded != nil {
		h = habitRounder
	}
	return h.full*inside + h.four*blurred(d, half, s.four, inside) + h.three*blurred(d, half, s.three, inside)
}

// blurred is the share of a normal distribution about 0 within d ± half.
func blurred(d, half, sigma, inside float64) float64 {
	switch {
	case sigma < half/8:
		return inside
	case d-half > 6*sigma:
		return 0
	}
	return normal((d+half)/sigma) - normal((d-half)/sigma)
}

// cellHalf is the mean half-width of the entry's cell over the readings of its
// final zeros.
func cellHalf(q *Quantity, r entry.Reading) float64 {
	if len(r.Halves) == 0 {
		return exactly * max(1, math.Abs(q.True))
	}
	mean, weight, sum := 0.0, 1.0, 0.0
	for _, h := range r.Halves {
		mean += weight * h
		sum += weight
		weight *= placeholder
	}
	return mean / sum
}

// density is the probability of the entry's cell when nothing explains it.
// What we don't know is partly spread over the plausible range, thinning out
// beyond it, and partly lies where the mistakes we do know lie (judgement: half
// and half): where those stand close, one of them is the less likely to be it.
func (w *Work) density(q *Quantity, r entry.Reading, known *table) float64 {
	reach, mass := reachOf(q, r), 0.0
	known.near(r.Value, reach, func(c *cell) { mass += c.weight })
	cell := 2 * cellHalf(q, r)
	return min(1, cell*(0.5/w.span(q, r)+0.5*mass/known.total/(2*reach)))
}

// span is the width of the range over which an unexplained value may lie.
func (w *Work) span(q *Quantity, r entry.Reading) float64 {
	span := 360.0
	if q.Dim == statics.DimAngle && !q.Turns {
		span = 180
	}
	if q.Dim != statics.DimAngle {
		span = 0
		for _, g := range w.Lesson.Quantities {
			if g.Given && g.Dim == q.Dim {
				span += math.Abs(g.True)
			}
		}
		if q.Signed {
			span *= 2
		}
	}
	if v := math.Abs(r.Value); v > span && !q.Turns { // the further out, the thinner: uniform in the logarithm
		span = 10 * v
	}
	return span
}

// normal is the standard normal distribution function.
func normal(x float64) float64 { return 0.5 * math.Erfc(-x/math.Sqrt2) }

func within(ok bool) float64 {
	if ok {
		return 1
	}
	return 0
}
