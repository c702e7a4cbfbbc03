package lesson

import (
	"slices"
	"strings"

	"closingside/statics"
	"closingside/tutor/text"
)

// Statements are the givens of a problem, a sentence for each thing. The
// sentence for the fields a and b of a group g of kind k is under
// "k.given.g.a.b", or else under "given.a.b"; without either, the values are
// listed.
func (p *Problem) Statements() []string {
	var all []string
	for i := range p.Items {
		all = append(all, p.statement(&p.Items[i]))
	}
	return all
}

func (p *Problem) statement(it *Item) string {
	var keys, holes, values []string
	is := "" // the word of a choice, where a sentence of its own says it
	for _, f := range it.Fields {
		if !f.Given() {
			continue
		}
		shown := f.Shown()
		switch p.Spec(it.Group, f.Key).Is {
		case NameField:
			shown = it.Shown()
		case DirectionField:
			shown = f.Heading.String()
		case ChoiceField:
			is = f.Written + "."
		}
		keys = append(keys, f.Key)
		holes = append(holes, f.Key, shown)
		values = append(values, shown)
	}
	shape := strings.Join(keys, ".")
	own := p.Kind.Name + ".given." + it.Group + "."
	for _, key := range []string{own + is + shape, own + shape, "given." + shape} {
		if text.Has(key) {
			return text.Say(key, holes...)
		}
	}
	return strings.Join(values, ", ")
}

// Spec is the declaration of a field of a group; a zero one where there is none.
func (p *Problem) Spec(group, key string) FieldSpec {
	for _, g := range p.Kind.Groups {
		if g.Key != group {
			continue
		}
		for _, s := range g.Fields {
			if s.Key == key {
				return s
			}
		}
	}
	return FieldSpec{}
}

// Given is what the statement gives, a sentence for each thing, and what was
// converted where it mixes systems of units.
func (l *Lesson) Given() []string { return append(l.Problem.Statements(), l.Converted()...) }

// Converted says what the statement leaves unsaid and, for each given of another
// system of units than the lesson's, what it is in the lesson's: systems are never
// mixed silently. Empty for a problem that keeps to one system and leaves nothing
// unsaid.
func (l *Lesson) Converted() []string {
	all := slices.Clone(l.Assumed)
	home := l.Unit.System()
	for _, it := range l.Problem.Items {
		for _, f := range it.Fields {
			away := f.Unit.System()
			if !f.Given() || away == statics.NoSystem || home == statics.NoSystem || away == home {
				continue
			}
			to := l.homeUnit(f.Unit.Dim)
			v, _ := f.Unit.Convert(f.Value, to)
			all = append(all, text.Say("given.converted", "written", f.Shown(), "same", to.After(Digits{Magnitude: 6}.Written(to.Dim, v)), "unit", l.Unit.Symbol))
		}
	}
	return all
}

// homeUnit is the unit of the lesson's system in which values of dimension d
// are told.
func (l *Lesson) homeUnit(d statics.Dimension) statics.Unit {
	if d == statics.DimForce {
		return l.Unit
	}
	si := map[statics.Dimension]string{statics.DimLength: "m", statics.DimMass: "kg", statics.DimStiffness: "N/m", statics.DimMoment: "N·m", statics.DimAcceleration: "m/s²"}
	us := map[statics.Dimension]string{statics.DimLength: "ft", statics.DimMass: "slug", statics.DimStiffness: "lb/ft", statics.DimMoment: "lb·ft", statics.DimAcceleration: "ft/s²"}
	symbol := si[d]
	if l.Unit.System() == statics.USCustomary {
		symbol = us[d]
	}
	u, _ := statics.UnitBySymbol(symbol)
	return u
}

// Conditions are sentences on how the problem is to be worked: how directions
// are told, by which method, and what an entry must have.
func (l *Lesson) Conditions() []string {
	var all []string
	s := l.Problem.Settings
	for i := range l.Quantities {
		if q := &l.Quantities[i]; q.IsReported() {
			all = append(all, l.Say("reported.give."+s.Direction.As.Key(), "direction", l.SymbolText(q.Name), "thing", ParseSymbol(s.Direction.Thing).String()))
		}
	}
	switch s.Method {
	case ByTriangle:
		all = append(all, text.Say("settings.by-triangle"))
	case ByComponents:
		all = append(all, text.Say("settings.by-components"))
	}
	if s.NumbersOnly {
		all = append(all, text.Say("settings.numbers-only"))
	}
	if s.UnitsRequired {
		all = append(all, text.Say("settings.units-required"))
	}
	return all
}
