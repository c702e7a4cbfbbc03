// Package report reads what learners saved on the page (their logs), works it
// again through the same engine, and counts what a class found, met and needed:
// what to teach again, and who finished what.
//
//	r, faults := report.Of(logs, nil)
//
// A log is a text file on the learner's device, which can be edited: a report
// serves teaching, and credit for practice, not examinations.
//
// Native only: nothing of it is in the engine.
package report
