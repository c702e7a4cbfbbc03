package tutor

import (
	"cmp"
	"math"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
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

// Slipped is a formula with one slip made in it.
type Slipped struct {
	ID   string
	Tree expr.Node
}

// Slipped lists what every slip of the catalogue that is a rewrite makes of
// tree, a formula for q. Formulas that come out the same are listed for each
// slip.
func (l *Lesson) Slipped(q *lesson.Quantity, tree expr.Node) []Slipped {
	var all []Slipped
	for _, base := range bases(tree) {
		for _, row := range slips.Catalogue() {
			for _, t := range l.apply(row, q, base) {
				if s := (Slipped{row.ID, t}); t != tree && !slices.Contains(all, s) {
					all = append(all, s)
				}
			}
		}
	}
	return all
}

// Miswritten lists what every slip made in writing a value down makes of v.
func (l *Lesson) Miswritten(q *lesson.Quantity, v float64) []WrongValue {
	var all []WrongValue
	for i := range slips.Catalogue() {
		if row := &slips.Catalogue()[i]; row.Scope == slips.InAnswer {
			for _, x := range row.Written(&slips.Context{Lesson: l.Lesson, Quantity: q}, v) {
				all = append(all, WrongValue{Value: x, IDs: []string{row.ID}, At: q.Name})
			}
		}
	}
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
