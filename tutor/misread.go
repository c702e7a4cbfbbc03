package tutor

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"closingside/statics"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
)

// misreading is a given misread from the start: the problem is then another
// one, whose true values are what the learner rightly finds.
type misreading struct {
	outcome outcome   // the slip, at the given
	truth   []float64 // by quantity; NaN where the other problem has none
}

// perMisreading is the weight of a slip in reading a given against one in a
// step: it happens once, before all steps.
const perMisreading = 0.6

// misreadings lists the problems that slips in reading a given lead to, made
// once for a lesson.
func (l *Lesson) misreadings() []misreading {
	prep := l.ready()
	prep.altered.Do(func() {
		s := NewWork(l, lesson.DefaultSettings()).now(&lesson.Quantity{})
		for i := range l.Quantities {
			q := &l.Quantities[i]
			if !q.Given {
				continue
			}
			at, ok := l.field(q)
			if !ok || q.True == 0 {
				continue
			}
			unit := 1.0 // of the lesson's to the field's
			if !q.IsAngle() {
				unit = l.Problem.Items[at.item].Fields[at.field].Value / q.True
			}
			for _, o := range s.slipsIn(i) {
				m := misreading{outcome: o, truth: l.altered(at, o.value*unit)}
				if m.truth == nil {
					continue
				}
				m.outcome.weight *= perMisreading
				if slips.IsCalculatorMode(o.lead()) { // in which the next key undoes it
					m.outcome.weight *= shareModeSet
				}
				prep.misread = append(prep.misread, m)
			}
			if truth := l.leftOut(at); truth != nil {
				row := slips.ByID("term-missing")
				prep.misread = append(prep.misread, misreading{outcome: outcome{ids: row.IDs, at: q.Name, weight: row.Prior}, truth: truth})
			}
		}
	})
	return prep.misread
}

// spot is a field of the statement.
type spot struct{ item, field int }

// field finds where the statement gives q: the field whose change changes q.
func (l *Lesson) field(q *lesson.Quantity) (spot, bool) {
	for i := range l.Problem.Items {
		for k, f := range l.Problem.Items[i].Fields {
			if !f.Given() {
				continue
			}
			at := spot{i, k}
			if truth := l.altered(at, f.Value*1.01+0.01); truth != nil && truth[l.index[q.Name]] != q.True {
				return at, true
			}
		}
	}
	return spot{}, false
}

// altered lists the true values of the problem with another value in one field
// of its statement; nil where that is no problem.
func (l *Lesson) altered(at spot, v float64) []float64 {
	p := *l.Problem
	p.Items = slices.Clone(p.Items)
	item := &p.Items[at.item]
	item.Fields = slices.Clone(item.Fields)
	f := &item.Fields[at.field]
	switch spec := p.Spec(item.Group, f.Key); {
	case spec.Is == lesson.DirectionField:
		h, ok := statics.From(statics.PlusX, statics.Angle(v)*statics.Degree, statics.CounterClockwise)
		if !ok {
			return nil
		}
		f.Heading = h
	case v <= 0 || spec.Is == lesson.NameField || spec.Is == lesson.ChoiceField:
		return nil
	}
	f.Value = v
	other, err := Open(&p)
	if err != nil || len(other.Quantities) != len(l.Quantities) {
		return nil
	}
	truth := other.truths()
	for i := range truth {
		if other.Quantities[i].Name != l.Quantities[i].Name {
			return nil
		}
	}
	return truth
}

// leftOut lists the true values of the problem where a force is forgotten, one of
// three or more, whose magnitude is given at a spot; nil where there is no such.
func (l *Lesson) leftOut(at spot) []float64 {
	item := l.Problem.Items[at.item]
	if l.Problem.Spec(item.Group, item.Fields[at.field].Key).Is != lesson.ForceField || len(l.Problem.Group(item.Group)) < 3 {
		return nil
	}
	p := *l.Problem
	p.Items = slices.Delete(slices.Clone(p.Items), at.item, at.item+1)
	other, err := Open(&p)
	if err != nil {
		return nil
	}
	gone := 1 // its number
	for _, it := range l.Problem.Items[:at.item] {
		if it.Group == item.Group {
			gone++
		}
	}
	truth := l.truths()
	for i := range truth {
		truth[i] = math.NaN()
		if q := other.Quantity(without(l.Quantities[i].Name, gone)); q != nil {
			truth[i] = q.True
		}
	}
	return truth
}

// without is the name that a quantity has where the force of one number is gone:
// F3x becomes F2x without F1 or F2. It is "" for those of that force.
func without(name string, gone int) string {
	at := strings.IndexAny(name, "123456789")
	if at < 0 {
		return name
	}
	switch n := int(name[at] - '0'); {
	case n == gone:
		return ""
	case n > gone:
		return name[:at] + strconv.Itoa(n-1) + name[at+1:]
	}
	return name
}
