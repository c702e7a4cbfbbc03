package sheet

import (
	"strconv"
	"strings"

	"closingside/site"
	"closingside/site/html"
	"closingside/statics/expr"
	"closingside/tutor"
	"closingside/tutor/figure"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
	"closingside/tutor/text"
)

func itoa(n int) string { return strconv.Itoa(n) }

func para(s string) html.Node { return html.El("p", html.Text(s)) }

func classed(tag, class, s string) html.Node {
	return html.El(tag, html.Class(class), html.Text(s))
}

// worksheet is one student's pages: the title block, then the problems.
func worksheet(c *Copy) (html.Node, error) {
	parts := []html.Part{html.Class("copy")}
	head, err := c.titleBlock(c.Variant.Set.Title, true)
	if err != nil {
		return html.Node{}, err
	}
	parts = append(parts, head)
	for i := range c.Variant.Tasks {
		n, err := c.problem(&c.Variant.Tasks[i])
		if err != nil {
			return html.Node{}, err
		}
		parts = append(parts, n)
	}
	return html.El("article", parts...), nil
}

// titleBlock is the head of a copy: what it is, whose, and its code to scan.
func (c *Copy) titleBlock(title string, lines bool) (html.Node, error) {
	set := c.Variant.Set
	parts := []html.Part{html.Class("title-block"), html.El("h1", html.Text(title))}
	if c.Link != "" && lines {
		code, err := qrCode(c.Link)
		if err != nil {
			return html.Node{}, err
		}
		parts = append(parts, code)
	}
	if set.Note != "" && lines {
		parts = append(parts, classed("p", "note", set.Note))
	}
	if lines {
		parts = append(parts, html.El("div", html.Class("lines"), rule("sheet.name", c.Name), rule("sheet.date", "")))
	}
	return html.El("header", append(parts, classed("p", "small", c.about()))...), nil
}

// about says what a copy holds: problems, marks, variant.
func (c *Copy) about() string {
	set := c.Variant.Set
	about := []string{text.Say("sheet.problems", "n", itoa(len(c.Variant.Tasks)))}
	if m := set.Marks(); m > 0 {
		about = append(about, text.Say("sheet.of-marks", "n", itoa(m)))
	}
	if set.Personal() {
		about = append(about, text.Say("sheet.variant", "id", c.Variant.ID))
	}
	if c.ID != "" {
		about = append(about, c.ID)
	}
	return strings.Join(about, " · ")
}

// rule is a line to write on, or what is known already.
func rule(key, known string) html.Node {
	if known != "" {
		return html.El("div", html.Class("line"), html.Text(text.Say(key)), html.El("strong", html.Text(known)))
	}
	return html.El("div", html.Class("line"), html.Text(text.Say(key)), html.El("span", html.Class("rule")))
}

// problem is one problem: statement, figure, blanks, room to work.
func (c *Copy) problem(t *sets.Task) (html.Node, error) {
	lesson, err := tutor.Open(t.Problem)
	if err != nil {
		return html.Node{}, err
	}
	work := tutor.NewWork(lesson, t.Problem.Settings)
	parts := []html.Part{html.Class("problem")}
	if t.Number > 1 {
		parts = append(parts, html.El("p", html.Class("running"),
			html.El("span", html.Text(c.Variant.Set.Title)), html.El("span", html.Text(c.Name)), html.El("span", html.Text(c.mark()))))
	}
	parts = append(parts, heading(t), html.El("div", html.Class("given"), statement(lesson),
		opening(c, t, work)),
		blanks(work), classed("p", "work-space", text.Say("sheet.work")))
	return html.El("section", parts...), nil
}

// mark is what tells a loose page's copy: the student's id, or the variant's.
func (c *Copy) mark() string {
	switch {
	case c.ID != "":
		return c.ID + " · " + c.Variant.ID
	case c.Variant.Set.Personal():
		return c.Variant.ID
	}
	return ""
}

func heading(t *sets.Task) html.Node {
	parts := []html.Part{html.El("span", html.Text(text.Say("sheet.problem", "n", itoa(t.Number))))}
	if t.Marks > 0 {
		parts = append(parts, html.El("span", html.Text(text.Say("sheet.marks", "n", itoa(t.Marks)))))
	}
	return html.El("h2", parts...)
}

// statement is what is given and what is asked.
func statement(l *tutor.Lesson) html.Node {
	parts := []html.Part{html.Class("statement")}
	if l.Problem.Story != "" {
		parts = append(parts, para(l.Problem.Story))
	}
	for _, s := range l.Given() {
		parts = append(parts, para(s))
	}
	return html.El("div", append(parts, html.El("p", site.Prose(l.Lesson, l.Task())))...)
}

// small is the room for a figure on paper: 78 mm wide.
var small = figure.Size{Width: 330, Height: 230}

// drawn is a scene of a problem as an SVG whose ids are its own in the document.
func drawn(c *Copy, t *sets.Task, n string, scene figure.Scene) html.Node {
	id := "f-" + c.Variant.ID + "-" + itoa(t.Number) + "-" + n
	return site.SVG(id, figure.Layout(scene, small))
}

// opening is the figure of a problem as it is given: what its statement
// describes, where its kind shows that, over the first figure of the work.
func opening(c *Copy, t *sets.Task, w *tutor.Work) html.Node {
	parts := []html.Part{html.Class("given-figure")}
	for i, scene := range w.Opening() {
		parts = append(parts, drawn(c, t, "g"+itoa(i), scene))
	}
	return html.El("figure", parts...)
}

// blanks is a table with room for every value: for each way of working what it
// finds on the way, then the answers.
func blanks(w *tutor.Work) html.Node {
	parts := []html.Part{html.Class("blank-table"), html.El("thead", html.El("tr",
		html.El("th", html.A("scope", "col"), html.A("colspan", "2"), html.Text(text.Say("sheet.find"))),
		html.El("th", html.A("scope", "col"), html.Text(text.Say("sheet.value")))))}
	ways := ways(w)
	seen := map[string]bool{}
	for _, way := range ways {
		var rows []html.Part
		for _, step := range way.Steps {
			if q := w.Lesson.Quantity(step.Quantity); !q.Answer && !seen[q.Name] && w.Offered(q) {
				seen[q.Name] = true
				rows = append(rows, blank(w, q))
			}
		}
		if len(rows) == 0 {
			continue
		}
		if len(ways) > 1 {
			rows = append([]html.Part{band(text.Say(way.Method.Key()))}, rows...)
		}
		parts = append(parts, html.El("tbody", rows...))
	}
	answers := []html.Part{}
	if len(seen) > 0 {
		answers = append(answers, band(text.Say("sheet.answers")))
	}
	for i := range w.Lesson.Quantities {
		if q := &w.Lesson.Quantities[i]; q.Answer && w.Offered(q) {
			answers = append(answers, blank(w, q))
		}
	}
	return html.El("table", append(parts, html.El("tbody", answers...))...)
}

// ways are those that the settings leave.
func ways(w *tutor.Work) []lesson.Way {
	var all []lesson.Way
	for _, way := range w.Lesson.Ways {
		if m := w.Settings.Method; m == lesson.AnyMethod || way.Method == m {
			all = append(all, way)
		}
	}
	return all
}

// band is a row that names the rows below it.
func band(s string) html.Node {
	return html.El("tr", html.El("th", html.A("colspan", "3"), html.A("scope", "rowgroup"), html.Text(s)))
}

func blank(w *tutor.Work, q *lesson.Quantity) html.Node {
	return html.El("tr",
		html.El("th", html.A("scope", "row"), symbol(w.Lesson, q)),
		html.El("td", site.Prose(w.Lesson.Lesson, w.Lesson.Sentence(q, "what"))),
		html.El("td", html.Class("blank"), html.Text(w.Asked(q))))
}

// symbol is a quantity's symbol, set as in a formula.
func symbol(l *tutor.Lesson, q *lesson.Quantity) html.Node {
	return html.Math(expr.Math(expr.S(q.Name), l.Symbol), expr.Speech(expr.S(q.Name), l.Symbol))
}
