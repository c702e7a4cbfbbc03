package entry

import (
	"strconv"

	"closingside/statics"
	"closingside/statics/expr"
)

// maxDepth bounds how deeply brackets, signs, powers and bare arguments may
// stand inside one another. It keeps the parser's recursion, and that of
// everything that walks a tree, far from the end of the stack.
const maxDepth = 40

// parser reads tokens by recursive descent. Besides the tree it keeps what the
// tree has no room for: where names and functions stood, and how finely each
// number was written. Leaves are met in the order in which expr.Walk visits
// them, so the i-th literal is the i-th Num or Ang of the tree.
type parser struct {
	tokens []token
	pos    int
	depth  int
	bars   int // | that are open
	scope  *Scope
	leaves []leaf
	names  []token
	calls  []token // function words, in the order of the tree's Fn nodes
	doubt  *Error  // something that reads well but hardly says what was meant
}

// leaf is a number in the tree.
type leaf struct {
	span
	num   number
	unit  statics.Unit // zero when none was written
	scale float64      // what the leaf's value is per unit of num
}

func (p *parser) peek() token { return p.tokens[p.pos] }

func (p *parser) take() token {
	t := p.tokens[p.pos]
	if t.kind != tEnd {
		p.pos++
	}
	return t
}

// accept takes the operator op if it is next.
func (p *parser) accept(op rune) bool {
	if !p.peek().is(op) {
		return false
	}
	p.pos++
	return true
}

// enter counts a level of nesting; the result takes it off again.
func (p *parser) enter() func() {
	if p.depth++; p.depth > maxDepth {
		p.peek().fail("too-deep", "limit", strconv.Itoa(maxDepth))
	}
	return func() { p.depth-- }
}

// sum = product { ( "+" | "−" ) product }
func (p *parser) sum() expr.Node {
	n := p.product()
	for {
		switch {
		case p.accept('+'):
			n = expr.Add(n, p.product())
		case p.accept('-'):
			n = expr.Sub(n, p.product())
		default:
			return n
		}
	}
}

// product = ( "+" | "−" ) product | chain { ( "·" | "/" ) chain }
//
// A first minus takes the whole product: −2·3 is −(2·3).
func (p *parser) product() expr.Node {
	if minus := p.accept('-'); minus || p.accept('+') {
		defer p.enter()()
		return negated(minus, p.product())
	}
	n := gather(nil, p.chain())
	for {
		switch {
		case p.accept('*'):
			n = gather(n, p.chain()) // a·(b c) becomes a·b·c, as formulas are written
		case p.accept('/'):
			from := p.pos
			under := p.signed()
			if p.fractionOfForce(lastFactor(n), under) {
				n = gather(expr.Div(n, under), p.chain())
				continue
			}
			behind := p.pos
			n = expr.Div(n, gather(nil, p.chainFrom(under)))
			p.doubtFraction(under, from, behind)
		default:
			return n
		}
	}
}

// gather multiplies n, unless it is nil, by the factors from the left.
func gather(n expr.Node, factors []expr.Node) expr.Node {
	for _, f := range factors {
		if n == nil {
			n = f
		} else {
			n = expr.Mul(n, f)
		}
	}
	return n
}

func negated(minus bool, n expr.Node) expr.Node {
	if minus {
		return expr.Neg{X: n}
	}
	return n
}

// chain = signed { power }                2(340)(610) cos 87°
//
// An implied product holds together more tightly than · and /, so 1/2x is
// 1/(2·x). No number may follow a number or a name without a sign between.
func (p *parser) chain() []expr.Node { return p.chainFrom(p.signed()) }

// chainFrom reads the rest of a chain that begins with first.
func (p *parser) chainFrom(first expr.Node) []expr.Node {
	factors := []expr.Node{first}
	for p.startsFactor() {
		before := p.tokens[p.pos-1]
		if t := p.peek(); t.kind == tNumber && before.kind != tClose && before.kind != tPi {
			t.fail("two-values")
		}
		factors = append(factors, p.power())
	}
	return factors
}

func (p *parser) startsFactor() bool {
	t := p.peek()
	switch t.kind {
	case tNumber, tName, tUnknown, tFunc, tInverse, tPi, tOpen, tFrac:
		return true
	case tOp:
		return t.op == '|' && p.bars == 0
	}
	return false
}

// signed = ( "+" | "−" ) signed | power
func (p *parser) signed() expr.Node {
	if minus := p.accept('-'); minus || p.accept('+') {
		defer p.enter()()
		return negated(minus, p.signed())
	}
	return p.power()
}

// power = atom [ unit ] { "²" | "³" | … } [ "^" signed ]
//
// A power is taken before a sign and from the right: −2^2 is −(2^2), 2^3^2 is
// 2^(3^2).
func (p *parser) power() expr.Node {
	n := p.atom()
	for p.peek().kind == tUnit {
		n = p.measured(n, p.take())
	}
	for p.peek().kind == tSuper {
		n = expr.Pow(n, p.exponent(p.take()))
	}
	if p.accept('^') {
		if t := p.peek(); t.kind == tNumber && t.num.value == 0 {
			p.doubts(t.span, "power-zero")
		}
		one := p.peek()
		defer p.enter()()
		n = expr.Pow(n, p.signed())
		if one.kind == tNumber && one.typed == "1" && p.peek().is('/') {
			p.doubts(one.through(p.peek().span), "power-half")
		}
	}
	return n
}

// exponent is the tree of a raised number. It is exact.
func (p *parser) exponent(t token) expr.Node {
	p.leaves = append(p.leaves, leaf{span: t.span, num: t.num, scale: 1})
	return expr.N(t.num.value)
}

// doubts notes something that reads well but hardly says what was meant.
func (p *parser) doubts(at span, key string, args ...string) {
	if p.doubt == nil {
		p.doubt = at.error(key, args...)
	}
}

// atom = number | name | "π" | "(" sum ")" | "|" sum "|" | call | "\\frac" group group
func (p *parser) atom() expr.Node {
	t := p.peek()
	switch t.kind {
	case tNumber:
		p.take()
		p.leaves = append(p.leaves, leaf{span: t.span, num: t.num, scale: 1})
		return expr.Num{Value: t.num.value}
	case tName:
		p.take()
		p.names = append(p.names, t)
		return expr.S(t.name)
	case tPi:
		p.take()
		return expr.Pi{}
	case tOpen:
		return p.group()
	case tFunc, tInverse:
		return p.call()
	case tFrac:
		return p.fraction()
	}
	if t.is('|') {
		return p.absolute()
	}
	p.misplaced(t)
	return nil
}

// group = "(" sum [ unit ] ")"
func (p *parser) group() expr.Node {
	defer p.enter()()
	open, bars := p.take(), p.bars
	unit := p.groupUnit()
	p.bars = 0
	n := p.sum()
	p.bars = bars
	if unit != nil {
		n = p.scaled(n, *unit)
	}
	switch t := p.peek(); {
	case t.kind == tEnd || t.is('='):
		open.fail("bracket-open")
	case t.kind != tClose:
		p.misplaced(t)
	}
	p.take()
	return n
}

// absolute = "|" sum "|"
func (p *parser) absolute() expr.Node {
	defer p.enter()()
	open := p.take()
	p.calls = append(p.calls, open)
	p.bars++
	n := p.sum()
	p.bars--
	if !p.accept('|') {
		if t := p.peek(); t.kind != tEnd && t.kind != tClose && !t.is('=') {
			p.misplaced(t)
		}
		open.fail("bar-open")
	}
	return expr.Abs(n)
}

// misplaced fails for a token that cannot stand where it does.
func (p *parser) misplaced(t token) {
	before := token{}
	if p.pos > 0 {
		before = p.tokens[p.pos-1]
	}
	if before.kind == tOpen && p.pos > 1 { // 650 N (C)
		p.scope.pulling(t, p.tokens[p.pos-2])
	}
	p.scope.pulling(t, before)
	switch {
	case t.kind == tUnknown:
		p.scope.unknown(t, before, p.tokens[p.pos+1])
	case t.kind == tValueEnd:
		t.fail("two-values")
	case t.kind == tEnd && p.pos == 0:
		t.fail("empty")
	case t.kind == tEnd:
		before.fail("unfinished")
	case t.kind == tUnit && p.pos == 0:
		t.fail("unit-alone", "unit", t.typed)
	case t.kind == tUnit && (before.kind == tFunc || before.kind == tOpen && p.pos > 1 && p.tokens[p.pos-2].kind == tFunc): // cos t
		t.fail("unknown-name", "name", t.typed)
	case t.kind == tUnit:
		t.fail("unit-place", "unit", t.typed)
	case t.kind == tClose && (p.depth == 0 || p.bars > 0 || !p.open()):
		t.fail("bracket-close")
	case t.kind == tClose && before.kind == tOpen:
		t.fail("bracket-empty")
	case t.is('='):
		t.fail("equals")
	}
	t.fail("missing-before")
}

// open reports whether a bracket before the token at hand is not closed.
func (p *parser) open() bool {
	n := 0
	for _, t := range p.tokens[:p.pos] {
		switch t.kind {
		case tOpen:
			n++
		case tClose:
			n--
		}
	}
	return n > 0
}
