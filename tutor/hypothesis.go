package tutor

import (
	"cmp"
	"math"
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
)

// outcome is a value that a hypothesis predicts for a quantity: the slips
// that were made, where, and by which formula the value comes out.
type outcome struct {
	value  float64
	ids    []string // equal in value; "a+b" for two slips together
	at     string   // quantity in whose finding the (first) slip sits
	weight float64  // prior among outcomes, before normalising
	exact  bool     // whole degrees by sums alone: no rounding blurs it

	from    string   // carried: the first wrong entry it rests on
	rounded *Rounded // early rounding: what was rounded

	plan   *plan     // how the value comes out, for the spread
	start  []float64 // the values it is worked from
	given  float64   // the value of the plan's wrong quantity
	forms  []form    // the formulas behind ids
	spread *spread   // once worked out
}

// form is a formula that a slip leads to.
type form struct {
	id    string
	tree  expr.Node
	route int
}

// spread is the standard deviation of the value for students who keep 4 or 3
// digits on the way.
type spread struct{ four, three float64 }

// perStepInHead is the factor on a hypothesis for each step between the slip
// and the entry that the learner did not write down (judgement).
const perStepInHead = 0.5

// table is every outcome for a quantity as the work stands, in order of value.
type table struct {
	outcomes []outcome
	total    float64 // of the weights
}

// outcomes lists what single slips predict for q, given what the learner has
// entered: slips in finding q itself, and slips in a step done in the head
// before it. Outcomes equal in value are merged, all ids kept.
func (s *state) outcomes(q int) *table {
	if s.tables[q] == nil {
		s.tables[q] = newTable(&s.w.Lesson.Quantities[q], s.tabulate(q))
	}
	return s.tables[q]
}

func (s *state) tabulate(q int) []outcome {
	out := slices.Clone(s.slipsIn(q))
	values := make([]float64, len(s.own))
	for in := range s.own {
		if in == q || s.w.Lesson.ready().givens.has(in) || s.standing.has(in) {
			continue
		}
		for _, p := range s.plans(q, in) {
			out = s.downstream(out, &p, s.slipsIn(in), values)
		}
	}
	return out
}

// downstream appends what a quantity comes to by plan p for every wrong value
// of an earlier one, every later step, done in the head, being right.
func (s *state) downstream(out []outcome, p *plan, wrong []outcome, values []float64) []outcome {
	factor := math.Pow(perStepInHead, float64(1+len(p.steps)))
	keep := *p
	for _, o := range wrong {
		copy(values, s.own)
		v := keep.run(s.w.Lesson, values, o.value)
		if math.IsNaN(v) {
			continue
		}
		out = append(out, outcome{value: v, ids: o.ids, at: o.at, weight: o.weight * factor,
			exact: o.exact && keep.whole, rounded: o.rounded, plan: &keep, start: s.own, given: o.value})
	}
	return out
}

// slipsIn lists what a slip in finding q itself predicts, by any of its
// routes, merged by value.
func (s *state) slipsIn(q int) []outcome {
	if s.direct[q] == nil {
		s.direct[q] = merge(&s.w.Lesson.Quantities[q], s.directly(q))
	}
	return s.direct[q]
}

func (s *state) directly(q int) []outcome {
	l := s.w.Lesson
	quantity := &l.Quantities[q]
	env, truth := l.env(s.own), l.env(s.truth)
	out := []outcome{}
	for i := range l.ready().variants[q] {
		v := &l.ready().variants[q][i]
		if o, ok := predict(quantity, v, s.own, env); ok {
			out = append(out, o)
		}
		if v.reads&s.wrong == 0 {
			continue
		}
		if o, ok := predict(quantity, v, s.truth, truth); ok {
			out = append(out, o)
		}
	}
	return append(out, s.written(q, quantity.True, "", 1)...)
}

// written lists the slips made in writing v down, after another slip (or none).
func (s *state) written(q int, v float64, after string, weight float64) []outcome {
	l := s.w.Lesson
	quantity := &l.Quantities[q]
	var out []outcome
	for i := range catalogue {
		row := &catalogue[i]
		if row.Scope != InAnswer {
			continue
		}
		for _, x := range row.Written(&context{lesson: l, quantity: quantity}, v) {
			out = append(out, outcome{value: x, ids: []string{joined(after, row.ID)}, at: quantity.Name, weight: weight * row.Prior,
				plan: &plan{at: -1, tree: quantity.Routes[0].Tree}, start: s.own})
		}
	}
	return out
}

// predict evaluates a variant; false where it has no value.
func predict(q *Quantity, v *variant, values []float64, env expr.Env) (outcome, bool) {
	value := expr.Eval(v.tree, env)
	if math.IsNaN(value) {
		return outcome{}, false
	}
	return outcome{value: value, ids: []string{v.id}, at: q.Name, weight: v.prior, exact: v.whole,
		plan: &plan{at: -1, tree: v.tree}, start: values, forms: []form{{v.id, v.tree, v.route}}}, true
}

// blur is how rounding every intermediate at 4 and at 3 digits moves the value
// of o: each is uniform within half a unit, so its variance is a third of the
// square.
func (o *outcome) blur(w *Work, q *Quantity) spread {
	if o.spread != nil {
		return *o.spread
	}
	values := slices.Clone(o.start)
	o.plan.run(w.Lesson, values, o.given)
	var four, three float64
	for _, p := range expr.Trace(o.plan.tree, w.Lesson.env(values)) {
		dim := dimension(p.Node)
		switch n := p.Node.(type) {
		case expr.Num, expr.Ang, expr.Pi:
			continue
		case expr.Sym:
			in := w.Lesson.Quantity(n.Name)
			if in.Given || w.Standing(in.Name) != nil {
				continue
			}
			dim = in.Dim
		}
		if p.Site == 0 {
			dim = q.Dim
		}
		four += variance(p.Slope, Digits{4, 2}, dim, p.Value)
		three += variance(p.Slope, Digits{3, 1}, dim, p.Value)
	}
	o.spread = &spread{math.Sqrt(four), math.Sqrt(three)}
	return *o.spread
}

func variance(slope float64, d Digits, dim statics.Dimension, v float64) float64 {
	e := slope * d.halfUnit(dim, v)
	if math.IsNaN(e) {
		return 0
	}
	return e * e / 3
}

// newTable sorts and merges outcomes.
func newTable(q *Quantity, all []outcome) *table {
	t := &table{outcomes: merge(q, all)}
	for i := range t.outcomes {
		t.total += t.outcomes[i].weight
	}
	return t
}

// near lists the outcomes within reach of v, around the circle for an angle.
func (t *table) near(q *Quantity, v, reach float64) []*outcome {
	var out []*outcome
	from := func(lo, hi float64) {
		i, _ := slices.BinarySearchFunc(t.outcomes, lo, func(o outcome, v float64) int { return cmp.Compare(o.value, v) })
		for ; i < len(t.outcomes) && t.outcomes[i].value <= hi; i++ {
			out = append(out, &t.outcomes[i])
		}
	}
	if q.Dim != statics.DimAngle {
		from(v-reach, v+reach)
		return out
	}
	v = wrap(v)
	from(v-reach, v+reach)
	if v-reach < -180 {
		from(v-reach+360, 180)
	}
	if v+reach > 180 {
		from(-180, v+reach-360)
	}
	return out
}

// gap is the distance of two values, around the circle for any angle: a wrong
// angle is the same mistake a turn further on.
func (q *Quantity) gap(a, b float64) float64 {
	if q.Dim == statics.DimAngle {
		return math.Abs(math.Remainder(a-b, 360))
	}
	return math.Abs(a - b)
}

// merge gathers outcomes of the same value: ids are joined, weights added. The
// true value itself is dropped.
func merge(q *Quantity, all []outcome) []outcome {
	if q.Dim == statics.DimAngle {
		for i := range all {
			all[i].value = wrap(all[i].value)
		}
	}
	type place struct { // sorted in place of the outcomes, which are large
		value float64
		index int
	}
	order := make([]place, len(all))
	for i := range all {
		order[i] = place{all[i].value, i}
	}
	slices.SortFunc(order, func(a, b place) int { return cmp.Or(cmp.Compare(a.value, b.value), cmp.Compare(a.index, b.index)) })
	same := 1e-9 * max(1, math.Abs(q.True))
	out := make([]outcome, 0, len(all))
	for _, at := range order {
		o := &all[at.index]
		if q.gap(o.value, q.True) <= same {
			continue
		}
		if n := len(out); n > 0 && o.value-out[n-1].value <= same {
			out[n-1].absorb(o)
			continue
		}
		out = append(out, *o)
	}
	return out
}

// absorb adds another way to the same value.
func (o *outcome) absorb(other *outcome) {
	o.forms = append(slices.Clip(o.forms), other.forms...)
	for _, id := range other.ids {
		if !slices.Contains(o.ids, id) {
			o.ids = append(slices.Clone(o.ids), id)
			o.weight += other.weight
			slices.Sort(o.ids)
		}
	}
	o.exact = o.exact && other.exact
}

// joined is the id of two slips together, in order; b alone where a is "".
func joined(a, b string) string {
	switch {
	case a == "":
		return b
	case a > b:
		a, b = b, a
	}
	return a + "+" + b
}
