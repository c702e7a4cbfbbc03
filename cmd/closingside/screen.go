package main

import (
	"io"
	"os"
	"strconv"
	"strings"
	"unicode/utf8"

	"golang.org/x/term"
)

// screen lays out what a person reads: columns by runes, lines wrapped at the
// width. Styles show on a terminal only. The first error of writing is kept
// and ends the output.
type screen struct {
	out    io.Writer
	width  int
	styled bool
	err    error
}

const usualWidth = 80

// newScreen writes to out: 80 columns wide, or as wide as a narrower terminal.
func newScreen(out io.Writer) *screen {
	s := &screen{out: out, width: usualWidth}
	f, ok := out.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) {
		return s
	}
	s.styled = os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb"
	if w, _, err := term.GetSize(int(f.Fd())); err == nil && w > 0 {
		s.width = max(40, min(w, usualWidth))
	}
	return s
}

// A style is the terminal's number for a way of showing text.
type style string

const (
	plain  style = ""
	bold   style = "1"
	dim    style = "2"
	green  style = "32"
	yellow style = "33"
)

func (s *screen) in(how style, text string) string {
	if !s.styled || how == plain || text == "" {
		return text
	}
	return "\x1b[" + string(how) + "m" + text + "\x1b[0m"
}

// line writes one line.
func (s *screen) line(text string) {
	if s.err == nil {
		_, s.err = io.WriteString(s.out, strings.TrimRight(text, " ")+"\n")
	}
}

// paragraph writes text wrapped, every line indented.
func (s *screen) paragraph(indent int, how style, text string) {
	for _, l := range wrap(text, s.width-indent) {
		s.line(spaces(indent) + s.in(how, l))
	}
}

// hanging writes lead and text beside it, wrapped into a column of its own
// that begins at the column at. A lead that is longer has a line to itself.
func (s *screen) hanging(lead string, at int, how style, text string) {
	if utf8.RuneCountInString(lead) > at-1 {
		s.line(lead)
		lead = ""
	}
	for _, l := range wrap(text, s.width-at) {
		s.line(pad(lead, at) + s.in(how, l))
		lead = ""
	}
}

// wrap breaks text at its spaces into lines of at most width runes; a longer
// word keeps a line of its own. There is at least one line.
func wrap(text string, width int) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		if line != "" && utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) > width {
			lines = append(lines, line)
			line = ""
		}
		if line != "" {
			line += " "
		}
		line += word
	}
	return append(lines, line)
}

func spaces(n int) string { return strings.Repeat(" ", max(n, 0)) }

// pad fills text with spaces to width runes.
func pad(text string, width int) string { return text + spaces(width-utf8.RuneCountInString(text)) }

// widest is the most runes any of the texts has.
func widest(texts []string) int {
	w := 0
	for _, t := range texts {
		w = max(w, utf8.RuneCountInString(t))
	}
	return w
}

// atPoint aligns numbers with their units at the decimal point.
func atPoint(values []string) []string {
	before := make([]int, len(values))
	most := 0
	for i, v := range values {
		end := strings.IndexFunc(v, func(r rune) bool { return r != '−' && (r < '0' || r > '9') })
		if end < 0 {
			end = len(v)
		}
		before[i] = utf8.RuneCountInString(v[:end])
		most = max(most, before[i])
	}
	out := make([]string, len(values))
	for i, v := range values {
		out[i] = spaces(most-before[i]) + v
	}
	return out
}

func counted(n int, what string) string {
	if n != 1 {
		what += "s"
	}
	return strconv.Itoa(n) + " " + what
}
