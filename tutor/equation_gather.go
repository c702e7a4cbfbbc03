package tutor

import (
	"slices"

	"closingside/statics/expr"
)

// signed is a term of a sum: its sign, and its factors multiplied out; a nil
// node is 1.
type signed struct {
	minus bool
	node  expr.Node
}

func (a signed) times(b signed) signed {
	return signed{a.minus != b.minus, product(a.node, b.node)}
}

func product(a, b expr.Node) expr.Node {
	switch {
	case a == nil:
		return b
	case b == nil:
		return a
	}
	return expr.Mul(a, b)
}

func multiply(a, b []signed) []signed {
	var all []signed
	for _, x := range a {
		for _, y := range b {
			all = append(all, x.times(y))
		}
	}
	return all
}

func negate(a []signed) []signed {
	out := slices.Clone(a)
	for i := range out {
		out[i].minus = !out[i].minus
	}
	return out
}

// gathered is a sum by unknowns: the coefficient of each as a sum of terms, and
// what is left under "".
type gathered map[string][]signed

// gather takes a sum apart; false where it is not linear in the unknowns.
func gather(n expr.Node, unknowns []string) (gathered, bool) {
	switch n := n.(type) {
	case expr.Neg:
		g, ok := gather(n.X, unknowns)
		return g.each(negate), ok
	case expr.Sym:
		if slices.Contains(unknowns, n.Name) {
			return gathered{n.Name: {{}}}, true
		}
	case expr.Bin:
		return gatherBinary(n, unknowns)
	}
	if contains(n, func(m expr.Node) bool { s, ok := m.(expr.Sym); return ok && slices.Contains(unknowns, s.Name) }) {
		return nil, false
	}
	return gathered{"": {{node: n}}}, true
}

func gatherBinary(n expr.Bin, unknowns []string) (gathered, bool) {
	l, ok := gather(n.L, unknowns)
	r, fine := gather(n.R, unknowns)
	if !ok || !fine {
		return nil, false
	}
	switch n.Op {
	case expr.OpAdd, expr.OpSub:
		if n.Op == expr.OpSub {
			r = r.each(negate)
		}
		sum := gathered{}
		for _, g := range []gathered{l, r} {
			for name, terms := range g {
				sum[name] = append(slices.Clip(sum[name]), terms...)
			}
		}
		return sum, true
	case expr.OpMul:
		if !r.known() {
			l, r = r, l
		}
		if !r.known() {
			return nil, false
		}
		return l.each(func(t []signed) []signed { return multiply(t, r[""]) }), true
	case expr.OpDiv:
		if !r.known() {
			return nil, false
		}
		return l.each(func(t []signed) []signed {
			out := slices.Clone(t)
			for i := range out {
				if out[i].node == nil {
					out[i].node = expr.N(1)
				}
				out[i].node = expr.Div(out[i].node, n.R)
			}
			return out
		}), true
	}
	return gathered{"": {{node: n}}}, l.known() && r.known()
}

func (g gathered) each(do func([]signed) []signed) gathered {
	out := gathered{}
	for name, terms := range g {
		out[name] = do(terms)
	}
	return out
}

func (g gathered) known() bool {
	_, ok := g[""]
	return len(g) == 0 || len(g) == 1 && ok
}

// sum writes terms out, one that is added first; nil for none.
func sum(terms []signed) expr.Node {
	terms = slices.Clone(terms)
	if i := slices.IndexFunc(terms, func(t signed) bool { return !t.minus }); i > 0 {
		first := terms[i]
		terms = append([]signed{first}, slices.Delete(terms, i, i+1)...)
	}
	var n expr.Node
	for _, t := range terms {
		x := t.node
		if x == nil {
			x = expr.N(1)
		}
		switch {
		case n == nil && t.minus:
			n = expr.Neg{X: x}
		case n == nil:
			n = x
		case t.minus:
			n = expr.Sub(n, x)
		default:
			n = expr.Add(n, x)
		}
	}
	return n
}

// over writes a quotient of two sums without needless minus signs; nil where
// there is nothing above or below.
func over(above, below []signed) expr.Node {
	if len(above) == 0 || len(below) == 0 {
		return nil
	}
	minuses := 0
	for _, t := range below {
		if t.minus {
			minuses++
		}
	}
	if 2*minuses > len(below) || 2*minuses == len(below) && above[0].minus {
		above, below = negate(above), negate(below)
	}
	if len(below) == 1 && below[0].node == nil {
		return sum(above)
	}
	return expr.Div(sum(above), sum(below))
}

// solution is the unknown name out of two sums that are zero (the second nil where
// there is but one), in which other is the second unknown: by eliminating that,
//
//	a₁·u + b₁·v + c₁ = 0, a₂·u + b₂·v + c₂ = 0: u = (b₁c₂ − b₂c₁)/(a₁b₂ − a₂b₁)
//
// It is nil where the sums do not give it.
func solution(sums [2]expr.Node, name, other string) expr.Node {
	unknowns := []string{name, other}
	g, ok := gather(sums[0], unknowns)
	if !ok {
		return nil
	}
	if sums[1] == nil || other == "" {
		return over(negate(g[""]), g[name])
	}
	h, ok := gather(sums[1], unknowns)
	if !ok {
		return nil
	}
	minus := func(a, b []signed) []signed { return append(slices.Clip(a), negate(b)...) }
	above := minus(multiply(h[""], g[other]), multiply(g[""], h[other]))
	below := minus(multiply(g[name], h[other]), multiply(h[name], g[other]))
	return over(above, below)
}
