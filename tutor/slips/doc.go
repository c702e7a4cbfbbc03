// Package slips is the catalogue of common mistakes, as rewrites of formulas
// and of values.
//
//	row := slips.ByID("sine-cosine-swapped")
//	row.Rule(&slips.Context{Lesson: l, Quantity: q}, node) // what stands there then
//
// A row belongs to a group (angle, cosine, trig, …), one file each. What is
// said of it is in tutor/text, an example of it in examples.go. The package
// makes wrong formulas; which of them explains an entry, and how likely, is
// for package tutor. slips.md beside that package lists the rows for readers.
package slips
