package lesson

// Help says when a kind of help may be asked for.
type Help uint8

// When help may be asked for.
const (
	HelpOn      Help = iota // always
	HelpDelayed             // after the first wrong entry
	HelpOff                 // never
)

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

// DigitsKept is the digits a worked solution shows of q: those kept on the way, or
// those asked where they are finer.
func (s *Settings) DigitsKept(q *Quantity) Digits {
	a := s.DigitsOf(q)
	return Digits{max(a.Magnitude, s.Work.Magnitude), max(a.Angle, s.Work.Angle)}
}
