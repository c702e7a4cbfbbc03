package entry

import (
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"closingside/statics"
)

// maxRunes bounds what is read. The cosine law with every number written out
// takes about sixty.
const maxRunes = 400

// usualTokens is room for the tokens of a value with its unit and what may stand
// around it.
const usualTokens = 6

// kind is the kind of a token.
type kind uint8

const (
	tEnd kind = iota
	tNumber
	tUnit
	tName     // a quantity or a given of the problem
	tUnknown  // a word that is none of the reader's and none of the problem's
	tFunc     // sin, √, …
	tInverse  // "arc", "inv": turns the function behind it round
	tPi       //
	tOp       // + − * / ^ = |
	tOpen     // ( [ {
	tClose    // ) ] }
	tSuper    // ² ³ ⁻¹
	tValueEnd // , ; or a word between two values
	tFrac     // \frac, of the two brackets behind it
	nKinds
)

var kindNames = [nKinds]string{"end", "number", "unit", "name", "unknown", "func", "inverse", "pi", "op", "open", "close", "super", "between", "frac"}

func (k kind) String() string { return kindNames[k] }

// token is a piece of an entry. Which fields hold depends on its kind.
type token struct {
	kind kind
	span
	op    rune         // tOp
	num   number       // tNumber; tSuper: its value, never exact to a digit
	unit  statics.Unit // tUnit
	name  string       // tName: canonical
	typed string       // as typed
	fn    function     // tFunc
}

// is reports whether t is the operator op.
func (t token) is(op rune) bool { return t.kind == tOp && t.op == op }

// lexer cuts a text into tokens.
type lexer struct {
	source []rune // as typed
	runes  []rune // folded
	pos    int
	words  *Vocabulary
	angle  bool // is asked: the entry may begin with an inverse key
	tokens []token
}

// lex cuts s into tokens; the last is tEnd. angle tells that one is asked.
func lex(s string, words *Vocabulary, angle bool) []token {
	x := newLexer(s, words)
	x.angle = angle
	for x.next() {
	}
	return bareUnits(x.tokens)
}

// newLexer prepares s.
func newLexer(s string, words *Vocabulary) *lexer {
	if n := utf8.RuneCountInString(s); n > maxRunes {
		span{maxRunes, n}.fail("too-long", "limit", strconv.Itoa(maxRunes))
	}
	x := &lexer{source: []rune(s), runes: foldAll(s), words: words, tokens: make([]token, 0, usualTokens)}
	x.trim()
	return x
}

// at is the rune i ahead, or 0 beyond either end.
func (x *lexer) at(i int) rune {
	if i += x.pos; i < 0 || i >= len(x.runes) {
		return 0
	}
	return x.runes[i]
}

func (x *lexer) spanFrom(from int) span { return span{from, x.pos} }
func (x *lexer) typed(from int) string  { return string(x.source[from:x.pos]) }
func (x *lexer) emit(from int, t token) {
	t.span, t.typed = x.spanFrom(from), x.typed(from)
	x.tokens = append(x.tokens, t)
}
func (x *lexer) take(from, n int, t token) { x.pos += n; x.emit(from, t) }

// previous reports whether the token before is of one of the kinds.
func (x *lexer) previous(kinds ...kind) bool {
	n := len(x.tokens)
	return n > 0 && slices.Contains(kinds, x.tokens[n-1].kind)
}

func (x *lexer) spaces() {
	for isSpace(x.at(0)) {
		x.pos++
	}
}

// next reads one token. It is false at the end.
func (x *lexer) next() bool {
	x.spaces()
	from, r := x.pos, x.at(0)
	switch {
	case x.pos == len(x.runes):
		x.emit(from, token{kind: tEnd})
		return false
	case x.command(), x.sign(from, r), x.fracDigit(from):
	case isDigit(r), r == '.' && isDigit(x.at(1)), r == ',' && isDigit(x.at(1)) && !x.previous(tNumber, tUnit, tName, tClose, tSuper, tPi, tUnknown), vulgar[r] != 0:
		x.letterDigit()
		x.measure(x.number(), from)
	case superscript(r) >= 0:
		x.superscript(from)
	case strings.ContainsRune("+-*/^=|", r):
		x.operator(from, r)
	case r == '(':
		x.take(from, 1, token{kind: tOpen})
	case r == ')':
		x.take(from, 1, token{kind: tClose})
	case r == '√':
		x.take(from, 1, token{kind: tFunc, fn: functions["sqrt"]})
	case strings.ContainsRune(",;±", r):
		x.take(from, 1, token{kind: tValueEnd})
	case r == '°', r == prime, r == seconds, r == '#':
		u, _ := statics.UnitBySymbol(string(r))
		x.take(from, 1, token{kind: tUnit, unit: u})
	case isLetter(r):
		x.letterDigit()
		x.word()
	case strings.ContainsRune("←↑↓↗↘↙↖", r) && x.previous(tNumber, tUnit, tClose):
		span{from, from + 1}.fail("way")
	default:
		span{from, from + 1}.fail("character", "what", string(x.source[from:from+1]))
	}
	return true
}

// operator takes an operator sign; ** is ^.
func (x *lexer) operator(from int, r rune) {
	n := 1
	if r == '-' && x.at(1) == '¹' && x.previous(tFunc) { // sin-¹, half raised
		x.take(from, 2, token{kind: tSuper, num: number{value: -1}})
		return
	}
	if r == '*' && x.at(1) == '*' {
		r, n = '^', 2
	}
	x.take(from, n, token{kind: tOp, op: r})
}

// Superscript digits, and the signs that may stand before them.
const superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺"

func superscript(r rune) int { return strings.IndexRune(superscripts, r) }

// superscript takes a raised integer. A raised zero alone is a degree sign
// badly drawn (87⁰).
func (x *lexer) superscript(from int) {
	if x.at(0) == '⁰' && superscript(x.at(1)) < 0 {
		u, _ := statics.UnitBySymbol("deg")
		x.take(from, 1, token{kind: tUnit, unit: u})
		return
	}
	sign, v := 1.0, 0.0
	switch x.at(0) {
	case '⁻':
		sign = -1
		x.pos++
	case '⁺':
		x.pos++
	}
	digits := 0
	if sign < 0 && x.at(0) == '1' && !isDigit(x.at(1)) && x.previous(tFunc) { // tan⁻1, half raised
		x.pos++
		x.emit(from, token{kind: tSuper, num: number{value: -1}})
		return
	}
	for ; digits < 3 && x.superDigit() >= 0; digits++ {
		v = v*10 + float64(x.superDigit())
		x.pos++
	}
	if digits == 0 || superscript(x.at(0)) >= 0 {
		x.pos = max(x.pos, from+1)
		x.spanFrom(from).fail("superscript", "typed", x.typed(from))
	}
	x.emit(from, token{kind: tSuper, num: number{value: sign * v}})
}

// superDigit is the value of the raised digit at hand, or −1.
func (x *lexer) superDigit() int {
	for d, r := range []rune("⁰¹²³⁴⁵⁶⁷⁸⁹") {
		if x.at(0) == r {
			return d
		}
	}
	return -1
}

func isSpace(r rune) bool  { return r == ' ' || r == noBreak }
func isLetter(r rune) bool { return unicode.IsLetter(r) && superscript(r) < 0 }
