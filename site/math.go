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

// chain is a row of equal expressions: symbol = formula = value. Nil trees are
// left out; value may be "".
func chain(names expr.Naming, value string, trees ...expr.Node) html.Node {
	parts := []html.Part{html.A("display", "block")}
	spoken := ""
	equals := func() {
		if spoken != "" {
			parts = append(parts, html.El("mo", html.Text("=")))
			spoken += ", equals, "
		}
	}
	var last expr.Node
	for _, t := range trees {
		if t == nil || t == last {
			continue
		}
		last = t
		equals()
		parts = append(parts, markup(expr.Math(t, names)))
		spoken += expr.Speech(t, names)
	}
	if value != "" {
		equals()
		parts = append(parts, html.El("mtext", html.Text(value)))
		spoken += value
	}
	parts = append(parts, html.A("aria-label", spoken))
	return html.El("math", parts...)
}
