package tutor

import (
	"math"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// ofComponents is a direction's two components: whoever goes on with wrong ones
// chooses the quadrant by their signs.
type ofComponents struct {
	x, y *expr.Program
	over bool // x stands above the fraction line
}

// direction is the one that the components have, in degrees.
func (o *ofComponents) direction(values []float64, tape *expr.Tape) float64 {
	x, y := o.x.Run(values, tape), o.y.Run(values, tape)
	return math.Atan2(y, x) * 180 / math.Pi
}

// quadrantOf finds the components behind a direction found by an arctangent.
func (l *Lesson) quadrantOf(q *lesson.Quantity, tree expr.Node) *ofComponents {
	if !q.Turns {
		return nil
	}
	over, under, ok := tangent(tree)
	if !ok {
		return nil
	}
	quad := &ofComponents{x: l.compile(under), y: l.compile(over)}
	var tape expr.Tape
	values := l.truths()
	agrees := func() bool {
		return math.Abs(math.Remainder(quad.direction(values, &tape)-q.True, 360)) < 1e-6
	}
	if agrees() {
		return quad
	}
	quad.x, quad.y, quad.over = quad.y, quad.x, true // near the y axis the fraction is turned over
	if agrees() {
		return quad
	}
	return nil
}

// tangent is the fraction whose inverse tangent stands in tree.
func tangent(tree expr.Node) (over, under expr.Node, ok bool) {
	var ratio expr.Node
	expr.Walk(tree, func(_ int, n expr.Node) {
		if x, ok := expr.Argument(n, expr.FnAtan); ok {
			ratio = x
		}
	})
	return expr.Operands(ratio, expr.OpDiv)
}

// slippedQuadrant finds the components behind a direction of which a slip altered
// one: those of the formula right before it, and of the formula it became.
func (l *Lesson) slippedQuadrant(of *ofComponents, right, slipped expr.Node) *ofComponents {
	if of == nil {
		return nil
	}
	over, under, ok := tangent(right)
	above, below, fraction := tangent(slipped)
	if !ok || !fraction || (over == above) == (under == below) {
		return nil
	}
	quad := &ofComponents{x: l.compile(below), y: l.compile(above), over: of.over}
	if of.over {
		quad.x, quad.y = quad.y, quad.x
	}
	return quad
}
