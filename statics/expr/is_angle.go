package expr

// IsAngle tells a tree whose value is an angle from one that is a plain number
// or a force: an inverse key, and sums, multiples and sizes of angles; symbol
// tells which symbols are angles.
func IsAngle(n Node, symbol func(name string) bool) bool {
	switch n := n.(type) {
	case Ang:
		return true
	case Sym:
		return symbol(n.Name)
	case Neg:
		return IsAngle(n.X, symbol)
	case Fn:
		return n.Func.inverse() || n.Func == FnAbs && IsAngle(n.X, symbol)
	case Bin:
		return angleOf(n.Op, IsAngle(n.L, symbol), IsAngle(n.R, symbol))
	}
	return false
}

// angleOf tells whether two values, each an angle or not, make an angle.
func angleOf(op Op, left, right bool) bool {
	switch op {
	case OpAdd, OpSub:
		return left || right
	case OpMul:
		return left != right
	case OpDiv:
		return left && !right
	}
	return false
}

// inverse tells the keys that give an angle.
func (f Func) inverse() bool { return f == FnAsin || f == FnAcos || f == FnAtan }
