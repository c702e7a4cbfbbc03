package slips

import "closingside/statics/expr"

// Mistakes with trigonometry and the calculator (common practice, except
// where the rule's comment names a definition).
var trigSlips = []Slip{
	{ID: "sine-cosine-swapped", Prior: 3, Rule: func(c *Context, n expr.Node) []expr.Node {
		if q := c.symbol(n); q != nil && c.Quantity.Given && q.Turns { // in both components, as if from the other axis
			return c.otherAxis(q)
		}
		if over, under, ok := sineLaw(n); ok { // in both places
			return one(expr.Div(SwapSineCosine(over), SwapSineCosine(under)))
		}
		k, ok := n.(expr.Fn)
		to, swap := otherKey[k.Func]
		if !ok || !swap {
			return nil
		}
		other := expr.Fn{Func: to, Mode: k.Mode, X: k.X}
		return c.withSign(other, expr.Eval(k, c.Lesson.Truth)*expr.Eval(other, c.Lesson.Truth) < 0)
	}},
	{ID: "tangent-taken", Prior: 0.2, Lone: true, Rule: func(c *Context, n expr.Node) []expr.Node {
		if k, ok := n.(expr.Fn); ok && c.ofComponent() && (k.Func == expr.FnSin || k.Func == expr.FnCos) {
			return one(expr.Tan(k.X))
		}
		return nil
	}},
	{ID: "tangent-missed", Prior: 0.2, Lone: true, Rule: func(c *Context, n expr.Node) []expr.Node { // leg over leg is the tangent
		if ratio, ok := expr.Argument(n, expr.FnAtan); ok && !c.Quantity.Given {
			return []expr.Node{expr.Asin(ratio), expr.Acos(ratio)}
		}
		return nil
	}},
	{ID: "sine-missing", Prior: 0.2, Lone: true, Rule: func(_ *Context, n expr.Node) []expr.Node {
		over, under, ok := sineLaw(n)
		if !ok {
			return nil
		}
		side, key, _ := expr.Operands(over, expr.OpMul)
		return one(expr.Div(expr.Mul(side, key.(expr.Fn).X), under.(expr.Fn).X))
	}},
	{ID: "radian-mode", Scope: InStep, Prior: 3, Rule: wrongMode(expr.InRadians)},
	{ID: "gradian-mode", Scope: InStep, Prior: 0.6, Rule: wrongMode(expr.InGradians)},
	{ID: "inverse-missing", Prior: 1.5, Rule: func(_ *Context, n expr.Node) []expr.Node {
		if expr.IsInverseTrig(n) {
			return one(n.(expr.Fn).X)
		}
		return nil
	}},
	{ID: "ratio-inverted", Prior: 2, Rule: func(c *Context, n expr.Node) []expr.Node {
		l, r, ok := expr.Operands(n, expr.OpDiv)
		if !ok || isPlain(r) && !c.Quantity.Given { // a half is no ratio of quantities, rise over run is
			return nil
		}
		if over, under, ok := sineLaw(n); ok {
			side, key, _ := expr.Operands(over, expr.OpMul)
			return one(expr.Div(expr.Mul(side, under), key))
		}
		out := one(expr.Div(r, l))
		if a, sine, ok := expr.Operands(l, expr.OpMul); ok && expr.IsTrig(sine) && !expr.Contains(r, expr.IsTrig) { // that of the sides alone
			out = append(out, expr.Div(expr.Mul(r, sine), a))
		}
		return out
	}},
	{ID: "other-side", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node {
		over, under, ok := expr.Operands(n, expr.OpDiv)
		if q := c.symbol(under); !ok || q == nil || q.Given || !c.isMagnitude(under) || !expr.Contains(over, expr.IsTrig) {
			return nil
		}
		var out []expr.Node
		for i := range c.Lesson.Quantities { // a given side in place of the one found
			q := &c.Lesson.Quantities[i]
			if side := expr.S(q.Name); q.Given && c.isMagnitude(side) && !expr.Contains(over, func(m expr.Node) bool { return m == side }) {
				out = append(out, expr.Div(over, side))
			}
		}
		return out
	}},
	{ID: "obtuse-missed", Prior: 3, Rule: func(_ *Context, n expr.Node) []expr.Node { // sin x = sin(180° − x)
		if l, r, ok := expr.Operands(n, expr.OpSub); ok && expr.IsDegrees(l, 180) {
			if _, sine := expr.Argument(r, expr.FnAsin); sine {
				return one(r)
			}
		}
		return nil
	}},
	{ID: "obtuse-assumed", Prior: 1, Rule: func(c *Context, n expr.Node) []expr.Node {
		if _, sine := expr.Argument(n, expr.FnAsin); sine && c.atRoot() {
			return one(expr.Sub(expr.Deg(180), n))
		}
		return nil
	}},
	{ID: "quadrant-missed", Prior: 5, Rule: func(c *Context, n expr.Node) []expr.Node { // the principal value, by definition
		l, r, ok := expr.Operands(n, expr.OpAdd)
		if ok && expr.IsDegrees(l, 180) && isArctangent(r) {
			return one(r)
		}
		l, r, ok = expr.Operands(n, expr.OpSub)
		if ok && expr.IsDegrees(r, 180) && isArctangent(l) {
			return one(l)
		}
		l, r, ok = expr.Operands(n, expr.OpSub)
		if ok && c.Quantity.Given && expr.IsDegrees(l, 180) && isArctangent(r) { // of a slope, which has its sign from the sketch
			return one(expr.Neg{X: r})
		}
		return nil
	}},
	{ID: "reference-angle", Prior: 1.5, Rule: func(c *Context, n expr.Node) []expr.Node {
		if !c.Quantity.Turns || !c.atRoot() {
			return nil
		}
		var acute []expr.Node
		expr.Walk(n, func(_ int, m expr.Node) {
			if x, ok := expr.Argument(m, expr.FnAtan); ok {
				acute = one(expr.Atan(expr.Abs(x)))
			}
		})
		return acute
	}},
}

// Divided is ratio-inverted where no fraction of quantities is written: the force
// over the cosine for its component, or by the long side of a slope triangle over a
// leg; a component times the cosine for the force. Of a side by the sine law it is the
// whole fraction upside down, not that of the sines alone.
var Divided = Slip{ID: "ratio-inverted", Prior: 0.5, Rule: func(c *Context, n expr.Node) []expr.Node {
	if over, under, ok := sineLaw(n); ok {
		return one(expr.Div(under, over))
	}
	if over, long, ok := expr.Operands(n, expr.OpDiv); ok && c.ofComponent() && isPlain(long) {
		if force, leg, ok := expr.Operands(over, expr.OpMul); ok && c.isMagnitude(force) && isNumber(leg) {
			return one(expr.Mul(force, expr.Div(long, leg)))
		}
	}
	if l, r, ok := expr.Operands(n, expr.OpMul); ok && c.ofComponent() && expr.IsTrig(r) {
		return one(expr.Div(l, r))
	}
	if l, r, ok := expr.Operands(n, expr.OpDiv); ok && c.isLone(l) && expr.IsTrig(r) {
		return one(expr.Mul(l, r))
	}
	return nil
}}

// sineLaw matches a side by the sine law, or by Lamy's theorem: F·sin β/sin γ.
func sineLaw(n expr.Node) (over, under expr.Node, ok bool) {
	over, under, ok = expr.Operands(n, expr.OpDiv)
	if !ok || !expr.IsTrig(under) {
		return nil, nil, false
	}
	_, key, product := expr.Operands(over, expr.OpMul)
	return over, under, product && expr.IsTrig(key)
}

// withSign is what stands in a sum and, where the sketch gives it the other sign,
// that too.
func (c *Context) withSign(n expr.Node, other bool) []expr.Node {
	if c.Quantity.Equation && other {
		return []expr.Node{n, expr.Neg{X: n}}
	}
	return one(n)
}

// ofComponent tells whether the formula is for a component, or a sum of them.
func (c *Context) ofComponent() bool { return c.Quantity.Signed || c.Quantity.Equation }

// isLone tells whether n is one force, a component without its sign among them.
func (c *Context) isLone(n expr.Node) bool {
	if x, ok := expr.Argument(n, expr.FnAbs); ok {
		n = x
	}
	return c.isMagnitude(n)
}

var otherKey = map[expr.Func]expr.Func{
	expr.FnSin: expr.FnCos, expr.FnCos: expr.FnSin,
	expr.FnAsin: expr.FnAcos, expr.FnAcos: expr.FnAsin,
}

func isNumber(n expr.Node) bool { _, ok := n.(expr.Num); return ok }

// isPlain tells whether n is made of numbers alone, without a key pressed on an angle.
func isPlain(n expr.Node) bool { return len(expr.Symbols(n)) == 0 && !expr.Contains(n, expr.IsTrig) }

func isArctangent(n expr.Node) bool { _, ok := expr.Argument(n, expr.FnAtan); return ok }

// IsCalculatorMode tells whether the row called id is about a calculator's mode.
func IsCalculatorMode(id string) bool { return id == "radian-mode" || id == "gradian-mode" }

// wrongMode presses keys in the wrong angle mode: all of the step, the forward ones
// alone, the inverse ones alone.
func wrongMode(m expr.Mode) func(*Context, expr.Node) []expr.Node {
	press := func(n expr.Node, which func(expr.Node) bool) (expr.Node, bool) { return InMode(n, m, which) }
	return func(_ *Context, n expr.Node) []expr.Node {
		var out []expr.Node
		forward, any := press(n, expr.IsTrig)
		if any {
			out = append(out, forward)
		}
		if inverse, ok := press(n, expr.IsInverseTrig); ok {
			out = append(out, inverse)
			if both, _ := press(forward, expr.IsInverseTrig); any {
				out = append(out, both)
			}
		}
		return out
	}
}

// InMode is n with the keys that which tells pressed in the mode m; false where
// there are none. which is asked of functions and other nodes alike, and says yes to
// functions alone.
func InMode(n expr.Node, m expr.Mode, which func(expr.Node) bool) (expr.Node, bool) {
	return expr.RewriteAll(n, func(k expr.Node) (expr.Node, bool) {
		if !which(k) {
			return k, false
		}
		key := k.(expr.Fn)
		key.Mode = m
		return key, true
	})
}

// SwapSineCosine is a tree with sine and cosine exchanged throughout, and their
// inverses, as when all angles are taken from the other axis.
func SwapSineCosine(tree expr.Node) expr.Node {
	swapped, _ := expr.RewriteAll(tree, func(n expr.Node) (expr.Node, bool) {
		k, ok := n.(expr.Fn)
		to, swap := otherKey[k.Func]
		if !ok || !swap {
			return n, false
		}
		k.Func = to
		return k, true
	})
	return swapped
}
