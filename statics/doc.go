// Package statics holds what is true about forces: angles and directions,
// units, plane vectors, and the equilibrium of a particle.
//
// The closing side of a force polygon is its resultant:
//
//	p := statics.Polar(340, 25*statics.Degree)
//	q := statics.Polar(610, 118*statics.Degree)
//	r := statics.Resultant(p, q)
//	direction, ok := statics.Direction(r) // ok is false for a zero resultant
//
// Directions are measured from +x, counter-clockwise positive. Magnitudes are
// in whatever one unit of force the caller works in; [Unit] converts.
//
// A moment is not an energy, though a newton metre equals a joule: it has its
// own dimension.
//
// The package is plane statics in float64. It knows nothing of text a person
// typed, of learners, or of files. Angles closer than about 3e-13 degrees are
// one and the same angle here (tolerance.go says why), so what lies closer than
// that is out of reach.
package statics
