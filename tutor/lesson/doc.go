// Package lesson holds what a problem is and what is true of it.
//
// A [Source] (keys and texts, from a file, a form or a link) is read as a
// [Problem] by the fields its [Kind] declares, and becomes a [Lesson]:
// quantities, each with its true value and the routes that lead to it.
//
//	p, err := kinds.All.Read(source)
//	l, err := p.Build()
//	l.Solve(p.Settings) // worked both ways, at the digits asked
//
// Here too are the instructor's [Settings], how values are rounded and shown,
// the codes that stand in links, and the statement and the worked solution as
// sentences. The package knows no kind by name, and no learner: what was
// entered, and what is said of it, is for package tutor.
package lesson
