package balance_test

import (
	"fmt"
	"math"

	"closingside/statics/expr"
	"closingside/tutor/balance"
	"closingside/tutor/kinds"
)

// A crate hangs from two cables. The sum along x may be turned round and scaled, and
// a sum along any axis follows from those along x and y; with a sign changed, it is
// another equation.
func Example() {
	l, err := kinds.ParticleEquilibrium.BankProblems()[0].Build()
	if err != nil {
		fmt.Println(err)
		return
	}
	s := &balance.Sorter{
		Value: func(name string) (balance.Coef, bool) {
			q := l.Quantity(name)
			return balance.Coef{Value: q.True}, !q.Unknown
		},
		Tree: func(string) expr.Node { return nil }, // every unknown stands for itself
	}
	equation := func(left, right expr.Node) *balance.Equation {
		t, _ := s.Terms(balance.Exact(left), balance.Exact(right))
		return balance.Weigh(l, t, math.Abs(l.Truth("F3")))
	}
	t1, t2, w := expr.S("F1"), expr.S("F2"), expr.S("F3")
	sums := []*balance.Equation{
		equation(l.Quantity("sumx").Routes[0].Tree, expr.N(0)),
		equation(l.Quantity("sumy").Routes[0].Tree, expr.N(0)),
	}
	right := equation(expr.Mul(expr.N(2), t2, expr.Cos(expr.Deg(30))), expr.Mul(expr.N(2), t1, expr.Cos(expr.Deg(40))))
	along := equation(expr.Add(t1, expr.Mul(t2, expr.Cos(expr.Deg(110)))), expr.Mul(w, expr.Sin(expr.Deg(40))))
	wrong := equation(expr.Add(expr.Mul(t2, expr.Cos(expr.Deg(30))), expr.Mul(t1, expr.Cos(expr.Deg(40)))), expr.N(0))
	fmt.Println(right.MultipleOf(sums[0]), along.MultipleOf(sums[0]), along.SpannedBy(sums), wrong.SpannedBy(sums))
	// Output:
	// true false true false
}
