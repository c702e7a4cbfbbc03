//go:build js && wasm

// Command speed measures checks with a full diagnosis where a learner's are
// made: in WebAssembly in a browser. It prints the figures as one line of
// numbers: checks, then median, 99th percentile, median and 99th percentile on
// a problem just opened, median on an empty sheet, median and 99th percentile
// with what is made ahead, all in microseconds.
package main

import (
	"fmt"

	"closingside/tutor/kinds"
	"closingside/tutor/trial"
)

func main() {
	problems := kinds.All.ByName("two-forces").BankProblems()
	s, err := trial.Measure(problems, trial.Options{Seed: 1, Learners: 8}, 3)
	if err != nil {
		panic(err)
	}
	fmt.Println(s.Checks, s.Median.Microseconds(), s.P99.Microseconds(), s.First.Microseconds(), s.Worst.Microseconds(), s.Clean.Microseconds(), s.Ready.Microseconds(), s.ReadyWorst.Microseconds())
	select {} // the page's clock may still call
}
