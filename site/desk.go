package site

import (
	"strconv"
	"strings"
	"unicode/utf8"

	"closingside/site/html"
	"closingside/statics/expr"
	"closingside/tutor"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

func itoa(n int) string { return strconv.Itoa(n) }

// screen is the desk: the statement and its figure, what comes next, and a
// card for every quantity.
func (d *desk) screen() html.Node {
	return html.El("main", html.ID("main"), html.A("tabindex", "-1"), html.Data("hash", d.code), html.Data("focus", "title"),
		d.back(),
		html.El("h1", html.ID("title"), html.A("tabindex", "-1"), html.Text(d.lesson.Problem.Title())),
		html.El("div", html.Class("given"), d.statement(), d.situation()),
		html.El("div", html.Class("board"), d.figure(),
			html.El("div", html.Class("worksheet"), d.next(), d.end(),
				d.onTheWay(),
				d.cards("answers", "page.answers", func(q *lesson.Quantity) bool { return q.Answer }),
				d.solution(), d.tools(), d.keys())))
}

// onTheWay are the cards of what is found on the way, by method: first the one
// a lesson puts first, with what both need.
func (d *desk) onTheWay() html.Nodes {
	first := d.lesson.Ways[0].Method
	cards := func(m lesson.Method) html.Node {
		id := "triangle"
		if m == lesson.ByComponents {
			id = "components"
		}
		return d.cards(id, m.Key(), func(q *lesson.Quantity) bool {
			of := q.Routes[0].Method
			return !q.Answer && (of == m || of == lesson.AnyMethod && m == first)
		})
	}
	if first == lesson.ByComponents {
		return html.Nodes{cards(lesson.ByComponents), cards(lesson.ByTriangle)}
	}
	return html.Nodes{cards(lesson.ByTriangle), cards(lesson.ByComponents)}
}

// cards is a list of the quantities that belong in it.
func (d *desk) cards(id, key string, belongs func(*lesson.Quantity) bool) html.Node {
	any := false
	parts := []html.Part{html.Class("cards"), html.A("aria-labelledby", id),
		html.El("h2", html.ID(id), html.Class("label"), html.Text(text.Say(key)))}
	for i := range d.lesson.Quantities {
		if q := &d.lesson.Quantities[i]; d.offered(q) && belongs(q) {
			parts, any = append(parts, d.card(q)), true
		}
	}
	return html.If(any, html.El("section", parts...))
}

// offered tells whether a card is shown for q: it is asked, or has been entered.
func (d *desk) offered(q *lesson.Quantity) bool {
	return d.work.Offered(q) || d.work.Standing(q.Name) != nil
}

// typed is what stays in a quantity's field: the last entry, where it still has
// to be worked on.
func (d *desk) typed(q *lesson.Quantity) string {
	if r := d.work.Unread(q.Name); r != nil {
		return r.Entry
	}
	if a := d.work.Standing(q.Name); a != nil && a.Verdict != verdict.Correct {
		return a.Entry
	}
	return ""
}

func (d *desk) statement() html.Node {
	parts := []html.Part{html.Class("statement")}
	for _, given := range d.lesson.Given() {
		parts = append(parts, html.El("p", html.Text(given)))
	}
	parts = append(parts, html.El("p", d.prose(d.lesson.Task())))
	return html.El("div", parts...)
}

func (d *desk) nextWords(q *lesson.Quantity) string {
	return text.Say("page.next", "symbol", expr.Plain(expr.S(q.Name), d.lesson.Symbol), "what", d.lesson.Sentence(q, "what"))
}

// card is one quantity of the worksheet: its form, what was said, its hints.
// It is open when it is the next step or the one in use.
func (d *desk) card(q *lesson.Quantity) html.Node {
	typed := d.typed(q)
	read := typed
	if d.work.Unread(q.Name) != nil { // the history says why
		read = ""
	}
	symbol := expr.Plain(expr.S(q.Name), d.lesson.Symbol)
	state := d.state(q)
	head := html.El("summary", html.El("math", html.A("aria-label", expr.Speech(expr.S(q.Name), d.lesson.Symbol)), // else its letters are left out of the name
		html.FromMarkup(expr.Math(expr.S(q.Name), d.lesson.Symbol))),
		html.El("span", d.prose(d.lesson.Sentence(q, "what"))),
		html.If(state == "found", html.El("span", html.Class(valueClass(q, d.foundText(q))), html.Text(d.foundText(q)))),
		html.If(d.again(q), html.El("span", html.Class("again"), html.Text(text.Say("page.again.mark")))))
	parts := []html.Part{html.ID("card-" + q.Name), html.Class("quantity"), html.Data("state", state), head}
	if form := []html.Part{d.form(q, symbol, typed), d.reading(q, read)}; state == "found" {
		again := append([]html.Part{html.Class("again"), html.El("summary", html.Text(text.Say("page.enter.again")))}, form...)
		if d.work.Unread(q.Name) != nil {
			again = append(again, html.Flag("open"))
		}
		parts = append(parts, html.El("details", again...))
	} else {
		parts = append(parts, form...)
	}
	if past := d.history(q); len(past) > 0 {
		parts = append(parts, html.El("ol", append([]html.Part{html.Class("history"), html.A("aria-label", text.Say("page.history"))}, past...)...))
	}
	for level := 1; level <= d.work.Hinted(q.Name); level++ {
		parts = append(parts, d.hint(q, level))
	}
	if n := d.work.Hinted(q.Name); n < tutor.HintLevels && state != "found" && d.work.MayHint(q.Name) {
		label := text.Say("page.hint")
		if n > 0 {
			label = text.Say("page.hint.more")
		}
		parts = append(parts, html.El("form", html.Hidden("do", "hint"), html.Hidden("problem", d.code), html.Hidden("quantity", q.Name),
			button(label, "plain", html.ID("hint-"+q.Name), html.A("aria-label", label+": "+symbol))))
	}
	if d.unfolded(q.Name) {
		parts = append(parts, html.Flag("open"))
	}
	return html.El("details", parts...)
}

// unfolded tells whether a card is open: the one in use, and the next step
// where none is in use or the one in use is found.
func (d *desk) unfolded(name string) bool {
	if d.sketching() { // one thing at a time
		return false
	}
	return d.open == name || d.work.Next() == name && (d.open == "" || d.work.Found(d.open))
}

func (d *desk) form(q *lesson.Quantity, symbol, typed string) html.Node {
	id := "entry-" + q.Name
	return html.El("form", html.Data("live", ""), html.Hidden("do", "enter"), html.Hidden("problem", d.code), html.Hidden("quantity", q.Name),
		html.El("label", html.A("for", id), d.prose(symbol+" "+d.work.Asked(q))),
		html.El("div", html.Class("entry"),
			html.El("input", html.ID(id), html.A("name", "entry"), html.A("value", typed), html.A("autocomplete", "off"), html.A("autocapitalize", "off"),
				html.A("spellcheck", "false"), html.A("enterkeyhint", "done"), html.A("aria-describedby", "reading-"+q.Name)),
			button(text.Say("page.check"), "check")))
}

// keys are the keys a phone's keyboard hides. They type into the field last in
// use, and show while one is in use.
func (d *desk) keys() html.Node {
	keys := []struct{ insert, label, name string }{ // a name where the label is no word
		{"−", "−", "minus"}, {"°", "°", "degrees"}, {"√(|)", "√", "root"},
		{"sin(|)", "sin", ""}, {"cos(|)", "cos", ""}, {"tan(|)", "tan", ""}, {"sin⁻¹(|)", "sin⁻¹", ""},
		{"^", "^", "power"}, {"(", "(", "open"}, {")", ")", "close"}, {"π", "π", ""},
		{"cos⁻¹(|)", "cos⁻¹", ""}, {"tan⁻¹(|)", "tan⁻¹", ""},
	}
	parts := []html.Part{html.ID("keys"), html.Class("keys"), html.A("role", "group"), html.A("aria-label", text.Say("page.keys"))}
	add := func(insert, name string, label html.Node) {
		key := []html.Part{html.A("type", "button"), html.Data("insert", insert), label}
		if name != "" {
			key = append(key, html.A("aria-label", name))
		}
		parts = append(parts, html.El("button", key...))
	}
	for _, k := range keys {
		name := k.name
		if name != "" {
			name = text.Say("page.key." + name)
		}
		add(k.insert, name, html.Text(k.label))
	}
	equations := false
	for i := range d.lesson.Quantities {
		equations = equations || d.lesson.Quantities[i].Equation
	}
	if equations {
		add("=", "", html.Text("="))
	}
	for i := range d.lesson.Quantities {
		o := &d.lesson.Quantities[i]
		if o.Given || o.Unknown && equations || d.work.Found(o.Name) && !o.Equation {
			add(d.symbol(o.Name), "", html.El("span", d.lettered(o.Name))) // one part: a key lays its parts side by side
		}
	}
	return html.El("div", parts...)
}

// reading shows how an entry is read, in mathematical notation.
func (d *desk) reading(q *lesson.Quantity, typed string) html.Node {
	parts := []html.Part{html.ID("reading-" + q.Name), html.Class("reading")}
	if strings.TrimSpace(typed) == "" {
		return html.El("div", parts...)
	}
	r, bad := d.work.Read(q.Name, typed)
	if bad != nil {
		return html.El("div", append(parts, html.Text(bad.Message()))...)
	}
	parts = append(parts, html.Text(text.Say("page.reading")+" "))
	switch r.Form {
	case entry.Number, entry.Direction:
		parts = append(parts, html.Text(d.work.ShownReading(q, r)))
	case entry.Equation:
		parts = append(parts, Chain(d.lesson.Symbol, "", r.Tree, r.Right))
	default:
		parts = append(parts, Chain(d.lesson.Symbol, "", r.Tree))
	}
	return html.El("div", parts...)
}

// history is what was entered for q and what was said, newest first.
func (d *desk) history(q *lesson.Quantity) []html.Part {
	var items []html.Part
	for i := len(d.work.Past) - 1; i >= 0; i-- {
		a := &d.work.Past[i]
		if a.Quantity != q.Name || a.Undone {
			continue
		}
		items = append(items, d.attempt(q, a))
	}
	if u := d.work.Unread(q.Name); u != nil {
		items = append([]html.Part{html.El("li", html.Data("verdict", u.Verdict.String()),
			html.El("b", html.Text(u.Entry)), d.prose(" "+text.Say("verdict.unreadable")+". "+u.Feedback))}, items...)
	}
	return items
}

// again tells whether the entry that stands for q was judged again.
func (d *desk) again(q *lesson.Quantity) bool {
	a := d.work.Standing(q.Name)
	return a != nil && a.Since != ""
}

// shortValue is the longest entry, in letters, that leaves room on a phone for
// the words beside it.
const shortValue = 12

// valueClass tells an equation or a line of working, which takes a line of its
// own, from a value.
func valueClass(q *lesson.Quantity, entry string) string {
	if q.Equation || utf8.RuneCountInString(entry) > shortValue {
		return "value long"
	}
	return "value"
}

func (d *desk) foundText(q *lesson.Quantity) string {
	if a := d.work.Standing(q.Name); a != nil {
		return a.Entry
	}
	return ""
}

func (d *desk) state(q *lesson.Quantity) string {
	switch a := d.work.Standing(q.Name); {
	case a == nil:
		return "open"
	case a.Verdict == verdict.Correct:
		return "found"
	}
	return "tried"
}

// states tells of every quantity what its card shows, so that what changed is
// sent again.
func (d *desk) states() map[string]string {
	next := d.work.Next()
	all := map[string]string{}
	for i := range d.lesson.Quantities {
		q := &d.lesson.Quantities[i]
		if q.Given {
			continue
		}
		s := d.state(q)
		if a := d.work.Standing(q.Name); a != nil {
			s += " " + a.Verdict.String()
		}
		if q.Name == next {
			s += " next"
		}
		if d.unfolded(q.Name) {
			s += " unfolded"
		}
		all[q.Name] = s
	}
	return all
}

func (d *desk) hint(q *lesson.Quantity, level int) html.Node {
	h := d.work.HintAt(q.Name, level)
	parts := []html.Part{html.Class("hint"),
		html.El("p", html.El("span", html.Class("label"), html.Text(text.Say("page.hint.of", "n", itoa(level), "all", itoa(tutor.HintLevels))))),
		html.El("p", d.prose(h.Sentence))}
	if level == tutor.HintLevels { // it is in use instead of its button, which is gone
		parts = append(parts, html.ID("hint-"+q.Name), html.A("tabindex", "-1"))
	}
	if h.Formula != nil {
		parts = append(parts, Chain(d.lesson.Symbol, h.Formula.Value, expr.S(q.Name), h.Formula.Route.Tree, h.Formula.Numbers))
	}
	return html.El("div", parts...)
}

// hintWords is what is read aloud of the hint that was given last for a quantity.
func (d *desk) hintWords(name string) string {
	n := d.work.Hinted(name)
	if n == 0 {
		return ""
	}
	h := d.work.HintAt(name, n)
	if h.Formula == nil {
		return h.Sentence
	}
	return join(h.Sentence, spokenChain(d.lesson.Symbol, h.Formula.Value, expr.S(name), h.Formula.Route.Tree, h.Formula.Numbers)+".")
}

// solution is the worked solution, both ways, once it was asked for.
func (d *desk) solution() html.Node {
	switch {
	case !d.work.MaySolve():
		return html.El("div", html.ID("solution"))
	case !d.solved:
		return html.El("div", html.ID("solution"), act("solution", text.Say("page.solution"), "plain", html.Hidden("problem", d.code)))
	}
	parts := []html.Part{html.ID("solution"), html.Class("sheet"), html.El("h2", html.ID("solved"), html.A("tabindex", "-1"), html.Text(text.Say("page.solved")))}
	for _, way := range d.lesson.Solve(d.work.Settings) {
		steps, said := []html.Part{}, map[string]bool{}
		for _, s := range way.Steps {
			why := html.If(!said[s.Why], html.El("p", d.prose(s.Why))) // once a way is enough
			said[s.Why] = true
			steps = append(steps, html.El("li", why,
				Chain(d.lesson.Symbol, s.Value, expr.S(s.Quantity.Name), s.Route.Tree, s.Numbers)))
		}
		parts = append(parts, html.El("h3", html.Text(way.Heading())), html.El("ol", steps...))
	}
	return html.El("section", parts...)
}
