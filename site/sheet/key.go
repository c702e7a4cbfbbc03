package sheet

import (
	"cmp"
	"slices"
	"strings"

	"closingside/site"
	"closingside/site/html"
	"closingside/statics/expr"
	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
	"closingside/tutor/text"
)

// key is one student's key: the answers at a glance, then every problem worked.
func key(c *Copy) (html.Node, error) {
	head, err := c.titleBlock(text.Say("sheet.key.title", "title", c.Variant.Set.Title), false)
	if err != nil {
		return html.Node{}, err
	}
	parts := []html.Part{html.Class("copy"), head}
	if c.Name != "" {
		parts = append(parts, classed("p", "small", c.Name))
	}
	lessons, err := c.lessons()
	if err != nil {
		return html.Node{}, err
	}
	parts = append(parts, c.answers(lessons))
	for i := range lessons {
		parts = append(parts, c.worked(&c.Variant.Tasks[i], lessons[i]))
	}
	return html.El("article", parts...), nil
}

func (c *Copy) lessons() (all []*tutor.Lesson, err error) {
	all = make([]*tutor.Lesson, len(c.Variant.Tasks))
	for i, t := range c.Variant.Tasks {
		if all[i], err = tutor.Open(t.Problem); err != nil {
			return nil, err
		}
	}
	return all, nil
}

// answers is a table of every problem's values, answers first.
func (c *Copy) answers(lessons []*tutor.Lesson) html.Node {
	parts := []html.Part{html.Class("answers"), html.El("thead", html.El("tr",
		html.El("th", html.A("scope", "col"), html.Text(text.Say("sheet.key.problem"))),
		html.El("th", html.A("scope", "col"), html.Text(text.Say("sheet.answers"))),
		html.El("th", html.A("scope", "col"), html.Text(text.Say("sheet.key.way")))))}
	var rows []html.Part
	for i, l := range lessons {
		var answers, rest []string
		for _, each := range l.Solutions() {
			found, way := values(each)
			answers = append(answers, each.InCase(found[0]))
			answers = append(answers, found[1:]...)
			rest = append(rest, each.InCase(strings.Join(way, ", ")))
		}
		rows = append(rows, html.El("tr", html.El("th", html.A("scope", "row"), html.Text(itoa(c.Variant.Tasks[i].Number))),
			html.El("td", lines(l, answers)...), html.El("td", append([]html.Part{html.Class("small")}, lines(l, rest)...)...)))
	}
	return html.El("table", append(parts, html.El("tbody", rows...))...)
}

// values are the answers of one solution, and what is found on the way.
func values(l *tutor.Lesson) (answers, way []string) {
	w := tutor.NewWork(l, l.Problem.Settings)
	for k := range l.Quantities {
		q := &l.Quantities[k]
		switch {
		case !w.Offered(q):
		case q.Answer:
			answers = append(answers, unbroken(l.SymbolText(q.Name)+" = "+l.Show(q, q.True, w.Settings.Answer)))
		default:
			way = append(way, unbroken(l.SymbolText(q.Name)+" = "+l.ShowKept(q, q.True, w.Settings)))
		}
	}
	return answers, way
}

// unbroken stays on one line.
func unbroken(s string) string { return strings.ReplaceAll(s, " ", "\u00a0") }

// lines are sentences on a lesson, one below the other.
func lines(l *tutor.Lesson, all []string) []html.Part {
	var parts []html.Part
	for _, s := range all {
		parts = append(parts, html.El("div", site.Prose(l.Lesson, s)))
	}
	return parts
}

// worked is one problem as given, each way of working with the figure it ends
// in, and the values that mistakes give.
func (c *Copy) worked(t *sets.Task, l *tutor.Lesson) html.Node {
	w := tutor.NewWork(l, l.Problem.Settings)
	parts := []html.Part{html.Class("problem"), heading(t), html.El("div", html.Class("given"), statement(l), opening(c, t, w))}
	for i, way := range l.Solve(l.Problem.Settings) {
		steps := []html.Part{html.Class("worked")}
		why := ""
		for _, s := range way.Steps {
			said := s.Why
			if said == why { // said of the step before
				said = ""
			}
			why = s.Why
			steps = append(steps, html.El("li", html.If(said != "", html.El("p", site.Prose(l.Lesson, said))), site.Chain(l.Symbol, s.Value, expr.S(s.Quantity.Name), s.Route.Tree, s.Numbers)))
		}
		scenes := l.Worked(way).Scenes()
		parts = append(parts, html.El("h3", html.Text(way.Heading())), html.El("div", html.Class("way"),
			html.El("figure", drawn(c, t, itoa(i+1), scenes[len(scenes)-1])), html.El("ol", steps...)))
	}
	for _, each := range l.Solutions() {
		parts = append(parts, mistakes(tutor.NewWork(each, l.Problem.Settings)))
	}
	return html.El("section", parts...)
}

// mistakes lists the values that a slip in finding each quantity gives.
func mistakes(w *tutor.Work) html.Node {
	l := w.Lesson
	parts := []html.Part{html.Class("slips")}
	for i := range l.Quantities {
		q := &l.Quantities[i]
		if !w.Offered(q) {
			continue
		}
		rows := []html.Part{html.El("h4", site.Prose(l.Lesson, text.Say("sheet.key.not", "symbol", l.SymbolText(q.Name), "value", l.ShowKept(q, q.True, w.Settings))))}
		for _, wrong := range likeliest(l, q, w.Settings) {
			rows = append(rows, html.El("div", classed("span", "value", wrong.Shown), html.El("span", html.Text(titles(l, wrong.IDs)))))
		}
		if len(rows) > 1 {
			parts = append(parts, html.El("section", rows...))
		}
	}
	head := text.Say("sheet.key.mistakes")
	if l.Case != "" {
		head = text.Say("method.case", "method", head, "case", l.CaseText())
	}
	return html.Group(html.El("h3", html.Text(head)), classed("p", "small", text.Say("sheet.key.likeliest")), html.El("div", parts...))
}

// printed is how many wrong values of a quantity a key has room for.
const printed = 12

// likeliest are the wrong values of q worth a place on paper, in order of
// value: those of a slip in finding q itself.
func likeliest(l *tutor.Lesson, q *lesson.Quantity, s lesson.Settings) []tutor.WrongValue {
	all := slices.DeleteFunc(l.WrongValues(q, s), func(v tutor.WrongValue) bool { return v.InHead(q) })
	slices.SortStableFunc(all, func(a, b tutor.WrongValue) int { return cmp.Compare(b.Weight, a.Weight) })
	all = all[:min(len(all), printed)]
	slices.SortFunc(all, func(a, b tutor.WrongValue) int { return cmp.Compare(a.Value, b.Value) })
	return all
}

// titles says what was done, each once; on paper two ways to a value will do.
func titles(l *tutor.Lesson, ids []string) string {
	var all []string
	for _, id := range ids {
		if s := l.SlipTitle(id); !slices.Contains(all, s) {
			all = append(all, s)
		}
	}
	if len(all) > 2 {
		all = append(all[:2], "…")
	}
	return strings.Join(all, "; ")
}
