package entry

import (
	"math"

	"closingside/statics"
	"closingside/statics/expr"
)

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

// fraction is \frac{a}{b}, or \frac45.
func (p *parser) fraction() expr.Node {
	over := p.take()
	var parts [2]expr.Node
	for i := range parts {
		switch p.peek().kind {
		case tOpen:
			parts[i] = p.group()
		case tNumber:
			parts[i] = p.atom()
		default:
			over.fail("unfinished")
		}
	}
	return expr.Div(parts[0], parts[1])
}
