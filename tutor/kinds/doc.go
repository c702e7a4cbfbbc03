// Package kinds declares the kinds of problem, one file each.
//
//	p, err := kinds.All.Read(source)
//	kinds.All.ByName("two-forces").BankProblems() // the harbour's, to begin with
//
// A kind builds the lesson of a statement: the true values come from package
// statics, the routes are formulas for this very sketch. What several kinds
// share stands beside them: the force given by its direction (pull.go), the
// triangle of two forces and their resultant (triangle.go), what holds a
// particle at rest (holder.go, rest.go). A kind sees of a learner's work only
// what its figures may show ([lesson.Progress]); it judges nothing.
package kinds
