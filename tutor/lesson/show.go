package lesson

import (
	"math"

	"closingside/statics/expr"
)

// Show is q's value v with its unit, at digits d: "682.6 N", "87.0°"; "–" for NaN,
// and "0" for an equation.
func (l *Lesson) Show(q *Quantity, v float64, d Digits) string {
	if math.IsNaN(v) {
		return "–"
	}
	if q.Equation {
		return "0"
	}
	s := d.Written(q.Dim, v)
	switch u := l.UnitOf(q); {
	case q.IsAngle():
		return s + "°"
	case u.Symbol == "":
		return s
	default:
		return s + " " + u.Symbol
	}
}

// ShowKept is v, a value of q, as a student writes it: with its unit, at the
// digits kept on the way or those asked where they are finer.
func (l *Lesson) ShowKept(q *Quantity, v float64, s Settings) string {
	return l.Show(q, v, s.DigitsKept(q))
}

// ShowGiven is the given called name with its unit, in no more digits than it
// takes, of the most that are kept on the way.
func (l *Lesson) ShowGiven(name string) string {
	q, d := l.Quantity(name), Digits{Magnitude: 1}
	for d.Magnitude < l.Problem.Settings.Work.Magnitude && math.Abs(d.Round(q.Dim, q.True)-q.True) > 1e-9*math.Abs(q.True) {
		d.Magnitude++
	}
	return l.Show(q, q.True, d)
}

// Literal is q's value v as a number in a formula: an angle in degrees, with its
// sign.
func (q *Quantity) Literal(v float64) expr.Node {
	if q.IsAngle() {
		return expr.Deg(v)
	}
	return expr.N(v)
}

// Text is a formula of the lesson as plain text.
func (l *Lesson) Text(n expr.Node) string { return expr.Plain(n, l.Symbol) }

// SymbolText is the plain text of the symbol of the quantity called name: "γ", "F₁".
func (l *Lesson) SymbolText(name string) string { return expr.Plain(expr.S(name), l.Symbol) }
