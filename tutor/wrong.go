package tutor

import (
	"cmp"
	"math"
	"slices"

	"closingside/tutor/lesson"
)

// WrongValue is a value that mistakes of the catalogue give for a quantity.
type WrongValue struct {
	Value  float64  // in the quantity's unit
	Shown  string   // as written with the digits kept on the way: "713.7 N"
	IDs    []string // of the slips that give it, equal in value, sorted
	At     string   // the quantity in whose finding the slip sits
	Weight float64  // share among the quantity's wrong values, before any is seen; they sum to at most 1
}

// InHead tells whether the slip sits in a step before that of q.
func (v WrongValue) InHead(q *lesson.Quantity) bool { return v.At != q.Name }

// WrongValues lists what one slip gives for q, here or in a step before it
// that was done in the head, in order of value. Values that would be accepted
// under s are left out.
func (l *Lesson) WrongValues(q *lesson.Quantity, s lesson.Settings) []WrongValue {
	w := NewWork(l, s)
	t := w.now(q).outcomes(l.index[q.Name])
	band := w.Band(q)
	var all []WrongValue
	for i, o := range t.outcomes() {
		v := o.value
		if t.cells[i].below {
			v = -math.Abs(v)
		}
		if !band.Holds(q, v) {
			all = append(all, WrongValue{v, l.ShowKept(q, v, s), slices.Clone(o.ids), o.at, o.weight / t.total})
		}
	}
	slices.SortStableFunc(all, func(a, b WrongValue) int { return cmp.Compare(a.Value, b.Value) })
	return all
}

// SlipTitle is what a student did who made the slip called id, in a few words.
// Two slips joined by "+" are both said.
func (l *Lesson) SlipTitle(id string) string {
	for i := range id {
		if id[i] == '+' {
			return l.Say("slip."+id[:i]+".title") + " + " + l.SlipTitle(id[i+1:])
		}
	}
	return l.Say("slip." + id + ".title")
}
