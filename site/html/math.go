package html

import "closingside/statics/expr"

// Math renders a formula. The spoken text, where there is one, is what a
// screen reader without MathML says.
func Math(m expr.Markup, spoken string) Node {
	n := FromMarkup(m)
	if m.Tag != "math" {
		n = El("math", n)
	}
	if spoken != "" {
		n.setAttr(A("aria-label", spoken))
	}
	return n
}

// FromMarkup is a part of a formula, to stand inside a math element.
func FromMarkup(m expr.Markup) Node {
	attrs := make(Attrs, len(m.Attr))
	for i, a := range m.Attr {
		attrs[i] = Attr(a)
	}
	n := El(m.Tag, attrs, Text(m.Text))
	for _, k := range m.Kids {
		FromMarkup(k).addTo(&n)
	}
	return n
}
