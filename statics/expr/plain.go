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
	p.write(n, false)
	return p.String()
}

type plainPrinter struct {
	strings.Builder
	names Naming
}

// write writes n; tight says that a times, a division or an exponent follows.
func (p *plainPrinter) write(n Node, tight bool) {
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
		p.operand(n.X, gripOf(n.X) <= gripNeg, tight)
	case Bin:
		p.binary(n, tight)
	case Fn:
		p.function(n, tight)
	default:
		panic("expr: unknown node")
	}
}

// operand writes n, in parentheses or not.
func (p *plainPrinter) operand(n Node, enclosed, tight bool) {
	if !enclosed {
		p.write(n, tight)
		return
	}
	p.WriteByte('(')
	p.write(n, false)
	p.WriteByte(')')
}

func (p *plainPrinter) binary(n Bin, tight bool) {
	left, right := need(n.Op)
	encloseL, encloseR := gripOf(n.L) < left, gripOf(n.R) < right
	switch n.Op {
	case OpAdd, OpSub:
		p.operand(n.L, encloseL, false)
		p.WriteString(" " + opSign(n.Op) + " ")
		p.operand(n.R, encloseR, tight)
	case OpMul, OpDiv:
		p.operand(n.L, encloseL || isQuotient(n.L), true)
		p.WriteString(opSign(n.Op))
		p.operand(n.R, encloseR, tight)
	case OpPow:
		p.operand(n.L, encloseL, true)
		switch n.R {
		case Num{2}:
			p.WriteString("²")
		case Num{3}:
			p.WriteString("³")
		default:
			p.WriteByte('^')
			p.operand(n.R, encloseR, tight)
		}
	}
}

func (p *plainPrinter) function(n Fn, tight bool) {
	switch n.Func {
	case FnAbs:
		if holdsAbs(n.X) { // bars inside bars could pair up wrongly
			p.WriteString("abs")
			p.operand(n.X, true, false)
			return
		}
		p.WriteByte('|')
		p.write(n.X, false)
		p.WriteByte('|')
		return
	case FnSqrt:
		p.WriteString("√")
		p.operand(n.X, tight || !isBare(n.X), tight)
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
	enclosed := tight || inverse || !isBare(n.X)
	if !enclosed {
		p.WriteByte(' ')
	}
	p.operand(n.X, enclosed, tight)
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
