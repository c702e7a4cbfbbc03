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
	rateUnexplained = 0.12

	habitFull  = 0.55 // keeps full precision on the way
	habitFour  = 0.30 // keeps 4 digits
	habitThree = 0.15 // keeps 3 digits
)

// sureEnough is the probability from which a slip is named.
const sureEnough = 0.8

// rank weighs the outcomes against an entry and against "unexplained". It
// returns the suspects, best first, and the probability that none is it.
func (w *Work) rank(q *Quantity, r entry.Reading, all []outcome) ([]Suspect, float64) {
	total := 0.0
	for _, o := range all {
		total += o.weight
	}
	var suspects []Suspect
	sum := rateUnexplained * w.density(q, r)
	none := sum
	for _, o := range all {
		p := rateSlip * o.weight / total * likelihood(q, o, r)
		if p > 0 {
			sum += p
			suspects = append(suspects, Suspect{IDs: o.ids, Probability: p, At: o.at})
		}
	}
	for i := range suspects {
		suspects[i].Probability /= sum
	}
	slices.SortStableFunc(suspects, func(a, b Suspect) int { return cmp.Compare(b.Probability, a.Probability) })
	keep := 0
	for keep < len(suspects) && keep < 5 && suspects[keep].Probability >= 0.005 {
		keep++
	}
	for _, s := range suspects[keep:] {
		none += s.Probability * sum
	}
	return suspects[:keep], none / sum
}

// likelihood is the probability of the entry's cell (the values that would be
// typed alike) under an outcome: a mixture over habits of rounding.
func likelihood(q *Quantity, o outcome, r entry.Reading) float64 {
	if len(r.Halves) == 0 {
		return inCell(q, o, r.Value, 1e-6*max(1, math.Abs(q.True)))
	}
	p := 0.0
	for _, half := range r.Halves {
		p += inCell(q, o, r.Value, half)
	}
	return p / float64(len(r.Halves))
}

// inCell is the probability that o is typed as v ± half.
func inCell(q *Quantity, o outcome, v, half float64) float64 {
	d := v - o.value
	if q.Turns {
		d = math.Remainder(d, 360)
	}
	cell := func(sigma float64) float64 {
		if sigma < half/8 {
			return within(math.Abs(d) <= half*(1+1e-9))
		}
		return normal((d+half)/sigma) - normal((d-half)/sigma)
	}
	if o.exact {
		return within(math.Abs(d) <= half*(1+1e-9))
	}
	return habitFull*cell(0) + habitFour*cell(o.spread.four) + habitThree*cell(o.spread.three)
}

// cellHalf is the mean half-width of the entry's cell over the readings of its
// final zeros.
func cellHalf(q *Quantity, r entry.Reading) float64 {
	if len(r.Halves) == 0 {
		return 1e-6 * max(1, math.Abs(q.True))
	}
	sum := 0.0
	for _, h := range r.Halves {
		sum += h
	}
	return sum / float64(len(r.Halves))
}

// density is the probability of the entry's cell when nothing explains it:
// uniform over the plausible range, thinning out beyond it.
func (w *Work) density(q *Quantity, r entry.Reading) float64 {
	span := 360.0
	if q.Dim != statics.DimAngle {
		span = 0
		for _, g := range w.Lesson.Quantities {
			if g.Given && g.Dim == q.Dim {
				span += g.True
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
