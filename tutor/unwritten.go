package tutor

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
	"closingside/tutor/writing"
)

// A slip in writing a value down is looked for from what was written: what was
// meant, if that slip was made, is looked up like any other value.

// meant is a value that may have been meant, and the slip in writing it down.
type meant struct {
	row    *slips.Slip
	before *slips.Slip // another slip in writing it down, made before; nil where there is none
	value  float64
	halves []float64 // as of a reading
	share  float64   // of the row's ways to write it wrongly
	factor float64   // of what was written, to come to what was meant; 0 where digits were changed
}

// reading is an entry, read as r, as it would be read with what was meant in its
// place.
func (m *meant) reading(r entry.Reading) entry.Reading {
	r.Value, r.Halves = m.value, m.halves
	return r
}

// meanings lists what may have been meant by an entry for q. A direction is
// taken in every way to write it within a turn.
func (w *Work) meanings(q *lesson.Quantity, r entry.Reading) []meant {
	switch {
	case r.Form == entry.Affine, q.Equation, r.Value == 0:
		return nil
	case r.Form == entry.Expression: // the numbers of a formula in other units than asked
		return w.prefixed(q, r)
	}
	if !q.Turns {
		all := w.meaningsOf(q, r)
		if q.IsAngle() && r.Value <= -180 && r.Value > -360 {
			r.Value += 360
			all = append(all, w.meaningsOf(q, r)...)
		}
		return all
	}
	near, far := r, r
	near.Value = lesson.Wrap(r.Value)
	far.Value = near.Value - math.Copysign(360, near.Value)
	return append(w.meaningsOf(q, near), w.meaningsOf(q, far)...)
}

// prefixed is what a formula of numbers may come to in a unit a thousand times
// larger or smaller: kilograms times m/s² are newtons, kilonewtons being asked.
func (w *Work) prefixed(q *lesson.Quantity, r entry.Reading) []meant {
	if q.IsAngle() || r.UnitWritten {
		return nil
	}
	var all []meant
	for _, factor := range []float64{1000, 0.001} {
		all = append(all, meant{row: slips.ByID("prefix"), value: r.Value * factor, halves: []float64{w.formulaHalf(q, r)}, share: 0.5, factor: factor})
	}
	return all
}

// overTurn is what an angle of a full turn or more may have been meant as, beside
// the same angle within a turn: the point may stand one place further on, or two
// digits be exchanged.
func (w *Work) overTurn(q *lesson.Quantity, r entry.Reading) []meant {
	if !q.IsAngle() || math.Abs(r.Value) < 360 || !q.Turns && (r.Value < 0 || r.Value >= 540) || r.Form == entry.Expression || r.Form == entry.Affine {
		return nil
	}
	var all []meant
	swaps := slips.DigitSwaps(r.Value, r.Halves[0])
	for _, v := range swaps {
		if math.Abs(v) < 360 {
			all = append(all, meant{row: slips.ByID("digits-swapped"), value: v, halves: r.Halves, share: 1 / float64(len(swaps))})
		}
	}
	return append(all, w.timesMeant("decimal-place", q, r, 0.1))
}

// timesMeant is that a factor larger was meant, one of two by which the slip may miss it.
func (w *Work) timesMeant(id string, q *lesson.Quantity, r entry.Reading, factor float64) meant {
	v := r.Value * factor
	return meant{row: slips.ByID(id), value: v, halves: w.scaled(q, v, r.Halves, factor), share: 0.5, factor: factor}
}

// inOtherUnits lists what may have been meant by an entry in another unit than it
// is written in.
func (w *Work) inOtherUnits(q *lesson.Quantity, r entry.Reading) []meant {
	all := make([]meant, 0, 12)
	if !q.IsAngle() {
		all = append(all, w.timesMeant("prefix", q, r, 1000), w.timesMeant("prefix", q, r, 0.001))
	}
	if q.Dim == statics.DimForce {
		all = append(all, w.timesMeant("unit-system", q, r, statics.NewtonsPerPound), w.timesMeant("unit-system", q, r, 1/statics.NewtonsPerPound))
	}
	return all
}

func (w *Work) meaningsOf(q *lesson.Quantity, r entry.Reading) []meant {
	v := r.Value
	all := append(w.inOtherUnits(q, r), w.timesMeant("decimal-place", q, r, 10), w.timesMeant("decimal-place", q, r, 0.1))
	add := func(id string, v, factor, share float64) {
		all = append(all, meant{row: slips.ByID(id), value: v, halves: w.scaled(q, v, r.Halves, math.Abs(factor)), share: share})
	}
	if whole, part := math.Modf(v); q.IsAngle() && part != 0 && math.Abs(part) < 0.6-1e-9 {
		add("minutes-as-decimals", whole+part/0.6, 1/0.6, 1)
	}
	if !r.UnitWritten && q.TurnedToRadians(v*180/math.Pi) && math.Abs(v) < 2*math.Pi {
		add("radians-unnamed", v*180/math.Pi, 180/math.Pi, 1)
	}
	half, shown := r.Halves[0], r.Halves
	if fine := w.Settings.Work.HalfUnit(q.Dim, v); half > fine*(1+1e-9) {
		half /= 10 // a zero exchanged to the end is left away
	}
	swaps := slips.DigitSwaps(v, half)
	for _, x := range swaps {
		if r.Halves = shown; math.Abs(math.Remainder(x, 2*shown[0])) > half { // it was that zero
			r.Halves = []float64{half}
		}
		add("digits-swapped", x, 1, 1/float64(len(swaps)))
	}
	if x, ok := slips.ZeroFromFront(v); ok && (!q.IsAngle() || math.Abs(x) < 360) {
		r.Halves = shown
		add("digits-swapped", x, 1, shareZeroInFront)
	}
	return slices.DeleteFunc(all, func(m meant) bool { // no sum of a direction and a triangle's angle is 813.50°, for 93.50°
		return q.IsAngle() && math.Abs(v) < 360 && math.Abs(m.value) >= 540
	})
}

// shareZeroInFront is how often two digits are exchanged so that a zero comes to stand
// in front, where most notice it, against all other exchanges (judgement).
const shareZeroInFront = 0.1

// scaled is the resolution of an entry when it was meant a factor larger.
// Final zeros beyond the digits asked came with the point.
func (w *Work) scaled(q *lesson.Quantity, v float64, halves []float64, factor float64) []float64 {
	fine := w.Settings.Work.HalfUnit(q.Dim, v)
	var all []float64
	for i, h := range halves {
		if h *= factor; factor == 1 || h > 0.99*fine || i == len(halves)-1 {
			all = append(all, h)
		}
	}
	return all
}

// shareWritten is the share of two slips together of which one is made in
// writing the value down (judgement).
const shareWritten = 0.25

// misstated finds what an entry read as r may be where a right value, one carried from a wrong
// entry or one that another slip gives was written down wrongly.
func (s *state) misstated(q int, r entry.Reading, all []meant, singles, carried *table) (one, two []met) {
	quantity := &s.w.Lesson.Quantities[q]
	rows := 0.0
	for _, o := range s.w.Lesson.singlesOf(q).written {
		rows += o.weight
	}
	ways := s.rightWays(q)
	two = make([]met, 0, len(all)) // about as many
	for i := range all {
		m := &all[i]
		r := m.reading(r)
		weight, reach := m.row.Prior*m.share, s.w.reachOf(quantity, r)
		p := s.rightly(quantity, ways, r)
		if len(carried.cells) > 0 {
			carried.near(m.value, reach, func(c *cell) {
				p += shareMiswritten * c.weight / carried.total * carried.likelihood(c, r)
			})
		}
		if p > 0 {
			one = append(one, met{p: p * weight / singles.total, meant: m})
		}
		for _, u := range s.w.unitsBefore(quantity, m, r) {
			if p := s.rightly(quantity, ways, u.reading(r)); p > 0 {
				two = append(two, met{p: p * u.before.Prior * u.share / singles.total * weight / rows, meant: &u})
			}
		}
		singles.near(m.value, reach, func(c *cell) {
			if singles.guesses[c.from].first.written {
				return
			}
			if p := c.weight / singles.total * singles.likelihood(c, r); p > 0 && !singles.onlyOf(c, m.row) {
				two = append(two, met{p: p * weight / rows, meant: m, table: singles, cell: c})
			}
		})
	}
	return one, two
}

// unitsBefore lists what may have been meant where the unit was mistaken, too,
// before the slip m was made in writing the value down.
func (w *Work) unitsBefore(q *lesson.Quantity, m *meant, r entry.Reading) []meant {
	if m.row.ID == "unit-system" || r.Form == entry.Expression {
		return nil
	}
	all := slices.DeleteFunc(w.inOtherUnits(q, r), func(u meant) bool { return u.row == m.row })
	for i := range all { // told as the last that was made
		all[i].before, all[i].row = all[i].row, m.row
	}
	return all
}

// onlyOf tells whether the guesses of a cell accuse of one row alone.
func (t *table) onlyOf(c *cell, row *slips.Slip) bool {
	return !slices.ContainsFunc(t.guesses[c.from:c.to], func(g guess) bool {
		return slices.ContainsFunc(g.first.ids, func(id string) bool { return id != row.ID })
	})
}

// outcome is what it says that v was written for m: for a right value, or for what
// a slip gives, where there is a cell of it.
func (m *meant) outcome(q *lesson.Quantity, v float64, t *table, c *cell) outcome {
	o := outcome{value: v, ids: m.row.IDs, at: q.Name, written: true, of: m.value}
	if m.before != nil {
		o.ids = crossed(m.before.IDs, m.row.IDs)
	}
	if c != nil {
		before := t.outcome(c)
		o.at, o.ids, o.likely = before.at, crossed(before.ids, m.row.IDs), joined(before.lead(), m.row.ID)
		if m.factor != 0 {
			o.full = c.value / m.factor
		}
	}
	return o
}

// rightWay is what a route comes to for one who makes no slip.
type rightWay struct {
	value, share float64
	blur         writing.Spread
}

// rightWays lists them for every route of q.
func (s *state) rightWays(q int) []rightWay {
	quantity, routes := &s.w.Lesson.Quantities[q], s.w.Lesson.ready().of[q].routes
	ways := make([]rightWay, 0, len(routes))
	b := s.blurringFrom(s.sound)
	for j := range routes {
		d := b.last(routes[j].prog)
		v := s.tape.Values[routes[j].prog.Len()-1]
		if math.IsNaN(v) {
			continue
		}
		blur := d.Spread()
		if sumsAlone(quantity.Routes[j].Tree, s.w.Lesson) {
			blur = writing.Exact
		}
		ways = append(ways, rightWay{v, routes[j].share, blur})
	}
	return ways
}

// rightly is how likely a value of q is to be written by one who makes no slip,
// by any route.
func (s *state) rightly(q *lesson.Quantity, ways []rightWay, r entry.Reading) float64 {
	p := 0.0
	for _, way := range ways {
		if q.FoldedDistance(way.value, r.Value) > s.w.reachOf(q, r) {
			continue
		}
		p += way.share * writing.Likely(r, s.w.Settings.Work.HalfUnit(q.Dim, r.Value), func(half float64) float64 {
			return s.habitOf(q, r.Value, half).Chance(q, r.Value, half, way.value, way.blur)
		})
	}
	return p
}
