package tutor

import (
	"math"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// Some wrong values accuse nobody: a right value written with too few digits,
// and what correct rounding at the digits asked comes to where the problem
// multiplies it beyond the band's limit.

// onlyRounded is what was rounded too soon where an entry is the one or the
// other; nil where it is not.
func (w *Work) onlyRounded(q *lesson.Quantity, r entry.Reading) (short, beyond *Rounded) {
	switch {
	case r.Form == entry.Expression:
		beyond = w.roundedNumber(q, r)
	case r.Form != entry.Number || len(r.Halves) == 0:
		return nil, nil
	default:
		short, beyond = w.shortened(q, r), w.beyondLimit(q, r)
	}
	if beyond == nil {
		beyond = w.coarseEntry(q, r)
	}
	return short, beyond
}

// coarseEntry is the accepted entry whose rounding did most to a value that
// follows rightly from accepted entries; nil where none does.
func (w *Work) coarseEntry(q *lesson.Quantity, r entry.Reading) *Rounded {
	half := w.Settings.DigitsOf(q).HalfUnit(q.Dim, r.Value)
	if w.unrounded(r) {
		half = exactly * math.Abs(r.Value)
	}
	l := w.follows(q, r.Value, half)
	if l == nil {
		return nil
	}
	most := w.coarsest(l)
	if most == nil {
		return nil
	}
	a, d := w.Standing(most.Name).Reading, w.Settings.Work
	o := &Rounded{What: w.Lesson.SymbolText(most.Name), Digits: d.Magnitude, Keep: d.Magnitude, angle: most.IsAngle()}
	switch {
	case o.angle:
		o.Digits, o.Keep = a.Decimals, d.Angle
	case a.Digits > 0:
		o.Digits = a.Digits
	}
	o.Keep = max(o.Keep, o.Digits+1)
	return o
}

// shortened is q itself where the entry is its true value rounded to the digits
// typed, fewer than asked, or a value within the band rounded to hardly fewer.
func (w *Work) shortened(q *lesson.Quantity, r entry.Reading) *Rounded {
	u, ok := statics.UnitBySymbol(r.Unit)
	own, dim := w.Lesson.UnitOf(q), q.Dim
	switch {
	case !ok || u.Dim != q.Dim || math.IsNaN(q.True):
		u = own
	case q.IsAngle() && u.Factor != own.Factor: // radians have significant digits
		dim = statics.DimRatio
	}
	scale := own.Factor / u.Factor // the digits are those of the unit written
	truth := q.True
	if q.IsAngle() {
		truth += 360 * math.Round((r.Value-q.True)/360)
	}
	coarsest, asked := r.Halves[len(r.Halves)-1], w.Settings.DigitsOf(q)
	for _, d := range tooFew(&w.Settings, dim, truth*scale) {
		if d.angle && d.digits >= asked.Angle || !d.angle && d.digits >= asked.Magnitude {
			break // as many as asked are not too few
		}
		half := 0.5 * math.Pow10(-d.digits)
		if !d.angle {
			half = 0.5 * math.Pow10(lesson.DecimalExponent(truth*scale)+1-d.digits) / scale
		}
		if half > coarsest*(1+1e-9) {
			continue
		}
		rounded := math.Abs(d.value/scale-truth) <= half*(1+1e-9) // not cut
		typed := rounded && math.Abs(d.value/scale-r.Value) <= 1e-9*math.Abs(truth)
		if typed || d.digits == d.keep-1 && q.Distance(r.Value, q.True) <= half+w.Band(q).Half {
			return keptShort(&w.Settings, q, w.Lesson.SymbolText(q.Name), d)
		}
	}
	return nil
}

// farthest bounds what correct rounding is followed to: beyond it the way can't
// be worked at these digits at all, and anything is as likely.
const (
	farthest      = 8    // times the limit
	beyondLargest = 0.01 // of the largest force, for a component
)

// beyondLimit is the value on the way whose rounding may have carried the
// entry beyond the band's limit, every value being kept to the digits asked.
func (w *Work) beyondLimit(q *lesson.Quantity, r entry.Reading) *Rounded {
	return w.keptTo(q, r, w.Settings.Work, w.Settings.DigitsOf(q).HalfUnit(q.Dim, q.True))
}

// oneDigitLess is the value on the way whose rounding did most to an entry that
// is written with a digit less than asked, where every value on the way may have
// been kept so: whoever writes so works so.
func (w *Work) oneDigitLess(q *lesson.Quantity, r entry.Reading) *Rounded {
	d := lesson.Digits{Magnitude: w.Settings.Work.Magnitude - 1, Angle: w.Settings.Work.Angle - 1}
	if r.Form != entry.Number || len(r.Halves) == 0 || d.Magnitude < 3 || d.Angle < 1 {
		return nil
	}
	half := d.HalfUnit(q.Dim, r.Value)
	if math.Abs(math.Log10(r.Halves[0]/half)) > 1e-6 {
		return nil
	}
	return w.keptTo(q, r, d, half)
}

// keptTo is the value on the way whose rounding may have carried the entry, half
// a unit of which is written, beyond the band's limit, every value being kept to
// so many digits.
func (w *Work) keptTo(q *lesson.Quantity, r entry.Reading, d lesson.Digits, written float64) *Rounded {
	limit, off := w.limit(q), q.Distance(r.Value, q.True)
	most := limit
	if q.Signed { // it may be the small difference of large ones
		most = max(most, beyondLargest*w.largest())
	}
	if off > farthest*most {
		return nil
	}
	if d != w.Settings.Work {
		limit = w.Band(q).Half
	}
	var best *Rounded
	least := math.Inf(1)
	for j := range q.Routes {
		if !q.Routes[j].Fits(w.Settings.Method) {
			continue
		}
		s := sources{w: w, q: q, kept: d}
		half := s.reach(j) + written
		if half <= limit || off > half || half >= least || s.worst == 0 {
			continue
		}
		most := s.most
		most.What = w.Lesson.called(s.of, s.tree, s.at)
		most.among = 2*s.worst < off
		most.Keep = most.Digits + max(1, int(math.Ceil(math.Log10(half/limit))))
		best, least = &most, half
	}
	return best
}

// sources adds up what rounding on the way may do, without a limit, and keeps
// what may do most.
type sources struct {
	w     *Work
	q     *lesson.Quantity
	kept  lesson.Digits // of every value on the way
	all   width
	worst float64
	most  Rounded // but for its name, which is that of
	of    *lesson.Quantity
	tree  expr.Node // and, in the formula for it,
	at    expr.Node
}

// reach is how far correct rounding may carry the quantity by its route j.
func (s *sources) reach(j int) float64 {
	w := s.w
	i := w.Lesson.index[s.q.Name]
	f := &w.Lesson.ready().of[i].routes[j]
	on := set(0).with(i)
	if f.crest == nil {
		s.formula(s.q, s.q.Routes[j].Tree, f.sensitivity, 1, on)
		return s.all.half()
	}
	s.formula(s.q, f.crest.sine, f.crest.sensitivity, 1, on)
	x := expr.Eval(f.crest.sine, w.Lesson.Truth)
	s.add(s.q, s.q.Routes[j].Tree, inner{node: f.crest.sine, dim: statics.DimRatio, value: min(x, nearOne), slope: 1})
	return inverseSineOff(x, s.all.half())
}

// add notes a value that is rounded on the way, in a formula for q; its slope is how
// much of its error arrives.
func (s *sources) add(q *lesson.Quantity, tree expr.Node, p inner) {
	d := s.kept
	e := p.slope * d.HalfUnit(p.dim, p.value)
	if math.IsNaN(e) || math.IsInf(e, 0) {
		return
	}
	s.all.add(1, e)
	if p.fixed = true; e <= s.worst || p.exact(d) { // what rounding leaves as it is can't have done it
		return
	}
	s.worst, s.of, s.tree, s.at = e, q, tree, p.node
	s.most = Rounded{Digits: d.Magnitude}
	if p.dim == statics.DimAngle {
		s.most = Rounded{Digits: d.Angle, angle: true}
	}
}

// formula follows what is worked out in a formula for q, and what it reads.
func (s *sources) formula(q *lesson.Quantity, tree expr.Node, of sensitivity, slope float64, on set) {
	for _, p := range of.inner {
		if !p.exact(s.kept) {
			p.slope *= slope
			s.add(q, tree, p)
		}
	}
	for _, in := range of.inputs {
		s.input(in.quantity, slope*in.slope, on)
	}
}

// input follows a value that a formula reads: as typed where it was entered,
// otherwise found in the head.
func (s *sources) input(i int, slope float64, on set) {
	in := &s.w.Lesson.Quantities[i]
	off, entered := s.w.entered(in)
	switch {
	case in.Given, on.has(i), math.IsNaN(slope):
		return
	case entered:
		s.all.sum += slope * off
		s.all.variance += slope * off * slope * off
		return
	}
	s.add(in, nil, inner{node: expr.S(in.Name), dim: in.Dim, value: in.True, slope: slope})
	widest, route := -1.0, -1
	for j, f := range s.w.Lesson.ready().of[i].routes {
		if !f.taken {
			continue
		}
		known := entries{offset: s.w.entered}
		if one := s.w.sum(f.sensitivity, on.with(i), known).half(); one > widest {
			widest, route = one, j
		}
	}
	if route >= 0 {
		f := &s.w.Lesson.prep.of[i].routes[route]
		s.formula(in, in.Routes[route].Tree, f.sensitivity, slope, on.with(i))
	}
}
