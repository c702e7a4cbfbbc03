package slips

import (
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// Scope says how much of the work a slip touches.
type Scope uint8

// The scopes.
const (
	AtSite   Scope = iota // one place of one formula
	InStep                // every place of one formula, as a calculator's mode does
	InAnswer              // the value as written down
	InKind                // a wrong way that no rewrite gives: the kind of problem declares it (a lesson.Mistake)
)

// Slip is a row of the catalogue: a common mistake as a rewrite.
//
// Rule returns what stands at node n when the slip is made there; for InStep,
// n is the whole formula. Written returns the values written down instead of
// v. InKind rows have neither: their trees are declared beside the quantity, or
// made by package slipped of a lesson's sums; one of two solutions mixed has none.
type Slip struct {
	ID      string
	Scope   Scope
	Prior   float64 // weight among slips, before any value is seen; above 0
	Rule    func(c *Context, n expr.Node) []expr.Node
	Written func(c *Context, v float64) []float64
	Lone    bool // too rare to be thought of together with another

	IDs []string // ID as a list, for what names several rows
}

// Context is what a rule may ask about the place it is applied to.
type Context struct {
	Lesson   *lesson.Lesson
	Quantity *lesson.Quantity // whose formula, or whose value
	Site     int              // where in the formula, as expr.At counts; 0 is the whole
}

// atRoot tells whether the place is the whole formula. Rules on what a whole
// formula yields (a direction measured the wrong way) apply there.
func (c *Context) atRoot() bool { return c.Site == 0 }

// ByID returns the row called id, one of the catalogue's; it panics where there is
// none.
func ByID(id string) *Slip {
	for _, row := range catalogue {
		if row.ID == id {
			return row
		}
	}
	panic("slips: no slip called " + id)
}

// Catalogue lists every slip, in the order of the documentation. It is the
// catalogue itself, not to be written to.
func Catalogue() []*Slip { return catalogue }

// groups are the parts of the catalogue, a file each.
var groups = []struct {
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
func join() []*Slip {
	var all []*Slip
	for _, g := range groups {
		for i := range g.rows {
			row := &g.rows[i]
			row.IDs = []string{row.ID}
			all = append(all, row)
		}
	}
	return all
}

// symbol returns the quantity that n stands for, or nil.
func (c *Context) symbol(n expr.Node) *lesson.Quantity {
	if s, ok := n.(expr.Sym); ok {
		return c.Lesson.Quantity(s.Name)
	}
	return nil
}

// isDirection tells whether n is a direction such as θ₁.
func (c *Context) isDirection(n expr.Node) bool {
	q := c.symbol(n)
	return q != nil && q.Turns
}

// isAngle tells whether n is an angle of the figure that is no direction.
func (c *Context) isAngle(n expr.Node) bool {
	q := c.symbol(n)
	return q != nil && q.IsAngle() && !q.Turns
}

// isMagnitude tells whether n is the symbol of a force.
func (c *Context) isMagnitude(n expr.Node) bool {
	q := c.symbol(n)
	return q != nil && q.Dim == statics.DimForce
}

// one is a list of one node.
func one(n expr.Node) []expr.Node { return []expr.Node{n} }

// isCross tells whether n is the cross term of the cosine law: a product with
// a cosine in it.
func isCross(n expr.Node) bool {
	_, _, product := expr.Operands(n, expr.OpMul)
	return product && expr.Contains(n, func(m expr.Node) bool { _, ok := expr.Argument(m, expr.FnCos); return ok })
}

// isSquare matches x².
func isSquare(n expr.Node) (x expr.Node, ok bool) {
	x, two, ok := expr.Operands(n, expr.OpPow)
	return x, ok && two == expr.N(2)
}

// Groups names the parts of the catalogue, in its order.
func Groups() []string {
	var names []string
	for _, g := range groups {
		names = append(names, g.name)
	}
	return names
}

// GroupOf is the part of the catalogue in which the slip called id stands;
// it panics where there is none.
func GroupOf(id string) string {
	for _, g := range groups {
		if slices.ContainsFunc(g.rows, func(s Slip) bool { return s.ID == id }) {
			return g.name
		}
	}
	panic("slips: no slip called " + id)
}
