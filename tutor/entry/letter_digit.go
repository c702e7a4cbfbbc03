package entry

import (
	"strings"

	"closingside/statics"
	"closingside/tutor/text"
)

// lookalikes are the letters that are typed, or read off a photo, for a digit.
var lookalikes = map[rune]rune{'O': '0', 'o': '0', 'l': '1', 'I': '1'}

// letterDigit fails where the number that begins at hand has a letter in place of
// a digit: 68O N, 7l4, O.5. A small o behind a number is a degree sign badly
// drawn, unless a unit that is none of angle follows it.
func (x *lexer) letterDigit() {
	from := x.pos
	end, first, digit := from, -1, false
	for ; end < len(x.runes); end++ {
		r := x.runes[end]
		if r == 'l' {
			if _, unit := x.unitFrom(end); unit { // 340lb
				break
			}
		}
		if lookalikes[r] != 0 && first < 0 {
			first = end
		}
		digit = digit || isDigit(r)
		if lookalikes[r] == 0 && !isDigit(r) && r != '.' && r != ',' {
			break
		}
	}
	if first < 0 || !digit || x.meant(from, first, end) {
		return
	}
	letter := x.runes[first]
	unit, behind := x.unitFrom(end)
	switch last := first == end-1; {
	case !behind && end < len(x.runes) && isLetter(x.runes[end]):
		return // 3lines
	case last && letter == 'o' && !(behind && unit.Dim != statics.DimAngle):
		return // 88.2o
	case last && letter == 'O' && !behind:
		span{first, end}.fail("letter-zero", "digits", x.asDigits(from, end), "degrees", x.asDigits(from, first)+"°")
	}
	span{first, first + 1}.fail("letter-digit", "letter", text.Say("letter."+string(letter)), "digits", x.asDigits(from, end))
}

// meant reports whether the letters between from and end are words that the problem or
// the reader has: with a force O, 2O is twice that force.
func (x *lexer) meant(from, first, end int) bool {
	if first > from { // a word begins behind the digits
		from = first
	}
	_, ok := x.words.find(string(x.runes[from:x.run(from)]))
	return ok || end <= from
}

// unitFrom is the unit that stands at i, behind spaces or none.
func (x *lexer) unitFrom(i int) (statics.Unit, bool) {
	for i < len(x.runes) && isSpace(x.runes[i]) {
		i++
	}
	end := x.letters(i)
	if i < len(x.runes) && x.runes[i] == '°' {
		end = i + 1
	}
	if end == i {
		return statics.Unit{}, false
	}
	return statics.UnitBySymbol(string(x.runes[i:end]))
}

// asDigits is what was typed between two places, with digits for the letters like them.
func (x *lexer) asDigits(from, end int) string {
	return strings.Map(func(r rune) rune {
		if d := lookalikes[r]; d != 0 {
			return d
		}
		return r
	}, string(x.source[from:end]))
}
