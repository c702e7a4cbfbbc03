package site

import (
	"errors"
	"strconv"
	"strings"

	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// own opens a problem typed into the page's form.
func (s *session) own(f Form) {
	s.current, s.draft, s.faults = "", f, nil
	k := kinds.All.ByName(f.Get("kind"))
	if k == nil {
		return
	}
	src, names := source(k, f)
	p, err := kinds.All.Read(src)
	if err == nil {
		_, err = tutor.Open(p)
	}
	if err != nil {
		s.refuse(err, k.Faults(src), names)
		return
	}
	if s.open(p.Code()) {
		s.draft = nil
	}
}

// fault is a field of a form that was refused, and why.
type fault struct{ field, why string }

// refuse keeps why a draft was refused: what every value has that can't be read,
// else err. The line of a value is its place among the names of the fields.
func (s *session) refuse(err error, unread []*lesson.SourceError, names []string) {
	s.refused = err.Error()
	if whole := (*lesson.SourceError)(nil); len(unread) == 0 && errors.As(err, &whole) {
		unread = append(unread, whole)
	}
	for _, e := range unread {
		if e.Line == 0 {
			continue
		}
		f := fault{names[e.Line-1], e.At("page.home.own")}
		if strings.TrimSpace(s.draft.Get(f.field)) == "" {
			f.why = text.Say("page.home.own.empty")
		}
		s.faults = append(s.faults, f)
	}
	if len(s.faults) > 0 {
		s.refused = s.faults[0].why
	}
	if n := len(s.faults) - 1; n > 0 {
		s.refused = join(s.refused, text.Say("page.home.own.more", "n", itoa(n)))
	}
}

// source is the problem a form describes; fields are called
// "forces.0.magnitude", and the line of a value is its place among the names.
// Things beyond those a kind needs count only where something is written.
func source(k *lesson.Kind, f Form) (src lesson.Source, names []string) {
	src = lesson.Source{Kids: []lesson.Source{{Key: "kind", Text: k.Name}, {Key: "story", Text: f.Get("story")}}}
	for _, g := range k.Groups {
		list := lesson.Source{Key: g.Key}
		for i := range g.Max {
			item, empty := lesson.Source{}, true
			for _, field := range g.Fields {
				name := fieldName(g.Key, i, field.Key)
				if v, ok := f.Lookup(name); ok {
					names = append(names, name)
					item.Kids = append(item.Kids, lesson.Source{Key: field.Key, Text: v, Line: len(names)})
					empty = empty && strings.TrimSpace(v) == ""
				}
			}
			if len(item.Kids) > 0 && (i < g.Min || !empty) {
				list.Kids = append(list.Kids, item)
			}
		}
		if len(list.Kids) > 0 || g.Min > 0 {
			src.Kids = append(src.Kids, list)
		}
	}
	check, names := checkSource(f, names)
	if len(check.Kids) > 0 {
		src.Kids = append(src.Kids, check)
	}
	return src, names
}

func fieldName(group string, i int, key string) string {
	return group + "." + strconv.Itoa(i) + "." + key
}
