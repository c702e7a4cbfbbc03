// Package draw draws problems that are fair: those in which what common slips give
// can be told apart, and from the right value.
//
//	p, fair, err := draw.Wish{Kind: &kinds.TwoForces, Difficulty: 2}.Generate(seed)
//
// A kind proposes problems from integers; one is kept where it is as wished, well
// conditioned and fair. The same seed draws the same problems on every machine. What
// is right within which band package tutor says, and what slips give package slipped;
// no entry is judged here.
package draw
