// Package slipped tells what the slips of the catalogue make of a lesson: of the
// formulas for its quantities, and of their values as they are written down.
//
//	for _, f := range slipped.Formulas(l, l.Quantity("R")) {
//		wrong := expr.Eval(f.Tree, l.Truth) // by the slip f.ID
//	}
//
// It makes the wrong formulas and says how often each is met among slips, before
// anything is seen. What a learner entered, and what of all this explains it, it
// does not know.
package slipped
