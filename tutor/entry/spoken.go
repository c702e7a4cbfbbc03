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
// and the like, a pair of quotation marks.
func (x *lexer) trim() {
	end := len(x.runes)
	for end > 0 && (isSpace(x.runes[end-1]) || strings.ContainsRune(".…,;!?", x.runes[end-1])) {
		end--
	}
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
	case r == ':' && len(x.tokens) == 1 && (last.kind == tName || last.kind == tUnknown), r == ':' && last.kind == tNumber && last.num.value == 0 && len(x.tokens) == 3: // ΣFx = 0: …
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
