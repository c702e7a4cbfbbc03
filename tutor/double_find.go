package tutor

import (
	"cmp"
	"math"
	"slices"

	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/writing"
)

// doubleHit is two slips that may have led to an entry, what they come to, and how
// likely that is beside the others before they are brought to a sum of 1.
type doubleHit struct {
	p, value float64
	x        double
}

// Two slips are looked for less far from an entry than one: who keeps three
// digits on the way can't be told two apart.
const (
	nearRel   = 0.0015
	nearAngle = 0.12
)

// doublesNear finds the two slips, none in writing the value down, that may have
// led to an entry, in order of value. They stand until the
// work looks for some again.
func (s *state) doublesNear(q int, r entry.Reading) []doubleHit {
	l := s.w.Lesson
	quantity, d := &l.Quantities[q], l.doublesOf(q)
	total := d.weightFor(s.standing)
	reach := nearRel * math.Abs(r.Value)
	if quantity.IsAngle() {
		reach = nearAngle
	}
	reach = max(reach, 2*r.Halves[len(r.Halves)-1])
	hits := s.w.doubleHits[:0]
	d.near(quantity, r.Value, reach+s.strayed(reach), func(at *listed) {
		if d.uses[at.use].steps&s.standing != 0 {
			return
		}
		x := d.open(at)
		from := s.sound
		if x.base != nil {
			from = x.base
		}
		v, off := x.work(s.blurringFrom(from))
		if math.IsNaN(v) || quantity.FoldedDistance(v, r.Value) > reach {
			return
		}
		blur := off.Spread()
		if x.exact() {
			blur = writing.Exact
		}
		p := writing.Likely(r, s.w.fine(q, r), func(half float64) float64 {
			return writing.Sign(quantity, r.Value, quantity.Fold(v), quantity.IsNegativeAngle(v)) * s.habitOf(quantity, r.Value, half).Chance(quantity, r.Value, half, v, blur)
		})
		if p *= float64(x.weight) / total; p > 0 {
			hits = append(hits, doubleHit{p, v, x})
		}
	})
	slices.SortStableFunc(hits, func(a, b doubleHit) int { return cmp.Compare(a.value, b.value) })
	s.w.doubleHits = hits
	return hits
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
func (d *doubles) near(q *lesson.Quantity, v, reach float64, visit func(x *listed)) {
	inRange(q, v, reach, func(lo, hi float64) {
		i, _ := slices.BinarySearch(d.values, lo)
		for ; i < len(d.values) && d.values[i] <= hi; i++ {
			visit(&d.all[i])
		}
	})
}

// exact tells whether no rounding blurs the value.
func (x *double) exact() bool {
	whole := func(o *outcome) bool { return o == nil || o.exact == 1 }
	sums := func(p *plan) bool { return p == nil || p.whole }
	return whole(x.first) && whole(x.second) && (x.v == nil || x.v.whole) && sums(x.plan) && sums(x.other)
}

// work is what two slips come to from the values in b, and how that may be off.
func (x *double) work(b *blurring) (v float64, d writing.Drift) {
	if x.plan == nil {
		if x.copied != nil {
			b.values[x.copied.index] = x.copied.value
		}
		d = b.last(x.v.prog)
		return b.came(x.v.prog), d
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
	if x.v != nil {
		d = b.last(x.v.prog)
		return b.came(x.v.prog), d
	}
	last := &x.plan.steps[len(x.plan.steps)-1]
	d = b.last(last.prog)
	return last.ran(b.values, &b.s.tape), d
}

// begun is the wrong value that a plan begins with.
type begun struct {
	value float64
	drift writing.Drift
}

func (b *blurring) begin(o *outcome) begun {
	if o.copied != nil {
		right := b.values[o.copied.index]
		b.values[o.copied.index] = o.copied.value
		defer func() { b.values[o.copied.index] = right }()
	}
	d := b.last(o.prog)
	return begun{b.came(o.prog), d}
}

func (b *blurring) take(p *plan, from begun) {
	b.values[p.at] = from.value
	if b.s.w.Lesson.Quantities[p.at].Given {
		b.drifts[p.at] = writing.Drift{}
		b.found = b.found.with(p.at)
		return
	}
	b.keep(p.at, from.value, from.drift)
}

func (b *blurring) middle(p *plan) {
	for i := range p.steps[:len(p.steps)-1] {
		st := &p.steps[i]
		d := b.last(st.prog)
		b.values[st.quantity] = st.ran(b.values, &b.s.tape)
		b.keep(st.quantity, b.values[st.quantity], d)
	}
}

// outcome is what x says.
func (x *double) outcome(q *lesson.Quantity, v float64) outcome {
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

// saysLike tells whether two doubles accuse of the same two slips.
func (x *double) saysLike(o *double) bool {
	a, b := x.both()
	c, d := o.both()
	return slices.Equal(a, c) && slices.Equal(b, d) || slices.Equal(a, d) && slices.Equal(b, c)
}

// both is the ids of the one slip and of the other; where one row names the
// two, of that alone.
func (x *double) both() (one, other []string) {
	switch {
	case x.first == nil && x.copied == nil:
		return x.v.ids, nil
	case x.first == nil:
		return x.v.ids, miscopied
	case x.v != nil:
		return x.first.ids, x.v.ids
	case x.second != nil:
		return x.first.ids, x.second.ids
	}
	return x.first.ids, nil
}

// alike gives the stretches of hits, in order of value, that are one value.
func alike(q *lesson.Quantity, all []doubleHit, visit func(same []doubleHit)) {
	for from, i := 0, 1; i <= len(all); i++ {
		if i == len(all) || q.FoldedDistance(all[i].value, all[i-1].value) > q.Epsilon() {
			visit(all[from:i])
			from = i
		}
	}
}

// chance is how likely some of these are that come to the same; two slips that
// may be made in several ways count once.
func chance(same []doubleHit) float64 {
	sum := 0.0
	for i, h := range same {
		likeliest := !slices.ContainsFunc(same[:i], func(o doubleHit) bool { return o.p >= h.p && o.x.saysLike(&h.x) }) &&
			!slices.ContainsFunc(same[i+1:], func(o doubleHit) bool { return o.p > h.p && o.x.saysLike(&h.x) })
		if likeliest {
			sum += h.p
		}
	}
	return sum
}

// jointly is what those that come to the same say together.
func jointly(q *lesson.Quantity, same []doubleHit) outcome {
	all := same[0].x.outcome(q, same[0].value)
	all.ids = slices.Clone(all.ids)
	most := same[0].p
	for i, h := range same[1:] {
		if h.p <= most && slices.ContainsFunc(same[:i+1], func(o doubleHit) bool { return o.x.saysLike(&h.x) }) {
			continue // it tells nothing new
		}
		o := h.x.outcome(q, h.value)
		if h.p > most && o.likely != "" {
			all.likely, all.at = o.likely, o.at
		}
		most = max(most, h.p)
		all.ids = append(all.ids, o.ids...)
	}
	slices.Sort(all.ids)
	all.ids = slices.Compact(all.ids)
	return all
}
