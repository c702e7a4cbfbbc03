package html

import "strings"

// Part is what an element is made of: an Attr, Attrs, a Node or Nodes. A nil
// Part is left out.
type Part interface{ addTo(*Node) }

// Node is an element, a text, or a run of nodes. The zero Node is empty.
type Node struct {
	tag   string
	text  string
	attrs []Attr
	kids  []Node
}

// Nodes is a run of nodes without an element around them.
type Nodes []Node

// Attr is an attribute. A boolean attribute has an empty value.
type Attr struct{ Name, Value string }

// Attrs is a list of attributes.
type Attrs []Attr

func (a Attr) addTo(n *Node) { n.setAttr(a) }

func (as Attrs) addTo(n *Node) {
	for _, a := range as {
		n.setAttr(a)
	}
}

func (k Node) addTo(n *Node) {
	if k.empty() {
		return
	}
	if void(n.tag) {
		panic("html: <" + n.tag + "> has no content")
	}
	n.kids = append(n.kids, k)
}

func (ks Nodes) addTo(n *Node) {
	for _, k := range ks {
		k.addTo(n)
	}
}

// El is the element called tag. Tags and attribute names are constants of the
// program: a malformed or forbidden one panics.
func El(tag string, parts ...Part) Node {
	if !validName(tag) || forbiddenTag(tag) {
		panic("html: no element <" + tag + ">")
	}
	n := Node{tag: tag}
	for _, p := range parts {
		if p != nil {
			p.addTo(&n)
		}
	}
	return n
}

// Text is a text; whatever it holds, it shows as written.
func Text(s string) Node { return Node{text: s} }

// Group is a run of nodes as one Node.
func Group(kids ...Node) Node { return Node{kids: kids} }

// If is n where the condition holds, and nothing elsewhere.
func If(condition bool, n Node) Node {
	if condition {
		return n
	}
	return Node{}
}

// A is the attribute called name.
func A(name, value string) Attr { return Attr{name, value} }

// Flag is a boolean attribute: hidden, required, open.
func Flag(name string) Attr { return Attr{Name: name} }

// ID is the id attribute.
func ID(id string) Attr { return Attr{"id", id} }

// Class is the class attribute; names are separated by spaces.
func Class(names string) Attr { return Attr{"class", names} }

// Href is the href attribute.
func Href(address string) Attr { return Attr{"href", address} }

// Data is the attribute data-name.
func Data(name, value string) Attr { return Attr{"data-" + name, value} }

// Hidden is an input that carries a value through a form.
func Hidden(name, value string) Node {
	return El("input", A("type", "hidden"), A("name", name), A("value", value))
}

func (k Node) empty() bool { return k.tag == "" && k.text == "" && len(k.kids) == 0 }

func (n *Node) setAttr(a Attr) {
	if !validName(a.Name) || forbiddenAttr(a.Name) {
		panic("html: no attribute " + a.Name + " on <" + n.tag + ">")
	}
	for _, b := range n.attrs {
		if b.Name == a.Name {
			panic("html: attribute " + a.Name + " twice on <" + n.tag + ">")
		}
	}
	if address(a.Name) {
		a.Value = safeAddress(a.Value)
	}
	n.attrs = append(n.attrs, a)
}

// validName reports whether s can be the name of an element or attribute: a
// letter, then letters, digits, '-', ':' and '_' (a subset of XML's names).
func validName(s string) bool {
	for i := range len(s) {
		c := s[i]
		letter := c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z'
		if !letter && (i == 0 || c != '-' && c != ':' && c != '_' && (c < '0' || c > '9')) {
			return false
		}
	}
	return s != ""
}

// forbiddenTag lists elements whose text is not escaped like other text, or
// that load something: none belongs in a fragment.
func forbiddenTag(tag string) bool {
	switch strings.ToLower(tag) {
	case "script", "style", "iframe", "object", "embed", "base", "meta", "link", "noscript", "plaintext", "xmp", "noembed", "noframes":
		return true
	}
	return false
}

// forbiddenAttr lists attributes the page's Content-Security-Policy blocks
// (inline handlers, inline styles) and one that holds a whole document.
func forbiddenAttr(name string) bool {
	l := strings.ToLower(name)
	return strings.HasPrefix(l, "on") || l == "style" || l == "srcdoc"
}

// void lists the elements of HTML that have no end tag.
func void(tag string) bool {
	switch tag {
	case "area", "br", "col", "hr", "img", "input", "source", "track", "wbr":
		return true
	}
	return false
}

func address(name string) bool {
	switch strings.ToLower(name) {
	case "href", "src", "action", "formaction", "xlink:href", "poster", "cite":
		return true
	}
	return false
}

// safeAddress is s when it is relative or a web address, and "#" when its
// scheme could do anything else (javascript:, data:, vbscript:).
func safeAddress(s string) string {
	for i := range len(s) {
		switch c := s[i]; {
		case c == '/' || c == '?' || c == '#':
			return s // no scheme before the first of these
		case c == ':':
			if l := strings.ToLower(s[:i]); l == "https" || l == "http" || l == "mailto" {
				return s
			}
			return "#"
		case c <= ' ' || c >= 0x7f || c == '&':
			return "#" // browsers drop blanks and controls before reading a scheme
		}
	}
	return s
}
