package kinds

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// triangle is a force triangle of which any values may be asked: the sides F₁
// and F₂, head to tail, and the closing side R. α is opposite F₁, β opposite
// F₂, γ opposite R.
type triangle struct {
	unit                  statics.Unit
	ask                   question
	first, second, result pull
	alpha, beta, gamma    float64 // degrees
	ccw                   bool    // F₂ lies less than 180° counter-clockwise of F₁
}

// The symbols in formulas of force triangles.
var (
	f1, f2         = expr.S("F1"), expr.S("F2")
	theta1, theta2 = expr.S("theta1"), expr.S("theta2")
	symPhi         = expr.S("phi")
	symGamma       = expr.S("gamma")
	symR           = expr.S("R")
	symTheta       = expr.S("theta")
	symRx, symRy   = expr.S("Rx"), expr.S("Ry")
)

// angleNames are the names of a triangle's angles, each opposite its side, and
// angleLetters how they are printed.
var (
	angleNames   = [3]string{"alpha", "beta", "gamma"}
	angleLetters = [3]string{"α", "β", "γ"}
)

func (t *triangle) sides() [3]pull     { return [3]pull{t.first, t.second, t.result} }
func (t *triangle) angles() [3]float64 { return [3]float64{t.alpha, t.beta, t.gamma} }

// sideRoutes finds side i by the sine law from either other side, and by the
// cosine law from both.
func (t *triangle) sideRoutes(i int) []lesson.Route {
	s := t.sides()
	own := expr.S(angleNames[i])
	var routes []lesson.Route
	for _, j := range otherTwo(i) {
		routes = append(routes, route("sine-law-"+s[j].name, "sine-law-side", lesson.ByTriangle,
			expr.Div(expr.Mul(s[j].force(), expr.Sin(own)), expr.Sin(expr.S(angleNames[j])))))
	}
	routes = append(routes, route("cosine-law", "cosine-law", lesson.ByTriangle, t.cosineLaw(i)))
	for k := range routes {
		if s[i].back {
			routes[k].Tree = expr.Neg{X: routes[k].Tree}
		}
	}
	return routes
}

// cosineLaw is side i by the cosine law.
func (t *triangle) cosineLaw(i int) expr.Node {
	s, at := t.sides(), otherTwo(i)
	a, b := s[at[0]].force(), s[at[1]].force()
	return expr.Sqrt(expr.Sub(expr.Add(expr.Sq(a), expr.Sq(b)), expr.Mul(expr.N(2), a, b, expr.Cos(expr.S(angleNames[i])))))
}

// wrongPairs is side i by the sine law with an angle that is not opposite its
// side: the third angle in the place of one of them, or beside it the two others
// exchanged.
func (t *triangle) wrongPairs(i int) []lesson.Mistake {
	var all []lesson.Mistake
	for _, j := range otherTwo(i) {
		side := t.sides()[j].force()
		if t.sides()[i].back {
			side = expr.Neg{X: side}
		}
		all = append(all, wrongPairs(side, i, j, angleNames)...)
	}
	return all
}

// wrongPairs is a side of a triangle, opposite the i-th angle, by the sine law
// from another, opposite the j-th, with one angle or both not opposite theirs.
func wrongPairs(side expr.Node, i, j int, angles [3]string) []lesson.Mistake {
	var all []lesson.Mistake
	third := 3 - i - j
	for _, pair := range [][2]int{{third, j}, {i, third}, {j, third}, {third, i}} {
		all = append(all, mistake("other-force", expr.Div(expr.Mul(side, expr.Sin(expr.S(angles[pair[0]]))), expr.Sin(expr.S(angles[pair[1]])))))
	}
	return all
}

func otherTwo(i int) [2]int { return [2]int{[3]int{1, 0, 0}[i], [3]int{2, 2, 1}[i]} }

// angle declares angle i: by the sine law, the cosine law, the sum of the
// angles and the directions of the two sides that meet there.
func (t *triangle) angle(i int) lesson.Quantity {
	s, v := t.sides(), t.angles()[i]
	q := lesson.Quantity{Name: angleNames[i], Symbol: expr.Symbol{Letter: angleLetters[i], Spoken: angleNames[i]}, Dim: statics.DimAngle,
		True: v, Between: [2]expr.Node{expr.Deg(0), expr.Deg(180)}}
	j, k := otherTwo(i)[0], otherTwo(i)[1]
	for _, o := range otherTwo(i) {
		sine := expr.Div(expr.Mul(s[i].force(), expr.Sin(expr.S(angleNames[o]))), s[o].force())
		q.Routes = append(q.Routes, route("sine-law-"+s[o].name, "sine-law", lesson.ByTriangle, inverseSine(sine, v)))
	}
	q.Routes = append(q.Routes,
		route("triangle-sum", "triangle-sum", lesson.ByTriangle, expr.Sub(expr.Sub(expr.Deg(180), expr.S(angleNames[j])), expr.S(angleNames[k]))),
		route("cosine-law", "cosine-law-angle", lesson.ByTriangle, expr.Acos(expr.Div(
			expr.Sub(expr.Add(expr.Sq(s[j].force()), expr.Sq(s[k].force())), expr.Sq(s[i].force())),
			expr.Mul(expr.N(2), s[j].force(), s[k].force())))))
	switch i {
	case 0:
		q.Twin = "beta"
		q.Routes = append(q.Routes, t.turn(t.result, t.second, v))
	case 1:
		q.Twin = "alpha"
		q.Routes = append(q.Routes, t.turn(t.first, t.result, v))
	case 2:
		q.Supplement = "phi"
		q.Mistakes = []lesson.Mistake{mistake("angles-not-halved", expr.Sub(expr.Deg(360), expr.Mul(expr.N(2), symPhi)))}
		q.Routes = append(q.Routes, route("adjacent-angles", "adjacent-angles", lesson.ByTriangle, expr.Sub(expr.Deg(180), symPhi)))
	}
	return q
}

// phi declares the angle between F₁ and F₂, tails together.
func (t *triangle) phi() lesson.Quantity {
	q := lesson.Quantity{Name: "phi", Symbol: expr.Symbol{Letter: "φ", Spoken: "phi"}, Dim: statics.DimAngle, True: 180 - t.gamma, Supplement: "gamma",
		Between: [2]expr.Node{expr.Deg(0), expr.Deg(180)}, Mistakes: directionsAdded(t.first.at + t.second.at)}
	q.Routes = []lesson.Route{t.turn(t.first, t.second, q.True),
		route("adjacent-angles", "adjacent-angles", lesson.ByTriangle, expr.Sub(expr.Deg(180), symGamma))}
	return q
}

// turn is the angle v from one side's direction to another's, in the sense of
// the triangle.
func (t *triangle) turn(from, to pull, v float64) lesson.Route {
	if !t.ccw {
		from, to = to, from
	}
	return route("directions", "angle-from-direction", lesson.AnyMethod, difference(to.direction(), from.direction(), to.points()-from.points(), v))
}

// difference is to − from, whose value is d, brought to want by whole turns.
func difference(to, from expr.Node, d, want float64) expr.Node {
	turns := math.Round((want-d)/360) * 360
	switch {
	case turns > 0:
		return expr.Sub(expr.Deg(turns), expr.Sub(from, to))
	case turns < 0:
		return expr.Sub(expr.Sub(to, from), expr.Deg(-turns))
	}
	return expr.Sub(to, from)
}

// inverseSine is the angle of a triangle whose sine is x: the acute one, or
// its supplement where the true angle v is obtuse.
func inverseSine(x expr.Node, v float64) expr.Node {
	if v > 90 {
		return expr.Sub(expr.Deg(180), expr.Asin(x))
	}
	return expr.Asin(x)
}

// directionsAdded are the directions of two forces added for the angle between
// them, and what that leaves of a full turn where it is more than half of one.
func directionsAdded(sum float64) []lesson.Mistake {
	added := expr.Add(theta1, theta2)
	all := []lesson.Mistake{mistake("directions-added", added)}
	if over := lesson.Wrap360(sum); over > 180 {
		all = append(all, mistake("directions-added", expr.Sub(expr.Deg(360+math.Round(sum-over)), added)))
	}
	return all
}

// onward is the direction that lies an angle beyond another in the triangle's
// sense, backward the one that lies as much before it.
func (t *triangle) onward(dir, angle expr.Node) expr.Node {
	if t.ccw {
		return expr.Add(dir, angle)
	}
	return expr.Sub(dir, angle)
}

func (t *triangle) backward(dir, angle expr.Node) expr.Node {
	if t.ccw {
		return expr.Sub(dir, angle)
	}
	return expr.Add(dir, angle)
}

// directions adds the routes to θ₂ and θ.
func (t *triangle) directions() (second, result lesson.Quantity) {
	second, result = t.second.bearing(), t.result.bearing()
	result.Symbol = expr.Symbol{Letter: "θ", Spoken: "theta"}
	alpha, beta := expr.S("alpha"), expr.S("beta")
	laid := func(id string, tree expr.Node) lesson.Route { return route(id, "laid-off", lesson.ByTriangle, tree) }
	second.Routes = []lesson.Route{laid("from-resultant", t.onward(symTheta, alpha)), laid("from-first", t.onward(theta1, symPhi)),
		directionOf(expr.S("F2x"), expr.S("F2y"), t.second.vec)}
	result.Routes = []lesson.Route{laid("from-first", t.onward(theta1, beta)), laid("from-second", t.backward(theta2, alpha)),
		directionOf(symRx, symRy, t.result.vec)}
	return second, result
}

// parts declares the components of both forces and of the resultant.
func (t *triangle) parts() []lesson.Quantity {
	first, second := t.first.byReference(t.first.parts("")), t.second.parts("")
	t.first.byDirection(first, t.result.dir)
	var whole []lesson.Quantity
	for i, c := range []coordinate{alongX, alongY} {
		axis := c.String()
		sum := total([]pull{t.first, t.second}, c, t.result.vec)
		q := &second[i]
		q.Routes = append([]lesson.Route{route("difference", "difference-of-components", lesson.ByComponents,
			expr.Sub(expr.S("R"+axis), expr.S("F1"+axis)))}, q.Routes...)
		slices.Reverse(sum.Routes) // by its own magnitude and direction first
		whole = append(whole, sum)
	}
	t.result.byDirection(whole, t.first.dir)
	t.first.byDirection(whole, t.result.dir) // the other's magnitude in its place
	if t.ask != turnAndSize {
		whole = t.result.byReference(whole)
	}
	switch t.ask {
	case wholeResultant, turnAndSize:
		t.result.byDirection(first, t.first.dir)
	case sizeAndTurn:
		t.second.byDirection(first, t.first.dir)
	}
	return append(append(first, second...), whole...)
}

// pruned is qs without the routes and mistakes that read what the lesson does not
// have, and without those of what is given.
func pruned(qs []lesson.Quantity) []lesson.Quantity {
	has := map[string]bool{}
	for _, q := range qs {
		has[q.Name] = true
	}
	lost := func(tree expr.Node) bool {
		return slices.ContainsFunc(expr.Symbols(tree), func(n string) bool { return !has[n] })
	}
	for i := range qs {
		q := &qs[i]
		q.Routes = slices.DeleteFunc(q.Routes, func(r lesson.Route) bool { return q.Given || lost(r.Tree) })
		q.Mistakes = slices.DeleteFunc(q.Mistakes, func(m lesson.Mistake) bool { return q.Given || lost(m.Tree) })
		if !has[q.Twin] {
			q.Twin = ""
		}
		if !has[q.Supplement] {
			q.Supplement = ""
		}
	}
	return qs
}

// stepsFirst puts the routes of the steps of the ways first, so that hints follow them.
func stepsFirst(qs []lesson.Quantity, ways []lesson.Way) {
	for w := len(ways) - 1; w >= 0; w-- {
		for _, s := range ways[w].Steps {
			for i := range qs {
				if qs[i].Name != s.Quantity {
					continue
				}
				q := &qs[i]
				j := slices.IndexFunc(q.Routes, func(r lesson.Route) bool { return r.ID == s.Route })
				r := q.Routes[j]
				q.Routes = append([]lesson.Route{r}, slices.Delete(slices.Clone(q.Routes), j, j+1)...)
			}
		}
	}
}

// across is how F₂ follows from what both forces have across the resultant, which is
// nothing together, and along how R follows from what they have along it.
func (t *triangle) across() (across, along lesson.Route) {
	across = route("across", "nothing-across", lesson.ByComponents, expr.Div(
		expr.Mul(f1, expr.Sin(expr.Sub(symTheta, theta1))), expr.Sin(expr.Sub(theta2, symTheta))))
	along = route("along", "sum-along", lesson.ByComponents, expr.Add(
		expr.Mul(f1, expr.Cos(expr.Sub(symTheta, theta1))), expr.Mul(f2, expr.Cos(expr.Sub(theta2, symTheta)))))
	return across, along
}

// other is the direction of F₁ + R, the diagonal taken by mistake.
func (t *triangle) other() lesson.Mistake {
	x, y := expr.Add(symRx, expr.S("F1x")), expr.Add(symRy, expr.S("F1y"))
	return mistake("other-diagonal", arctangent(x, y, r2.Add(t.result.vec, t.first.vec)))
}
