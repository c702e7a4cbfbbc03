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

// Key is where a way of working stands among the texts: under it as a heading,
// under it and ".by" within a sentence.
func (m Method) Key() string {
	if m == ByComponents {
		return "method.components"
	}
	return "method.triangle"
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
	sharing sync.Once // of atHand: by quantity, whether it is found from the statement without a key
	atHand  []bool
}

// Way is a worked solution by one method: the routes in the order taken.
type Way struct {
	Method Method
	Steps  []Step
}

// Step is one step of a Way: a quantity and the route that finds it.
type Step struct{ Quantity, Route string }

// Quantity returns the quantity called name, or nil. It points into Quantities.
func (l *Lesson) Quantity(name string) *Quantity {
	if i, ok := l.index[name]; ok {
		return &l.Quantities[i]
	}
	return nil
}

// Truth is the environment of true values, an expr.Env: NaN for an unknown name.
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

// UnitOf is the unit in which q's values are kept: the lesson's for forces, degrees
// for angles, otherwise q's own; one of factor 1 without a symbol for a ratio.
func (l *Lesson) UnitOf(q *Quantity) statics.Unit {
	switch q.Dim {
	case statics.DimAngle:
		return AngleUnit
	case statics.DimForce:
		return l.Unit
	}
	if q.Unit.Factor != 0 {
		return q.Unit
	}
	return statics.Unit{Dim: q.Dim, Factor: 1}
}

// AngleUnit is the unit of every angle in a lesson, the degree.
var AngleUnit, _ = statics.UnitBySymbol("deg")

// Say is text.Say with the lesson's symbols filled in: "{gamma}" becomes γ and
// "{F1}" the first force's own name.
func (l *Lesson) Say(key string, holes ...string) string {
	l.naming.Do(func() {
		for i := range l.Quantities {
			l.symbols = append(l.symbols, l.Quantities[i].Name, l.SymbolText(l.Quantities[i].Name))
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
			symbols = append(symbols, l.SymbolText(q.Name))
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

// Places tells where each quantity stands in Quantities, by name. It is the
// lesson's own index, not to be written to.
func (l *Lesson) Places() map[string]int { return l.index }

// Find is Quantity while a kind still declares them, before there is an index; it
// panics on an unknown name.
func (l *Lesson) Find(name string) *Quantity {
	for i := range l.Quantities {
		if l.Quantities[i].Name == name {
			return &l.Quantities[i]
		}
	}
	panic("lesson: no quantity called " + name)
}

// seal builds the index once the kind has declared all quantities.
func (l *Lesson) seal() *Lesson {
	l.index = make(map[string]int, len(l.Quantities))
	for i, q := range l.Quantities {
		l.index[q.Name] = i
		l.Quantities[i].Also = math.NaN()
	}
	return l
}

// tie ties two lessons of one problem together.
func (l *Lesson) tie(other *Lesson) {
	l.Other, other.Other = other, l
	for i := range l.Quantities {
		a, b := &l.Quantities[i], other.Quantity(l.Quantities[i].Name)
		if b != nil && !(a.Distance(a.True, b.True) <= 1e-9*math.Max(1, math.Abs(a.True))) {
			a.Also, b.Also = b.True, a.True
		}
	}
}
