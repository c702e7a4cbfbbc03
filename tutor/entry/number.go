package entry

import (
	"math"
	"slices"
	"strconv"
	"strings"
)

// number is a literal as typed.
type number struct {
	value    float64
	half     float64 // half a unit of the last digit; 0 where the literal is exact (½)
	zeros    int     // final zeros that may only hold the place: 3 in 466000
	digits   int     // significant digits, final zeros counted
	decimals int     // digits behind the point
}

// halves lists the half-units the literal may be known to, finest first.
func (n number) halves() []float64 {
	if n.half == 0 {
		return nil
	}
	all := make([]float64, n.zeros+1)
	for i, h := 0, n.half; i < len(all); i, h = i+1, h*10 {
		all[i] = h
	}
	return all
}

// coarse is the half-unit where final zeros only hold the place of digits;
// behind the point they are written because they are known.
func (n number) coarse() float64 {
	if n.decimals > 0 {
		return n.half
	}
	return n.half * math.Pow10(n.zeros)
}

// vulgar holds the fractions that are one character. Phones put them in for
// 1/2 and the like.
var vulgar = map[rune]float64{
	'½': 1. / 2, '⅓': 1. / 3, '⅔': 2. / 3, '¼': 1. / 4, '¾': 3. / 4, '⅕': 1. / 5, '⅖': 2. / 5, '⅗': 3. / 5,
	'⅘': 4. / 5, '⅙': 1. / 6, '⅚': 5. / 6, '⅛': 1. / 8, '⅜': 3. / 8, '⅝': 5. / 8, '⅞': 7. / 8,
}

// number reads a literal: digits with points, commas, apostrophes or spaces
// between them, an exponent (1.2e3), a fraction in one character (2½).
//
//	number = ( digits { sep digits } [ "." ] | ( "." | "," ) digits ) [ "e" [ sign ] digits ] [ vulgar ] | vulgar
func (x *lexer) number() number {
	from := x.pos
	var groups []string // of digits
	var seps []rune     // between them
	if isDigit(x.at(0)) {
		groups = append(groups, x.digits())
	} else if x.at(0) == '.' || x.at(0) == ',' {
		groups = append(groups, "")
	}
	for len(groups) > 0 && x.separator() {
		seps = append(seps, x.at(0))
		x.pos++
		groups = append(groups, x.digits())
	}
	if x.pos > from && x.at(0) == '.' && x.at(-1) == '.' {
		for x.at(0) == '.' || isDigit(x.at(0)) {
			x.pos++
		}
		x.spanFrom(from).fail("number", "typed", x.typed(from))
	}
	var n number
	if len(groups) > 0 {
		m := arrange(groups, seps, x.spanFrom(from), x.typed(from))
		exponent := x.exponent()
		n = m.scale(exponent, x.spanFrom(from), x.typed(from))
	}
	if v, ok := vulgar[x.at(0)]; ok {
		x.pos++
		n.value, n.half = n.value+v, 0
	}
	return n
}

// separator reports whether the rune at hand stands inside a number: a point,
// or a comma, apostrophe or space with digits behind it; the last two only
// before a group of three.
func (x *lexer) separator() bool {
	three := isDigit(x.at(1)) && isDigit(x.at(2)) && isDigit(x.at(3)) && !isDigit(x.at(4))
	switch x.at(0) {
	case '.':
		return x.pos == 0 || !strings.ContainsRune(".", x.at(-1))
	case ',':
		return isDigit(x.at(1))
	case ' ', noBreak, prime:
		return three && x.pos > 0 && isDigit(x.at(-1)) && !x.raised()
	}
	return false
}

// raised reports whether the number at hand is a power: tan^-1 682.3, tan-1 682.3.
func (x *lexer) raised() bool {
	n := len(x.tokens)
	if n > 0 && x.tokens[n-1].is('-') {
		n--
		if n > 0 && x.tokens[n-1].kind == tFunc {
			return true
		}
	}
	return n > 0 && x.tokens[n-1].is('^')
}

// digits takes the digits at hand.
func (x *lexer) digits() string {
	from := x.pos
	for isDigit(x.at(0)) {
		x.pos++
	}
	return string(x.runes[from:x.pos])
}

// exponent takes an exponent, or nothing and is "".
func (x *lexer) exponent() string {
	i := 1
	if x.at(i) == '-' || x.at(i) == '+' {
		i++
	}
	if (x.at(0) != 'e' && x.at(0) != 'E') || !isDigit(x.at(i)) {
		return ""
	}
	sign := x.runes[x.pos+1 : x.pos+i]
	x.pos += i
	return string(sign) + x.digits()
}

// mantissa is the digits of a number before and behind the decimal sign.
type mantissa struct {
	whole, decimals string
	point           bool // a decimal sign stands between them
}

// arrange finds the decimal sign. A point is one unless there are several. A
// comma is taken for what it must be, and asked about where it may be either
// (1,234), and so is a space that may part two numbers.
func arrange(groups []string, seps []rune, at span, typed string) mantissa {
	n := len(seps)
	if n == 0 {
		return mantissa{whole: groups[0]}
	}
	last, ahead, behind := seps[n-1], strings.Join(groups[:n], ""), groups[n]
	decimal := mantissa{ahead, behind, true}
	thousands := grouped(groups) && uniform(seps)
	switch {
	case slices.Contains(seps, ' '):
		at.fail("space", "typed", typed, "joined", strings.ReplaceAll(typed, " ", ""))
	case n == 1 && last == ',' && thousands:
		at.fail("comma", "typed", typed, "thousands", ahead+behind, "decimal", ahead+"."+behind)
	case n == 1 && (last == '.' || last == ','):
		return decimal
	case thousands:
		return mantissa{whole: ahead + behind}
	case (last == '.' || last == ',') && last != seps[0] && uniform(seps[:n-1]) && grouped(groups[:n]):
		return decimal
	case uniform(seps) && last == ',':
		at.fail("two-values")
	}
	at.fail("number", "typed", typed)
	return mantissa{}
}

// grouped reports whether the digits are grouped as thousands are: three at a
// time from the right, or two at a time before the last three (1,23,456).
func grouped(groups []string) bool {
	first, last := groups[0], groups[len(groups)-1]
	if len(first) < 1 || len(first) > 3 || first[0] == '0' || len(last) != 3 {
		return false
	}
	size := 0
	for _, g := range groups[1 : len(groups)-1] {
		if size == 0 {
			size = len(g)
		}
		if len(g) != size || size < 2 || size > 3 {
			return false
		}
	}
	return size != 2 || len(first) <= 2
}

func uniform(seps []rune) bool {
	for _, s := range seps {
		if s != seps[0] {
			return false
		}
	}
	return true
}

// maxExponent bounds powers of ten: nothing in a lesson comes near, and a
// float64 holds any value within.
const (
	maxExponent = 100
	maxValue    = 1e100
)

// scale makes the number with a power of ten behind it. Behind a decimal sign
// nothing need stand: the zeros of 680. are measured ones.
func (m mantissa) scale(exponent string, at span, typed string) number {
	e, err := 0, error(nil)
	if exponent != "" {
		e, err = strconv.Atoi(exponent)
	}
	v, parseErr := strconv.ParseFloat(m.whole+"."+m.decimals+"e"+strconv.Itoa(e), 64)
	if err != nil || parseErr != nil || e < -maxExponent || e > maxExponent || v > maxValue {
		at.fail("too-large", "typed", typed)
	}
	n := number{value: v, decimals: len(m.decimals), half: 0.5 * math.Pow10(e-len(m.decimals))}
	significant := strings.TrimLeft(m.whole+m.decimals, "0")
	n.digits = max(1, len(significant))
	if !m.point {
		n.zeros = len(significant) - len(strings.TrimRight(significant, "0"))
	}
	return n
}

func isDigit(r rune) bool { return r >= '0' && r <= '9' }
