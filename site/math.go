package site

import (
	"closingside/site/html"
	"closingside/statics/expr"
)

// Chain is a formula written out, one equality a line: symbol = formula, then
// = numbers, then = value. Trees that repeat the one before are left out; value
// may be "".
func Chain(names expr.Naming, value string, trees ...expr.Node) html.Node {
	lines := []html.Part{html.Class("formula")}
	var row []html.Part
	spoken := ""
	add := func(n html.Node, words string) {
		row = append(row, n)
		spoken += words
	}
	end := func() {
		if len(row) > 0 {
			lines = append(lines, html.El("math", append([]html.Part{html.A("display", "block"), html.A("aria-label", spoken)}, row...)...))
		}
		row, spoken = nil, ""
	}
	equals := html.El("mo", html.Text("="))
	var last expr.Node
	for i, t := range trees {
		if t == nil || t == last {
			continue
		}
		if i > 1 {
			end()
		}
		if i > 0 {
			add(equals, "equals ")
		}
		add(html.FromMarkup(expr.Math(t, names)), expr.Speech(t, names)+" ")
		last = t
	}
	if value != "" {
		end()
		add(equals, "equals ")
		add(html.El("mtext", html.Text(value)), value)
	}
	end()
	return html.El("div", lines...)
}
