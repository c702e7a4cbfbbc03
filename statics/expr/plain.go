package expr

import "strings"

// Plain writes n in one line of plain text, as a textbook would:
//
//	√(F₁² + F₂² − 2·F₁·F₂·cos γ)    sin⁻¹(F₂·sin(γ)/R)    118° − θ
//
// It can be read back to the same tree (as long as numbers have at most ten
// significant digits) by any reader that holds to the common rules:
//
//	sum     = ["−"] product { ("+" | "−") product }   a first minus takes the whole product
//	product = power { ("·" | "/") power }             from the left
//	power   = atom [ "²" | "³" | "^" atom ]
//	atom    = number ["°"] | number ("rad" | "grad") | "π" | name | "(" sum ")" | "|" sum "|"
//	        | ("√" | "sin" | "cos⁻¹" | …) ( "(" sum ")" | name | number ["°"] | "π" )
//
// Parentheses are written wherever a reader with other habits might go astray:
// around a quotient that is multiplied or divided on, around the argument of a
// function that is, and around every minus but the first of a sum. A function
// in parentheses is not followed by an exponent: (cos γ)².
//
// Keys in another angle mode than degrees print as cos_rad and sin⁻¹_grad.
// They stand for mistakes, and are not for a learner's eyes.
func Plain(n Node, names Naming) string {
	p := plainPrinter{names: names}
	p.write(n, loose)
	return p.String()
}

type plainPrinter struct {
	strings.Builder
	names Naming
}

func (p *plainPrinter) write(n Node, next behind) {
	switch n := n.(type) {
	case Num:
		p.WriteString(FormatNumber(n.Value, treeDigits))
	case Ang:
		p.WriteString(FormatNumber(n.Value, treeDigits))
		p.WriteString(unitSign(n.Unit))
	case Pi:
		p.WriteString("π")
	case Sym:
		p.WriteString(p.names.symbol(n.Name).String())
	case Neg:
		p.WriteString(minus)
		p.operand(n.X, needNeg, next)
	case Bin:
		p.binary(n, next)
	case Fn:
		p.function(n, next)
	default:
		panic("expr: unknown node")
	}
}

// operand writes n, in parentheses where it has less than the least grip.
func (p *plainPrinter) operand(n Node, least grip, next behind) {
	if gripOf(n) < least {
		p.enclosed(n)
		return
	}
	p.write(n, next)
}

func (p *plainPrinter) enclosed(n Node) {
	p.WriteByte('(')
	p.write(n, loose)
	p.WriteByte(')')
}

func (p *plainPrinter) binary(n Bin, next behind) {
	left, right := need(n.Op)
	switch n.Op {
	case OpAdd, OpSub:
		p.operand(n.L, left, loose)
		p.WriteString(" " + opSign(n.Op) + " ")
		p.operand(n.R, right, next)
	case OpMul, OpDiv:
		if isQuotient(n.L) {
			p.enclosed(n.L)
		} else {
			p.operand(n.L, left, tight)
		}
		p.WriteString(opSign(n.Op))
		p.operand(n.R, right, next)
	case OpPow:
		p.operand(n.L, left, tight)
		switch n.R {
		case Num{2}:
			p.WriteString("²")
		case Num{3}:
			p.WriteString("³")
		default:
			p.WriteByte('^')
			p.operand(n.R, right, next)
		}
	}
}

func (p *plainPrinter) function(n Fn, next behind) {
	switch n.Func {
	case FnAbs:
		if holdsAbs(n.X) { // bars inside bars could pair up wrongly
			p.WriteString("abs")
			p.enclosed(n.X)
			return
		}
		p.WriteByte('|')
		p.write(n.X, loose)
		p.WriteByte('|')
		return
	case FnSqrt:
		p.WriteString("√")
		if next == tight || !isBare(n.X) {
			p.enclosed(n.X)
			return
		}
		p.write(n.X, loose)
		return
	}
	name, inverse := keyName(n.Func)
	p.WriteString(name)
	if inverse {
		p.WriteString("⁻¹")
	}
	if mode := modeName(n.Mode); mode != "" {
		p.WriteString("_" + mode)
	}
	if next == tight || inverse || !isBare(n.X) {
		p.enclosed(n.X)
		return
	}
	p.WriteByte(' ')
	p.write(n.X, loose)
}

func isQuotient(n Node) bool {
	b, ok := n.(Bin)
	return ok && b.Op == OpDiv
}

func holdsAbs(n Node) (holds bool) {
	Walk(n, func(_ int, n Node) {
		if f, ok := n.(Fn); ok && f.Func == FnAbs {
			holds = true
		}
	})
	return holds
}
