package site

import (
	"strings"

	"closingside/site/html"
	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

// attempt is one entry of the history and what was said of it: with the reason
// where the learner stands by it, and a word where it was judged again.
func (d *desk) attempt(q *lesson.Quantity, a *tutor.Attempt) html.Node {
	said, standing := a.Feedback, a == d.work.Standing(q.Name)
	if standing {
		said = d.work.Beside(a)
	}
	parts := []html.Part{html.Data("verdict", a.Verdict.String()),
		html.El("b", html.Text(a.Entry)), d.prose(" " + d.lesson.Heading(&a.Reply) + ". " + said)}
	if a.Since != "" {
		parts = append(parts, html.El("p", html.Class("soft"), html.Text(text.Say("page.since", "from", d.lesson.SymbolText(a.Since)))))
	}
	if a.Reason != "" {
		parts = append(parts, html.El("p", html.Text(text.Say("page.stand.stood")+" "), html.El("q", html.Text(a.Reason))))
	}
	if standing {
		parts = append(parts, d.which(q, a))
	}
	if standing && a.Verdict != verdict.Correct {
		parts = append(parts, d.standForm(q, a))
	}
	return html.El("li", parts...)
}

// standForm lets the learner stand by a refused entry, with a reason, or
// withdraw.
func (d *desk) standForm(q *lesson.Quantity, a *tutor.Attempt) html.Node {
	id, symbol := "reason-"+q.Name, d.lesson.SymbolText(q.Name)
	fields := []html.Part{html.Hidden("problem", d.code), html.Hidden("quantity", q.Name), html.Hidden("entry", a.Entry)}
	if a.Reason != "" {
		label := text.Say("page.stand.withdraw")
		return html.El("form", append(fields, html.Hidden("do", "withdraw"), button(label, "plain", html.ID("stand-"+q.Name), html.A("aria-label", label+": "+symbol)))...)
	}
	label := text.Say("page.stand")
	form := append(fields, html.Hidden("do", "stand"),
		html.El("label", html.A("for", id), html.Text(text.Say("page.stand.why"))),
		html.El("div", html.Class("entry"),
			html.El("input", html.ID(id), html.A("name", "reason"), html.A("maxlength", itoa(tutor.MaxReason)), html.A("autocomplete", "off"), html.Flag("required")),
			button(text.Say("page.stand.go"), "plain")))
	return html.El("details", html.El("summary", html.ID("stand-"+q.Name), html.A("aria-label", label+": "+symbol), html.Text(label)), html.El("form", form...))
}

// standBy does what a request asks of an entry stood by; it tells whether
// anything came of it.
func (d *desk) standBy(f Form, name string) bool {
	d.open = name
	a := d.work.Standing(name)
	if entry, ok := f.Lookup("entry"); ok && (a == nil || a.Entry != entry) {
		return false // another page has entered something else since
	}
	if f.Get("do") == "withdraw" {
		return d.work.Withdraw(name)
	}
	return d.work.Stand(name, f.Get("reason"))
}

// standHeard is what is announced of it, and what is in use then.
func (d *desk) standHeard(name string) (said, focus string) {
	a := d.work.Standing(name)
	switch {
	case a == nil:
		return "", ""
	case a.Reason != "":
		return text.Say("page.stand.kept"), "stand-" + name
	}
	return text.Say("page.stand.withdrawn"), "stand-" + name
}

// judgedAgain is what is announced of the entries that another one changed.
func (d *desk) judgedAgain() string {
	var all []string
	for _, name := range d.work.Changed() {
		q := d.lesson.Quantity(name)
		if a := d.work.Standing(name); a != nil {
			all = append(all, text.Say("page.again.judged", "symbol", d.lesson.SymbolText(q.Name), "verdict", d.lesson.Heading(&a.Reply)))
		}
	}
	return strings.Join(all, " ")
}
