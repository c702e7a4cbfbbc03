package figure

import (
	"closingside/statics"

	"gonum.org/v1/gonum/spatial/r2"
)

// Drawing is a finished figure. Coordinates are CSS pixels, y downwards,
// rounded to a tenth.
type Drawing struct {
	Title, Desc   string
	Width, Height float64
	Text          float64 // the size of its text, in pixels
	Scale         float64 // pixels for a unit of the world
	Origin        Point   // where the world's origin lies
	Steps         int     // one more than the largest Step
	Marks         []Mark
	Cost          Cost
}

// FromWorld is the place of a world point on the page.
func (d *Drawing) FromWorld(v r2.Vec) Point {
	return Point{d.Origin.X + float64(v.X*d.Scale), d.Origin.Y - float64(v.Y*d.Scale)}
}

// Cost says what a placement had to give up. The layout makes Total as small
// as its search finds; Overlaps is counted on the finished drawing.
type Cost struct {
	Overlaps  int     // labels that touch another label, a stroke or the frame
	Leaders   int     // labels tied to their part by a leader
	Crossings int     // strokes crossed by leaders, an arrow counted three times
	Stage     int     // how many attempts failed before: from 2 on, the geometry is drawn smaller
	Total     float64 // sum of the chosen places' costs
}

// Mark is one thing to draw.
type Mark struct {
	Shape  Shape
	Class  Class
	Step   int
	Name   string  // of the part it belongs to; may be empty
	Points []Point // see Shape
	Radius float64 // of a Circle or ArcPath
	CCW    bool    // ArcPath: runs counter-clockwise as seen
	Label  Label   // Text
	Box    Box     // Text: the room it needs
	Shift  Point   // where it came from, relative to where it is
}

// Shape says how the points of a mark are to be read.
type Shape uint8

// The shapes. Path is an open polyline, Polygon a closed one, Head a filled
// arrowhead that begins with its tip; Circle has its centre as its only point;
// ArcPath, never more than a third of a circle, has its
// two ends; Text has one point, the middle of its baseline.
const (
	Path Shape = iota
	Polygon
	Head
	Circle
	ArcPath
	Text
)

// Class says what a mark stands for. It decides how the mark looks, and no
// class differs from another by colour alone.
type Class uint8

// The classes.
const (
	ClassForce        Class = iota // heavy line, filled head
	ClassResultant                 // double line, larger head
	ClassComponent                 // heavy dashed line, filled head
	ClassConstruction              // thin dashed line
	ClassAxis                      // thin line, small head
	ClassArc                       // thin curve
	ClassDimension                 // thin line with heads
	ClassArea                      // tint
	ClassBody                      // outline of a body
	ClassCable                     // medium line
	ClassHatch                     // hatching of a support
	ClassDot                       // small filled circle
	ClassLeader                    // thin line from a label to its part
	ClassLearner                   // what the learner drew
	ClassOpen                      // a force that points nobody knows where
	classes
)

var classNames = [classes]string{"force", "resultant", "component", "construction", "axis", "arc",
	"dimension", "area", "body", "cable", "hatch", "dot", "leader", "learner", "open"}

// String is the class's name: one lower-case word, fit for a style sheet.
func (c Class) String() string {
	if c >= classes {
		panic("figure: unknown class")
	}
	return classNames[c]
}

// Classes lists every class.
func Classes() []Class {
	all := make([]Class, classes)
	for i := range all {
		all[i] = Class(i)
	}
	return all
}

// Weight is the width of a class's strokes in pixels. The style sheet must not
// draw them wider.
func (c Class) Weight() float64 {
	switch c {
	case ClassForce, ClassComponent, ClassLearner, ClassOpen:
		return 2.2
	case ClassCable, ClassBody, ClassResultant:
		return 1.6
	default:
		return 1
	}
}

// head is the length and half the breadth of a class's arrowhead in pixels.
func (c Class) head() (length, half float64) {
	switch c {
	case ClassResultant:
		return 14, 6
	case ClassAxis, ClassArc, ClassDimension:
		return 7.5, 2.6
	default:
		return 11.5, 4.2
	}
}

// heading is the direction on the page of a world angle.
func heading(a statics.Angle) Point {
	sin, cos := a.Sincos()
	return Point{cos, -sin}
}
