package report

import (
	"strconv"

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

// ReadLog reads a saved log. An error is a *LogError: it says which line is none
// of a log, and what would do.
func ReadLog(name, path string, content []byte) (*Log, error) {
	lines, fault, line := site.ReadSaved(string(content))
	if fault != site.NoFault {
		return nil, &LogError{path, line, why[fault]}
	}
	l := &Log{Name: name, Path: path}
	for _, s := range lines {
		l.lines = append(l.lines, s.Form)
	}
	return l, nil
}

// why says what is wrong with a file.
var why = map[site.Fault]string{
	site.Nothing: "nothing is in this file; ask for the file that “Save a copy” on the practice page writes",
	site.NoText:  "this is not text; ask for the file that “Save a copy” on the practice page writes, as it is",
	site.Foreign: "this is no line of a log saved on the practice page; ask for the file that “Save a copy” writes, as it is",
	site.TooLong: "a log of more than " + strconv.Itoa(site.MaxLines) + " lines; nobody's work is that long",
	site.TooMuch: "more than " + strconv.Itoa(site.MaxOpened) + " problems or " + strconv.Itoa(site.MaxSets) + " sets; nobody's work is that long",
}

// when is the time of a line, in milliseconds; 0 where it has none.
func when(f site.Form) int64 {
	n, _ := strconv.ParseInt(f.Get("at"), 10, 64) // digits, as ReadSaved looked
	return n
}
