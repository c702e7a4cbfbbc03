package entry

import (
	"strings"
)

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
	if x.at(0) == '$' { // a formula stands between two of them
		x.pos++
		return true
	}
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

// fracDigit takes one digit where a part of \frac stands without braces: \frac45 is 4/5.
func (x *lexer) fracDigit(from int) bool {
	n := len(x.tokens)
	if !isDigit(x.at(0)) || !x.previous(tFrac) && !(n > 1 && x.previous(tNumber) && x.tokens[n-2].kind == tFrac) {
		return false
	}
	all := x.runes
	x.runes = all[:from+1]
	digit := x.number()
	x.runes = all
	x.emit(from, token{kind: tNumber, num: digit})
	return true
}
