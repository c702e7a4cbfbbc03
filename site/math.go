package site

import (
	"closingside/site/html"
	"closingside/statics/expr"
)

// markup is a tree of MathML as the page's builder holds it.
func markup(m expr.Markup) html.Node {
	parts := make([]html.Part, 0, len(m.Attr)+len(m.Kids)+1)
	for _, a := range m.Attr {
		parts = append(parts, html.A(a.Name, a.Value))
	}
	if m.Text != "" {
		parts = append(parts, html.Text(m.Text))
	}
	for _, k := range m.Kids {
		parts = append(parts, markup(k))
	}
	return html.El(m.Tag, parts...)
}

// chain is a formula written out, one equality a line: symbol = formula, then
// = numbers, then = value. Trees that repeat the one before are left out; value
// may be "".
func chain(names expr.Naming, value string, trees ...expr.Node) html.Node {
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
		add(markup(expr.Math(t, names)), expr.Speech(t, names)+" ")
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
