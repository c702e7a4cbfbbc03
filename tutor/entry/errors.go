package entry

import (
	"strconv"

	"closingside/tutor/text"
)

// Error says where and why an entry cannot be read, in one sentence that also
// says what would do.
type Error struct {
	Col, Len int      // the runes it points at, from 1; Len 0 points behind the last
	Key      string   // of the sentence in tutor/text
	Args     []string // name, value, … for the sentence
}

// Message is the sentence for the learner.
func (e *Error) Message() string { return text.Say(e.Key, e.Args...) }

// Error is "column 5: …", for problem files and tests.
func (e *Error) Error() string { return "column " + strconv.Itoa(e.Col) + ": " + e.Message() }

// span is a stretch of runes, from 0.
type span struct{ from, to int }

// through reaches from the beginning of s to the end of t.
func (s span) through(t span) span { return span{s.from, t.to} }

// fail ends the reading with an error that points at s.
func (s span) fail(key string, args ...string) {
	panic(s.error(key, args...))
}

func (s span) error(key string, args ...string) *Error {
	return &Error{Col: s.from + 1, Len: s.to - s.from, Key: "entry." + key, Args: args}
}

// rescue is deferred by every exported reader: it turns the panic of fail into
// a result and lets any other go on.
func rescue(err **Error) {
	switch r := recover().(type) {
	case nil:
	case *Error:
		*err = r
	default:
		panic(r)
	}
}
