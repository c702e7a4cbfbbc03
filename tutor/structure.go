package tutor

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"closingside/statics/expr"
	"closingside/tutor/entry"
)

// told lists the slips that lead to the very form of an expression, the
// likeliest first; none where no slip does. One form may come of different
// slips in different routes: the sign in one is the angle in the other.
func (o *outcome) told(w *Work, r entry.Reading) []string {
	if r.Form != entry.Expression || len(o.forms) == 0 {
		return nil
	}
	written := w.shape(r.Tree, o.start)
	weights := map[string]float64{}
	var ids []string
	for _, f := range o.forms {
		if w.shape(f.tree, o.start) != written {
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

// shape is a text that is the same for two formulas of one form: names stand
// for their numbers, the order of sums and products does not matter.
func (w *Work) shape(n expr.Node, values []float64) string {
	switch n := n.(type) {
	case expr.Num:
		return number(n.Value)
	case expr.Ang:
		return number(n.Degrees())
	case expr.Pi:
		return "π"
	case expr.Sym:
		return number(w.Lesson.env(values)(n.Name))
	case expr.Neg:
		switch x := n.X.(type) {
		case expr.Sym: // of a direction below the axis: without its sign
			return number(-w.Lesson.env(values)(x.Name))
		case expr.Neg:
			return w.shape(x.X, values)
		}
		return "-" + w.shape(n.X, values)
	case expr.Fn:
		return "f" + strconv.Itoa(int(n.Func)) + "." + strconv.Itoa(int(n.Mode)) + "(" + w.shape(n.X, values) + ")"
	case expr.Bin:
		switch n.Op {
		case expr.OpAdd, expr.OpSub:
			return "Σ(" + w.parts(n, values, expr.OpAdd, expr.OpSub, "-") + ")"
		case expr.OpMul, expr.OpDiv:
			return "Π(" + w.parts(n, values, expr.OpMul, expr.OpDiv, "/") + ")"
		}
		return "(" + w.shape(n.L, values) + ")^(" + w.shape(n.R, values) + ")"
	}
	panic("tutor: unknown node")
}

// parts lists the terms of a sum or the factors of a product, in order.
func (w *Work) parts(n expr.Node, values []float64, plus, minus expr.Op, sign string) string {
	var all []string
	var gather func(n expr.Node, inverse bool)
	gather = func(n expr.Node, inverse bool) {
		if b, ok := n.(expr.Bin); ok && (b.Op == plus || b.Op == minus) {
			gather(b.L, inverse)
			gather(b.R, inverse != (b.Op == minus))
			return
		}
		s := w.shape(n, values)
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
