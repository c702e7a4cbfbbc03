package kinds

import (
	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// pull is a force of a lesson: its names there, and what is true of it. Force
// number 1 has the magnitude F1, the direction theta1 and the components F1x
// and F1y.
type pull struct {
	name    string // of the magnitude; the components add x and y
	dir     string // of the direction
	symbol  expr.Symbol
	heading statics.Heading // as the statement gives it
	size    float64         // in the lesson's unit
	at      float64         // the direction as given, degrees
	vec     r2.Vec
	back    bool // a component against its axis: in a triangle it is a side of −size, 180° round
}

// forceFields are the fields of a force given in full, with examples of what
// stands in them.
func forceFields(magnitude, direction string) []lesson.FieldSpec {
	return []lesson.FieldSpec{
		{Key: "name", Is: lesson.NameField, Example: "P"},
		{Key: "magnitude", Is: lesson.ForceField, Example: magnitude},
		{Key: "direction", Is: lesson.DirectionField, Example: direction},
	}
}

// newPull is a force of a statement; n is its number.
func newPull(it lesson.Item, n string, unit statics.Unit) pull {
	m, d := it.Field("magnitude"), it.Field("direction")
	p := pull{name: "F" + n, dir: "theta" + n, symbol: it.Symbol(), heading: d.Heading, at: d.Value}
	p.size, _ = m.Unit.Convert(m.Value, unit) // it was read as a force
	p.vec = statics.Polar(p.size, d.Heading.Angle())
	return p
}

// force and direction are the symbols of a pull in formulas. A component against
// its axis is taken as the side of a triangle that it makes.
func (p pull) force() expr.Node {
	if p.back {
		return expr.Neg{X: expr.S(p.name)}
	}
	return expr.S(p.name)
}

func (p pull) direction() expr.Node {
	if p.back {
		return expr.Add(expr.S(p.dir), expr.Deg(180))
	}
	return expr.S(p.dir)
}

// points is the direction of a pull as a side of a triangle, in degrees.
func (p pull) points() float64 {
	if p.back {
		return p.at + 180
	}
	return p.at
}

// magnitude and bearing are a pull's quantities; a kind says which are given.
func (p pull) magnitude() lesson.Quantity {
	return lesson.Quantity{Name: p.name, Symbol: p.symbol, Dim: statics.DimForce, True: p.size}
}

func (p pull) bearing() lesson.Quantity {
	return lesson.Quantity{Name: p.dir, Symbol: directionSymbol(p.symbol), Dim: statics.DimAngle, Turns: true, True: p.at}
}

// given are a pull's magnitude and direction as givens; twin is the other
// force's number, "" where there is none.
func (p pull) given(twin string) []lesson.Quantity {
	m, d := p.magnitude(), p.bearing()
	m.Given, d.Given, d.Heading = true, true, p.heading
	if twin != "" {
		m.Twin, d.Twin = "F"+twin, "theta"+twin
	}
	return []lesson.Quantity{m, d}
}

// directionSymbol is θ with the force's own index, or its name as the index.
func directionSymbol(force expr.Symbol) expr.Symbol {
	sub := force.Sub
	if force.Letter != "F" || sub == "" {
		sub = force.Letter + force.Sub
	}
	return expr.Symbol{Letter: "θ", Sub: sub, Spoken: "theta " + sub}
}

// aim takes a pull's direction from its vector, where no statement gives it.
func (p *pull) aim() {
	dir, _ := statics.Direction(p.vec)
	p.at, p.heading = lesson.Degrees(dir), statics.Heading{}
}

// ForceSource is the Source of a named force.
func ForceSource(name, magnitude, direction string) lesson.Source {
	return lesson.Branch("", lesson.Leaf("name", name), lesson.Leaf("magnitude", magnitude), lesson.Leaf("direction", direction))
}
