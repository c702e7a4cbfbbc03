package tutor

import (
	"strings"

	"closingside/tutor/verdict"
)

// MaxReason is how many runes of a reason are kept.
const MaxReason = 300

// Stand records that the learner stands by the entry that stands for the
// quantity called name, though it was refused, and why. It tells whether there
// is such an entry and a reason. The verdict stays: the reason is for whoever
// teaches.
func (w *Work) Stand(name, reason string) bool {
	a := w.Standing(name)
	reason = strings.Join(strings.Fields(reason), " ")
	if a == nil || a.Verdict == verdict.Correct || reason == "" {
		return false
	}
	if r := []rune(reason); len(r) > MaxReason {
		reason = string(r[:MaxReason])
	}
	a.Reason = reason
	return true
}

// Withdraw takes back that the learner stands by an entry; false where none
// does.
func (w *Work) Withdraw(name string) bool {
	a := w.Standing(name)
	if a == nil || a.Reason == "" {
		return false
	}
	a.Reason = ""
	return true
}
