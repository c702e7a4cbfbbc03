// Package tutor turns a statics problem into a lesson a learner can work
// through alone, and judges each value the learner writes.
//
// A problem (package lesson) is opened as a Lesson, which knows what judging
// needs. Work holds what one learner has entered; Work.Enter reads an entry,
// gives its Verdict and, where a mistake of the catalogue (package slips)
// explains a wrong value, names it:
//
//	l, err := tutor.Open(problem)
//	work := tutor.NewWork(l, problem.Settings)
//	reply := work.Enter("R", "682.6 N")
//
// Everything a learner sees of a quantity (formula, hints, worked solution, the
// wrong values its slips give) is derived from its one declaration in a file of
// package kinds, none of which this package knows by name; the sentences live
// in tutor/text.
//
// The package knows nothing of the browser or the file system, and no true
// value is ever computed by a route: those come from package statics.
package tutor
