// Package balance compares equations as learners write them with those that
// hold.
//
// An equation is sorted into a sum of products of unknowns that is zero, each
// coefficient with what the rounding of the numbers in it may have moved:
//
//	s := balance.Sorter{Value: known, Tree: follows}
//	t, ok := s.Terms(balance.Side{Tree: left, Literal: uncertainty}, balance.Exact(right))
//	e := balance.Weigh(l, t, largest)
//	e.SpannedBy(basis) // whether it follows from one or two others
//
// So it may be scaled, rearranged, or belong to another pair of axes. Unknowns
// may be multiplied with each other, and an unknown angle may stand in a sine, a
// cosine or a tangent; an unknown in a power is not sorted.
package balance
