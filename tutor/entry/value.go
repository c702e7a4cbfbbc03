package entry

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
)

// literals lists the numbers of tree that were typed to some digit.
func (p *parser) literals(tree expr.Node, right bool) []Literal {
	var all []Literal
	i := 0
	expr.Walk(tree, func(site int, n expr.Node) {
		switch n.(type) {
		case expr.Num, expr.Ang:
		default:
			return
		}
		l := p.leaves[i]
		i++
		if l.num.half > 0 {
			all = append(all, Literal{
				Value: expr.Eval(n, nil), Half: l.num.half * l.scale, Coarse: l.num.coarse() * l.scale,
				Digits: l.num.digits, Decimals: l.num.decimals, Site: site, Right: right,
			})
		}
	})
	return all
}

// number fills in what a Reading says of a plain number: a literal, a minus
// before it, or a power of ten behind it (1.2×10³).
func (r *Reading) number(leaves []leaf, factor float64) {
	n := r.Tree
	if minus, ok := n.(expr.Neg); ok {
		n = minus.X
	}
	power := 1.0
	if product, ok := n.(expr.Bin); ok && product.Op == expr.OpMul {
		ten, ok := product.R.(expr.Bin)
		if !ok || ten.Op != expr.OpPow || ten.L != expr.N(10) {
			return
		}
		power, n = expr.Eval(ten, nil), product.L
	}
	switch n.(type) {
	case expr.Num, expr.Ang:
		l := leaves[0]
		r.Form, r.Digits, r.Decimals = Number, l.num.digits, l.num.decimals
		if l.unit.Dim == statics.DimAngle {
			r.Unit = l.unit.Symbol
		}
		r.Halves = l.num.halves()
		for i := range r.Halves {
			r.Halves[i] *= l.scale * power * factor
		}
	}
}

// decimal takes an angle written in other than decimal degrees (radians,
// gradians, minutes and seconds) for the short decimal it was converted from,
// known to that one's last digit: 87°18′0″ is 87.3° written another way, and
// says no more. What lies between the digits written is any decimal of so many
// places by chance; it is taken for one that chance gives once in fifteen.
func (r *Reading) decimal() {
	const chance, places = 1. / 15, 3
	half := r.Halves[0]
	if k := math.Log10(2 * half); math.Abs(k-math.Round(k)) < 1e-9 { // decimal as written
		return
	}
	for d := 1; d <= places; d++ {
		unit := math.Pow10(-d)
		if 2*half > chance*unit {
			return
		}
		if v := math.Round(r.Value/unit) / math.Pow10(d); math.Abs(v-r.Value) <= half {
			r.Value, r.Halves = v, []float64{unit / 2}
			r.Decimals = d
			return
		}
	}
}

// unknown is the one name without a value that an affine form may have, as it
// was typed too, or "".
func (p *parser) unknown() (name, typed string) {
	for _, t := range p.names {
		switch {
		case !slices.Contains(p.scope.Unknowns, t.name):
		case name == "":
			name, typed = t.name, t.typed
		case t.name != name:
			t.fail("two-unknowns", "name", typed, "other", t.typed)
		}
	}
	return name, typed
}

// affine fills in an affine form in the unknown called name.
func (r *Reading) affine(name, typed string, known expr.Env, factor float64, whole span) {
	c, k, ok := affine(r.Tree, name, known)
	if !ok {
		whole.fail("not-linear", "name", typed)
	}
	if k == 0 { // it cancels: 180 − (118 − θ) − (θ − 25)
		r.Value = c * factor
		return
	}
	r.Form, r.In, r.Const, r.Coef = Affine, name, c*factor, k*factor
	if known != nil {
		r.Value = r.Const + r.Coef*known(name)
	}
	if math.IsNaN(r.Const) || math.IsNaN(r.Coef) {
		whole.fail("undefined")
	}
}

// affine writes n as c + k·name; ok is false where it is not of that form.
func affine(n expr.Node, name string, known expr.Env) (c, k float64, ok bool) {
	switch t := n.(type) {
	case expr.Sym:
		if t.Name == name {
			return 0, 1, true
		}
	case expr.Neg:
		c, k, ok = affine(t.X, name, known)
		return 0 - c, -k, ok
	case expr.Bin:
		lc, lk, lok := affine(t.L, name, known)
		rc, rk, rok := affine(t.R, name, known)
		if !lok || !rok {
			return 0, 0, false
		}
		switch {
		case t.Op == expr.OpAdd:
			return lc + rc, lk + rk, true
		case t.Op == expr.OpSub:
			return lc - rc, lk - rk, true
		case t.Op == expr.OpMul && rk == 0:
			return lc * rc, lk * rc, true
		case t.Op == expr.OpMul && lk == 0:
			return lc * rc, lc * rk, true
		case t.Op == expr.OpDiv && rk == 0:
			return lc / rc, lk / rc, true
		}
	}
	if slices.Contains(expr.Symbols(n), name) {
		return 0, 0, false
	}
	return expr.Eval(n, known), 0, true
}

// undefined fails for the innermost node without a value.
func (p *parser) undefined(tree expr.Node, whole span) {
	calls := 0
	value := func(n expr.Node) float64 { return expr.Eval(n, p.scope.Known) }
	expr.Walk(tree, func(_ int, n expr.Node) {
		switch n := n.(type) {
		case expr.Fn:
			at := p.calls[calls]
			calls++
			x := value(n.X)
			if !math.IsNaN(value(n)) || math.IsNaN(x) {
				return
			}
			switch n.Func {
			case expr.FnSqrt:
				at.fail("root-negative")
			case expr.FnAsin, expr.FnAcos:
				if !isNumber(n.X) { // what it comes to is for the learner to work out
					at.fail("inverse-beyond", "function", at.fn.name)
				}
				at.fail("inverse-range", "function", at.fn.name, "value", expr.FormatNumber(x, 4))
			default:
				at.fail("undefined")
			}
		case expr.Bin:
			if n.Op == expr.OpDiv && value(n.R) == 0 && !math.IsNaN(value(n.L)) {
				whole.fail("divide-zero")
			}
		}
	})
	whole.fail("undefined")
}

// isNumber reports whether n is a number as typed, with its sign.
func isNumber(n expr.Node) bool {
	if minus, ok := n.(expr.Neg); ok {
		n = minus.X
	}
	_, ok := n.(expr.Num)
	return ok
}
