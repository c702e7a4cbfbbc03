package sketch_test

import (
	"fmt"

	"closingside/tutor/kinds"
	"closingside/tutor/sketch"
)

// The second force is laid at the head of the first, and the side that closes the
// triangle drawn: the wrong way round, then the right one.
func Example() {
	l, err := kinds.TwoForces.BankProblems()[0].Build()
	if err != nil {
		fmt.Println(err)
		return
	}
	s := sketch.New(l, nil)
	tail, head := sketch.End{Arrow: 0}, sketch.End{Arrow: 1, Head: true}
	for _, reply := range []sketch.Reply{
		s.Put(sketch.End{Arrow: 1}, sketch.End{Arrow: 0, Head: true}),
		s.Close(head, tail),
		s.Close(tail, head),
	} {
		fmt.Println(reply.Verdict, reply.Slips, reply.Feedback)
	}
	// Output:
	// correct [] Head to tail: P, then Q.
	// slip [resultant-reversed] Your side joins the right corners. If you walked along the forces, where would you set out and where would you arrive? Which way should the side point?
	// correct [] That is the closing side: from the first tail to the last head.
}
