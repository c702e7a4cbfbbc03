package sheet

import (
	"strings"

	"closingside/site"
	"closingside/site/html"
	"closingside/tutor/text"
)

// answerTable is the key for a class: whose, and the answers.
func answerTable(title string, rows []html.Node) html.Node {
	parts := make([]html.Part, len(rows))
	for i := range rows {
		parts[i] = rows[i]
	}
	return html.Group(html.El("h1", html.Text(title)), html.El("table", html.Class("class-key"),
		html.El("thead", html.El("tr",
			html.El("th", html.A("scope", "col"), html.Text(text.Say("sheet.key.student"))),
			html.El("th", html.A("scope", "col"), html.Text(text.Say("sheet.answers"))))),
		html.El("tbody", parts...)))
}

// row is one student's answers, in the order of that student's sheet.
func (c *Copy) row() (html.Node, error) {
	lessons, err := c.lessons()
	if err != nil {
		return html.Node{}, err
	}
	var all []html.Part
	for i, l := range lessons {
		var said []string
		for _, each := range l.Solutions() {
			found, _ := values(each)
			said = append(said, each.InCase(strings.Join(found, ", ")))
		}
		all = append(all, html.El("span", html.El("b", html.Text(itoa(c.Variant.Tasks[i].Number)+"\u2002")), site.Prose(l.Lesson, strings.Join(said, "; "))), html.Text(" "))
	}
	whose := []html.Part{html.A("scope", "row"), html.Text(c.ID)}
	if c.Name != "" {
		whose = append(whose, classed("div", "small", c.Name))
	}
	if c.Variant.Set.Personal() {
		whose = append(whose, classed("div", "small", text.Say("sheet.variant", "id", c.Variant.ID)))
	}
	return html.El("tr", html.El("th", whose...), html.El("td", all...)), nil
}
