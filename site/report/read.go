package report

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"closingside/site"
)

// Log is one learner's saved log.
type Log struct {
	Name  string // what the learner is called in the report: by the file's name
	Path  string // where it came from, for messages
	lines []site.Form
}

// LogError says why a file is no log, or can't be worked again.
type LogError struct {
	Path string
	Line int // 0 where it is about the whole
	Why  string
}

func (e *LogError) Error() string {
	if e.Line > 0 {
		return e.Path + ":" + strconv.Itoa(e.Line) + ": " + e.Why
	}
	return e.Path + ": " + e.Why
}

// Limits of a log: far beyond what a person does in a term.
const (
	MaxBytes   = 4 << 20
	maxLines   = 20000
	maxOpened  = 400     // problems
	maxSets    = 40      // opened, for one student each
	maxLineLen = 1 << 15 // the longest code of a set, and of the forty problems it drew
)

// ReadLog reads a saved log. An error is a *LogError: it says which line is none
// of a log, and what would do.
func ReadLog(name, path string, content []byte) (*Log, error) {
	l := &Log{Name: name, Path: path}
	text := strings.TrimPrefix(string(content), "\ufeff")
	if !utf8.ValidString(text) || strings.TrimSpace(text) == "" {
		return nil, &LogError{path, 0, foreign(text)}
	}
	problems, sets, n := map[string]bool{}, map[string]bool{}, 0
	for line := range strings.Lines(text) {
		n++
		line = strings.TrimRight(line, "\r\n")
		at := func(why string) error { return &LogError{path, n, why} }
		if line == "" || strings.HasPrefix(line, "aside=") { // what brought an engine down once: see log.js
			continue
		}
		if len(line) > maxLineLen || strings.ContainsFunc(line, unicode.IsControl) {
			return nil, at(foreignLine)
		}
		f := site.ReadForm(line)
		if !site.Logged(f) || f.Get("do") != "outcome" && !timed(f) {
			return nil, at(foreignLine)
		}
		do := f.Get("do")
		if do == "draw" || do == "own" {
			problems[line] = true
		}
		if do != "outcome" { // its problem is opened by another line
			problems[f.Get("problem")] = true
		}
		sets[f.Get("set")+"\n"+f.Get("student")] = true
		l.lines = append(l.lines, f)
		switch {
		case len(l.lines) > maxLines:
			return nil, at("a log of more than " + strconv.Itoa(maxLines) + " lines; nobody's work is that long")
		case len(problems) > maxOpened || len(sets) > maxSets:
			return nil, at("more than " + strconv.Itoa(maxOpened) + " problems or " + strconv.Itoa(maxSets) + " sets; nobody's work is that long")
		}
	}
	if len(l.lines) == 0 {
		return nil, &LogError{path, 0, foreign("")}
	}
	return l, nil
}

const foreignLine = "this is no line of a log saved on the practice page; ask for the file that “Save a copy” writes, as it is"

func foreign(text string) string {
	if strings.TrimSpace(text) == "" {
		return "nothing is in this file; ask for the file that “Save a copy” on the practice page writes"
	}
	return "this is not text; ask for the file that “Save a copy” on the practice page writes, as it is"
}

// timed tells whether a line says when it was written, in milliseconds since
// 1970, as the page does.
func timed(f site.Form) bool {
	at, ok := f.Lookup("at")
	if !ok || at == "" || len(at) > 15 {
		return false
	}
	for _, c := range []byte(at) {
		if c < '0' || c > '9' {
			return false
		}
	}
	return true
}

// when is the time of a line, in milliseconds; 0 where it has none.
func when(f site.Form) int64 {
	n, _ := strconv.ParseInt(f.Get("at"), 10, 64) // digits, as timed looked
	return n
}
