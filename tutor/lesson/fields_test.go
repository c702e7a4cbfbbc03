package lesson_test

import (
	"testing"

	"closingside/tutor/lesson"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// every is a kind with every type of field, in no way a kind of problem.
var every = lesson.Kind{Name: "every", Groups: []lesson.Group{
	{Key: "things", Min: 0, Max: 2, Fields: []lesson.FieldSpec{
		{Key: "name", Is: lesson.NameField, Example: "A"},
		{Key: "force", Is: lesson.ForceField, Example: "3 kN", Optional: true},
		{Key: "part", Is: lesson.ComponentField, Example: "-3 kN", Optional: true},
		{Key: "way", Is: lesson.DirectionField, Example: "N 30 E", Optional: true},
		{Key: "angle", Is: lesson.AngleField, Example: "30 deg", Optional: true},
		{Key: "ratio", Is: lesson.RatioField, Example: "0.3", Optional: true},
		{Key: "length", Is: lesson.LengthField, Example: "2 m", Optional: true},
		{Key: "mass", Is: lesson.MassField, Example: "20 kg", Optional: true},
		{Key: "stiffness", Is: lesson.StiffnessField, Example: "200 N/m", Optional: true},
	}},
	{Key: "gravity", Min: 0, Max: 1, Fields: []lesson.FieldSpec{{Key: "g", Is: lesson.AccelerationField, Example: "9.81 m/s²"}}},
	{Key: "hold", Min: 1, Max: 1, Fields: []lesson.FieldSpec{{Key: "by", Is: lesson.ChoiceField, Example: "cable", Choices: []string{"cable", "strut"}}}},
}}

func TestFieldsAreReadByTheirType(t *testing.T) {
	rows := []struct {
		key, written string
		value        float64
		unit         string
	}{
		{"force", "3 kN", 3, "kN"}, {"part", "-3 kip", -3, "kip"}, {"part", "0 N", 0, "N"},
		{"way", "N 30 E", 60, ""}, {"way", "3:4 down left", 216.86989764584402, ""},
		{"angle", "52°30′", 52.5, "deg"}, {"ratio", "0.3", 0.3, ""}, {"length", "2.5 ft", 2.5, "ft"},
		{"mass", "20 kg", 20, "kg"}, {"mass", "2 slugs", 2, "slug"}, {"stiffness", "200 N/m", 200, "N/m"}, {"stiffness", "35 lb/in", 35, "lb/in"},
	}
	for _, r := range rows {
		t.Run(r.key+" "+r.written, func(t *testing.T) {
			p, err := every.Read(lesson.Branch("", lesson.Branch("things", lesson.Branch("", lesson.Leaf("name", "A"), lesson.Leaf(r.key, r.written))), lesson.Leaf("hold", "strut")))
			require.NoError(t, err)
			f := p.Group("things")[0].Field(r.key)
			assert.InDelta(t, r.value, f.Value, 1e-12)
			assert.Equal(t, r.unit, f.Unit.Symbol)
			assert.True(t, f.Given())
			assert.Equal(t, r.key == "force", p.Group("things")[0].Field("force").Given(), "left out")
		})
	}
	p, err := every.Read(lesson.Branch("", lesson.Leaf("hold", "cable"), lesson.Leaf("gravity", "32.2 ft/s²")))
	require.NoError(t, err)
	assert.Equal(t, "ft/s²", p.Group("gravity")[0].Field("g").Unit.Symbol)
	assert.Equal(t, []string{"gravity", "hold"}, []string{p.Items[0].Group, p.Items[1].Group}, "in the kind's order")
}

func TestFieldsOutOfBoundsAreRefusedWithWhatWouldDo(t *testing.T) {
	thing := func(key, v string) lesson.Source {
		return lesson.Branch("things", lesson.Branch("", lesson.Leaf("name", "A"), lesson.Leaf(key, v)))
	}
	rows := []struct {
		name string
		kids []lesson.Source
		says string
	}{
		{"negative length", []lesson.Source{thing("length", "-2 m")}, "more than zero"},
		{"force as length", []lesson.Source{thing("length", "2 N")}, "2 m"},
		{"no mass", []lesson.Source{thing("mass", "0 kg")}, "more than zero"},
		{"full turn", []lesson.Source{thing("angle", "360 deg")}, "less than 360°"},
		{"vast component", []lesson.Source{thing("part", "-1e13 N")}, "-3 kN"},
		{"unknown word", []lesson.Source{lesson.Leaf("hold", "rope")}, "cable, strut"},
		{"word missing", nil, "hold: cable"},
		{"one, listed twice", []lesson.Source{lesson.Branch("hold", lesson.Branch("", lesson.Leaf("by", "cable")), lesson.Branch("", lesson.Leaf("by", "strut")))}, "must list 1, not 2"},
		{"three of two", []lesson.Source{lesson.Branch("things", lesson.Branch("", lesson.Leaf("name", "A")), lesson.Branch("", lesson.Leaf("name", "B")), lesson.Branch("", lesson.Leaf("name", "C")))}, "from 0 to 2"},
		{"required left empty", []lesson.Source{lesson.Branch("things", lesson.Branch("", lesson.Leaf("name", "")))}, "name"},
		{"not a list", []lesson.Source{lesson.Leaf("things", "A")}, "list"},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			src := lesson.Branch("", r.kids...)
			if r.name != "word missing" && r.name != "unknown word" && r.name != "one, listed twice" {
				src.Kids = append(src.Kids, lesson.Leaf("hold", "cable"))
			}
			_, err := every.Read(src)
			require.Error(t, err)
			assert.ErrorContains(t, err, r.says)
		})
	}
}
