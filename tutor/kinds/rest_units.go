package kinds

import (
	"math"
	"strings"

	"closingside/statics"
)

// units chooses the units of the lesson: forces in the first one written,
// otherwise newtons, or pounds where masses are in slugs or lengths in feet.
func (s *rest) units() {
	var first, other statics.Unit
	for _, it := range s.problem.Group("parts") {
		if u := it.Field("force").Unit; first.Factor == 0 {
			first = u
		}
		for _, key := range []string{"mass", "stiffness"} {
			if u := it.Field(key).Unit; other.Factor == 0 {
				other = u
			}
		}
		for _, key := range []string{"stretch", "compression", "stiffness"} {
			if u := it.Field(key).Unit; s.length.Factor == 0 && u.Factor != 0 {
				s.length = lengthOf(u)
			}
		}
	}
	system := "N kg m/s² m"
	if us := statics.USCustomary; first.System() == us || first.Factor == 0 && other.System() == us {
		system = "lb slug ft/s² ft"
	}
	named := unitsNamed(system)
	s.unit, s.mass, s.gravity = named[0], named[1], named[2]
	if first.Factor != 0 {
		s.unit = first
	}
	if s.length.Factor == 0 || s.length.System() != s.unit.System() {
		s.length = named[3]
	}
	s.g = map[string]float64{"m/s²": 9.81, "ft/s²": 32.2}[s.gravity.Symbol]
	if stated := s.problem.Group("gravity"); len(stated) > 0 {
		f := stated[0].Field("g")
		s.g, _ = f.Unit.Convert(f.Value, s.gravity)
	}
}

func unitsNamed(symbols string) []statics.Unit {
	var all []statics.Unit
	for _, symbol := range strings.Fields(symbols) {
		u, _ := statics.UnitBySymbol(symbol)
		all = append(all, u)
	}
	return all
}

// coherent is how many units of mass times acceleration make the unit of force.
func (s *rest) coherent() float64 {
	return math.Round(s.unit.Factor/(s.mass.Factor*s.gravity.Factor)*1e6) / 1e6
}

// stiffness is the lesson's unit of stiffness.
func (s *rest) stiffness() statics.Unit {
	return statics.Unit{Symbol: s.unit.Symbol + "/" + s.length.Symbol, Dim: statics.DimStiffness, Factor: s.unit.Factor / s.length.Factor}
}

// lengthOf is the unit of length in a unit of length or of stiffness.
func lengthOf(u statics.Unit) statics.Unit {
	_, below, ok := strings.Cut(u.Symbol, "/")
	if !ok {
		below = u.Symbol
	}
	length, _ := statics.UnitBySymbol(below)
	return length
}
