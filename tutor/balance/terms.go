package balance

import (
	"maps"
	"math"
	"slices"
	"strings"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// Coef is a coefficient, and by how much at most the rounding of the numbers in it
// may have moved it. Off is not negative.
type Coef struct{ Value, Off float64 }

func (a Coef) plus(b Coef) Coef { return Coef{a.Value + b.Value, a.Off + b.Off} }

func (a Coef) times(b Coef) Coef {
	return Coef{a.Value * b.Value, math.Abs(a.Value)*b.Off + math.Abs(b.Value)*a.Off}
}

// Terms is a sum of products of unknowns: for each product its coefficient.
// The product of nothing, "", stands for what is known.
type Terms map[string]Coef

const (
	maxTerms  = 24 // of a sum that is still told apart; an equation of statics has six
	maxFactor = 4  // unknowns in one product

	timesSign = "·" // between the unknowns of a product
	sineOf    = "sin "
	cosineOf  = "cos "
)

// quotient is a side of an equation: a sum over a sum.
type quotient struct{ num, den Terms }

func known(c Coef) quotient { return quotient{Terms{"": c}, Terms{"": {Value: 1}}} }

func unknown(product string) quotient {
	return quotient{Terms{product: {Value: 1}}, Terms{"": {Value: 1}}}
}

func (t Terms) plus(o Terms) Terms {
	sum := maps.Clone(t)
	for product, c := range o {
		sum[product] = sum[product].plus(c)
	}
	return sum
}

func (t Terms) scaled(by float64) Terms {
	out := Terms{}
	for product, c := range t {
		out[product] = Coef{c.Value * by, math.Abs(by) * c.Off}
	}
	return out
}

func (t Terms) times(o Terms) Terms {
	out := Terms{}
	for _, p := range t.products() {
		for _, q := range o.products() {
			product := joinProducts(p, q)
			out[product] = out[product].plus(t[p].times(o[q]))
		}
	}
	return out
}

// products lists the products in order, so that sums do not depend on a map's.
func (t Terms) products() []string { return slices.Sorted(maps.Keys(t)) }

func joinProducts(p, q string) string {
	if p == "" || q == "" {
		return p + q
	}
	all := append(strings.Split(p, timesSign), strings.Split(q, timesSign)...)
	slices.Sort(all)
	return strings.Join(all, timesSign)
}

// isKnown tells whether t holds no unknown.
func (t Terms) isKnown() bool {
	_, ok := t[""]
	return len(t) == 0 || len(t) == 1 && ok
}

// fits tells whether t is small enough to go on with.
func (t Terms) fits() bool {
	for product := range t {
		if strings.Count(product, timesSign) >= maxFactor {
			return false
		}
	}
	return len(t) <= maxTerms
}

// Side is one side of an equation as it is written.
type Side struct {
	Tree    expr.Node
	Literal func(site int) float64 // the uncertainty of the number at a site of Tree
}

// Exact is a side in which every number is exact.
func Exact(tree expr.Node) Side { return Side{tree, exactly} }

// exactly is the Literal of exact numbers.
func exactly(int) float64 { return 0 }

// Sorter writes equations as sums of products of unknowns. Both functions are
// needed.
type Sorter struct {
	// Value is that of a name that is known, with its uncertainty; false for an
	// unknown.
	Value func(name string) (Coef, bool)
	// Tree is what an unknown is in terms of others, nil for one that stands for
	// itself.
	Tree func(name string) expr.Node
}

// sorted is a side as a quotient of sums of products of unknowns; false where that
// can't be done.
func (s *Sorter) sorted(side Side) (quotient, bool) {
	return (&sorting{s, side.Literal}).sort(side.Tree, 0)
}

// sorting is a sorter at work on a side.
type sorting struct {
	*Sorter
	literal func(site int) float64
}

// sort writes the part n of the side, which stands at site, as a quotient.
func (s *sorting) sort(n expr.Node, site int) (quotient, bool) {
	switch n := n.(type) {
	case expr.Num, expr.Ang, expr.Pi:
		return known(Coef{expr.Eval(n, nil), s.literal(site)}), true
	case expr.Sym:
		if c, ok := s.Value(n.Name); ok {
			return known(c), !math.IsNaN(c.Value)
		}
		if t := s.Tree(n.Name); t != nil {
			return s.sorted(Exact(t))
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
	panic("balance: unknown node")
}

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
		p := math.Pow(v.Value, w.Value)
		return known(Coef{p, math.Abs(w.Value * p / v.Value * v.Off)}), !math.IsNaN(p)
	}
	if c, ok := q.den[""]; ok && q.den.isKnown() && c.Value != 0 { // keep what is known above the line
		over := Coef{1 / c.Value, c.Off / (c.Value * c.Value)}
		q = quotient{q.num.times(Terms{"": over}), Terms{"": {Value: 1}}}
	}
	return q, q.num.fits() && q.den.fits()
}

// value is q where it holds no unknown.
func (q quotient) value() (Coef, bool) {
	if !q.num.isKnown() || !q.den.isKnown() {
		return Coef{}, false
	}
	n, d := q.num[""], q.den[""]
	if d.Value == 0 {
		return Coef{}, false
	}
	return Coef{n.Value / d.Value, n.Off/math.Abs(d.Value) + math.Abs(n.Value)*d.Off/(d.Value*d.Value)}, true
}

// function sorts a function: of what is known, or a sine, a cosine or a tangent
// of a sum with one unknown angle.
func (s *sorting) function(n expr.Fn, site int) (quotient, bool) {
	x, ok := s.sort(n.X, site+1)
	if !ok {
		return quotient{}, false
	}
	if c, fine := x.value(); fine {
		at := func(v float64) float64 { return expr.Eval(expr.Fn{Func: n.Func, Mode: n.Mode, X: expr.N(v)}, nil) }
		v := at(c.Value)
		off := 0.0
		if c.Off > 0 {
			off = max(math.Abs(at(c.Value+c.Off)-v), math.Abs(at(c.Value-c.Off)-v))
		}
		return known(Coef{v, off}), !math.IsNaN(v) && !math.IsNaN(off)
	}
	if n.Mode != expr.InDegrees || !x.den.isKnown() {
		return quotient{}, false
	}
	name, turn, shift, ok := angleIn(x.num)
	if !ok {
		return quotient{}, false
	}
	// sin(k·θ + c) = k sin θ cos c + cos θ sin c, for k = ±1
	sine := Terms{sineOf + name: shift.key(expr.FnCos, turn), cosineOf + name: shift.key(expr.FnSin, 1)}
	cosine := Terms{cosineOf + name: shift.key(expr.FnCos, 1), sineOf + name: shift.key(expr.FnSin, -turn)}
	one := Terms{"": {Value: 1}}
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
func (a Coef) key(f expr.Func, sign float64) Coef {
	v := expr.Eval(expr.Fn{Func: f, X: expr.N(a.Value)}, nil)
	return Coef{sign * v, a.Off * math.Pi / 180}
}

// angleIn takes ±θ + c apart.
func angleIn(t Terms) (name string, turn float64, shift Coef, ok bool) {
	for product, c := range t {
		switch {
		case product == "":
			shift = c
		case name == "" && math.Abs(c.Value) == 1 && c.Off == 0 && !strings.Contains(product, timesSign):
			name, turn = product, c.Value
		default:
			return "", 0, Coef{}, false
		}
	}
	return name, turn, shift, name != ""
}

// Terms writes left = right as a sum that is zero: multiplied out, with every
// unknown above the line. It is false where the equation can't be sorted, or grows
// beyond 24 terms or 4 unknowns in one.
func (s *Sorter) Terms(left, right Side) (Terms, bool) {
	l, ok := s.sorted(left)
	r, fine := s.sorted(right)
	if !ok || !fine {
		return nil, false
	}
	q, ok := combine(expr.OpSub, l, r)
	return q.num, ok
}

// Rename puts q's own name in row in the place of the product that q Means, as Fx
// for F cos θ; row stays as it is where q means no single product.
func (s *Sorter) Rename(row Terms, q *lesson.Quantity) {
	means, _ := s.Terms(Exact(q.Means), Exact(expr.N(0)))
	product, n := "", 0
	for p, c := range means {
		if c.Value != 0 {
			product = p
			n++
		}
	}
	if c, there := row[product]; there && n == 1 && product != "" {
		delete(row, product)
		c.Value /= means[product].Value
		row[q.Name] = c
	}
}

// Solve is the value of the unknown name out of two equations in it and another
// unknown, or out of x alone where y is nil or other is ""; NaN where they are not
// linear in these, or don't give it.
func Solve(x, y Terms, name, other string) float64 {
	for _, row := range []Terms{x, y} {
		for p := range row {
			if p != "" && p != name && p != other && row[p].Value != 0 {
				return math.NaN()
			}
		}
	}
	a := func(t Terms, p string) float64 { return t[p].Value }
	if y == nil || other == "" {
		return -a(x, "") / a(x, name)
	}
	det := a(x, name)*a(y, other) - a(y, name)*a(x, other)
	if math.Abs(det) < 1e-9*math.Abs(a(x, name)*a(y, other)) {
		return math.NaN()
	}
	return (a(x, other)*a(y, "") - a(y, other)*a(x, "")) / det
}

func factors(product string) []string {
	if product == "" {
		return nil
	}
	return strings.Split(product, timesSign)
}
