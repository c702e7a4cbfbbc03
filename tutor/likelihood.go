package tutor

import (
	"math"

	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/writing"
)

// likelihood is the probability of the entry's cell (the values that would be
// typed alike) under an outcome: a mixture over habits of rounding.
func (t *table) likelihood(c *cell, r entry.Reading) float64 {
	return writing.Likely(r, t.s.w.fine(t.q, r), func(half float64) float64 { return t.inCell(c, r.Value, half) })
}

// fine is half a unit of the last digit asked on the way, of an entry for
// quantity q.
func (w *Work) fine(q int, r entry.Reading) float64 {
	return w.Settings.Work.HalfUnit(w.Lesson.Quantities[q].Dim, r.Value)
}

// exactly is how closely an expression without rounded numbers must match.
const exactly = 1e-6

// reachOfLargest is how far a component is looked around, of the largest force: each
// term of a sum may be half a unit of three digits off.
const reachOfLargest = 0.005

// reachOf is how far from an entry outcomes are looked for: as far as three
// digits kept on the way may move a value in a well conditioned formula.
func (w *Work) reachOf(q *lesson.Quantity, r entry.Reading) float64 {
	reach := 0.02 * math.Abs(r.Value)
	switch {
	case q.IsAngle():
		reach = 2
	case q.Signed: // it may be the small difference of large ones
		reach = max(reach, reachOfLargest*w.largest())
	}
	for _, h := range r.Halves {
		reach = max(reach, 2*h)
	}
	return reach
}

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

// inCell is the probability that the value of a cell is typed as v ± half.
func (t *table) inCell(c *cell, v, half float64) float64 {
	q := &t.s.w.Lesson.Quantities[t.q]
	if o := t.likeliest(c).first; o.rounded != nil && o.exact == 1 { // a value rounded in being written
		switch {
		case q.FoldedDistance(v, c.value) > half*(1+1e-9):
			return 0
		case half < 0.2*o.rounded.half():
			return shareZerosKept
		}
		return 1
	}
	return writing.Sign(q, v, c.value, c.below) * t.inCellOf(q, c, v, half)
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
		h = writing.Rounder.Given(t.s.leaning)
	}
	blur := writing.Exact
	switch {
	case c.exact == 1:
	case t.s.standing == 0 && writing.Unrounded(q, v, half):
		blur = writing.Spread{}
	default:
		blur = t.blur(c)
	}
	p := h.Chance(q, v, half, c.value, blur)
	if c.exact > 0 && c.exact < 1 {
		p = c.exact*h.Chance(q, v, half, c.value, writing.Exact) + (1-c.exact)*p
	}
	return p
}

// density is the probability of the entry's cell when nothing explains it.
// What we don't know is partly spread over the plausible range, thinning out
// beyond it, and partly lies where the mistakes we do know lie (judgement: half
// and half): where those stand close, one of them is the less likely to be it.
func (w *Work) density(q *lesson.Quantity, r entry.Reading, known *table) float64 {
	reach, mass := w.reachOf(q, r), 0.0
	known.near(r.Value, reach, func(c *cell) { mass += c.weight })
	cell := 2 * writing.HalfOf(r, w.Settings.Work.HalfUnit(q.Dim, r.Value))
	return min(1, cell*(0.5/w.span(q, r)+0.5*mass/known.total/(2*reach)))
}

// span is the width of the range over which an unexplained value may lie.
func (w *Work) span(q *lesson.Quantity, r entry.Reading) float64 {
	span := 360.0
	if q.IsAngle() && !q.Turns {
		span = 180
	}
	if !q.IsAngle() {
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
