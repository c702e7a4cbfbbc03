package tutor

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/entry"
)

// How values rounded too soon are kept (judgement): digits of a magnitude or a
// ratio, decimals of an angle; rounding is more common than cutting off.
const (
	weightRounded = 1.0
	weightCut     = 0.3
)

// farRel and farAngle are how far from the truth early rounding is looked for:
// one digit of a sine may be worth this much of an angle.
const (
	farRel   = 0.25
	farAngle = 25.0
)

// near is the table of early rounding for an entry near the truth; an empty
// one for others.
func (s *state) near(q int, r entry.Reading) *table {
	quantity := &s.w.Lesson.Quantities[q]
	far := farRel * math.Abs(quantity.True)
	if quantity.Dim == statics.DimAngle {
		far = farAngle
	}
	if quantity.gap(r.Value, quantity.True) > far {
		return &table{total: 1}
	}
	return made(&s.rounding, func() *table { return s.early(q) })
}

// early lists what q comes to when one value on the way, steps done in the
// head included, is rounded or cut too soon, and leaves the band.
func (s *state) early(q int) *table {
	quantity := &s.w.Lesson.Quantities[q]
	out := s.roundedIn(q)
	values := make([]float64, len(s.own))
	for in := range s.own {
		if in == q || s.w.Lesson.ready().givens.has(in) || s.standing.has(in) {
			continue
		}
		wrong := s.roundedIn(in)
		for _, p := range s.plans(q, in) {
			out = s.downstream(out, &p, wrong, values)
		}
	}
	band := s.w.Band(quantity)
	out = slices.DeleteFunc(out, func(o outcome) bool { return band.Holds(quantity, o.value) })
	return newTable(quantity, out)
}

// roundedIn lists what q comes to by each of its routes when one value worked
// out in it, one read without having been entered, or q itself is rounded.
func (s *state) roundedIn(q int) []outcome {
	l := s.w.Lesson
	quantity := &l.Quantities[q]
	env := l.env(s.own)
	var out []outcome
	for j := range quantity.Routes {
		tree := quantity.Routes[j].Tree
		add := func(what string, d kept, v float64) {
			if !math.IsNaN(v) {
				out = append(out, outcome{value: v, at: quantity.Name, weight: d.weight, plan: &plan{at: -1, tree: tree}, start: s.own,
					rounded: &Rounded{What: what, Digits: d.digits, Keep: d.keep, angle: d.angle}})
			}
		}
		for _, p := range expr.Trace(tree, env) {
			sym, isSym := p.Node.(expr.Sym)
			switch p.Node.(type) {
			case expr.Num, expr.Ang, expr.Pi:
				continue
			}
			dim := dimension(p.Node)
			if isSym {
				in := l.Quantity(sym.Name)
				if in.Given || s.standing.has(l.index[sym.Name]) {
					continue
				}
				dim = in.Dim
			} else if p.Site == 0 {
				continue
			}
			what := l.called(quantity, tree, p)
			for _, d := range s.w.Settings.tooFew(dim, p.Value) {
				if isSym {
					add(what, d, expr.Eval(tree, func(name string) float64 {
						if name == sym.Name {
							return d.value
						}
						return env(name)
					}))
					continue
				}
				add(what, d, expr.EvalEach(tree, env, func(_ expr.Node, site int, v float64) float64 {
					if site == p.Site {
						return d.value
					}
					return v
				}))
			}
		}
	}
	return out
}

// called names a value on the way: the sine of the angle where an inverse sine
// follows, otherwise its formula.
func (l *Lesson) called(q *Quantity, tree expr.Node, p expr.Point) string {
	n := tree
	if _, r, ok := bin(n, expr.OpSub); ok && isInverse(r) {
		n = r
	}
	if k, ok := n.(expr.Fn); ok && isInverse(n) && k.X == p.Node && q.Dim == statics.DimAngle && !q.Turns {
		if key, ok := forwardKey[k.Func]; ok {
			return expr.Plain(expr.Fn{Func: key, X: expr.S(q.Name)}, l.Symbol)
		}
	}
	return expr.Plain(p.Node, l.Symbol)
}

var forwardKey = map[expr.Func]expr.Func{expr.FnAsin: expr.FnSin, expr.FnAcos: expr.FnCos, expr.FnAtan: expr.FnTan}

// kept is a value kept to too few digits.
type kept struct {
	value        float64
	digits, keep int // significant digits, or decimals of an angle
	angle        bool
	weight       float64
}

// tooFew lists what v becomes when kept to fewer digits than the settings ask,
// rounded or cut.
func (s *Settings) tooFew(dim statics.Dimension, v float64) []kept {
	var out []kept
	from, keep := 1, s.Work.Magnitude
	if dim == statics.DimAngle {
		from, keep = 0, s.Work.Angle
	}
	for n := from; n < keep; n++ {
		places := n
		if dim != statics.DimAngle {
			places = n - 1 - leading(v)
		}
		rounded, cut := roundPlaces(v, places), cutPlaces(v, places)
		if rounded != v {
			out = append(out, kept{rounded, n, keep, dim == statics.DimAngle, weightRounded})
		}
		if cut != rounded && cut != v {
			out = append(out, kept{cut, n, keep, dim == statics.DimAngle, weightCut})
		}
	}
	return out
}

// cutPlaces is v with the digits beyond so many places left off.
func cutPlaces(v float64, places int) float64 {
	p := pow10(-places)
	c := math.Trunc(v/p) * p
	return roundPlaces(c, places)
}
