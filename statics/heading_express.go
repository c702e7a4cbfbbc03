package statics

import "math"

// AsBeside puts a direction as an acute angle from the nearer end of the x-axis
// (axis PlusX or MinusX) or of the y-axis: 113.6° is "66.4° above −x" or "23.6°
// left of +y". The turn is in 0° to 90°.
func AsBeside(a Angle, axis Axis) Heading {
	from := axis & 1 // PlusX or PlusY
	off := (a - from.Angle()).Normalized()
	if off.Abs() > math.Pi/2 {
		from += 2
		off = (a - from.Angle()).Normalized()
	}
	return turned(Beside, from, off)
}

// AsBearing puts a direction as an acute angle from north (+y) or south toward
// east (+x) or west: 47° is "N 43° E".
func AsBearing(a Angle) Heading {
	h := AsBeside(a, North)
	h.Form = Bearing
	return h
}

// turned returns the heading a signed angle away from a half-axis.
func turned(form HeadingForm, from Axis, off Angle) Heading {
	if off < 0 {
		return Heading{Form: form, Axis: from, Sense: Clockwise, Turn: -off}
	}
	return Heading{Form: form, Axis: from, Turn: off}
}
