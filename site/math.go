package site

import (
	"strings"

	"closingside/site/html"
	"closingside/statics/expr"
)

// Chain is a formula written out, one equality a line: symbol = formula, then
// = numbers, then = value. Trees that repeat the one before are left out; value
// may be "". A line with a long sum is cut into pieces that may go on below.
func Chain(names expr.Naming, value string, trees ...expr.Node) html.Node {
	parts := []html.Part{html.Class("formula")}
	for _, l := range chain(names, value, trees...) {
		parts = append(parts, l.node())
	}
	return html.El("div", parts...)
}

// spokenChain is what a screen reader says of a Chain.
func spokenChain(names expr.Naming, value string, trees ...expr.Node) string {
	var said []string
	for _, l := range chain(names, value, trees...) {
		said = append(said, strings.TrimSpace(l.spoken))
	}
	return strings.Join(said, ", ")
}

// chain is the lines of a Chain.
func chain(names expr.Naming, value string, trees ...expr.Node) (lines []chainLine) {
	line := func() *chainLine { return &lines[len(lines)-1] }
	var last expr.Node
	for i, t := range trees {
		if t == nil || t == last {
			continue
		}
		if i != 1 || len(lines) == 0 {
			lines = append(lines, chainLine{})
		}
		if i > 0 {
			line().equals()
		}
		for j, piece := range expr.MathPieces(t, names) {
			line().add(html.FromMarkup(piece), j > 0)
		}
		line().spoken += expr.Speech(t, names) + " "
		last = t
	}
	if value != "" {
		lines = append(lines, chainLine{})
		line().equals()
		line().add(html.El("mtext", html.Text(value)), false)
		line().spoken += value
	}
	return lines
}

// chainLine is one line of a chain.
type chainLine struct {
	pieces [][]html.Part
	spoken string
}

// equals begins what the line so far is equal to; behind a long side it may go on below.
func (l *chainLine) equals() {
	l.add(html.El("mo", html.A("form", "infix"), html.Text("=")), len(l.pieces) > 1)
	l.spoken += "equals "
}

// add puts a node at the end of the line, or in a piece of its own.
func (l *chainLine) add(n html.Node, apart bool) {
	if apart || len(l.pieces) == 0 {
		l.pieces = append(l.pieces, nil)
	}
	last := len(l.pieces) - 1
	l.pieces[last] = append(l.pieces[last], n)
}

// node is the line: one formula, or pieces that are read as one.
func (l *chainLine) node() html.Node {
	if len(l.pieces) == 1 {
		return html.El("math", append([]html.Part{html.A("display", "block"), html.A("aria-label", l.spoken)}, l.pieces[0]...)...)
	}
	parts := []html.Part{html.Class("long"), html.A("role", "math"), html.A("aria-label", l.spoken)}
	for _, piece := range l.pieces {
		parts = append(parts, html.El("math", append([]html.Part{html.A("aria-hidden", "true")}, piece...)...))
	}
	return html.El("div", parts...)
}
