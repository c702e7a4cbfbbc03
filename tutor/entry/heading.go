package entry

import (
	"slices"

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
//	        | "azimuth" angle | angle "azimuth"                azimuth 120°
//	        | axis | way                                       −x, up
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
	side  bool          // of a thing, is not told
	base  statics.Angle // the direction of that thing
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
	case p.is(0, compass...):
		return p.bearing()
	case p.is(0, ways...):
		return p.checked(statics.From(p.axisOf(ways...), 0, statics.CounterClockwise))
	case p.is(0, "x", "y"), p.is(0, "+", "-") && p.is(1, "x", "y"):
		return p.checked(statics.From(p.axis(), 0, statics.CounterClockwise))
	case p.is(0, "0") && p.is(1, ":"):
		return p.slope()
	}
	return p.turned(p.rotation())
}

// bearing reads a direction that begins with a point of the compass: N 30° E,
// north-east, N.
func (p *headingParser) bearing() statics.Heading {
	from := p.axisOf(compass...)
	switch {
	case p.is(0, "0"):
		turn := p.angle()
		return p.checked(statics.Toward(statics.Bearing, from, p.axisOf(compass...), turn))
	case p.is(0, compass...), p.is(0, "-") && p.is(1, compass...):
		p.accept("-")
		return p.checked(statics.Toward(statics.Bearing, from, p.axisOf(compass...), 45*statics.Degree))
	}
	return p.checked(statics.Toward(statics.Compass, from, (from+1)&3, 0))
}

// rotation is an angle, and the sense it is told in.
type rotation struct {
	turn  statics.Angle
	sense statics.Sense
	told  bool // the sense is
}

// rotation reads an angle with the sense before or behind it, if one stands there.
func (p *headingParser) rotation() (r rotation) {
	r.sense, r.told = p.sense()
	r.turn = p.angle()
	if !r.told {
		r.sense, r.told = p.sense()
	}
	return r
}

// turned reads from where an angle is told, and to which side.
func (p *headingParser) turned(r rotation) statics.Heading {
	switch {
	case !r.told && p.is(0, ways...): // 30° below −x
		side := p.axisOf(ways...)
		p.accept("of")
		p.open = p.is(0, "x", "y")
		return p.checked(statics.Toward(statics.Beside, p.axis(), side, r.turn))
	case !r.told && p.is(0, compass...): // 37° N of E
		toward := p.axisOf(compass...)
		if _, ok := p.accept("of"); !ok {
			p.confused()
		}
		return p.checked(statics.Toward(statics.Compass, p.axisOf(compass...), toward, r.turn))
	}
	if _, ok := p.accept("azimuth"); ok && !r.told {
		return p.checked(statics.FromNorth(r.turn))
	}
	if _, ok := p.accept("from"); !ok {
		p.bare = r.told
		return p.checked(statics.From(statics.PlusX, r.turn, r.sense))
	}
	if p.is(0, "thing") {
		return p.fromThing(r)
	}
	return p.fromAxis(r)
}

// fromAxis reads the axis from which an angle is told, and the side or sense
// behind it.
func (p *headingParser) fromAxis(r rotation) statics.Heading {
	axis := p.axis()
	if !r.told {
		if p.is(0, ways...) {
			return p.checked(statics.Toward(statics.Beside, axis, p.axisOf(ways...), r.turn))
		}
		r.sense, r.told = p.sense()
	}
	if !r.told && r.turn != 0 && axis != statics.PlusX { // either side is as likely
		p.items[0].through(p.items[p.pos-1].span).fail("heading-side")
	}
	return p.checked(statics.From(axis, r.turn, r.sense))
}

// fromThing reads from which thing an angle is told, and which way.
func (p *headingParser) fromThing(r rotation) statics.Heading {
	p.from = p.items[p.pos].thing
	p.base = p.thing()
	if !r.told {
		r.sense, r.told = p.sense()
	}
	if !r.told && p.is(0, "toward") {
		p.pos++
		if !p.is(0, "thing") {
			p.confused()
		}
		if (p.thing() - p.base).Normalized() < 0 {
			r.sense = statics.Clockwise
		}
		r.told = true
	}
	p.side = !r.told && r.turn != 0
	return p.checked(statics.From(statics.PlusX, r.turn, r.sense))
}

// thing takes a thing given, and is its direction.
func (p *headingParser) thing() statics.Angle {
	p.pos++
	return statics.Angle(p.things[p.items[p.pos-1].thing]) * statics.Degree
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
