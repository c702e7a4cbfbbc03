package entry

import "closingside/statics"

// arcPart is a sixtieth of a degree or of that.
type arcPart struct {
	sign     rune
	words    []string
	factor   float64 // degrees
	decimals int     // of a degree, that are as fine
}

var arcParts = [...]arcPart{
	{prime, []string{"min", "mins", "minute", "minutes", "arcmin"}, 1. / 60, 1},
	{seconds, []string{"sec", "secs", "second", "seconds", "arcsec"}, 1. / 3600, 3},
}

var degreeWords = []string{"deg", "degs", "degree", "degrees"}

// measure emits the number n that begins at from. Degrees with minutes behind
// them become one number and the unit degree.
//
//	measure = number [ degree number minute [ number second ] ]
func (x *lexer) measure(n number, from int) {
	end := x.pos
	x.spaces()
	if !x.mark('°', degreeWords) {
		x.pos = end
		x.emit(from, token{kind: tNumber, num: n})
		return
	}
	sum, read := n, false
	for _, part := range arcParts {
		back := x.pos
		x.spaces()
		at := x.pos
		if !isDigit(x.at(0)) {
			x.pos = back
			break
		}
		m := x.number()
		whole := x.spanFrom(at)
		x.spaces()
		if !x.mark(part.sign, part.words) {
			if !read && m.value < 60 && m.decimals == 0 && !x.oneOf(ordinals) { // 30° 3rd quadrant
				whole.fail("minutes", "typed", string(x.source[whole.from:whole.to]))
			}
			x.pos = back
			break
		}
		if n.decimals > 0 || n.half == 0 {
			x.spanFrom(from).fail("minutes-decimals")
		}
		if m.value >= 60 {
			whole.fail("minutes-range", "typed", string(x.source[whole.from:whole.to]))
		}
		n, read = m, true
		sum = number{value: sum.value + m.value*part.factor, half: m.half * part.factor, decimals: part.decimals + m.decimals, digits: sum.digits + 2 + m.decimals}
	}
	if !read {
		x.pos = end
		x.emit(from, token{kind: tNumber, num: n})
		return
	}
	degree, _ := statics.UnitBySymbol("deg")
	x.emit(from, token{kind: tNumber, num: sum})
	x.emit(from, token{kind: tUnit, unit: degree})
}

// mark takes the sign, or one of the words, if it stands here. Two single
// primes are a double one.
func (x *lexer) mark(sign rune, words []string) bool {
	if x.at(0) == prime && x.at(1) == prime {
		if sign == seconds {
			x.pos += 2
		}
		return sign == seconds
	}
	if x.at(0) == sign {
		x.pos++
		return true
	}
	return x.oneOf(words)
}

// oneOf takes the word at hand if it is one of words.
func (x *lexer) oneOf(words []string) bool {
	run := x.letters(x.pos)
	for _, w := range words {
		if foldWord(string(x.runes[x.pos:run])) == w {
			x.pos = run
			return true
		}
	}
	return false
}

// letters is the end of the run of letters that begins at i.
func (x *lexer) letters(i int) int {
	for i < len(x.runes) && isLetter(x.runes[i]) {
		i++
	}
	return i
}
