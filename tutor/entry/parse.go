package entry

import (
	"math"
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

// fractionOfForce tells a fraction of two constants before a force: its name,
// where a force or a sum of forces is asked, as 4/5 T and 2/√5 T can only be
// (4/5)·T and (2/√5)·T there; or, of the sides of a slope triangle, one number in
// brackets, as 4/5(410). The token behind the denominator is at hand.
func (p *parser) fractionOfForce(over, under expr.Node) bool {
	switch next := p.peek(); next.kind {
	case tName:
		return isConstant(over) && isConstant(under) && p.multiplied(next)
	case tOpen:
		bare := p.tokens[p.pos-1].kind != tClose || isRoot(under)
		return bare && slopeSide(over) && slopeSide(under) && p.oneForce()
	}
	return false
}

// multiplied tells a name that has a factor before it rather than a denominator:
// of a force, where one is asked; in a sum of forces, of whatever makes one, an
// angle apart.
func (p *parser) multiplied(t token) bool {
	if p.scope.Dims == nil {
		return false
	}
	switch dim, ok := p.scope.Dims(t.name); {
	case !ok:
		return false
	case p.scope.Equation:
		return dim != statics.DimAngle && dim != statics.DimRatio
	default:
		return dim == statics.DimForce && p.scope.Dim == dim
	}
}

// oneForce tells a bracket at hand that holds one number, with its unit or
// without, or the name of a force.
func (p *parser) oneForce() bool {
	inside := p.tokens[p.pos+1]
	end := p.tokens[min(p.pos+2, len(p.tokens)-1)]
	if end.kind == tUnit {
		end = p.tokens[min(p.pos+3, len(p.tokens)-1)]
	}
	return end.kind == tClose && (inside.kind == tNumber || p.isForce(inside))
}

// slopeSide tells what may be a side of a slope triangle: a whole number below
// 100, or a root.
func slopeSide(n expr.Node) bool {
	if v, ok := n.(expr.Num); ok {
		return v.Value >= 1 && v.Value < 100 && v.Value == math.Trunc(v.Value)
	}
	return isRoot(n)
}

// isRoot tells the square root of a constant.
func isRoot(n expr.Node) bool {
	f, ok := n.(expr.Fn)
	return ok && f.Func == expr.FnSqrt && isConstant(f.X)
}

func isConstant(n expr.Node) bool { return len(expr.Symbols(n)) == 0 }

// lastFactor is the factor at the right end of a product, or n itself.
func lastFactor(n expr.Node) expr.Node {
	if b, ok := n.(expr.Bin); ok && b.Op == expr.OpMul {
		return b.R
	}
	return n
}

// isForce tells the name of a force.
func (p *parser) isForce(t token) bool {
	if t.kind != tName || p.scope.Dims == nil {
		return false
	}
	dim, ok := p.scope.Dims(t.name)
	return ok && dim == statics.DimForce
}

// doubtFraction doubts a number over a number or a root with more behind it:
// 4/5 F, 340/682.6 sin 87, 340/√2 cos 30. The denominator is under, the tokens
// from up to behind.
func (p *parser) doubtFraction(under expr.Node, from, behind int) {
	if from < 2 || behind >= p.pos || p.tokens[from-2].kind != tNumber || p.tokens[from].kind != tNumber && !isRoot(under) {
		return
	}
	next, last := p.tokens[behind], p.tokens[behind-1]
	switch next.kind {
	case tOpen:
	case tName, tPi:
		if next.from == last.to { // 1/2x, as documented
			return
		}
	case tFunc, tInverse:
	default:
		return
	}
	over := p.tokens[from-2]
	typed := over.typed + "/"
	for _, t := range p.tokens[from:behind] {
		typed += t.typed
	}
	p.doubts(over.through(p.tokens[p.pos-1].span), "fraction", "fraction", typed)
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

// fraction is \frac{a}{b}.
func (p *parser) fraction() expr.Node {
	over := p.take()
	var parts [2]expr.Node
	for i := range parts {
		if p.peek().kind != tOpen {
			over.fail("unfinished")
		}
		parts[i] = p.group()
	}
	return expr.Div(parts[0], parts[1])
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
