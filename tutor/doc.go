// Package tutor turns a statics problem into a lesson a learner can work
// through alone, and judges each value the learner writes.
//
// A problem (what is given) becomes a Lesson: quantities, each with its true
// value and the routes that lead to it. Work holds what one learner has
// entered; Work.Enter reads an entry, gives its Verdict and, where a mistake
// explains a wrong value, names it:
//
//	lesson, err := tutor.Open(problem)
//	work := tutor.NewWork(lesson, lesson.Problem.Settings)
//	reply := work.Enter("R", "682.6 N")
//
// Everything a learner sees of a quantity (formula, hints, worked solution, the
// wrong values its slips give) is derived from its one declaration in a
// kind_*.go file; the sentences live in tutor/text.
//
// The package knows nothing of the browser or the file system, and no true
// value is ever computed by a route: those come from package statics.
package tutor
