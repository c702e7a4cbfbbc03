package tutor

import (
	"iter"
	"math"
	"slices"
	"sync"

	"closingside/statics/expr"
)

// Two slips together: every way is worked out once for a lesson and a
// quantity, from the true values, and listed in order of value. A check looks
// up those near what was entered, and works these few out again from what the
// learner has.

// doubles is every two slips that reach a quantity.
type doubles struct {
	making sync.Mutex
	made   bool
	goOn   func() (struct{}, bool) // makes a little more of the list; nil before it is begun, and after
	stop   func()                  // gives up a list begun

	values []place // in order; the index is of all
	all    []double
	uses   []useOf // by double.use
	total  float64 // of the weights where nothing is entered
}

// useOf is the weight of the doubles that rest on the same steps in the head.
type useOf struct {
	steps  set
	weight float64
}

// double is two slips: the first at one step or in a given, the second in a
// later step, in another one that meets it further on, or in the same formula.
type double struct {
	first, second *outcome // second is nil where v is
	v             *variant // the second in the last step (or both in it, where first is nil)
	plan, other   *plan    // from the first, and from the second where that has its own
	base          []float64
	copied        *place // a given read as another value in v's formula
	weight        float32
	use           int32
}

// mostDoubles bounds the list of a quantity: the rarest are left out.
const mostDoubles = 40000

// doublesOf lists the doubles of quantity q, made when first asked for.
func (l *Lesson) doublesOf(q int) *doubles {
	d := &l.ready().doubles[q]
	d.make(l, q, func() bool { return false })
	return d
}

// make makes the list for quantity q, or as much of it as there is time for;
// it tells whether the list is whole.
func (d *doubles) make(l *Lesson, q int, late func() bool) bool {
	d.making.Lock()
	defer d.making.Unlock()
	if !d.made && d.goOn == nil {
		d.goOn, d.stop = iter.Pull(func(yield func(struct{}) bool) {
			m := &doubler{d: d, l: l, q: q, s: NewWork(l, DefaultSettings()).now(&Quantity{}), uses: map[set]int32{}, steps: l.ready().wrong,
				wait: func() bool { return yield(struct{}{}) }}
			if m.list() {
				m.sort()
			}
		})
	}
	for !d.made && !late() {
		if _, more := d.goOn(); !more {
			d.made, d.goOn, d.stop = true, nil, nil
		}
	}
	return d.made
}

// forget gives up a list begun and not whole.
func (d *doubles) forget() {
	d.making.Lock()
	defer d.making.Unlock()
	if d.goOn == nil {
		return
	}
	d.stop()
	d.goOn, d.stop = nil, nil
	d.values, d.all, d.uses, d.total = nil, nil, nil, 0
}

// doubler lists doubles.
type doubler struct {
	d     *doubles
	l     *Lesson
	q     int
	s     *state
	uses  map[set]int32
	steps []wrongStep
	wait  func() bool // between two pieces of work; false where the rest is not wanted
}

// wrongStep is what one slip and two make of a quantity's own finding, made
// when first asked for: whatever it leads to begins with them.
type wrongStep struct {
	made        sync.Once
	once, twice []outcome
}

func (m *doubler) wrongIn(in int) *wrongStep {
	w := &m.steps[in]
	w.made.Do(func() {
		w.once = merge(&m.l.Quantities[in], m.s.directly(in, false))
		w.twice = m.twiceIn(in)
	})
	return w
}

// list tells whether the list is whole.
func (m *doubler) list() bool {
	pairs := m.l.pairsIn(m.q)
	for i := range pairs {
		m.add(double{v: &pairs[i]}, pairs[i].prog.Run(m.s.own, &m.s.tape), pairs[i].prior, 0)
	}
	m.misread()
	own := m.copiedIn(m.q)
	for i := range own {
		c := &own[i]
		m.add(double{v: c.v, copied: c.at}, c.value, c.weight, c.v.reads&^m.l.prep.givens)
	}
	var ways []way
	for in := range m.s.own {
		if in == m.q {
			continue
		}
		plans := m.l.plans(m.q, in, 0)
		for i := range plans {
			if p := &plans[i]; !p.blunt() && p.weight >= leastShared {
				if !m.wait() {
					return false
				}
				w := m.wrongIn(in)
				m.goOn(p, w.twice)
				m.twice(p, w.once)
				ways = append(ways, way{in, p, w.once})
			}
		}
	}
	for i := range ways {
		for k := i + 1; k < len(ways); k++ {
			if m.meeting(&ways[i], &ways[k]) && !m.wait() {
				return false
			}
		}
	}
	return true
}

// leastShared is the weight from which a plan is thought of with a second slip.
const leastShared = 0.04

// way is a plan with the slips that may begin it.
type way struct {
	in    int
	plan  *plan
	wrong []outcome
}

func (m *doubler) add(d double, v, weight float64, steps set) {
	q := &m.l.Quantities[m.q]
	if math.IsNaN(v) || math.IsInf(v, 0) || weight < leastDouble {
		return
	}
	v = q.fold(v)
	if q.gap(v, q.True) <= q.alike() {
		return
	}
	use, ok := m.uses[steps]
	if !ok {
		use = int32(len(m.d.uses))
		m.uses[steps] = use
		m.d.uses = append(m.d.uses, useOf{steps: steps})
	}
	d.weight, d.use = float32(weight), use
	m.d.uses[use].weight += weight
	m.d.total += weight
	m.d.values = append(m.d.values, place{v, int32(len(m.d.all))})
	m.d.all = append(m.d.all, d)
}

// leastDouble is the weight below which two slips together are not thought of.
const leastDouble = 0.003

// misread is a given misread from the start, and a slip in the last formula.
func (m *doubler) misread() {
	variants := m.l.variantsOf(m.q)
	all := m.l.misreadings()
	for i := range all {
		mis := &all[i]
		for k := range variants {
			if v := &variants[k]; v.pairable() && mis.outcome.apartFrom(v.ids) {
				m.add(double{first: &mis.outcome, v: v, base: mis.truth}, v.prog.Run(mis.truth, &m.s.tape), mis.outcome.weight*v.prior, v.reads&^m.l.prep.givens)
			}
		}
	}
}

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
	row := slipByID(miscopied[0])
	var out []copiedOnce
	values := slices.Clone(m.s.own)
	m.l.prep.givens.each(func(g int) {
		all := miscopies(m.l.Quantities[g].True)
		for _, to := range all {
			values[g] = to
			at := &place{to, int32(g)}
			for k := range variants {
				if v := &variants[k]; v.pairable() && v.reads.has(g) && v.id != row.ID {
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
	var out []outcome
	pairs := m.l.pairsIn(q)
	for i := range pairs {
		if o, ok := m.s.predict(quantity, &pairs[i], m.s.own); ok {
			out = append(out, o)
		}
	}
	for _, c := range m.copiedIn(q) {
		if !math.IsNaN(c.value) {
			out = append(out, outcome{value: c.value, ids: crossed(c.v.ids, miscopied), at: quantity.Name, weight: c.weight, exact: c.v.whole, tree: c.v.tree, prog: c.v.prog, start: m.s.own, copied: c.at})
		}
	}
	return merge(quantity, out)
}

// goOn is two slips in the first step of a plan.
func (m *doubler) goOn(p *plan, twice []outcome) {
	for i := range twice {
		o := &twice[i]
		if w := o.weight * p.weight; w >= leastDouble {
			m.add(double{first: o, plan: p}, p.run(m.s.fresh(), o.came(), &m.s.tape), w, p.found&^m.l.prep.givens)
		}
	}
}

// twice is a slip followed by another in the last step of a plan.
func (m *doubler) twice(p *plan, wrong []outcome) {
	last := &p.steps[len(p.steps)-1]
	variants := m.l.variantsOf(last.quantity)
	for i := range wrong {
		o := &wrong[i]
		if o.tree == nil {
			continue
		}
		values := m.s.fresh()
		p.run(values, o.came(), &m.s.tape)
		values[last.quantity] = m.s.own[last.quantity]
		for k := range variants {
			v := &variants[k]
			if v.route == last.route && v.pairable() && v.reads&p.found != 0 && o.apartFrom(v.ids) {
				m.add(double{first: o, v: v, plan: p}, v.prog.Run(values, &m.s.tape), o.weight*v.prior*p.weight, p.found&^m.l.prep.givens)
			}
		}
	}
}

// meeting is two slips at two steps whose plans end in the same one; false
// where they don't.
func (m *doubler) meeting(a, b *way) bool {
	if a.in == b.in || !a.plan.meets(b.plan) {
		return false
	}
	weight := min(a.plan.weight, b.plan.weight)
	steps := (a.plan.found | b.plan.found) &^ m.l.prep.givens
	values := m.s.fresh()
	for i := range a.wrong {
		o := &a.wrong[i]
		if o.tree == nil || o.weight*a.plan.weight < leastDouble {
			continue
		}
		for k := range b.wrong {
			x := &b.wrong[k]
			if w := o.weight * x.weight * weight; x.tree != nil && w >= leastDouble && o.apartFrom(x.ids) {
				copy(values, m.s.own)
				v := a.plan.join(b.plan, values, o.came(), x.came(), &m.s.tape)
				m.add(double{first: o, second: x, plan: a.plan, other: b.plan}, v, w, steps)
			}
		}
	}
	return true
}

// meets tells whether two plans come together: neither finds what the other
// begins with, they end in the same formula, and what both find they find alike.
func (p *plan) meets(o *plan) bool {
	last, end := &p.steps[len(p.steps)-1], &o.steps[len(o.steps)-1]
	if last.route != end.route || p.found.has(o.at) || o.found.has(p.at) {
		return false
	}
	for i := range p.steps[:len(p.steps)-1] {
		st := &p.steps[i]
		for k := range o.steps[:len(o.steps)-1] {
			if o.steps[k].quantity == st.quantity && o.steps[k].route != st.route {
				return false
			}
		}
	}
	return true
}

// join works what two plans come to together, from the wrong values they begin
// with: what both find is found from both.
func (p *plan) join(o *plan, values []float64, came, other float64, tape *expr.Tape) float64 {
	values[p.at], values[o.at] = came, other
	p.middle(values, tape)
	o.middle(values, tape)
	p.middle(values, tape)
	o.middle(values, tape)
	last := &p.steps[len(p.steps)-1]
	return last.work(values, tape)
}

// middle works the steps of a plan but the last.
func (p *plan) middle(values []float64, tape *expr.Tape) {
	for i := range p.steps[:len(p.steps)-1] {
		st := &p.steps[i]
		values[st.quantity] = st.work(values, tape)
	}
}

// sort brings the list in order, the rarest left out where it is too long.
func (m *doubler) sort() {
	d := m.d
	if len(d.values) > mostDoubles {
		weights := make([]float32, len(d.all))
		for i := range d.all {
			weights[i] = d.all[i].weight
		}
		slices.Sort(weights)
		least := weights[len(weights)-mostDoubles]
		d.values = slices.DeleteFunc(d.values, func(p place) bool { return d.all[p.index].weight < least })
	}
	if m.wait() {
		sortPlaces(d.values)
	}
}

// pairable tells whether v is one slip, and not too rare to be thought of with
// another.
func (v *variant) pairable() bool { return len(v.forms) > 0 && !v.lone }

// apartFrom tells whether o and another slip can be told by their names.
func (o *outcome) apartFrom(ids []string) bool {
	return len(o.ids) > 1 || len(ids) > 1 || o.ids[0] != ids[0]
}

// weightFor is the weight of the doubles that may still happen where the
// entries for standing are there to be read.
func (d *doubles) weightFor(standing set) float64 {
	sum := 0.0
	for i := range d.uses {
		if d.uses[i].steps&standing == 0 {
			sum += d.uses[i].weight
		}
	}
	return sum
}
