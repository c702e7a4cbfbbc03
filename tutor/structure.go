package tutor

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"strings"

	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// told lists the slips that lead to the very form of an expression, the
// likeliest first; none where no slip does. One form may come of different
// slips in different routes: the sign in one is the angle in the other.
func (o *outcome) told(l *Lesson, r entry.Reading) []string {
	if r.Form != entry.Expression || len(o.forms) == 0 {
		return nil
	}
	written := l.shape(r.Tree, o.start)
	weights := map[string]float64{}
	var ids []string
	for _, f := range o.forms {
		if l.shape(f.tree, o.start) != written {
			continue
		}
		if weights[f.id] == 0 {
			ids = append(ids, f.id)
		}
		weights[f.id] += f.weight
	}
	slices.SortStableFunc(ids, func(a, b string) int { return cmp.Compare(weights[b], weights[a]) })
	return ids
}

// asFound is the tree of an expression for q with every number that a value found on
// the way rounds to as that value: 682.6 is R, as the formula has it; and the numbers
// that are left. values are those of all quantities.
func (w *Work) asFound(q *lesson.Quantity, r entry.Reading, values []float64) (tree expr.Node, left []entry.Literal) {
	if r.Form != entry.Expression {
		return r.Tree, r.Literals
	}
	tree = r.Tree
	for _, l := range r.Literals {
		nearest, off := 0.0, l.Half*(1+1e-9)
		for i := range w.Lesson.Quantities {
			c := &w.Lesson.Quantities[i]
			if by := math.Abs(math.Abs(values[i]) - l.Value); c != q && !c.Given && !c.Equation && by <= off {
				nearest, off = math.Abs(values[i]), by
			}
		}
		if nearest == 0 || w.stated(l.Value) {
			left = append(left, l)
			continue
		}
		if _, angle := expr.At(tree, l.Site).(expr.Ang); angle {
			tree = expr.Replace(tree, l.Site, expr.Deg(nearest))
		} else {
			tree = expr.Replace(tree, l.Site, expr.N(nearest))
		}
	}
	return tree, left
}

// shape is a text that is the same for two formulas of one form: names stand
// for their numbers, the order of sums and products does not matter, nor does the
// sign of what is squared. The minus of a value below zero that is squared without
// brackets (−310²) is another form than a square subtracted.
func (l *Lesson) shape(n expr.Node, values []float64) string {
	switch n := n.(type) {
	case expr.Num:
		return number(n.Value)
	case expr.Ang:
		return number(n.Degrees())
	case expr.Pi:
		return "π"
	case expr.Sym:
		return number(l.env(values)(n.Name))
	case expr.Neg:
		switch x := n.X.(type) {
		case expr.Sym: // of a direction below the axis: without its sign
			return number(-l.env(values)(x.Name))
		case expr.Neg:
			return l.shape(x.X, values)
		case expr.Bin:
			if base, ok := l.squared(x, values); ok && slices.Contains(values, -base) {
				return "-" + number(base) + "²" // the minus of a value squared without brackets
			}
		}
		return "-" + l.shape(n.X, values)
	case expr.Fn:
		if large, small, ok := expr.Operands(n.X, expr.OpSub); ok && n.Func == expr.FnAbs {
			if expr.Eval(n.X, l.env(values)) < 0 { // as one writes it who takes the smaller from the larger
				large, small = small, large
			}
			return l.shape(expr.Sub(large, small), values)
		}
		return "f" + strconv.Itoa(int(n.Func)) + "." + strconv.Itoa(int(n.Mode)) + "(" + l.shape(n.X, values) + ")"
	case expr.Bin:
		switch n.Op {
		case expr.OpAdd, expr.OpSub:
			return "Σ(" + l.parts(n, values, expr.OpAdd, expr.OpSub, "-") + ")"
		case expr.OpMul, expr.OpDiv:
			return "Π(" + l.parts(n, values, expr.OpMul, expr.OpDiv, "/") + ")"
		}
		if base, ok := l.squared(n, values); ok {
			return "(" + number(base) + ")^(2)"
		}
		return "(" + l.shape(n.L, values) + ")^(" + l.shape(n.R, values) + ")"
	}
	panic("tutor: unknown node")
}

// squared is the size of the one value whose square n is: that of a value below
// zero is written without its sign too.
func (l *Lesson) squared(n expr.Node, values []float64) (size float64, ok bool) {
	base, exponent, ok := expr.Operands(n, expr.OpPow)
	if minus, is := base.(expr.Neg); is {
		base = minus.X
	}
	switch base.(type) {
	case expr.Num, expr.Sym:
		return math.Abs(expr.Eval(base, l.env(values))), ok && exponent == expr.N(2)
	}
	return 0, false
}

// parts lists the terms of a sum or the factors of a product, in order.
func (l *Lesson) parts(n expr.Node, values []float64, plus, minus expr.Op, sign string) string {
	var all []string
	var gather func(n expr.Node, inverse bool)
	gather = func(n expr.Node, inverse bool) {
		if b, ok := n.(expr.Bin); ok && (b.Op == plus || b.Op == minus) {
			gather(b.L, inverse)
			gather(b.R, inverse != (b.Op == minus))
			return
		}
		s := l.shape(n, values)
		if inverse {
			s = sign + s
		}
		all = append(all, s)
	}
	gather(n, false)
	slices.Sort(all)
	return strings.Join(all, ",")
}

func number(v float64) string { return strconv.FormatFloat(v, 'g', 9, 64) }
