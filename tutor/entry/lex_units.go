package entry

import (
	"strings"

	"closingside/statics"
)

// squares are the ways a raised 2 is typed.
var squares = [...]string{"²", "^2", "2"}

// compoundUnit takes a unit made of two, if one stands here: N·m, lb-ft, kN/m,
// m/s².
func (x *lexer) compoundUnit() bool {
	from := x.pos
	i := x.letters(from)
	for i < len(x.runes) && isSpace(x.runes[i]) {
		i++
	}
	if i >= len(x.runes) || !strings.ContainsRune("*/-.", x.runes[i]) && !isLetter(x.runes[i]) {
		return false
	}
	join := "·"
	if !isLetter(x.runes[i]) {
		if x.runes[i] == '/' {
			join = "/"
		}
		i++
	}
	for i < len(x.runes) && isSpace(x.runes[i]) {
		i++
	}
	end := x.letters(i)
	if end == i {
		return false
	}
	unit := string(x.runes[from:x.letters(from)]) + join + string(x.runes[i:end])
	for _, square := range squares { // m/s²
		if strings.HasPrefix(string(x.runes[end:]), square) {
			unit, end = unit+"²", end+len([]rune(square))
			break
		}
	}
	u, ok := statics.UnitBySymbol(unit)
	if !ok || end < len(x.runes) && isDigit(x.runes[end]) {
		return false
	}
	x.pos = end
	x.emit(from, token{kind: tUnit, unit: u})
	return true
}

// newton takes kg·m/s², which is N by definition (SP 811 table 3).
func (x *lexer) newton() bool {
	rest := x.runes[x.pos:]
	for _, spelling := range []string{"kg*m/s", "kg m/s", "kgm/s"} {
		n := len(spelling)
		if len(rest) <= n || string(rest[:n]) != spelling {
			continue
		}
		for _, square := range squares {
			if end := n + len([]rune(square)); len(rest) >= end && string(rest[n:end]) == square && (len(rest) == end || !isDigit(rest[end]) && !isLetter(rest[end])) {
				u, _ := statics.UnitBySymbol("N")
				x.take(x.pos, end, token{kind: tUnit, unit: u})
				return true
			}
		}
	}
	return false
}

// bareUnits takes the brackets off a unit behind a value: 682.6 (N).
func bareUnits(tokens []token) []token {
	out := tokens[:0]
	for i := 0; i < len(tokens); i++ {
		if i > 0 && i+2 < len(tokens) && tokens[i].kind == tOpen && tokens[i+1].kind == tUnit && tokens[i+2].kind == tClose {
			switch tokens[i-1].kind {
			case tNumber, tClose, tSuper, tPi:
				unit := tokens[i+1]
				unit.span = tokens[i].through(tokens[i+2].span)
				out = append(out, unit)
				i += 2
				continue
			}
		}
		out = append(out, tokens[i])
	}
	return out
}
