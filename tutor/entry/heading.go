package entry

import (
	"slices"
	"strings"

	"closingside/statics"
)

// ReadHeading reads a direction as books give it:
//
//	heading = angle                                            25°, counter-clockwise from +x
//	        | [ sense ] angle [ sense ] "from" axis [ sense ]  20 deg from +y clockwise
//	        | angle "from" axis side                           20° from +y to the left
//	        | angle side axis                                  30° below −x, 15° left of +y
//	        | number ( ":" | "/" ) number way way              3:4 up left
//	        | compass angle compass                            N 30° E, W 40° N
//	        | angle compass "of" compass                       37° N of E
//	        | compass [ compass ]                              N, NW
//	        | "azimuth" angle | axis | way                     azimuth 120°, −x, up
//	        | angle quadrant | quadrant angle                  30° in the third quadrant, 30° Q3
//	axis    = [ "+" | "−" ] ( "x" | "y" ) | "horizontal" | "vertical"
func ReadHeading(s string) (statics.Heading, *Error) {
	p, err := readHeading(s, nil)
	return p.found, err
}

// Things are the directions, in degrees from +x, of what is given under a
// name: another direction may be told from them.
type Things map[string]float64

// readHeading reads a direction, by the grammar above or from a thing given:
//
//	heading = [ sense ] angle [ sense ] "from" thing [ sense | "toward" thing ]  20° from P, 20° from P toward Q
func readHeading(s string, things Things) (p headingParser, err *Error) {
	defer rescue(&err)
	p = headingParser{lexer: newLexer(s, noNames), things: things}
	p.scan()
	if len(p.items) == 0 {
		span{0, len(p.source)}.fail("empty")
	}
	p.found = p.heading()
	if p.pos < len(p.items) {
		p.confused()
	}
	return p, nil
}

// number is the number the direction was written with; it is exact for a slope
// and for a bare axis.
func (p *headingParser) number() number {
	if p.turn == nil {
		return number{}
	}
	return p.turn.num
}

// item is a word, a number or a sign of a direction.
type item struct {
	span
	word  string // in the table's spelling; "" for a number
	thing string // its name
	num   number // an angle is in degrees, with its half-unit
	angle bool   // a unit of angle was written
}

type headingParser struct {
	*lexer
	things Things
	items  []item
	pos    int

	found statics.Heading
	turn  *item         // the angle read
	from  string        // the thing it is told from, "" where that is an axis
	bare  bool          // a sense is told, and not from what
	open  bool          // above or below an axis, and not which end of it
	base  statics.Angle // the direction of that thing
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

// is reports whether the item i ahead is one of the words; with "0" for a
// number.
func (p *headingParser) is(i int, words ...string) bool {
	if i += p.pos; i >= len(p.items) {
		return false
	}
	word := p.items[i].word
	if word == "" {
		word = "0"
	}
	return slices.Contains(words, word)
}

func (p *headingParser) accept(words ...string) (string, bool) {
	if !p.is(0, words...) {
		return "", false
	}
	p.pos++
	return p.items[p.pos-1].word, true
}

// axisOf takes one of the words that name a half-axis.
func (p *headingParser) axisOf(words ...string) statics.Axis {
	w, ok := p.accept(words...)
	if !ok {
		p.confused()
	}
	return headingAxes[w]
}

var compass = []string{"north", "east", "south", "west"}
var ways = []string{"up", "down", "left", "right"}

// heading reads by the grammar at [ReadHeading].
func (p *headingParser) heading() statics.Heading {
	if h, ok := p.inQuadrant(); ok {
		return h
	}
	switch {
	case p.is(0, "azimuth"):
		p.pos++
		return p.checked(statics.FromNorth(p.angle()))
	case p.is(0, compass...) && p.is(1, "0"):
		from := p.axisOf(compass...)
		turn := p.angle()
		return p.checked(statics.Toward(statics.Bearing, from, p.axisOf(compass...), turn))
	case p.is(0, compass...) && (p.is(1, compass...) || p.is(1, "-") && p.is(2, compass...)):
		from := p.axisOf(compass...)
		p.accept("-")
		return p.checked(statics.Toward(statics.Bearing, from, p.axisOf(compass...), 45*statics.Degree))
	case p.is(0, compass...):
		axis := p.axisOf(compass...)
		return p.checked(statics.Toward(statics.Compass, axis, (axis+1)&3, 0))
	case p.is(0, ways...):
		return p.checked(statics.From(p.axisOf(ways...), 0, statics.CounterClockwise))
	case p.is(0, "x", "y"), p.is(0, "+", "-") && p.is(1, "x", "y"):
		return p.checked(statics.From(p.axis(), 0, statics.CounterClockwise))
	case p.is(0, "0") && p.is(1, ":"):
		return p.slope()
	}
	sense, turned := p.sense()
	turn := p.angle()
	if !turned {
		sense, turned = p.sense()
	}
	if !turned && p.is(0, ways...) {
		side := p.axisOf(ways...)
		p.accept("of")
		p.open = p.is(0, "x", "y")
		return p.checked(statics.Toward(statics.Beside, p.axis(), side, turn))
	}
	if !turned && p.is(0, compass...) {
		toward := p.axisOf(compass...)
		if _, ok := p.accept("of"); !ok {
			p.confused()
		}
		return p.checked(statics.Toward(statics.Compass, p.axisOf(compass...), toward, turn))
	}
	axis := statics.PlusX
	p.bare = turned && !p.is(0, "from")
	if _, ok := p.accept("from"); ok {
		if p.is(0, "thing") {
			return p.fromThing(turn, sense, turned)
		}
		axis = p.axis()
		switch {
		case turned:
		case p.is(0, ways...):
			return p.checked(statics.Toward(statics.Beside, axis, p.axisOf(ways...), turn))
		default:
			sense, turned = p.sense()
		}
		if !turned && turn != 0 && axis != statics.PlusX { // either side is as likely
			p.items[0].through(p.items[p.pos-1].span).fail("heading-side")
		}
	}
	return p.checked(statics.From(axis, turn, sense))
}

// fromThing reads from which thing the angle is told, and which way.
func (p *headingParser) fromThing(turn statics.Angle, sense statics.Sense, turned bool) statics.Heading {
	p.from = p.items[p.pos].thing
	from := statics.Angle(p.things[p.from]) * statics.Degree
	p.pos++
	if !turned {
		sense, turned = p.sense()
	}
	if !turned && p.is(0, "toward") {
		p.pos++
		if !p.is(0, "thing") {
			p.confused()
		}
		to := statics.Angle(p.things[p.items[p.pos].thing]) * statics.Degree
		p.pos++
		if (to - from).Normalized() < 0 {
			sense = statics.Clockwise
		}
	}
	p.base = from
	return p.checked(statics.From(statics.PlusX, turn, sense))
}

// slope reads a slope triangle: the vertical leg, the horizontal one, and the
// two ways they go.
func (p *headingParser) slope() statics.Heading {
	rise := p.items[p.pos]
	p.pos += 2
	if !p.is(0, "0") {
		p.confused()
	}
	run := p.items[p.pos]
	p.pos++
	if rise.angle || run.angle {
		rise.through(run.span).fail("heading-slope")
	}
	if p.pos >= len(p.items) {
		rise.through(run.span).fail("heading-ways")
	}
	first, second := p.axisOf(ways...), p.axisOf(ways...)
	if first == statics.PlusX || first == statics.MinusX {
		first, second = second, first
	}
	return p.checked(statics.FromSlope(rise.num.value, run.num.value, first, second))
}

// sense reads a sense of rotation, if one stands here.
func (p *headingParser) sense() (_ statics.Sense, ok bool) {
	w, ok := p.accept("cw", "ccw")
	if w == "cw" {
		return statics.Clockwise, ok
	}
	return statics.CounterClockwise, ok
}

// axis reads a half-axis; one without a sign is the positive one.
func (p *headingParser) axis() statics.Axis {
	if p.is(0, compass...) {
		return p.axisOf(compass...)
	}
	sign, _ := p.accept("+", "-")
	letter, ok := p.accept("x", "y")
	if !ok {
		p.confused()
	}
	axis := statics.PlusX
	if letter == "y" {
		axis = statics.PlusY
	}
	if sign == "-" {
		axis += 2
	}
	return axis
}

// angle reads a signed angle; without a unit it is in degrees.
func (p *headingParser) angle() statics.Angle {
	sign, _ := p.accept("+", "-")
	if !p.is(0, "0") {
		p.confused()
	}
	p.turn = &p.items[p.pos]
	p.pos++
	v := p.turn.num.value
	if sign == "-" {
		v = -v
	}
	return statics.Angle(v) * statics.Degree
}

// checked fails where there is no such direction.
func (p *headingParser) checked(h statics.Heading, ok bool) statics.Heading {
	if !ok {
		p.items[0].through(p.items[p.pos-1].span).fail("heading-range")
	}
	return h
}

// confused fails at the item at hand.
func (p *headingParser) confused() {
	if p.pos < len(p.items) {
		p.items[p.pos].fail("heading")
	}
	p.items[len(p.items)-1].fail("heading-unfinished")
}
