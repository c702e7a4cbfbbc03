package tutor

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// Who works by components in the head may lay the axes as she likes: along one
// of the forces, for one. What rounding does to components depends on how the
// axes lie, and what is accepted must not; so as long as no component is entered,
// every value worked out by components is granted what the worst axes do.

// free tells whether a value other than a component may have been worked along
// any axes: no component is entered.
func (w *Work) free(q *lesson.Quantity) bool {
	if q.Signed {
		return false
	}
	for name := range w.latest {
		if in := w.Lesson.Quantity(name); in.Signed && w.Found(name) {
			return false
		}
	}
	return true
}

// mate is the place of the component that goes with component i, or −1.
func (l *Lesson) mate(i int) int {
	if m, ok := l.index[l.Quantities[i].Mate]; ok {
		return m
	}
	return -1
}

// size is the value of quantity i, of a component the whole force: what it
// comes to along some axis.
func (l *Lesson) size(i int) float64 {
	v := l.Quantities[i].True
	if m := l.mate(i); m >= 0 {
		return math.Hypot(v, l.Quantities[m].True)
	}
	return math.Abs(v)
}

// alongAnyAxes is the sensitivity of route j of quantity i along the axes that
// make the most of a rounding, s being that along the axes as they are.
func (l *Lesson) alongAnyAxes(i, j int, s sensitivity) sensitivity {
	worst := sensitivity{slices.Clone(s.inputs), l.largestInner(i, j, s.inner)}
	for k, in := range s.inputs {
		m := l.mate(in.quantity)
		if other := slices.IndexFunc(s.inputs, func(o input) bool { return o.quantity == m }); other >= 0 { // their slopes turn with the axes as a vector does
			worst.inputs[k].slope = math.Hypot(in.slope, s.inputs[other].slope) / math.Sqrt2
		}
	}
	whole := false // an angle is brought to the range wanted on the way
	for k := range worst.inner {
		worst.inner[k] = l.atWorst(worst.inner[k])
		whole = whole || worst.inner[k].dim == statics.DimAngle
	}
	q := &l.Quantities[i]
	if q.IsAngle() && !whole && l.readsAxes(s.inputs) {
		worst.inner = append(worst.inner, inner{dim: statics.DimAngle, value: q.True, slope: 1})
	}
	return worst
}

// readsAxes tells whether some of the inputs lie as the axes do: a component, or a
// direction that is found.
func (l *Lesson) readsAxes(inputs []input) bool {
	return slices.ContainsFunc(inputs, func(in input) bool {
		q := &l.Quantities[in.quantity]
		return !q.Given && (q.Turns || l.mate(in.quantity) >= 0)
	})
}

// atWorst is a value worked out of components where the axes lie at the
// worst: the square of the whole force; a ratio of components of 1, the angle
// being 45°, where its digits are worth most of the angle.
func (l *Lesson) atWorst(in inner) inner {
	of := func(n expr.Node) (i, mate int) {
		if s, ok := n.(expr.Sym); ok {
			return l.index[s.Name], l.mate(l.index[s.Name])
		}
		return -1, -1
	}
	if x, y, ok := expr.Operands(in.node, expr.OpPow); ok {
		if i, m := of(x); m >= 0 && y == expr.N(2) {
			in.value = l.size(i) * l.size(i)
		}
	}
	if x, y, ok := expr.Operands(in.node, expr.OpDiv); ok {
		i, m := of(x)
		if o, _ := of(y); m >= 0 && o == m && in.slope > 0 {
			v := l.Quantities[i].True / l.Quantities[m].True
			in.slope, in.value = in.slope*(1+v*v)/2, 1 // d tan⁻¹ v/dv = 1/(1 + v²)
		}
	}
	return in
}

// largestInner is what route j of component i works out, each value as large
// as it becomes along some axis.
func (l *Lesson) largestInner(i, j int, worked []inner) []inner {
	all := slices.Clone(worked)
	for k, mate := range l.workedByMate(i, j, len(worked)) {
		all[k] = all[k].alongAny(mate)
	}
	return all
}

// workedByMate is what the same route to the other component works out, one value
// for each of n; nil where that goes another way.
func (l *Lesson) workedByMate(i, j, n int) []inner {
	m := l.mate(i)
	if m < 0 {
		return nil
	}
	route := l.Quantities[m].Route(l.Quantities[i].Routes[j].ID)
	if route == nil {
		return nil
	}
	if worked := l.sensitivity(route.Tree).inner; len(worked) == n {
		return worked
	}
	return nil
}

// alongAny is p as large as it becomes along some axis: the length of the vector
// that it makes with what the other component works out in its place.
func (p inner) alongAny(mate inner) inner {
	if p.dim == statics.DimAngle {
		return p
	}
	p.value = math.Hypot(p.value, mate.value)
	if math.Abs(p.value-1) < 1e-6 { // sine and cosine: below 1
		p.value, p.fixed = nearOne, false
	}
	p.slope = max(p.slope, mate.slope)
	return p
}
