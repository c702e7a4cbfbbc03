package tutor

import (
	"math"
	"slices"

	"closingside/tutor/slips"
)

// outcomes is the table of what single slips predict for q, given what the
// learner has entered: slips in finding q itself, slips in a step done in the
// head before it, and slips in reading what is given.
func (s *state) outcomes(q int) *table {
	if s.tables[q] == nil {
		s.tables[q] = s.newTable(q, s.tabulate(q))
	}
	return s.tables[q]
}

func (s *state) tabulate(q int) []guess {
	l := s.w.Lesson
	prep := l.ready()
	direct := s.slipsIn(q)
	out := make([]guess, 0, 4*len(direct)+64)
	for i := range direct {
		out = append(out, guess{value: direct[i].value, weight: direct[i].weight, first: &direct[i]})
	}
	for in := range s.own {
		if in == q || s.standing.has(in) {
			continue
		}
		plans := l.plans(q, in, s.standing)
		if len(plans) == 0 { // nothing leads on from it
			continue
		}
		wrong := s.slipsIn(in)
		for i := range plans {
			if prep.givens.has(in) && len(plans[i].steps) > 1 && s.standing == 0 {
				continue // a given misread from the start: see misread
			}
			out = s.downstream(out, &plans[i], wrong)
		}
	}
	out = s.misread(out, q)
	return s.throughout(out, q)
}

// shareMiswritten is the weight of a slip in writing down a value that is
// carried from a wrong entry, against one in writing down the right one.
const shareMiswritten = 0.5

// carriedTo is the table of what follows for q, made when first asked for.
func (s *state) carriedTo(q int) *table {
	if s.carries == nil {
		s.carries = map[int]*table{}
	}
	if s.carries[q] == nil {
		s.carries[q] = s.carried(q)
	}
	return s.carries[q]
}

// downstream appends what a quantity comes to by plan p for every wrong value
// of an earlier one, every later step being right.
func (s *state) downstream(out []guess, p *plan, wrong []outcome) []guess {
	q := &s.w.Lesson.Quantities[p.steps[len(p.steps)-1].quantity]
	same := q.Epsilon()
	right := p.run(s.fresh(), s.own[p.at], &s.tape)
	for i := range wrong {
		o := &wrong[i]
		if o.prog == nil { // written down wrong, which a step in the head is not
			continue
		}
		v := p.run(s.fresh(), o.came(), &s.tape)
		if math.IsNaN(v) || q.Distance(v, right) <= same { // it cancels on the way
			continue
		}
		if p.blunt() && q.FoldedDistance(180-v, q.True) <= 1e-6 { // the other angle is all that is wrong
			continue
		}
		g := guess{value: v, weight: o.weight * p.weight, first: o, plan: p}
		if p.keyed && (slips.IsCalculatorMode(o.lead()) || o.lead() == "inverse-missing") {
			g.weight *= shareModeSet
		}
		out = append(out, g)
		if drawn, other := s.asDrawn(p, v); other {
			g.value, g.weight = drawn, g.weight*shareDrawn
			out = append(out, g)
		}
	}
	return out
}

// asDrawn is what the last step of a plan that was just run comes to where the
// quadrant is that of the sketch; false where that is what came out.
func (s *state) asDrawn(p *plan, v float64) (drawn float64, other bool) {
	last := &p.steps[len(p.steps)-1]
	if last.quadrant == nil {
		return v, false
	}
	drawn = last.prog.Run(s.scratch, &s.tape)
	return drawn, s.w.Lesson.Quantities[last.quantity].FoldedDistance(drawn, v) > 1e-6
}

// misread appends what q is in the problem that a learner works who misreads
// one of the givens from the start.
func (s *state) misread(out []guess, q int) []guess {
	if s.standing != 0 || len(s.w.Lesson.prep.of[q].routes) == 0 {
		return out
	}
	l := s.w.Lesson
	for i := range l.misreadings() {
		m := &l.prep.misread[i]
		if v := m.truth[q]; !math.IsNaN(v) {
			for _, f := range l.prep.of[q].routes {
				o := m.outcome
				switch {
				case f.seldom:
					continue
				case !f.sums:
					o.exact = 0
				}
				o.prog, o.basis, o.start = f.prog, ofItsOwn, m.truth
				if o.at == "" { // a force left out
					o.at = l.Quantities[q].Name
				}
				out = append(out, guess{value: v, weight: o.weight, first: &o}) // counted once, however it is found
			}
		}
	}
	return out
}

// throughout appends what q comes to when the calculator is in another mode
// through the whole of the work.
func (s *state) throughout(out []guess, q int) []guess {
	l := s.w.Lesson
	for i := range l.ready().modes {
		m := &l.prep.modes[i]
		for j := range m.routes[q] {
			values := s.fresh()
			if !s.workedIn(m, values, q, j) {
				continue
			}
			prog := m.routes[q][j]
			v := prog.Run(values, &s.tape)
			if math.IsNaN(v) {
				continue
			}
			o := &outcome{value: v, ids: m.ids, at: l.Quantities[q].Name, weight: m.weight * l.prep.of[q].routes[j].share,
				prog: prog, start: slices.Clone(values)}
			out = append(out, guess{value: v, weight: o.weight, first: o})
		}
	}
	return out
}

// workedIn fills values with what the route's inputs, and theirs in turn, come
// to in the mode m, each by the first route that does not run in a circle.
func (s *state) workedIn(m *mode, values []float64, q, j int) bool {
	prep := s.w.Lesson.prep
	changed := false
	var fill func(reads, on set) bool
	fill = func(reads, on set) bool {
		ok := true
		(reads &^ s.standing &^ prep.givens).each(func(i int) {
			if !ok {
				return
			}
			for k := range prep.of[i].routes {
				if f := &prep.of[i].routes[k]; f.reads&on == 0 && fill(f.reads, on.with(i)) {
					values[i] = m.routes[i][k].Run(values, &s.tape)
					changed = changed || values[i] != s.own[i]
					return
				}
			}
			ok = false
		})
		return ok
	}
	return fill(prep.of[q].routes[j].reads, set(0).with(q)) && changed
}
