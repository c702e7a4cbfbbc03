package expr

// AsBin matches n as a binary operation.
func AsBin(n Node, op Op) (l, r Node, ok bool) {
	b, ok := n.(Bin)
	if !ok || b.Op != op {
		return nil, nil, false
	}
	return b.L, b.R, true
}

// AsFn matches n as a function.
func AsFn(n Node, f Func) (x Node, ok bool) {
	k, ok := n.(Fn)
	if !ok || k.Func != f {
		return nil, false
	}
	return k.X, true
}

// IsDegrees tells whether n is the literal angle of v degrees.
func IsDegrees(n Node, v float64) bool { return n == Deg(v) }

// Contains tells whether any node of n has the property.
func Contains(n Node, has func(Node) bool) bool {
	found := false
	Walk(n, func(_ int, m Node) { found = found || has(m) })
	return found
}

// IsForward and IsInverse tell the trigonometric keys.
func IsForward(n Node) bool {
	k, ok := n.(Fn)
	return ok && (k.Func == FnSin || k.Func == FnCos || k.Func == FnTan)
}

func IsInverse(n Node) bool {
	k, ok := n.(Fn)
	return ok && (k.Func == FnAsin || k.Func == FnAcos || k.Func == FnAtan)
}
