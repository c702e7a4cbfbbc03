package kinds

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// questions are what missing-force may ask.
var questions = [...]struct {
	asked      string        // the kind's sentence
	answers    []string      // its quantities
	angles     []string      // that are worth a line
	triangle   []lesson.Step // the worked solution by the triangle
	components []lesson.Step // and by components; nil where there is none
	special    func(t *triangle, second, result, turn *lesson.Quantity)
}{
	wholeResultant: {
		asked: "asked.force", answers: []string{"F2", "theta2"}, angles: []string{"alpha", "beta", "gamma"},
		triangle: []lesson.Step{step("beta", "directions"), step("F2", "cosine-law"), step("alpha", "sine-law-F2"), step("theta2", "from-resultant")},
		components: []lesson.Step{step("F1x", ""), step("F1y", ""), step("Rx", "resolve"), step("Ry", "resolve"), step("F2x", "difference"), step("F2y", "difference"),
			step("F2", "components"), step("theta2", "arctangent")},
		special: (*triangle).specialOfResultant,
	},
	bothDirections: {
		asked: "asked.sizes", answers: []string{"F2", "R"}, angles: []string{"alpha", "beta", "gamma", "phi"},
		triangle: []lesson.Step{step("phi", "directions"), step("gamma", "adjacent-angles"), step("beta", "directions"), step("alpha", "triangle-sum"),
			step("F2", "sine-law-F1"), step("R", "sine-law-F1")},
		components: []lesson.Step{step("F2", "across"), step("R", "along")},
		special:    (*triangle).specialOfDirections,
	},
	sizeAndTurn: {
		asked: "asked.turn", answers: []string{"theta2", "R"}, angles: []string{"alpha", "beta", "gamma"},
		triangle: []lesson.Step{step("beta", "directions"), step("alpha", "sine-law-F2"), step("gamma", "triangle-sum"), step("R", "sine-law-F2"), step("theta2", "from-resultant")},
		special:  (*triangle).specialOfTurn,
	},
	turnAndSize: {
		asked: "asked.size", answers: []string{"F2", "theta"}, angles: []string{"alpha", "beta", "gamma", "phi"},
		triangle: []lesson.Step{step("phi", "directions"), step("gamma", "adjacent-angles"), step("alpha", "sine-law-R"), step("beta", "triangle-sum"),
			step("F2", "sine-law-R"), step("theta", "from-first")},
		special: (*triangle).specialOfSize,
	},
	smallestForce: {
		asked: "asked.smallest", answers: []string{"F2", "theta2"}, angles: []string{"beta"},
		triangle: []lesson.Step{step("beta", "directions"), step("F2", "perpendicular"), step("theta2", "perpendicular"), step("R", "perpendicular")},
		components: []lesson.Step{step("F1x", ""), step("F1y", ""), step("R", "along"), step("Rx", "resolve"), step("Ry", "resolve"), step("F2x", "difference"), step("F2y", "difference"),
			step("F2", "components"), step("theta2", "arctangent")},
		special: (*triangle).specialOfSmallest,
	},
}

// The rest adds what only one question has: the sums along and across the
// resultant, the perpendicular of the smallest force, the wrong ways.

func (t *triangle) specialOfResultant(second, _, turn *lesson.Quantity) {
	difference, sum := expr.Abs(expr.Sub(symR, f1)), expr.Add(f1, symR)
	across, _ := t.across()
	second.Routes = append(second.Routes, across)
	second.Mistakes = []lesson.Mistake{mistake("magnitudes-subtracted", difference), mistake("magnitudes-added", sum)}
	second.Mistakes = append(second.Mistakes, takenForOther(t.cosineLaw(1), f1, symR)...)
	second.Between = [2]expr.Node{difference, sum}
	turn.Mistakes = append(turn.Mistakes, t.other())
	x, y := expr.Add(symRx, expr.S("F1x")), expr.Add(symRy, expr.S("F1y"))
	if v := r2.Add(t.result.vec, t.first.vec); r2.Norm(v) > 1e-6*t.result.size {
		second.Mistakes = append(second.Mistakes, mistake("known-added", magnitudeOf(x, y).Tree))
		turn.Mistakes = append(turn.Mistakes, mistake("known-added", arctangent(x, y, v)))
	}
}

func (t *triangle) specialOfDirections(second, result, _ *lesson.Quantity) {
	beta := expr.S("beta")
	across, along := t.across()
	second.Routes, result.Routes = append(second.Routes, across), append(result.Routes, along)
	second.Sums = [2]expr.Node{
		expr.Sub(expr.Add(expr.S("F1x"), expr.Mul(f2, expr.Cos(theta2))), expr.Mul(symR, expr.Cos(symTheta))),
		expr.Sub(expr.Add(expr.S("F1y"), expr.Mul(f2, expr.Sin(theta2))), expr.Mul(symR, expr.Sin(symTheta))),
	}
	result.Sums = second.Sums
	second.Onward, result.Onward = t.second.fromSums(second.Sums, t.result), t.result.fromSums(result.Sums, t.second)
	second.Mistakes = []lesson.Mistake{mistake("right-triangle-assumed", expr.Mul(f1, expr.Sin(beta))), mistake("right-triangle-assumed", expr.Mul(f1, expr.Tan(beta)))}
	result.Mistakes = []lesson.Mistake{mistake("right-triangle-assumed", expr.Mul(f1, expr.Cos(beta))), mistake("magnitudes-added", expr.Add(f1, f2))}
}

// fromSums are the ways to a force from the sums along x and y as they stand: both
// of them, the other unknown taken out, and each from the other unknown found before.
func (p pull) fromSums(sums [2]expr.Node, other pull) []expr.Node {
	ways := []expr.Node{expr.Eliminate(sums[0], sums[1], p.name, other.name)}
	for i, tree := range sums {
		if math.Abs(coordinate(i).of(p.unit())) >= leastAlong {
			ways = append(ways, expr.Isolate(tree, p.name))
		}
	}
	return ways
}

func (t *triangle) specialOfTurn(second, result, _ *lesson.Quantity) {
	difference, sum := expr.Abs(expr.Sub(f1, f2)), expr.Add(f1, f2)
	across, _ := t.across()
	second.Routes = append(second.Routes, across)
	result.Mistakes = []lesson.Mistake{mistake("magnitudes-added", sum), mistake("magnitudes-subtracted", difference),
		mistake("right-triangle-assumed", expr.Sqrt(expr.Abs(expr.Sub(expr.Sq(f2), expr.Sq(f1))))),
		mistake("right-triangle-assumed", expr.Mul(f2, expr.Cos(expr.S("alpha")))), mistake("right-triangle-assumed", expr.Mul(f1, expr.Cos(expr.S("beta"))))}
	result.Between = [2]expr.Node{difference, sum}
}

func (t *triangle) specialOfSize(second, _, _ *lesson.Quantity) {
	difference := expr.Abs(expr.Sub(symR, f1))
	second.Mistakes = []lesson.Mistake{mistake("magnitudes-subtracted", difference)}
	second.Between = [2]expr.Node{difference, expr.Add(f1, symR)}
}

func (t *triangle) specialOfSmallest(second, result, turn *lesson.Quantity) {
	beta := expr.S("beta")
	_, along := t.across()
	along.Tree = expr.Mul(f1, expr.Cos(expr.Sub(symTheta, theta1)))
	second.Routes = append(second.Routes, route("perpendicular", "smallest", lesson.ByTriangle, expr.Mul(f1, expr.Sin(beta))))
	result.Routes = append(result.Routes, along, route("perpendicular", "smallest", lesson.ByTriangle, expr.Mul(f1, expr.Cos(beta))))
	turn.Routes = append(turn.Routes, route("perpendicular", "smallest", lesson.ByTriangle, t.onward(symTheta, expr.Deg(90))))
	second.Mistakes = []lesson.Mistake{mistake("perpendicular-to-given", expr.Mul(f1, expr.Tan(beta))), mistakeAside("ratio-inverted", expr.Div(f1, expr.Sin(beta)))}
	result.Mistakes = []lesson.Mistake{mistake("perpendicular-to-given", expr.Div(f1, expr.Cos(beta))),
		mistakeAside("perpendicular-to-given", expr.Sqrt(expr.Add(expr.Sq(f1), expr.Sq(f2)))), mistakeAside("magnitudes-added", expr.Add(f1, f2)),
		mistakeAside("other-force", expr.Mul(f2, expr.Cos(beta))), mistakeAside("tangent-taken", expr.Mul(f1, expr.Tan(beta)))}
	turn.Mistakes = append(turn.Mistakes, mistake("perpendicular-to-given", t.onward(theta1, expr.Deg(90))))
	turn.Mistakes = append(turn.Mistakes, mistakeAside("other-force", symTheta))
	leg := expr.Sqrt(expr.Sub(expr.Sq(f1), expr.Sq(f2)))
	second.Onward = append(second.Onward, expr.Sqrt(expr.Sub(expr.Sq(f1), expr.Sq(symR))))
	result.Onward, result.Aside = append(result.Onward, leg), append(result.Aside, leg)
	second.Between = [2]expr.Node{expr.N(0), f1}
	result.Between = second.Between
}

// besideFirst are the directions of F₂ with α laid off from F₁, beside which it
// does not lie.
func (t *triangle) besideFirst() []lesson.Mistake {
	alpha := expr.S("alpha")
	return []lesson.Mistake{mistake("wrong-neighbour", expr.Add(theta1, alpha)), mistake("wrong-neighbour", expr.Sub(theta1, alpha))}
}
