package slipped

import (
	"math"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
)

// Formula is what one slip makes of a formula for a quantity.
type Formula struct {
	Route int // whose formula it was: the quantity's route, or one past the last for a mistake of the kind; Aside or Worded
	ID    string
	Prior float64 // weight among slips: the row's, times how often its formula is taken
	Tree  expr.Node
}

// What stands for the place of a route that is none of the quantity's own.
const (
	Aside  = -1 // a mistake of the kind that no draw minds
	Worded = -2 // a route in other words, too seldom written so to be thought of with a second slip
)

// Formulas lists every formula that one slip makes of q's routes, and of a given's
// reading; the same may come again.
func Formulas(l *lesson.Lesson, q *lesson.Quantity) []Formula {
	m := maker{l: l, q: q}
	m.routes()
	m.reading()
	m.aside()
	if q.Turns && !q.Given {
		m.leftAcute()
	}
	if q.Equation {
		m.sum()
	}
	m.solved()
	m.mistakes()
	return m.all
}

// maker gathers what slips make of the formulas for q.
type maker struct {
	l   *lesson.Lesson
	q   *lesson.Quantity
	all []Formula
}

func (m *maker) add(route int, id string, prior float64, tree expr.Node) {
	m.all = append(m.all, Formula{route, id, prior, tree})
}

// addDrawn adds a formula, and before it the angle between 0° and 180° where that is
// taken instead.
func (m *maker) addDrawn(route int, id string, prior float64, tree expr.Node) {
	if drawn, other := m.between(tree); other {
		m.add(route, id, prior*shareDrawnAngle, drawn)
		prior *= 1 - shareDrawnAngle
	}
	m.add(route, id, prior, tree)
}

// How often ways are taken by those who slipped (judgement).
const (
	// shareAcute is how often the acute angle is left as it is by who slipped in
	// finding it.
	shareAcute = 0.3

	// shareRead is how often a slip in working a given direction out is gone on
	// from: beside the sketch, where it lies, most are seen.
	shareRead = 0.3

	// shareWorded is how often a way in other words than the routes' is taken.
	shareWorded = 0.5

	// shareDrawnAngle is how often an angle between two arrows that comes out
	// beyond 180° or below zero is taken as the one drawn.
	shareDrawnAngle = 0.6
)

// routes makes the slips of the catalogue in q's routes; of a given, in reading it.
func (m *maker) routes() {
	routes := m.q.Routes
	if m.q.Given {
		routes = []lesson.Route{{Tree: expr.S(m.q.Name)}}
	}
	for j, r := range routes {
		share := 1.0
		if !m.q.Given {
			share = m.l.Share(m.q, j)
		}
		for _, tree := range Bases(r.Tree) {
			for _, row := range slips.Catalogue() {
				In(m.l, m.q, row, tree, func(t expr.Node, alternatives int) {
					m.addDrawn(j, row.ID, row.Prior*share/float64(alternatives), t)
				})
			}
		}
	}
}

// reading makes the slips in what is worked out to read a given direction: those
// of its sums and keys. As a whole it is misread by routes.
func (m *maker) reading() {
	tree := m.q.Reading()
	if tree == nil {
		return
	}
	for _, id := range inReading {
		row := slips.ByID(id)
		In(m.l, m.q, row, tree, func(t expr.Node, alternatives int) {
			m.add(0, id, row.Prior*shareRead/float64(alternatives), t)
		})
	}
}

// inReading are the slips made in working out a direction from how it is given.
var inReading = []string{"complement-for-supplement", "radian-mode", "gradian-mode", "inverse-missing", "ratio-inverted", "quadrant-missed", "reference-angle"}

// aside makes the slips that are looked for in other words of q's routes, or by
// dividing where no fraction is written.
func (m *maker) aside() {
	divided := &slips.Divided
	for j, r := range m.q.Routes {
		In(m.l, m.q, divided, r.Tree, func(t expr.Node, alternatives int) {
			m.add(Worded, divided.ID, divided.Prior*m.l.Share(m.q, j)/float64(alternatives), t)
		})
	}
	for _, tree := range m.q.Aside {
		In(m.l, m.q, divided, tree, func(t expr.Node, _ int) { m.add(Worded, divided.ID, divided.Prior*shareWorded, t) })
		for _, row := range slips.Catalogue() {
			In(m.l, m.q, row, tree, func(t expr.Node, alternatives int) {
				m.add(Worded, row.ID, row.Prior*shareWorded/float64(alternatives), t)
			})
		}
	}
}

// leftAcute makes a slip in the acute angle of a direction, a fraction upside down,
// no inverse key or one in another mode, and leaves that angle as it is.
func (m *maker) leftAcute() {
	for j, r := range m.q.Routes {
		if _, alone := expr.Argument(r.Tree, expr.FnAtan); alone {
			continue
		}
		expr.Walk(r.Tree, func(_ int, n expr.Node) {
			if _, acute := expr.Argument(n, expr.FnAtan); !acute {
				return
			}
			for _, id := range []string{"ratio-inverted", "inverse-missing", "radian-mode", "gradian-mode"} {
				row := slips.ByID(id)
				In(m.l, m.q, row, n, func(t expr.Node, alternatives int) {
					m.add(j, id, row.Prior*m.l.Share(m.q, j)*shareAcute/float64(alternatives), t)
				})
			}
		})
	}
}

// mistakes adds the wrong ways that the kind declares.
func (m *maker) mistakes() {
	for _, mistake := range m.q.Mistakes {
		prior := slips.ByID(mistake.Slip).Prior
		if mistake.Aside {
			m.addDrawn(Aside, mistake.Slip, prior, mistake.Tree)
			continue
		}
		m.add(len(m.q.Routes), mistake.Slip, prior, mistake.Tree)
	}
}

// between is t brought to an angle between 0° and 180°, where q is one and a slip
// took it beyond.
func (m *maker) between(t expr.Node) (drawn expr.Node, other bool) {
	if m.q.Turns || m.q.Between[1] != expr.Deg(180) {
		return nil, false
	}
	v := expr.Eval(t, m.l.Truth)
	around := 360 * math.Round(v/360)
	if math.IsNaN(v) || math.Abs(v-around) == v {
		return nil, false
	}
	switch {
	case around > 0:
		t = expr.Sub(t, expr.Deg(around))
	case around < 0:
		t = expr.Add(t, expr.Deg(-around))
	}
	if v < around {
		t = expr.Neg{X: t}
	}
	return t, true
}
