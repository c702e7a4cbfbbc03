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

	plusForMinus := func(n Node) []Node {
		if b, ok := n.(Bin); ok && b.Op == OpSub {
			return []Node{Add(b.L, b.R)}
		}
		return nil
	}
	for _, slip := range RewriteOne(r, plusForMinus) {
		fmt.Println("not", Plain(slip.Tree, naming), "=", FormatNumber(Eval(slip.Tree, harbour), 4), "N")
	}
	// Output:
	// R = √(F₁² + F₂² − 2·F₁·F₂·cos γ) = 682.6 N
	// not √(F₁² + F₂² + 2·F₁·F₂·cos γ) = 713.7 N
}
