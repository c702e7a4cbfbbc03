package tutor

import (
	"math"
	"strings"
	"unicode/utf8"

	"closingside/statics"
	"closingside/tutor/entry"
	"closingside/tutor/text"
)

// A direction is kept in degrees counter-clockwise from +x, whatever way of
// reporting it is asked for. A direction told in words means what it says; a
// number alone, or an expression, is taken as asked. Where that is wrong and
// the same number from +x is right, it is right too, with a note.

// reported tells whether the settings say how q is to be reported: whether it
// is a direction asked for.
func (q *Quantity) reported() bool { return q.Turns && q.Answer && !q.Given }

// senses lists what an entry for q may stand for, as asked first. Values are
// brought to degrees from +x.
func (w *Work) senses(q *Quantity, r entry.Reading) []entry.Reading {
	if !q.reported() || r.Form != entry.Number && r.Form != entry.Expression && !r.Bare {
		return []entry.Reading{r}
	}
	asked := r
	switch d := w.Settings.Direction; d.As {
	case FromThing:
		thing := w.Lesson.Problem.thing(d.Thing)
		if thing == nil {
			return []entry.Reading{r}
		}
		asked.Value = thing.Field("direction").Value + r.Value
	case AsBearing:
		asked.Value = 90 - r.Value
		if r.Bare { // its sense is told
			asked.Value = 90 + r.Value
		}
	case FromVertical:
		if !r.Bare {
			return []entry.Reading{r}
		}
		asked.Value = 90 + r.Value
	default:
		return []entry.Reading{r}
	}
	return []entry.Reading{asked, r}
}

// sideless is what is said of an acute angle that does not tell its side, where
// that is asked: it is two directions, or four, so nothing can be judged yet.
func (w *Work) sideless(q *Quantity, typed string, r entry.Reading) *entry.Error {
	if !q.reported() || r.Form != entry.Number && r.Form != entry.Expression || math.Abs(r.Value) > 90 {
		return nil
	}
	key := ""
	switch w.Settings.Direction.As {
	case FromVertical:
		key = "reported.side.vertical"
	case AsAcute:
		key = "reported.side.acute"
	default:
		return nil
	}
	return &entry.Error{Col: 1, Len: utf8.RuneCountInString(typed), Key: key}
}

// asAsked tells whether an angle is written the way it is asked; moved tells
// that it is right only when taken from +x, which is not.
func (w *Work) asAsked(q *Quantity, r entry.Reading, moved bool) bool {
	as := FromX
	if q.reported() {
		as = w.Settings.Direction.As
	}
	switch {
	case q.Dim != statics.DimAngle || r.Form == entry.Affine:
		return true
	case r.Bare && as != FromX && as != AsAcute:
		return !moved
	case r.Form == entry.Direction:
		return w.toldAsAsked(as, r)
	case r.Unit != degree.Symbol || moved:
		return false
	case !q.Turns:
		return math.Abs(r.Value) < 360
	case as == FromX, as == FromThing:
		return r.Value > -180-1e-9 && r.Value < 360
	case as == AsBearing:
		return r.Value >= 0 && r.Value <= 360
	}
	return false // the side is missing
}

// toldAsAsked is asAsked of a direction told in words.
func (w *Work) toldAsAsked(as ReportAs, r entry.Reading) bool {
	h := r.Heading
	vertical := h.Axis == statics.PlusY || h.Axis == statics.MinusY
	bearing := h.Form == statics.Bearing && vertical
	switch as {
	case FromX:
		return r.From == "" && h.Form == statics.FromAxis && h.Axis == statics.PlusX
	case FromThing:
		return r.From == w.Settings.Direction.Thing
	case FromVertical:
		return bearing || vertical && (h.Form == statics.Beside || h.Form == statics.FromAxis && h.Turn.Degrees() <= 90)
	case AsBearing:
		return bearing || h.Form == statics.Azimuth || h.Form == statics.Compass && h.Turn == 0
	}
	return h.Form == statics.Beside || h.Form == statics.Bearing || h.Form == statics.Compass
}

// Reported is the direction v, in degrees from +x, the way it is asked for:
// "54.4° from P", "N 10.6° E".
func (l *Lesson) Reported(q *Quantity, v float64, d Digits) string {
	if !q.reported() || math.IsNaN(v) {
		return l.Show(q, v, d)
	}
	v = roundPlaces(v, d.Angle)
	at := statics.Angle(v) * statics.Degree
	var h statics.Heading
	switch r := l.Problem.Settings.Direction; r.As {
	case FromThing:
		thing := l.Problem.thing(r.Thing)
		if thing == nil {
			return l.Show(q, v, d)
		}
		turn := wrap(v - thing.Field("direction").Value)
		h, _ = statics.From(statics.PlusX, statics.Angle(math.Abs(turn))*statics.Degree, statics.CounterClockwise)
		if turn < 0 {
			h.Sense = statics.Clockwise
		}
		return strings.Replace(h.Text(l.Show(q, math.Abs(turn), d)), "+x", shownName(r.Thing), 1)
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

// ends is how a line of working ends that has come to v: with the value, and
// for a direction asked for otherwise, with how it is reported.
func (l *Lesson) ends(q *Quantity, v float64, d Digits) string {
	shown := l.Show(q, v, d)
	if told := l.Reported(q, v, d); told != shown {
		return l.Say("reported.that-is", "value", shown, "told", told)
	}
	return shown
}

// reportKeys end the keys of what is said of each way of reporting.
var reportKeys = [...]string{FromX: "from-x", FromThing: "from-thing", FromVertical: "from-vertical", AsBearing: "bearing", AsAcute: "acute"}

// say is the sentence on r under a key.
func (r Reference) say(key string) string {
	return text.Say("reported."+key+"."+reportKeys[r.As], "thing", shownName(r.Thing))
}

// ShownReading is a plain number or a direction as it was read, for q.
func (w *Work) ShownReading(q *Quantity, r entry.Reading) string {
	shown := r.Shown(w.Lesson.UnitOf(q))
	if q.reported() && r.Form == entry.Number {
		switch d := w.Settings.Direction; d.As {
		case FromThing, AsBearing:
			return text.Say("reported.read."+reportKeys[d.As], "value", shown, "thing", shownName(d.Thing))
		}
	}
	return shown
}

// howAngle says how the angle q is asked.
func (w *Work) howAngle(q *Quantity) string {
	if !q.reported() {
		return text.Say("reported.degrees")
	}
	return w.Settings.Direction.say("how")
}
