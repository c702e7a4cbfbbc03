package tutor

import (
	"slices"
	"strings"
	"unicode/utf8"

	"closingside/tutor/text"
)

// leaf and branch build a Source in code.
func leaf(key, text string) Source { return Source{Key: key, Text: text} }

func branch(key string, kids ...Source) Source { return Source{Key: key, Kids: kids} }

// Source is a problem as it was written (in a file, a form, an address):
// keys, texts and places, not yet understood.
type Source struct {
	Key       string
	Text      string // of a leaf
	Kids      []Source
	Line, Col int // where it stands, from 1; 0 where there is no file
}

// SourceError says what is wrong with a Source, where, and what would do.
type SourceError struct {
	Line, Col int
	Message   string
}

func (e *SourceError) Error() string { return e.Message }

func (s Source) fault(key string, holes ...string) error {
	return &SourceError{s.Line, s.Col, text.Say(key, holes...)}
}

// text is the value of a leaf of at most so many runes, on one line.
func (s Source) text(most int) (string, error) {
	if s.Kids != nil {
		return "", s.fault("problem.value", "key", s.Key)
	}
	if utf8.RuneCountInString(s.Text) > most {
		return "", s.fault("set.text.long", "key", s.Key, "max", itoa(most))
	}
	return strings.Join(strings.Fields(s.Text), " "), nil
}

// choice is the place of a leaf's value among the words it may have.
func (s Source) choice(words ...string) (int, error) {
	if i := slices.Index(words, strings.TrimSpace(s.Text)); i >= 0 {
		return i, nil
	}
	return 0, s.fault("set.choice", "key", s.Key, "got", s.Text, "words", strings.Join(words, ", "))
}

// whole is a leaf's whole number between limits.
func (s Source) whole(lo, hi int) (int, error) {
	n, ok := digits(strings.TrimSpace(s.Text))
	if !ok || n < lo || n > hi {
		return 0, s.fault("set.whole", "key", s.Key, "got", s.Text, "min", itoa(lo), "max", itoa(hi))
	}
	return n, nil
}

// digits reads a short whole number.
func digits(s string) (int, bool) {
	n := 0
	for _, c := range []byte(s) {
		if c < '0' || c > '9' {
			return 0, false
		}
		n = n*10 + int(c-'0')
	}
	return n, s != "" && len(s) <= 9
}
