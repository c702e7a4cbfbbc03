package site

import (
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
