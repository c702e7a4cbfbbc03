package writing

import (
	"math"

	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// Likely is a likelihood over the readings of an entry's final zeros, and over
// who writes fewer digits than are asked, half a unit of which is fine: in is the
// likelihood of the value ± half.
func Likely(r entry.Reading, fine float64, in func(half float64) float64) float64 {
	p, sum := 0.0, 0.0
	weight := firstReading(r, fine)
	for _, half := range r.Halves {
		one := in(half)
		if one > 0 && half > fine*(1+1e-9) && r.Form != entry.Expression {
			one = shareCoarse*one + (1-shareCoarse)*in(fine)
		}
		p += weight * one
		sum += weight
		weight *= nextReading(half, fine)
	}
	return p / sum
}

// firstReading is the weight of the finest reading of an entry's final zeros,
// nextReading what the next is weighed by: the one of the digits asked, half a
// unit of which is fine, is the likeliest.
func firstReading(r entry.Reading, fine float64) float64 {
	weight := 1.0
	for _, half := range r.Halves[:len(r.Halves)-1] {
		if 10*half <= fine*(1+1e-9) {
			weight *= placeholder
		}
	}
	return weight
}

func nextReading(half, fine float64) float64 {
	if 10*half <= fine*(1+1e-9) {
		return 1 / placeholder
	}
	return placeholder
}

// shareCoarse is the share of those who write fewer digits than are asked; in
// others' work the digits not written are zeros (judgement).
const shareCoarse = 0.3

// placeholder is how much less likely it is that final zeros of a whole number
// leave one digit more or less than is asked (judgement: learners are told to
// write the digits asked).
const placeholder = 0.05

// How values are written and gone on from (judgement).
const (
	shareCut  = 0.1 // of the learners who cut digits off instead of rounding
	shareHeld = 0.5 // of those who go on from what the calculator holds, not from what they wrote
)

// unroundedRel is the half-width, against the value (of an angle, in degrees), below
// which an entry is as it came out: nothing was rounded to be written.
const unroundedRel = 1e-5

// Unrounded tells whether a value written as v ± half is as it came out.
func Unrounded(q *lesson.Quantity, v, half float64) bool {
	if q.IsAngle() { // its zero is arbitrary
		return half < unroundedRel
	}
	return half < unroundedRel*math.Abs(v)
}

// How an angle of the figure that came out below zero is written (judgement:
// with its sign by most; one above zero gets no sign).
const (
	shareUnsigned = 0.3
	shareBelow    = 0.02
)

// Sign is how likely the sign of v is for an angle of size x that came out
// below zero or not. −30° may also be 330°, written another way.
func Sign(q *lesson.Quantity, v, x float64, below bool) float64 {
	switch {
	case !q.IsAngle() || q.Turns:
		return 1
	case v < 0 && math.Abs(v+360-x) < math.Abs(-v-x):
		return 1
	case below && v < 0:
		return 1 - shareUnsigned
	case below:
		return shareUnsigned
	case v < 0:
		return shareBelow
	}
	return 1
}

// worked is how likely x is to be typed as v ± half by who keeps all digits: worked
// from the entries before as they were typed, which full is the likelihood of, or as
// the calculator holds them.
func (s Spread) worked(q *lesson.Quantity, v, half, x, full float64) float64 {
	if s.shift == 0 && s.held == 0 {
		return full
	}
	held := x + s.shift
	return (1-shareHeld)*full + shareHeld*blurred(q.FoldedDistance(v, held), half, s.held, typed(q, v, held, half))
}

// typed is how likely x is to be typed as v ± half: rounded, or cut off.
func typed(q *lesson.Quantity, v, x, half float64) float64 {
	off := x - v
	if q.IsAngle() {
		off = lesson.TurnRemainder(off)
	}
	if q.IsAngle() && !q.Turns { // as they are compared: the sign may be left out
		if folded := lesson.TurnRemainder(q.Fold(x) - q.Fold(v)); math.Abs(folded) < math.Abs(off) {
			off, v = folded, q.Fold(v)
		}
	}
	if v < 0 {
		off = -off
	}
	const eps = 1e-9
	if q.Turns { // which way a direction is cut depends on how it is told
		return (1-shareCut)*within(math.Abs(off) <= half*(1+eps)) + shareCut/2*within(math.Abs(off) < 2*half*(1-eps))
	}
	return (1-shareCut)*within(math.Abs(off) <= half*(1+eps)) + shareCut*within(off >= -eps*half && off < 2*half*(1-eps))
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

// HalfOf is the mean half-width of the entry's cell over the readings of its
// final zeros; fine is as for likely.
func HalfOf(r entry.Reading, fine float64) float64 {
	mean, sum := 0.0, 0.0
	weight := firstReading(r, fine)
	for _, half := range r.Halves {
		h := half
		if h > fine && r.Form != entry.Expression {
			h = shareCoarse*h + (1-shareCoarse)*fine
		}
		mean += weight * h
		sum += weight
		weight *= nextReading(half, fine)
	}
	return mean / sum
}

// normal is the standard normal distribution function.
func normal(x float64) float64 { return 0.5 * math.Erfc(-x/math.Sqrt2) }

func within(ok bool) float64 {
	if ok {
		return 1
	}
	return 0
}
