package lesson

import (
	"strings"

	"closingside/tutor/figure"
	"closingside/tutor/text"
)

// Kind declares a kind of problem: what its statement gives, and how that
// becomes a lesson. One file declares one kind.
type Kind struct {
	Name   string
	Groups []Group
	Build  func(*Problem) (*Lesson, error)
	Scenes func(*Lesson, Progress) []figure.Scene // what the work looks like so far

	// Situation is the picture of what the statement describes, false where
	// there is none; nil for kinds without one.
	Situation func(*Lesson) (figure.Scene, bool)
	Sketch    func(*Lesson) SketchPlan // what is sketched before calculating; nil where nothing is
	Bank      []Source                 // problems of the harbour, in teaching order

	// Draw draws a problem with new numbers, in integers. Rule names how it does
	// that (a hash of what a few seeds give), so that a link to a set tells when
	// the same seeds no longer draw the same.
	Draw func(*Draw) Source
	Rule string
}

// Title is what the kind is called on the page.
func (k *Kind) Title() string { return text.Say(k.Name + ".title") }

// Progress is what figures may show of a learner's work on a lesson.
type Progress interface {
	Found(name string) bool               // whether the entry for a quantity is right
	Done() bool                           // whether every answer is found
	Label(name string) figure.Label       // a quantity's symbol, with its value once found
	Method() Method                       // the way of working so far
	Sketched() (closed bool, order []int) // whether the sketch is closed and put away, and the order of its arrows
}

// SketchPlan is what a kind of problem has sketched before calculating: the
// forces to lay head to tail, and the quantities that the closing side shows.
type SketchPlan struct {
	Forces    []figure.Force // in any unit, the same for all
	Size      string         // the quantity that is the closing side's length, in that unit
	Direction string         // the quantity that is its direction; "" where it is not asked
}

// Group declares a list of like things a statement gives, such as its forces.
// A group of at most one thing may be written without the list; where its
// things have one field alone, that field's value stands for the thing.
type Group struct {
	Key      string
	Min, Max int
	Fields   []FieldSpec
}

// FieldSpec declares one value of a thing given.
type FieldSpec struct {
	Key      string
	Is       FieldType
	Example  string // shown where the value is missing or can't be read
	Optional bool   // may be left out: not given, or not known
	Choices  []string
}

// FieldType says how a field's text is read.
type FieldType uint8

// The types of field. A quantity is read with its unit; all but components are
// more than zero.
const (
	NameField         FieldType = iota // a short name of letters and digits
	ForceField                         // a magnitude
	ComponentField                     // a force with a sign
	DirectionField                     // as a book gives it: an angle, a slope, a bearing
	AngleField                         // an angle between 0° and 360°
	RatioField                         // a number
	LengthField                        // of a spring's stretch, say
	MassField                          // of what hangs
	StiffnessField                     // of a spring
	AccelerationField                  // of gravity
	ChoiceField                        // one of the spec's words
)

// Kinds are kinds of problem, in teaching order.
type Kinds []*Kind

// ByName returns the kind called name, or nil; it points to the kind itself.
func (ks Kinds) ByName(name string) *Kind {
	for _, k := range ks {
		if k.Name == name {
			return k
		}
	}
	return nil
}

// Names is what the kinds are called, with commas between, for a sentence.
func (ks Kinds) Names() string {
	var names []string
	for _, k := range ks {
		names = append(names, k.Name)
	}
	return strings.Join(names, ", ")
}

// Read understands a Source. An error is a *SourceError.
func (ks Kinds) Read(src Source) (*Problem, error) {
	for _, kid := range src.Kids {
		if kid.Key != "kind" {
			continue
		}
		if k := ks.ByName(kid.Text); k != nil {
			return k.Read(src)
		}
		return nil, kid.Fault("problem.kind.unknown", "got", kid.Text, "kinds", ks.Names())
	}
	return nil, src.Fault("problem.kind.missing", "kinds", ks.Names())
}
