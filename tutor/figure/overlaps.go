package figure

import (
	"math"

	"closingside/statics"
)

// overlaps counts the labels that touch another label, a stroke or the frame,
// on the finished drawing.
func (d *Drawing) overlaps() int {
	frame := Box{Max: Point{d.Width, d.Height}}
	ink := d.strokes()
	n := 0
	for i := range d.Marks {
		m := &d.Marks[i]
		if m.Shape != Text {
			continue
		}
		bad := !m.Box.within(frame)
		for k := range ink {
			bad = bad || ink[k].hits(m.Box, 0)
		}
		for k := range d.Marks {
			o := &d.Marks[k]
			bad = bad || k != i && o.Shape == Text && m.Box.meets(o.Box)
		}
		if bad {
			n++
		}
	}
	return n
}

// strokes is all the ink of a finished drawing that labels must keep off.
func (d *Drawing) strokes() []stroke {
	var ink []stroke
	add := func(half float64, pts ...Point) {
		for i := 1; i < len(pts); i++ {
			ink = append(ink, stroke{a: pts[i-1], b: pts[i], half: half})
		}
	}
	for i := range d.Marks {
		m := &d.Marks[i]
		half := m.Class.Weight() / 2
		switch m.Shape {
		case Path:
			add(half, m.Points...)
		case Head:
			add(0, append(m.Points[:len(m.Points):len(m.Points)], m.Points[0])...)
		case Polygon:
			if m.Class != ClassArea {
				add(half, append(m.Points[:len(m.Points):len(m.Points)], m.Points[0])...)
			}
		case Circle:
			add(half, curvePoints(m.Points[0], m.Radius, 0, 360*statics.Degree)...)
		case ArcPath:
			c, from, turn := m.Arc()
			add(half, curvePoints(c, m.Radius, from, turn)...)
		}
	}
	return ink
}

// Arc recovers the centre of an ArcPath, the world direction of its start and
// its turn.
func (m *Mark) Arc() (centre Point, from, turn statics.Angle) {
	p, q := m.Points[0], m.Points[1]
	chord := q.sub(p)
	half := chord.norm() / 2
	u, _ := chord.unit()
	rise := math.Sqrt(math.Max(0, m.Radius*m.Radius-half*half))
	if !m.CCW {
		rise = -rise
	}
	centre = p.lerp(q, 0.5).along(u.left(), rise)
	a, b := p.sub(centre), q.sub(centre)
	from = statics.Angle(math.Atan2(-a.Y, a.X))
	turn = statics.Angle(math.Atan2(-b.Y, b.X)) - from
	for m.CCW && turn < 0 {
		turn += 360 * statics.Degree
	}
	for !m.CCW && turn > 0 {
		turn -= 360 * statics.Degree
	}
	return centre, from, turn
}

// curvePoints are points along a circular arc, close enough for its ink.
func curvePoints(c Point, r float64, from, turn statics.Angle) []Point {
	pieces := 1 + int(math.Abs(turn.Degrees())/12)
	pts := make([]Point, pieces+1)
	for i := range pts {
		pts[i] = c.along(heading(from+turn*statics.Angle(float64(i)/float64(pieces))), r)
	}
	return pts
}
