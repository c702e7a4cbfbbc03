// Package kinds declares the kinds of problem, one file each.
//
//	p, err := kinds.All.Read(source)
//	kinds.All.ByName("two-forces").BankProblems() // the harbour's, to begin with
//
// A kind builds the lesson of a statement: the true values come from package
// statics, the routes are formulas for this very sketch. What several kinds
// share stands beside them: a force given by its direction and its components
// (pull.go, pull_parts.go), the resultant from components (resultant.go), the
// triangle of two forces and what closes it (triangle.go), what holds a particle
// at rest (holder.go, rest.go). A kind sees of a learner's work only what its
// figures may show ([lesson.Progress]); it judges nothing.
//
// The functions called …Source write problems in code, as the kinds' own banks and
// tests do.
package kinds
