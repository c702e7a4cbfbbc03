package entry

import (
	"math"
	"slices"
	"strings"
	"unicode/utf8"

	"closingside/statics"
	"closingside/statics/expr"
)

// Scope is what the reader knows of the place an entry is written in.
type Scope struct {
	Dim  statics.Dimension // asked
	Unit statics.Unit      // of a number without one
	// Force is the problem's unit of force: values of names, and numbers with
	// a unit inside an expression, are in it.
	Force    statics.Unit
	Others   []statics.Unit // in which numbers of other dimensions are worked
	Words    *Vocabulary    // nil where nothing has a name
	Known    expr.Env       // values usable now; NaN for the rest
	Unknowns []string       // names that may stand in affine forms and equations
	Asked    string         // may not be used in its own entry, but for "R = 682.6 N"
	// Dims tells what a name measures; it may be nil.
	Dims         func(name string) (statics.Dimension, bool)
	Direction    bool   // "30° below −x" will do as well
	Things       Things // from which a direction may be told
	NumbersOnly  bool
	UnitRequired bool     // behind a plain number
	Equation     bool     // an equation is asked, not a value
	Equations    []string // the names of those that the lesson asks
}

// Form is the form an entry has.
type Form uint8

// The forms.
const (
	Number     Form = iota // 682.6 N
	Expression             // 2·340·cos 87°
	Affine                 // 118° − θ
	Equation               // T1 cos 40 − T2 cos 30 = 0
	Direction              // 30° below −x
)

// String names the form in lower case.
func (f Form) String() string {
	return [...]string{"number", "expression", "affine", "equation", "direction"}[f]
}

// Reading is what an entry says.
type Reading struct {
	Form Form
	// Value is in Scope.Unit, degrees for an angle. It is NaN for an equation,
	// and for an affine form whose unknown has no value yet.
	Value float64
	// Halves are half a unit of the last digit of a number, in the unit of
	// Value: one for each digit that may be the last, finest first. Final
	// zeros of a whole number may only hold the place, but for an angle. Empty where the value
	// is not a number as typed.
	Halves      []float64
	Digits      int    // significant digits of a number, final zeros counted
	Decimals    int    // its digits behind the decimal point
	Unit        string // the unit written, or Scope.Unit's
	UnitWritten bool
	// Tree is the entry as read, worked in Unit (in degrees for an angle).
	// Right is the other side of an equation.
	Tree, Right expr.Node
	Unequal     *Error // what is wrong where the sides of an equation measure different things; nil where nothing is
	// An affine form is Const + Coef·In, in degrees for an angle.
	Const, Coef float64
	In          string
	Literals    []Literal
	Heading     statics.Heading // of a direction, from the thing as if that were +x
	From        string          // the thing given that it was told from; "" for an axis
	Open        bool            // a direction above or below an axis, of which it is not told which end
	Sideless    bool            // a direction told from a thing given, and not to which side of it
	Bare        bool            // a direction of which the sense is told, and not from what: 20° clockwise
}

// Literal is a number inside an entry, known to the digit it was typed to.
// Exact ones, such as a raised 2, are left out.
type Literal struct {
	Value, Half float64 // of the node, degrees for an angle
	Coarse      float64 // half a unit of the last digit before its final zeros: of the 8 in 1180
	Digits      int
	Decimals    int
	Site        int  // in Tree, or in Right
	Right       bool // of an equation
}

// Read reads what a learner wrote. Beside an error the Reading still holds the
// tree where one could be made, so that it can be shown.
func Read(s string, sc Scope) (Reading, *Error) {
	r, err := read(s, sc)
	if err == nil || !sc.Direction || utf8.RuneCountInString(s) > maxRunes {
		return r, err
	}
	p, headingErr := readHeading(s, sc.Things)
	switch {
	case headingErr == nil && p.worded():
		return p.directed(), nil
	case speaksOfDirection(s), strings.HasPrefix(err.Key, "entry.unknown-") && slices.Contains(compass, headingWords[foldWord(err.Args[1])]):
		return r, headingErr
	}
	return r, err
}

// worded reports whether a direction is told in words, not by a number alone.
func (p *headingParser) worded() bool {
	return slices.ContainsFunc(p.items, func(i item) bool { return i.word != "" && i.word != "+" && i.word != "-" })
}

func (p *headingParser) directed() Reading {
	v, n := (p.base + p.found.Angle()).Degrees(), p.number()
	return Reading{Form: Direction, Value: v, Halves: n.halves(), Digits: n.digits, Decimals: n.decimals,
		Unit: "deg", UnitWritten: true, Tree: expr.Deg(v), Heading: p.found, From: p.from, Bare: p.bare, Open: p.open, Sideless: p.side}
}

func read(s string, sc Scope) (r Reading, err *Error) {
	defer rescue(&err)
	r.Value = math.NaN()
	if sc.Words == nil {
		sc.Words = noNames
	}
	tokens := lex(s, sc.Words, sc.Dim == statics.DimAngle)
	if sc.Equation {
		r.relation(tokens, &sc)
		return r, nil
	}
	if left, right, ok := sides(tokens, &sc); ok {
		r.equation(left, right, &sc)
	} else {
		left = once(left)
		doubtful(left, []rune(s))
		halfBehind(left, &sc)
		ranged(left)
		r.single(left, &sc)
	}
	return r, nil
}

// all = sum end
func (p *parser) all() expr.Node {
	n := p.sum()
	if t := p.peek(); t.kind != tEnd {
		p.misplaced(t)
	}
	return n
}

// equation reads the two sides of an equation.
func (r *Reading) equation(left, right []token, sc *Scope) {
	r.Form = Equation
	r.side(left, false, sc)
	r.side(right, true, sc)
	if sc.NumbersOnly {
		left[0].through(right[len(right)-1].span).fail("numbers-only")
	}
}

// single reads a value.
func (r *Reading) single(tokens []token, sc *Scope) {
	unit, rest := trailingUnit(tokens, sc)
	p := parser{tokens: rest, scope: sc}
	tree := p.all()
	if unit != nil && unit.unit.Dim == statics.DimAngle {
		tree = p.scaled(tree, *unit)
	}
	whole := tokens[0].through(tokens[max(0, len(tokens)-2)].span)
	r.Tree, r.Form, r.Unit = tree, Expression, sc.Unit.Symbol
	r.Literals = p.literals(tree, false)
	if unit != nil {
		r.Unit = unit.unit.Symbol
	}
	r.UnitWritten = slices.ContainsFunc(tokens, func(t token) bool { return t.kind == tUnit && t.unit.Dim == sc.Dim })
	factor := p.factor(unit, r.UnitWritten)
	r.number(p.leaves, factor)
	p.checkNames()
	if sc.NumbersOnly && r.Form != Number {
		whole.fail("numbers-only")
	}
	p.checkDimension(tree, unit, whole)
	if sc.Dim == statics.DimAngle && !r.UnitWritten && partOfPi(tree) {
		p.doubts(whole, "radians")
	}
	if p.doubt != nil {
		panic(p.doubt)
	}
	if sc.UnitRequired && r.Form == Number && !r.UnitWritten && sc.Dim != statics.DimRatio {
		whole.fail("unit-required", "unit", unitText(sc.Unit))
	}
	if name, typed := p.unknown(); name != "" {
		r.affine(name, typed, sc.Known, factor, whole)
		return
	}
	if r.Value = expr.Eval(tree, sc.Known) * factor; math.IsNaN(r.Value) || math.IsInf(r.Value, 0) {
		p.undefined(tree, whole)
	}
	if r.Form == Number && sc.Dim == statics.DimAngle && len(r.Halves) > 0 {
		r.Halves = r.Halves[:1] // an angle's zero is arbitrary: 140° is known as 141° is
		r.decimal()
	}
}
