package entry

import "closingside/statics"

// ReadMeasure reads a quantity in a problem file: "340 N", "25 deg",
// "52°30′". A unit of dim must be there, but for a ratio, and for an angle
// without one, which is in degrees.
func ReadMeasure(s string, dim statics.Dimension) (value float64, unit statics.Unit, err *Error) {
	defer rescue(&err)
	tokens := lex(s, noNames, false)
	whole := tokens[0].through(tokens[max(0, len(tokens)-2)].span)
	sign, rest := 1.0, tokens
	if rest[0].is('-') || rest[0].is('+') {
		if rest[0].op == '-' {
			sign = -1
		}
		rest = rest[1:]
	}
	switch {
	case tokens[0].kind == tEnd:
		whole.fail("empty")
	case rest[0].kind != tNumber:
		rest[0].fail("measure")
	case rest[1].kind == tUnknown:
		rest[1].fail("unknown-unit", "name", rest[1].name)
	case rest[1].kind == tEnd && dim == statics.DimAngle:
		unit, _ = statics.UnitBySymbol("deg")
		return sign * rest[0].num.value, unit, nil
	case rest[1].kind == tEnd && dim == statics.DimRatio:
		unit, _ = statics.UnitBySymbol("")
		return sign * rest[0].num.value, unit, nil
	case rest[1].kind == tEnd:
		whole.fail("measure-unit", "is", dimensionText(dim))
	case rest[1].kind == tNumber || rest[1].kind == tValueEnd:
		rest[1].fail("two-values")
	case rest[1].kind != tUnit || rest[2].kind != tEnd:
		rest[1].fail("measure")
	case rest[1].unit.Dim != dim:
		whole.fail("measure-dimension", "is", dimensionText(rest[1].unit.Dim), "wanted", dimensionText(dim))
	}
	return sign * rest[0].num.value, rest[1].unit, nil
}
