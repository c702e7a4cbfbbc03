package tutor

import (
	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics/expr"
)

// questions are what missing-force may ask.
var questions = [...]struct {
	asked      string   // the kind's sentence
	answers    []string // its quantities
	angles     []string // that are worth a line
	triangle   []Step   // the worked solution by the triangle
	components []Step   // and by components; nil where there is none
	special    func(t *triangle, second, result, turn *Quantity)
}{
	wholeResultant: {
		asked: "asked.force", answers: []string{"F2", "theta2"}, angles: []string{"alpha", "beta", "gamma"},
		triangle: []Step{{"beta", "directions"}, {"F2", "cosine-law"}, {"alpha", "sine-law-F2"}, {"theta2", "from-resultant"}},
		components: []Step{{"F1x", ""}, {"F1y", ""}, {"Rx", "resolve"}, {"Ry", "resolve"}, {"F2x", "difference"}, {"F2y", "difference"},
			{"F2", "components"}, {"theta2", "arctangent"}},
		special: (*triangle).specialOfResultant,
	},
	bothDirections: {
		asked: "asked.sizes", answers: []string{"F2", "R"}, angles: []string{"alpha", "beta", "gamma", "phi"},
		triangle: []Step{{"phi", "directions"}, {"gamma", "adjacent-angles"}, {"beta", "directions"}, {"alpha", "triangle-sum"},
			{"F2", "sine-law-F1"}, {"R", "sine-law-F1"}},
		components: []Step{{"F2", "across"}, {"R", "along"}},
		special:    (*triangle).specialOfDirections,
	},
	sizeAndTurn: {
		asked: "asked.turn", answers: []string{"theta2", "R"}, angles: []string{"alpha", "beta", "gamma"},
		triangle: []Step{{"beta", "directions"}, {"alpha", "sine-law-F2"}, {"gamma", "triangle-sum"}, {"R", "sine-law-F2"}, {"theta2", "from-resultant"}},
		special:  (*triangle).specialOfTurn,
	},
	turnAndSize: {
		asked: "asked.size", answers: []string{"F2", "theta"}, angles: []string{"alpha", "beta", "gamma", "phi"},
		triangle: []Step{{"phi", "directions"}, {"gamma", "adjacent-angles"}, {"alpha", "sine-law-R"}, {"beta", "triangle-sum"},
			{"F2", "sine-law-R"}, {"theta", "from-first"}},
		special: (*triangle).specialOfSize,
	},
	smallestForce: {
		asked: "asked.smallest", answers: []string{"F2", "theta2"}, angles: []string{"beta"},
		triangle: []Step{{"beta", "directions"}, {"F2", "perpendicular"}, {"theta2", "perpendicular"}, {"R", "perpendicular"}},
		components: []Step{{"F1x", ""}, {"F1y", ""}, {"R", "along"}, {"Rx", "resolve"}, {"Ry", "resolve"}, {"F2x", "difference"}, {"F2y", "difference"},
			{"F2", "components"}, {"theta2", "arctangent"}},
		special: (*triangle).specialOfSmallest,
	},
}

// The rest adds what only one question has: the sums along and across the
// resultant, the perpendicular of the smallest force, the wrong ways.

func (t *triangle) specialOfResultant(second, _, turn *Quantity) {
	difference, sum := expr.Abs(expr.Sub(symR, f1)), expr.Add(f1, symR)
	across, _ := t.across()
	second.Routes = append(second.Routes, across)
	second.Mistakes = []Mistake{{"magnitudes-subtracted", difference}, {"magnitudes-added", sum}}
	second.Between = [2]expr.Node{difference, sum}
	turn.Mistakes = append(turn.Mistakes, t.other())
	x, y := expr.Add(symRx, expr.S("F1x")), expr.Add(symRy, expr.S("F1y"))
	if v := r2.Add(t.result.vec, t.first.vec); r2.Norm(v) > 1e-6*t.result.size {
		second.Mistakes = append(second.Mistakes, Mistake{"known-added", magnitudeOf(x, y).Tree})
		turn.Mistakes = append(turn.Mistakes, Mistake{"known-added", arctangent(x, y, v)})
	}
}

func (t *triangle) specialOfDirections(second, result, _ *Quantity) {
	beta := expr.S("beta")
	across, along := t.across()
	second.Routes, result.Routes = append(second.Routes, across), append(result.Routes, along)
	second.Sums = [2]expr.Node{
		expr.Sub(expr.Add(expr.S("F1x"), expr.Mul(f2, expr.Cos(theta2))), expr.Mul(symR, expr.Cos(symTheta))),
		expr.Sub(expr.Add(expr.S("F1y"), expr.Mul(f2, expr.Sin(theta2))), expr.Mul(symR, expr.Sin(symTheta))),
	}
	result.Sums = second.Sums
	second.Mistakes = []Mistake{{"right-triangle-assumed", expr.Mul(f1, expr.Sin(beta))}, {"right-triangle-assumed", expr.Mul(f1, expr.Tan(beta))}}
	result.Mistakes = []Mistake{{"right-triangle-assumed", expr.Mul(f1, expr.Cos(beta))}, {"magnitudes-added", expr.Add(f1, f2)}}
}

func (t *triangle) specialOfTurn(second, result, _ *Quantity) {
	difference, sum := expr.Abs(expr.Sub(f1, f2)), expr.Add(f1, f2)
	across, _ := t.across()
	second.Routes = append(second.Routes, across)
	result.Mistakes = []Mistake{{"magnitudes-added", sum}, {"magnitudes-subtracted", difference},
		{"right-triangle-assumed", expr.Sqrt(expr.Abs(expr.Sub(expr.Sq(f2), expr.Sq(f1))))},
		{"right-triangle-assumed", expr.Mul(f2, expr.Cos(expr.S("alpha")))}, {"right-triangle-assumed", expr.Mul(f1, expr.Cos(expr.S("beta")))}}
	result.Between = [2]expr.Node{difference, sum}
}

func (t *triangle) specialOfSize(second, _, _ *Quantity) {
	difference := expr.Abs(expr.Sub(symR, f1))
	second.Mistakes = []Mistake{{"magnitudes-subtracted", difference}}
	second.Between = [2]expr.Node{difference, expr.Add(f1, symR)}
}

func (t *triangle) specialOfSmallest(second, result, turn *Quantity) {
	beta := expr.S("beta")
	_, along := t.across()
	along.Tree = expr.Mul(f1, expr.Cos(expr.Sub(symTheta, theta1)))
	second.Routes = append(second.Routes, Route{"perpendicular", "smallest", ByTriangle, expr.Mul(f1, expr.Sin(beta))})
	result.Routes = append(result.Routes, along, Route{"perpendicular", "smallest", ByTriangle, expr.Mul(f1, expr.Cos(beta))})
	turn.Routes = append(turn.Routes, Route{"perpendicular", "smallest", ByTriangle, t.square(symTheta)})
	second.Mistakes = []Mistake{{"perpendicular-to-given", expr.Mul(f1, expr.Tan(beta))}}
	result.Mistakes = []Mistake{{"perpendicular-to-given", expr.Div(f1, expr.Cos(beta))}}
	turn.Mistakes = append(turn.Mistakes, Mistake{"perpendicular-to-given", t.square(theta1)})
	second.Between = [2]expr.Node{expr.N(0), f1}
	result.Between = second.Between
}

// besideFirst are the directions of F₂ with α laid off from F₁, beside which it
// does not lie.
func (t *triangle) besideFirst() []Mistake {
	alpha := expr.S("alpha")
	return []Mistake{{"wrong-neighbour", expr.Add(theta1, alpha)}, {"wrong-neighbour", expr.Sub(theta1, alpha)}}
}
