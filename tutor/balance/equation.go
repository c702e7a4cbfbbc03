package balance

import (
	"math"
	"slices"
	"strings"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// Tolerance is how exactly terms are known beside what the numbers in them allow, as
// a share of an equation's largest term.
const Tolerance = 1e-6

// LiteralTolerance is the most by which a number that a learner writes may be off,
// as a share of itself.
const LiteralTolerance = 0.005

// Equation is an equation as terms that add up to zero, each at the true values
// of its unknowns so that all can be compared.
type Equation struct {
	terms Terms
	Size  float64 // of the largest term, without its sign; 0 where no term is left
}

// Weigh turns the coefficients t into an equation: times the true values of the
// unknowns in l, never less than a thousandth of typical, the size of the lesson's
// forces.
func Weigh(l *lesson.Lesson, t Terms, typical float64) *Equation {
	b := &Equation{terms: Terms{}}
	for _, product := range t.products() {
		at := Coef{Value: 1}
		for _, factor := range factors(product) {
			at.Value *= truthOf(l, factor, typical)
		}
		c := t[product].times(at)
		b.terms[product] = c
		b.Size = max(b.Size, math.Abs(c.Value))
	}
	return b
}

// truthOf is the size of an unknown of an equation, never zero.
func truthOf(l *lesson.Lesson, factor string, typical float64) float64 {
	key, name, trig := strings.Cut(factor, " ")
	if trig {
		f := expr.FnSin
		if key+" " == cosineOf {
			f = expr.FnCos
		}
		return max(0.1, math.Abs(expr.Eval(expr.Fn{Func: f, X: expr.S(name)}, l.Truth)))
	}
	v := math.Abs(l.Truth(factor))
	if q := l.Quantity(factor); q.Dim == statics.DimForce {
		return max(v, 1e-3*typical)
	}
	return max(v, 1e-9)
}

// tolerance is by how much the term of a product may be off in b.
func (b *Equation) tolerance(product string) float64 {
	return b.terms[product].Off*(1+1e-9) + Tolerance*b.Size
}

// MultipleOf tells whether b is a multiple of another equation.
func (b *Equation) MultipleOf(o *Equation) bool {
	return b.SpannedBy([]*Equation{o})
}

// Equals tells whether b is another equation as it stands, but for its sign.
func (b *Equation) Equals(o *Equation) bool {
	return math.Abs(b.Size-o.Size) <= LiteralTolerance*o.Size && b.MultipleOf(o)
}

// SpannedBy tells whether b is a combination of the one or two equations of a basis,
// each term as closely as it is known: least squares, weighed by what each term
// allows, and no term further off than that. It panics for any other basis.
func (b *Equation) SpannedBy(basis []*Equation) bool {
	products := b.terms.products()
	for _, o := range basis {
		products = append(products, o.terms.products()...)
	}
	slices.Sort(products)
	products = slices.Compact(products)
	weight := func(p string) float64 {
		tol := b.tolerance(p)
		return b.Size / tol
	}
	var dots [2][2]float64
	var rights [2]float64
	for _, p := range products {
		k := weight(p) * weight(p)
		for i, u := range basis {
			rights[i] += k * u.share(p) * b.share(p)
			for j, v := range basis {
				dots[i][j] += k * u.share(p) * v.share(p)
			}
		}
	}
	if len(basis) == 1 {
		dots[1][1] = 1
	}
	det := dots[0][0]*dots[1][1] - dots[0][1]*dots[1][0]
	if det == 0 {
		return false
	}
	x := (rights[0]*dots[1][1] - rights[1]*dots[0][1]) / det
	y := (rights[1]*dots[0][0] - rights[0]*dots[1][0]) / det
	for _, p := range products {
		left := b.share(p) - x*basis[0].share(p)
		allowed := b.tolerance(p)/b.Size + math.Abs(x)*basis[0].terms[p].Off/basis[0].Size
		if len(basis) == 2 {
			left -= y * basis[1].share(p)
			allowed += math.Abs(y) * basis[1].terms[p].Off / basis[1].Size
		}
		if !(math.Abs(left) <= Slack*allowed) {
			return false
		}
	}
	return true
}

// Slack is how much further than a term allows the fit by least squares may
// leave it, where a fit of the worst term would just do.
const Slack = 1.5

// share is a term relative to the largest.
func (b *Equation) share(product string) float64 { return b.terms[product].Value / b.Size }

// Multiplies tells whether b holds a product of two unknowns, neither of them a
// sine or a cosine.
func (b *Equation) Multiplies() bool {
	return slices.ContainsFunc(b.terms.products(), func(product string) bool {
		plain := 0
		for _, f := range factors(product) {
			if !strings.Contains(f, " ") {
				plain++
			}
		}
		return plain > 1
	})
}

// ByChance is how often, from 0 to 1, a wrong equation that nothing explains would
// agree with b: each term but one is free, and takes part in a cell as wide as it is known.
func (b *Equation) ByChance() float64 {
	chance, free := 1.0, 0
	for _, p := range b.terms.products() {
		if b.share(p) == 0 {
			continue
		}
		if free++; free > 1 || b.single() {
			chance *= min(1, b.tolerance(p)/b.Size)
		}
	}
	return chance
}

// single tells whether b has but one term. It is a multiple of any other such
// in the same unknown; so as it was written is what counts.
func (b *Equation) single() bool {
	n := 0
	for p := range b.terms {
		if b.share(p) != 0 {
			n++
		}
	}
	return n == 1
}

// Matches tells whether b is the equation w, such as one that a slip makes: a
// multiple of it or, of one term, that very term but for its sign.
func (b *Equation) Matches(w *Equation) bool {
	return b.MultipleOf(w) && (!b.single() || math.Abs(b.Size-w.Size) <= LiteralTolerance*b.Size)
}

// CountProducts counts the different products of unknowns in equations.
func CountProducts(all []*Equation) int {
	found := map[string]bool{}
	for _, b := range all {
		for p, c := range b.terms {
			if p != "" && c.Value != 0 {
				found[p] = true
			}
		}
	}
	return len(found)
}
