package tutor

import (
	"strings"

	"closingside/statics"
	"closingside/statics/expr"
)

// Mistakes in directions and components (common practice).
var directionSlips = []Slip{
	{ID: "reference-missing", Prior: 2, Rule: func(c *context, n expr.Node) []expr.Node {
		if _, angle, _, ok := c.laidOff(n); ok {
			return one(angle)
		}
		return nil
	}},
	{ID: "wrong-side", Prior: 3, Rule: func(c *context, n expr.Node) []expr.Node {
		if dir, angle, op, ok := c.laidOff(n); ok {
			return one(expr.Bin{Op: expr.OpAdd + expr.OpSub - op, L: dir, R: angle})
		}
		return nil
	}},
	{ID: "wrong-neighbour", Prior: 2, Rule: func(c *context, n expr.Node) []expr.Node {
		dir, angle, op, ok := c.laidOff(n)
		if q := c.symbol(angle); ok && q.Twin != "" {
			return one(expr.Bin{Op: op, L: dir, R: expr.S(q.Twin)})
		}
		return nil
	}},
	{ID: "sign-lost", Prior: 3, Rule: func(c *context, n expr.Node) []expr.Node {
		if c.quantity.Equation {
			return c.otherSign(n)
		}
		if q := c.symbol(n); q != nil && q.Signed {
			return one(expr.Neg{X: n})
		}
		if c.quantity.Signed && c.atRoot() {
			return one(expr.Neg{X: n})
		}
		return nil
	}},
	{ID: "term-missing", Prior: 1, Rule: func(c *context, n expr.Node) []expr.Node {
		if c.quantity.Equation {
			return withoutTerm(n)
		}
		l, r, ok := bin(n, expr.OpAdd)
		if !ok || !c.isMagnitude(r) || !c.isSum(l) {
			return nil
		}
		if c.isMagnitude(l) {
			return []expr.Node{l, r}
		}
		return one(l) // one of the terms before is left out further in
	}},
	{ID: "magnitudes-for-components", Prior: 1, Rule: func(c *context, n expr.Node) []expr.Node {
		if l, r, ok := bin(n, expr.OpMul); ok && c.quantity.Dim != statics.DimAngle && c.isMagnitude(l) && isForward(r) {
			if c.ofComponent() && expr.Eval(r, c.lesson.Truth) < 0 { // or with the sign that the sketch gives
				return []expr.Node{l, expr.Neg{X: l}}
			}
			return one(l)
		}
		if force, ok := c.bySlope(n); ok {
			return one(force)
		}
		part := c.symbol(n)
		if whole := c.lesson.wholeOf(part); whole != nil && c.quantity.Signed {
			force := expr.S(whole.Name)
			if part.True < 0 { // here too
				return []expr.Node{force, expr.Neg{X: force}}
			}
			return one(force)
		}
		return nil
	}},
	{ID: "slope-inverted", Prior: 4, Rule: func(c *context, n expr.Node) []expr.Node { // of a direction given so
		if leg, ok := c.otherLeg(n); ok {
			return one(leg)
		}
		q := c.symbol(n)
		if q == nil || !q.Given || q.Heading.Form != statics.Slope {
			return nil
		}
		if h, ok := q.Heading.Legs(q.Heading.Run, q.Heading.Rise); ok && h.Rise != h.Run {
			return one(c.lesson.literal(q, degrees(h.Angle())))
		}
		return nil
	}},
	{ID: "leg-over-leg", Scope: InKind, Prior: 1},
	{ID: "legs-added", Scope: InKind, Prior: 0.2, Lone: true},
	{ID: "part-in-other-sum", Scope: InKind, Prior: 0.5, Lone: true},
	{ID: "known-added", Prior: 2, Rule: func(c *context, n expr.Node) []expr.Node {
		if l, r, ok := bin(n, expr.OpSub); ok && c.isComponent(l) && c.isComponent(r) {
			return one(expr.Add(l, r))
		}
		return nil
	}},
	{ID: "perpendicular-to-given", Scope: InKind, Prior: 2},
	{ID: "components-added", Prior: 1, Rule: func(c *context, n expr.Node) []expr.Node {
		if x, y, ok := c.rightAngled(n); ok {
			return one(expr.Add(expr.Abs(x), expr.Abs(y)))
		}
		return nil
	}},
	{ID: "squares-subtracted", Prior: 0.7, Rule: func(c *context, n expr.Node) []expr.Node {
		if x, y, ok := c.rightAngled(n); ok {
			return one(expr.Sqrt(expr.Abs(expr.Sub(expr.Sq(x), expr.Sq(y)))))
		}
		return nil
	}},
}

// wholeOf is the given force of which q is a component; nil where there is none.
func (l *Lesson) wholeOf(q *Quantity) *Quantity {
	if q == nil || !q.Signed || q.Given {
		return nil
	}
	whole := l.Quantity(strings.TrimRight(q.Name, "xy"))
	if whole == nil || !whole.Given || whole.Dim != statics.DimForce {
		return nil
	}
	return whole
}

// bySlope matches the part of a force by a leg of its slope triangle: F·3/5.
func (c *context) bySlope(n expr.Node) (force expr.Node, ok bool) {
	part, hypotenuse, ok := bin(n, expr.OpDiv)
	if !ok {
		return nil, false
	}
	force, leg, ok := bin(part, expr.OpMul)
	return force, ok && c.isMagnitude(force) && isNumber(leg) && isNumber(hypotenuse)
}

// otherLeg matches the sine or the cosine of an angle found from its slope
// triangle, and returns that of the other leg.
func (c *context) otherLeg(n expr.Node) (expr.Node, bool) {
	k, ok := n.(expr.Fn)
	if !ok || !isForward(n) {
		return nil, false
	}
	q, to := c.symbol(k.X), otherKey[k.Func]
	if q == nil || k.Func == expr.FnTan || !q.bySlope() {
		return nil, false
	}
	return expr.Fn{Func: to, Mode: k.Mode, X: k.X}, true
}

// isSum tells whether n is a force, or a sum of forces.
func (c *context) isSum(n expr.Node) bool {
	if l, r, ok := bin(n, expr.OpAdd); ok {
		return c.isSum(l) && c.isMagnitude(r)
	}
	return c.isMagnitude(n)
}

// laidOff matches a triangle angle laid off from a direction: θ₁ + β.
func (c *context) laidOff(n expr.Node) (dir, angle expr.Node, op expr.Op, ok bool) {
	b, ok := n.(expr.Bin)
	if !ok || b.Op != expr.OpAdd && b.Op != expr.OpSub || !c.isDirection(b.L) || !c.isAngle(b.R) {
		return nil, nil, 0, false
	}
	return b.L, b.R, b.Op, true
}

// rightAngled matches √(x² + y²) of two components.
func (c *context) rightAngled(n expr.Node) (x, y expr.Node, ok bool) {
	root, ok := fn(n, expr.FnSqrt)
	if !ok {
		return nil, nil, false
	}
	l, r, ok := bin(root, expr.OpAdd)
	if !ok {
		return nil, nil, false
	}
	x, okX := isSquare(l)
	y, okY := isSquare(r)
	return x, y, okX && okY && c.isComponent(x) && c.isComponent(y)
}

func (c *context) isComponent(n expr.Node) bool {
	q := c.symbol(n)
	return q != nil && q.Signed
}

// Mistakes in the sketch (common practice).
var sketchSlips = []Slip{
	{ID: "other-diagonal", Scope: InKind, Prior: 1},
	{ID: branchSlip, Scope: InKind, Prior: 1},
	{ID: "resultant-reversed", Prior: 1, Rule: func(c *context, n expr.Node) []expr.Node {
		if c.quantity.Answer && c.quantity.Turns && c.atRoot() {
			return one(expr.Add(n, expr.Deg(180)))
		}
		return nil
	}},
}
