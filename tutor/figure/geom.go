package figure

import "math"

// Point is a place or a step on the page, in pixels, y downwards.
type Point struct{ X, Y float64 }

// The products below are converted before they are added, which keeps the
// compiler from fusing them: the same figure on every machine.

func (p Point) add(q Point) Point     { return Point{p.X + q.X, p.Y + q.Y} }
func (p Point) sub(q Point) Point     { return Point{p.X - q.X, p.Y - q.Y} }
func (p Point) dot(q Point) float64   { return float64(p.X*q.X) + float64(p.Y*q.Y) }
func (p Point) cross(q Point) float64 { return float64(p.X*q.Y) - float64(p.Y*q.X) }
func (p Point) norm() float64         { return math.Sqrt(p.dot(p)) }
func (p Point) left() Point           { return Point{p.Y, -p.X} } // as seen on the page
func (p Point) back() Point           { return Point{-p.X, -p.Y} }
func (p Point) along(u Point, d float64) Point {
	return Point{p.X + float64(u.X*d), p.Y + float64(u.Y*d)}
}
func (p Point) lerp(q Point, t float64) Point { return p.along(q.sub(p), t) }
func (p Point) round() Point                  { return Point{tenth(p.X), tenth(p.Y)} }

// unit is the direction of p; ok is false for a zero step.
func (p Point) unit() (u Point, ok bool) {
	n := p.norm()
	if n == 0 {
		return Point{}, false
	}
	return Point{p.X / n, p.Y / n}, true
}

func tenth(v float64) float64 {
	return math.Round(v*10) / 10
}

// Box is a rectangle with sides along the page's.
type Box struct{ Min, Max Point }

func around(c Point, w, h float64) Box {
	return Box{Point{c.X - w/2, c.Y - h/2}, Point{c.X + w/2, c.Y + h/2}}
}

func (b Box) grow(d float64) Box {
	return Box{Point{b.Min.X - d, b.Min.Y - d}, Point{b.Max.X + d, b.Max.Y + d}}
}

func (b Box) hold(p Point) Box {
	return Box{Point{min(b.Min.X, p.X), min(b.Min.Y, p.Y)}, Point{max(b.Max.X, p.X), max(b.Max.Y, p.Y)}}
}

func (b Box) size() (w, h float64) { return b.Max.X - b.Min.X, b.Max.Y - b.Min.Y }

func (b Box) centre() Point {
	return Point{(b.Min.X + b.Max.X) / 2, (b.Min.Y + b.Max.Y) / 2}
}

// within reports whether b lies inside o.
func (b Box) within(o Box) bool {
	return b.Min.X >= o.Min.X && b.Min.Y >= o.Min.Y && b.Max.X <= o.Max.X && b.Max.Y <= o.Max.Y
}

// meets reports whether two boxes have a point in common.
func (b Box) meets(o Box) bool {
	return b.Min.X <= o.Max.X && o.Min.X <= b.Max.X && b.Min.Y <= o.Max.Y && o.Min.Y <= b.Max.Y
}

// nobox is the box that holds nothing.
var nobox = Box{Point{math.Inf(1), math.Inf(1)}, Point{math.Inf(-1), math.Inf(-1)}}

// stroke is a straight piece of ink, half a line's width either side.
type stroke struct {
	a, b  Point
	half  float64
	owner int  // the part it belongs to
	shaft bool // the shaft of an arrow
}

// hits reports whether the stroke comes nearer than gap to the box: the
// separating axis theorem for a segment and a rectangle, a little generous
// where a corner faces the segment's end.
func (s *stroke) hits(b Box, gap float64) bool {
	gap += s.half
	if s.a.X < b.Min.X-gap && s.b.X < b.Min.X-gap || s.a.X > b.Max.X+gap && s.b.X > b.Max.X+gap ||
		s.a.Y < b.Min.Y-gap && s.b.Y < b.Min.Y-gap || s.a.Y > b.Max.Y+gap && s.b.Y > b.Max.Y+gap {
		return false
	}
	d := s.b.sub(s.a)
	w, h := b.size()
	reach := support(d.left(), w, h) + float64(gap*d.norm())
	return math.Abs(d.cross(b.centre().sub(s.a))) <= reach
}

// crosses reports whether the segments a–b and c–d have a point in common.
// Segments on one line count as crossing when they overlap.
func crosses(a, b, c, d Point) bool {
	ab := b.sub(a)
	if ab.cross(c.sub(a))*ab.cross(d.sub(a)) > 0 {
		return false
	}
	cd := d.sub(c)
	if cd.cross(a.sub(c))*cd.cross(b.sub(c)) > 0 {
		return false
	}
	return nobox.hold(a).hold(b).meets(nobox.hold(c).hold(d))
}

// support is how far a w by h box reaches from its middle towards u.
func support(u Point, w, h float64) float64 {
	return float64(math.Abs(u.X)*w)/2 + float64(math.Abs(u.Y)*h)/2
}

// through is how far a w by h box reaches along u from its middle: to where a line
// from there comes out of it.
func through(u Point, w, h float64) float64 {
	return min(w/(2*math.Abs(u.X)), h/(2*math.Abs(u.Y)))
}
