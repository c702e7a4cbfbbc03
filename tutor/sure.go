package tutor

import "strings"

// How likely an explanation has to be before it is told.

// sureEnough is the probability from which a slip is named, halfSure the one
// from which an entry is sent back to an earlier one: that accuses nobody.
// Rounding too soon is said of a step, and so lies between.
const (
	sureEnough     = 0.8
	halfSure       = 0.5
	sureOfRounding = 0.7
	littleUnknown  = 1 - sureEnough // something known is sure to explain it, be it the one or the other
	mayBe          = 0.2            // carried, beside one slip; a slip, beside rounding

	// sureOfTwo is the probability from which two slips together are named:
	// there are so many pairs that noise often meets one.
	sureOfTwo = 0.93
)

// double tells whether s is most likely two slips together.
func (s Suspect) double() bool { return strings.Contains(s.Likely, "+") }

// sure tells whether s is likely enough to be named.
func (s Suspect) sure() bool {
	if s.double() {
		return s.Probability >= sureOfTwo
	}
	return s.Probability >= sureEnough
}

// maybeSlip tells whether a slip is likely enough to be told of beside rounding.
func (r *Reply) maybeSlip() bool {
	return len(r.Slips) > 0 && !r.Slips[0].double() && r.Slips[0].Probability >= mayBe
}
