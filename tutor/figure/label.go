package figure

import (
	"strings"

	"closingside/statics/expr"
)

// Run is a piece of a label in one style.
type Run struct {
	Text   string
	Italic bool // symbols of quantities are italic: NIST SP 811, 10.1.1
	Sub    bool // lowered and smaller
}

// Label is the text that stands beside a part of a figure. Spoken is how it
// is read aloud ("P, 340 newtons"); empty means as written.
type Label struct {
	Runs   []Run
	Spoken string
}

// Symbol is the label of a quantity: a letter and a subscript, which may be empty, in
// the style of formulas.
func Symbol(letter, sub string) (l Label) {
	for i, part := range []string{letter, sub} {
		for _, s := range expr.Stretches(part) {
			l.Runs = append(l.Runs, Run{Text: s.Text, Italic: !s.Upright, Sub: i == 1})
		}
	}
	return l
}

// Plain is upright text.
func Plain(text string) Label { return Label{Runs: []Run{{Text: text}}} }

// Is adds " = value" to a label.
func (l Label) Is(value string) Label {
	runs := make([]Run, len(l.Runs), len(l.Runs)+1)
	copy(runs, l.Runs)
	l.Runs = append(runs, Run{Text: " = " + value})
	return l
}

// Say sets how the label is read aloud.
func (l Label) Say(spoken string) Label {
	l.Spoken = spoken
	return l
}

// Empty reports whether there is nothing to write.
func (l Label) Empty() bool { return len(l.Runs) == 0 }

// String is the label's text without style.
func (l Label) String() string {
	var b strings.Builder
	for _, r := range l.Runs {
		b.WriteString(r.Text)
	}
	return b.String()
}

// Proportions of a line of text, in ems. The box holds every ink of the common
// system sans-serif faces; from their metrics, from memory.
const (
	ascent   = 0.80
	descent  = 0.24
	SubSize  = 0.74 // a subscript's size
	SubDrop  = 0.22 // how far a subscript stands below the line
	slant    = 0.32 // what a slanted capital at the end leans out of its width, on both sides
	subExtra = SubDrop + descent*SubSize - descent
)

// extent returns the width and height of a label at text pixels to the em,
// never less than what a browser needs for it.
func (l Label) extent(text float64) (width, height float64) {
	height = ascent + descent
	lean := 0.0
	for _, r := range l.Runs {
		w := 0.0
		for _, c := range r.Text {
			w += em(c)
		}
		if r.Sub {
			w *= SubSize
			height = ascent + descent + subExtra
		}
		if r.Italic {
			w += 0.16 // and at the start, a j to the left
			lean = slant
		} else {
			lean = 0
		}
		width += w
	}
	width += lean
	return width * text, height * text
}
