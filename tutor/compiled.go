package tutor

import (
	"math"
	"sync"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// Formulas of a lesson, ready to be worked, and what the values in them are called.

// formula is a formula for a quantity, ready to be worked.
type formula struct {
	tree   expr.Node
	prog   *expr.Program
	reads  set
	share  float64         // how often it is taken
	called func() []string // what every value of prog is called
	sorts  func() []sortOfValue
}

// formula makes a formula for q ready.
func (l *Lesson) formula(q *lesson.Quantity, tree expr.Node, share float64) formula {
	f := formula{tree: tree, prog: l.compile(tree), reads: l.reads(tree), share: share}
	f.called = sync.OnceValue(func() []string { return l.calledIn(q, tree, f.prog) })
	f.sorts = sync.OnceValue(func() []sortOfValue { return l.sortsIn(f.prog) })
	return f
}

// compile prepares a formula of the lesson, its values counted as in truths.
func (l *Lesson) compile(tree expr.Node) *expr.Program {
	return expr.Compile(tree, func(name string) int {
		if i, ok := l.index[name]; ok {
			return i
		}
		return -1
	}, l.isAngle)
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

// truths lists the true values of all quantities.
func (l *Lesson) truths() []float64 {
	values := make([]float64, len(l.Quantities))
	for i := range values {
		values[i] = l.Quantities[i].True
	}
	return values
}

// env reads values by name.
func (l *Lesson) env(values []float64) expr.Env {
	return func(name string) float64 {
		if i, ok := l.index[name]; ok {
			return values[i]
		}
		return math.NaN()
	}
}

// dimension tells a formula that is an angle, kept to digits after the point,
// from a plain number or a force.
func (l *Lesson) dimension(n expr.Node) statics.Dimension {
	if expr.IsAngle(n, l.isAngle) {
		return statics.DimAngle
	}
	return statics.DimRatio
}

// dimensionAt is the dimension of the value at a place of a formula.
func dimensionAt(prog *expr.Program, place int) statics.Dimension {
	if prog.Angle(place) {
		return statics.DimAngle
	}
	return statics.DimRatio
}

// isAngle tells the quantities that are angles.
func (l *Lesson) isAngle(name string) bool {
	q := l.Quantity(name)
	return q != nil && q.IsAngle()
}

// calledIn names every value of a formula, see called.
func (l *Lesson) calledIn(q *lesson.Quantity, tree expr.Node, prog *expr.Program) []string {
	names := make([]string, prog.Len())
	for p := range names {
		names[p] = l.called(q, tree, prog.Node(p))
	}
	return names
}

// called names a value on the way: the sine of the angle where an inverse sine
// follows, otherwise its formula.
func (l *Lesson) called(q *lesson.Quantity, tree, at expr.Node) string {
	n := tree
	if _, r, ok := expr.Operands(n, expr.OpSub); ok && expr.IsInverseTrig(r) {
		n = r
	}
	if k, ok := n.(expr.Fn); ok && expr.IsInverseTrig(n) && k.X == at && q.IsAngle() && !q.Turns {
		if key, ok := forwardKey[k.Func]; ok {
			return expr.Plain(expr.Fn{Func: key, X: expr.S(q.Name)}, l.Symbol)
		}
	}
	return expr.Plain(at, l.Symbol)
}

var forwardKey = map[expr.Func]expr.Func{expr.FnAsin: expr.FnSin, expr.FnAcos: expr.FnCos, expr.FnAtan: expr.FnTan}

// sortOfValue tells the values of a formula apart by who keeps few digits of them.
type sortOfValue uint8

const (
	cleanSort   sortOfValue = iota // as given, or shown by the calculator alone: a sum on the run, the value itself
	keySort                        // a sine, cosine or tangent, or a fraction
	anotherSort                    // any other that is worked out
)

// sortsIn tells them for a formula.
func (l *Lesson) sortsIn(prog *expr.Program) []sortOfValue {
	sorts := make([]sortOfValue, prog.Len())
	for p := range sorts[:len(sorts)-1] {
		node := prog.Node(p)
		_, _, ratio := expr.Operands(node, expr.OpDiv)
		_, minus := node.(expr.Neg)
		switch {
		case prog.Constant(p), prog.Symbol(p) >= 0, minus, l.IsAsGiven(node), isRunningSum(node):
		case ratio, expr.IsTrig(node):
			sorts[p] = keySort
		default:
			sorts[p] = anotherSort
		}
	}
	return sorts
}

// isRunningSum tells whether n adds and takes away values as they are read.
func isRunningSum(n expr.Node) bool {
	return !expr.Contains(n, func(n expr.Node) bool {
		switch n := n.(type) {
		case expr.Bin:
			return n.Op != expr.OpAdd && n.Op != expr.OpSub
		case expr.Fn:
			return true
		}
		return false
	})
}
