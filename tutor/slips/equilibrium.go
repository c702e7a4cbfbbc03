package slips

import (
	"math"

	"closingside/statics"
	"closingside/statics/expr"
)

// Mistakes with weights, pulleys and the sense of forces at a particle at rest
// (common practice, except where the rule's comment names a definition).
var equilibriumSlips = []Slip{
	{ID: "mass-for-weight", Prior: 3, Rule: func(c *Context, n expr.Node) []expr.Node { // W = m·g, by definition
		if q := c.symbol(n); q != nil && q.Mass != "" && (!q.Unknown || c.Quantity.Equation) {
			return one(expr.S(q.Mass))
		}
		if q := c.symbol(n); q != nil && q.Gravity != nil && q.Mass == "" && !q.Unknown { // the weight given taken for one to be found from
			return one(expr.Div(n, q.Gravity))
		}
		if l, r, ok := expr.Operands(n, expr.OpMul); ok && c.isGravity(r) {
			return one(l)
		}
		if l, r, ok := expr.Operands(n, expr.OpDiv); ok && c.isGravity(r) {
			return one(l)
		}
		return nil
	}},
	{ID: "gravity-twice", Prior: 0.7, Rule: func(c *Context, n expr.Node) []expr.Node {
		if q := c.symbol(n); q != nil && q.Gravity != nil && !q.Unknown {
			return one(expr.Mul(n, q.Gravity))
		}
		return nil
	}},
	{ID: "gravity-inverted", Prior: 0.7, Rule: func(c *Context, n expr.Node) []expr.Node {
		if q := c.symbol(n); q != nil && q.Mass != "" && q.Unknown && c.Quantity.Equation {
			return one(expr.Div(expr.S(q.Mass), q.Gravity))
		}
		if l, r, ok := expr.Operands(n, expr.OpMul); ok && c.isGravity(r) {
			return one(expr.Div(l, r))
		}
		if l, r, ok := expr.Operands(n, expr.OpDiv); ok && c.isGravity(r) {
			return one(expr.Mul(l, r))
		}
		return nil
	}},
	{ID: "gravity-other", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node { // as rounded, and in m/s² or ft/s²
		if !c.isGravity(n) {
			return nil
		}
		var others []expr.Node
		for _, g := range []float64{9.81, 10, 9.8, 32.2, 32} {
			if math.Abs(g-c.symbol(n).True) > 1e-9 {
				others = append(others, expr.N(g))
			}
		}
		return others
	}},
	{ID: "tension-doubled", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node { // a frictionless pulley changes no tension
		if c.isReeved(n) {
			return one(expr.Mul(expr.N(2), n))
		}
		return nil
	}},
	{ID: "tension-halved", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node {
		if c.isReeved(n) {
			return one(expr.Div(n, expr.N(2)))
		}
		return nil
	}},
	{ID: "spring-multiplied", Prior: 0.7, Rule: func(c *Context, n expr.Node) []expr.Node { // F = k·s, by definition
		if force, by, ok := expr.Operands(n, expr.OpDiv); ok && c.isSpring(by) {
			return one(expr.Mul(force, by))
		}
		return nil
	}},
	{ID: "sense-reversed", Prior: 3, Rule: func(c *Context, n expr.Node) []expr.Node {
		if c.Quantity.Equation && c.isMagnitude(n) {
			return one(expr.Neg{X: n})
		}
		return nil
	}},
	{ID: "force-in-other-sum", Scope: InKind, Prior: 1, Lone: true},
	{ID: "shared-equally", Scope: InKind, Prior: 1},
	{ID: "load-resolved", Scope: InKind, Prior: 1.5},
}

func (c *Context) isGravity(n expr.Node) bool {
	q := c.symbol(n)
	return q != nil && q.Dim == statics.DimAcceleration
}

// isSpring tells whether n is what a spring is as stiff as, or strained by.
func (c *Context) isSpring(n expr.Node) bool {
	q := c.symbol(n)
	return q != nil && (q.Dim == statics.DimStiffness || q.Dim == statics.DimLength)
}

// isReeved tells whether n is the tension of a cable over a pulley, or a whole
// formula for it.
func (c *Context) isReeved(n expr.Node) bool {
	q := c.symbol(n)
	return q != nil && q.Reeved || c.atRoot() && c.Quantity.Reeved
}

// otherSign is a sum with the sign of one term changed: at a sign, or at the
// first term where n is the whole.
func (c *Context) otherSign(n expr.Node) []expr.Node {
	var out []expr.Node
	if l, r, ok := expr.Operands(n, expr.OpAdd); ok {
		out = append(out, expr.Sub(l, r))
	} else if l, r, ok := expr.Operands(n, expr.OpSub); ok {
		out = append(out, expr.Add(l, r))
	}
	if !c.atRoot() {
		return out
	}
	site := 0
	for m := n; ; site++ {
		b, ok := m.(expr.Bin)
		if !ok || b.Op != expr.OpAdd && b.Op != expr.OpSub {
			break
		}
		m = b.L
	}
	first := expr.At(n, site)
	if minus, ok := first.(expr.Neg); ok {
		return append(out, expr.Replace(n, site, minus.X))
	}
	return append(out, expr.Replace(n, site, expr.Neg{X: first}))
}

// withoutTerm is a sum with one term left out: the last, or the first where
// that is no sum itself.
func withoutTerm(n expr.Node) []expr.Node {
	l, r, ok := expr.Operands(n, expr.OpAdd)
	minus := false
	if !ok {
		if l, r, ok = expr.Operands(n, expr.OpSub); !ok {
			return nil
		}
		minus = true
	}
	out := one(l)
	if b, ok := l.(expr.Bin); ok && (b.Op == expr.OpAdd || b.Op == expr.OpSub) {
		return out
	}
	if minus {
		return append(out, expr.Neg{X: r})
	}
	return append(out, r)
}
