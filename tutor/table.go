package tutor

import (
	"math"
	"slices"
	"sort"

	"closingside/statics"
	"closingside/statics/expr"
)

// guess is one hypothesis about a quantity's value: an outcome of this or an
// earlier step, a second slip after it, and the steps that lead on from it.
type guess struct {
	value, weight float64
	first         *outcome // predicts the value that the plan starts from
	plan          *plan    // nil where first is of the quantity itself
	second        *variant // the slip in the last step of the plan, or nil
}

// table is every guess about a quantity as the work stands, in order of value,
// those equal in value together.
type table struct {
	guesses []guess
	cells   []cell
	total   float64 // of the weights
	s       *state
	q       int
}

// cell is the guesses of one value.
type cell struct {
	value, weight float64
	from, to      int32
	spread        *spread // once worked out
}

// newTable sorts and merges guesses about quantity q. The true value itself is
// dropped.
func (s *state) newTable(q int, all []guess) *table {
	quantity := &s.w.Lesson.Quantities[q]
	t := &table{s: s, q: q, guesses: make([]guess, 0, len(all)), cells: make([]cell, 0, len(all))}
	order := make([]place, 0, len(all))
	same := quantity.alike()
	for i := range all {
		all[i].value = quantity.fold(all[i].value)
		if quantity.gap(all[i].value, quantity.True) > same {
			order = append(order, place{all[i].value, int32(i)})
		}
	}
	sortPlaces(order)
	for _, at := range order {
		t.guesses = append(t.guesses, all[at.index])
		n := len(t.cells)
		if n == 0 || at.value-t.guesses[t.cells[n-1].from].value > same {
			t.cells = append(t.cells, cell{value: at.value, from: int32(len(t.guesses) - 1)})
			n++
		}
		t.cells[n-1].to = int32(len(t.guesses))
	}
	for i := range t.cells {
		c := &t.cells[i]
		c.weight = weightOf(t.guesses[c.from:c.to])
		t.total += c.weight
	}
	if len(all) == 0 {
		t.total = 1
	}
	return t
}

// weightOf is the weight of guesses of one value; each set of ids counts once,
// by its likeliest way.
func weightOf(guesses []guess) float64 {
	sum := 0.0
	for i := range guesses {
		g := &guesses[i]
		likeliest := true
		for j := range guesses {
			h := &guesses[j]
			if i != j && (h.weight > g.weight || h.weight == g.weight && j < i) && g.says(h) {
				likeliest = false
				break
			}
		}
		if likeliest {
			sum += g.weight
		}
	}
	return sum
}

// says tells whether g and h accuse of the same.
func (g *guess) says(h *guess) bool {
	return g.first.rounded == h.first.rounded && g.after() == h.after() && slices.Equal(g.first.ids, h.first.ids)
}

// after is the id of the second slip, or "".
func (g *guess) after() string {
	if g.second == nil {
		return ""
	}
	return g.second.id
}

// outcome is what the guesses of a cell say together. Its likeliest id, and
// where that was made, are those of the guess of most weight.
func (t *table) outcome(c *cell) outcome {
	var all outcome
	best := -1.0
	ways := t.guesses[c.from:c.to]
	for i := range ways {
		o := ways[i].outcome()
		at, from, rounded, likely := all.at, all.from, all.rounded, all.likely
		if w := ways[i].weight; w > best {
			best, at, from, rounded, likely = w, o.at, o.from, o.rounded, o.lead()
		}
		if i == 0 {
			all = o
		} else {
			all.absorb(&o)
		}
		all.at, all.from, all.rounded, all.likely = at, from, rounded, likely
	}
	all.value, all.weight = c.value, c.weight
	return all
}

// outcome is what one guess says.
func (g *guess) outcome() outcome {
	o := *g.first
	if g.plan != nil {
		o.exact = o.exact && g.plan.whole
	}
	if g.second == nil {
		return o
	}
	o.ids, o.forms, o.likely = make([]string, 0, len(g.first.ids)), nil, ""
	for _, id := range g.first.ids {
		if mayPair(id) && id != g.second.id {
			o.ids = append(o.ids, joined(id, g.second.id))
		}
	}
	slices.Sort(o.ids)
	return o
}

// lead is the id that most likely made the value.
func (o *outcome) lead() string {
	if o.likely != "" {
		return o.likely
	}
	return o.ids[0]
}

// outcomes lists what the table predicts, in order of value.
func (t *table) outcomes() []outcome {
	out := make([]outcome, len(t.cells))
	for i := range t.cells {
		out[i] = t.outcome(&t.cells[i])
	}
	return out
}

// exact tells whether no rounding blurs the value of a cell.
func (t *table) exact(c *cell) bool {
	for i := c.from; i < c.to; i++ {
		g := &t.guesses[i]
		if !g.first.exact || g.second != nil && !g.second.whole || g.plan != nil && !g.plan.whole {
			return false
		}
	}
	return true
}

// near visits the cells within reach of v, around the circle for an angle.
func (t *table) near(v, reach float64, visit func(c *cell)) {
	q := &t.s.w.Lesson.Quantities[t.q]
	v = q.fold(v)
	from := func(lo, hi float64) {
		i := sort.Search(len(t.cells), func(i int) bool { return t.cells[i].value >= lo })
		for ; i < len(t.cells) && t.cells[i].value <= hi; i++ {
			visit(&t.cells[i])
		}
	}
	from(v-reach, v+reach)
	if !q.circular() {
		return
	}
	low := 0.0
	if q.Turns {
		low = -180
	}
	if v-reach < low {
		from(v-reach+360, low+360)
	}
	if v+reach > low+360 {
		from(low, v+reach-360)
	}
}

// holds tells whether the table has the value v.
func (t *table) holds(v float64) bool {
	found := false
	t.near(v, t.s.w.Lesson.Quantities[t.q].alike(), func(*cell) { found = true })
	return found
}

// spread is the standard deviation of the value for students who keep 4 or 3
// digits on the way.
type spread struct{ four, three float64 }

// habits are the digits kept on the way that spread speaks of.
var habits = [2]Digits{{4, 2}, {3, 1}}

// blur is how rounding every intermediate at 4 and at 3 digits moves the value
// of a cell, from the slip to the entry: each is uniform within half a unit,
// so its variance is a third of the square.
func (t *table) blur(c *cell) spread {
	if c.spread != nil {
		return *c.spread
	}
	g := &t.guesses[c.from]
	var four, three float64
	if g.first.of != 0 && g.plan == nil {
		four, three = t.blurredBefore(g.first)
	} else if g.first.prog != nil {
		b := blurring{s: t.s, values: slices.Clone(g.first.start)}
		if g.plan == nil {
			four, three = b.last(g.first.prog)
		} else {
			four, three = b.along(g)
		}
	}
	c.spread = &spread{math.Sqrt(four), math.Sqrt(three)}
	return *c.spread
}

// blurredBefore is how rounding moves a value that was written down wrongly:
// that of the route most take, times what the slip makes of a small change.
func (t *table) blurredBefore(o *outcome) (four, three float64) {
	routes := t.s.w.Lesson.ready().routes[t.q]
	if len(routes) == 0 {
		return 0, 0
	}
	b := blurring{s: t.s, values: slices.Clone(t.s.own)}
	four, three = b.last(routes[0].prog)
	slope := o.came() / o.of
	if size := math.Abs(slope); size > 0.5 && size < 2 { // digits exchanged, not a factor
		slope = 1
	}
	return four * slope * slope, three * slope * slope
}

// blurring follows rounding through the steps of a plan.
type blurring struct {
	s      *state
	values []float64
	found  set // quantities the plan works out
	error  [64][2]float64
}

func (b *blurring) along(g *guess) (four, three float64) {
	l := b.s.w.Lesson
	at := g.plan.at
	if !l.Quantities[at].Given {
		four, three = b.last(g.first.prog)
		b.keep(at, g.first.came(), four, three)
	}
	copy(b.values, b.s.own)
	b.values[at], b.found = g.first.came(), b.found.with(at)
	for i := range g.plan.steps {
		st := &g.plan.steps[i]
		prog := st.prog
		if g.second != nil && i == len(g.plan.steps)-1 {
			prog = g.second.prog
		}
		four, three = b.last(prog)
		b.values[st.quantity] = st.work(b.values, &b.s.tape)
		if i < len(g.plan.steps)-1 {
			b.keep(st.quantity, b.values[st.quantity], four, three)
		}
	}
	return four, three
}

// keep notes that a quantity is written down on the way.
func (b *blurring) keep(i int, v, four, three float64) {
	dim := b.s.w.Lesson.Quantities[i].Dim
	for h, e := range [2]float64{four, three} {
		b.error[i][h] = e + variance(1, habits[h], dim, v)
	}
	b.found = b.found.with(i)
}

// last is the variance of a formula's value.
func (b *blurring) last(prog *expr.Program) (four, three float64) {
	if prog == nil {
		return 0, 0
	}
	l := b.s.w.Lesson
	prog.Run(b.values, &b.s.tape)
	prog.Differentiate(&b.s.tape)
	for p := range prog.Len() - 1 {
		v, slope := b.s.tape.Values[p], b.s.tape.Slopes[p]
		i := prog.Symbol(p)
		switch {
		case i >= 0 && b.found.has(i):
			if !math.IsNaN(slope) {
				four += slope * slope * b.error[i][0]
				three += slope * slope * b.error[i][1]
			}
			continue
		case i >= 0 && (l.Quantities[i].Given || b.s.standing.has(i)):
			continue
		}
		dim := dimension(prog.Node(p))
		if i >= 0 {
			dim = l.Quantities[i].Dim
		} else if isConstant(prog.Node(p)) {
			continue
		}
		four += variance(slope, habits[0], dim, v)
		three += variance(slope, habits[1], dim, v)
	}
	return four, three
}

func isConstant(n expr.Node) bool {
	switch n.(type) {
	case expr.Num, expr.Ang, expr.Pi:
		return true
	}
	return false
}

func variance(slope float64, d Digits, dim statics.Dimension, v float64) float64 {
	e := slope * d.halfUnit(dim, v)
	if math.IsNaN(e) {
		return 0
	}
	return e * e / 3
}
