package site

import (
	"strings"

	"closingside/site/html"
	"closingside/tutor/figure"
	"closingside/tutor/text"
)

// next is the bar with the one clear next step, and the way back from the last
// one. On a phone it stands at the lower edge, under the thumb.
func (d *desk) next() html.Node {
	if d.sketching() {
		return d.sketchNext()
	}
	name := d.work.Next()
	if name == "" {
		return html.El("div", html.ID("next"), html.Class("next done"), d.latest(), d.undo())
	}
	q := d.lesson.Quantity(name)
	return html.El("div", html.ID("next"), html.Class("next"),
		html.El("p", html.El("span", html.Class("label"), html.Text(text.Say("page.next.label")+" "), html.El("b", d.lettered(name))),
			d.prose(" "+d.lesson.Sentence(q, "what"))),
		d.undo(),
		d.find(name, html.ID("next-find"), html.Class("button primary")))
}

// latest tells what was entered last; nothing where nothing was.
func (d *desk) latest() html.Node {
	last := d.work.Latest()
	if last == nil {
		return html.Node{}
	}
	return html.El("p", d.prose(text.Say("page.latest", "entry", last.Entry, "symbol", d.symbol(last.Quantity))))
}

// find leads to the field of a quantity.
func (d *desk) find(name string, parts ...html.Part) html.Node {
	before, after, _ := strings.Cut(text.Say("page.next.go", "symbol", "\n"), "\n")
	return html.El("a", append(parts, html.Href("#entry-"+name),
		html.El("span", html.Text(before), d.lettered(name), html.Text(after)))...)
}

// lettered is a quantity's symbol as text, its subscript lowered.
func (d *desk) lettered(name string) html.Node {
	s := d.lesson.Symbol(name)
	return styled(figure.Symbol(s.Letter, s.Sub).Runs)
}

// undo takes back the latest entry, which its name tells; nothing where there
// is none.
func (d *desk) undo() html.Node {
	last := d.work.Latest()
	if last == nil {
		return html.Node{}
	}
	return html.El("form", html.Hidden("do", "undo"), html.Hidden("problem", d.code),
		button(text.Say("page.undo"), "plain", html.ID("undo"),
			html.A("aria-label", text.Say("page.undo.what", "entry", last.Entry, "symbol", d.symbol(last.Quantity)))))
}

// tools are the quiet buttons at the foot of the desk. At the end the one
// suggestion stands alone.
func (d *desk) tools() html.Node {
	parts := []html.Part{html.ID("tools"), html.Class("tools")}
	if !d.work.Done() {
		parts = append(parts, act("draw", text.Say("page.another"), "plain", html.Hidden("kind", d.lesson.Kind.Name), html.Hidden("like", d.code)))
	}
	return html.El("div", append(parts,
		html.El("details", html.El("summary", html.Text(text.Say("page.again"))),
			html.El("p", html.Text(text.Say("page.again.sure"))),
			act("again", text.Say("page.again.yes"), "grave", html.Hidden("problem", d.code))))...)
}
