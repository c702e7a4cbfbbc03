package tutor

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// suspect is o as an explanation of an entry for q: where the form of an expression
// tells its ids apart, of those that lead to it. The very value of another force was
// most likely written down as it stands, whatever else comes to it.
func (w *Work) suspect(q *lesson.Quantity, o *outcome, r entry.Reading, p float64) Suspect {
	s := Suspect{IDs: o.ids, Probability: p, At: o.at, Likely: o.lead(), value: o.value, full: o.full, unentered: o.unentered}
	if ids := o.told(w.Lesson, r); len(ids) > 0 {
		s.Likely = ids[0]
		slices.Sort(ids)
		s.IDs = ids
	}
	if o.at == q.Name && slices.Contains(s.IDs, otherForce) {
		if s.same = w.sameForce(q, o.value); s.same != "" {
			s.Likely = otherForce
		}
	}
	return s
}

const otherForce = "other-force"

// sameForce is the symbol of a force that has the value v, other than q and known to
// the learner; "" where there is none, and where q is no magnitude of a force.
func (w *Work) sameForce(q *lesson.Quantity, v float64) string {
	for i := range w.Lesson.Quantities {
		o := &w.Lesson.Quantities[i]
		if o != q && o.Dim == statics.DimForce && q.Dim == o.Dim && !q.Signed && !o.Signed && math.Abs(w.accepted(o.Name)-v) <= q.Epsilon() {
			return w.Lesson.SymbolText(o.Name)
		}
	}
	return ""
}

// addSuspect adds a suspect, those of higher probability before it. One of the
// same value, or a turn from it, is told as the same; so is one whose ids are among
// those of another, made at another place or by another route, one that shares an id
// with another and a value to the digits written, half a unit of which is given, and
// one that only the rounding of what was entered tells from another.
func addSuspect(q *lesson.Quantity, all []Suspect, s Suspect, half float64) []Suspect {
	for i := range all {
		o := &all[i]
		switch {
		case among(s.IDs, o.IDs):
		case among(o.IDs, s.IDs):
			o.IDs = s.IDs
		case q.FoldedDistance(o.value, s.value) <= q.Epsilon(), q.FoldedDistance(o.inFull(), s.inFull()) <= q.Epsilon(), aTurnApart(q, o.value, s.value),
			q.FoldedDistance(o.value, s.value) <= half && share(o.IDs, s.IDs), sameUnentered(q, *o, s, half):
			o.IDs = bothIDs(o.IDs, s.IDs)
		default:
			continue
		}
		o.Probability += s.Probability
		return all
	}
	return append(all, s)
}

// aTurnApart tells whether two angles of the figure, folded, are one that came out
// below zero written with and without a turn: 63.74 stands for −63.74 then.
func aTurnApart(q *lesson.Quantity, a, b float64) bool {
	return q.IsAngle() && !q.Turns && math.Abs(a+b-360) <= q.Epsilon()
}

// inFull is what s comes to, with all its digits.
func (s *Suspect) inFull() float64 {
	if s.full != 0 {
		return s.full
	}
	return s.value
}

// afterRounding is how many half units of an entry's last digit two values may
// lie apart by what was rounded in the entries before it.
const afterRounding = 40

// sameUnentered tells whether two suspects come to the same but for what was
// rounded in the entries they are worked from.
func sameUnentered(q *lesson.Quantity, a, b Suspect, half float64) bool {
	return a.unentered != 0 && b.unentered != 0 && q.FoldedDistance(a.value, b.value) <= afterRounding*half && q.FoldedDistance(a.unentered, b.unentered) <= q.Epsilon()
}

// leastShown is the probability from which a suspect is listed beside a likelier
// one; leastWeighed that from which an explanation is looked at.
const (
	leastShown   = 0.005
	leastWeighed = 0.0005
	maxWeighed   = 40
)
