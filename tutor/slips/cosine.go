package slips

import (
	"slices"

	"closingside/statics/expr"
)

// Mistakes in the cosine law and with squares (common practice).
var cosineSlips = []Slip{
	{ID: "cosine-sign", Prior: 3, Rule: func(_ *Context, n expr.Node) []expr.Node {
		if l, r, ok := expr.Operands(n, expr.OpSub); ok && isCross(r) {
			return one(expr.Add(l, r))
		}
		if l, r, ok := expr.Operands(n, expr.OpAdd); ok && isCross(r) {
			return one(expr.Sub(l, r))
		}
		if x, ok := expr.Argument(n, expr.FnAcos); ok { // the cosine of an angle, its sign turned over
			return one(expr.Acos(expr.Neg{X: x}))
		}
		return nil
	}},
	{ID: "two-missing", Prior: 2, Rule: func(_ *Context, n expr.Node) []expr.Node {
		if l, r, ok := expr.Operands(n, expr.OpMul); ok && l == expr.N(2) {
			return one(r)
		}
		return nil
	}},
	{ID: "root-missing", Prior: 2, Rule: func(_ *Context, n expr.Node) []expr.Node {
		if x, ok := expr.Argument(n, expr.FnSqrt); ok {
			return one(x)
		}
		return nil
	}},
	{ID: "squares-missing", Prior: 0.5, Rule: func(c *Context, n expr.Node) []expr.Node {
		if l, r, ok := expr.Operands(n, expr.OpSub); ok { // of the law solved for an angle, all three
			a, b, sum := expr.Operands(l, expr.OpAdd)
			a2, okA := isSquare(a)
			b2, okB := isSquare(b)
			c, okC := isSquare(r)
			if sum && okA && okB && okC {
				return one(expr.Sub(expr.Add(a2, b2), c))
			}
		}
		if l, r, ok := expr.Operands(n, expr.OpAdd); ok {
			a, okA := isSquare(l)
			b, okB := isSquare(r)
			if okA && okB {
				return c.unsigned(expr.Add(a, b), expr.Add(expr.Abs(a), expr.Abs(b)), a, b)
			}
		}
		return nil
	}},
	{ID: "one-square-missing", Prior: 0.7, Rule: func(c *Context, n expr.Node) []expr.Node {
		if x, ok := isSquare(n); ok {
			return c.unsigned(x, expr.Abs(x), x)
		}
		return nil
	}},
	{ID: "cross-term-missing", Prior: 2, Rule: func(_ *Context, n expr.Node) []expr.Node {
		for _, op := range []expr.Op{expr.OpAdd, expr.OpSub} {
			if l, r, ok := expr.Operands(n, op); ok && isCross(r) {
				return one(l)
			}
		}
		return nil
	}},
	{ID: "sum-squared", Prior: 0.7, Rule: func(_ *Context, n expr.Node) []expr.Node {
		if l, r, ok := expr.Operands(n, expr.OpAdd); ok && areSquares(l, r) {
			a, _ := isSquare(l)
			b, _ := isSquare(r)
			return one(expr.Sq(expr.Add(a, b)))
		}
		return nil
	}},
	{ID: "root-split", Prior: 0.5, Rule: func(c *Context, n expr.Node) []expr.Node {
		if x, y, ok := c.rightAngled(n); ok {
			return one(expr.Add(expr.Abs(x), expr.Abs(y)))
		}
		x, ok := expr.Argument(n, expr.FnSqrt)
		if !ok {
			return nil
		}
		for _, op := range []expr.Op{expr.OpAdd, expr.OpSub} {
			l, r, ok := expr.Operands(x, op)
			a, b, sum := expr.Operands(l, expr.OpAdd)
			if ok && sum && isCross(r) {
				return one(expr.Bin{Op: op, L: expr.Add(rootOf(a), rootOf(b)), R: expr.Sqrt(r)})
			}
		}
		return nil
	}},
	{ID: "magnitudes-added", Scope: InKind, Prior: 2},
	{ID: "magnitudes-subtracted", Scope: InKind, Prior: 1},
	{ID: "precedence", Prior: 0.7, Rule: func(_ *Context, n expr.Node) []expr.Node {
		for _, op := range []expr.Op{expr.OpAdd, expr.OpSub} {
			l, r, ok := expr.Operands(n, op)
			a, b, sum := expr.Operands(l, expr.OpAdd)
			if !ok || !sum || !isCross(r) || !areSquares(a, b) {
				continue // the cosine law alone ends in a cosine
			}
			if front, key, _ := expr.Operands(r, expr.OpMul); expr.IsTrig(key) {
				return one(expr.Mul(expr.Bin{Op: op, L: l, R: front}, key))
			}
		}
		return nil
	}},
}

// unsigned is a sum as it is and, where a part of it is a component below zero,
// with sizes in the place of components.
func (c *Context) unsigned(as, sizes expr.Node, parts ...expr.Node) []expr.Node {
	for _, x := range parts {
		if c.isComponent(x) && c.symbol(x).True < 0 {
			return []expr.Node{as, sizes}
		}
	}
	return one(as)
}

// areSquares tells whether both are squares.
func areSquares(a, b expr.Node) bool {
	_, okA := isSquare(a)
	_, okB := isSquare(b)
	return okA && okB
}

// rootOf is √x, with √(a²) written a.
func rootOf(x expr.Node) expr.Node {
	if a, ok := isSquare(x); ok {
		return a
	}
	return expr.Sqrt(x)
}

// IsCosineLaw tells whether the row called id is about the cosine law or squares.
func IsCosineLaw(id string) bool {
	return slices.ContainsFunc(cosineSlips, func(s Slip) bool { return s.ID == id })
}
