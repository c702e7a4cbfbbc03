package html

import (
	"encoding/xml"
	stdhtml "html"
	"io"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestRender(t *testing.T) {
	rows := []struct {
		name, want string
		node       Node
	}{
		{"element", `<p id="answer" class="verdict">R = 682.6 N</p>`, El("p", ID("answer"), Class("verdict"), Text("R = 682.6 N"))},
		{"text is escaped", `<p>a &lt; b &amp;&amp; &quot;c&quot; &gt; d</p>`, El("p", Text(`a < b && "c" > d`))},
		{"attribute is escaped", `<p title="&quot;&gt;&lt;b&gt;"></p>`, El("p", A("title", `"><b>`))},
		{"void element", `<input type="hidden" name="do" value="enter">`, Hidden("do", "enter")},
		{"boolean attribute", `<details open></details>`, El("details", Flag("open"))},
		{"empty value kept", `<input value="">`, El("input", A("value", ""))},
		{"nil and empty parts are left out", `<p></p>`, El("p", nil, Text(""), If(false, Text("no")), Nodes(nil))},
		{"group has no element", `<p>a<b>c</b></p>`, El("p", Group(Text("a"), El("b", Text("c"))))},
		{"first line feed of pre", "<pre>\n\nx</pre>", El("pre", Group(Text("\nx")))},
		{"carriage return", "<p>a&#13;b</p>", El("p", Text("a\rb"))},
		{"control and broken bytes", "<p>�a��</p>", El("p", Text("\x00a\xff\x1b"))},
		{"a real U+FFFD stays", "<p>�</p>", El("p", Text("\uFFFD"))},
		{"svg", `<svg viewBox="0 0 9 9"><path d="M0 0L9 9"></path></svg>`, El("svg", A("viewBox", "0 0 9 9"), El("path", A("d", "M0 0L9 9")))},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) { assert.Equal(t, r.want, r.node.String()) })
	}
	both := Nodes{Text("a"), El("br")}
	assert.Equal(t, "a<br>", string(both.Render(nil)))
}

func TestAddresses(t *testing.T) {
	for in, want := range map[string]string{
		"#p=1": "#p=1", "index.html": "index.html", "./a?b=c:d": "./a?b=c:d", "https://example.org/": "https://example.org/",
		"javascript:alert(1)": "#", "JAVASCRIPT:alert(1)": "#", " javascript:alert(1)": "#", "java\tscript:alert(1)": "#",
		"data:text/html,x": "#", "\x01javascript:x": "#", "vbscript:x": "#", "": "",
	} {
		t.Run(in, func(t *testing.T) {
			assert.Equal(t, `<a href="`+Escape(want)+`"></a>`, El("a", Href(in)).String())
		})
	}
}

func TestWrongNamesPanic(t *testing.T) {
	rows := map[string]func(){
		"script":          func() { El("script", Text("x")) },
		"style element":   func() { El("STYLE") },
		"bad tag":         func() { El("p onclick") },
		"empty tag":       func() { El("") },
		"inline handler":  func() { El("p", A("onclick", "x")) },
		"inline style":    func() { El("p", A("style", "color:red")) },
		"bad attribute":   func() { El("p", A(`x"y`, "")) },
		"attribute twice": func() { El("p", ID("a"), ID("b")) },
		"content in void": func() { El("br", Text("x")) },
	}
	for name, f := range rows {
		t.Run(name, func(t *testing.T) { assert.Panics(t, f) })
	}
}

// Whatever the text, the standard library's two readers get it back: its XML
// decoder from the element, its HTML unescaper from the characters.
func TestEscapeReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) { checkEscape(t, rapid.String().Draw(t, "text")) })
}

func FuzzEscape(f *testing.F) {
	for _, s := range []string{"", "F₁ < F₂", `"'&<>`, "&amp;", "</p><script>", "\r\n\t", "\x00\x1b\x7f\u0085\ufffe", "\xc3\x28", "\xed\xa0\x80"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) { checkEscape(t, s) })
}

func checkEscape(t require.TestingT, s string) {
	want := clean(s)
	out := Escape(s)
	require.True(t, utf8.ValidString(out))
	require.False(t, strings.ContainsAny(out, "<>\"\r"), out)
	require.Equal(t, want, stdhtml.UnescapeString(out))
	require.Equal(t, Escape(want), out, "cleaning changes nothing that is written")

	page := El("p", A("title", s), Text(s)).String()
	d := xml.NewDecoder(strings.NewReader(page))
	var title, body string
	for {
		token, err := d.Token()
		if err == io.EOF {
			break
		}
		require.NoError(t, err, page)
		switch v := token.(type) {
		case xml.StartElement:
			require.Equal(t, "p", v.Name.Local)
			title = v.Attr[0].Value
		case xml.CharData:
			body += string(v)
		}
	}
	require.Equal(t, want, title)
	require.Equal(t, want, body)
}

// clean is an independent statement of what no page can carry.
func clean(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\t' || r == '\n' || r == '\r':
			return r
		case r < 32, r > 126 && r < 160, r > 0xfdcf && r < 0xfdf0, r&0xffff > 0xfffd:
			return utf8.RuneError
		}
		return r
	}, validate(s))
}

func BenchmarkRender(b *testing.B) {
	row := func() Node {
		return El("li", Class("quantity"), El("label", A("for", "entry-R"), Text("magnitude of the resultant R")),
			El("input", ID("entry-R"), A("name", "entry"), A("inputmode", "decimal")), El("button", Text("Check")))
	}
	buf := make([]byte, 0, 1<<14)
	b.ReportAllocs()
	for b.Loop() {
		list := make([]Part, 0, 20)
		for range 20 {
			list = append(list, row())
		}
		buf = El("ul", list...).Render(buf[:0])
	}
	require.Len(b, buf, len(row().String())*20+len("<ul></ul>"))
}

// validate replaces each byte that is not UTF-8 by one U+FFFD.
func validate(s string) string { return string([]rune(s)) }
