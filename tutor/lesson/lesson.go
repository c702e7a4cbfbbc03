package lesson

import (
	"math"
	"slices"
	"strings"
	"sync"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/figure"
	"closingside/tutor/text"
)

// Method says which way of working a route belongs to. A learner may mix
// them; a setting may ask for one.
type Method uint8

// The methods.
const (
	AnyMethod Method = iota
	ByTriangle
	ByComponents
)

// Route is one way to get a quantity from others.
type Route struct {
	ID        string    // names the route in a lesson; "cosine-law"
	Principle string    // what it rests on; its sentences are under "principle.<Principle>"
	Method    Method    // the way of working it belongs to
	Tree      expr.Node // the formula for this sketch, signs already chosen
}

// Fits tells whether the route may be taken where a method is asked for.
func (r *Route) Fits(m Method) bool {
	return m == AnyMethod || r.Method == AnyMethod || r.Method == m
}

// Mistake is a wrong way to a quantity that no rewrite of a route gives, such
// as treating forces as numbers. It carries the id of its row in the catalogue.
type Mistake struct {
	Slip string
	Tree expr.Node
}

// Quantity is a value of the lesson: a given, or one the learner may enter.
// Values are in Lesson.Unit for forces, in degrees for angles and in Unit for
// the rest.
type Quantity struct {
	Name     string      // canonical ASCII name: "gamma"
	Symbol   expr.Symbol // as printed: γ
	Dim      statics.Dimension
	Given    bool         // stated by the problem, never asked
	Answer   bool         // what the problem asks for; all others are intermediates
	Turns    bool         // a direction: values that differ by 360° are the same
	Look     string       // which of the kind's sentences says where to look for it; "" is its own
	Unit     statics.Unit // of a quantity that is neither force nor angle
	True     float64      // from the vector solution; NaN where there is none
	Also     float64      // its value in the other solution; NaN where there is none, or the same
	Routes   []Route      // the first is the one a worked solution takes
	Onward   []expr.Node  // ways on from what is entered that nobody takes in the head
	Mistakes []Mistake    // route-bound wrong ways
	Aside    []expr.Node  // its routes in other words, for the slips made in those alone

	// How the quantity stands to others, for the rules that exchange one for
	// another. Empty where there is no such other.
	Twin       string          // the same thing of the other force: F1 for F2
	Supplement string          // the angle it is taken for by mistake: phi for gamma
	Signed     bool            // a component: its sign tells its sense
	Mate       string          // of a component: that of the same force along the other axis
	Mass       string          // of a weight: the mass it is the weight of
	Gravity    expr.Node       // of a weight: the acceleration it comes from
	Heading    statics.Heading // of a direction given: as the statement gives it
	Reeved     bool            // the tension of a cable that runs over a pulley

	// Equation tells a sum that is zero: its routes write the sum out, its true
	// value is zero, and what is entered for it is an equation. Unknown tells
	// what stands for itself in one.
	Equation bool
	Unknown  bool
	Means    expr.Node    // what it is in an equation, where that is not its first route
	Solves   [2]string    // the equations whose solution it is; the second "" where one alone does, both where none
	Sums     [2]expr.Node // or the sums, zero along x and along y, that are no entries themselves

	// Between are the values a sketch shows it to lie between (from the first
	// counter-clockwise to the second, for a direction); nil where none.
	Between [2]expr.Node
}

// Lesson is a problem with everything that is true of it.
type Lesson struct {
	Kind       *Kind
	Problem    *Problem
	Unit       statics.Unit // of every force in the lesson
	Senses     string       // how the directions given are to be taken, where the kind's sentence leaves a place for it
	Asks       string       // which of the kind's sentences says what is asked; "" is "asked"
	Quantities []Quantity   // givens first, then in the order a solution meets them
	Ways       []Way        // the worked solution, one Way for each method
	Other      *Lesson      // the other solution, where the statement allows two
	Case       string       // which of two solutions this is; names the kind's sentence
	Assumed    []string     // what the statement leaves unsaid, in sentences
	Words      []string     // what else the kind's sentences leave places for: its name, and what stands there

	index   map[string]int
	naming  sync.Once // of symbols: each quantity's, and its symbol in plain text
	symbols []string
}

// Way is a worked solution by one method: the routes in the order taken.
type Way struct {
	Method Method
	Steps  []Step
}

// Step is one step of a Way: a quantity and the route that finds it.
type Step struct{ Quantity, Route string }

// Quantity returns the quantity called name, or nil.
func (l *Lesson) Quantity(name string) *Quantity {
	if i, ok := l.index[name]; ok {
		return &l.Quantities[i]
	}
	return nil
}

// Route returns the route of q called id, or nil.
func (q *Quantity) Route(id string) *Route {
	for i := range q.Routes {
		if q.Routes[i].ID == id {
			return &q.Routes[i]
		}
	}
	return nil
}

// Truth is the environment of true values.
func (l *Lesson) Truth(name string) float64 {
	if q := l.Quantity(name); q != nil {
		return q.True
	}
	return math.NaN()
}

// Symbol is the naming under which the lesson's formulas are printed.
func (l *Lesson) Symbol(name string) expr.Symbol {
	if q := l.Quantity(name); q != nil {
		return q.Symbol
	}
	return expr.Symbol{Letter: name, Spoken: name}
}

// UnitOf is the unit in which q's values are kept.
func (l *Lesson) UnitOf(q *Quantity) statics.Unit {
	switch q.Dim {
	case statics.DimAngle:
		return Degree
	case statics.DimForce:
		return l.Unit
	}
	if q.Unit.Factor != 0 {
		return q.Unit
	}
	return statics.Unit{Dim: q.Dim, Factor: 1}
}

// Degree is the unit of every angle in a lesson.
var Degree, _ = statics.UnitBySymbol("deg")

// Say is text.Say with the lesson's symbols filled in: "{gamma}" becomes γ and
// "{F1}" the first force's own name.
func (l *Lesson) Say(key string, holes ...string) string {
	l.naming.Do(func() {
		for i := range l.Quantities {
			l.symbols = append(l.symbols, l.Quantities[i].Name, l.Plain(l.Quantities[i].Name))
		}
	})
	return text.Say(key, slices.Concat(holes, l.Words, l.symbols)...)
}

// Task is what the problem asks for, and how it is to be worked.
func (l *Lesson) Task() string {
	return strings.Join(append([]string{l.Question()}, l.Conditions()...), " ")
}

// Question is the kind's own sentence on what is asked.
func (l *Lesson) Question() string {
	key := "asked"
	if l.Asks != "" {
		key = l.Asks
	}
	return l.Say(l.Kind.Name+"."+key, "answers", l.answers(), "senses", l.Senses)
}

// Sentence returns the kind's own sentence for a quantity: what names it in
// the trade's words ("what"), or where to look for it ("look"). How a direction
// is to be reported is said behind what it is; a kind leaves that out.
func (l *Lesson) Sentence(q *Quantity, part string) string {
	of := q.Name + "." + part
	if part == "look" && q.Look != "" {
		of = part + "." + q.Look
	}
	s := l.Say(l.Kind.Name + "." + of)
	switch {
	case part != "what" || !q.Turns || q.Given:
	case q.IsReported():
		s += ", " + l.Problem.Settings.Direction.Say("what")
	default:
		s += ", " + Reference{}.Say("what")
	}
	return s
}

// answers lists the symbols of what the problem asks for.
func (l *Lesson) answers() string {
	var symbols []string
	for i := range l.Quantities {
		if q := &l.Quantities[i]; q.Answer {
			symbols = append(symbols, l.Plain(q.Name))
		}
	}
	return text.List(symbols)
}

// Wanted lists what a learner may enter: every quantity but the givens.
func (l *Lesson) Wanted() []*Quantity {
	var all []*Quantity
	for i := range l.Quantities {
		if q := &l.Quantities[i]; !q.Given {
			all = append(all, q)
		}
	}
	return all
}

// Situation is the picture of what the statement describes, false where there
// is none.
func (l *Lesson) Situation() (figure.Scene, bool) {
	if l.Kind.Situation == nil {
		return figure.Scene{}, false
	}
	return l.Kind.Situation(l)
}

// Places tells where each quantity stands in Quantities, by name.
func (l *Lesson) Places() map[string]int { return l.index }

// Find is Quantity before the index is built; it panics on an unknown name.
func (l *Lesson) Find(name string) *Quantity {
	for i := range l.Quantities {
		if l.Quantities[i].Name == name {
			return &l.Quantities[i]
		}
	}
	panic("lesson: no quantity called " + name)
}

// seal builds the index; a kind calls it once all quantities are declared.
func (l *Lesson) seal() *Lesson {
	l.index = make(map[string]int, len(l.Quantities))
	for i, q := range l.Quantities {
		l.index[q.Name] = i
		l.Quantities[i].Also = math.NaN()
	}
	return l
}

// Apart is the distance from a to b in q's unit: around the circle for a
// direction, plain otherwise.
func (q *Quantity) Apart(a, b float64) float64 {
	d := math.Abs(a - b)
	if q.Dim == statics.DimAngle {
		d = math.Abs(WithinTurn(a - b))
	}
	return d
}

// tie ties two lessons of one problem together.
func (l *Lesson) tie(other *Lesson) {
	l.Other, other.Other = other, l
	for i := range l.Quantities {
		a, b := &l.Quantities[i], other.Quantity(l.Quantities[i].Name)
		if b != nil && !(a.Apart(a.True, b.True) <= 1e-9*math.Max(1, math.Abs(a.True))) {
			a.Also, b.Also = b.True, a.True
		}
	}
}
