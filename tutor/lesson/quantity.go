package lesson

import (
	"math"
	"slices"

	"strings"

	"closingside/statics"
	"closingside/statics/expr"
)

// Route is one way to get a quantity from others.
type Route struct {
	ID        string    // names the route in a lesson; "cosine-law"
	Principle string    // what it rests on; its sentences are under "principle.<Principle>"
	Method    Method    // the way of working it belongs to
	Tree      expr.Node // the formula for this sketch, signs already chosen
}

// Formulas are the trees of q's routes, and those in other words.
func (q *Quantity) Formulas() []expr.Node {
	var all []expr.Node
	for _, r := range q.Routes {
		all = append(all, r.Tree)
	}
	return append(all, q.Aside...)
}

// Fits tells whether the route may be taken where a method is asked for.
func (r *Route) Fits(m Method) bool {
	return m == AnyMethod || r.Method == AnyMethod || r.Method == m
}

// Mistake is a wrong way to a quantity that no rewrite of a route gives, such
// as treating forces as numbers. It carries the id of its row in the catalogue.
type Mistake struct {
	Slip  string
	Tree  expr.Node
	Aside bool // looked for; no draw is refused where its value lies near another
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

// Route returns the route of q called id, or nil. It points into Routes.
func (q *Quantity) Route(id string) *Route {
	for i := range q.Routes {
		if q.Routes[i].ID == id {
			return &q.Routes[i]
		}
	}
	return nil
}

// Definition is the formula that stands for q in an equation: what it Means, or its
// first route. It panics for a given, which has neither.
func (q *Quantity) Definition() expr.Node {
	if q.Means != nil {
		return q.Means
	}
	return q.Routes[0].Tree
}

// ByInverseKey tells whether a calculator's inverse key gives q by some route, in
// the unit of angle it is set to.
func (q *Quantity) ByInverseKey() bool {
	return slices.ContainsFunc(q.Routes, func(r Route) bool { return expr.Contains(r.Tree, expr.IsInverseTrig) })
}

// TurnedToRadians tells whether q, being v degrees, comes out in radians only by
// turning it into them as a whole: a key that gives it does so by its own setting,
// but gives no direction beyond 90°.
func (q *Quantity) TurnedToRadians(v float64) bool {
	return q.IsAngle() && (!q.ByInverseKey() || q.Turns && math.Abs(v) > 90)
}

// IsSolved tells whether q is the solution of equations: of those it Solves, or of
// its Sums.
func (q *Quantity) IsSolved() bool { return q.Solves[0] != "" || q.Sums[0] != nil }

// System is the two sums that q is the solution of, the second nil where one alone
// gives it, and the other unknown.
func (l *Lesson) System(q *Quantity) (sums [2]expr.Node, other string) {
	if sums = q.Sums; sums[0] == nil {
		sums[0] = l.Quantity(q.Solves[0]).Routes[0].Tree
		if q.Solves[1] == "" {
			return sums, ""
		}
		sums[1] = l.Quantity(q.Solves[1]).Routes[0].Tree
	}
	for i := range l.Quantities {
		if o := &l.Quantities[i]; o != q && o.Solves == q.Solves && o.Sums == q.Sums {
			other = o.Name
		}
	}
	return sums, other
}

// IsSlopeAngle tells whether q is an angle found from a slope triangle.
func (q *Quantity) IsSlopeAngle() bool {
	return len(q.Routes) > 0 && q.Routes[0].ID == "slope" && q.IsAngle()
}

// WholeOf is the given force of which q is a component that is to be found; nil
// where there is none, and for a nil q.
func (l *Lesson) WholeOf(q *Quantity) *Quantity {
	if q == nil || !q.Signed || q.Given {
		return nil
	}
	whole := l.Quantity(strings.TrimRight(q.Name, "xy"))
	if whole == nil || !whole.Given || whole.Dim != statics.DimForce {
		return nil
	}
	return whole
}

// FollowsFromUnknown tells whether q is an unknown of equations or follows from
// one, as the stretch of a spring does from the force in it.
func (l *Lesson) FollowsFromUnknown(q *Quantity) bool {
	return l.FollowsFrom(q, func(q *Quantity) bool { return q.Unknown })
}

// FollowsFrom tells whether q is one of these, or is defined by one: the
// definitions are followed back to what is given or unknown.
func (l *Lesson) FollowsFrom(q *Quantity, these func(*Quantity) bool) bool {
	return l.followsWithin(mostDefinitions, q, these)
}

// mostDefinitions bounds the chain of definitions that is followed: an unknown
// force, its component, the stretch of its spring.
const mostDefinitions = 9

func (l *Lesson) followsWithin(steps int, q *Quantity, these func(*Quantity) bool) bool {
	if these(q) || q.Unknown || q.Given || steps == 0 {
		return these(q)
	}
	return expr.Contains(q.Definition(), func(n expr.Node) bool {
		s, ok := n.(expr.Sym)
		return ok && l.followsWithin(steps-1, l.Quantity(s.Name), these)
	})
}
