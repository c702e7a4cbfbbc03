package tutor

import (
	"math"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// likelihood is the probability of the entry's cell (the values that would be
// typed alike) under an outcome: a mixture over habits of rounding.
func (t *table) likelihood(c *cell, r entry.Reading) float64 {
	return t.s.w.likely(&t.s.w.Lesson.Quantities[t.q], r, func(half float64) float64 { return t.inCell(c, r.Value, half) })
}

// likely is a likelihood over the readings of an entry's final zeros, and over
// who writes fewer digits than are asked.
func (w *Work) likely(q *lesson.Quantity, r entry.Reading, in func(half float64) float64) float64 {
	p, sum := 0.0, 0.0
	fine := w.Settings.Work.HalfUnit(q.Dim, r.Value)
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

// formulaHalf is how closely an expression must match: as the numbers in it are
// that were rounded on the way.
func (w *Work) formulaHalf(q *lesson.Quantity, r entry.Reading) float64 {
	half := exactly * max(1, math.Abs(q.True))
	if r.Tree == nil {
		return half
	}
	var trace []expr.Point
	for _, l := range r.Literals {
		if l.Right || w.statedAs(r, l) {
			continue
		}
		if trace == nil {
			trace = expr.Trace(r.Tree, w.known)
		}
		for _, p := range trace {
			if p.Site == l.Site && !math.IsNaN(p.Slope) {
				half += math.Abs(p.Slope) * l.Half
			}
		}
	}
	return half
}

// placeholder is how much less likely it is that final zeros of a whole number
// leave one digit more or less than is asked (judgement: learners are told to
// write the digits asked).
const placeholder = 0.05

// How values are written and gone on from (judgement).
const (
	shareCut  = 0.1 // of the learners who cut digits off instead of rounding
	shareHeld = 0.5 // of those who go on from what the calculator holds, not from what they wrote
)

// inCell is the probability that the value of a cell is typed as v ± half.
func (t *table) inCell(c *cell, v, half float64) float64 {
	q := &t.s.w.Lesson.Quantities[t.q]
	if o := t.likeliest(c).first; o.rounded != nil && o.exact { // a value rounded in being written
		p := within(q.Gap(v, c.value) <= half*(1+1e-9))
		if half < 0.2*o.rounded.half() {
			p *= shareZerosKept
		}
		return p
	}
	return likelySign(q, v, c.value, c.below) * t.inCellOf(q, c, v, half)
}

// likeliest is the guess of a cell of most weight.
func (t *table) likeliest(c *cell) *guess {
	best := &t.guesses[c.from]
	for i := c.from; i < c.to; i++ {
		if t.guesses[i].weight > best.weight {
			best = &t.guesses[i]
		}
	}
	return best
}

// shareZerosKept is how often a value kept to few digits is written with zeros
// behind them (judgement).
const shareZerosKept = 0.1

// half is half a unit of the last digit kept.
func (r *Rounded) half() float64 {
	if r.angle {
		return 0.5 * math.Pow10(-r.Digits)
	}
	return 0.5 * math.Pow10(lesson.DecimalExponent(r.value)+1-r.Digits)
}

func (t *table) inCellOf(q *lesson.Quantity, c *cell, v, half float64) float64 {
	h := t.s.habitOf(q, v, half)
	if t.guesses[c.from].first.rounded != nil {
		h = habitRounder.given(t.s.leaning)
	}
	if exact := t.exact(c); exact || t.s.standing == 0 && isUnrounded(q, v, half) {
		return h.chance(q, v, half, c.value, spread{}, exact)
	}
	return h.chance(q, v, half, c.value, t.blur(c), false)
}

// unroundedRel is the half-width, against the value, from which an entry is as
// it came out: nothing was rounded to be written.
const unroundedRel = 1e-5

func isUnrounded(q *lesson.Quantity, v, half float64) bool {
	switch {
	case q.Circular():
		return half < unroundedRel
	case q.Dim == statics.DimAngle:
		v = max(1, math.Abs(v))
	}
	return half < unroundedRel*math.Abs(v)
}

// How an angle of the figure that came out below zero is written (judgement:
// with its sign by most; one above zero gets no sign).
const (
	shareUnsigned = 0.3
	shareBelow    = 0.02
)

// likelySign is how likely the sign of v is for an angle of size x that came out
// below zero or not. −30° may also be 330°, written another way.
func likelySign(q *lesson.Quantity, v, x float64, below bool) float64 {
	switch {
	case !q.Circular() || q.Turns:
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

// chance is the probability that x, with its spread, is typed as v ± half.
func (h habit) chance(q *lesson.Quantity, v, half, x float64, s spread, exact bool) float64 {
	d := q.Gap(v, x)
	switch {
	case exact:
		return within(d <= half*(1+1e-9))
	case isUnrounded(q, v, half):
		return s.worked(q, v, half, x, typed(q, v, x, half))
	}
	inside := typed(q, v, x, half)
	full := s.worked(q, v, half, x, inside)
	return h.full*full + h.four*blurred(d, half, s.four, inside) + h.three*blurred(d, half, s.three, inside)
}

// worked is how likely x is to be typed as v ± half by who keeps all digits: worked
// from the entries before as they were typed, which full is the likelihood of, or as
// the calculator holds them.
func (s spread) worked(q *lesson.Quantity, v, half, x, full float64) float64 {
	if s.shift == 0 && s.held == 0 {
		return full
	}
	held := x + s.shift
	return (1-shareHeld)*full + shareHeld*blurred(q.Gap(v, held), half, s.held, typed(q, v, held, half))
}

// typed is how likely x is to be typed as v ± half: rounded, or cut off.
func typed(q *lesson.Quantity, v, x, half float64) float64 {
	off := x - v
	if q.Circular() {
		off = lesson.TurnRemainder(off)
	}
	if q.Circular() && !q.Turns { // as they are compared: the sign may be left out
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

// cellHalf is the mean half-width of the entry's cell over the readings of its
// final zeros.
func (w *Work) cellHalf(q *lesson.Quantity, r entry.Reading) float64 {
	mean, sum := 0.0, 0.0
	fine := w.Settings.Work.HalfUnit(q.Dim, r.Value)
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

// density is the probability of the entry's cell when nothing explains it.
// What we don't know is partly spread over the plausible range, thinning out
// beyond it, and partly lies where the mistakes we do know lie (judgement: half
// and half): where those stand close, one of them is the less likely to be it.
func (w *Work) density(q *lesson.Quantity, r entry.Reading, known *table) float64 {
	reach, mass := reachOf(q, r), 0.0
	known.near(r.Value, reach, func(c *cell) { mass += c.weight })
	cell := 2 * w.cellHalf(q, r)
	return min(1, cell*(0.5/w.span(q, r)+0.5*mass/known.total/(2*reach)))
}

// span is the width of the range over which an unexplained value may lie.
func (w *Work) span(q *lesson.Quantity, r entry.Reading) float64 {
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
