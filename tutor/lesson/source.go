package lesson

import (
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"closingside/tutor/text"
)

// Source is a problem as it was written (in a file, a form, an address):
// keys, texts and places, not yet understood.
type Source struct {
	Key       string
	Text      string // of a leaf
	Kids      []Source
	Line, Col int // where it stands, from 1; 0 where there is no file
}

// Leaf is a Source with a text and no place.
func Leaf(key, text string) Source { return Source{Key: key, Text: text} }

// Branch is a Source with others below it and no place; an item of a list has the
// key "".
func Branch(key string, kids ...Source) Source { return Source{Key: key, Kids: kids} }

// SourceError says what is wrong with a Source, where, and what would do.
type SourceError struct {
	Line, Col int // from 1; 0 where there is no file
	Message   string
	key       string
	holes     []string
}

// Error is the message, a sentence for whoever wrote the source.
func (e *SourceError) Error() string { return e.Message }

// At is what is said of it at a place that has a sentence of its own for it,
// under PLACE.KEY: a form has fields, and no lines to write.
func (e *SourceError) At(place string) string {
	if own := place + "." + e.key; text.Has(own) {
		return text.Say(own, e.holes...)
	}
	return e.Message
}

// Fault is a *SourceError at s, with the sentence that package text has under key.
func (s Source) Fault(key string, holes ...string) error {
	return &SourceError{s.Line, s.Col, text.Say(key, holes...), key, holes}
}

// OneLine is the value of a leaf of at most so many runes, on one line. An error
// is a *SourceError, here and below.
func (s Source) OneLine(most int) (string, error) {
	if s.Kids != nil {
		return "", s.Fault("problem.value", "key", s.Key)
	}
	if utf8.RuneCountInString(s.Text) > most {
		return "", s.Fault("set.text.long", "key", s.Key, "max", strconv.Itoa(most))
	}
	return strings.Join(strings.Fields(s.Text), " "), nil
}

// Choice is the place of a leaf's value among the words it may have, from 0.
func (s Source) Choice(words ...string) (int, error) {
	if i := slices.Index(words, strings.TrimSpace(s.Text)); i >= 0 {
		return i, nil
	}
	return 0, s.Fault("set.choice", "key", s.Key, "got", s.Text, "words", strings.Join(words, ", "))
}

// Whole is a leaf's whole number from lo to hi.
func (s Source) Whole(lo, hi int) (int, error) {
	n, ok := digits(strings.TrimSpace(s.Text))
	if !ok || n < lo || n > hi {
		return 0, s.Fault("set.whole", "key", s.Key, "got", s.Text, "min", strconv.Itoa(lo), "max", strconv.Itoa(hi))
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
