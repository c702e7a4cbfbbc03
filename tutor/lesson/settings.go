package lesson

import (
	"math"

	"closingside/statics"
)

// Help says when a kind of help may be asked for: always, after the first
// wrong entry, never.
type Help uint8

// When help may be asked for.
const (
	HelpOn Help = iota
	HelpDelayed
	HelpOff
)

// Digits says how finely values are written: significant digits for
// magnitudes, digits after the point for angles in degrees (an angle's zero is
// arbitrary, so its significant digits mean little).
type Digits struct {
	Magnitude int // 3–10
	Angle     int // 0–8
}

// Reference says how a direction that is asked for is to be reported.
type Reference struct {
	As    ReportAs
	Thing string // FromThing: the name of the thing given, such as a force
}

// ReportAs is a way of reporting a direction.
type ReportAs uint8

// The ways of reporting a direction.
const (
	FromX        ReportAs = iota // counter-clockwise from +x
	FromThing                    // counter-clockwise from a thing given, such as the force P
	FromVertical                 // an acute angle from the vertical, and its side: 20° left of +y
	AsBearing                    // N 30° E, or an azimuth
	AsAcute                      // an acute angle with its quadrant: 30° below −x
)

// Settings are an instructor's choices for a problem. Two are equal when they
// ask the same.
type Settings struct {
	Answer        Digits // asked of answers
	Work          Digits // asked of intermediates and kept while working
	NumbersOnly   bool   // expressions are refused
	UnitsRequired bool   // a number without its unit is refused
	Direction     Reference
	Method        Method // the way of working asked for
	Hints         Help
	Solution      Help
	Sketch        bool // the work begins with a sketch
}

// DefaultSettings are 3 digits for answers and 4 on the way there, angles to
// 0.1° and 0.01° (common practice), everything allowed.
func DefaultSettings() Settings {
	return Settings{
		Answer: Digits{Magnitude: 3, Angle: 1},
		Work:   Digits{Magnitude: 4, Angle: 2},
		Sketch: true,
	}
}

// DigitsOf returns the digits asked of q.
func (s *Settings) DigitsOf(q *Quantity) Digits {
	if q.Answer {
		return s.Answer
	}
	return s.Work
}

// HalfUnit is half a unit of the last digit kept of v: for an angle a fixed
// number of degrees, otherwise relative to v's leading digit.
func (d Digits) HalfUnit(dim statics.Dimension, v float64) float64 {
	if dim == statics.DimAngle {
		return 0.5 * math.Pow10(-d.Angle)
	}
	return 0.5 * math.Pow10(DecimalExponent(v)-d.Magnitude+1)
}
