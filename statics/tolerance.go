package statics

import "math"

// All tolerances of the package, each with its derivation. absTol in a name
// means an absolute tolerance, relTol one relative to the size of the thing
// compared.
const (
	// epsilon is the distance from 1 to the next float64.
	epsilon = 0x1p-52

	// angleAbsTol, in radians, is the noise left in an angle by the handful of
	// additions that made it. One sum of angles within a turn is off by at most
	// half a unit in the last place of 2π, which is epsilon·π; degrees turned
	// into radians add as much again for each term. Four terms: 4·epsilon·2π,
	// about 5.6e-15 rad or 3.2e-13°. Beyond a turn it grows with the angle.
	angleAbsTol = 4 * epsilon * 2 * math.Pi

	// sumRelTol, relative to the sum of the magnitudes, is the noise of a sum of
	// forces given by magnitude and direction: angleAbsTol turns each force by
	// that much, and the products and sums add a few epsilon.
	sumRelTol = angleAbsTol + 4*epsilon

	// rankAbsTol is the sine of the angle below which two lines are one: each
	// direction carries angleAbsTol, the cross product of unit vectors a few
	// epsilon more.
	rankAbsTol = 2*angleAbsTol + 4*epsilon

	// maxCondition leaves ten of a float64's digits, as many as are printed:
	// two lines 0.001° apart (condition number 115,000) pass without a warning.
	maxCondition = 1e-10 / epsilon
)

// angleNoise is angleAbsTol for an angle of a given size.
func angleNoise(a float64) float64 {
	return angleAbsTol * math.Max(1, math.Abs(a)/(2*math.Pi))
}
