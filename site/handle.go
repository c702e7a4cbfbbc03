package site

import (
	"strings"

	"closingside/site/html"
)

// Handle answers one request; see the package comment for both forms.
func Handle(req []byte) []byte {
	first, rest, _ := strings.Cut(string(req), "\n")
	f := ReadForm(first)
	switch f.Get("do") {
	case "start":
		here = desk{}
		for line := range strings.SplitSeq(rest, "\n") {
			here.record(ReadForm(line))
		}
		return here.main().Render(nil)
	case "enter":
		here.record(f)
		return html.Nodes{here.list(), reading(""), say(f.Get("entry"))}.Render(nil)
	case "read":
		return reading(f.Get("entry")).Render(nil)
	}
	return say("").Render(nil)
}

// desk is what one learner has in front of them.
type desk struct{ entries []string }

var here desk

func (d *desk) record(f Form) {
	if f.Get("do") == "enter" {
		d.entries = append(d.entries, f.Get("entry"))
	}
}

func (d *desk) main() html.Node {
	return html.El("main", html.ID("main"),
		html.El("h1", html.ID("title"), html.A("tabindex", "-1"), html.Text("Two tugs hold a barge off the quay")),
		html.El("form", html.ID("form-R"), html.Class("quantity"), html.Data("live", ""),
			html.Hidden("do", "enter"), html.Hidden("quantity", "R"),
			html.El("label", html.A("for", "entry-R"), html.Text("Magnitude of the resultant R")),
			html.El("input", html.ID("entry-R"), html.A("name", "entry"), html.A("autocomplete", "off")),
			html.El("button", html.Text("Check"))),
		reading(""), d.list())
}

func (d *desk) list() html.Node {
	rows := make([]html.Part, 0, len(d.entries)+1)
	rows = append(rows, html.ID("history-R"))
	for _, e := range d.entries {
		rows = append(rows, html.El("li", html.Data("verdict", "unexplained"), html.Text(e)))
	}
	return html.El("ol", rows...)
}

func reading(s string) html.Node {
	return html.El("output", html.ID("reading-R"), html.A("for", "entry-R"), html.Text(s))
}

func say(s string) html.Node { return html.El("p", html.ID("say"), html.Text(s)) }
