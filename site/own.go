package site

import (
	"strings"

	"closingside/site/html"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// why tells beside the form why a problem of one's own was not opened.
func (s *session) why() html.Node {
	return html.El("p", html.ID("refused"), html.Class("notice"), html.A("role", "alert"), html.A("tabindex", "-1"), html.Data("focus", "refused"), html.Text(s.refused))
}

// ownForm takes a problem of the learner's own; its fields are those the kind
// declares. Things beyond the least number are folded away. It is there once
// it was asked for: the forms of all kinds would be half of the page.
func (s *session) ownForm(k *lesson.Kind) html.Node {
	if s.draft.Get("kind") != k.Name {
		return act("form", text.Say("page.home.own"), "draw", html.Hidden("kind", k.Name))
	}
	how := "page.home.own.how"
	if text.Has(k.Name + ".own") {
		how = k.Name + ".own"
	}
	fields := []html.Part{html.ID("own-form"), html.Hidden("do", "own"), html.Hidden("kind", k.Name), html.El("p", html.Text(text.Say(how)))}
	for _, g := range k.Groups {
		for i := range g.Min {
			fields = append(fields, s.item(k, g, i))
		}
		if g.Max == g.Min {
			continue
		}
		more := []html.Part{html.El("summary", html.Text(word(k, "more", g.Key, "n", "")))}
		open := false
		for i := g.Min; i < g.Max; i++ {
			more = append(more, s.item(k, g, i))
			open = open || s.written(g, i)
		}
		if open {
			more = append(more, html.Flag("open"))
		}
		fields = append(fields, html.El("details", more...))
	}
	if s.refused != "" && len(s.faults) == 0 {
		fields = append(fields, s.why())
	}
	fields = append(fields, s.checkForm(k), button(text.Say("page.home.own.go"), "primary"))
	title := []html.Part{html.ID("own"), html.A("tabindex", "-1"), html.Class("label"), html.Text(text.Say("page.home.own"))}
	if s.refused == "" {
		title = append(title, html.Data("focus", "own"))
	}
	return html.El("section", html.Class("own"), html.A("aria-labelledby", "own"), html.El("h3", title...), html.El("form", fields...))
}

// written tells whether the draft has something for the i-th thing of g.
func (s *session) written(g lesson.Group, i int) bool {
	for _, spec := range g.Fields {
		if strings.TrimSpace(s.draft.Get(fieldName(g.Key, i, spec.Key))) != "" {
			return true
		}
	}
	return false
}

// word is what the page calls a field ("field"), a thing ("item") or further
// things ("more") of a kind: the kind's own word, or the common one.
func word(k *lesson.Kind, part, key string, pairs ...string) string {
	for _, key := range []string{k.Name + "." + part + "." + key, "page." + part + "." + key} {
		if text.Has(key) {
			return text.Say(key, pairs...)
		}
	}
	return text.Say("page."+part, append(pairs, "key", key)...)
}

// item is the fields of one thing of a group.
func (s *session) item(k *lesson.Kind, g lesson.Group, i int) html.Node {
	set := []html.Part{html.El("legend", html.Text(word(k, "item", g.Key, "n", itoa(i+1))))}
	for _, spec := range g.Fields {
		set = append(set, s.field(k, g, i, spec)...)
	}
	return html.El("fieldset", set...)
}

func (s *session) field(k *lesson.Kind, g lesson.Group, i int, spec lesson.FieldSpec) []html.Part {
	name := fieldName(g.Key, i, spec.Key)
	id := k.Name + "." + name
	label := word(k, "field", spec.Key)
	if spec.Optional && spec.Is != lesson.ChoiceField { // a choice is a wish, and nothing given
		label = text.Say("page.field.optional", "label", label)
	}
	spec.Example = example(k, g, i, spec)
	input, why := s.faulty(name, id, []html.Part{html.ID(id), html.A("name", name)})
	return []html.Part{html.El("label", html.A("for", id), html.Text(label)), control(k, spec, spec.Optional || i >= g.Min, s.draft.Get(name), input), why}
}

// example is what the kind's first problem has for the i-th thing of g, so that
// two things never show the same one; the field's own where it has none.
func example(k *lesson.Kind, g lesson.Group, i int, spec lesson.FieldSpec) string {
	for n, p := range k.BankProblems() {
		if items := p.Group(g.Key); n == 0 && i < len(items) {
			if written := items[i].Field(spec.Key).Written; written != "" {
				return written
			}
		}
	}
	return spec.Example
}

// control is the element a field of kind k is entered in; open tells that it may
// stay empty, which a kind may have words for.
func control(k *lesson.Kind, spec lesson.FieldSpec, open bool, value string, parts []html.Part) html.Node {
	if spec.Is != lesson.ChoiceField {
		return html.El("input", append(parts, html.A("value", value), html.A("placeholder", spec.Example),
			html.A("autocomplete", "off"), html.A("autocapitalize", "off"), html.A("spellcheck", "false"))...)
	}
	choices := spec.Choices
	if open {
		choices = append([]string{""}, choices...)
	}
	for _, c := range choices {
		label := c
		if c == "" {
			label = text.Say("page.field.none")
			if own := k.Name + ".none." + spec.Key; text.Has(own) {
				label = text.Say(own)
			}
		}
		option := []html.Part{html.A("value", c), html.Text(label)}
		if c == value {
			option = append(option, html.Flag("selected"))
		}
		parts = append(parts, html.El("option", option...))
	}
	return html.El("select", parts...)
}
