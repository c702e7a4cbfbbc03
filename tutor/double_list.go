package tutor

import (
	"math"
	"slices"
	"sync"

	"closingside/tutor/slips"
)

// doubler lists doubles.
type doubler struct {
	d    *doubles
	l    *Lesson
	q    int
	s    *state
	uses map[set]int32
	wait func() bool // between two pieces of work; false where the rest is not wanted

	places []place // of all: where each belongs
	all    []listed
}

// wrongStep is what one slip and two make of a quantity's own finding, made
// when first asked for: whatever it leads to begins with them.
type wrongStep struct {
	made        sync.Once
	once, twice []outcome
}

func (m *doubler) wrongIn(in int) *wrongStep {
	w := &m.l.prep.of[in].wrong
	w.made.Do(func() {
		w.once = m.s.slipsIn(in)
		if one := m.l.singlesOf(in); one.lone {
			w.once = m.s.directly(in, one.joining())
		}
		w.twice = m.twiceIn(in)
	})
	return w
}

// list tells whether the list is whole.
func (m *doubler) list() bool {
	d := m.d
	d.twice, d.variants, d.misread, d.copied = m.l.slippedTwice(m.q), m.l.variantsOf(m.q), m.l.misreadings(), m.copiedIn(m.q)
	m.inOne()
	m.fromMisread()
	m.fromCopied()
	if !m.onWays() {
		return false
	}
	for i := range d.ways {
		for k := i + 1; k < len(d.ways); k++ {
			if m.meeting(i, k) && !m.wait() {
				return false
			}
		}
	}
	return true
}

// inOne lists two slips in the last formula.
func (m *doubler) inOne() {
	for i := range m.d.twice {
		if p := &m.d.twice[i]; p.prior >= leastDouble {
			m.add(listed{sort: inOne, first: int32(i)}, p.prog.Run(m.s.own, &m.s.tape), p.prior, 0)
		}
	}
}

// fromMisread lists a given misread from the start, and a slip in the last
// formula.
func (m *doubler) fromMisread() {
	for i := range m.d.misread {
		mis := &m.d.misread[i]
		for k := range m.d.variants {
			v := &m.d.variants[k]
			if w := mis.outcome.weight * v.prior; w >= leastDouble && v.joinable() && mis.outcome.apartFrom(v.ids) {
				m.add(listed{sort: fromMisread, first: int32(i), second: int32(k)}, v.prog.Run(mis.truth, &m.s.tape), w, v.reads&^m.l.prep.givens)
			}
		}
	}
}

// fromCopied lists a slip in the last formula in which a given was read as
// another value.
func (m *doubler) fromCopied() {
	for i := range m.d.copied {
		c := &m.d.copied[i]
		m.add(listed{sort: fromCopied, first: int32(i)}, c.value, c.weight, c.v.reads&^m.l.prep.givens)
	}
}

// leastShared is the weight from which a plan is thought of with a second slip.
const leastShared = 0.04

// add lists a double that comes to v.
func (m *doubler) add(x listed, v, weight float64, steps set) {
	q := &m.l.Quantities[m.q]
	if math.IsNaN(v) || math.IsInf(v, 0) || weight < leastDouble {
		return
	}
	v = q.Fold(v)
	if q.FoldedDistance(v, q.True) <= q.Epsilon() {
		return
	}
	use, ok := m.uses[steps]
	if !ok {
		use = int32(len(m.d.uses))
		m.uses[steps] = use
		m.d.uses = append(m.d.uses, useOf{steps: steps})
	}
	x.weight, x.use = float32(weight), use
	m.d.uses[use].weight += weight
	m.d.total += weight
	m.places = append(m.places, place{v, int32(len(m.all))})
	m.all = append(m.all, x)
}

// leastDouble is the weight below which two slips together are not thought of.
const leastDouble = 0.003

// copiedOnce is a slip in a formula in which a given was read as another value.
type copiedOnce struct {
	v      *variant
	at     *place
	value  float64
	weight float64
}

// copiedIn lists them for quantity q.
func (m *doubler) copiedIn(q int) []copiedOnce {
	if m.l.prep.givens.has(q) {
		return nil
	}
	variants := m.l.variantsOf(q)
	row := slips.ByID(miscopied[0])
	var out []copiedOnce
	values := slices.Clone(m.s.own)
	m.l.prep.givens.each(func(g int) {
		all := slips.Miscopies(m.l.Quantities[g].True)
		for _, to := range all {
			values[g] = to
			at := &place{to, int32(g)}
			for k := range variants {
				if v := &variants[k]; v.joinable() && v.reads.has(g) && v.id != row.ID {
					out = append(out, copiedOnce{v, at, v.prog.Run(values, &m.s.tape), v.prior * row.Prior / float64(len(all))})
				}
			}
		}
		values[g] = m.s.own[g]
	})
	return out
}

// twiceIn lists what two slips in the finding of quantity q itself come to.
func (m *doubler) twiceIn(q int) []outcome {
	quantity := &m.l.Quantities[q]
	if quantity.Given || quantity.Equation {
		return nil
	}
	twice, copied := m.l.slippedTwice(q), m.copiedIn(q)
	var all []prediction
	for i := range twice {
		all = m.s.predict(all, quantity, &twice[i], ofEntries)
	}
	var values []float64
	for i := range all {
		values = append(values, all[i].value)
	}
	copied = slices.DeleteFunc(copied, func(c copiedOnce) bool { return math.IsNaN(c.value) })
	for i := range copied {
		values = append(values, copied[i].value)
	}
	return merge(quantity, values, func(i int) outcome {
		if i < len(all) {
			return all[i].outcome(quantity)
		}
		c := &copied[i-len(all)]
		return outcome{value: c.value, ids: crossed(c.v.ids, miscopied), at: quantity.Name, weight: c.weight, exact: wholly(c.v.whole), prog: c.v.prog, basis: ofEntries, copied: c.at}
	})
}

// finish brings the list in order, the rarest left out where it is too long.
func (m *doubler) finish() {
	if len(m.places) > mostDoubles {
		m.leaveOut()
	}
	if !m.wait() {
		return
	}
	sortPlaces(m.places)
	d := m.d
	d.values, d.all = make([]float64, len(m.places)), make([]listed, len(m.places))
	for i, p := range m.places {
		d.values[i], d.all[i] = p.value, m.all[p.index]
	}
}

// leaveOut takes the rarest doubles from the list, and their weights from the
// sums.
func (m *doubler) leaveOut() {
	weights := make([]float32, len(m.all))
	for i := range m.all {
		weights[i] = m.all[i].weight
	}
	slices.Sort(weights)
	least := weights[len(weights)-mostDoubles]
	m.places = slices.DeleteFunc(m.places, func(p place) bool { return m.all[p.index].weight < least })
	m.d.total = 0
	for i := range m.d.uses {
		m.d.uses[i].weight = 0
	}
	for _, p := range m.places {
		x := &m.all[p.index]
		m.d.uses[x.use].weight += float64(x.weight)
		m.d.total += float64(x.weight)
	}
}
