package site

import (
	"strconv"

	"closingside/site/html"
	"closingside/tutor"
	"closingside/tutor/text"
)

// screen is the whole of <main> as the session stands.
func (s *session) screen() html.Node {
	if d := s.desks[s.current]; d != nil {
		d.catchUp()
		return d.screen()
	}
	return s.home()
}

func button(label, class string, extra ...html.Part) html.Node {
	parts := append([]html.Part{html.Class(class)}, extra...)
	return html.El("button", append(parts, html.Text(label))...)
}

// act is a form of one button: it asks for something to be done.
func act(do, label, class string, fields ...html.Node) html.Node {
	parts := []html.Part{html.Hidden("do", do)}
	for _, f := range fields {
		parts = append(parts, f)
	}
	return html.El("form", append(parts, button(label, class))...)
}

// home is the list of problems.
func (s *session) home() html.Node {
	parts := []html.Part{html.ID("main"), html.A("tabindex", "-1"), html.Data("hash", ""),
		html.El("h1", html.ID("title"), html.A("tabindex", "-1"), html.Text(text.Say("page.home.title")))}
	if s.refused != "" && s.draft == nil {
		parts = append(parts, html.El("p", html.Class("notice"), html.A("role", "alert"), html.Text(s.refused)))
	}
	if n := len(s.order); n > 0 {
		last := s.desks[s.order[n-1]]
		parts = append(parts, html.El("section", html.Class("sheet"), html.A("aria-labelledby", "going"),
			html.El("h2", html.ID("going"), html.Text(text.Say("page.home.going"))), s.choices([]*tutor.Problem{last.lesson.Problem})))
	}
	for _, k := range tutor.Kinds() {
		id := "kind-" + k.Name
		parts = append(parts, html.El("section", html.Class("sheet"), html.A("aria-labelledby", id),
			html.El("h2", html.ID(id), html.Text(text.Say(k.Name+".title"))),
			html.El("p", html.Text(text.Say(k.Name+".about"))),
			html.El("h3", html.Text(text.Say("page.home.choose"))),
			s.choices(k.BankProblems()),
			act("draw", text.Say("page.home.draw"), "primary", html.Hidden("kind", k.Name)),
			s.ownForm(k)))
	}
	return html.El("main", parts...)
}

func (s *session) choices(problems []*tutor.Problem) html.Node {
	items := []html.Part{html.Class("choices")}
	for _, p := range problems {
		code := p.Code()
		label := p.Story
		if label == "" {
			label = text.Say(p.Kind.Name + ".title")
		}
		mark := ""
		if d := s.desks[code]; d != nil {
			d.catchUp()
			switch {
			case d.work.Done():
				mark = text.Say("page.state.done")
			case len(d.work.Past) > 0:
				mark = text.Say("page.state.begun")
			}
		}
		items = append(items, html.El("li", html.El("form", html.Hidden("do", "open"), html.Hidden("problem", code),
			html.El("button", html.El("span", html.Text(label)),
				html.If(mark != "", html.El("span", html.Class("soft"), html.Text(" · "+mark)))))))
	}
	return html.El("ul", items...)
}

// why tells beside the form why a problem of one's own was not opened.
func (s *session) why() html.Node {
	return html.El("p", html.ID("refused"), html.Class("notice"), html.A("role", "alert"), html.A("tabindex", "-1"), html.Data("focus", "refused"), html.Text(s.refused))
}

// ownForm takes a problem of the learner's own.
func (s *session) ownForm(k *tutor.Kind) html.Node {
	mine := s.draft.Get("kind") == k.Name
	fields := []html.Part{html.Hidden("do", "own"), html.Hidden("kind", k.Name), html.El("p", html.Text(text.Say("page.home.own.how")))}
	for _, g := range k.Groups {
		for i := range g.Min {
			set := []html.Part{html.El("legend", html.Text(text.Say("page.item."+g.Key, "n", strconv.Itoa(i+1))))}
			for _, spec := range g.Fields {
				name := fieldName(g.Key, i, spec.Key)
				value := ""
				if mine {
					value = s.draft.Get(name)
				}
				id := k.Name + "." + name
				input := []html.Part{html.ID(id), html.A("name", name), html.A("value", value), html.A("placeholder", spec.Example),
					html.A("autocomplete", "off"), html.A("autocapitalize", "off"), html.A("spellcheck", "false")}
				why := html.Nodes(nil)
				if mine && s.refused != "" && s.wrong == name {
					input = append(input, html.A("aria-invalid", "true"), html.A("aria-describedby", "refused"), html.Data("focus", id))
					why = html.Nodes{s.why()}
				}
				set = append(set, html.El("label", html.A("for", id), html.Text(text.Say("page.field."+spec.Key))), html.El("input", input...), why)
			}
			fields = append(fields, html.El("fieldset", set...))
		}
	}
	if mine && s.refused != "" && s.wrong == "" {
		fields = append(fields, s.why())
	}
	fields = append(fields, button(text.Say("page.home.own.go"), "primary"))
	parts := []html.Part{html.El("summary", html.Text(text.Say("page.home.own"))), html.El("form", fields...)}
	if mine {
		parts = append(parts, html.Flag("open"))
	}
	return html.El("details", parts...)
}
