package tutor

import (
	"closingside/statics/expr"
)

// one is a list of one node.
func one(n expr.Node) []expr.Node { return []expr.Node{n} }

// bin matches n as a binary operation.
func bin(n expr.Node, op expr.Op) (l, r expr.Node, ok bool) {
	b, ok := n.(expr.Bin)
	if !ok || b.Op != op {
		return nil, nil, false
	}
	return b.L, b.R, true
}

// fn matches n as a function.
func fn(n expr.Node, f expr.Func) (x expr.Node, ok bool) {
	k, ok := n.(expr.Fn)
	if !ok || k.Func != f {
		return nil, false
	}
	return k.X, true
}

// isDegrees tells whether n is the literal angle of v degrees.
func isDegrees(n expr.Node, v float64) bool { return n == expr.Deg(v) }

// contains tells whether any node of n has the property.
func contains(n expr.Node, has func(expr.Node) bool) bool {
	found := false
	expr.Walk(n, func(_ int, m expr.Node) { found = found || has(m) })
	return found
}

// isForward and isInverse tell the trigonometric keys.
func isForward(n expr.Node) bool {
	k, ok := n.(expr.Fn)
	return ok && (k.Func == expr.FnSin || k.Func == expr.FnCos || k.Func == expr.FnTan)
}

func isInverse(n expr.Node) bool {
	k, ok := n.(expr.Fn)
	return ok && (k.Func == expr.FnAsin || k.Func == expr.FnAcos || k.Func == expr.FnAtan)
}

// isCross tells whether n is the cross term of the cosine law: a product with
// a cosine in it.
func isCross(n expr.Node) bool {
	_, _, product := bin(n, expr.OpMul)
	return product && contains(n, func(m expr.Node) bool { _, ok := fn(m, expr.FnCos); return ok })
}

// isSquare matches x².
func isSquare(n expr.Node) (x expr.Node, ok bool) {
	x, two, ok := bin(n, expr.OpPow)
	return x, ok && two == expr.N(2)
}
