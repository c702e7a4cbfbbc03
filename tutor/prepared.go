package tutor

import (
	"math"
	"math/bits"

	"closingside/statics"
	"closingside/statics/expr"
)

// prepared is what judging needs of a lesson and no entry changes. It is made
// once, when the first entry is judged.
type prepared struct {
	routes   [][]routeFacts // by quantity, by route
	variants [][]variant    // by quantity: what one slip makes of its routes
	pairs    [][]variant    // by quantity: two slips in one formula; made when first asked
	givens   set
}

// set is a set of a lesson's quantities, by index. A lesson has at most 64.
type set uint64

func (s set) has(i int) bool { return s&(1<<i) != 0 }
func (s set) with(i int) set { return s | 1<<i }

// each visits the members of s in order.
func (s set) each(visit func(i int)) {
	for ; s != 0; s &= s - 1 {
		visit(bits.TrailingZeros64(uint64(s)))
	}
}

// routeFacts is how a route behaves about the true values.
type routeFacts struct {
	reads  set
	slopes []float64 // |slope| by each member of reads, in order
	inner  []inner   // every value worked out on the way, the last one left out
	taken  bool      // a worked solution takes it, or it is the first
}

// inner is a value worked out inside a formula.
type inner struct {
	dim          statics.Dimension
	value, slope float64 // |slope|, to the end of the formula
}

// ready returns the lesson's prepared facts.
func (l *Lesson) ready() *prepared {
	l.once.Do(func() {
		if len(l.Quantities) > 64 {
			panic("tutor: a lesson of more than 64 quantities")
		}
		p := &prepared{pairs: make([][]variant, len(l.Quantities))}
		for i := range l.Quantities {
			q := &l.Quantities[i]
			if q.Given {
				p.givens = p.givens.with(i)
			}
			var facts []routeFacts
			for j := range q.Routes {
				facts = append(facts, l.facts(q, j))
			}
			p.routes = append(p.routes, facts)
			p.variants = append(p.variants, l.variants(q))
		}
		l.prep = p
	})
	return l.prep
}

// reads is the set of quantities that tree reads.
func (l *Lesson) reads(tree expr.Node) set {
	var s set
	expr.Walk(tree, func(_ int, n expr.Node) {
		if sym, ok := n.(expr.Sym); ok {
			s = s.with(l.index[sym.Name])
		}
	})
	return s
}

func (l *Lesson) facts(q *Quantity, j int) routeFacts {
	r := &q.Routes[j]
	f := routeFacts{reads: l.reads(r.Tree), taken: j == 0}
	for _, way := range l.Ways {
		for _, step := range way.Steps {
			f.taken = f.taken || step.Quantity == q.Name && step.Route == r.ID
		}
	}
	sums := make([]float64, len(l.Quantities))
	for _, p := range expr.Trace(r.Tree, l.Truth) {
		switch n := p.Node.(type) {
		case expr.Sym:
			sums[l.index[n.Name]] += p.Slope
		case expr.Num, expr.Ang, expr.Pi:
		default:
			if p.Site != 0 {
				f.inner = append(f.inner, inner{dimension(p.Node), p.Value, math.Abs(p.Slope)})
			}
		}
	}
	f.reads.each(func(i int) { f.slopes = append(f.slopes, math.Abs(sums[i])) })
	return f
}
