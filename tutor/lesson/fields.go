package lesson

import (
	"slices"
	"strconv"
	"strings"

	"closingside/statics"
	"closingside/tutor/entry"
)

// miscounted says that a list is too short or too long.
func (g Group) miscounted(at Source, n int) error {
	key := "problem.count"
	switch {
	case n == 0 && g.Max == 1:
		return at.Fault("problem.field.missing", "key", g.Key, "example", g.example())
	case g.Min == g.Max:
		key = "problem.count.exact"
	}
	return at.Fault(key, "key", g.Key, "min", strconv.Itoa(g.Min), "max", strconv.Itoa(g.Max), "n", strconv.Itoa(n))
}

// items are the things a group's source lists. A group of at most one thing
// may be written without the list, or as the value of its only field.
func (g Group) items(list Source) ([]Source, error) {
	written := len(list.Kids) > 0 && list.Kids[0].Key != ""
	switch {
	case g.Max == 1 && written:
		list.Key = ""
		return []Source{list}, nil
	case g.Max == 1 && len(g.Fields) == 1 && list.Text != "":
		return []Source{{Line: list.Line, Col: list.Col, Kids: []Source{{Key: g.Fields[0].Key, Text: list.Text, Line: list.Line, Col: list.Col}}}}, nil
	case written || len(list.Kids) == 0 && list.Text != "":
		return nil, list.Fault("problem.list", "key", g.Key, "example", g.example())
	}
	return list.Kids, nil
}

func (p *Problem) readGroup(g Group, list Source) error {
	items, err := g.items(list)
	if err != nil {
		return err
	}
	for _, src := range items {
		for _, kid := range src.Kids { // before what is missing: a key misspelt is both
			if !slices.ContainsFunc(g.Fields, func(s FieldSpec) bool { return s.Key == kid.Key }) {
				return kid.Fault("problem.key.unknown", "key", kid.Key, "keys", strings.Join(g.keys(), ", "))
			}
		}
		item := Item{Group: g.Key, Line: src.Line}
		for _, spec := range g.Fields {
			f, err := readField(spec, src)
			if err != nil {
				return err
			}
			item.Fields = append(item.Fields, f)
		}
		p.Items = append(p.Items, item)
	}
	return nil
}

// Faults are the values of what src gives that can't be read by themselves, in
// order: a form tells of all at once.
func (k *Kind) Faults(src Source) (all []*SourceError) {
	for _, g := range k.Groups {
		for _, list := range src.Kids {
			if list.Key != g.Key {
				continue
			}
			items, _ := g.items(list)
			for _, item := range items {
				for _, spec := range g.Fields {
					if _, err := readField(spec, item); err != nil {
						all = append(all, err.(*SourceError))
					}
				}
			}
		}
	}
	return all
}

func (g Group) keys() []string {
	var keys []string
	for _, f := range g.Fields {
		keys = append(keys, f.Key)
	}
	return keys
}

// example is a thing of the group as a file writes it.
func (g Group) example() string {
	if g.Max == 1 && len(g.Fields) == 1 {
		return g.Fields[0].Example
	}
	var parts []string
	for _, f := range g.Fields {
		if !f.Optional {
			parts = append(parts, f.Key+": "+f.Example)
		}
	}
	return "{" + strings.Join(parts, ", ") + "}"
}

// readField reads one field of a thing. A field that may be left out and is,
// has no text.
func readField(spec FieldSpec, item Source) (Field, error) {
	i := slices.IndexFunc(item.Kids, func(k Source) bool { return k.Key == spec.Key })
	if i < 0 || item.Kids[i].Kids == nil && strings.TrimSpace(item.Kids[i].Text) == "" && spec.Optional {
		if spec.Optional {
			return Field{Key: spec.Key}, nil
		}
		return Field{}, item.Fault("problem.field.missing", "key", spec.Key, "example", spec.Example)
	}
	src := item.Kids[i]
	if src.Kids != nil {
		return Field{}, src.Fault("problem.field.parts", "key", spec.Key, "example", spec.Example)
	}
	f := Field{Key: spec.Key, Written: strings.TrimSpace(src.Text)}
	var bad *entry.Error
	switch spec.Is {
	case NameField:
		return f, checkName(f.Written, src)
	case ChoiceField:
		if !slices.Contains(spec.Choices, f.Written) {
			return f, src.Fault("problem.choice", "key", spec.Key, "got", f.Written, "choices", strings.Join(spec.Choices, ", "))
		}
		return f, nil
	case DirectionField:
		f.Heading, bad = entry.ReadHeading(f.Written)
		if bad == nil {
			f.Value = f.Heading.Angle().Degrees()
		}
	default:
		f.Value, f.Unit, bad = entry.ReadMeasure(f.Written, measures[spec.Is])
		if bad == nil && !spec.Is.holds(f) {
			return f, src.Fault(spec.Is.bounds(), "got", f.Written, "example", spec.Example)
		}
	}
	if bad != nil {
		return f, src.Fault("problem.field.bad", "key", spec.Key, "got", f.Written,
			"why", bad.Message(), "example", spec.Example)
	}
	return f, nil
}

// holds tells whether a quantity lies within the bounds of its type of field.
func (t FieldType) holds(f Field) bool {
	switch t {
	case ComponentField:
		return f.Value < maxMagnitude && f.Value > -maxMagnitude
	case AngleField:
		return f.Value > 0 && f.Unit.Base(f.Value) < 360
	}
	return f.Value > 0 && f.Value < maxMagnitude
}

// bounds is the key of the sentence that says what the bounds are.
func (t FieldType) bounds() string {
	switch t {
	case ForceField:
		return "problem.magnitude"
	case ComponentField:
		return "problem.component"
	case AngleField:
		return "problem.angle"
	}
	return "problem.positive"
}

// measures are the dimensions of the fields that hold a quantity.
var measures = map[FieldType]statics.Dimension{
	ForceField: statics.DimForce, ComponentField: statics.DimForce, AngleField: statics.DimAngle,
	RatioField: statics.DimRatio, LengthField: statics.DimLength, MassField: statics.DimMass,
	StiffnessField: statics.DimStiffness, AccelerationField: statics.DimAcceleration,
}
