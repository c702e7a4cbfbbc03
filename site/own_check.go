package site

import (
	"slices"
	"strings"

	"closingside/site/html"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// Fields of the settings are called "check.digits" and so on; "check.thing" is
// the name of the force that directions are reported from.
const (
	checkPrefix = lesson.CheckKey + "."
	checkThing  = checkPrefix + "thing"
	fromThing   = "from" // of check.direction, with check.thing
)

// checkForm is how answers are checked, folded: what an instructor may choose
// for a problem of kind k. A field left as it is is sent empty.
func (s *session) checkForm(k *lesson.Kind) html.Node {
	set := []html.Part{html.El("legend", html.Text(text.Say("check.title")))}
	open := false
	usual := lesson.DefaultSettings()
	for _, key := range k.SettingKeys() {
		name := checkPrefix + key
		value := s.draft.Get(name)
		open = open || value != ""
		words := lesson.SettingWords(key)
		if key == "direction" {
			words = append(words[:len(words):len(words)], fromThing)
		}
		set = append(set, s.checkField(k, name, key, value, usual.Word(key), words)...)
		if key == "direction" {
			set = append(set, s.checkThing(k)...)
		}
	}
	parts := []html.Part{html.El("summary", html.Text(text.Say("check.title"))), html.El("p", html.Text(text.Say("check.how"))), html.El("fieldset", set...)}
	if open {
		parts = append(parts, html.Flag("open"))
	}
	return html.El("details", parts...)
}

// checkField is one setting: its label and what it may be.
func (s *session) checkField(k *lesson.Kind, name, key, value, usual string, words []string) []html.Part {
	id := k.Name + "." + name
	input, why := s.faulty(name, id, []html.Part{html.ID(id), html.A("name", name)})
	for _, w := range words {
		label := w
		if text.Has("check." + key + "." + w) {
			label = text.Say("check." + key + "." + w)
		}
		option := []html.Part{html.Text(label)}
		sent := w
		if w == usual {
			sent = ""
		}
		if sent == value {
			option = append(option, html.Flag("selected"))
		}
		input = append(input, html.El("option", append(option, html.A("value", sent))...))
	}
	return []html.Part{html.El("label", html.A("for", id), html.Text(text.Say("check."+key))), html.El("select", input...), why}
}

// checkThing is the name of the force that directions are reported from.
func (s *session) checkThing(k *lesson.Kind) []html.Part {
	id, value := k.Name+"."+checkThing, s.draft.Get(checkThing)
	input, why := s.faulty(checkThing, id, []html.Part{html.ID(id), html.A("name", checkThing), html.A("value", value),
		html.A("autocomplete", "off"), html.A("autocapitalize", "off"), html.A("spellcheck", "false")})
	return []html.Part{html.El("label", html.A("for", id), html.Text(text.Say("check.thing"))), html.El("input", input...), why}
}

// faulty marks the field called name where it was refused, and says why. The first
// of such fields is in use, and what is said there tells how many others there are.
func (s *session) faulty(name, id string, input []html.Part) ([]html.Part, html.Nodes) {
	i := slices.IndexFunc(s.faults, func(f fault) bool { return f.field == name })
	if s.refused == "" || i < 0 {
		return input, nil
	}
	input = append(input, html.A("aria-invalid", "true"))
	if i == 0 {
		return append(input, html.A("aria-describedby", "refused"), html.Data("focus", id)), html.Nodes{s.why()}
	}
	why := "refused-" + id
	return append(input, html.A("aria-describedby", why)), html.Nodes{html.El("p", html.ID(why), html.Class("notice"), html.Text(s.faults[i].why))}
}

// checkSource is what a form says of how answers are checked; names are the
// fields so far, as in source.
func checkSource(f Form, names []string) (lesson.Source, []string) {
	src := lesson.Source{Key: lesson.CheckKey}
	for _, key := range lesson.SettingKeys() {
		name := checkPrefix + key
		v := strings.TrimSpace(f.Get(name))
		if v == "" {
			continue
		}
		if v == fromThing {
			name, v = checkThing, fromThing+" "+strings.TrimSpace(f.Get(checkThing))
		}
		names = append(names, name)
		src.Kids = append(src.Kids, lesson.Source{Key: key, Text: v, Line: len(names)})
	}
	return src, names
}
