package slips

import (
	"math"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// Mistakes in angles and geometry (common practice, except where the rule's
// comment names a definition).
var angleSlips = []Slip{
	{ID: "included-for-interior", Prior: 3, Rule: func(c *Context, n expr.Node) []expr.Node {
		if q := c.symbol(n); q != nil && q.Supplement != "" {
			return one(expr.S(q.Supplement))
		}
		if q := c.Quantity; q.Supplement != "" && c.atRoot() {
			return one(expr.S(q.Supplement))
		}
		return nil
	}},
	{ID: "complement-for-supplement", Prior: 1, Rule: func(_ *Context, n expr.Node) []expr.Node {
		l, r, ok := expr.Operands(n, expr.OpSub)
		switch {
		case ok && expr.IsDegrees(l, 180):
			return one(expr.Sub(expr.Deg(90), r))
		case ok && expr.IsDegrees(l, 90):
			return one(expr.Sub(expr.Deg(180), r))
		}
		return nil
	}},
	{ID: "angles-not-halved", Prior: 1, Rule: func(_ *Context, n expr.Node) []expr.Node {
		l, r, ok := expr.Operands(n, expr.OpDiv)
		if full, _, sub := expr.Operands(l, expr.OpSub); ok && r == expr.N(2) && sub && expr.IsDegrees(full, 360) {
			return one(l)
		}
		return nil
	}},
	{ID: "directions-added", Prior: 2, Rule: func(c *Context, n expr.Node) []expr.Node {
		if l, r, ok := expr.Operands(n, expr.OpSub); ok && c.isDirection(l) && c.isDirection(r) {
			return one(expr.Add(l, r))
		}
		return nil
	}},
	{ID: "bracket-lost", Prior: 1.8, Rule: func(c *Context, n expr.Node) []expr.Node { // 180° − (α + γ) without its bracket
		if !c.Quantity.IsAngle() {
			return nil
		}
		l, r, ok := expr.Operands(n, expr.OpSub)
		full, first, two := expr.Operands(l, expr.OpSub)
		if !ok || !two || !expr.IsDegrees(full, 180) {
			return nil
		}
		return []expr.Node{expr.Add(l, r), expr.Add(expr.Sub(full, r), first)}
	}},
	{ID: "direction-for-angle", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node {
		if l, r, ok := expr.Operands(n, expr.OpSub); ok && c.isDirection(l) && c.isDirection(r) {
			return []expr.Node{l, r}
		}
		if l, r, ok := expr.Operands(n, expr.OpAdd); ok && expr.IsDegrees(l, 90) && c.isStated(r) { // the turn from the axis beside it
			return one(r)
		}
		return nil
	}},
	{ID: "reflex-angle", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node {
		l, r, ok := expr.Operands(n, expr.OpSub)
		if _, _, away := expr.Operands(l, expr.OpSub); ok && away && expr.IsDegrees(r, 360) && !c.Quantity.Turns {
			return one(l)
		}
		if _, _, away := expr.Operands(r, expr.OpSub); ok && away && expr.IsDegrees(l, 360) && !c.Quantity.Turns {
			return one(r)
		}
		if c.atRoot() && c.betweenArrows(n) {
			return one(expr.Sub(expr.Deg(360), n))
		}
		return nil
	}},
	{ID: "negative-axis", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node {
		if c.isDirection(n) || c.Quantity.Turns && c.atRoot() {
			return one(expr.Sub(expr.Deg(180), n))
		}
		return nil
	}},
	{ID: "other-axis", Prior: 2, Rule: func(c *Context, n expr.Node) []expr.Node {
		if q := c.symbol(n); q != nil && c.Quantity.Given && q.Turns {
			return c.otherAxis(q)
		}
		if k, ok := n.(expr.Fn); ok && c.Quantity.Signed && expr.IsTrig(k) { // of the turn from an axis
			if _, told := k.X.(expr.Ang); told || isArctangent(k.X) {
				return one(expr.Fn{Func: k.Func, Mode: k.Mode, X: expr.Sub(expr.Deg(90), k.X)})
			}
		}
		if c.isDirection(n) || c.Quantity.Turns && c.atRoot() {
			return one(expr.Sub(expr.Deg(90), n))
		}
		return nil
	}},
	{ID: "clockwise", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node { // sense of rotation, by definition
		if c.isDirection(n) || c.Quantity.Turns && c.atRoot() {
			return one(expr.Neg{X: n})
		}
		return nil
	}},
	{ID: "opposite-sense", Prior: 2, Rule: func(c *Context, n expr.Node) []expr.Node { // tail for head, by definition
		if c.isDirection(n) || c.Quantity.Turns && c.atRoot() {
			return one(expr.Add(n, expr.Deg(180)))
		}
		return nil
	}},
	{ID: "other-force", Prior: 2, Rule: func(c *Context, n expr.Node) []expr.Node {
		if q := c.symbol(n); q != nil {
			return append(c.others(q), c.otherTurns(q)...)
		}
		if c.atRoot() {
			return c.others(c.Quantity)
		}
		return nil
	}},
	{ID: "right-triangle-assumed", Scope: InKind, Prior: 2},
	{ID: "bisector-assumed", Scope: InKind, Prior: 0.5},
	{ID: "minutes-as-decimals", Scope: InAnswer, Prior: 0.3, Written: func(c *Context, v float64) []float64 {
		if !c.Quantity.IsAngle() {
			return nil
		}
		whole, part := math.Modf(math.Round(v*1e9) / 1e9) // 33°, not 32° and sixty minutes
		return []float64{whole + part*0.6}
	}},
}

// isStated tells whether n is an angle that the statement gives, or gives the
// slope triangle of.
func (c *Context) isStated(n expr.Node) bool {
	q := c.symbol(n)
	return q != nil && c.isAngle(n) && (q.Given || q.IsSlopeAngle())
}

// others lists what belongs to the other forces in the place of q: Twin names
// the next one's.
func (c *Context) others(q *lesson.Quantity) []expr.Node {
	var all []expr.Node
	for name := q.Twin; name != "" && name != q.Name && len(all) < mostOthers; name = c.Lesson.Quantity(name).Twin {
		if name != c.Quantity.Name {
			all = append(all, expr.S(name))
		}
	}
	return all
}

// otherTurns is a direction given by an acute angle, where it is misread: another
// force's angle, to the sides that its own arrow lies.
func (c *Context) otherTurns(q *lesson.Quantity) []expr.Node {
	acute := func(h statics.Heading) bool { return h.Form != statics.Slope && h.Turn > 0 && h.Turn.Degrees() < 90 }
	var all []expr.Node
	for name := q.Twin; c.Quantity.Given && q.Turns && acute(q.Heading) && name != "" && name != q.Name && len(all) < mostOthers; name = c.Lesson.Quantity(name).Twin {
		h, other := q.Heading, c.Lesson.Quantity(name).Heading
		if acute(other) && other.Turn != h.Turn && (other.Axis != h.Axis || other.Sense != h.Sense) { // else it is the other's direction
			h.Turn = other.Turn
			all = append(all, q.Literal(lesson.Degrees(h.Angle())))
		}
	}
	return all
}

// mostOthers bounds the forces that one is taken for.
const mostOthers = 5

// betweenArrows tells whether n is the angle between two forces, by their
// directions as a statement gives them.
func (c *Context) betweenArrows(n expr.Node) bool {
	q := c.Quantity
	return q.Supplement != "" && q.Between[1] == expr.Deg(180) && !expr.Contains(n, func(m expr.Node) bool {
		s := c.symbol(m)
		return s != nil && !s.Given && !s.IsSlopeAngle()
	})
}

// otherAxis is a direction given, its angle taken from the other axis: of 43°
// above −x, 47° above −x too.
func (c *Context) otherAxis(q *lesson.Quantity) []expr.Node {
	all := one(expr.Sub(expr.Deg(90), expr.S(q.Name)))
	if h := q.Heading; h.Form != statics.Slope && h != (statics.Heading{}) && h.Turn > 0 && h.Turn.Degrees() < 90 && !(h.Form == statics.FromAxis && h.Axis == statics.PlusX) {
		h.Turn = 90*statics.Degree - h.Turn
		all = append(all, q.Literal(lesson.Degrees(h.Angle())))
	}
	return all
}
