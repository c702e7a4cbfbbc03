package site

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// SavedLine is a line of a saved log: a request, or the outcome of one.
type SavedLine struct {
	Text string // as it was written
	Form Form
}

// Limits of a saved log: far beyond what a person does in a term.
const (
	MaxSaved   = 4 << 20 // bytes
	MaxLines   = 20000
	MaxOpened  = 400     // problems
	MaxSets    = 40      // opened, for one student each
	maxLineLen = 1 << 15 // the longest code of a set, and of the forty problems it drew
)

// Fault is why a text is no saved log.
type Fault uint8

// What may be wrong with a saved log.
const (
	NoFault   Fault = iota
	Nothing         // nothing is in it
	NoText          // it is no text
	Foreign         // a line is none that the page writes
	TooLong         // more than MaxSaved bytes or MaxLines lines
	TooMuch         // more than MaxOpened problems or MaxSets sets
	allFaults       // how many there are
)

// ReadSaved reads a log as the page saves it. Where it is none, it says why and,
// from 1, in which line; 0 where that is about the whole.
func ReadSaved(content string) (lines []SavedLine, why Fault, where int) {
	content = strings.TrimPrefix(content, "\ufeff")
	switch {
	case len(content) > MaxSaved:
		return nil, TooLong, 0
	case strings.TrimSpace(content) == "":
		return nil, Nothing, 0
	case !utf8.ValidString(content):
		return nil, NoText, 0
	}
	problems, sets, n := map[string]bool{}, map[string]bool{}, 0
	for line := range strings.Lines(content) {
		n++
		line = strings.TrimRight(line, "\r\n")
		if line == "" || strings.HasPrefix(line, "aside=") { // what brought an engine down once: see log.js
			continue
		}
		f := ReadForm(line)
		do := f.Get("do")
		if !Logged(f) || strings.ContainsFunc(line, unicode.IsControl) {
			return nil, Foreign, n
		}
		if len(line) > maxLineLen { // something pasted, which was too long to be read then
			continue
		}
		if do != "outcome" && !timed(f) {
			return nil, Foreign, n
		}
		if do == "draw" || do == "own" {
			problems[line] = true
		}
		if do != "outcome" { // its problem is opened by another line
			problems[f.Get("problem")] = true
		}
		sets[f.Get("set")+"\n"+f.Get("student")] = true
		lines = append(lines, SavedLine{line, f})
		switch {
		case len(lines) > MaxLines:
			return nil, TooLong, n
		case len(problems) > MaxOpened || len(sets) > MaxSets:
			return nil, TooMuch, n
		}
	}
	if len(lines) == 0 {
		return nil, Nothing, 0
	}
	return lines, NoFault, 0
}

// timed tells whether a line says when it was written, in milliseconds since
// 1970, as the page does.
func timed(f Form) bool {
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
