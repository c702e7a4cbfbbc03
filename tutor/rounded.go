package tutor

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// How values rounded too soon are kept (judgement): digits of a magnitude or a
// ratio, decimals of an angle; rounding is more common than cutting off.
const (
	weightRounded = 1.0
	weightCut     = 0.4
	weightThird   = 0.4 // of a third digit: three are what an answer asks

	weightTogether = 1.0 // of every value read being kept so

	weightNoted  = 1.0 // a quantity, a sine or cosine, the value an inverse key is pressed on
	weightBare   = 0.1 // of a sine or cosine that becomes 1 or 0, or a number's root one digit: nobody takes that for one
	weightMinus  = 0.4 // of one that becomes −1: a whole force seldom has the minus
	weightPassed = 0.5 // a square, product or sum on the way, which most calculators keep
	weightReread = 0.3 // of a right entry, which stands there with all its digits
)

// noted is how likely a value on the way is to be written down.
func noted(n expr.Node) float64 {
	if _, symbol := n.(expr.Sym); symbol || expr.IsTrig(n) || expr.IsInverseTrig(n) {
		return weightNoted
	}
	if _, _, ratio := expr.Operands(n, expr.OpDiv); ratio {
		return weightNoted
	}
	return weightPassed
}

// farRel and farAngle are how far from the truth early rounding is looked for:
// one digit of a sine may be worth this much of an angle.
const (
	farRel   = 0.5
	farAngle = 45.0
)

// near is the table of early rounding for an entry near the truth; an empty
// one for others.
func (s *state) near(q int, r entry.Reading) *table {
	quantity := &s.w.Lesson.Quantities[q]
	far := farRel * math.Abs(quantity.True)
	if quantity.Signed { // it may be the small difference of large ones
		far = max(far, farRel*s.w.largest())
	}
	if quantity.IsAngle() {
		far = farAngle
	}
	if quantity.FoldedDistance(r.Value, quantity.True) > far {
		return madeOnce(&s.nowhere, func() *table { return s.newTable(q, nil) })
	}
	return s.soon(q)
}

// soon is the table of early rounding, made when first asked for.
func (s *state) soon(q int) *table {
	return madeOnce(&s.rounding, func() *table { return s.early(q) })
}

// early lists what q comes to when one value on the way, steps done in the
// head included, is rounded or cut too soon, and leaves the band.
func (s *state) early(q int) *table {
	quantity := &s.w.Lesson.Quantities[q]
	var out []guess
	for _, direct := range s.roundedIn(q) {
		for i := range direct {
			out = append(out, guess{value: direct[i].value, weight: direct[i].weight, first: &direct[i]})
		}
	}
	for in := range s.own {
		if in == q || s.standing.has(in) {
			continue
		}
		plans := s.w.Lesson.plans(q, in, s.standing)
		if len(plans) == 0 { // nothing leads on from it
			continue
		}
		wrong := s.roundedIn(in)
		if s.w.Lesson.ready().givens.has(in) {
			wrong = [][]outcome{s.roundedReading(in)}
		}
		for i := range plans {
			if plans[i].blunt() {
				continue
			}
			for _, list := range wrong {
				out = s.downstream(out, &plans[i], list)
			}
		}
	}
	all := append(s.roundedTogether(q), s.roundedThroughout(q)...)
	for i := range all {
		out = append(out, guess{value: all[i].value, weight: all[i].weight, first: &all[i]})
	}
	itself := s.roundedItself(q)
	for i := range itself {
		out = append(out, guess{value: itself[i].value, weight: itself[i].weight, first: &itself[i]})
	}
	band := s.w.Band(quantity)
	band.Half -= s.w.Settings.DigitsOf(quantity).HalfUnit(quantity.Dim, quantity.True) // written, it may lie outside
	out = slices.DeleteFunc(out, func(g guess) bool { return band.Holds(quantity, g.value) })
	return s.newTable(q, out)
}

// roundedItself lists q's own value kept to fewer digits than asked.
func (s *state) roundedItself(q int) []outcome {
	l := s.w.Lesson
	quantity := &l.Quantities[q]
	var out []outcome
	for _, d := range tooFew(&s.w.Settings, quantity.Dim, quantity.True) {
		out = append(out, outcome{value: d.value, ids: carriedIDs, at: quantity.Name, weight: d.weight, exact: 1,
			rounded: keptShort(&s.w.Settings, quantity, l.SymbolText(quantity.Name), d)})
	}
	return out
}

// keptShort is q's own value kept to too few digits: to keep are those asked of q,
// and more than were kept.
func keptShort(s *lesson.Settings, q *lesson.Quantity, symbol string, d kept) *Rounded {
	asked := s.DigitsOf(q)
	keep := asked.Magnitude
	if d.angle {
		keep = asked.Angle
	}
	return &Rounded{What: symbol, Digits: d.digits, Keep: max(keep, d.digits+1), angle: d.angle, value: d.value}
}

// mostOfIt is the share of what rounding did to a value that one of several values
// must have done to be told of as if it were alone (judgement).
const mostOfIt = 0.9

// roundedTogether lists what q comes to where every value that a route reads is
// kept to the same few digits; named is the one that moves q most.
func (s *state) roundedTogether(q int) []outcome {
	l := s.w.Lesson
	var out []outcome
	for j := range l.Quantities[q].Routes {
		f := &l.prep.of[q].routes[j]
		straight := f.prog.Run(s.sound, &s.tape)
		for n := 1; n < s.w.Settings.Work.Magnitude; n++ {
			d := lesson.Digits{Magnitude: n, Angle: max(0, n-2)}
			kept := slices.Clone(s.sound)
			most, named, moved, weight := 0.0, -1, set(0), weightTogether
			f.reads.each(func(i int) {
				in := &l.Quantities[i]
				v := d.Round(in.Dim, s.sound[i])
				if in.Given || s.wrong.has(i) || v == s.sound[i] {
					return
				}
				if s.standing.has(i) {
					weight = weightTogether * weightReread
				}
				kept[i] = v
				moved = moved.with(i)
				if by := math.Abs(s.workedWith(f.prog, -1, i, v) - straight); by > most {
					most, named = by, i
				}
			})
			v := f.prog.Run(kept, &s.tape)
			if moved.size() < 2 || named < 0 || math.IsNaN(v) {
				continue
			}
			in := &l.Quantities[named]
			rounded := &Rounded{What: l.SymbolText(in.Name), Digits: d.Magnitude, Keep: s.w.Settings.Work.Magnitude}
			if in.IsAngle() {
				rounded = &Rounded{What: l.SymbolText(in.Name), Digits: d.Angle, Keep: s.w.Settings.Work.Angle, angle: true}
			}
			rounded.of, rounded.among = moved, most < mostOfIt*math.Abs(v-straight)
			out = append(out, outcome{value: v, ids: carriedIDs, at: l.Quantities[q].Name, weight: weight * f.share, prog: f.prog, basis: ofAccepted, rounded: rounded})
		}
	}
	return out
}

// kept is a value kept to too few digits.
type kept struct {
	value        float64
	digits, keep int // significant digits, or decimals of an angle
	angle        bool
	weight       float64
}

// tooFew lists what v becomes when kept to fewer digits than the settings ask,
// rounded or cut.
func tooFew(s *lesson.Settings, dim statics.Dimension, v float64) []kept {
	from, keep := 1, s.Work.Magnitude
	if dim == statics.DimAngle {
		from, keep = 0, s.Work.Angle
	}
	out := make([]kept, 0, 2*max(0, keep-from))
	for n := from; n < keep; n++ {
		places := n
		if dim != statics.DimAngle {
			places = n - 1 - lesson.DecimalExponent(v)
		}
		rounded, cut := lesson.RoundPlaces(v, places), cutPlaces(v, places)
		weight := 1.0
		if n >= from+2 {
			weight = weightThird
		}
		if rounded != v {
			out = append(out, kept{rounded, n, keep, dim == statics.DimAngle, weight * weightRounded})
		}
		if cut != rounded && cut != v {
			out = append(out, kept{cut, n, keep, dim == statics.DimAngle, weight * weightCut})
		}
	}
	return out
}

// cutPlaces is v with the digits beyond so many places left off. What a calculator
// shows as a whole number is one, though the last bits fall short of it.
func cutPlaces(v float64, places int) float64 {
	p := math.Pow10(-places)
	c := math.Trunc(lesson.RoundPlaces(v/p, hiddenPlaces)) * p
	return lesson.RoundPlaces(c, places)
}

// hiddenPlaces is beyond what a calculator shows of an angle in degrees.
const hiddenPlaces = 9
