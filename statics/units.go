package statics

import "math"

// Dimension is the kind of thing a number measures.
type Dimension uint8

// The dimensions of a statics lesson, with the base unit of each.
const (
	DimRatio        Dimension = iota // 1
	DimAngle                         // degree
	DimForce                         // newton
	DimLength                        // metre
	DimMoment                        // newton metre; not energy, though N·m equals J
	DimMass                          // kilogram
	DimStiffness                     // newton per metre
	DimAcceleration                  // metre per second squared
)

// String names the dimension in lower case: "force".
func (d Dimension) String() string {
	names := [...]string{"ratio", "angle", "force", "length", "moment", "mass", "stiffness", "acceleration"}
	if int(d) >= len(names) {
		panic("statics: unknown dimension")
	}
	return names[d]
}

// Unit is a unit of measurement.
type Unit struct {
	Symbol string // as printed: "kN", "lb·ft", "deg"
	Dim    Dimension
	Factor float64 // how many base units of Dim make one of this unit
}

// Base turns v of this unit into base units.
func (u Unit) Base(v float64) float64 { return v * u.Factor }

// Convert turns v of unit u into unit to. ok is false where the two measure
// different things; v is then returned as NaN.
func (u Unit) Convert(v float64, to Unit) (_ float64, ok bool) {
	if u.Dim != to.Dim {
		return math.NaN(), false
	}
	if u.Factor == to.Factor {
		return v, true
	}
	return v * u.Factor / to.Factor, true
}

// After writes the unit behind a number: "340 N", "1.52 rad", but "25°". NIST
// SP 811 (2008), 7.2: a space stands between number and unit, except before the
// signs for degree, minute and second of angle.
func (u Unit) After(number string) string {
	switch u.Symbol {
	case "":
		return number
	case "deg":
		return number + "°"
	case "′", "″":
		return number + u.Symbol
	}
	return number + " " + u.Symbol
}

// NewtonsPerPound is a pound-force in newtons, exact: NIST SP 811 (2008), B.8
// "pound-force".
const NewtonsPerPound = 4.4482216152605

// Factors that others are made of. "Exact" factors are so by definition.
const (
	foot          = 0.3048     // m, exact: NIST SP 811 (2008), B.8 "foot"
	inch          = 0.0254     // m, exact: B.8 "inch"
	poundMass     = 0.45359237 // kg, exact: B.8 "pound (avoirdupois)"
	kilogramForce = 9.80665    // N, exact: B.8 "kilogram-force"
)

// units holds every unit once, base units first. The factors of pound-force and
// foot compounds follow from the two exact ones above; the tests compare them
// with the seven printed digits of NIST SP 811 (2008), appendix B.8.
var units = [...]Unit{
	{"", DimRatio, 1},

	{"deg", DimAngle, 1},
	{"′", DimAngle, 1.0 / 60},   // SP 811 table 6: 1′ = (1/60)°
	{"″", DimAngle, 1.0 / 3600}, // SP 811 table 6: 1″ = (1/60)′
	{"rad", DimAngle, 180 / math.Pi},
	{"gon", DimAngle, 0.9}, // exact: B.8 "gon (also called grade)"

	{"N", DimForce, 1},
	{"mN", DimForce, 1e-3},
	{"daN", DimForce, 10},
	{"kN", DimForce, 1e3},
	{"MN", DimForce, 1e6},
	{"lb", DimForce, NewtonsPerPound}, // the trade's short form of lbf
	{"lbf", DimForce, NewtonsPerPound},
	{"kip", DimForce, 1000 * NewtonsPerPound}, // B.8 "kip (1 kip = 1000 lbf)"
	{"kgf", DimForce, kilogramForce},

	{"m", DimLength, 1},
	{"mm", DimLength, 1e-3},
	{"cm", DimLength, 1e-2},
	{"km", DimLength, 1e3},
	{"ft", DimLength, foot},
	{"in", DimLength, inch},
	{"yd", DimLength, 3 * foot},    // exact: B.8 "yard"
	{"mi", DimLength, 5280 * foot}, // exact: B.8 "mile", 1609.344 m
	{"nmi", DimLength, 1852},       // exact: B.8 "mile, nautical"

	{"N·m", DimMoment, 1},
	{"N·mm", DimMoment, 1e-3},
	{"mN·m", DimMoment, 1e-3},
	{"kN·m", DimMoment, 1e3},
	{"MN·m", DimMoment, 1e6},
	{"lb·ft", DimMoment, NewtonsPerPound * foot}, // B.8 "pound-force foot"
	{"lb·in", DimMoment, NewtonsPerPound * inch}, // B.8 "pound-force inch"
	{"kip·ft", DimMoment, 1000 * NewtonsPerPound * foot},
	{"kip·in", DimMoment, 1000 * NewtonsPerPound * inch},

	{"kg", DimMass, 1},
	{"g", DimMass, 1e-3},
	{"t", DimMass, 1e3}, // SP 811 table 6: tonne (metric ton)
	{"lbm", DimMass, poundMass},
	{"slug", DimMass, NewtonsPerPound / foot}, // lbf·s²/ft; B.8 "slug"

	{"N/m", DimStiffness, 1},
	{"N/mm", DimStiffness, 1e3},
	{"N/cm", DimStiffness, 1e2},
	{"kN/m", DimStiffness, 1e3},
	{"lb/ft", DimStiffness, NewtonsPerPound / foot}, // B.8 "pound-force per foot"
	{"lb/in", DimStiffness, NewtonsPerPound / inch}, // B.8 "pound-force per inch"
	{"kip/ft", DimStiffness, 1000 * NewtonsPerPound / foot},
	{"kip/in", DimStiffness, 1000 * NewtonsPerPound / inch},

	{"m/s²", DimAcceleration, 1},
	{"ft/s²", DimAcceleration, foot}, // B.8 "foot per second squared"
}
