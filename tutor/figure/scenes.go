package figure

import (
	"math"

	"closingside/statics"
	"closingside/tutor/text"

	"gonum.org/v1/gonum/spatial/r2"
)

// Force is a force as a figure shows it.
type Force struct {
	Vec   r2.Vec // in any unit, the same for the whole figure
	Label Label  // P = 340 N
	Name  string // so that a page can find its marks

	// The angle its direction is given by: Turn from the direction Ref,
	// labelled Angle. An empty label leaves the arc out.
	Ref, Turn statics.Angle
	Angle     Label

	Rise, Run Label // the numbers of a slope triangle, where that gives the direction
	Push      bool  // drawn with its head at the point, as a thrust is
	Open      bool  // it points nobody knows where: drawn somewhere, and so that one sees it
	Hidden    bool  // its direction is not known yet, and not put into words
}

// Pair is two forces and what is known of the figure they make. Empty labels
// leave their part out, except for the resultant, which is drawn when
// Resultant has a label.
type Pair struct {
	First, Second Force
	Resultant     Label
	Direction     Label // the angle from +x to the resultant
	Between       Label // the angle between the forces, tails together
	AtTail        Label // the triangle's angle between First and the resultant
	AtJoint       Label // the triangle's angle between First and Second
	AtHead        Label // the triangle's angle between Second and the resultant

	// Through draws the x-direction through the head of First, and the two
	// angles it makes there: with First, and with Second.
	Through [2]Label
}

// Steps of the figures below.
const (
	stepAxes = iota
	stepFirst
	stepSecond
	stepHelp
	stepClose
	stepAngles
)

func axesAt(v r2.Vec, step int) Axes {
	return Axes{At: v, X: Symbol("x", ""), Y: Symbol("y", ""), Step: step}
}

func shortAxes() Axes {
	a := axesAt(r2.Vec{}, stepAxes)
	a.Short = true
	return a
}

func (f Force) arrow(tail r2.Vec, step int) Arrow {
	class := ClassForce
	if f.Open {
		class = ClassOpen
	}
	return Arrow{From: tail, To: r2.Add(tail, f.Vec), Class: class, Label: f.Label, Step: step, Name: f.Name}
}

// angle adds the arc or the slope triangle a force's direction is given by.
func (s *Scene) angle(f Force, centre r2.Vec, step int) {
	if !f.Rise.Empty() || !f.Run.Empty() {
		s.Slopes = append(s.Slopes, Slope{From: centre, To: r2.Add(centre, f.Vec),
			RunLabel: f.Run, RiseLabel: f.Rise, Step: step})
	}
	if !f.Angle.Empty() {
		s.Arcs = append(s.Arcs, Arc{Centre: centre, From: f.Ref, Turn: f.Turn, Directed: true,
			Label: f.Angle, Step: step, Name: f.Name})
	}
}

// corner adds the angle at v between the directions of two vectors.
func (s *Scene) corner(v, p, q r2.Vec, l Label, step int, name string) {
	if l.Empty() {
		return
	}
	from := directionOf(p)
	s.Arcs = append(s.Arcs, Arc{Centre: v, From: from, Turn: (directionOf(q) - from).Normalized(),
		Label: l, Step: step, Name: name})
}

// directionOf is a vector's direction; exact along the axes.
func directionOf(v r2.Vec) statics.Angle {
	switch {
	case v.Y == 0 && v.X < 0:
		return 180 * statics.Degree
	case v.Y == 0:
		return 0
	case v.X == 0:
		return statics.Angle(math.Copysign(90, v.Y)) * statics.Degree
	}
	return statics.Angle(math.Atan2(v.Y, v.X))
}

// Given shows forces at their common point with axes and the angles they are
// given by.
func Given(forces ...Force) Scene {
	s := Scene{Axes: []Axes{axesAt(r2.Vec{}, stepAxes)}, Dots: []Dot{{Step: stepAxes}}}
	for i, f := range forces {
		tail := r2.Vec{}
		if f.Push {
			tail = r2.Scale(-1, f.Vec)
		}
		s.Arrows = append(s.Arrows, f.arrow(tail, stepFirst+i))
		s.angle(f, r2.Vec{}, stepFirst+i)
	}
	s.Title, s.Desc = text.Say("figure.title.given"), describeForces("figure.given", forces)
	return s
}

// FreeBody shows the forces on a particle. A force that is a Push is drawn on
// the side it comes from, with its head at the particle; its Ref and Turn then
// give the direction of the side.
func FreeBody(forces ...Force) Scene {
	s := Given(forces...)
	s.Title, s.Desc = text.Say("figure.title.freebody"), describeForces("figure.freebody", forces)
	return s
}

// Parallelogram shows two forces tails together, the parallelogram on them and
// its diagonal, the resultant.
func Parallelogram(p Pair) Scene {
	a, b := p.First.Vec, p.Second.Vec
	sum := r2.Add(a, b)
	s := Given(p.First, p.Second)
	s.Areas = []Area{{Points: []r2.Vec{{}, a, sum, b}, Step: stepHelp}}
	s.Lines = []Line{
		{From: a, To: sum, Class: ClassConstruction, Step: stepHelp},
		{From: b, To: sum, Class: ClassConstruction, Step: stepHelp},
	}
	s.corner(r2.Vec{}, a, b, p.Between, stepAngles, "between")
	s.corner(a, r2.Scale(-1, a), b, p.AtJoint, stepAngles, "joint")
	s.corner(r2.Vec{}, a, sum, p.AtTail, stepAngles, "tail")
	s.corner(r2.Vec{}, b, sum, p.AtHead, stepAngles, "head")
	s.resultant(p, sum)
	s.Title, s.Desc = text.Say("figure.title.parallelogram"), describeParallelogram(p)
	return s
}

// HeadToTail shows the force triangle: Second starts at the head of First, and
// the resultant closes it.
func HeadToTail(p Pair) Scene {
	a, b := p.First.Vec, p.Second.Vec
	sum := r2.Add(a, b)
	s := Scene{Axes: []Axes{shortAxes()}}
	s.angle(p.First, r2.Vec{}, stepFirst)
	second := p.Second.arrow(a, stepSecond)
	second.Shift = r2.Scale(-1, a)
	s.Arrows = []Arrow{p.First.arrow(r2.Vec{}, stepFirst), second}
	s.Areas = []Area{{Points: []r2.Vec{{}, a, sum}, Step: stepClose}}
	s.through(p)
	s.corner(r2.Vec{}, a, sum, p.AtTail, stepAngles, "tail")
	s.corner(a, r2.Scale(-1, a), b, p.AtJoint, stepAngles, "joint")
	s.corner(sum, r2.Scale(-1, b), r2.Scale(-1, sum), p.AtHead, stepAngles, "head")
	s.resultant(p, sum)
	s.Title, s.Desc = text.Say("figure.title.triangle"), describeTriangle(p)
	return s
}

// resultant adds the closing side and its direction.
func (s *Scene) resultant(p Pair, sum r2.Vec) {
	if p.Resultant.Empty() {
		return
	}
	s.Arrows = append(s.Arrows, Arrow{To: sum, Class: ClassResultant, Label: p.Resultant, Step: stepClose, Name: "R"})
	if !p.Direction.Empty() {
		s.Arcs = append(s.Arcs, Arc{Turn: directionOf(sum), Directed: true, Label: p.Direction, Step: stepAngles, Name: "direction"})
	}
}

// through adds the x-direction through the head of First and the angles of
// both forces with it: the acute or obtuse ones on the sides where the
// triangle's own angle is their sum or difference.
func (s *Scene) through(p Pair) {
	if p.Through[0].Empty() && p.Through[1].Empty() {
		return
	}
	a, b := p.First.Vec, p.Second.Vec
	reach := 0.45 * math.Max(r2.Norm(a), r2.Norm(b))
	s.Lines = append(s.Lines, Line{From: r2.Vec{X: a.X - reach, Y: a.Y}, To: r2.Vec{X: a.X + reach, Y: a.Y},
		Class: ClassConstruction, Step: stepHelp})
	back := r2.Scale(-1, a)
	side := r2.Vec{X: -1}
	if a.X < 0 {
		side.X = 1
	}
	s.corner(a, side, back, p.Through[0], stepHelp, "alternate")
	s.corner(a, side, b, p.Through[1], stepHelp, "beside")
}

// Rectangular shows a force with its components along x and y, head to tail,
// and the dashed lines that project its head.
func Rectangular(f Force, x, y Label) Scene {
	s := Scene{Axes: []Axes{axesAt(r2.Vec{}, stepAxes)}, Dots: []Dot{{Step: stepAxes}}}
	s.angle(f, r2.Vec{}, stepFirst)
	foot, rise := r2.Vec{X: f.Vec.X}, r2.Vec{Y: f.Vec.Y}
	s.Lines = []Line{
		{From: f.Vec, To: foot, Class: ClassConstruction, Step: stepHelp},
		{From: f.Vec, To: rise, Class: ClassConstruction, Step: stepHelp},
	}
	s.Arrows = []Arrow{
		f.arrow(r2.Vec{}, stepFirst),
		{To: foot, Class: ClassComponent, Label: x, Step: stepHelp, Name: f.Name + "x"},
		{To: rise, Class: ClassComponent, Label: y, Step: stepHelp, Name: f.Name + "y"},
	}
	s.Title, s.Desc = text.Say("figure.title.components"), describeRectangular(f, x, y)
	return s
}

// ForcePolygon shows forces head to tail in the order given. With a label for
// the resultant, the closing side is drawn from the first tail to the last
// head; without one the polygon is left as the forces make it.
func ForcePolygon(forces []Force, resultant Label) Scene {
	s := Scene{Axes: []Axes{shortAxes()}}
	tail := r2.Vec{}
	corners := []r2.Vec{tail}
	for i, f := range forces {
		a := f.arrow(tail, stepFirst+i)
		a.Shift = r2.Scale(-1, tail)
		s.Arrows = append(s.Arrows, a)
		tail = r2.Add(tail, f.Vec)
		corners = append(corners, tail)
	}
	last := stepFirst + len(forces)
	s.Areas = []Area{{Points: corners, Step: last}}
	if !resultant.Empty() {
		s.Arrows = append(s.Arrows, Arrow{To: tail, Class: ClassResultant, Label: resultant, Step: last, Name: "R"})
	}
	s.Title, s.Desc = text.Say("figure.title.polygon"), describePolygon(forces, resultant)
	return s
}
