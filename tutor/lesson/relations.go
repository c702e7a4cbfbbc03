package lesson

import (
	"strings"

	"closingside/statics"
)

// WholeOf is the given force of which q is a component; nil where there is none.
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

// IsSlopeAngle tells whether q is the angle of a slope triangle.
func (q *Quantity) IsSlopeAngle() bool {
	return len(q.Routes) > 0 && q.Routes[0].ID == "slope" && q.Dim == statics.DimAngle
}

// IsSolved tells whether q is the solution of sums.
func (q *Quantity) IsSolved() bool { return q.Solves[0] != "" || q.Sums[0] != nil }
