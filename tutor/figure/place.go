package figure

import (
	"cmp"
	"math"
	"slices"

	"closingside/statics"
)

// anchor is the part a label belongs to, on the page.
type anchor struct {
	kind       anchorKind
	a, b       Point   // ends of a line or arrow; a is the middle of a dot or arc
	r          float64 // radius of an arc or dot, half the width of a line
	from, turn statics.Angle
}

type anchorKind uint8

const (
	onArrow anchorKind = iota
	onLine
	onTip
	onArc
	onDot
)

// move shifts an anchor with its figure.
func (a anchor) move(d Point) anchor {
	a.a, a.b = a.a.add(d), a.b.add(d)
	return a
}

// spot is one place for a label.
type spot struct {
	box        Box
	cost       float64
	leader     bool
	start, end Point // of the leader
	crossed    int
}

// Distances in pixels that labels keep, and what weighs how much in a place's
// cost. The unit of cost is one step from the ideal place to the next best.
const (
	labelGap   = 3.0 // from a label to any ink
	ownGap     = 4.0 // from a label to the part it stands beside
	betweenGap = 5.0 // from a label to another
	frameGap   = 3.0
	leaderGap  = 2.0  // from the end of a leader to its label
	airGap     = 8.0  // closer ink makes a place worse
	rivalGap   = 13.0 // a closer foreign arrow makes it doubtful whose label it is

	costAir     = 1.2
	costRival   = 2.5
	costInside  = 1.5
	costLeader  = 7.0
	costLength  = 0.06 // for each pixel of leader
	costCross   = 5.0  // for each stroke a leader crosses, and twice more for an arrow
	costDoubt   = 8.0  // another part of the kind is as near as the label's own
	costSlanted = 3.0  // a leader along its arrow
)

// placer finds the spots of labels among the ink of a figure.
type placer struct {
	frame   Box
	middle  Point // of the figure
	strokes []stroke
	arcs    []mid
	last    int // the stroke that refused a box last: likely to refuse the next
}

// mid is the middle of an angle arc.
type mid struct {
	owner int
	at    Point
}

// spots lists where a label can stand without touching ink or the frame, best
// first. Leaders are tried when asked for, or when there is little choice.
func (p *placer) spots(w *want, leaders bool) []spot {
	var all []spot
	add := func(c Point, cost float64, sight *Point) {
		box := around(c, w.w, w.h)
		if cost, ok := p.judge(w, box, cost); ok && (sight == nil || p.clear(*sight, c, w.owner)) {
			all = append(all, spot{box: box, cost: cost})
		}
	}
	switch w.anchor.kind {
	case onArrow, onLine:
		p.besideLine(w, add)
	case onTip:
		p.besideTip(w, add)
	case onArc:
		p.besideArc(w, add)
	case onDot:
		p.besideDot(w, add)
	}
	if leaders || len(all) < 3 {
		all = p.led(w, all)
	}
	slices.SortStableFunc(all, func(a, b spot) int { return cmp.Compare(a.cost, b.cost) })
	return all
}

type adder func(centre Point, cost float64, sight *Point)

// besideLine offers places along both sides of a line, and beyond a tip.
func (p *placer) besideLine(w *want, add adder) {
	a, b := w.anchor.a, w.anchor.b
	u, ok := b.sub(a).unit()
	if !ok {
		u = Point{1, 0}
	}
	for i, t := range [...]float64{0.5, 0.6, 0.4, 0.7, 0.3, 0.8, 0.2, 0.9} {
		for _, n := range [...]Point{u.left(), u.left().back()} {
			m := a.lerp(b, t)
			cost := 0.35 * float64((i+1)/2)
			if n.dot(p.middle.sub(m)) > 0.5 {
				cost += costInside
			}
			add(m.along(n, support(n, w.w, w.h)+w.anchor.r+ownGap), cost, nil)
		}
	}
	if w.anchor.kind == onArrow {
		tip := 1.0
		if p.rival(around(b, 0, 0), w.owner, 8) {
			tip = costDoubt
		}
		add(b.along(u, support(u, w.w, w.h)+ownGap), tip, nil)
		for _, n := range [...]Point{u.left(), u.left().back()} {
			side, ok := u.add(n).unit()
			if ok {
				add(b.along(side, support(side, w.w, w.h)+ownGap+1), tip+0.6, nil)
			}
		}
	}
}

// besideTip offers places at the end of an axis.
func (p *placer) besideTip(w *want, add adder) {
	u, _ := w.anchor.b.sub(w.anchor.a).unit()
	add(w.anchor.b.along(u, support(u, w.w, w.h)+labelGap+0.5), 0, nil)
	for i, n := range [...]Point{u.left(), u.left().back()} {
		for j, back := range [...]float64{4, 0, 14, 26} {
			c := w.anchor.b.along(u, -back).along(n, support(n, w.w, w.h)+w.anchor.r+labelGap+0.5)
			add(c, 0.5+0.1*float64(i)+0.3*float64(j), nil)
		}
	}
}

// besideArc offers places outside an arc and between its sides, close to it
// or, as long as nothing stands between, farther out where a narrow angle
// opens, which may be far.
func (p *placer) besideArc(w *want, add adder) {
	a := w.anchor
	for i, t := range [...]float64{0.5, 0.38, 0.62, 0.26, 0.74, 0.15, 0.85} {
		u := heading(a.from + a.turn*statics.Angle(t))
		sight := a.a.along(u, a.r+2)
		for j, d := range [...]float64{3.5, 7, 12, 18, 26} {
			cost := 0.4*float64(i) + 1.1*float64(j)
			add(a.a.along(u, a.r+d+support(u, w.w, w.h)), cost, &sight)
		}
		for j, d := range [...]float64{36, 48, 62} {
			if c := a.a.along(u, a.r+d+support(u, w.w, w.h)); p.within(w, c) {
				add(c, 0.4*float64(i)+8.5+0.5*float64(j), &sight)
			}
		}
		if span := math.Abs(a.turn.Radians()); span > 0.6 {
			add(a.a.along(u, a.r-3.5-support(u, w.w, w.h)), 1.5+0.4*float64(i), &sight)
		}
	}
}

// within reports whether a place far out still lies between the two sides of a
// narrow angle, with nothing else between them: whose angle it is then shows
// without a leader.
func (p *placer) within(w *want, c Point) bool {
	a := w.anchor
	turn := a.turn.Radians()
	if math.Abs(turn) > 1 {
		return false
	}
	far := c.sub(a.a).norm()
	past := statics.Angle(math.Copysign(6/far, turn))
	at := func(direction statics.Angle) Point { return a.a.along(heading(direction), far) }
	return p.clear(c, at(a.from+a.turn*0.15), w.owner) && p.clear(c, at(a.from+a.turn*0.85), w.owner) &&
		!p.clear(c, at(a.from-past), w.owner) && !p.clear(c, at(a.from+a.turn+past), w.owner)
}

// besideDot offers places around a point.
func (p *placer) besideDot(w *want, add adder) {
	for i, u := range compass {
		cost := 0.3 * float64(i/2)
		if wide := w.anchor.r > 8; wide && u.X != 0 && u.Y != 0 {
			cost += 2 // beside a block or a wheel, not off its corner
		}
		add(w.anchor.a.along(u, w.anchor.r+support(u, w.w, w.h)+ownGap+1), cost, nil)
	}
}

// compass holds sixteen directions, the slanted ones first.
var compass = func() (all [16]Point) {
	for i, d := range [...]float64{45, 135, -45, -135, 90, -90, 0, 180, 22.5, 157.5, -22.5, -157.5, 67.5, 112.5, -67.5, -112.5} {
		all[i] = heading(statics.Angle(d) * statics.Degree)
	}
	return all
}()

// led adds places farther away, tied to the part by a leader.
func (p *placer) led(w *want, all []spot) []spot {
	a := w.anchor
	starts := []Point{a.a}
	u, rim := Point{}, 0.0
	switch a.kind {
	case onArrow, onLine:
		u, _ = a.b.sub(a.a).unit()
		starts = []Point{a.a.lerp(a.b, 0.5), a.a.lerp(a.b, 0.7), a.a.lerp(a.b, 0.3), a.a.lerp(a.b, 0.88)}
	case onTip:
		starts = []Point{a.b}
	case onArc:
		starts = nil
		for _, t := range [...]float64{0.5, 0.35, 0.65, 0.2, 0.8} {
			starts = append(starts, a.a.along(heading(a.from+a.turn*statics.Angle(t)), a.r))
		}
	case onDot:
		rim = a.r
	}
	for i, s := range starts {
		doubt := 0.4 * float64(i)
		if p.rival(around(s, 0, 0), w.owner, 5) {
			doubt += costDoubt
		}
		for _, d := range compass {
			for _, far := range [...]float64{16, 27, 42, 64, 100} {
				box := around(s.along(d, rim+far+through(d, w.w, w.h)), w.w, w.h)
				cost := costLeader + costLength*far + doubt + costSlanted*math.Abs(d.dot(u))
				cost, ok := p.judge(w, box, cost)
				if !ok {
					continue
				}
				sp := spot{box: box, leader: true, start: s.along(d, rim), end: box.centre().along(d, -through(d, w.w+2*leaderGap, w.h+2*leaderGap))}
				sp.crossed = p.crossed(sp.start, sp.end, w.owner)
				sp.cost = cost + costCross*float64(sp.crossed)
				all = append(all, sp)
			}
		}
	}
	return all
}

// judge refuses a box that touches ink or the frame, and adds what crowding
// costs.
func (p *placer) judge(w *want, box Box, cost float64) (float64, bool) {
	if !box.grow(frameGap).within(p.frame) {
		return 0, false
	}
	if p.last < len(p.strokes) && p.strokes[p.last].hits(box, labelGap) {
		return 0, false
	}
	air, rival := false, false
	for i := range p.strokes {
		s := &p.strokes[i]
		if !s.hits(box, rivalGap) {
			continue
		}
		if s.hits(box, labelGap) {
			p.last = i
			return 0, false
		}
		if s.owner == w.owner {
			continue
		}
		rival = rival || s.shaft && w.anchor.kind == onArrow
		air = air || s.hits(box, airGap)
	}
	if air {
		cost += costAir
	}
	if rival {
		cost += costRival
	}
	if w.anchor.kind == onArc && p.nearer(w, box.centre()) {
		cost += costDoubt
	}
	return cost, true
}

// rival reports whether an arrow of another part comes close to the box.
func (p *placer) rival(box Box, owner int, gap float64) bool {
	for i := range p.strokes {
		if s := &p.strokes[i]; s.shaft && s.owner != owner && s.hits(box, gap) {
			return true
		}
	}
	return false
}

// nearer reports whether the arc nearest to c is not the label's own.
func (p *placer) nearer(w *want, c Point) bool {
	own, other := math.Inf(1), math.Inf(1)
	for _, m := range p.arcs {
		d := m.at.sub(c).norm()
		if m.owner == w.owner {
			own = d
		} else {
			other = math.Min(other, d)
		}
	}
	return other < own
}

// clear reports whether nothing of other parts stands between two points.
func (p *placer) clear(a, b Point, owner int) bool {
	return p.crossed(a, b, owner) == 0
}

// crossed counts the strokes of other parts that a segment crosses, an arrow's
// shaft three times: it is what one follows with the eye.
func (p *placer) crossed(a, b Point, owner int) int {
	n := 0
	for i := range p.strokes {
		if s := &p.strokes[i]; s.owner != owner && crosses(a, b, s.a, s.b) {
			n++
			if s.shaft {
				n += 2
			}
		}
	}
	return n
}
