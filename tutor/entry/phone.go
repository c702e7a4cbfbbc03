package entry

import (
	"slices"
	"strings"
	"unicode/utf8"

	"closingside/statics"
)

// What surrounds a value without being part of it, and what is pasted from a
// formula in TeX.

// equalsWords say what = says, sayAbout what ≈ says.
var equalsWords = []string{"is", "equals", "about", "approx", "approximately", "around", "roughly", "circa", "ca"}

// signWords are signs as they are said.
var signWords = map[string]rune{"plus": '+', "minus": '-', "neg": '-', "negative": '-', "times": '*'}

// trim takes off what a sentence leaves around an entry: final periods, commas
// and the like, a pair of quotation marks.
func (x *lexer) trim() {
	end := len(x.runes)
	for end > 0 && (isSpace(x.runes[end-1]) || strings.ContainsRune(".…,;!", x.runes[end-1])) {
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

// ranged fails for a range, and for a value with how far it may be off:
// 682-683, 682.6 +- 0.5. As a difference or a sum neither makes sense.
func ranged(tokens []token) {
	const narrow, little = 1.02, 0.05
	if len(tokens) < 4 { // two values and a sign, and the end
		return
	}
	all := slices.DeleteFunc(slices.Clone(tokens[:len(tokens)-1]), func(t token) bool { return t.kind == tUnit })
	n := len(all)
	if n < 3 || n > 4 || all[0].kind != tNumber || all[n-1].kind != tNumber {
		return
	}
	first, last := all[0], all[n-1]
	switch off := all[n-2]; {
	case n == 3 && off.is('-') && first.num.value < last.num.value && last.num.value <= narrow*first.num.value:
		first.through(last.span).fail("range", "from", first.typed, "to", last.typed)
	case n == 4 && off.is('-') && all[1].is('+') && all[1].to == off.from && last.num.value <= little*first.num.value:
		all[1].through(off.span).fail("two-values")
	}
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
	case r == ':' && len(x.tokens) == 1 && last.kind == tName, r == ':' && last.kind == tNumber && last.num.value == 0 && len(x.tokens) == 3: // ΣFx = 0: …
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

// Commands of TeX that a formula may be pasted with, by what they stand for;
// all others are words like any.
var commands = map[string]string{
	"cdot": "*", "times": "*", "ast": "*", "div": "/", "approx": "=", "simeq": "=",
	"circ": "°", "degree": "°", "frac": "frac", "dfrac": "frac", "tfrac": "frac",
	"left": "", "right": "", "mathrm": "", "text": "", "displaystyle": "", "quad": "", "bigl": "", "bigr": "",
}

// command takes a command of TeX.
func (x *lexer) command() bool {
	from := x.pos
	if from == 0 || x.source[from-1] != '\\' {
		return false
	}
	if strings.ContainsRune(",;:!", x.at(0)) { // a thin space
		x.pos++
		return true
	}
	n := x.letters(from) - from
	is, ok := commands[string(x.runes[from:from+n])]
	switch {
	case !ok:
		return false
	case is == "":
		x.pos += n
	case is == "frac":
		x.take(from, n, token{kind: tFrac})
	case is == "°":
		if n := len(x.tokens); n > 1 && x.tokens[n-1].kind == tOpen && x.tokens[n-2].is('^') { // ^{\circ}
			x.tokens = x.tokens[:n-1]
			x.degree(from, x.letters(from)-from)
			if x.spaces(); x.at(0) == ')' {
				x.pos++
			}
			return true
		}
		x.degree(from, n)
	default:
		x.take(from, n, token{kind: tOp, op: rune(is[0])})
	}
	return true
}

// braced takes a name with its index in braces, as TeX writes it: F_{1}.
func (x *lexer) braced() bool {
	from := x.pos
	open := x.letters(from)
	if open+1 >= len(x.runes) || x.runes[open] != '_' || x.source[open+1] != '{' {
		return false
	}
	end := x.run(open + 2)
	if end >= len(x.runes) || x.source[end] != '}' {
		return false
	}
	t, ok := x.words.find(string(x.runes[from:open]) + string(x.runes[open+2:end]))
	if ok {
		x.take(from, end+1-from, t)
	}
	return ok
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

// newton takes kg·m/s², which is N by definition (SP 811 table 3).
func (x *lexer) newton() bool {
	rest := x.runes[x.pos:]
	for _, spelling := range []string{"kg*m/s", "kg m/s", "kgm/s"} {
		n := len(spelling)
		if len(rest) <= n || string(rest[:n]) != spelling {
			continue
		}
		for _, square := range []string{"²", "^2", "2"} {
			if end := n + len([]rune(square)); len(rest) >= end && string(rest[n:end]) == square && (len(rest) == end || !isDigit(rest[end]) && !isLetter(rest[end])) {
				u, _ := statics.UnitBySymbol("N")
				x.take(x.pos, end, token{kind: tUnit, unit: u})
				return true
			}
		}
	}
	return false
}

// doubtful fails for a number that copying or a habit of writing has made into
// a product: 682·6 with the point raised, 6.826×102 with its power brought down.
func doubtful(tokens []token, source []rune) {
	n := len(tokens) - 1
	for n > 3 && tokens[n-1].kind == tUnit {
		n--
	}
	if n < 3 || tokens[0].kind != tNumber || !tokens[1].is('*') || tokens[2].kind != tNumber {
		return
	}
	first, sign, second := tokens[0], tokens[1], tokens[2]
	whole := first.through(second.span)
	digits := second.typed
	switch {
	case n == 3 && strings.ContainsRune("·⋅∙•", source[sign.from]) && first.to == sign.from && sign.to == second.from &&
		first.num.decimals+second.num.decimals == 0 && first.num.half > 0 && second.num.half > 0:
		whole.fail("middle-dot", "typed", string(source[whole.from:whole.to]), "decimal", first.typed+"."+second.typed, "product", first.typed+" × "+second.typed)
	case first.num.value < 1 || first.num.value >= 10 || first.num.decimals == 0:
	case n == 3 && len(digits) == 3 && strings.HasPrefix(digits, "10") && digits != "100":
		whole.fail("power-lost", "typed", string(source[whole.from:whole.to]), "power", "10^"+digits[2:])
	case n == 5 && digits == "10" && tokens[3].is('-') && tokens[4].kind == tNumber && len(tokens[4].typed) == 1:
		whole = first.through(tokens[4].span)
		whole.fail("power-lost", "typed", string(source[whole.from:whole.to]), "power", "10^-"+tokens[4].typed)
	}
}
