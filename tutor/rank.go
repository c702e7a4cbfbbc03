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

// exactly is how closely an expression without rounded numbers must match.
const exactly = 1e-6

// sureEnough is the probability from which a slip is named.
const sureEnough = 0.8

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

// rank weighs the outcomes against an entry and against "unexplained". It
// returns the suspects, best first, and the probability that none is it.
func (w *Work) rank(q *Quantity, r entry.Reading, t *table) ([]Suspect, float64) {
	var suspects []Suspect
	sum := rateUnexplained * w.density(q, r)
	none := sum
	for _, o := range t.near(q, r.Value, reachOf(q, r)) {
		p := rateSlip * o.weight / t.total * w.likelihood(q, o, r)
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
func (w *Work) likelihood(q *Quantity, o *outcome, r entry.Reading) float64 {
	if len(r.Halves) == 0 {
		return w.inCell(q, o, r.Value, exactly*max(1, math.Abs(q.True)))
	}
	p := 0.0
	for _, half := range r.Halves {
		p += w.inCell(q, o, r.Value, half)
	}
	return p / float64(len(r.Halves))
}

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
