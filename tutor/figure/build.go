package figure

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// builder turns a scene into marks and strokes at one scale. The world's origin
// lies at the page's until the whole is moved into its frame.
type builder struct {
	scene   *Scene
	scale   float64
	text    float64
	world   Box // what the scene holds, in pixels, y downwards
	radii   []float64
	marks   []Mark
	strokes []stroke
	wants   []want
	ink     Box
	origin  Point
	owner   int // of the part being drawn; 0 for none
	shaft   bool
}

// pen is what all marks of a part share: what they are for, the step from which
// they show, and the name of what they stand for ("" for nothing).
type pen struct {
	class Class
	step  int
	name  string
}

// mark is a mark drawn with the pen.
func (p pen) mark(shape Shape, pts ...Point) Mark {
	return Mark{Shape: shape, Class: p.class, Step: p.step, Name: p.name, Points: pts}
}

// want is a label that asks for a place beside its part.
type want struct {
	label  Label
	pen    pen
	w, h   float64
	owner  int
	anchor anchor
}

func (b *builder) at(v r2.Vec) Point {
	return Point{float64(v.X * b.scale), -float64(v.Y * b.scale)}
}

// build draws every part of the scene.
func build(s *Scene, scale, text float64) *builder {
	b := &builder{scene: s, scale: scale, text: text, ink: nobox}
	b.world = nobox
	for _, v := range worldPoints(s) {
		b.world = b.world.hold(b.at(v))
	}
	b.radii = b.planArcs()
	for _, a := range s.Areas {
		b.area(a)
	}
	for _, l := range s.Lines {
		b.next()
		from, to := b.at(l.From), b.at(l.To)
		b.path(pen{l.Class, l.Step, ""}, from, to)
		b.want(l.Label, pen{l.Class, l.Step, ""}, anchor{kind: onLine, a: from, b: to, r: l.Class.Weight() / 2})
	}
	for _, a := range s.Axes {
		b.axes(a)
	}
	for i, a := range s.Arcs {
		b.arc(a, b.radii[i])
	}
	for _, d := range s.Dims {
		b.dimension(d)
	}
	for _, sl := range s.Slopes {
		b.slope(sl)
	}
	for _, m := range s.Members {
		b.member(m)
	}
	for _, under := range [...]bool{true, false} { // what coincides with a resultant is drawn inside it
		for _, a := range s.Arrows {
			if (a.Class == ClassResultant) == under {
				b.force(a)
			}
		}
	}
	for _, d := range s.Dots {
		b.next()
		b.circle(pen{ClassDot, d.Step, ""}, b.at(d.At), 3)
		b.want(d.Label, pen{ClassDot, d.Step, ""}, anchor{kind: onDot, a: b.at(d.At)})
	}
	return b
}

// force draws an arrow of the scene and asks for its label.
func (b *builder) force(a Arrow) {
	b.next()
	from, to := b.at(a.From), b.at(a.To)
	first := len(b.marks)
	p := pen{a.Class, a.Step, a.Name}
	b.shaft = true
	b.arrow(p, from, to)
	b.shaft = false
	for i := range b.marks[first:] {
		b.marks[first+i].Shift = b.at(a.Shift)
	}
	half := a.Class.Weight() / 2
	if a.Class == ClassResultant {
		half += doubleHalf
	}
	b.want(a.Label, p, anchor{kind: onArrow, a: from, b: to, r: half})
}

// next starts a new part.
func (b *builder) next() { b.owner++ }

func (b *builder) want(l Label, p pen, a anchor) {
	if l.Empty() {
		return
	}
	w, h := l.extent(b.text)
	b.wants = append(b.wants, want{l, p, w, h, b.owner, a})
}

// worldPoints lists the points a scene has to hold: those it names, or else
// those of its parts.
func worldPoints(s *Scene) []r2.Vec {
	if len(s.Hold) > 0 {
		return s.Hold
	}
	var all []r2.Vec
	for _, a := range s.Areas {
		all = append(all, a.Points...)
	}
	for _, l := range s.Lines {
		all = append(all, l.From, l.To)
	}
	for _, a := range s.Axes {
		all = append(all, a.At)
	}
	for _, a := range s.Arcs {
		all = append(all, a.Centre)
	}
	for _, d := range s.Dims {
		all = append(all, d.From, d.To)
	}
	for _, m := range s.Members {
		all = append(all, m.From, m.To, r2.Vec{X: m.To.X, Y: m.To.Y - m.Drop})
	}
	for _, a := range s.Arrows {
		all = append(all, a.From, a.To)
	}
	for _, d := range s.Dots {
		all = append(all, d.At)
	}
	return all
}

// path draws an open polyline, which labels keep off.
func (b *builder) path(p pen, pts ...Point) {
	b.marks = append(b.marks, p.mark(Path, pts...))
	b.keepOff(p.class.Weight()/2, pts...)
}

// polygon draws a closed polygon, whose edges labels keep off.
func (b *builder) polygon(p pen, pts ...Point) {
	b.marks = append(b.marks, p.mark(Polygon, pts...))
	b.keepOff(p.class.Weight()/2, pts...)
	b.keepOff(p.class.Weight()/2, pts[len(pts)-1], pts[0])
}

// circle draws a circle. Labels keep off a polygon around it.
func (b *builder) circle(p pen, centre Point, r float64) {
	m := p.mark(Circle, centre)
	m.Radius = r
	b.marks = append(b.marks, m)
	const sides = 12
	out := r / math.Cos(math.Pi/sides)
	last := centre.along(Point{1, 0}, out)
	for i := 1; i <= sides; i++ {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / sides)
		next := centre.along(Point{cos, sin}, out)
		b.keepOff(p.class.Weight()/2, last, next)
		last = next
	}
}

// keepOff records ink.
func (b *builder) keepOff(half float64, pts ...Point) {
	for i, p := range pts {
		b.ink = b.ink.hold(Point{p.X - half, p.Y - half}).hold(Point{p.X + half, p.Y + half})
		if i > 0 {
			b.strokes = append(b.strokes, stroke{pts[i-1], p, half, b.owner, b.shaft})
		}
	}
}

// doubleHalf is half the distance between the two lines of a resultant's shaft.
const doubleHalf = 2.6

// arrow draws a shaft and its head. A short arrow gets a shorter head, so that
// its length stays true.
func (b *builder) arrow(p pen, from, to Point) {
	d := to.sub(from)
	u, ok := d.unit()
	if !ok {
		b.circle(pen{ClassDot, p.step, ""}, from, 2)
		return
	}
	length, half := p.class.head()
	if most := 0.62 * d.norm(); length > most {
		half *= math.Max(most/length, 0.5)
		length = most
	}
	neck := to.along(u, -length)
	if neck = neck.along(u, length*0.2); p.class == ClassResultant {
		n := u.left()
		b.polygon(p, from.along(n, doubleHalf), neck.along(n, doubleHalf), neck.along(n, -doubleHalf), from.along(n, -doubleHalf))
	} else {
		b.path(p, from, neck)
	}
	b.head(p, to, u, length, half)
}

// head draws a filled arrowhead with its tip at tip.
func (b *builder) head(p pen, tip, u Point, length, half float64) {
	neck := tip.along(u, -length)
	left, right := neck.along(u.left(), half), neck.along(u.left(), -half)
	b.marks = append(b.marks, p.mark(Head, tip, left, right))
	b.keepOff(0, tip, left, right, tip)
}

func (b *builder) area(a Area) {
	pts := make([]Point, len(a.Points))
	for i, v := range a.Points {
		pts[i] = b.at(v)
	}
	b.marks = append(b.marks, pen{ClassArea, a.Step, ""}.mark(Polygon, pts...))
}

// Lengths of an axis beyond what it has to show, and at least, in pixels.
const (
	axisBeyond = 16
	axisLeast  = 34
	axisStub   = 12
	axisHeld   = 14  // where the room is fixed: with axisBeyond less than topRoom
	axisPart   = 0.7 // of the scene's reach on that side
)

// axes draws two axes. A positive arm reaches as far as the scene; a negative
// one only where the scene lies on its side.
func (b *builder) axes(a Axes) {
	o := b.at(a.At)
	for i, l := range [...]Label{a.X, a.Y} {
		b.next()
		u := [...]Point{{1, 0}, {0, -1}}[i]
		plus, minus := b.world.Max.X-o.X, o.X-b.world.Min.X
		if i == 1 {
			plus, minus = o.Y-b.world.Min.Y, b.world.Max.Y-o.Y
		}
		if a.Short {
			plus, minus = 0, 0
		}
		least := float64(axisLeast)
		if len(b.scene.Hold) > 0 { // nothing makes room for longer ones
			least = axisHeld
		}
		plus = max(axisPart*plus, least, b.arcOn(a, u)) + axisBeyond
		minus = max(axisPart*minus, b.arcOn(a, u.back())) + axisStub
		tip := o.along(u, plus)
		_, half := ClassAxis.head()
		b.arrow(pen{ClassAxis, a.Step, ""}, o.along(u, -minus), tip)
		b.want(l, pen{ClassAxis, a.Step, ""}, anchor{kind: onTip, a: o, b: tip, r: half})
	}
}

// arcOn is the largest radius of the arcs that begin or end on an axis's arm.
func (b *builder) arcOn(a Axes, u Point) float64 {
	most := 0.0
	for i, arc := range b.scene.Arcs {
		if arc.Centre == a.At && (heading(arc.From).dot(u) > 1-1e-9 || heading(arc.From+arc.turn()).dot(u) > 1-1e-9) {
			most = max(most, b.radii[i])
		}
	}
	return most
}

// dimension draws a dimension line, its heads and its extension lines.
func (b *builder) dimension(d Dimension) {
	b.next()
	from, to := b.at(d.From), b.at(d.To)
	u, ok := to.sub(from).unit()
	if !ok {
		return
	}
	n := u.left()
	p, q := from.along(n, d.Offset), to.along(n, d.Offset)
	side := math.Copysign(1, d.Offset)
	b.path(pen{ClassDimension, d.Step, ""}, from.along(n, 3*side), p.along(n, 4*side))
	b.path(pen{ClassDimension, d.Step, ""}, to.along(n, 3*side), q.along(n, 4*side))
	b.path(pen{ClassDimension, d.Step, ""}, p, q)
	length, half := ClassDimension.head()
	length = math.Min(length, 0.4*q.sub(p).norm())
	b.head(pen{ClassDimension, d.Step, ""}, q, u, length, half)
	b.head(pen{ClassDimension, d.Step, ""}, p, u.back(), length, half)
	b.want(d.Label, pen{ClassDimension, d.Step, ""}, anchor{kind: onLine, a: p, b: q, r: 3})
}

// slopeLength is the hypotenuse of a slope triangle in pixels.
const slopeLength = 46

// slope draws the legs of a slope triangle below or above its line: the run
// level, the rise upright, each with its number.
func (b *builder) slope(s Slope) {
	b.next()
	from, to := b.at(s.From), b.at(s.To)
	u, ok := to.sub(from).unit()
	if !ok {
		return
	}
	long := math.Min(slopeLength, 0.6*to.sub(from).norm())
	mid := from.lerp(to, 0.55)
	p, q := mid.along(u, -long/2), mid.along(u, long/2)
	corner := Point{q.X, p.Y}
	b.path(pen{ClassDimension, s.Step, ""}, p, corner)
	b.want(s.RunLabel, pen{ClassDimension, s.Step, ""}, anchor{kind: onLine, a: p, b: corner, r: 0.5})
	b.next()
	b.path(pen{ClassDimension, s.Step, ""}, corner, q)
	b.want(s.RiseLabel, pen{ClassDimension, s.Step, ""}, anchor{kind: onLine, a: corner, b: q, r: 0.5})
}
