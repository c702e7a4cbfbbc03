package kinds_test

import (
	"fmt"

	"closingside/tutor/kinds"
)

// The first of the harbour's problems of a kind, as it is told.
func Example() {
	p := kinds.All.ByName("two-forces").BankProblems()[0]
	fmt.Println(p.Story)
	for _, given := range p.Statements() {
		fmt.Println(given)
	}
	fmt.Println(p.Code())
	// Output:
	// Two tugs hold a barge off the quay.
	// P = 340 N, direction 25° from +x
	// Q = 610 N, direction 118° from +x
	// 1!two-forces!Two_tugs_hold_a_barge_off_the_quay.!forces:P;340_N;25_deg!forces:Q;610_N;118_deg!atgi
}
