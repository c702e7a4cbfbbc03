package slips

import (
	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// Mistakes in directions and components (common practice).
var directionSlips = []Slip{
	{ID: "reference-missing", Prior: 2, Rule: func(c *Context, n expr.Node) []expr.Node {
		if _, angle, _, ok := c.laidOff(n); ok {
			return one(angle)
		}
		return nil
	}},
	{ID: "wrong-side", Prior: 3, Rule: func(c *Context, n expr.Node) []expr.Node {
		if dir, angle, op, ok := c.laidOff(n); ok {
			return one(expr.Bin{Op: expr.OpAdd + expr.OpSub - op, L: dir, R: angle})
		}
		return nil
	}},
	{ID: "wrong-neighbour", Prior: 2, Rule: func(c *Context, n expr.Node) []expr.Node {
		dir, angle, op, ok := c.laidOff(n)
		if q := c.symbol(angle); ok && q.Twin != "" {
			return one(expr.Bin{Op: op, L: dir, R: expr.S(q.Twin)})
		}
		return nil
	}},
	{ID: "sign-lost", Prior: 3, Rule: func(c *Context, n expr.Node) []expr.Node {
		if c.Quantity.Equation {
			return c.otherSign(n)
		}
		if q := c.symbol(n); q != nil && q.Signed {
			return one(expr.Neg{X: n})
		}
		if c.Quantity.Signed && c.atRoot() {
			return one(expr.Neg{X: n})
		}
		return nil
	}},
	{ID: "term-missing", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node {
		if c.Quantity.Equation {
			return withoutTerm(n)
		}
		if l, r, ok := expr.Operands(n, expr.OpSub); ok && c.isComponent(l) && c.isComponent(r) {
			return []expr.Node{l, expr.Neg{X: r}}
		}
		l, r, ok := expr.Operands(n, expr.OpAdd)
		if !ok || !c.isMagnitude(r) || !c.isSum(l) {
			return nil
		}
		if c.isMagnitude(l) {
			return []expr.Node{l, r}
		}
		return one(l) // one of the terms before is left out further in
	}},
	{ID: "magnitudes-for-components", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node {
		if l, r, ok := expr.Operands(n, expr.OpMul); ok && !c.Quantity.IsAngle() && c.isMagnitude(l) && expr.IsTrig(r) {
			if c.ofComponent() && expr.Eval(r, c.Lesson.Truth) < 0 { // or with the sign that the sketch gives
				return []expr.Node{l, expr.Neg{X: l}}
			}
			return one(l)
		}
		if force, ok := c.bySlope(n); ok {
			return one(force)
		}
		part := c.symbol(n)
		if whole := c.Lesson.WholeOf(part); whole != nil && c.Quantity.Signed {
			force := expr.S(whole.Name)
			if part.True < 0 { // here too
				return []expr.Node{force, expr.Neg{X: force}}
			}
			return one(force)
		}
		return nil
	}},
	{ID: "slope-inverted", Prior: 4, Rule: func(c *Context, n expr.Node) []expr.Node { // of a direction given so
		if leg, ok := c.otherLeg(n); ok {
			return one(leg)
		}
		q := c.symbol(n)
		if q == nil || !q.Given || q.Heading.Form != statics.Slope {
			return nil
		}
		if h, ok := q.Heading.Legs(q.Heading.Run, q.Heading.Rise); ok && h.Rise != h.Run {
			return one(q.Literal(lesson.Degrees(h.Angle())))
		}
		return nil
	}},
	{ID: "leg-over-leg", Scope: InKind, Prior: 1},
	{ID: "legs-added", Scope: InKind, Prior: 0.2, Lone: true},
	{ID: "part-in-other-sum", Scope: InKind, Prior: 0.5, Lone: true},
	{ID: "known-added", Prior: 2, Rule: func(c *Context, n expr.Node) []expr.Node {
		if l, r, ok := expr.Operands(n, expr.OpSub); ok && c.isComponent(l) && c.isComponent(r) {
			return one(expr.Add(l, r))
		}
		return nil
	}},
	{ID: "perpendicular-to-given", Scope: InKind, Prior: 2},
	{ID: "axes-for-components", Scope: InKind, Prior: 4},
	{ID: "components-added", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node {
		if x, y, ok := c.rightAngled(n); ok {
			return one(expr.Add(expr.Abs(x), expr.Abs(y)))
		}
		return nil
	}},
	{ID: "squares-subtracted", Prior: 0.7, Rule: func(c *Context, n expr.Node) []expr.Node {
		if x, y, ok := c.rightAngled(n); ok {
			return one(expr.Sqrt(expr.Abs(expr.Sub(expr.Sq(x), expr.Sq(y)))))
		}
		return nil
	}},
	{ID: "minus-outside-square", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node { // as a calculator takes −310²
		x, y, ok := c.rightAngled(n)
		if !ok {
			return nil
		}
		switch a, b := c.symbol(x).True, c.symbol(y).True; {
		case a < 0 && b > -a:
			return one(expr.Sqrt(expr.Add(expr.Neg{X: expr.Sq(x)}, expr.Sq(y))))
		case b < 0 && a > -b:
			return one(expr.Sqrt(expr.Add(expr.Sq(x), expr.Neg{X: expr.Sq(y)})))
		}
		return nil // of a negative sum there is no root
	}},
}

// bySlope matches the part of a force by a leg of its slope triangle: F·3/5.
func (c *Context) bySlope(n expr.Node) (force expr.Node, ok bool) {
	part, hypotenuse, ok := expr.Operands(n, expr.OpDiv)
	if !ok {
		return nil, false
	}
	force, leg, ok := expr.Operands(part, expr.OpMul)
	return force, ok && c.isMagnitude(force) && isNumber(leg) && isNumber(hypotenuse)
}

// otherLeg matches the sine or the cosine of an angle found from its slope
// triangle, and returns that of the other leg.
func (c *Context) otherLeg(n expr.Node) (expr.Node, bool) {
	k, ok := n.(expr.Fn)
	if !ok || !expr.IsTrig(n) {
		return nil, false
	}
	q, to := c.symbol(k.X), otherKey[k.Func]
	if q == nil || k.Func == expr.FnTan || !q.IsSlopeAngle() {
		return nil, false
	}
	return expr.Fn{Func: to, Mode: k.Mode, X: k.X}, true
}

// isSum tells whether n is a force, or a sum of forces.
func (c *Context) isSum(n expr.Node) bool {
	if l, r, ok := expr.Operands(n, expr.OpAdd); ok {
		return c.isSum(l) && c.isMagnitude(r)
	}
	return c.isMagnitude(n)
}

// laidOff matches a triangle angle laid off from a direction: θ₁ + β.
func (c *Context) laidOff(n expr.Node) (dir, angle expr.Node, op expr.Op, ok bool) {
	b, ok := n.(expr.Bin)
	if !ok || b.Op != expr.OpAdd && b.Op != expr.OpSub || !c.isDirection(b.L) || !c.isAngle(b.R) {
		return nil, nil, 0, false
	}
	return b.L, b.R, b.Op, true
}

// rightAngled matches √(x² + y²) of two components.
func (c *Context) rightAngled(n expr.Node) (x, y expr.Node, ok bool) {
	root, ok := expr.Argument(n, expr.FnSqrt)
	if !ok {
		return nil, nil, false
	}
	l, r, ok := expr.Operands(root, expr.OpAdd)
	if !ok {
		return nil, nil, false
	}
	x, okX := isSquare(l)
	y, okY := isSquare(r)
	return x, y, okX && okY && c.isComponent(x) && c.isComponent(y)
}

func (c *Context) isComponent(n expr.Node) bool {
	q := c.symbol(n)
	return q != nil && q.Signed
}

// Mistakes in the sketch (common practice).
var sketchSlips = []Slip{
	{ID: "other-diagonal", Scope: InKind, Prior: 1},
	{ID: BranchesMixed, Scope: InKind, Prior: 1},
	{ID: "resultant-reversed", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node {
		if c.Quantity.Answer && c.Quantity.Turns && c.atRoot() {
			return one(expr.Add(n, expr.Deg(180)))
		}
		return nil
	}},
}

// BranchesMixed is the slip of an entry that belongs to the other of two solutions.
const BranchesMixed = "branches-mixed"
