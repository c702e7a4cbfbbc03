package figure

import (
	"closingside/statics"

	"gonum.org/v1/gonum/spatial/r2"
)

// Scene is what a figure shows, in world coordinates: y upwards, any unit. The
// lists are drawn in the order of the fields that follow. Every coordinate
// must be finite. A Step says when a part appears as the figure is built up,
// from 0; parts of one step appear together.
type Scene struct {
	Title string // a short name of the figure
	Desc  string // the figure in words, enough to work from without seeing it

	Areas   []Area
	Lines   []Line
	Axes    []Axes
	Arcs    []Arc
	Dims    []Dimension
	Slopes  []Slope
	Members []Member
	Arrows  []Arrow
	Dots    []Dot

	// Hold are points the figure makes room for. Where there are any, the scale
	// and the place of the origin depend on them and the room alone, so that
	// parts may move from one drawing to the next without anything else moving
	// (unless the labels find room in a smaller drawing only).
	Hold []r2.Vec
}

// Arrow is a straight arrow, such as a force.
type Arrow struct {
	From, To r2.Vec
	Class    Class // ClassForce, ClassResultant, ClassComponent, ...
	Label    Label
	Step     int
	Name     string // what it stands for, so that a page can find it
	Shift    r2.Vec // where it came from, relative to where it is: a force moved head to tail
}

// Line is a straight line without a head. ClassConstruction is drawn dashed,
// other classes solid.
type Line struct {
	From, To r2.Vec
	Class    Class
	Label    Label
	Step     int
}

// Arc marks an angle at Centre, from the direction From through Turn (negative
// is clockwise; whole turns are dropped). A right angle that is not Directed
// is drawn as a square.
type Arc struct {
	Centre   r2.Vec
	From     statics.Angle
	Turn     statics.Angle
	Radius   float64 // in pixels; 0 leaves it to the layout
	Directed bool    // ends in an arrowhead: an angle that has a sense
	Label    Label
	Step     int
	Name     string
}

// Axes are an x and a y axis through At, labelled at their positive ends. Their
// arms reach along the scene, unless they are to be Short.
type Axes struct {
	At    r2.Vec
	X, Y  Label
	Short bool
	Step  int
}

// Dimension is a dimension line parallel to From–To, Offset pixels to the left
// of it (negative: to the right).
type Dimension struct {
	From, To r2.Vec
	Offset   float64
	Label    Label
	Step     int
}

// Slope is the small right triangle that gives a direction by rise and run. It
// hangs on the line from From to To; RunLabel and RiseLabel name its legs.
type Slope struct {
	From, To            r2.Vec
	RunLabel, RiseLabel Label
	Step                int
}

// Dot is a point: a joint, a corner, the point of application.
type Dot struct {
	At    r2.Vec
	Label Label
	Step  int
}

// Area is a tinted polygon without an outline; labels may lie on it.
type Area struct {
	Points []r2.Vec
	Step   int
}

// Member is a part of a structure or of a free-body diagram, drawn by the
// conventions of the trade.
type Member struct {
	Kind     MemberKind
	From, To r2.Vec
	Label    Label
	Step     int
	Name     string

	Drop  float64 // Pulley: how far the weight hangs below
	Hangs Label   // Pulley: the weight's label
}

// MemberKind says how a member is drawn.
type MemberKind uint8

// The members. Cable, Strut and Spring run from From to To. Pulley is a cable
// that touches its wheel at To and holds a weight on the other side. Weight is
// a block at To on a cord from From. Support is a hatched surface at From,
// facing To.
const (
	Cable MemberKind = iota
	Strut
	Spring
	Pulley
	Weight
	Support
)
