package figure

import (
	"cmp"
	"math"
	"slices"

	"closingside/statics"

	"gonum.org/v1/gonum/spatial/r2"
)

// Radii of angle arcs in pixels.
const (
	arcFirst   = 22 // the innermost arc at a point
	arcApart   = 10 // from one arc to the next
	arcLegend  = 13 // the length of arc that can still be seen as one
	arcNarrow  = 9  // a shorter one is marked from outside
	arcOutside = 16
	arcMost    = 150 // a small angle's arc moves out no farther
	arcLeast   = 10
	arcReach   = 0.7 // of the shorter side the arc may use
)

// turn is the arc's sweep without whole turns.
func (a Arc) turn() statics.Angle {
	if math.Abs(a.Turn.Degrees()) < 360 {
		return a.Turn
	}
	return statics.Angle(math.Mod(a.Turn.Degrees(), 360)) * statics.Degree
}

// square reports whether the arc is drawn as the corner of a square.
func (a Arc) square() bool {
	return !a.Directed && math.Abs(math.Abs(a.turn().Degrees())-90) < 1e-9
}

// pen draws marks of the arc.
func (a Arc) pen(c Class) pen { return pen{c, a.Step, a.Name} }

// planArcs chooses a radius for every arc. At one point the widest angle gets
// the smallest radius: a narrow angle needs a large one to be seen, and the
// label of each then lies outside the arcs it does not belong to.
func (b *builder) planArcs() []float64 {
	arcs := b.scene.Arcs
	radii := make([]float64, len(arcs))
	order := make([]int, len(arcs))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, j int) int {
		return cmp.Compare(math.Abs(arcs[j].turn().Degrees()), math.Abs(arcs[i].turn().Degrees()))
	})
	for k, i := range order {
		a := arcs[i]
		if a.Radius > 0 {
			radii[i] = a.Radius
			continue
		}
		least := 0.0
		for _, j := range order[:k] {
			if arcs[j].Centre == a.Centre {
				least = math.Max(least, radii[j]+arcApart)
			}
		}
		r := math.Max(arcFirst, least)
		if span := math.Abs(a.turn().Radians()); span > 0 {
			r = math.Max(r, math.Min(arcLegend/span, arcMost))
		}
		from := b.cover(a.Centre, heading(a.From))
		to := b.cover(a.Centre, heading(a.From+a.turn()))
		reach := math.Min(from, to)
		if reach > 0 && !math.IsInf(reach, 1) {
			r = math.Min(r, math.Max(arcReach*reach, arcLeast))
		}
		radii[i] = math.Max(r, least)
	}
	return radii
}

// cover is how far from a point, in pixels, a line, cable or arrow is drawn in
// direction u. An axis through the point covers every distance.
func (b *builder) cover(centre r2.Vec, u Point) float64 {
	c := b.at(centre)
	w, h := b.world.size()
	eps := 1e-7 * math.Max(w, h)
	far := 0.0
	reach := func(from, to r2.Vec) {
		p, q := b.at(from).sub(c), b.at(to).sub(c)
		if math.Abs(u.cross(p)) > eps || math.Abs(u.cross(q)) > eps {
			return
		}
		near, most := math.Min(u.dot(p), u.dot(q)), math.Max(u.dot(p), u.dot(q))
		if near <= eps {
			far = math.Max(far, most)
		}
	}
	for _, a := range b.scene.Arrows {
		reach(a.From, a.To)
	}
	for _, l := range b.scene.Lines {
		reach(l.From, l.To)
	}
	for _, m := range b.scene.Members {
		reach(m.From, m.To)
	}
	for _, a := range b.scene.Axes {
		if a.At == centre && (math.Abs(u.X) < 1e-9 || math.Abs(u.Y) < 1e-9) {
			far = math.Inf(1)
		}
	}
	return far
}

// arc draws an angle arc, and extends sides that do not reach it.
func (b *builder) arc(a Arc, r float64) {
	b.next()
	c := b.at(a.Centre)
	turn := a.turn()
	for _, dir := range [...]Point{heading(a.From), heading(a.From + turn)} {
		if far := b.cover(a.Centre, dir); far < r+4 {
			b.path(a.pen(ClassConstruction), c.along(dir, far), c.along(dir, r+8))
		}
	}
	if math.Abs(turn.Degrees()) < 1e-6 {
		return
	}
	if a.square() {
		p, q := heading(a.From), heading(a.From+turn)
		side := math.Min(r, 12)
		corner := c.along(p, side).along(q, side)
		b.path(a.pen(ClassArc), c.along(p, side), corner, c.along(q, side))
		r = side * math.Sqrt2
	} else {
		b.curve(a, c, r)
	}
	b.want(a.Label, a.pen(ClassArc), anchor{kind: onArc, a: c, r: r, from: a.From, turn: turn})
}

// curve draws the arc itself, with a head at its end if it is directed. An arc
// too short to be seen is drawn as draughtsmen dimension a narrow angle: by two
// arrows from outside that point at its sides.
func (b *builder) curve(a Arc, c Point, r float64) {
	turn := a.turn()
	length, half := ClassArc.head()
	px := statics.Angle(math.Copysign(1/r, turn.Radians())) // a pixel along the arc
	if r*math.Abs(turn.Radians()) < arcNarrow {
		for _, side := range [...]struct{ tip, px statics.Angle }{{a.From, px}, {a.From + turn, -px}} {
			tip := side.tip - 1.2*side.px
			b.sweep(a, c, r, tip-arcOutside*side.px, (arcOutside-5)*side.px)
			b.arcHead(a, c, r, tip, side.px, 0.8*length, 0.8*half)
		}
		return
	}
	if !a.Directed {
		b.sweep(a, c, r, a.From, turn)
		return
	}
	if most := 0.55 * r * math.Abs(turn.Radians()); length > most {
		half *= most / length
		length = most
	}
	b.sweep(a, c, r, a.From, turn-statics.Angle(0.8*length)*px)
	b.arcHead(a, c, r, a.From+turn, px, length, half)
}

// arcHead draws a head that ends at the direction tip; px is a pixel's turn in
// the sense it points.
func (b *builder) arcHead(a Arc, c Point, r float64, tip, px statics.Angle, length, half float64) {
	p := c.along(heading(tip), r)
	neck := c.along(heading(tip-statics.Angle(length)*px), r)
	if u, ok := p.sub(neck).unit(); ok {
		b.head(a.pen(ClassArc), p, u, length, half)
	}
}

// sweep draws a circular arc in pieces of at most 120°: a viewer finds the
// centre again from the ends, and where these lie close together, or nearly a
// diameter apart, their rounding would move it by pixels.
func (b *builder) sweep(a Arc, c Point, r float64, from, turn statics.Angle) {
	pieces := math.Ceil(math.Abs(turn.Degrees()) / 120)
	piece := turn / statics.Angle(pieces)
	for i := range int(pieces) {
		start := from + statics.Angle(i)*piece
		p, q := c.along(heading(start), r), c.along(heading(start+piece), r)
		m := a.pen(ClassArc).mark(ArcPath, p, q)
		m.Radius, m.CCW = r, turn > 0
		b.marks = append(b.marks, m)
	}
	b.keepOff(ClassArc.Weight()/2+0.2, curvePoints(c, r, from, turn)...)
}
