package tutor

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// sensitivity is how far the value of a formula moves, about the true values, with
// what the formula reads and with what is worked out in it.
type sensitivity struct {
	inputs []input // in order of quantity
	inner  []inner // in order of site
}

// input is a quantity that a formula reads.
type input struct {
	quantity int
	slope    float64 // |slope|, to the end of the formula
}

// inner is a value worked out inside a formula, the formula's own left out.
type inner struct {
	node         expr.Node // it comes to value; nil where the value is no node's
	dim          statics.Dimension
	value, slope float64 // |slope|, to the end of the formula
	fixed        bool    // worked out of givens alone
}

// sensitivity is how tree answers to what it reads and to what is worked out in it.
func (l *Lesson) sensitivity(tree expr.Node) sensitivity {
	var s sensitivity
	var reads set
	slopes := make([]float64, len(l.Quantities))
	for _, p := range expr.Trace(tree, l.Truth) {
		switch n := p.Node.(type) {
		case expr.Sym:
			reads = reads.with(l.index[n.Name])
			slopes[l.index[n.Name]] += p.Slope
		case expr.Num, expr.Ang, expr.Pi:
		default:
			if p.Site != 0 {
				s.inner = append(s.inner, inner{p.Node, l.dimension(p.Node), belowOne(p.Node, p.Value), math.Abs(p.Slope), l.ofGivens(p.Node)})
			}
		}
	}
	reads.each(func(i int) { s.inputs = append(s.inputs, input{i, math.Abs(slopes[i])}) })
	return s
}

// belowOne is v, or a little less where it is a sine or cosine of 1: those come
// from below, where the digits are ten times finer.
func belowOne(n expr.Node, v float64) float64 {
	if k, ok := n.(expr.Fn); ok && (k.Func == expr.FnSin || k.Func == expr.FnCos) {
		return math.Copysign(min(math.Abs(v), nearOne), v)
	}
	return v
}

const nearOne = 1 - 1e-9

// ofGivens tells whether n is worked out of givens alone.
func (l *Lesson) ofGivens(n expr.Node) bool {
	return !slices.ContainsFunc(expr.Symbols(n), func(name string) bool { return !l.Quantity(name).Given })
}

// exact tells whether a value worked out leaves nothing to round: 2·501 = 1002
// has its digits all written, and next to cos 90° = 0 whatever is written of
// it is close.
func (p inner) exact(d lesson.Digits) bool {
	v := p.value
	if math.Abs(v) == nearOne {
		v = 1
	}
	return p.fixed && math.Abs(d.Round(p.dim, v)-v) <= 1e-12*math.Abs(v) || p.dim != statics.DimAngle && math.Abs(p.value) < 1e-9
}

// inverseSineOff is how far an angle may be off, in degrees, whose sine is x to
// within half. The inverse sine is followed on its curve, and stops at 90°.
func inverseSineOff(x, half float64) float64 {
	angle := func(x float64) float64 { return math.Asin(max(-1, min(1, x))) * 180 / math.Pi }
	return max(angle(x+half)-angle(x), angle(x)-angle(x-half))
}
