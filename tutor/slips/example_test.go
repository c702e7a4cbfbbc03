package slips_test

import (
	"fmt"

	"closingside/statics/expr"
	"closingside/tutor/kinds"
	"closingside/tutor/slips"
)

// What stands in the cosine law when the sine is taken for the cosine: the row is
// asked at every site of the formula.
func Example() {
	l, err := kinds.TwoForces.BankProblems()[0].Build()
	if err != nil {
		fmt.Println(err)
		return
	}
	r := l.Quantity("R")
	tree := r.Route("cosine-law").Tree
	row := slips.ByID("sine-cosine-swapped")
	for site := range expr.Size(tree) {
		for _, wrong := range row.Rule(&slips.Context{Lesson: l, Quantity: r, Site: site}, expr.At(tree, site)) {
			fmt.Println(l.Text(tree), "becomes", l.Text(expr.Replace(tree, site, wrong)))
		}
	}
	// Output:
	// √(P² + Q² − 2·P·Q·cos γ) becomes √(P² + Q² − 2·P·Q·sin γ)
}
