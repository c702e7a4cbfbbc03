package entry

import (
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
)

// trailingUnit finds the unit at the end that is meant for the whole entry:
// (0.3 + 0.2) kN, and 0.3 + 0.2 kN as well, but not F1 + 0.2 kN, nor cos 87°
// where a force is asked. The rest of the tokens comes without it.
func trailingUnit(tokens []token, sc *Scope) (*token, []token) {
	n := len(tokens) - 2 // the last before the end
	if n < 1 || tokens[n].kind != tUnit {
		return nil, tokens
	}
	unit := tokens[n]
	if measuresLiteral(unit, tokens[:n]) {
		return nil, tokens
	}
	// A unit that can't be meant here belongs to the last number if it may.
	wrong := unit.unit.Dim != sc.Dim
	free := wrong && tokens[n-1].kind == tClose && !sc.compound()
	for _, t := range tokens[:n] {
		switch t.kind {
		case tName, tFunc:
			if !free && (wrong || t.kind == tName) {
				return nil, tokens
			}
		case tUnit:
			if wrong || t.unit.Dim == unit.unit.Dim {
				return nil, tokens
			}
		}
	}
	switch tokens[n-1].kind {
	case tNumber, tClose, tSuper, tPi:
		rest := append(slices.Clone(tokens[:n]), tokens[n+1])
		return &unit, rest
	}
	return nil, tokens
}

// compound reports whether what is asked may be a product or a quotient of
// things with different units.
func (sc *Scope) compound() bool {
	return sc.Dim != statics.DimForce && sc.Dim != statics.DimAngle && sc.Dim != statics.DimRatio
}

// measuresLiteral reports whether a unit of angle belongs to the number right
// before it and no more: degrees may always (they are what angles are worked
// in), others but where they stand behind a product, as in π/3 rad.
func measuresLiteral(unit token, before []token) bool {
	if unit.unit.Dim != statics.DimAngle {
		return false
	}
	sum := slices.ContainsFunc(before[1:], func(t token) bool { return t.is('+') || t.is('-') })
	return sum || angleUnit(unit.unit) == expr.UnitDeg || lone(before)
}

// lone reports whether the tokens are one number and its signs.
func lone(tokens []token) bool {
	for i, t := range tokens {
		if last := i == len(tokens)-1; last != (t.kind == tNumber) || !last && !t.is('-') && !t.is('+') {
			return false
		}
	}
	return len(tokens) > 0
}

// factor is what turns the tree's value into Scope.Unit.
func (p *parser) factor(unit *token, written bool) float64 {
	sc := p.scope
	switch {
	case sc.Dim == statics.DimAngle || sc.Unit.Factor == 0:
		return 1
	case unit != nil:
		return unit.unit.Factor / sc.Unit.Factor
	case (written || len(p.names) > 0) && sc.Dim == sc.Force.Dim && sc.Force.Factor > 0:
		return sc.Force.Factor / sc.Unit.Factor
	}
	return 1
}

// base is what one of u is in the unit that numbers of its dimension are
// worked in here: degrees for angles, the problem's units for the rest.
func (sc *Scope) base(u statics.Unit) float64 {
	for _, to := range append([]statics.Unit{sc.Force, sc.Unit}, sc.Others...) {
		if to.Dim == u.Dim && to.Factor > 0 && u.Dim != statics.DimAngle {
			return u.Factor / to.Factor
		}
	}
	return u.Factor
}

// groupUnit takes out the unit at the end of the bracket that was just opened,
// if it is meant for all that is in it: (0.3 + 0.2 kN), cos(π/3 rad).
func (p *parser) groupUnit() *token {
	last := p.pos
	for open := 1; open > 0; last++ {
		switch p.tokens[last].kind {
		case tOpen:
			open++
		case tClose:
			open--
		case tEnd:
			return nil
		}
	}
	last -= 2 // before the closing bracket
	if last <= p.pos || p.tokens[last].kind != tUnit {
		return nil
	}
	if before := p.tokens[p.pos:last]; lone(before) || measuresLiteral(p.tokens[last], before) {
		return nil
	}
	for _, t := range p.tokens[p.pos:last] {
		if t.kind == tUnit || t.kind == tName || t.kind == tFunc {
			return nil
		}
	}
	unit := p.tokens[last]
	p.tokens = slices.Delete(slices.Clone(p.tokens), last, last+1)
	return &unit
}

// measured puts the unit written behind n to it.
func (p *parser) measured(n expr.Node, unit token) expr.Node {
	behind := p.tokens[p.pos-2]
	if behind.kind == tNumber {
		return p.literal(unit)
	}
	factor := p.scope.base(unit.unit)
	switch {
	case behind.kind == tName && (factor != 1 || !p.scope.may(behind.name, unit.unit.Dim)):
		unit.fail("unit-names", "name", behind.typed, "unit", unit.typed)
	case behind.kind != tClose && behind.kind != tName && behind.kind != tPi:
		unit.fail("unit-place", "unit", unit.typed)
	}
	return p.scaled(n, unit)
}

// may reports whether the name may stand for something of dimension d.
func (sc *Scope) may(name string, d statics.Dimension) bool {
	if sc.Dims == nil {
		return true
	}
	of, known := sc.Dims(name)
	return !known || of == d
}

// scaled is n, which is no literal, in units of the kind written behind it.
func (p *parser) scaled(n expr.Node, unit token) expr.Node {
	factor := p.scope.base(unit.unit)
	switch angle := unit.unit.Dim == statics.DimAngle; {
	case factor == 1, angle && isAngle(n):
		return n
	case angle && angleUnit(unit.unit) != expr.UnitDeg:
		p.leaves = append(p.leaves, leaf{span: unit.span, num: number{value: 1}, scale: factor, unit: unit.unit})
		return expr.Mul(n, expr.Ang{Value: 1, Unit: angleUnit(unit.unit)})
	}
	p.leaves = append(p.leaves, leaf{span: unit.span, num: number{value: factor}, scale: 1})
	return expr.Mul(n, expr.Num{Value: factor})
}

// literal puts a unit to the number before it: an angle keeps the unit it was
// written in, anything else is converted to the unit it is worked in.
func (p *parser) literal(unit token) expr.Node {
	l := &p.leaves[len(p.leaves)-1]
	if l.unit.Dim != statics.DimRatio {
		unit.fail("unit-place", "unit", unit.typed)
	}
	l.unit, l.span = unit.unit, l.through(unit.span)
	l.scale = p.scope.base(unit.unit)
	if unit.unit.Dim != statics.DimAngle {
		return expr.Num{Value: l.num.value * l.scale}
	}
	if u := angleUnit(unit.unit); u != expr.UnitDeg {
		return expr.Ang{Value: l.num.value, Unit: u}
	}
	return expr.Ang{Value: l.num.value * l.scale, Unit: expr.UnitDeg}
}

func angleUnit(u statics.Unit) expr.AngleUnit {
	switch u.Symbol {
	case "rad":
		return expr.UnitRad
	case "gon":
		return expr.UnitGrad
	}
	return expr.UnitDeg
}

// isAngle reports whether n is an angle whatever its names stand for.
func isAngle(n expr.Node) bool {
	return expr.IsAngle(n, func(string) bool { return false })
}
