package lesson

import (
	"math"

	"closingside/statics"
	"closingside/statics/expr"
)

// Reading is the formula by which a direction given otherwise than from +x is
// read from the statement: 180° − 39° for 39° above −x, tan⁻¹(3/4) for 3:4 up
// right; nil where nothing is worked out in reading it.
func (q *Quantity) Reading() expr.Node {
	h := q.Heading
	plain := h.Axis == statics.PlusX && h.Sense == statics.CounterClockwise && h.Form != statics.Slope
	if !q.Given || !q.Turns || plain || h.Turn <= 0 || h.Turn.Degrees() >= 90 {
		return nil
	}
	turn := expr.Node(expr.Deg(Degrees(h.Turn)))
	if h.Form == statics.Slope {
		turn = expr.Atan(expr.Div(expr.N(h.Rise), expr.N(h.Run)))
	}
	back := h.Sense == statics.Clockwise
	axis := q.True // of the half-axis, as the direction counts it
	if back {
		axis += Degrees(h.Turn)
	} else {
		axis -= Degrees(h.Turn)
	}
	switch axis = math.Round(axis); {
	case axis == 0 && back:
		return expr.Neg{X: turn}
	case axis == 0:
		return turn
	case axis < 0 && back:
		return expr.Neg{X: expr.Add(expr.Deg(-axis), turn)}
	case axis < 0:
		return expr.Neg{X: expr.Sub(expr.Deg(-axis), turn)}
	case back:
		return expr.Sub(expr.Deg(axis), turn)
	}
	return expr.Add(expr.Deg(axis), turn)
}
