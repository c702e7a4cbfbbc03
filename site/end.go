package site

import (
	"slices"
	"strings"

	"closingside/site/html"
	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

// end is what the learner takes along once every answer is found: the values
// beside the worked solution, the way taken, the mistakes met, and one
// suggestion.
func (d *desk) end() html.Node {
	if !d.work.Done() {
		return html.El("div", html.ID("end"))
	}
	return html.El("section", html.ID("end"), html.Class("sheet end"), html.A("aria-labelledby", "done"),
		html.El("h2", html.ID("done"), html.A("tabindex", "-1"), html.Text(text.Say("page.done"))),
		d.onward(), d.suggestion(),
		html.El("h3", html.Text(text.Say("page.end.found"))),
		html.If(len(d.lesson.Ways) > 1 && d.begunAny(), html.El("p", html.Text(d.wayTaken()))),
		d.beside(),
		html.El("h3", html.Text(text.Say("page.end.met"))),
		d.met())
}

// wayTaken says by which method the values were found.
func (d *desk) wayTaken() string {
	if !slices.ContainsFunc(d.lesson.Ways, func(w lesson.Way) bool { return !d.begun(w) }) {
		return text.Say("page.end.both")
	}
	return text.Say("page.end.way", "way", text.Say(d.work.Going().Method.Key()+".by"))
}

// begun tells whether a step that only this way takes was found.
func (d *desk) begun(way lesson.Way) bool {
	return slices.ContainsFunc(way.Steps, func(s lesson.Step) bool { return d.work.Found(s.Quantity) && !d.shared(s.Quantity) })
}

// begunAny tells whether anything but the answers tells a way: who works on
// paper and enters those alone may have gone any.
func (d *desk) begunAny() bool { return slices.ContainsFunc(d.lesson.Ways, d.begun) }

// shared tells whether a quantity is on every way of the lesson.
func (d *desk) shared(name string) bool {
	return !slices.ContainsFunc(d.lesson.Ways, func(w lesson.Way) bool {
		return !slices.ContainsFunc(w.Steps, func(s lesson.Step) bool { return s.Quantity == name })
	})
}

// beside is a table of what was entered beside the worked solution of the way
// taken, each value with the formula it came by; of what was found alone where
// the worked solution is not to be shown.
func (d *desk) beside() html.Node {
	solved := d.work.MaySolve()
	parts := []html.Part{html.Class("beside"), html.El("thead", html.El("tr",
		html.El("th", html.A("scope", "col"), html.Text(text.Say("page.end.value"))),
		html.El("th", html.A("scope", "col"), html.Text(text.Say("page.end.yours"))),
		html.If(solved, html.El("th", html.A("scope", "col"), html.Text(text.Say("page.end.worked"))))))}
	steps := d.steps()
	for _, s := range steps {
		if solved {
			parts = append(parts, html.El("tbody", d.row(s.Quantity, s.Value, true),
				html.El("tr", html.El("td", html.A("colspan", "3"), d.howFound(s)))))
		} else if d.work.Found(s.Quantity.Name) {
			parts = append(parts, html.El("tbody", d.row(s.Quantity, "", false)))
		}
	}
	for i := range d.work.Lesson.Quantities { // no step of a worked solution, and found all the same
		q := &d.work.Lesson.Quantities[i]
		if d.work.Found(q.Name) && !slices.ContainsFunc(steps, func(s lesson.SolutionStep) bool { return s.Quantity.Name == q.Name }) {
			parts = append(parts, html.El("tbody", d.row(q, d.lesson.ShowKept(q, q.True, d.work.Settings), solved)))
		}
	}
	return html.El("table", parts...)
}

// row is a value as the learner has it, beside the worked one where that is to be shown.
func (d *desk) row(q *lesson.Quantity, worked string, solved bool) html.Node {
	yours := html.El("td", html.Class("soft"), html.Text(text.Say("page.end.none")))
	switch {
	case d.work.Found(q.Name):
		yours = html.El("td", d.prose(d.foundText(q)))
	case d.work.Standing(q.Name) != nil:
		yours = html.El("td", html.Class("soft"), html.Text(text.Say("page.end.wrong")))
	}
	return html.El("tr", html.El("th", html.A("scope", "row"), d.lettered(q.Name)), yours, html.If(solved, html.El("td", html.Text(worked))))
}

// steps are those of the worked solution on the way taken, and before each
// answer what else the learner found.
func (d *desk) steps() []lesson.SolutionStep {
	going := d.work.Going()
	var steps []lesson.SolutionStep
	for _, way := range d.work.Solution() {
		if way.Method == going.Method {
			steps = way.Steps
		}
	}
	for _, way := range d.work.Solution() {
		for _, s := range way.Steps {
			have := slices.ContainsFunc(steps, func(o lesson.SolutionStep) bool { return o.Quantity == s.Quantity })
			if !have && d.work.Found(s.Quantity.Name) {
				steps = append(steps, s)
			}
		}
	}
	return steps
}

// howFound is the formula a value came by: the learner's where an expression
// tells it and it is another than the worked solution's, and the worked
// solution's. A number does not tell its way.
func (d *desk) howFound(s lesson.SolutionStep) html.Node {
	worked := Chain(d.lesson.Symbol, s.Value, expr.S(s.Quantity.Name), s.Route.Tree, s.Numbers)
	mine := d.work.Taken(s.Quantity)
	a := d.work.Standing(s.Quantity.Name)
	switch {
	case mine == nil || a == nil || a.Reading.Form != entry.Expression && a.Reading.Form != entry.Affine:
		return html.El("div", worked)
	case mine.ID == s.Route.ID:
		return html.El("div", html.El("p", html.Class("soft"), html.Text(text.Say("page.end.same"))), worked)
	}
	return html.El("div", html.El("p", html.Class("soft"), html.Text(text.Say("page.end.your-way"))),
		Chain(d.lesson.Symbol, "", expr.S(s.Quantity.Name), mine.Tree),
		html.El("p", html.Class("soft"), html.Text(text.Say("page.end.their-way"))), worked)
}

// met lists the slips named on the way under the quantity they were met at,
// and the hints used.
func (d *desk) met() html.Node {
	var rows []html.Part
	if titles := d.sketchMet(); len(titles) > 0 {
		rows = append(rows, html.El("li", html.Text(text.Say("page.end.met.of", "symbol", text.Say("figure.title.board"), "slips", strings.Join(titles, "; ")))))
	}
	for i := range d.lesson.Quantities {
		name := d.lesson.Quantities[i].Name
		if titles := d.slipsAt(name); len(titles) > 0 {
			rows = append(rows, html.El("li", d.prose(text.Say("page.end.met.of", "symbol", d.symbol(name), "slips", strings.Join(titles, "; ")))))
		}
	}
	none := html.If(len(rows) == 0, html.El("p", html.Text(text.Say("page.end.met.none"))))
	list := html.If(len(rows) > 0, html.El("ul", rows...))
	var hints []string
	for i := range d.lesson.Quantities {
		name := d.lesson.Quantities[i].Name
		if n := d.work.Hinted(name); n > 0 {
			hints = append(hints, text.Say("page.end.hints.of", "n", itoa(n), "symbol", d.symbol(name)))
		}
	}
	return html.El("div", none, list,
		html.If(len(hints) > 0, html.El("p", d.prose(text.Say("page.end.hints", "list", strings.Join(hints, ", "))))))
}

// slipsAt are the titles of the slips named for a quantity, each once.
func (d *desk) slipsAt(name string) []string {
	var titles []string
	for _, a := range d.work.Past {
		if a.Quantity != name || a.Verdict != verdict.SlipFound {
			continue
		}
		if title := text.Say("slip." + a.Slips[0].Told() + ".title"); !slices.Contains(titles, title) {
			titles = append(titles, title)
		}
	}
	return titles
}

// suggestion is the one thing to do next: the same again where something went
// wrong or was shown, else the other way, else the next kind. In a set its next
// problem is that: what else would do is quieter, and no other kind leads away.
func (d *desk) suggestion() html.Node {
	words, action := d.whatNext()
	if words == "" {
		return html.Node{}
	}
	return html.El("div", html.Class("suggestion"), html.El("h3", html.Text(text.Say("page.end.next"))), html.El("p", html.Text(words)), action)
}

func (d *desk) whatNext() (words string, action html.Node) {
	kind, class := d.lesson.Kind, "primary"
	if d.of != nil {
		class = ""
	}
	again := act("draw", text.Say("page.another"), class, html.Hidden("kind", kind.Name), html.Hidden("like", d.code))
	helped := d.work.SolutionShown()
	for i := range d.lesson.Quantities {
		name := d.lesson.Quantities[i].Name
		if titles := d.slipsAt(name); len(titles) > 0 {
			return text.Say("page.end.watch", "slip", titles[0]), again
		}
		helped = helped || d.work.Hinted(name) > 1
	}
	if helped {
		return text.Say("page.end.alone"), again
	}
	for _, way := range d.lesson.Ways {
		if len(d.lesson.Ways) == 1 || d.begun(way) || !d.begunAny() || d.work.Settings.Method != lesson.AnyMethod {
			continue
		}
		for _, s := range way.Steps {
			if !d.work.Found(s.Quantity) {
				symbol := d.symbol(s.Quantity)
				return text.Say("page.end.other-way", "way", text.Say(way.Method.Key()+".by"), "symbol", symbol),
					d.find(s.Quantity, html.Class("button "+class))
			}
		}
	}
	if d.of != nil {
		return "", html.Node{}
	}
	kinds := kinds.All
	if i := slices.Index(kinds, kind); i+1 < len(kinds) {
		next := kinds[i+1]
		return text.Say("page.end.other-kind", "title", next.Title()),
			act("open", text.Say("page.end.open"), "primary", html.Hidden("problem", next.BankProblems()[0].Code()))
	}
	return text.Say("page.end.harder"), again
}
