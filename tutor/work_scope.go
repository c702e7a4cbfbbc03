package tutor

import (
	"closingside/statics"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// scope is what the reader may know when q is asked: every name, and the
// values usable now.
func (w *Work) scope(q *lesson.Quantity) entry.Scope {
	s := entry.Scope{
		Dim: q.Dim, Unit: w.Lesson.UnitOf(q), Force: w.Lesson.Unit, Others: w.Lesson.OtherUnits(),
		Words: w.Lesson.words(), Known: w.known, Asked: q.Name, Dims: w.Lesson.DimOf,
		NumbersOnly: w.Settings.NumbersOnly, UnitRequired: w.Settings.UnitsRequired,
	}
	if q.Equation {
		s.Equation, s.NumbersOnly = true, false
		for i := range w.Lesson.Quantities {
			switch o := &w.Lesson.Quantities[i]; {
			case o.Equation:
				s.Equations = append(s.Equations, o.Name)
			case !o.Given:
				s.Unknowns = append(s.Unknowns, o.Name)
			}
		}
	}
	if q.IsAngle() {
		s.Direction, s.Things = q.Turns, w.Lesson.Problem.Things()
		for i := range w.Lesson.Quantities {
			if o := &w.Lesson.Quantities[i]; o.Turns && !o.Given && o.Name != q.Name {
				s.Unknowns = append(s.Unknowns, o.Name)
			}
		}
	}
	return s
}

// withUnits is the verdict on an entry in which masses carry their units: where
// forces are in kN, m g of 1000 kg is 9.81 of them, as well as m g/1000 is. It
// is nil where a mass in its unit makes the unit of force anyway.
func (w *Work) withUnits(q *lesson.Quantity, text string) *Reply {
	masses := map[string]float64{}
	for _, to := range w.Lesson.OtherUnits() {
		for i := range w.Lesson.Quantities {
			if m := &w.Lesson.Quantities[i]; to.Dim == statics.DimMass && m.Dim == to.Dim && m.Unit.Factor != to.Factor {
				masses[m.Name] = m.Unit.Factor / to.Factor
			}
		}
	}
	if len(masses) == 0 || q.Dim != statics.DimForce {
		return nil
	}
	s := w.scope(q)
	s.Known = func(name string) float64 {
		if f, ok := masses[name]; ok {
			return f * w.known(name)
		}
		return w.known(name)
	}
	reading, bad := entry.Read(text, s)
	if bad != nil {
		return nil
	}
	r := Reply{Quantity: q.Name, Entry: text, Reading: reading, typed: reading}
	w.decide(q, &r)
	return &r
}
