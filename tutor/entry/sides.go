package entry

import (
	"slices"

	"closingside/statics"
)

// sides cuts the tokens at an equals sign. One that only says what is asked
// ("R = …", "≈ …", "… = R") is left out; of a chain "R = … = 682.6", or of a
// line of working "118 − 25 = 93", the last side is the entry.
//
//	entry = [ [ asked ] "=" ] { side "=" } side [ "=" asked ] | side "=" side
func sides(tokens []token, sc *Scope) (left, right []token, equation bool) {
	all := said(cut(tokens))
	isAsked := func(side []token) bool {
		for len(side) > 3 && side[0].is('|') && side[len(side)-2].is('|') { // |R|
			side = append(slices.Clone(side[1:len(side)-2]), side[len(side)-1])
		}
		return len(side) == 2 && side[0].kind == tName && side[0].name == sc.Asked
	}
	n := len(all)
	switch {
	case n == 1 && len(tokens) > len(all[0]) && isAsked(all[0]): // "R ="
		return tokens[len(tokens)-1:], nil, false
	case n == 1:
		return all[0], nil, false
	case isAsked(all[0]):
		return all[n-1], nil, false
	case squared(all[0]) && all[0][0].name == sc.Asked:
		return root(all[n-1], sc), nil, false
	case n == 2 && len(all[1]) > 1 && isAsked(all[1]):
		return all[0], nil, false
	case len(all[0]) == 2 && all[0][0].kind == tName && !slices.Contains(sc.Unknowns, all[0][0].name):
		all[0][0].fail("other-quantity", "name", all[0][0].typed)
	case n == 2 && sc.asksIn(all):
		all[0][0].through(all[1][max(0, len(all[1])-2)].span).fail("value-asked")
	case sc.worked(all):
		return all[n-1], nil, false
	case n > 2:
		last := all[n-2]
		last[len(last)-1].fail("equals")
	}
	return all[0], all[1], true
}

// squared reports whether a side is the square of a name.
func squared(side []token) bool {
	n := len(side)
	return n > 2 && side[0].kind == tName && (n == 3 && side[1].kind == tSuper && side[1].num.value == 2 ||
		n == 4 && side[1].is('^') && side[2].kind == tNumber && side[2].num.value == 2)
}

// root is the square root of a side; a unit behind it, that of the square or
// not, is left out.
func root(side []token, sc *Scope) []token {
	n := len(side) - 1
	end := side[n]
	if n > 1 && side[n-1].kind == tSuper && side[n-2].kind == tUnit {
		n -= 2
	}
	unit, rest := trailingUnit(append(slices.Clone(side[:n]), end), sc)
	if unit != nil && unit.unit != sc.Unit {
		unit.fail("unit-place", "unit", unit.typed)
	}
	side, n = rest, len(rest)-1
	at := side[0].span
	root := []token{{kind: tFunc, span: at, fn: functions["sqrt"]}, {kind: tOpen, span: at}}
	return append(append(root, side[:n]...), token{kind: tClose, span: end.span}, end)
}

// asksIn reports whether something is worked out of what is asked on one of the
// sides, which make an equation that is not solved yet: R/sin 87 = 610/sin 63.2,
// but not "the resultant R (N) = 682.6".
func (sc *Scope) asksIn(sides [][]token) bool {
	asked := func(t token) bool { return t.kind == tName && t.name == sc.Asked }
	works := func(t token) bool { return t.kind == tOp || t.kind == tNumber || t.kind == tFunc || t.kind == tSuper }
	return slices.ContainsFunc(sides, func(side []token) bool {
		return slices.ContainsFunc(side, asked) && slices.ContainsFunc(side, works)
	})
}

// worked reports whether the sides are a line of working that comes to the
// last: no unknown stands in them, or in the last at least where an angle is
// asked.
func (sc *Scope) worked(sides [][]token) bool {
	unknown := func(side []token) bool {
		return slices.ContainsFunc(side, func(t token) bool { return t.kind == tName && slices.Contains(sc.Unknowns, t.name) })
	}
	return !slices.ContainsFunc(sides, unknown) || sc.Dim == statics.DimAngle && !unknown(sides[len(sides)-1])
}

// said leaves out the sides on which nothing stands.
func said(all [][]token) [][]token {
	some := slices.DeleteFunc(slices.Clone(all), func(side []token) bool { return len(side) == 1 })
	if len(some) == 0 {
		return all[:1]
	}
	return some
}

// cut cuts the tokens at every equals sign; each side has an end in the place of
// the sign behind it.
func cut(tokens []token) [][]token {
	var all [][]token
	for from, i := 0, 0; i < len(tokens); i++ {
		if t := &tokens[i]; t.is('=') || t.kind == tEnd {
			*t = token{kind: tEnd, span: t.span}
			all, from = append(all, tokens[from:i+1:i+1]), i+1
		}
	}
	return all
}
