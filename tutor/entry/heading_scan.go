package entry

import (
	"strings"

	"closingside/statics"
)

// item is a word, a number or a sign of a direction.
type item struct {
	span
	word  string // in the table's spelling; "" for a number
	thing string // its name
	num   number // an angle is in degrees, with its half-unit
	angle bool   // a unit of angle was written
}

// scan cuts the text into items.
func (p *headingParser) scan() {
	x := p.lexer
	for x.spaces(); x.pos < len(x.runes); x.spaces() {
		from, r := x.pos, x.at(0)
		switch {
		case r == ',', r == '.' && !isDigit(x.at(1)):
			x.pos++
		case isDigit(r), r == '.', vulgar[r] != 0:
			p.scanNumber(from)
		case strings.ContainsRune("+-:/", r):
			x.pos++
			word := string(r)
			if r == '/' {
				word = ":"
			}
			p.items = append(p.items, item{span: x.spanFrom(from), word: word})
		case p.scanThing(from):
		case isLetter(r):
			x.pos = x.letters(from)
			p.scanWord(from, string(x.runes[from:x.pos]))
		default:
			span{from, from + 1}.fail("character", "what", string(x.source[from:from+1]))
		}
	}
}

// scanNumber takes a number and the unit of angle behind it.
func (p *headingParser) scanNumber(from int) {
	x := p.lexer
	x.letterDigit()
	before := len(x.tokens)
	n := x.number()
	end := x.pos
	if x.at(0) == 'E' || x.at(0) == 'e' || x.at(0) == 'W' { // N30E
		p.items = append(p.items, item{span: x.spanFrom(from), num: n})
		return
	}
	x.measure(n, from)
	t := x.tokens[before].num
	it := item{span: x.spanFrom(from), num: t, angle: len(x.tokens) > before+1}
	x.spaces()
	at := x.pos
	word := string(x.runes[at:x.letters(at)])
	if x.at(0) == '°' {
		word = "°"
	}
	u, ok := statics.UnitBySymbol(word)
	switch {
	case it.angle || word == "" || !ok || headingWords[foldWord(word)] != "":
		x.pos = max(end, it.to)
	case u.Dim != statics.DimAngle:
		span{at, at + len([]rune(word))}.fail("heading-unit", "unit", word)
	default:
		x.pos = at + len([]rune(word))
		it.angle, it.span = true, x.spanFrom(from)
		it.num.value *= u.Factor
		it.num.half *= u.Factor
	}
	p.items = append(p.items, it)
}

// scanThing takes the name of a thing given. It stands behind "from" or
// "toward" alone: elsewhere E is east even where a force is called so.
func (p *headingParser) scanThing(from int) bool {
	if last := len(p.items) - 1; last < 0 || p.items[last].word != "from" && p.items[last].word != "toward" {
		return false
	}
	x := p.lexer
	end := x.run(from)
	name := strings.ReplaceAll(string(x.runes[from:end]), "_", "")
	if _, ok := p.things[name]; !ok {
		return false
	}
	x.pos = end
	p.items = append(p.items, item{span: x.spanFrom(from), word: "thing", thing: name})
	return true
}

// scanWord takes a word. "Counter" goes with the "clockwise" behind it.
func (p *headingParser) scanWord(from int, typed string) {
	low := foldWord(typed)
	word, ok := headingWords[low]
	at := span{from, p.lexer.pos}
	if between, ok := halfway[low]; ok {
		p.items = append(p.items, item{span: at, word: between[0]}, item{span: at, word: between[1]})
		return
	}
	if !ok {
		at.fail("heading-word", "name", typed)
	}
	last := len(p.items) - 1
	switch {
	case low == "axis" && last >= 0 && p.items[last].word == "-": // x-axis
		p.items = p.items[:last]
	case word == "":
	case word == "cw" && last >= 0 && p.items[last].word == "counter":
		p.items[last] = item{span: p.items[last].through(at), word: "ccw"}
	case word == "cw" && last >= 1 && p.items[last].word == "-" && p.items[last-1].word == "counter":
		p.items = p.items[:last]
		p.items[last-1] = item{span: p.items[last-1].through(at), word: "ccw"}
	default:
		p.items = append(p.items, item{span: at, word: word})
	}
}
