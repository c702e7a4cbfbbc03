package tutor

import (
	"closingside/statics"
	"closingside/statics/expr"
)

// Scope says how much of the work a slip touches.
type Scope uint8

// The scopes.
const (
	AtSite   Scope = iota // one place of one formula
	InStep                // every place of one formula, as a calculator's mode does
	InAnswer              // the value as written down
	InKind                // a wrong way that the kind of problem declares (Mistake)
)

// Slip is a row of the catalogue: a common mistake as a rewrite.
//
// Rule returns what stands at node n when the slip is made there; for InStep,
// n is the whole formula. Written returns the values written down instead of
// v. InKind rows have neither: their trees are declared beside the quantity.
type Slip struct {
	ID      string
	Scope   Scope
	Prior   float64 // weight among slips, before any value is seen
	Rule    func(c *context, n expr.Node) []expr.Node
	Written func(c *context, v float64) []float64
	Lone    bool // too rare to be thought of together with another

	alone []string // ID, as a list
}

// context is what a rule may ask about the place it is applied to.
type context struct {
	lesson   *Lesson
	quantity *Quantity // whose formula, or whose value
	site     int       // where in the formula
}

// atRoot tells whether the place is the whole formula. Rules on what a whole
// formula yields (a direction measured the wrong way) apply there.
func (c *context) atRoot() bool { return c.site == 0 }

// slipByID returns the row called id; it panics where there is none.
func slipByID(id string) *Slip {
	for i := range catalogue {
		if catalogue[i].ID == id {
			return &catalogue[i]
		}
	}
	panic("tutor: no slip called " + id)
}

// Catalogue lists every slip, in the order of the documentation.
func Catalogue() []Slip { return catalogue }

// slipGroups are the parts of the catalogue.
var slipGroups = []struct {
	name string
	rows []Slip
}{
	{"angle", angleSlips},
	{"cosine", cosineSlips},
	{"trig", trigSlips},
	{"direction", directionSlips},
	{"sketch", sketchSlips},
	{"equilibrium", equilibriumSlips},
	{"writing", writtenSlips},
}

var catalogue = join()

// join is the rows of every group, in order.
func join() []Slip {
	var all []Slip
	for _, g := range slipGroups {
		all = append(all, g.rows...)
	}
	for i := range all {
		all[i].alone = []string{all[i].ID}
	}
	return all
}

// symbol returns the quantity that n stands for, or nil.
func (c *context) symbol(n expr.Node) *Quantity {
	if s, ok := n.(expr.Sym); ok {
		return c.lesson.Quantity(s.Name)
	}
	return nil
}

// isDirection tells whether n is a direction such as θ₁.
func (c *context) isDirection(n expr.Node) bool {
	q := c.symbol(n)
	return q != nil && q.Turns
}

// isAngle tells whether n is an angle of the figure that is no direction.
func (c *context) isAngle(n expr.Node) bool {
	q := c.symbol(n)
	return q != nil && q.Dim == statics.DimAngle && !q.Turns
}

// isMagnitude tells whether n is the symbol of a force.
func (c *context) isMagnitude(n expr.Node) bool {
	q := c.symbol(n)
	return q != nil && q.Dim == statics.DimForce
}
