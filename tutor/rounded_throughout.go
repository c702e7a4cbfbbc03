package tutor

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/tutor/lesson"
)

// Who keeps few digits mostly does so all the way: of every sine, of every value
// found, or of all that is worked out. What that comes to no single value kept short
// does.

// keeping is what is kept few digits of on the way, and how few.
type keeping struct {
	keys, found, all bool // sines, cosines, tangents and fractions; quantities; whatever is worked out
	digits           int  // significant digits; of an angle two decimals fewer
	decimals         int  // where digits is 0: of anything
}

// keepings are the ways to keep few digits all the way that are looked for.
var keepings = []keeping{
	{keys: true, decimals: 1},
	{keys: true, decimals: 2},
	{keys: true, digits: 2},
	{keys: true, digits: 3},
	{found: true, digits: 2},
	{found: true, digits: 3},
	{found: true, decimals: 0},
	{keys: true, found: true, digits: 2},
	{keys: true, found: true, digits: 3},
	{keys: true, found: true, all: true, digits: 2},
	{keys: true, found: true, all: true, digits: 3},
}

// weight is how likely that is, against one value kept short (judgement).
func (k *keeping) weight() float64 {
	if k.digits == 3 {
		return weightThird
	}
	return weightRounded
}

// value is v as it is kept, and to how many digits (decimals of an angle).
func (k *keeping) value(dim statics.Dimension, v float64) (kept float64, digits int) {
	places := k.decimals
	if k.digits > 0 {
		places = max(0, k.digits-2)
		if dim != statics.DimAngle {
			places = k.digits - 1 - lesson.DecimalExponent(v)
		}
	}
	digits = places
	if dim != statics.DimAngle {
		digits = max(1, places+1+lesson.DecimalExponent(v))
	}
	return lesson.RoundPlaces(v, places), digits
}

// chain is a way to a quantity of which nothing is entered: what is found on the way,
// in order, the quantity itself last.
type chain struct {
	steps []link
	share float64
}

type link struct {
	quantity int
	by       *formula
}

// chains lists the ways to q through what is not entered: by each of its routes, every
// quantity on the way found by the first route that goes in no circle.
func (s *state) chains(q int) []chain {
	var all []chain
	for j := range s.w.Lesson.ready().of[q].routes {
		f := &s.w.Lesson.prep.of[q].routes[j].formula
		if steps, ok := s.linked(nil, set(0).with(q), f.reads); ok {
			all = append(all, chain{append(steps, link{q, f}), f.share})
		}
	}
	return all
}

// linked appends to steps those that find what is read, without passing through on.
func (s *state) linked(steps []link, on, reads set) ([]link, bool) {
	prep, ok := s.w.Lesson.prep, true
	(reads &^ s.standing &^ prep.givens).each(func(i int) {
		if !ok || slices.ContainsFunc(steps, func(st link) bool { return st.quantity == i }) {
			return
		}
		ok = false
		if on.has(i) { // nothing is found from itself
			return
		}
		for j := range prep.of[i].routes {
			f := &prep.of[i].routes[j].formula
			if longer, can := s.linked(steps, on.with(i), f.reads); can {
				steps, ok = append(longer, link{i, f}), true
				return
			}
		}
	})
	return steps, ok
}

// roundedThroughout lists what q comes to where few digits are kept all the way.
func (s *state) roundedThroughout(q int) []outcome {
	var out []outcome
	for _, c := range s.chains(q) {
		for i := range keepings {
			if o, ok := s.keptAlong(&c, &keepings[i], q); ok {
				out = append(out, o)
			}
		}
	}
	return out
}

// keptAlong is what a chain comes to where digits are kept as k tells; false where
// that touches no two values, or only those that are looked for together anyway.
func (s *state) keptAlong(c *chain, k *keeping, q int) (outcome, bool) {
	l := s.w.Lesson
	kept := keptValues{s: s, k: k, bare: k.digits == 0 && k.decimals == 1, values: slices.Clone(s.sound)}
	on, last := c.steps[:len(c.steps)-1], &c.steps[len(c.steps)-1]
	for i := range on {
		st := &on[i]
		v := kept.work(st)
		if k.found {
			found := &l.Quantities[st.quantity]
			v = kept.keep(found.Dim, v, 1/kept.scale(st.quantity), func() string { return l.SymbolText(found.Name) })
		}
		kept.values[st.quantity] = v
	}
	v := kept.work(last)
	if kept.count < 2 || len(on) == 0 && k.digits > 0 && !k.all || math.IsNaN(v) {
		return outcome{}, false
	}
	o := outcome{value: v, ids: carriedIDs, at: l.Quantities[q].Name, weight: k.weight() * c.share, basis: ofAccepted, rounded: &kept.named}
	kept.named.among = true
	if kept.bare {
		o.weight *= weightBare
	}
	if !k.all {
		o.prog = last.by.prog
		kept.named.several = k.keys
	}
	return o, true
}

// keptValues works a chain with few digits kept.
type keptValues struct {
	s      *state
	k      *keeping
	values []float64
	count  int     // of the values that keeping changed
	bare   bool    // those all to 0 or 1, which nobody takes them for
	named  Rounded // the one that was changed by most, against its own size
	most   float64
}

// scale is how large a quantity is; of an angle, what moves it as a hundredth moves
// a magnitude.
func (kv *keptValues) scale(q int) float64 {
	if l := kv.s.w.Lesson; !l.Quantities[q].IsAngle() {
		return math.Abs(l.Quantities[q].True)
	}
	return 180 / math.Pi
}

// keep is v as it is kept; slope is what a change of it is worth.
func (kv *keptValues) keep(dim statics.Dimension, v, slope float64, what func() string) float64 {
	kept, digits := kv.k.value(dim, v)
	if kept == v {
		return v
	}
	kv.count++
	kv.bare = kv.bare && bare(kept)
	if by := math.Abs(slope * (kept - v)); by > kv.most {
		work := kv.s.w.Settings.Work
		kv.most, kv.named = by, Rounded{What: what(), Digits: digits, Keep: max(work.Magnitude, digits+1)}
		if dim == statics.DimAngle {
			kv.named.angle, kv.named.Keep = true, max(work.Angle, digits+1)
		}
	}
	return kept
}

// work is what the formula of a step comes to.
func (kv *keptValues) work(st *link) float64 {
	prog, tape := st.by.prog, &kv.s.tape
	straight := prog.Run(kv.values, tape)
	if !kv.k.keys {
		return straight
	}
	prog.Differentiate(tape)
	sorts, scale := st.by.sorts(), kv.scale(st.quantity)
	return prog.RunEach(kv.values, tape, func(p int, v float64) float64 {
		if sorts[p] == anotherSort && !kv.k.all || sorts[p] == cleanSort || math.IsNaN(v) {
			return v
		}
		return kv.keep(dimensionAt(prog, p), v, tape.Slopes[p]/scale, func() string { return st.by.called()[p] })
	})
}
