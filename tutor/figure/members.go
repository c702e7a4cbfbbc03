package figure

import "math"

// Sizes of members in pixels.
const (
	strutHalf   = 3.5
	springHalf  = 6
	springPitch = 7.0 // of a spring's zig-zag, about
	wheelRadius = 13
	bracket     = 32
	blockWidth  = 34
	blockHeight = 26
	supportHalf = 20
	hatchLength = 8
	hatchApart  = 6.5
)

// member draws a part of a structure.
func (b *builder) member(m Member) {
	b.next()
	from, to := b.at(m.From), b.at(m.To)
	u, ok := to.sub(from).unit()
	if !ok {
		u = Point{0, 1}
	}
	place := anchor{kind: onLine, a: from, b: to, r: 1}
	switch m.Kind {
	case Cable:
		b.path(m.pen(ClassCable), from, to)
	case Strut:
		n := u.left()
		b.polygon(m.pen(ClassBody), from.along(n, strutHalf), to.along(n, strutHalf),
			to.along(n, -strutHalf), from.along(n, -strutHalf))
		place.r = strutHalf + 1
	case Spring:
		b.spring(m, from, to, u)
		place.r = springHalf + 1
	case Pulley:
		b.path(m.pen(ClassCable), from, to)
		b.pulley(m, to, u)
	case Weight:
		place = b.weight(m, from, to)
	case Support:
		b.support(m, from, u)
		place = anchor{kind: onDot, a: from, r: hatchLength}
	default:
		panic("figure: unknown member")
	}
	b.want(m.Label, m.pen(ClassBody), place)
}

// pen draws marks of the member.
func (m Member) pen(c Class) pen { return pen{c, m.Step, m.Name} }

// pulley draws the wheel that a cable running along u touches at to, its
// bracket, and the weight on the other side. The wheel lies below the cable,
// so that the cable keeps its true direction.
func (b *builder) pulley(m Member, to, u Point) {
	n := u.left()
	if n.Y < 0 {
		n = n.back()
	}
	centre := to.along(n, wheelRadius)
	roof := centre.along(Point{0, -1}, bracket)
	b.path(m.pen(ClassBody), centre, roof)
	b.support(m, roof, Point{0, 1})
	b.circle(pen{ClassBody, m.Step, ""}, centre, wheelRadius)
	b.circle(pen{ClassDot, m.Step, ""}, centre, 2)
	top := centre.along(Point{math.Copysign(1, u.X), 0}, wheelRadius)
	place := b.weight(m, top, top.along(Point{0, 1}, math.Max(m.Drop*b.scale, 2*wheelRadius)))
	b.want(m.Hangs, m.pen(ClassBody), place)
}

// weight draws a block on a cord.
func (b *builder) weight(m Member, from, to Point) anchor {
	b.path(m.pen(ClassCable), from, to)
	p, q := to.along(Point{1, 0}, blockWidth/2), to.along(Point{-1, 0}, blockWidth/2)
	down := Point{0, blockHeight}
	b.polygon(m.pen(ClassBody), q, p, p.add(down), q.add(down))
	return anchor{kind: onDot, a: to.along(Point{0, 1}, blockHeight/2), r: blockWidth / 2}
}

// spring draws a zig-zag between two straight ends.
func (b *builder) spring(m Member, from, to, u Point) {
	length := to.sub(from).norm()
	end := math.Min(12, length/5)
	n := u.left()
	pts := []Point{from, from.along(u, end)}
	coils := max(3, int((length-2*end)/springPitch))
	pitch := (length - 2*end) / float64(coils)
	side := 1.0
	for i := range coils {
		pts = append(pts, from.along(u, end+pitch*(float64(i)+0.5)).along(n, side*springHalf))
		side = -side
	}
	pts = append(pts, to.along(u, -end), to)
	b.path(m.pen(ClassCable), pts...)
}

// support draws a surface across u with hatching on its far side.
func (b *builder) support(m Member, at, u Point) {
	n := u.left()
	b.path(m.pen(ClassBody), at.along(n, supportHalf), at.along(n, -supportHalf))
	for d := -supportHalf + hatchApart/2; d <= supportHalf; d += hatchApart {
		p := at.along(n, d)
		b.path(m.pen(ClassHatch), p, p.along(u, -hatchLength).along(n, -hatchLength/2))
	}
}
