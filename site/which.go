package site

import (
	"closingside/site/html"
	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// which is the buttons under a question between two slips; nothing where none
// is open.
func (d *desk) which(q *lesson.Quantity, a *tutor.Attempt) html.Node {
	options := d.work.Options(a)
	if options == nil {
		return html.Node{}
	}
	options = append(options, text.Say("page.which.neither"))
	parts := []html.Part{html.Class("which"), html.A("role", "group"), html.A("aria-label", text.Say("page.which"))}
	for i, label := range options {
		parts = append(parts, html.El("form", html.Hidden("do", "answer"), html.Hidden("problem", d.code), html.Hidden("quantity", q.Name),
			html.Hidden("entry", a.Entry), html.Hidden("which", itoa(i+1)), html.El("button", html.Class("plain"), html.El("span", d.prose(label)))))
	}
	return html.El("div", parts...)
}

// chosen takes the answer to such a question.
func (d *desk) chosen(f Form, name string) (tutor.Reply, bool) {
	d.open = name
	a := d.work.Standing(name)
	if entry, ok := f.Lookup("entry"); a == nil || ok && a.Entry != entry {
		return tutor.Reply{}, false // another page has entered something else since
	}
	choices := map[string]tutor.Choice{"1": tutor.First, "2": tutor.Second, "3": tutor.Neither}
	return d.work.Answer(name, choices[f.Get("which")])
}
