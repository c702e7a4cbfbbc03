package tutor

import (
	"maps"
	"math"
	"slices"
	"strings"

	"closingside/statics/expr"
)

// coef is a coefficient, and by how much the rounding of the numbers in it may
// have moved it.
type coef struct{ value, off float64 }

func (a coef) plus(b coef) coef { return coef{a.value + b.value, a.off + b.off} }

func (a coef) times(b coef) coef {
	return coef{a.value * b.value, math.Abs(a.value)*b.off + math.Abs(b.value)*a.off}
}

// terms is a sum of products of unknowns: for each product its coefficient.
// The product of nothing, "", stands for what is known.
type terms map[string]coef

const (
	maxTerms  = 24 // of a sum that is still told apart; an equation of statics has six
	maxFactor = 4  // unknowns in one product

	timesSign = "·" // between the unknowns of a product
	sineOf    = "sin "
	cosineOf  = "cos "
)

// quotient is a side of an equation: a sum over a sum.
type quotient struct{ num, den terms }

func known(c coef) quotient { return quotient{terms{"": c}, terms{"": {value: 1}}} }

func unknown(product string) quotient {
	return quotient{terms{product: {value: 1}}, terms{"": {value: 1}}}
}

func (t terms) plus(o terms) terms {
	sum := maps.Clone(t)
	for product, c := range o {
		sum[product] = sum[product].plus(c)
	}
	return sum
}

func (t terms) scaled(by float64) terms {
	out := terms{}
	for product, c := range t {
		out[product] = coef{c.value * by, math.Abs(by) * c.off}
	}
	return out
}

func (t terms) times(o terms) terms {
	out := terms{}
	for _, p := range t.products() {
		for _, q := range o.products() {
			product := joinProducts(p, q)
			out[product] = out[product].plus(t[p].times(o[q]))
		}
	}
	return out
}

// products lists the products in order, so that sums do not depend on a map's.
func (t terms) products() []string { return slices.Sorted(maps.Keys(t)) }

func joinProducts(p, q string) string {
	if p == "" || q == "" {
		return p + q
	}
	all := append(strings.Split(p, timesSign), strings.Split(q, timesSign)...)
	slices.Sort(all)
	return strings.Join(all, timesSign)
}

// isKnown tells whether t holds no unknown.
func (t terms) isKnown() bool {
	_, ok := t[""]
	return len(t) == 0 || len(t) == 1 && ok
}

// fits tells whether t is small enough to go on with.
func (t terms) fits() bool {
	for product := range t {
		if strings.Count(product, timesSign) >= maxFactor {
			return false
		}
	}
	return len(t) <= maxTerms
}

// sorter writes trees as sums of products of unknowns.
type sorter struct {
	// value is that of a name that is known, with its uncertainty; false for an
	// unknown.
	value func(name string) (coef, bool)
	// tree is what an unknown is in terms of others, nil for one that stands for
	// itself.
	tree func(name string) expr.Node
	// literal is the uncertainty of the number at a site.
	literal func(site int) float64
}

// sort writes the tree n, which stands at site, as a quotient of sums of
// products of unknowns; false where that can't be done.
func (s *sorter) sort(n expr.Node, site int) (quotient, bool) {
	switch n := n.(type) {
	case expr.Num, expr.Ang, expr.Pi:
		return known(coef{expr.Eval(n, nil), s.literal(site)}), true
	case expr.Sym:
		if c, ok := s.value(n.Name); ok {
			return known(c), !math.IsNaN(c.value)
		}
		if t := s.tree(n.Name); t != nil {
			return (&sorter{s.value, s.tree, noLiterals}).sort(t, 0)
		}
		return unknown(n.Name), true
	case expr.Neg:
		q, ok := s.sort(n.X, site+1)
		return quotient{q.num.scaled(-1), q.den}, ok
	case expr.Bin:
		l, ok := s.sort(n.L, site+1)
		r, fine := s.sort(n.R, site+1+expr.Size(n.L))
		if !ok || !fine {
			return quotient{}, false
		}
		return combine(n.Op, l, r)
	case expr.Fn:
		return s.function(n, site)
	}
	panic("tutor: unknown node")
}

func noLiterals(int) float64 { return 0 }

func combine(op expr.Op, l, r quotient) (quotient, bool) {
	var q quotient
	switch op {
	case expr.OpAdd, expr.OpSub:
		if op == expr.OpSub {
			r.num = r.num.scaled(-1)
		}
		q = quotient{l.num.times(r.den).plus(r.num.times(l.den)), l.den.times(r.den)}
	case expr.OpMul:
		q = quotient{l.num.times(r.num), l.den.times(r.den)}
	case expr.OpDiv:
		q = quotient{l.num.times(r.den), l.den.times(r.num)}
	case expr.OpPow:
		v, ok := l.value()
		w, fine := r.value()
		if !ok || !fine {
			return quotient{}, false
		}
		p := math.Pow(v.value, w.value)
		return known(coef{p, math.Abs(w.value * p / v.value * v.off)}), !math.IsNaN(p)
	}
	if c, ok := q.den[""]; ok && q.den.isKnown() && c.value != 0 { // keep what is known above the line
		over := coef{1 / c.value, c.off / (c.value * c.value)}
		q = quotient{q.num.times(terms{"": over}), terms{"": {value: 1}}}
	}
	return q, q.num.fits() && q.den.fits()
}

// value is q where it holds no unknown.
func (q quotient) value() (coef, bool) {
	if !q.num.isKnown() || !q.den.isKnown() {
		return coef{}, false
	}
	n, d := q.num[""], q.den[""]
	if d.value == 0 {
		return coef{}, false
	}
	return coef{n.value / d.value, n.off/math.Abs(d.value) + math.Abs(n.value)*d.off/(d.value*d.value)}, true
}

// function sorts a function: of what is known, or a sine, a cosine or a tangent
// of a sum with one unknown angle.
func (s *sorter) function(n expr.Fn, site int) (quotient, bool) {
	x, ok := s.sort(n.X, site+1)
	if !ok {
		return quotient{}, false
	}
	if c, fine := x.value(); fine {
		at := func(v float64) float64 { return expr.Eval(expr.Fn{Func: n.Func, Mode: n.Mode, X: expr.N(v)}, nil) }
		v := at(c.value)
		off := 0.0
		if c.off > 0 {
			off = max(math.Abs(at(c.value+c.off)-v), math.Abs(at(c.value-c.off)-v))
		}
		return known(coef{v, off}), !math.IsNaN(v) && !math.IsNaN(off)
	}
	if n.Mode != expr.InDegrees || !x.den.isKnown() {
		return quotient{}, false
	}
	name, turn, shift, ok := angleIn(x.num)
	if !ok {
		return quotient{}, false
	}
	// sin(k·θ + c) = k sin θ cos c + cos θ sin c, for k = ±1
	sine := terms{sineOf + name: shift.key(expr.FnCos, turn), cosineOf + name: shift.key(expr.FnSin, 1)}
	cosine := terms{cosineOf + name: shift.key(expr.FnCos, 1), sineOf + name: shift.key(expr.FnSin, -turn)}
	one := terms{"": {value: 1}}
	switch n.Func {
	case expr.FnSin:
		return quotient{sine, one}, true
	case expr.FnCos:
		return quotient{cosine, one}, true
	case expr.FnTan:
		return quotient{sine, cosine}, true
	}
	return quotient{}, false
}

// key is the sine or cosine of an angle in degrees, times a sign.
func (c coef) key(f expr.Func, sign float64) coef {
	v := expr.Eval(expr.Fn{Func: f, X: expr.N(c.value)}, nil)
	return coef{sign * v, c.off * math.Pi / 180}
}

// angleIn takes ±θ + c apart.
func angleIn(t terms) (name string, turn float64, shift coef, ok bool) {
	for product, c := range t {
		switch {
		case product == "":
			shift = c
		case name == "" && math.Abs(c.value) == 1 && c.off == 0 && !strings.Contains(product, timesSign):
			name, turn = product, c.value
		default:
			return "", 0, coef{}, false
		}
	}
	return name, turn, shift, name != ""
}

// zeroOf writes left = right as a sum that is zero: multiplied out, with every
// unknown above the line.
func (s *sorter) zeroOf(left, right expr.Node, rightLiteral func(int) float64) (terms, bool) {
	l, ok := s.sort(left, 0)
	r, fine := (&sorter{s.value, s.tree, rightLiteral}).sort(right, 0)
	if !ok || !fine {
		return nil, false
	}
	q, ok := combine(expr.OpSub, l, r)
	return q.num, ok
}
