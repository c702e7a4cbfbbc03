package tutor

import (
	"math"
	"unicode/utf8"

	"closingside/statics"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// senses lists what an entry for q may stand for, as asked first. Values are
// brought to degrees from +x.
func (w *Work) senses(q *lesson.Quantity, r entry.Reading) []entry.Reading {
	if !q.IsReported() || r.Form != entry.Number && r.Form != entry.Expression && !r.Bare {
		return []entry.Reading{r}
	}
	asked := r
	switch d := w.Settings.Direction; d.As {
	case lesson.FromThing:
		thing := w.Lesson.Problem.Thing(d.Thing)
		if thing == nil {
			return []entry.Reading{r}
		}
		asked.Value = thing.Field("direction").Value + r.Value
	case lesson.AsBearing:
		asked.Value = 90 - r.Value
		if r.Bare { // its sense is told
			asked.Value = 90 + r.Value
		}
	case lesson.FromVertical:
		if !r.Bare {
			return []entry.Reading{r}
		}
		asked.Value = 90 + r.Value
	default:
		return []entry.Reading{r}
	}
	return []entry.Reading{asked, r}
}

// untold is the key of what is said of a direction that, wrong as it was taken, may
// be meant another way: towards the other end of an axis, or to the other side of
// what it is told from, where that is not what the setting tells from. "" of others.
func (w *Work) untold(r entry.Reading) string {
	switch d := w.Settings.Direction; {
	case r.Open:
		return "entry.heading-end"
	case r.Sideless && !(d.As == lesson.FromThing && d.Thing == r.From):
		return "entry.heading-side"
	}
	return ""
}

// sideless is what is said of an acute angle that does not tell its side, where
// that is asked: it is two directions, or four, so nothing can be judged yet.
func (w *Work) sideless(q *lesson.Quantity, typed string, r entry.Reading) *entry.Error {
	if !q.IsReported() || r.Form != entry.Number && r.Form != entry.Expression || math.Abs(r.Value) > 90 {
		return nil
	}
	key := ""
	switch w.Settings.Direction.As {
	case lesson.FromVertical:
		key = "reported.side.vertical"
	case lesson.AsAcute:
		key = "reported.side.acute"
	default:
		return nil
	}
	return &entry.Error{Col: 1, Len: utf8.RuneCountInString(typed), Key: key}
}

// asAsked tells whether an angle is written the way it is asked; moved tells
// that it is right only when taken from +x, which is not.
func (w *Work) asAsked(q *lesson.Quantity, r entry.Reading, moved bool) bool {
	as := lesson.FromX
	if q.IsReported() {
		as = w.Settings.Direction.As
	}
	switch {
	case !q.IsAngle() || r.Form == entry.Affine:
		return true
	case r.Bare && as != lesson.FromX && as != lesson.AsAcute:
		return !moved
	case r.Form == entry.Direction:
		return w.toldAsAsked(as, r)
	case r.Unit != lesson.AngleUnit.Symbol || moved:
		return false
	case !q.Turns:
		return math.Abs(r.Value-q.True) < 180
	case as == lesson.FromX, as == lesson.FromThing:
		return r.Value > -180-1e-9 && r.Value < 360
	case as == lesson.AsBearing:
		return r.Value >= 0 && r.Value <= 360
	}
	return false // the side is missing
}

// toldAsAsked is asAsked of a direction told in words.
func (w *Work) toldAsAsked(as lesson.ReportAs, r entry.Reading) bool {
	h := r.Heading
	vertical := h.Axis == statics.PlusY || h.Axis == statics.MinusY
	bearing := h.Form == statics.Bearing && vertical
	switch as {
	case lesson.FromX:
		return r.From == "" && h.Form == statics.FromAxis && h.Axis == statics.PlusX
	case lesson.FromThing:
		return r.From == w.Settings.Direction.Thing
	case lesson.FromVertical:
		return bearing || vertical && (h.Form == statics.Beside || h.Form == statics.FromAxis && h.Turn.Degrees() <= 90)
	case lesson.AsBearing:
		return bearing || h.Form == statics.Azimuth || h.Form == statics.Compass && h.Turn == 0
	}
	return h.Form == statics.Beside || h.Form == statics.Bearing || h.Form == statics.Compass
}

// ShownReading is a plain number or a direction as it was read, for q.
func (w *Work) ShownReading(q *lesson.Quantity, r entry.Reading) string {
	shown := r.Shown(w.Lesson.UnitOf(q))
	if q.IsReported() && r.Form == entry.Number {
		switch d := w.Settings.Direction; d.As {
		case lesson.FromThing, lesson.AsBearing:
			return text.Say("reported.read."+d.As.Key(), "value", shown, "thing", lesson.ParseSymbol(d.Thing).String())
		}
	}
	return shown
}

// howAngle says how the angle q is asked.
func (w *Work) howAngle(q *lesson.Quantity) string {
	switch {
	case q.IsReported():
		return w.Settings.Direction.Say("how")
	case q.Turns:
		return text.Say("reported.how.from-x")
	}
	return text.Say("reported.degrees")
}
