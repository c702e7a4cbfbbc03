package statics

import "math"

// Axis is one of the four half-axes, counter-clockwise from +x. On a map they
// are East, North, West and South.
type Axis uint8

// The half-axes.
const (
	PlusX Axis = iota
	PlusY
	MinusX
	MinusY

	East  = PlusX
	North = PlusY
	West  = MinusX
	South = MinusY
)

// Angle returns the direction of the half-axis, a multiple of 90°.
func (x Axis) Angle() Angle { return Angle(x) * (math.Pi / 2) }

// String returns "+x", "+y", "−x" or "−y".
func (x Axis) String() string { return x.pick("+x", "+y", "−x", "−y") }

// compass returns "E", "N", "W" or "S".
func (x Axis) compass() string { return x.pick("E", "N", "W", "S") }

// side returns where the half-axis points on a page.
func (x Axis) side() string { return x.pick("right", "above", "left", "below") }

// way returns where a walk along the half-axis leads on a page.
func (x Axis) way() string { return x.pick("right", "up", "left", "down") }

func (x Axis) pick(names ...string) string {
	if int(x) >= len(names) {
		panic("statics: unknown axis")
	}
	return names[x]
}

// Sense is a sense of rotation.
type Sense uint8

// The senses of rotation.
const (
	CounterClockwise Sense = iota
	Clockwise
)

// HeadingForm is the way a direction was put.
type HeadingForm uint8

// The ways books put a direction.
const (
	FromAxis HeadingForm = iota // "25° from +x", "20° clockwise from +y"
	Beside                      // "30° below −x", "15° left of +y"
	Slope                       // "3:4 up left": rise and run of a slope triangle
	Bearing                     // "N 30° E"; some also write "W 40° N"
	Compass                     // "37° N of E"
	Azimuth                     // "azimuth 120°": clockwise from north
)

// Heading is a direction the way a book gives it, kept as it was given. Every
// form comes down to a turn away from a half-axis. The zero Heading is +x; the
// others come from [From], [Toward], [FromSlope] and [FromNorth].
type Heading struct {
	Form      HeadingForm
	Axis      Axis    // where the turn starts
	Sense     Sense   // which way it goes
	Turn      Angle   // how far
	Rise, Run float64 // legs of the slope triangle, as given; zero in other forms
}

// From returns the heading that lies a turn away from an axis: "20° clockwise
// from +y". The turn may be negative or more than 360°. ok is false where it is
// not finite.
func From(axis Axis, turn Angle, sense Sense) (_ Heading, ok bool) {
	return Heading{Form: FromAxis, Axis: axis, Sense: sense, Turn: turn}, finite(float64(turn))
}

// Toward returns the heading that lies a turn away from one half-axis on the
// side of a neighbouring one, in one of the forms [Beside] ("30° below −x" is
// from MinusX toward MinusY), [Bearing] ("N 30° E" is from North toward East) or
// [Compass] ("37° N of E" is from East toward North). ok is false where the two
// half-axes are not neighbours, or the turn is not in 0° to 90°.
func Toward(form HeadingForm, from, toward Axis, turn Angle) (_ Heading, ok bool) {
	sense, ok := senseToward(from, toward)
	if form != Beside && form != Bearing && form != Compass {
		ok = false
	}
	inQuadrant := turn >= 0 && turn.Degrees() <= 90
	return Heading{Form: form, Axis: from, Sense: sense, Turn: turn}, ok && inQuadrant
}

// FromSlope returns the heading along the hypotenuse of a slope triangle with a
// vertical leg rise and a horizontal leg run: 3:4 up left is
// FromSlope(3, 4, PlusY, MinusX). ok is false where a leg is negative or not
// finite, both are zero, or the half-axes are not one vertical and one
// horizontal.
func FromSlope(rise, run float64, vertical, horizontal Axis) (_ Heading, ok bool) {
	sense, ok := senseToward(horizontal, vertical)
	ok = ok && (horizontal == PlusX || horizontal == MinusX)
	ok = ok && rise >= 0 && run >= 0 && rise+run > 0 && finite(rise+run)
	turn := Angle(math.Atan2(rise, run))
	return Heading{Form: Slope, Axis: horizontal, Sense: sense, Turn: turn, Rise: rise, Run: run}, ok
}

// Legs returns the heading of a slope triangle with other legs, to the same
// sides. ok is false where there is none.
func (h Heading) Legs(rise, run float64) (_ Heading, ok bool) {
	return FromSlope(rise, run, h.toward(), h.Axis)
}

// FromNorth returns the heading of an azimuth, measured clockwise from north,
// which is +y. ok is false outside 0° to 360°.
func FromNorth(azimuth Angle) (_ Heading, ok bool) {
	ok = azimuth >= 0 && azimuth.Degrees() <= 360
	return Heading{Form: Azimuth, Axis: North, Sense: Clockwise, Turn: azimuth}, ok
}

// senseToward returns the way to turn from one half-axis to a neighbour.
func senseToward(from, toward Axis) (_ Sense, ok bool) {
	switch (toward - from) & 3 {
	case 1:
		return CounterClockwise, true
	case 3:
		return Clockwise, true
	}
	return 0, false
}

// Angle returns the direction from +x, counter-clockwise positive, with the
// turns of the heading kept: 400° counter-clockwise from +x is 400°.
func (h Heading) Angle() Angle {
	if h.Sense == Clockwise {
		return h.Axis.Angle() - h.Turn
	}
	return h.Axis.Angle() + h.Turn
}

// String returns the heading as a book writes it; the examples stand beside the
// forms. A heading without a turn is the letter or the axis alone: "N", "−y".
func (h Heading) String() string { return h.Text(h.Turn.String()) }

// Text returns the heading as a book writes it, with its turn written as turn:
// "54.40°".
func (h Heading) Text(turn string) string {
	switch h.Form {
	case FromAxis:
		if h.Turn == 0 && h.Axis != PlusX {
			return h.Axis.String()
		}
		return turn + h.senseWord() + " from " + h.Axis.String()
	case Beside:
		side := h.toward().side()
		if side == "left" || side == "right" {
			side += " of"
		}
		return turn + " " + side + " " + h.Axis.String()
	case Slope:
		return number(h.Rise) + ":" + number(h.Run) + " " + h.toward().way() + " " + h.Axis.way()
	case Bearing:
		if h.Turn == 0 {
			return h.Axis.compass()
		}
		return h.Axis.compass() + " " + turn + " " + h.toward().compass()
	case Compass:
		if h.Turn == 0 {
			return h.Axis.compass()
		}
		return turn + " " + h.toward().compass() + " of " + h.Axis.compass()
	case Azimuth:
		return "azimuth " + turn
	}
	panic("statics: unknown form of heading")
}

// senseWord is empty for the one direction of turn that goes without saying.
func (h Heading) senseWord() string {
	switch {
	case h.Sense == Clockwise:
		return " clockwise"
	case h.Axis != PlusX:
		return " counter-clockwise"
	}
	return ""
}

// toward returns the neighbouring half-axis that the heading turns to.
func (h Heading) toward() Axis {
	if h.Sense == Clockwise {
		return (h.Axis + 3) & 3
	}
	return (h.Axis + 1) & 3
}

func finite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }
