package expr

// keyName is the name of a trigonometric key and whether it is the inverse.
func keyName(f Func) (name string, inverse bool) {
	switch f {
	case FnSin:
		return "sin", false
	case FnCos:
		return "cos", false
	case FnTan:
		return "tan", false
	case FnAsin:
		return "sin", true
	case FnAcos:
		return "cos", true
	case FnAtan:
		return "tan", true
	}
	panic("expr: unknown function")
}

// modeName is what a key's mode prints as; degrees go without saying.
func modeName(m Mode) string {
	switch m {
	case InDegrees:
		return ""
	case InRadians:
		return "rad"
	case InGradians:
		return "grad"
	}
	panic("expr: unknown mode")
}

// opSign is the sign of a sum, a product or a quotient in plain text.
func opSign(op Op) string {
	switch op {
	case OpAdd:
		return "+"
	case OpSub:
		return minus
	case OpMul:
		return "·"
	case OpDiv:
		return "/"
	}
	panic("expr: unknown operation")
}

// unitSign is what follows the number of a literal angle.
func unitSign(u AngleUnit) string {
	switch u {
	case UnitDeg:
		return "°"
	case UnitRad:
		return " rad"
	case UnitGrad:
		return " grad"
	}
	panic("expr: unknown angle unit")
}
