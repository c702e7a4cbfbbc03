package tutor

import (
	"math"
	"slices"
	"sort"

	"closingside/tutor/lesson"
	"closingside/tutor/writing"
)

// guess is one hypothesis about a quantity's value: an outcome of this or an
// earlier step, and the steps that lead on from it.
type guess struct {
	value, weight float64
	first         *outcome // predicts the value that the plan starts from
	plan          *plan    // nil where first is of the quantity itself
}

// raw is the value as it comes out.
func (g *guess) raw() float64 {
	if g.plan == nil && g.first.raw != 0 {
		return g.first.raw
	}
	return g.value
}

// table is every guess about a quantity as the work stands, in order of value,
// those equal in value together.
type table struct {
	guesses []guess
	cells   []cell
	total   float64 // of the weights
	ahead   int     // so many cells are blurred, see blurAhead
	s       *state
	q       int
}

// cell is the guesses of one value.
type cell struct {
	value, weight float64
	exact         float64 // share of its guesses, by weight, that no rounding blurs
	from, to      int32
	below         bool // an angle of the figure that comes out below zero
	blurred       bool // spread is worked out
	spread        writing.Spread
}

// newTable sorts and merges guesses about quantity q. The true value itself is
// dropped, and so is what is no number.
func (s *state) newTable(q int, all []guess) *table {
	quantity := &s.w.Lesson.Quantities[q]
	order := make([]place, 0, len(all))
	same := quantity.Epsilon()
	below := make([]bool, len(all))
	for i := range all {
		below[i] = quantity.IsNegativeAngle(all[i].raw())
		all[i].value = quantity.Fold(all[i].value)
		if off := quantity.FoldedDistance(all[i].value, quantity.True); off > same && !math.IsInf(off, 0) { // divided by an entry of 0
			order = append(order, placeOf(quantity, all[i].value, below[i], i))
		}
	}
	sortPlaces(order)
	t := &table{s: s, q: q, guesses: make([]guess, 0, len(order)), cells: make([]cell, 0, distinct(order, same))}
	first := math.Inf(-1)
	for _, at := range order {
		t.guesses = append(t.guesses, all[at.index])
		if at.value-first > same {
			first = at.value
			t.cells = append(t.cells, cell{value: all[at.index].value, below: below[at.index], from: int32(len(t.guesses) - 1)})
		}
		t.cells[len(t.cells)-1].to = int32(len(t.guesses))
	}
	for i := range t.cells {
		c := &t.cells[i]
		ways := t.guesses[c.from:c.to]
		if k := slices.IndexFunc(ways, func(g guess) bool { return !g.first.written }); k > 0 { // what is written down wrongly comes first alone only
			ways[0], ways[k] = ways[k], ways[0]
		}
		c.weight, c.exact = weightOf(ways), exactIn(ways)
		t.total += c.weight
	}
	if len(t.cells) == 0 {
		t.total = 1
	}
	return t
}

// distinct counts values in order, those no further than same from the first of
// them as one.
func distinct(order []place, same float64) int {
	n, first := 0, math.Inf(-1)
	for _, at := range order {
		if at.value-first > same {
			n, first = n+1, at.value
		}
	}
	return n
}

// madeOnce is the table at t, made when first asked for.
func madeOnce(t **table, make func() *table) *table {
	if *t == nil {
		*t = make()
	}
	return *t
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
	return g.first.rounded == h.first.rounded && slices.Equal(g.first.ids, h.first.ids)
}

// unlikelyHere is the share of the likeliest guess's weight below which a slip in
// the step itself is not asked about before one further up (judgement).
const unlikelyHere = 0.25

// outcome is what the guesses of a cell say together. Its likeliest id, and
// where that was made, are those of the guess of most weight; but a slip in the
// step itself is asked about first, where it is the same or hardly less likely.
func (t *table) outcome(c *cell) outcome {
	var all outcome
	var named []string // by the likeliest way
	best := -1.0
	ways := t.guesses[c.from:c.to]
	for i := range ways {
		o := ways[i].outcome()
		at, from, rounded, likely := all.at, all.from, all.rounded, all.likely
		if w := ways[i].weight; w > best {
			best, at, from, rounded, likely, named = w, o.at, o.from, o.rounded, o.lead(), o.ids
		}
		if i == 0 {
			all = o
		} else {
			all.absorb(&o)
		}
		all.at, all.from, all.rounded, all.likely = at, from, rounded, likely
	}
	here := t.s.w.Lesson.Quantities[t.q].Name
	for i := range ways {
		o := ways[i].first
		if o.at == here && o.from == "" && (share(o.ids, named) || ways[i].weight >= unlikelyHere*best) {
			all.at, all.likely = here, o.lead()
			break
		}
	}
	all.value, all.weight, all.forms = c.value, c.weight, t.forms(c)
	all.start = t.s.values(&all)
	all.unentered = t.unentered(c)
	return all
}

// forms lists the formulas behind the guesses of a cell.
func (t *table) forms(c *cell) []form {
	ways, n := t.guesses[c.from:c.to], 0
	for i := range ways {
		n += len(ways[i].first.forms)
	}
	all := make([]form, 0, n)
	for i := range ways {
		all = append(all, ways[i].first.forms...)
	}
	return all
}

// unentered is what the likeliest of the guesses of a cell comes to from true
// values in the place of those entered; 0 where nothing is entered, or where it
// is not worked from entries.
func (t *table) unentered(c *cell) float64 {
	g := t.likeliest(c)
	s, o := t.s, g.first
	if s.standing == 0 || o.prog == nil || o.basis != ofEntries {
		return 0
	}
	copy(s.scratch, s.truth)
	v := o.prog.Run(s.scratch, &s.tape)
	if g.plan != nil {
		v = g.plan.run(s.scratch, v, &s.tape)
	}
	return t.s.w.Lesson.Quantities[t.q].Fold(v)
}

// likeliest is the guess of a cell of most weight.
func (t *table) likeliest(c *cell) *guess {
	best := &t.guesses[c.from]
	for i := c.from; i < c.to; i++ {
		if t.guesses[i].weight > best.weight {
			best = &t.guesses[i]
		}
	}
	return best
}

// outcome is what one guess says.
func (g *guess) outcome() outcome {
	o := *g.first
	if g.plan != nil {
		o.exact = g.exact()
	}
	return o
}

// outcomes lists what the table predicts, in order of value.
func (t *table) outcomes() []outcome {
	out := make([]outcome, len(t.cells))
	for i := range t.cells {
		out[i] = t.outcome(&t.cells[i])
	}
	return out
}

// exact is the share of a guess's ways whose value no rounding blurs.
func (g *guess) exact() float64 {
	if g.plan != nil && !g.plan.whole {
		return 0
	}
	return g.first.exact
}

// exactIn is the share, by weight, of guesses whose value no rounding blurs.
func exactIn(guesses []guess) float64 {
	exact, blurred := 0.0, 0.0
	for i := range guesses {
		e := guesses[i].exact()
		exact += e * guesses[i].weight
		blurred += (1 - e) * guesses[i].weight
	}
	if blurred == 0 {
		return 1
	}
	return exact / (exact + blurred)
}

// near visits the cells within reach of v, around the circle for an angle.
func (t *table) near(v, reach float64, visit func(c *cell)) {
	inRange(&t.s.w.Lesson.Quantities[t.q], v, reach, func(lo, hi float64) {
		i := sort.Search(len(t.cells), func(i int) bool { return t.cells[i].value >= lo })
		for ; i < len(t.cells) && t.cells[i].value <= hi; i++ {
			visit(&t.cells[i])
		}
	})
}

// inRange gives the stretches of folded values that lie within reach of v.
func inRange(q *lesson.Quantity, v, reach float64, from func(lo, hi float64)) {
	raw := v
	v = q.Fold(v)
	from(v-reach, v+reach)
	if !q.IsAngle() {
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
	if turned := raw + 360; raw < 0 && raw > -360 && !q.Turns && math.Abs(turned-v) > 2*reach {
		from(turned-reach, turned+reach)
	}
}
