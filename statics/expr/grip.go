package expr

// grip is how tightly a printed node holds together. A node is put in
// parentheses where its place asks for more than it has.
type grip uint8

const (
	gripSum     grip = iota // a + b, a − b
	gripNeg                 // −a, which takes in a whole product: −a·b is −(a·b)
	gripUnit                // 1.52 rad: two words
	gripProduct             // a·b, a/b
	gripPower               // a², cos a, 30°: no exponent can follow
	gripAtom                // a, 12, π, |a|
)

// gripOf is the grip of n in plain text. MathML and speech differ from it in
// what they say themselves.
func gripOf(n Node) grip {
	switch n := n.(type) {
	case Num:
		switch {
		case n.Value < 0: // not a tree we build, but printed truthfully
			return gripNeg
		case usesPower(n.Value):
			return gripPower
		}
		return gripAtom
	case Ang:
		switch {
		case n.Value < 0:
			return gripNeg
		case n.Unit == UnitDeg:
			return gripPower
		}
		return gripUnit
	case Pi, Sym:
		return gripAtom
	case Neg:
		return gripNeg
	case Bin:
		switch n.Op {
		case OpAdd, OpSub:
			return gripSum
		case OpMul, OpDiv:
			return gripProduct
		}
		return gripPower
	case Fn:
		if n.Func == FnAbs {
			return gripAtom
		}
		return gripPower
	}
	panic("expr: unknown node")
}

// usesPower tells whether a number prints with a power of ten.
func usesPower(v float64) bool {
	if v == 0 || v-v != 0 {
		return false
	}
	_, exponent := decimal(v, treeDigits)
	return exponent < firstPlain || exponent > lastPlain
}

// behind is what follows a printed node, as far as a function key that needs no
// parentheses around its argument must know.
type behind uint8

const (
	loose behind = iota // nothing, a plus or a minus
	tight               // a times, a division or an exponent, which could be drawn into the argument
)

// isBare tells whether a function key needs no parentheses around n: a name, a
// number, π or a number of degrees, with nothing behind it that a reader could
// draw into the argument.
func isBare(n Node) bool {
	switch n := n.(type) {
	case Sym, Pi:
		return true
	case Num:
		return gripOf(n) == gripAtom
	case Ang:
		return gripOf(n) == gripPower
	}
	return false
}

// needNeg is the least grip that what is negated must have, as need tells it of
// an operation: −(−a), −(a + b).
const needNeg = gripNeg + 1

// need is the least grip that each operand of op must have to stand without
// parentheses: on the right more than the operation's own, so that a − (b − c)
// and a/(b·c) keep theirs, and never a minus.
func need(op Op) (left, right grip) {
	switch op {
	case OpAdd, OpSub:
		return gripSum, gripUnit
	case OpMul, OpDiv:
		return gripProduct, gripPower
	case OpPow:
		return gripAtom, gripAtom
	}
	panic("expr: unknown operation")
}
