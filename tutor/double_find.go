package tutor

import (
	"math"
	"slices"
	"sort"

	"closingside/statics"
	"closingside/tutor/entry"
)

// hit is an explanation of an entry, and how likely it is beside the others
// before they are brought to a sum of 1.
type hit struct {
	p       float64
	outcome outcome
}

// Two slips are looked for less far from an entry than one: who keeps three
// digits on the way can't be told two apart.
const (
	nearRel   = 0.004
	nearAngle = 0.3
)

// together finds the two slips, none in writing the value down, that may have
// led to an entry.
func (s *state) together(q int, r entry.Reading) []hit {
	l := s.w.Lesson
	quantity, d := &l.Quantities[q], l.doublesOf(q)
	total := d.weightFor(s.standing)
	reach := nearRel * math.Abs(r.Value)
	if quantity.Dim == statics.DimAngle {
		reach = nearAngle
	}
	reach = max(reach, 2*r.Halves[len(r.Halves)-1])
	var hits []hit
	d.near(quantity, r.Value, reach+s.strayed(reach), func(x *double) {
		if d.uses[x.use].steps&s.standing != 0 {
			return
		}
		b := blurring{s: s, values: s.scratch}
		copy(b.values, s.sound)
		if x.base != nil {
			copy(b.values, x.base)
		}
		v, drifts := x.rework(&b, q)
		if math.IsNaN(v) || quantity.gap(v, r.Value) > reach {
			return
		}
		blur := drifts.spread()
		p := s.w.likely(quantity, r, func(half float64) float64 {
			return quantity.signed(r.Value, quantity.fold(v), quantity.below(v)) * habitOf(quantity, r.Value, half).chance(quantity, r.Value, half, v, blur, x.exact())
		})
		if p *= float64(x.weight) / total; p > 0 {
			hits = append(hits, hit{p, x.outcome(quantity, v)})
		}
	})
	return alike(quantity, hits)
}

// strayed is how far looking for two slips reaches beyond reach because right
// entries are not quite true.
func (s *state) strayed(reach float64) float64 {
	if s.standing == 0 {
		return 0
	}
	return reach
}

// near visits the doubles within reach of v, around the circle for an angle.
func (d *doubles) near(q *Quantity, v, reach float64, visit func(x *double)) {
	inRange(q, v, reach, func(lo, hi float64) {
		i := sort.Search(len(d.values), func(i int) bool { return d.values[i].value >= lo })
		for ; i < len(d.values) && d.values[i].value <= hi; i++ {
			visit(&d.all[d.values[i].index])
		}
	})
}

// exact tells whether no rounding blurs the value.
func (x *double) exact() bool {
	whole := func(o *outcome) bool { return o == nil || o.exact }
	sums := func(p *plan) bool { return p == nil || p.whole }
	return whole(x.first) && whole(x.second) && (x.v == nil || x.v.whole) && sums(x.plan) && sums(x.other)
}

// rework is what two slips come to from the values in b, and how it may be off.
func (x *double) rework(b *blurring, q int) (float64, drift) {
	if x.plan == nil {
		if x.copied != nil {
			b.values[x.copied.index] = x.copied.value
		}
		d := b.last(x.v.prog)
		return b.s.tape.Values[x.v.prog.Len()-1], d
	}
	first := b.begin(x.first)
	var second begun
	if x.second != nil {
		second = b.begin(x.second)
	}
	b.take(x.plan, first)
	if x.second != nil {
		b.take(x.other, second)
		b.middle(x.plan)
		b.middle(x.other)
	}
	b.middle(x.plan)
	if x.second != nil {
		b.middle(x.other)
	}
	last := &x.plan.steps[len(x.plan.steps)-1]
	if x.v != nil {
		d := b.last(x.v.prog)
		return b.s.tape.Values[x.v.prog.Len()-1], d
	}
	d := b.last(last.prog)
	return last.work(b.values, &b.s.tape), d
}

// begun is the wrong value that a plan begins with.
type begun struct {
	value float64
	drift drift
}

func (b *blurring) begin(o *outcome) begun {
	if o.copied != nil {
		right := b.values[o.copied.index]
		b.values[o.copied.index] = o.copied.value
		defer func() { b.values[o.copied.index] = right }()
	}
	d := b.last(o.prog)
	return begun{b.s.tape.Values[o.prog.Len()-1], d}
}

func (b *blurring) take(p *plan, from begun) {
	b.values[p.at] = from.value
	if b.s.w.Lesson.Quantities[p.at].Given {
		b.drifts[p.at] = drift{}
		b.found = b.found.with(p.at)
		return
	}
	b.keep(p.at, from.value, from.drift)
}

func (b *blurring) middle(p *plan) {
	for i := range p.steps[:len(p.steps)-1] {
		st := &p.steps[i]
		d := b.last(st.prog)
		b.values[st.quantity] = st.work(b.values, &b.s.tape)
		b.keep(st.quantity, b.values[st.quantity], d)
	}
}

// outcome is what x says.
func (x *double) outcome(q *Quantity, v float64) outcome {
	o := outcome{value: v, weight: float64(x.weight), at: q.Name}
	var ids []string
	switch {
	case x.first == nil && x.copied == nil:
		o.ids = x.v.ids
		return o
	case x.first == nil:
		o.ids = crossed(x.v.ids, miscopied)
		return o
	case x.v != nil:
		ids = x.v.ids
	case x.second != nil:
		ids = x.second.ids
	}
	o.at = x.first.at
	if ids == nil {
		o.ids = x.first.ids
		return o
	}
	o.ids = crossed(x.first.ids, ids)
	lead := ids[0]
	if x.second != nil {
		lead = x.second.lead()
	}
	if first := x.first.lead(); first != lead {
		o.likely = joined(first, lead)
	}
	return o
}

// miscopied is the row of a given read as another value.
var miscopied = []string{"given-miscopied"}

// crossed joins every id of one list with every other of another.
func crossed(firsts, seconds []string) []string {
	var ids []string
	for _, a := range firsts {
		for _, b := range seconds {
			if id := joined(a, b); a != b && !slices.Contains(ids, id) {
				ids = append(ids, id)
			}
		}
	}
	slices.Sort(ids)
	return ids
}

// alike brings hits of one value together, each set of ids once.
func alike(q *Quantity, hits []hit) []hit {
	slices.SortStableFunc(hits, func(a, b hit) int {
		switch {
		case a.outcome.value < b.outcome.value:
			return -1
		case a.outcome.value > b.outcome.value:
			return 1
		}
		return 0
	})
	var out []hit
	seen := [][]string{}
	for _, h := range hits {
		n := len(out)
		if n == 0 || q.gap(h.outcome.value, out[n-1].outcome.value) > q.alike() {
			out, seen = append(out, h), append(seen[:0], h.outcome.ids)
			continue
		}
		o := &out[n-1]
		if slices.ContainsFunc(seen, func(ids []string) bool { return slices.Equal(ids, h.outcome.ids) }) {
			o.p = max(o.p, h.p)
			continue
		}
		seen = append(seen, h.outcome.ids)
		if h.p > o.p && h.outcome.likely != "" {
			o.outcome.likely, o.outcome.at = h.outcome.likely, h.outcome.at
		}
		o.p += h.p
		for _, id := range h.outcome.ids {
			if !slices.Contains(o.outcome.ids, id) {
				o.outcome.ids = append(slices.Clip(o.outcome.ids), id)
			}
		}
		slices.Sort(o.outcome.ids)
	}
	return out
}
