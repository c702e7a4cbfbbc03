// Package expr holds expression trees: the one form in which a route, a
// learner's entry and a mistake are written down.
//
// A tree is evaluated as a hand-held calculator would evaluate it: angles are
// numbers of degrees, and every trigonometric key carries the mode (degrees,
// radians, gradians) it was pressed in. The cosine law for the closing side of
// a force triangle, for example, is
//
//	expr.Sqrt(expr.Sub(
//		expr.Add(expr.Sq(expr.S("F1")), expr.Sq(expr.S("F2"))),
//		expr.Mul(expr.N(2), expr.S("F1"), expr.S("F2"), expr.Cos(expr.S("gamma")))))
//
// The package evaluates, differentiates, substitutes, matches, rewrites at one
// site, takes an unknown out of linear sums (linear.go) and prints (plain text,
// MathML, speech). Beyond that it does not simplify algebra; it knows no units of
// force, and does not know which problem a tree serves.
package expr
