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

	habitFull  = 0.55 // keeps full precision on the way
	habitFour  = 0.30 // keeps 4 digits
	habitThree = 0.15 // keeps 3 digits
)

// exactly is how closely an expression without rounded numbers must match.
const exactly = 1e-6

// sureEnough is the probability from which a slip is named, halfSure the one
// from which an entry is sent back to an earlier one or to its rounding: that
// accuses nobody.
const (
	sureEnough = 0.8
	halfSure   = 0.5

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
	groups := []group{{rateSlip, s.outcomes(i)}, {rateCarried, made(&s.follows, func() *table { return s.carried(i) })}, {rateRounding, s.near(i, r)}}
	if len(groups[1].table.outcomes) > 0 { // most learners go on with what they wrote
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

// made is the table at t, made when first asked for.
func made(t **table, make func() *table) *table {
	if *t == nil {
		*t = make()
	}
	return *t
}

// share works out the probabilities.
func (w *Work) share(q *Quantity, r entry.Reading, groups []group) weighed {
	var c weighed
	sum := rateUnexplained * w.density(q, r)
	best := [2]float64{}
	for _, g := range groups {
		for _, o := range g.table.near(q, r.Value, reachOf(q, r)) {
			p := g.rate * o.weight / g.table.total * w.likelihood(q, o, r)
			if p <= 0 {
				continue
			}
			sum += p
			switch {
			case o.from != "":
				c.carriedShare += p
				c.carried, best[0] = likelier(c.carried, best[0], o, p)
			case o.rounded != nil:
				c.roundedShare += p
				c.rounded, best[1] = likelier(c.rounded, best[1], o, p)
			default:
				c.slips = append(c.slips, Suspect{IDs: o.read(w, r), Probability: p, At: o.at})
			}
		}
	}
	c.carriedShare /= sum
	c.roundedShare /= sum
	for i := range c.slips {
		c.slips[i].Probability /= sum
	}
	slices.SortStableFunc(c.slips, func(a, b Suspect) int { return cmp.Compare(b.Probability, a.Probability) })
	keep, kept := 0, 0.0
	for keep < len(c.slips) && keep < maxSuspects && c.slips[keep].Probability >= 0.005 {
		kept += c.slips[keep].Probability
		keep++
	}
	c.slips, c.unexplained = c.slips[:keep], max(0, 1-kept)
	return c
}

func likelier(a *outcome, pa float64, b *outcome, pb float64) (*outcome, float64) {
	if a != nil && pa >= pb {
		return a, pa
	}
	return b, pb
}

// likelihood is the probability of the entry's cell (the values that would be
// typed alike) under an outcome: a mixture over habits of rounding.
func (w *Work) likelihood(q *Quantity, o *outcome, r entry.Reading) float64 {
	if len(r.Halves) == 0 {
		return w.inCell(q, o, r.Value, exactly*max(1, math.Abs(q.True)))
	}
	p, weight, sum := 0.0, 1.0, 0.0
	for _, half := range r.Halves {
		p += weight * w.inCell(q, o, r.Value, half)
		sum += weight
		weight *= placeholder
	}
	return p / sum
}

// placeholder is how much less likely it is that one more final zero of a
// whole number only holds its place (judgement: learners are told to write the
// digits asked).
const placeholder = 0.2

// inCell is the probability that o is typed as v ± half.
func (w *Work) inCell(q *Quantity, o *outcome, v, half float64) float64 {
	d := q.gap(v, o.value)
	inside := within(d <= half*(1+1e-9))
	if o.exact {
		return inside
	}
	cell := func(sigma float64) float64 {
		if sigma < half/8 {
			return inside
		}
		return normal((d+half)/sigma) - normal((d-half)/sigma)
	}
	s := o.blur(w, q)
	return habitFull*inside + habitFour*cell(s.four) + habitThree*cell(s.three)
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

// density is the probability of the entry's cell when nothing explains it:
// uniform over the plausible range, thinning out beyond it.
func (w *Work) density(q *Quantity, r entry.Reading) float64 {
	span := 360.0
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
	return min(1, 2*cellHalf(q, r)/span)
}

// normal is the standard normal distribution function.
func normal(x float64) float64 { return 0.5 * math.Erfc(-x/math.Sqrt2) }

func within(ok bool) float64 {
	if ok {
		return 1
	}
	return 0
}
