package tutor

import (
	"math"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/writing"
)

// blur is the spread of a cell, from the slip to the entry, over the ways it
// comes about: each rounding is uniform within half a unit, so its variance is a
// third of the square.
func (t *table) blur(c *cell) writing.Spread {
	if c.blurred {
		return c.spread
	}
	var all writing.Drift
	sum := 0.0
	left := maxBlurred
	for i := c.from; i < c.to && left > 0; i++ {
		g := &t.guesses[i]
		if weight := g.weight * (1 - g.exact()); weight > 0 {
			all.Weigh(weight, t.drift(g))
			sum += weight
			left--
		}
	}
	c.spread = all.Over(sum).Spread()
	c.blurred = true
	return c.spread
}

// blurAhead works out the spread of every cell, a few at a time, and stops where
// it is late; it tells whether all is made.
func (t *table) blurAhead(late func() bool) (made bool) {
	for t.ahead < len(t.cells) {
		if late() {
			return false
		}
		some := t.cells[t.ahead:min(t.ahead+blurredAtOnce, len(t.cells))]
		for i := range some {
			if some[i].exact < 1 {
				t.blur(&some[i])
			}
		}
		t.ahead += len(some)
	}
	return true
}

// blurredAtOnce is how many cells take about as long as to make a table.
const blurredAtOnce = 32

// maxBlurred bounds the ways to a cell that are followed.
const maxBlurred = 4

// drift is how the value of a guess may be off.
func (t *table) drift(g *guess) writing.Drift {
	switch {
	case g.first.written && g.plan == nil:
		return t.blurredBefore(g.first)
	case g.first.prog == nil:
		return writing.Drift{}
	}
	b := t.s.blurringFrom(t.s.values(g.first))
	if g.plan == nil {
		return b.lastBut(g.first.prog, g.first.rounded)
	}
	return b.along(g)
}

// blurredBefore is the drift of a value that was written down wrongly: that of
// the route most take, times what the slip makes of a small change.
func (t *table) blurredBefore(o *outcome) writing.Drift {
	routes := t.s.w.Lesson.ready().of[t.q].routes
	if len(routes) == 0 {
		return writing.Drift{}
	}
	b := t.s.blurringFrom(t.s.own)
	slope := o.came() / o.of
	if size := math.Abs(slope); size > 0.5 && size < 2 { // digits exchanged, not a factor
		slope = 1
	}
	var d writing.Drift
	d.Add(slope, b.last(routes[0].prog))
	return d
}

// blurring follows drift through the steps of a plan.
type blurring struct {
	s      *state
	values []float64
	found  set // quantities the plan works out
	drifts [64]writing.Drift
}

// blurringFrom begins to follow drift from a copy of values. The state has one
// blurring: what was followed before is given up.
func (s *state) blurringFrom(values []float64) *blurring {
	if s.blur == nil {
		s.blur = &blurring{s: s}
	}
	copy(s.scratch, values)
	s.blur.values, s.blur.found = s.scratch, 0
	return s.blur
}

func (b *blurring) along(g *guess) writing.Drift {
	l := b.s.w.Lesson
	at := g.plan.at
	if !l.Quantities[at].Given {
		b.keep(at, g.first.came(), b.lastBut(g.first.prog, g.first.rounded))
	}
	copy(b.values, b.s.own)
	b.values[at], b.found = g.first.came(), b.found.with(at)
	var d writing.Drift
	for i := range g.plan.steps {
		st := &g.plan.steps[i]
		d = b.last(st.prog)
		b.values[st.quantity] = st.ran(b.values, &b.s.tape)
		if i < len(g.plan.steps)-1 {
			b.keep(st.quantity, b.values[st.quantity], d)
		}
	}
	return d
}

// keep notes that a quantity is kept on the way: those who round, round it.
func (b *blurring) keep(i int, v float64, d writing.Drift) {
	d.Round(1, v, b.s.w.Lesson.Quantities[i].Dim)
	b.drifts[i] = d
	b.found = b.found.with(i)
}

// last is the drift of a formula's value.
func (b *blurring) last(prog *expr.Program) writing.Drift { return b.lastBut(prog, nil) }

// lastBut is last where a value on the way was kept to few digits: neither rounding it
// nor what the entries that it is made of hide moves anything more.
func (b *blurring) lastBut(prog *expr.Program, kept *Rounded) writing.Drift {
	var d writing.Drift
	if prog == nil {
		return d
	}
	l := b.s.w.Lesson
	prog.Run(b.values, &b.s.tape)
	prog.Differentiate(&b.s.tape)
	for p := range prog.Len() {
		v, slope := b.s.tape.Values[p], b.s.tape.Slopes[p]
		i := prog.Symbol(p)
		switch {
		case kept != nil && kept.hides(prog, p) && (i < 0 || b.s.standing.has(i)):
		case i >= 0 && b.found.has(i):
			d.Add(slope, b.drifts[i])
		case i >= 0 && b.s.standing.has(i):
			d.Add(slope, b.s.typedDrift(i, b.values[i]))
		case i >= 0 && l.prep.givens.has(i), prog.Constant(p):
		case i >= 0:
			d.Add(slope, l.prep.of[i].drift)
		case p < prog.Len()-1: // the last is rounded as it is written
			d.Round(slope, v, dimensionAt(prog, p))
		}
	}
	return d
}

// hides tells whether the value at place p of prog was kept to few digits, or goes
// into one that was.
func (r *Rounded) hides(prog *expr.Program, p int) bool {
	if i := prog.Symbol(p); i >= 0 && r.of.has(i) {
		return true
	}
	under := func(k int) bool { return p <= k && p > k-expr.Size(prog.Node(k)) }
	if !r.several {
		return r.place > 0 && under(r.place)
	}
	for k := p; k < prog.Len(); k++ { // every sine, cosine and tangent
		if expr.IsTrig(prog.Node(k)) && under(k) {
			return true
		}
	}
	return false
}

// came is the value of the formula that was just run.
func (b *blurring) came(prog *expr.Program) float64 { return b.s.tape.Values[prog.Len()-1] }

// driftInHead is how quantity i may be off when it is found rightly in the head, by
// any of its routes as often as they are taken: by what is rounded on the way,
// and its own value. What a route reads is found by the first route to it.
func (l *Lesson) driftInHead(i int) writing.Drift {
	var all writing.Drift
	on, sum := set(0).with(i), 0.0
	for j := range l.prep.of[i].routes {
		d, share := l.byRoute(i, j, on), l.prep.of[i].routes[j].share
		all.Four += share * d.Four
		all.Three += share * d.Three
		sum += share
	}
	if sum > 0 {
		all.Four, all.Three = all.Four/sum, all.Three/sum
	}
	return all
}

// byRoute is how quantity i may be off that is found by its route j, in which
// nothing passes through on.
func (l *Lesson) byRoute(i, j int, on set) writing.Drift {
	q, f := &l.Quantities[i], &l.prep.of[i].routes[j]
	var d writing.Drift
	if sumsAlone(q.Routes[j].Tree, l) {
		return d
	}
	for _, in := range f.inner {
		d.Round(in.slope, in.value, in.dim)
	}
	for _, in := range f.inputs {
		if route := l.firstRoute(in.quantity, on); route >= 0 {
			d.Add(in.slope, l.byRoute(in.quantity, route, on.with(in.quantity)))
		}
	}
	d.Round(1, q.True, q.Dim)
	return d
}

// firstRoute is the first route to quantity i that does not pass through on;
// −1 where there is none, as for a given.
func (l *Lesson) firstRoute(i int, on set) int {
	return slices.IndexFunc(l.prep.of[i].routes, func(f routeFacts) bool { return f.reads&on == 0 })
}

// typedDrift is what an entry that is read as v hides of the value behind it:
// of a right one, how far it is from the truth; of a wrong one, the digits not
// written.
func (s *state) typedDrift(i int, v float64) writing.Drift {
	q := &s.w.Lesson.Quantities[i]
	if v != s.own[i] { // not read as typed
		return writing.Drift{}
	}
	if !s.wrong.has(i) {
		return writing.Drift{Shift: q.True - v}
	}
	if a := s.w.Standing(q.Name); a != nil && len(a.Reading.Halves) > 0 {
		half := a.Reading.Halves[0]
		return writing.Drift{Held: half * half / 3}
	}
	return writing.Drift{}
}
