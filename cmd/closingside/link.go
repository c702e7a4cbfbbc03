package main

import (
	"fmt"
	"net/url"
	"slices"
	"strings"

	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
)

// linkVerb prints the link of a problem or a set.
type linkVerb struct {
	File    string `arg:"" help:"The problem or set, a YAML or JSON file."`
	Student string `placeholder:"ID" help:"Whose variant the link opens. Without it a set asks for the id where it needs one."`
	At      string `placeholder:"ADDRESS" help:"Where the page is published; without it the part behind the address is printed."`
}

// Run prints the link.
func (v linkVerb) Run(s streams) error {
	at, err := pageAddress(v.At)
	if err != nil {
		return err
	}
	src, err := openSource(v.File, "name a problem or set file such as barge.yaml")
	if err != nil {
		return err
	}
	code := ""
	if isSet(src) {
		code, err = v.setCode()
	} else {
		var lesson *tutor.Lesson
		if lesson, err = openLesson(v.File); err == nil {
			code = lesson.Problem.Code()
		}
	}
	if err != nil {
		return err
	}
	_, err = fmt.Fprintln(s.out, at+fragment(code))
	return written(err)
}

func (v linkVerb) setCode() (string, error) {
	set, err := openSet(v.File)
	if err != nil {
		return "", err
	}
	if err := sets.CheckStudent(v.Student); v.Student != "" && err != nil {
		return "", wrongInput("--student: %s", err)
	}
	return setCode(v.File, set, v.Student)
}

// setCode is a set's code, unless it is too long for a link.
func setCode(path string, set *sets.Set, student string) (string, error) {
	code := set.Code(student)
	if len(code) > sets.MaxCode {
		return "", wrongInput("%s: this set takes %d characters as a link, and %d is the limit; draw problems (“generate:”) in place of giving them, or make two sets", path, len(code), sets.MaxCode)
	}
	return code, nil
}

// isSet tells a set from a problem.
func isSet(src lesson.Source) bool {
	return hasKey(src, "problems") || hasKey(src, "title")
}

func hasKey(src lesson.Source, key string) bool {
	return slices.ContainsFunc(src.Kids, func(k lesson.Source) bool { return k.Key == key })
}

// pageAddress checks where the page is published; it ends in a slash or a file.
func pageAddress(at string) (string, error) {
	if at == "" {
		return "", nil
	}
	u, err := url.Parse(at)
	if err != nil || u.Scheme == "" || u.Fragment != "" || u.Host == "" && u.Scheme != "file" {
		return "", wrongInput("--at %s: this is no address of a page; write it like https://example.edu/statics/", printable(at))
	}
	if !strings.HasSuffix(at, "/") && !strings.HasSuffix(at, ".html") {
		at += "/"
	}
	return at, nil
}

// fragment is a code as the end of an address that survives a mail: what is
// not plain ASCII, and quotes, are escaped.
func fragment(code string) string {
	var b strings.Builder
	b.WriteByte('#')
	for _, c := range []byte(code) {
		if c <= ' ' || c >= 0x7f || strings.IndexByte("\"'<>`\\^{}[]", c) >= 0 {
			fmt.Fprintf(&b, "%%%02X", c)
		} else {
			b.WriteByte(c)
		}
	}
	return b.String()
}
