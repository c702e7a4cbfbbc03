package expr_test

import (
	"fmt"

	. "closingside/statics/expr"
)

// The closing side of a force triangle, by the law of cosines: evaluated, and
// what a wrong sign before the cross term makes of it.
func Example() {
	r := cosineLaw()
	fmt.Println("R =", Plain(r, naming), "=", FormatNumber(Eval(r, harbour), 4), "N")

	slip, _ := RewriteAll(r, func(n Node) (Node, bool) {
		if b, ok := n.(Bin); ok && b.Op == OpSub {
			return Add(b.L, b.R), true
		}
		return n, false
	})
	fmt.Println("not", Plain(slip, naming), "=", FormatNumber(Eval(slip, harbour), 4), "N")
	// Output:
	// R = √(F₁² + F₂² − 2·F₁·F₂·cos γ) = 682.6 N
	// not √(F₁² + F₂² + 2·F₁·F₂·cos γ) = 713.7 N
}
