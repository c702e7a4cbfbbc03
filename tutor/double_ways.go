package tutor

import "closingside/statics/expr"

// onWays lists two slips on one way to the quantity; false where the rest is
// not wanted.
func (m *doubler) onWays() bool {
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
				m.d.ways = append(m.d.ways, way{in, p, m.wrongIn(in)})
				m.inFirst(len(m.d.ways) - 1)
				m.inLast(len(m.d.ways) - 1)
			}
		}
	}
	return true
}

// way is a plan with the slips that may begin it.
type way struct {
	in    int
	plan  *plan
	wrong *wrongStep
}

// inFirst lists two slips in the first step of a way.
func (m *doubler) inFirst(at int) {
	p, twice := m.d.ways[at].plan, m.d.ways[at].wrong.twice
	for i := range twice {
		o := &twice[i]
		if w := o.weight * p.weight; w >= leastDouble {
			m.add(listed{sort: inFirst, way: int16(at), first: int32(i)}, p.run(m.s.fresh(), o.came(), &m.s.tape), w, p.found&^m.l.prep.givens)
		}
	}
}

// inLast lists a slip in the first step of a way followed by another in its
// last.
func (m *doubler) inLast(at int) {
	p, once := m.d.ways[at].plan, m.d.ways[at].wrong.once
	last := &p.steps[len(p.steps)-1]
	for i := range once {
		o := &once[i]
		if o.prog == nil {
			continue
		}
		values := m.s.fresh()
		p.run(values, o.came(), &m.s.tape)
		values[last.quantity] = m.s.own[last.quantity]
		for k := range m.d.variants {
			v := &m.d.variants[k]
			w := o.weight * v.prior * p.weight
			if w >= leastDouble && v.route == last.route && v.joinable() && v.reads&p.found != 0 && o.apartFrom(v.ids) {
				m.add(listed{sort: inLast, way: int16(at), first: int32(i), second: int32(k)}, v.prog.Run(values, &m.s.tape), w, p.found&^m.l.prep.givens)
			}
		}
	}
}

// meeting lists two slips at two steps from which ways lead to the same last one;
// false where they don't.
func (m *doubler) meeting(one, other int) bool {
	a, b := &m.d.ways[one], &m.d.ways[other]
	if a.in == b.in || !a.plan.meets(b.plan) {
		return false
	}
	weight := min(a.plan.weight, b.plan.weight)
	steps := (a.plan.found | b.plan.found) &^ m.l.prep.givens
	values := m.s.fresh()
	for i := range a.wrong.once {
		o := &a.wrong.once[i]
		if o.prog == nil || o.weight*a.plan.weight < leastDouble {
			continue
		}
		for k := range b.wrong.once {
			x := &b.wrong.once[k]
			if w := o.weight * x.weight * weight; x.prog != nil && w >= leastDouble && o.apartFrom(x.ids) {
				copy(values, m.s.own)
				v := a.plan.join(b.plan, values, o.came(), x.came(), &m.s.tape)
				m.add(listed{sort: atMeeting, way: int16(one), other: int16(other), first: int32(i), second: int32(k)}, v, w, steps)
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
