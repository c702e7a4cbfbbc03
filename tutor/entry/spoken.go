package entry

import (
	"slices"
	"strings"
	"unicode/utf8"

	"closingside/statics"
)

// What surrounds a value without being part of it, and signs that are said in
// words.

// equalsWords say what = or ≈ says.
var equalsWords = []string{"is", "equals", "about", "approx", "approximately", "around", "roughly", "circa", "ca"}

// signWords are signs as they are said.
var signWords = map[string]rune{"plus": '+', "minus": '-', "neg": '-', "negative": '-', "times": '*'}

// trim takes off what a sentence leaves around an entry: final periods, commas
// and the like, a pair of quotation marks, to how many digits it is rounded.
func (x *lexer) trim() {
	end := x.withoutMarks(x.withoutDigits(x.withoutMarks(len(x.runes))))
	from := 0
	for from < end && isSpace(x.runes[from]) {
		from++
	}
	if from < end && (x.runes[from] == seconds || x.runes[from] == prime) {
		if end > from+1 && x.runes[end-1] == x.runes[from] {
			end--
		}
		from++
	}
	x.runes, x.pos = x.runes[:end], from
	x.senses()
}

// withoutMarks is the end of what stands before end, spaces and final marks apart.
func (x *lexer) withoutMarks(end int) int {
	for end > 0 && (isSpace(x.runes[end-1]) || strings.ContainsRune(".…,;!?", x.runes[end-1])) {
		end--
	}
	return end
}

// digitWords say of what it is so many that a value is rounded to.
var digitWords = []string{"sf", "sigfig", "sigfigs", "significantfigures", "significantdigits", "digits", "dp", "decimalplace", "decimalplaces", "decimals"}

// withoutDigits is the end of what stands before end, apart from to how many digits
// it is said to be rounded: 683 N (3 sf), 682.6 N to 1 d.p.
func (x *lexer) withoutDigits(end int) int {
	from, word := end, ""
	for ; from > 0 && !isDigit(x.runes[from-1]); from-- {
		switch r := x.runes[from-1]; {
		case isLetter(r):
			word = string(r) + word
		case !isSpace(r) && r != '.' && r != ')':
			return end
		}
	}
	for from > 0 && isDigit(x.runes[from-1]) {
		from--
	}
	if from == 0 || !isSpace(x.runes[from-1]) && x.runes[from-1] != '(' || !slices.Contains(digitWords, foldWord(word)) {
		return end
	}
	from = x.withoutMarks(from)
	if from > 2 && foldWord(string(x.runes[from-2:from])) == "to" {
		from = x.withoutMarks(from - 2)
	}
	if from > 0 && x.runes[from-1] == '(' {
		from--
	}
	return from
}

// senses passes by the arrows and signs that tell which way a sum counts as
// positive: +↑ ΣFy = 0. An arrow to the right reads as =.
func (x *lexer) senses() {
	i, arrow := x.pos, false
	for i < len(x.runes) && (isSpace(x.runes[i]) || strings.ContainsRune("+()=↑↓←", x.runes[i])) {
		arrow = arrow || strings.ContainsRune("=↑↓←", x.runes[i])
		i++
	}
	if arrow && i < len(x.runes) && x.runes[i] == 'Σ' {
		x.pos = i
	}
}

// summed takes the name of a sum, its sign written as a word or apart: Σ Fx,
// sum Fx, SumFx.
func (x *lexer) summed() bool {
	from := x.pos
	word := foldWord(string(x.runes[from:x.letters(from)]))
	for _, sign := range []string{"σ", "sum", "sigma"} {
		if !strings.HasPrefix(word, sign) {
			continue
		}
		i := from + utf8.RuneCountInString(sign)
		for i < len(x.runes) && isSpace(x.runes[i]) {
			i++
		}
		end := x.run(i)
		if t, ok := x.words.find(Spelling("Σ" + string(x.runes[i:end]))); ok && end > i && t.kind == tName {
			x.take(from, end-from, t)
			return true
		}
	}
	return false
}

// sign takes a sign that stands for another: an arrow or a colon for =, a mark
// of an angle, @ between two values.
func (x *lexer) sign(from int, r rune) bool {
	last := token{kind: tEnd}
	if n := len(x.tokens); n > 0 {
		last = x.tokens[n-1]
	}
	switch {
	case (r == '-' || r == '=') && x.at(1) == '>', r == ':' && x.at(1) == '=':
		x.take(from, 2, token{kind: tOp, op: '='})
	case r == ':' && len(x.tokens) == 1 && (last.kind == tName || last.kind == tUnknown), strings.ContainsRune(":;,", r) && last.kind == tNumber && last.num.value == 0 && len(x.tokens) == 3 && x.tokens[1].is('='): // ΣFx = 0: …
		x.take(from, 1, token{kind: tOp, op: '='})
	case r == '∠' && (last.kind == tEnd || last.is('=')):
		x.take(from, 1, token{kind: tOp, op: '='})
	case r == '+' && x.at(1) == '/' && x.at(2) == '-': // ±
		x.take(from, 3, token{kind: tValueEnd})
	case r == '∠', r == '@':
		x.take(from, 1, token{kind: tValueEnd})
	case r == '.' && from > 0 && isLetter(x.runes[from-1]): // lb. and ca.
		x.pos++
	default:
		return false
	}
	return true
}

// spoken takes a word that says = or a small o that stands for °, unless the
// problem has a name like it.
func (x *lexer) spoken() bool {
	from := x.pos
	end := x.letters(from)
	word := foldWord(string(x.runes[from:end]))
	if word == "atan" && end+1 < len(x.runes) && x.runes[end] == '2' && x.runes[end+1] == '(' {
		span{from, end + 1}.fail("atan2")
	}
	if _, taken := x.words.find(word); taken {
		return false
	}
	switch {
	case slices.Contains(equalsWords, word) && !x.previous(tOpen), word == "angle" && (len(x.tokens) == 0 || x.previous(tOp)):
		x.take(from, len(word), token{kind: tOp, op: '='})
	case signWords[word] != 0:
		x.take(from, len(word), token{kind: tOp, op: signWords[word]})
	case word == "o" && x.previous(tNumber), word == "o" && x.raising():
		x.degree(from, 1)
	default:
		return false
	}
	return true
}

// raising reports whether a ^ stands right before.
func (x *lexer) raising() bool { return x.previous(tOp) && x.tokens[len(x.tokens)-1].is('^') }

// degree takes n runes as a degree sign, a ^ before it too.
func (x *lexer) degree(from, n int) {
	if x.raising() {
		x.tokens = x.tokens[:len(x.tokens)-1]
	}
	u, _ := statics.UnitBySymbol("deg")
	x.take(from, n, token{kind: tUnit, unit: u})
}
