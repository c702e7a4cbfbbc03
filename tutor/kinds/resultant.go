package kinds

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// total is a component of the resultant r of several forces, by their sum and by
// the resultant's own magnitude and direction.
func total(pulls []pull, c coordinate, r r2.Vec) lesson.Quantity {
	q := part(lesson.ParseSymbol("R"), "R", c, r)
	var parts, whole []expr.Node
	for _, p := range pulls {
		parts, whole = append(parts, expr.S(p.name+c.String())), append(whole, p.force())
	}
	sum := route("sum", "sum-of-components", lesson.ByComponents, expr.Add(parts[0], parts[1], parts[2:]...))
	x, y := resolve(symR, symTheta)
	q.Routes = append([]lesson.Route{sum}, [...][]lesson.Route{x, y}[c]...)
	q.Mistakes = []lesson.Mistake{mistake("resultant-reversed", expr.Neg{X: sum.Tree}), mistake("magnitudes-added", expr.Add(whole[0], whole[1], whole[2:]...))}
	for i, p := range pulls {
		mixed := slices.Clone(parts)
		mixed[i] = expr.S(p.name + c.across().String())
		q.Mistakes = append(q.Mistakes, mistake("part-in-other-sum", expr.Add(mixed[0], mixed[1], mixed[2:]...)))
	}
	if len(pulls) > 2 { // all of them; of two, it is one
		q.Mistakes = append(q.Mistakes, mistake("sign-lost", expr.Add(expr.Abs(parts[0]), expr.Abs(parts[1]), unsigned(parts[2:])...)))
	}
	return q
}

// unsigned are the values of nodes without their signs.
func unsigned(nodes []expr.Node) []expr.Node {
	var all []expr.Node
	for _, n := range nodes {
		all = append(all, expr.Abs(n))
	}
	return all
}

// magnitudeOf is the route from two components to a magnitude.
func magnitudeOf(x, y expr.Node) lesson.Route {
	return route("components", "right-angle-theorem", lesson.ByComponents, expr.Sqrt(expr.Add(expr.Sq(x), expr.Sq(y))))
}

// directionOf is the route from two components to a direction.
func directionOf(x, y expr.Node, v r2.Vec) lesson.Route {
	return route("arctangent", "arctangent", lesson.ByComponents, arctangent(x, y, v))
}

// arctangent is the direction of v with components x and y, the quadrant
// already chosen.
func arctangent(x, y expr.Node, v r2.Vec) expr.Node {
	acute := expr.Atan(expr.Div(y, x))
	switch {
	case v.X > 0 && v.X > 1e-9*math.Abs(v.Y):
		return acute
	case v.X < 0 && -v.X > 1e-9*math.Abs(v.Y) && v.Y >= 0:
		return expr.Add(expr.Deg(180), acute)
	case v.X < 0 && -v.X > 1e-9*math.Abs(v.Y):
		return expr.Sub(acute, expr.Deg(180))
	case v.Y > 0: // along the y axis the fraction is turned over
		return expr.Sub(expr.Deg(90), expr.Atan(expr.Div(x, y)))
	}
	return expr.Sub(expr.Neg{X: expr.Deg(90)}, expr.Atan(expr.Div(x, y)))
}

// byMagnitude are the ways to a direction from one component and the magnitude,
// cos⁻¹(x/f) and sin⁻¹(y/f), on the side where v lies, and what they come to
// without the inverse key.
func byMagnitude(x, y, f expr.Node, v r2.Vec) (ways []expr.Node, wrong []lesson.Mistake) {
	cosine, sine := expr.Div(x, f), expr.Div(y, f)
	byX, byY := expr.Node(expr.Acos(cosine)), expr.Node(expr.Asin(sine))
	if v.Y < 0 {
		byX = expr.Neg{X: byX}
	}
	switch {
	case v.X < 0 && v.Y >= 0:
		byY = expr.Sub(expr.Deg(180), byY)
	case v.X < 0:
		byY = expr.Sub(expr.Neg{X: expr.Deg(180)}, byY)
	}
	return []expr.Node{byX, byY}, []lesson.Mistake{mistake("inverse-missing", cosine), mistake("inverse-missing", sine)}
}
