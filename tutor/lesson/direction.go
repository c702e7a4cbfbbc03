package lesson

import (
	"math"
	"strings"

	"closingside/statics"
	"closingside/tutor/text"
)

// A direction is kept in degrees counter-clockwise from +x, whatever way of
// reporting it is asked for. A direction told in words means what it says; a
// number alone, or an expression, is taken as asked. Where that is wrong and
// the same number from +x is right, it is right too, with a note.

// IsReported tells whether the settings say how q is to be reported: whether it
// is a direction asked for.
func (q *Quantity) IsReported() bool { return q.Turns && q.Answer && !q.Given }

// Reported is the direction v, in degrees from +x, the way it is asked for:
// "54.4° from P", "N 10.6° E". For any other quantity it is Show.
func (l *Lesson) Reported(q *Quantity, v float64, d Digits) string {
	if !q.IsReported() || math.IsNaN(v) {
		return l.Show(q, v, d)
	}
	v = RoundPlaces(v, d.Angle)
	at := statics.Angle(v) * statics.Degree
	var h statics.Heading
	switch r := l.Problem.Settings.Direction; r.As {
	case FromThing:
		thing := l.Problem.Thing(r.Thing)
		if thing == nil {
			return l.Show(q, v, d)
		}
		turn := Wrap(v - thing.Field("direction").Value)
		h, _ = statics.From(statics.PlusX, statics.Angle(math.Abs(turn))*statics.Degree, statics.CounterClockwise)
		if turn < 0 {
			h.Sense = statics.Clockwise
		}
		return strings.Replace(h.Text(l.Show(q, math.Abs(turn), d)), "+x", ParseSymbol(r.Thing).String(), 1)
	case FromVertical:
		h = statics.AsBeside(at, statics.PlusY)
	case AsBearing:
		h = statics.AsBearing(at)
	case AsAcute:
		h = statics.AsBeside(at, statics.PlusX)
	default:
		return l.Show(q, v, d)
	}
	return h.Text(l.Show(q, h.Turn.Degrees(), d))
}

// Ending is how a line of working ends that has come to v: with the value, and
// for a direction asked for otherwise, with how it is reported.
func (l *Lesson) Ending(q *Quantity, v float64, d Digits) string {
	shown := l.Show(q, v, d)
	if told := l.Reported(q, v, d); told != shown {
		return l.Say("reported.that-is", "value", shown, "told", told)
	}
	return shown
}

var reportKeys = [...]string{FromX: "from-x", FromThing: "from-thing", FromVertical: "from-vertical", AsBearing: "bearing", AsAcute: "acute"}

// Key ends the keys of what is said of this way of reporting.
func (a ReportAs) Key() string { return reportKeys[a] }

// Say is the sentence on r under "reported.<key>" and its way of reporting.
func (r Reference) Say(key string) string {
	return text.Say("reported."+key+"."+r.As.Key(), "thing", ParseSymbol(r.Thing).String())
}
