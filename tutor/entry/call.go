package entry

import (
	"math"

	"closingside/statics"
	"closingside/statics/expr"
)

// call = { "arc" } function [ "⁻¹" | "^-1" | "-1" | power ] argument
//
//	argument = "(" sum ")" | bare
//
// A power between a function and its argument belongs to the value, but for −1,
// which turns the function round: sin² 30 is (sin 30)², sin^-1 0.5 is an angle.
func (p *parser) call() expr.Node {
	word, inverse := p.function()
	power := p.raised(word)
	switch {
	case power == nil && p.minusOne():
		inverse = true
		word.span = word.through(p.tokens[p.pos-1].span)
	case power != nil && power.num.value == -1:
		if inverse {
			power.fail("function-power", "function", word.fn.name)
		}
		inverse = true
		word.span = word.through(power.span)
		power = nil
	}
	if inverse {
		f := word.fn
		if f.inverse == f.fn {
			word.fail("function-power", "function", f.name)
		}
		word.fn = function{fn: f.inverse, inverse: f.inverse, name: f.name + "⁻¹"}
	}
	p.calls = append(p.calls, word)
	n := expr.Node(expr.Fn{Func: word.fn.fn, X: p.argument(word)})
	if power != nil {
		n = expr.Pow(n, p.exponent(*power))
	}
	return n
}

// function reads the function's name, and whether "arc" turns it round.
func (p *parser) function() (word token, inverse bool) {
	word = p.take()
	for word.kind == tInverse {
		next := p.take()
		if next.kind != tFunc && next.kind != tInverse {
			word.fail("inverse-alone")
		}
		inverse = true
		next.span = word.through(next.span)
		word = next
	}
	return word, inverse
}

// raised reads a power between a function and its argument, −1 or a whole number
// from 1; nil where there is none.
func (p *parser) raised(word token) *token {
	t := p.peek()
	switch {
	case t.kind == tSuper:
		p.take()
	case t.is('^'):
		p.take()
		n, ok := p.integer()
		if !ok {
			p.peek().fail("function-power", "function", word.fn.name)
		}
		t = token{kind: tSuper, span: t.through(p.tokens[p.pos-1].span), num: number{value: n}}
	default:
		return nil
	}
	if v := t.num.value; v != -1 && (v < 1 || v != math.Trunc(v)) {
		t.fail("function-power", "function", word.fn.name)
	}
	return &t
}

// minusOne reads the −1 of sin-1(0.5), as sin⁻¹ comes out of a copy, and of
// sin(-1)(0.5): nobody means the sine of −1° times what follows.
func (p *parser) minusOne() bool {
	from := p.pos
	bracket := p.peek().kind == tOpen
	if !bracket && !p.peek().is('-') {
		return false
	}
	n, ok := p.integer()
	next := p.peek().kind
	if ok && n == -1 && (next == tOpen || next == tNumber && !bracket) {
		return true
	}
	p.pos = from
	return false
}

// integer reads an exponent behind ^: 2, -1, (-1).
func (p *parser) integer() (v float64, ok bool) {
	bracket := p.peek().kind == tOpen
	if bracket {
		p.take()
	}
	sign := 1.0
	if p.accept('-') {
		sign = -1
	}
	t := p.peek()
	if t.kind != tNumber || t.num.value != math.Trunc(t.num.value) {
		return 0, false
	}
	p.take()
	if bracket {
		if p.peek().kind != tClose {
			return 0, false
		}
		p.take()
	}
	return sign * t.num.value, true
}

// argument reads what a function is taken of, and doubts what looks like
// radians.
func (p *parser) argument(word token) expr.Node {
	first := len(p.leaves)
	if t := p.peek(); t.kind == tEnd || t.kind == tClose || t.kind == tOp && t.op != '-' && t.op != '+' && t.op != '|' {
		word.fail("function-alone", "function", word.fn.name)
	}
	var n expr.Node
	from := p.peek().span
	switch {
	case p.peek().kind == tOpen:
		n = p.group()
	case word.fn.fn == expr.FnSqrt || word.fn.fn == expr.FnAbs:
		n = p.rooted()
	default:
		n = p.bare()
	}
	at := from.through(p.tokens[p.pos-1].span)
	if p.looksLikeRadians(word.fn.fn, n, first) {
		p.doubts(at, "radians", "function", word.fn.name)
	}
	if (p.tokens[p.pos-1].kind != tClose || word.fn.fn == expr.FnSqrt) && p.reachesTooLittle(word.fn.fn) {
		p.doubts(word.through(at), "reach", "function", word.fn.name)
	}
	return n
}

// reachesTooLittle reports whether what goes on behind a bare argument was
// hardly meant to stand outside: tan⁻¹ 682.3/21.77, √340² + 610², and with
// brackets √(340)² + 610².
func (p *parser) reachesTooLittle(f expr.Func) bool {
	next := p.peek()
	switch f {
	case expr.FnAsin, expr.FnAcos, expr.FnAtan:
		return next.is('/') || next.is('*') || next.kind == tFunc || next.kind == tOpen
	case expr.FnSqrt:
		behind := p.pos + 1
		switch {
		case next.is('^'):
			behind++
		case next.kind != tSuper:
			return false
		}
		return behind < len(p.tokens) && (p.tokens[behind].is('+') || p.tokens[behind].is('-'))
	}
	return false
}

// rooted = ( "+" | "−" ) rooted | atom [ unit ]       √3/2 is (√3)/2
func (p *parser) rooted() expr.Node {
	defer p.enter()()
	if minus := p.accept('-'); minus || p.accept('+') {
		return negated(minus, p.rooted())
	}
	n := p.atom()
	if p.peek().kind == tUnit {
		n = p.measured(n, p.take())
	}
	return n
}

// bare = signed { name | "π" }            cos 2θ, but (cos 2)·30 and (cos 25°)(340)
//
// A bare argument ends at · and / and before a bracket, a function, or anything
// behind a unit, and before the name of what is no angle.
func (p *parser) bare() expr.Node {
	defer p.enter()()
	n := p.signed()
	for (p.turns(p.peek()) || p.peek().kind == tPi) && p.tokens[p.pos-1].kind != tUnit && p.tokens[p.pos-1].kind != tClose {
		n = expr.Mul(n, p.power())
	}
	return n
}

// turns tells a name of which a sine may be taken: cos 2θ, but (cos 40)·T.
func (p *parser) turns(t token) bool {
	if t.kind != tName || p.scope.Dims == nil {
		return t.kind == tName
	}
	dim, ok := p.scope.Dims(t.name)
	return !ok || dim == statics.DimAngle || dim == statics.DimRatio
}

// wholeTurn is 2π radians, rounded up to the digits that are written.
const wholeTurn = 6.2832

// looksLikeRadians reports whether the argument n of a sine, cosine or tangent
// was hardly meant in degrees: a bare number with two decimals or more, no
// larger than a turn of 2π (cos(1.518)), or a multiple of π (sin(π/3)).
func (p *parser) looksLikeRadians(f expr.Func, n expr.Node, first int) bool {
	if f != expr.FnSin && f != expr.FnCos && f != expr.FnTan {
		return false
	}
	if minus, ok := n.(expr.Neg); ok {
		n = minus.X
	}
	if v, ok := n.(expr.Num); ok {
		return p.leaves[first].num.decimals >= 2 && v.Value <= wholeTurn && !p.scope.holdsAngle(v.Value)
	}
	return partOfPi(n)
}

// holdsAngle reports whether an angle has this value here, or its opposite: a
// small angle that the learner found looks like radians, and is none.
func (sc *Scope) holdsAngle(v float64) bool {
	if sc == nil || sc.Known == nil || sc.Dims == nil {
		return false
	}
	for _, name := range sc.Words.names {
		if dim, ok := sc.Dims(name); ok && dim == statics.DimAngle && math.Abs(sc.Known(name)) == v {
			return true
		}
	}
	return false
}

// partOfPi reports whether n is a multiple of π, no larger than a turn, of
// numbers alone.
func partOfPi(n expr.Node) bool {
	pi, other := false, false
	expr.Walk(n, func(_ int, n expr.Node) {
		switch n.(type) {
		case expr.Pi:
			pi = true
		case expr.Sym, expr.Fn, expr.Ang:
			other = true
		}
	})
	return pi && !other && math.Abs(expr.Eval(n, nil)) <= wholeTurn
}
