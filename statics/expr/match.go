package expr

// Operands matches n as the binary operation op: l op r.
func Operands(n Node, op Op) (l, r Node, ok bool) {
	b, ok := n.(Bin)
	if !ok || b.Op != op {
		return nil, nil, false
	}
	return b.L, b.R, true
}

// Argument matches n as the function f of x, in any mode.
func Argument(n Node, f Func) (x Node, ok bool) {
	k, ok := n.(Fn)
	if !ok || k.Func != f {
		return nil, false
	}
	return k.X, true
}

// IsDegrees tells whether n is the literal angle of v degrees.
func IsDegrees(n Node, v float64) bool { return n == Deg(v) }

// Contains tells whether n or any node below it has the property.
func Contains(n Node, has func(Node) bool) bool {
	found := false
	Walk(n, func(_ int, m Node) { found = found || has(m) })
	return found
}

// IsTrig tells whether n is a sine, a cosine or a tangent.
func IsTrig(n Node) bool {
	k, ok := n.(Fn)
	return ok && (k.Func == FnSin || k.Func == FnCos || k.Func == FnTan)
}

// IsInverseTrig tells whether n is an inverse sine, cosine or tangent.
func IsInverseTrig(n Node) bool {
	k, ok := n.(Fn)
	return ok && (k.Func == FnAsin || k.Func == FnAcos || k.Func == FnAtan)
}
