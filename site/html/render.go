package html

import (
	"strings"
	"unicode/utf8"
)

// Render appends the fragment to dst.
func (k Node) Render(dst []byte) []byte {
	if k.tag == "" {
		dst = appendEscaped(dst, k.text)
		for _, kid := range k.kids {
			dst = kid.Render(dst)
		}
		return dst
	}
	dst = append(dst, '<')
	dst = append(dst, k.tag...)
	for _, a := range k.attrs {
		dst = append(dst, ' ')
		dst = append(dst, a.Name...)
		if a.Value != "" || !boolean(a.Name) {
			dst = append(dst, '=', '"')
			dst = appendEscaped(dst, a.Value)
			dst = append(dst, '"')
		}
	}
	dst = append(dst, '>')
	if void(k.tag) {
		return dst
	}
	if (k.tag == "pre" || k.tag == "textarea") && strings.HasPrefix(k.firstText(), "\n") {
		dst = append(dst, '\n') // HTML drops the first line feed of these two
	}
	for _, kid := range k.kids {
		dst = kid.Render(dst)
	}
	dst = append(dst, '<', '/')
	dst = append(dst, k.tag...)
	return append(dst, '>')
}

// Render appends the fragments to dst, one after another.
func (ks Nodes) Render(dst []byte) []byte {
	for _, k := range ks {
		dst = k.Render(dst)
	}
	return dst
}

// String is the fragment as text.
func (k Node) String() string { return string(k.Render(nil)) }

func (k Node) firstText() string {
	for ; len(k.kids) > 0; k = k.kids[0] {
		if k.kids[0].tag != "" {
			return ""
		}
		if k.kids[0].text != "" {
			return k.kids[0].text
		}
	}
	return ""
}

// boolean lists the attributes that are written without a value. SVG and
// MathML have none, so their fragments stay readable as XML.
func boolean(name string) bool {
	switch name {
	case "hidden", "required", "disabled", "checked", "selected", "open", "readonly", "multiple", "autofocus", "novalidate", "reversed", "inert":
		return true
	}
	return false
}

// Escape is s as it is written in a text or inside double quotes: the one
// escaping function. Bytes that are not UTF-8, controls and other characters
// that neither HTML nor XML admits become U+FFFD.
func Escape(s string) string { return string(appendEscaped(nil, s)) }

func appendEscaped(dst []byte, s string) []byte {
	start := 0
	for i := 0; i < len(s); {
		r, size := rune(s[i]), 1
		if r >= utf8.RuneSelf {
			r, size = utf8.DecodeRuneInString(s[i:])
		}
		if with := escapeRune(r, size); with != "" {
			dst = append(dst, s[start:i]...)
			dst = append(dst, with...)
			start = i + size
		}
		i += size
	}
	return append(dst, s[start:]...)
}

// escapeRune is what stands for r, or "" when r stands for itself. size is
// the number of bytes r was read from: 1 for a broken sequence.
func escapeRune(r rune, size int) string {
	switch r {
	case '&':
		return "&amp;"
	case '<':
		return "&lt;"
	case '>':
		return "&gt;"
	case '"':
		return "&quot;"
	case '\r':
		return "&#13;" // a bare one would become a line feed
	case '\t', '\n':
		return ""
	}
	if r < ' ' || r >= 0x7f && r <= 0x9f || r == utf8.RuneError && size == 1 ||
		r >= 0xfdd0 && r <= 0xfdef || r&0xfffe == 0xfffe {
		return "�"
	}
	return ""
}
