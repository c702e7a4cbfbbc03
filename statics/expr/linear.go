package expr

import "slices"

// Term is a term of a sum: its sign, and its factors multiplied out. A nil Node is
// 1; the zero Term is +1.
type Term struct {
	Minus bool
	Node  Node
}

// Times is the product of two terms.
func (a Term) Times(b Term) Term {
	return Term{a.Minus != b.Minus, product(a.Node, b.Node)}
}

func product(a, b Node) Node {
	switch {
	case a == nil:
		return b
	case b == nil:
		return a
	}
	return Mul(a, b)
}

func multiply(a, b []Term) []Term {
	var all []Term
	for _, x := range a {
		for _, y := range b {
			all = append(all, x.Times(y))
		}
	}
	return all
}

// Negated is a sum with every sign changed.
func Negated(a []Term) []Term {
	out := slices.Clone(a)
	for i := range out {
		out[i].Minus = !out[i].Minus
	}
	return out
}

// gathered is a sum by unknowns: the coefficient of each as a sum of terms, and
// what is left under "".
type gathered map[string][]Term

// gather takes a sum apart; false where it is not linear in the unknowns.
func gather(n Node, unknowns []string) (gathered, bool) {
	switch n := n.(type) {
	case Neg:
		g, ok := gather(n.X, unknowns)
		return g.each(Negated), ok
	case Sym:
		if slices.Contains(unknowns, n.Name) {
			return gathered{n.Name: {{}}}, true
		}
	case Bin:
		return gatherBinary(n, unknowns)
	}
	if Contains(n, func(m Node) bool { s, ok := m.(Sym); return ok && slices.Contains(unknowns, s.Name) }) {
		return nil, false
	}
	return gathered{"": {{Node: n}}}, true
}

func gatherBinary(n Bin, unknowns []string) (gathered, bool) {
	l, ok := gather(n.L, unknowns)
	r, fine := gather(n.R, unknowns)
	if !ok || !fine {
		return nil, false
	}
	switch n.Op {
	case OpAdd, OpSub:
		if n.Op == OpSub {
			r = r.each(Negated)
		}
		sum := gathered{}
		for _, g := range []gathered{l, r} {
			for name, terms := range g {
				sum[name] = append(slices.Clip(sum[name]), terms...)
			}
		}
		return sum, true
	case OpMul:
		if !r.known() {
			l, r = r, l
		}
		if !r.known() {
			return nil, false
		}
		return l.each(func(t []Term) []Term { return multiply(t, r[""]) }), true
	case OpDiv:
		if !r.known() {
			return nil, false
		}
		return l.each(func(t []Term) []Term {
			out := slices.Clone(t)
			for i := range out {
				if out[i].Node == nil {
					out[i].Node = N(1)
				}
				out[i].Node = Div(out[i].Node, n.R)
			}
			return out
		}), true
	}
	return gathered{"": {{Node: n}}}, l.known() && r.known()
}

func (g gathered) each(do func([]Term) []Term) gathered {
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

// Sum writes terms out as one tree, one that is added first; nil for none.
func Sum(terms []Term) Node {
	terms = slices.Clone(terms)
	if i := slices.IndexFunc(terms, func(t Term) bool { return !t.Minus }); i > 0 {
		first := terms[i]
		terms = append([]Term{first}, slices.Delete(terms, i, i+1)...)
	}
	var n Node
	for _, t := range terms {
		x := t.Node
		if x == nil {
			x = N(1)
		}
		switch {
		case n == nil && t.Minus:
			n = Neg{X: x}
		case n == nil:
			n = x
		case t.Minus:
			n = Sub(n, x)
		default:
			n = Add(n, x)
		}
	}
	return n
}

// over writes a quotient of two sums without needless minus signs; nil where
// there is nothing above or below.
func over(above, below []Term) Node {
	if len(above) == 0 || len(below) == 0 {
		return nil
	}
	minuses := 0
	for _, t := range below {
		if t.Minus {
			minuses++
		}
	}
	if 2*minuses > len(below) || 2*minuses == len(below) && above[0].Minus {
		above, below = Negated(above), Negated(below)
	}
	if len(below) == 1 && below[0].Node == nil {
		return Sum(above)
	}
	return Div(Sum(above), Sum(below))
}

// Isolate is the unknown name out of a sum that is zero; nil where the sum is not
// linear in it, or nothing but the unknown stands there.
//
//	a·u + c = 0: u = −c/a
func Isolate(sum Node, name string) Node {
	g, ok := gather(sum, []string{name})
	if !ok {
		return nil
	}
	return over(Negated(g[""]), g[name])
}

// Eliminate is the unknown name out of two sums x and y that are zero, by
// eliminating the other unknown in them:
//
//	a₁·u + b₁·v + c₁ = 0, a₂·u + b₂·v + c₂ = 0: u = (b₁c₂ − b₂c₁)/(a₁b₂ − a₂b₁)
//
// Without a second sum, nil, or another unknown, "", it is what [Isolate] makes of
// x. It is nil where the sums do not give it.
func Eliminate(x, y Node, name, other string) Node {
	if y == nil || other == "" {
		return Isolate(x, name)
	}
	unknowns := []string{name, other}
	g, ok := gather(x, unknowns)
	if !ok {
		return nil
	}
	h, ok := gather(y, unknowns)
	if !ok {
		return nil
	}
	minus := func(a, b []Term) []Term { return append(slices.Clip(a), Negated(b)...) }
	above := minus(multiply(h[""], g[other]), multiply(g[""], h[other]))
	below := minus(multiply(g[name], h[other]), multiply(h[name], g[other]))
	return over(above, below)
}
