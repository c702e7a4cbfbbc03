package tutor

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// spread is what is not known of the value that a hypothesis predicts: how far
// students move it who keep 4 or 3 digits on the way, and what comes out for
// those who go on from what the calculator holds rather than from what they
// wrote. Standard deviations; shift is a difference.
type spread struct {
	four, three float64
	shift       float64 // from entries as typed to the right values behind them
	held        float64 // of the digits that wrong entries don't show
}

// habits are the digits kept on the way that spread speaks of.
var habits = [2]lesson.Digits{{Magnitude: 4, Angle: 2}, {Magnitude: 3, Angle: 1}}

// drift is how a value may be off: variances, and the shift.
type drift struct{ four, three, held, shift float64 }

func (d *drift) add(slope float64, o drift) {
	if math.IsNaN(slope) {
		return
	}
	sq := slope * slope
	d.four += sq * o.four
	d.three += sq * o.three
	d.held += sq * o.held
	d.shift += slope * o.shift
}

// blur is the spread of a cell, from the slip to the entry, over the ways it
// comes about: each rounding is uniform within half a unit, so its variance is a
// third of the square.
func (t *table) blur(c *cell) spread {
	if c.blurred {
		return c.spread
	}
	var all drift
	sum := 0.0
	ways := t.guesses[c.from:c.to]
	for i := range ways[:min(len(ways), maxBlurred)] {
		d, weight := t.drift(&ways[i]), ways[i].weight
		all.four += weight * d.four
		all.three += weight * d.three
		all.held += weight * d.held
		all.shift += weight * d.shift
		sum += weight
	}
	c.spread = drift{all.four / sum, all.three / sum, all.held / sum, all.shift / sum}.spread()
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
			if !t.exact(&some[i]) {
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
func (t *table) drift(g *guess) drift {
	switch {
	case g.first.written && g.plan == nil:
		return t.blurredBefore(g.first)
	case g.first.prog == nil:
		return drift{}
	}
	b := t.s.blurringFrom(t.s.values(g.first))
	if g.plan == nil {
		return b.last(g.first.prog)
	}
	return b.along(g)
}

func (d drift) spread() spread {
	return spread{math.Sqrt(d.four), math.Sqrt(d.three), d.shift, math.Sqrt(d.held)}
}

// blurredBefore is the drift of a value that was written down wrongly: that of
// the route most take, times what the slip makes of a small change.
func (t *table) blurredBefore(o *outcome) drift {
	routes := t.s.w.Lesson.ready().of[t.q].routes
	if len(routes) == 0 {
		return drift{}
	}
	b := t.s.blurringFrom(t.s.own)
	slope := o.came() / o.of
	if size := math.Abs(slope); size > 0.5 && size < 2 { // digits exchanged, not a factor
		slope = 1
	}
	var d drift
	d.add(slope, b.last(routes[0].prog))
	return d
}

// blurring follows drift through the steps of a plan.
type blurring struct {
	s      *state
	values []float64
	found  set // quantities the plan works out
	drifts [64]drift
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

func (b *blurring) along(g *guess) drift {
	l := b.s.w.Lesson
	at := g.plan.at
	if !l.Quantities[at].Given {
		b.keep(at, g.first.came(), b.last(g.first.prog))
	}
	copy(b.values, b.s.own)
	b.values[at], b.found = g.first.came(), b.found.with(at)
	var d drift
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
func (b *blurring) keep(i int, v float64, d drift) {
	d.round(1, v, b.s.w.Lesson.Quantities[i].Dim)
	b.drifts[i] = d
	b.found = b.found.with(i)
}

// last is the drift of a formula's value.
func (b *blurring) last(prog *expr.Program) drift {
	var d drift
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
		case i >= 0 && b.found.has(i):
			d.add(slope, b.drifts[i])
		case i >= 0 && b.s.standing.has(i):
			d.add(slope, b.s.typedDrift(i, b.values[i]))
		case i >= 0 && l.prep.givens.has(i), prog.Constant(p):
		case i >= 0:
			d.add(slope, l.prep.of[i].drift)
		case p < prog.Len()-1: // the last is rounded as it is written
			d.round(slope, v, dimensionAt(prog, p))
		}
	}
	return d
}

// came is the value of the formula that was just run.
func (b *blurring) came(prog *expr.Program) float64 { return b.s.tape.Values[prog.Len()-1] }

// driftInHead is how quantity i may be off when it is found rightly in the head, by
// any of its routes as often as they are taken: by what is rounded on the way,
// and its own value. What a route reads is found by the first route to it.
func (l *Lesson) driftInHead(i int) drift {
	var all drift
	on, sum := set(0).with(i), 0.0
	for j := range l.prep.of[i].routes {
		d, share := l.byRoute(i, j, on), l.prep.of[i].routes[j].share
		all.four += share * d.four
		all.three += share * d.three
		sum += share
	}
	if sum > 0 {
		all.four, all.three = all.four/sum, all.three/sum
	}
	return all
}

// byRoute is how quantity i may be off that is found by its route j, in which
// nothing passes through on.
func (l *Lesson) byRoute(i, j int, on set) drift {
	q, f := &l.Quantities[i], &l.prep.of[i].routes[j]
	var d drift
	if sumsAlone(q.Routes[j].Tree, l) {
		return d
	}
	for _, in := range f.inner {
		d.round(in.slope, in.value, in.dim)
	}
	for _, in := range f.inputs {
		if route := l.firstRoute(in.quantity, on); route >= 0 {
			d.add(in.slope, l.byRoute(in.quantity, route, on.with(in.quantity)))
		}
	}
	d.round(1, q.True, q.Dim)
	return d
}

// firstRoute is the first route to quantity i that does not pass through on;
// −1 where there is none, as for a given.
func (l *Lesson) firstRoute(i int, on set) int {
	return slices.IndexFunc(l.prep.of[i].routes, func(f routeFacts) bool { return f.reads&on == 0 })
}

// round adds what rounding v does, of which so much arrives. Who keeps three
// digits is off by ten times as much as who keeps four.
func (d *drift) round(slope, v float64, dim statics.Dimension) {
	if e := slope * habits[0].HalfUnit(dim, v); !math.IsNaN(e) {
		d.four += e * e / 3
		d.three += 100 * e * e / 3
	}
}

// typedDrift is what an entry that is read as v hides of the value behind it:
// of a right one, how far it is from the truth; of a wrong one, the digits not
// written.
func (s *state) typedDrift(i int, v float64) drift {
	q := &s.w.Lesson.Quantities[i]
	if v != s.own[i] { // not read as typed
		return drift{}
	}
	if !s.wrong.has(i) {
		return drift{shift: q.True - v}
	}
	if a := s.w.Standing(q.Name); a != nil && len(a.Reading.Halves) > 0 {
		half := a.Reading.Halves[0]
		return drift{held: half * half / 3}
	}
	return drift{}
}
