package tutor

import (
	"math"
	"slices"
	"sync"

	"closingside/tutor/lesson"
	"closingside/tutor/slipped"
)

// What one slip in the finding of a quantity itself makes of it.

// singles is what one slip makes of a quantity. The lists serve every work on
// the lesson that does not read an entry in them.
type singles struct {
	made     sync.Once
	variants []variant
	reads    set       // by any of variants
	lone     bool      // some are not thought of together with another slip
	written  []outcome // slips in writing the true value down
	outcomes []outcome // from true values, merged
}

// slipsIn lists what a slip in finding q itself predicts, by any of its
// routes, merged by value. Of a given it lists what a slip in reading it from
// the statement makes of it.
func (s *state) slipsIn(q int) []outcome {
	if s.direct[q] == nil {
		one := s.w.Lesson.singlesOf(q)
		s.direct[q] = one.outcomes
		if one.reads&s.standing != 0 {
			s.direct[q] = s.directly(q, one)
		}
	}
	return s.direct[q]
}

// singlesOf is what one slip makes of quantity i, made when it is first asked
// for.
func (l *Lesson) singlesOf(i int) *singles {
	one := &l.ready().of[i].singles
	one.made.Do(func() {
		one.variants = l.variants(&l.Quantities[i])
		for k := range one.variants {
			one.reads |= one.variants[k].reads
			one.lone = one.lone || one.variants[k].lone
		}
		one.written = l.writtenWrongly(i)
		one.outcomes = (&state{w: &Work{Lesson: l}, own: l.truths()}).directly(i, one)
	})
	return one
}

// joining is one without what is not thought of together with another slip.
func (one *singles) joining() *singles {
	variants := slices.DeleteFunc(slices.Clone(one.variants), func(v variant) bool { return v.lone })
	return &singles{variants: variants, written: one.written}
}

// variantsOf is what one slip makes of the routes of quantity i.
func (l *Lesson) variantsOf(i int) []variant { return l.singlesOf(i).variants }

// writtenWrongly lists the slips made in writing down the true value of
// quantity i.
func (l *Lesson) writtenWrongly(i int) []outcome {
	q := &l.Quantities[i]
	if q.Given || q.Equation {
		return nil
	}
	var out []outcome
	for _, v := range slipped.Values(l.Lesson, q, q.True) {
		out = append(out, outcome{value: v.Value, written: true, of: q.True, ids: v.Row.IDs, at: q.Name, weight: v.Prior, basis: ofEntries})
	}
	return out
}

// prediction is what a variant comes to, worked from what is entered or from
// the truth.
type prediction struct {
	value, weight float64
	v             *variant
	basis         basis
}

// directly lists what one slip makes of quantity q as the work stands.
func (s *state) directly(q int, one *singles) []outcome {
	quantity := &s.w.Lesson.Quantities[q]
	if quantity.Equation { // a wrong equation has no value
		return []outcome{}
	}
	all := make([]prediction, 0, len(one.variants)+len(one.variants)/4)
	for i := range one.variants {
		v := &one.variants[i]
		all = s.predict(all, quantity, v, ofEntries)
		if v.reads&s.wrong != 0 {
			all = s.predict(all, quantity, v, ofTruth)
		}
	}
	values := make([]float64, 0, len(all)+len(one.written))
	for i := range all {
		values = append(values, all[i].value)
	}
	for i := range one.written {
		values = append(values, one.written[i].value)
	}
	return merge(quantity, values, func(i int) outcome {
		if i < len(all) {
			return all[i].outcome(quantity)
		}
		return one.written[i-len(all)]
	})
}

// predict appends what a variant gives; where a slip altered a component
// behind a direction, in the quadrant of its signs and in that of the sketch.
func (s *state) predict(all []prediction, q *lesson.Quantity, v *variant, of basis) []prediction {
	values := s.own
	if of == ofTruth {
		values = s.truth
	}
	p := prediction{v.prog.Run(values, &s.tape), v.prior, v, of}
	if math.IsNaN(p.value) {
		return all
	}
	if v.quadrant == nil {
		return append(all, p)
	}
	if by := v.quadrant.direction(values, &s.tape); q.FoldedDistance(by, p.value) > 1e-6 {
		all = append(all, prediction{by, p.weight, v, of})
		p.weight *= shareDrawn
	}
	return append(all, p)
}

func (p *prediction) outcome(q *lesson.Quantity) outcome {
	v := p.v
	return outcome{value: p.value, ids: v.ids, at: q.Name, weight: p.weight, exact: wholly(v.whole), prog: v.prog, basis: p.basis, forms: v.forms}
}

// merge gathers outcomes of the same value, in order: ids are joined, weights
// added. The true value itself is left out. Outcomes are told of by their values,
// as they come out, and made where they are kept.
func merge(q *lesson.Quantity, values []float64, of func(i int) outcome) []outcome {
	same := q.Epsilon()
	order := make([]place, 0, len(values))
	for i, v := range values {
		if folded := q.Fold(v); !(q.FoldedDistance(folded, q.True) <= same || q.FoldedDistance(folded, q.Also) <= same) {
			order = append(order, placeOf(q, folded, q.IsNegativeAngle(v), i))
		}
	}
	sortPlaces(order)
	out := make([]outcome, 0, distinct(order, same))
	for _, at := range order {
		o := of(int(at.index))
		o.raw, o.value = o.value, q.Fold(o.value)
		if n := len(out); n > 0 && o.value-out[n-1].value <= same && q.IsNegativeAngle(o.raw) == q.IsNegativeAngle(out[n-1].raw) {
			if out[n-1].written && !o.written { // a formula leads there too
				out[n-1], o = o, out[n-1]
			}
			out[n-1].absorb(&o)
			out[n-1].forms = append(slices.Clip(out[n-1].forms), o.forms...)
			continue
		}
		out = append(out, o)
	}
	return out
}
