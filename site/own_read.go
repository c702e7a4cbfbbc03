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
	s.current, s.draft, s.wrong = "", f, ""
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
		s.refused = err.Error()
		if fault := (*lesson.SourceError)(nil); errors.As(err, &fault) && fault.Line > 0 {
			s.wrong, s.refused = names[fault.Line-1], fault.At("page.home.own")
			if strings.TrimSpace(f.Get(s.wrong)) == "" {
				s.refused = text.Say("page.home.own.empty")
			}
		}
		return
	}
	if s.open(p.Code()) {
		s.draft = nil
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
