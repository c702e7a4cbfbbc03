package main

import (
	"errors"
	"io"
	"os"
	"strconv"
	"strings"
	"unicode/utf8"

	"golang.org/x/term"

	"closingside/tutor"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

// converse answers lines such as "R 682.6 N" in words. At a terminal it shows
// the problem and a prompt, and a line that is no entry does not end it.
func (d *desk) converse(s streams) error {
	page := newScreen(s.out)
	f, ok := s.in.(*os.File)
	live := ok && term.IsTerminal(int(f.Fd()))
	prompt := func() {
		if live && page.err == nil {
			_, page.err = io.WriteString(s.out, "> ")
		}
	}
	if live {
		showStatement(page, d.lesson)
		page.line("")
		page.paragraph(0, dim, "Write a value a line, such as “R 682.6 N”; reset begins anew, Ctrl-D ends.")
	}
	prompt()
	err := eachLine(s.in, func(line string) error {
		bad := d.answerWords(page, line)
		if wrong := (*lineError)(nil); live && errors.As(bad, &wrong) {
			page.paragraph(2, yellow, wrong.message)
			bad = nil
		}
		prompt()
		return errors.Join(bad, page.err)
	})
	if err == nil {
		page.line("")
		page.paragraph(0, dim, text.Say("common.safety"))
		err = page.err
	}
	return err
}

// answerWords judges one line and shows the verdict.
func (d *desk) answerWords(page *screen, line string) error {
	if line == "reset" {
		d.reset()
		page.line("  begun anew")
		return nil
	}
	name, entry, ok := splitEntry(line)
	if !ok {
		return &lineError{"“" + printable(line) + "” names no value; write a quantity and its value, such as “R 682.6 N”"}
	}
	q, err := d.names.find(name)
	if err != nil {
		return err
	}
	d.showReply(page, d.work.Enter(q, entry))
	return nil
}

// splitEntry splits "R 682.6 N", "R = 682.6 N" or "R: 682.6 N" into a name and
// the rest.
func splitEntry(line string) (name, entry string, ok bool) {
	end := strings.IndexAny(line, " \t=:")
	if end <= 0 {
		return "", "", false
	}
	entry = strings.TrimLeft(line[end:], " \t")
	if strings.HasPrefix(entry, "=") || strings.HasPrefix(entry, ":") {
		entry = entry[1:]
	}
	entry = strings.TrimSpace(entry)
	return line[:end], entry, entry != ""
}

// Columns of a reply: symbol, entry, verdict, what is said.
const (
	entryWidth   = 16
	verdictWidth = len("early-rounding")
)

func (d *desk) showReply(page *screen, r tutor.Reply) {
	var symbols []string
	for _, q := range d.lesson.Wanted() {
		symbols = append(symbols, d.lesson.SymbolText(q.Name))
	}
	at := 2 + widest(symbols) + 2
	lead := "  " + pad(d.lesson.SymbolText(r.Quantity), at-4) + "  "
	shown := []rune(printable(r.Entry))
	if room := page.width - at; len(shown) > room {
		shown = append(shown[:room-1], '…')
	}
	lead += string(shown)
	if len(shown) > entryWidth {
		page.line(lead)
		lead = ""
	}
	how := yellow
	if r.Verdict == verdict.Correct {
		how = green
	}
	lead = pad(lead, at+entryWidth+2)
	column := utf8.RuneCountInString(lead) + verdictWidth + 2
	lines := wrap(printable(r.Feedback), page.width-column)
	page.line(lead + page.in(how, pad(r.Verdict.String(), verdictWidth)) + "  " + lines[0])
	for _, l := range lines[1:] {
		page.line(spaces(column) + l)
	}
	for _, l := range reasons(d.lesson, r) {
		page.paragraph(column, dim, l)
	}
}

// reasons says what lies behind a verdict, for whoever teaches: where a wrong
// value comes from, the slips that would explain it, and how likely each is.
func reasons(l *tutor.Lesson, r tutor.Reply) []string {
	var all []string
	if q := l.Quantity(r.From); q != nil {
		all = append(all, "from "+l.SymbolText(q.Name))
	}
	if r.Rounded != nil {
		all = append(all, r.Rounded.What+" kept to "+r.Rounded.Kept()+"; keep "+r.Rounded.Wanted())
	}
	for _, s := range r.Slips {
		percent := int(100*s.Probability + 0.5)
		if percent < 5 {
			continue
		}
		var titles []string
		for _, id := range s.LikeliestFirst()[:min(len(s.IDs), mostTitles)] {
			titles = append(titles, l.SlipTitle(id))
		}
		if more := len(s.IDs) - len(titles); more > 0 {
			titles = append(titles, moreAlike(more))
		}
		all = append(all, strconv.Itoa(percent)+" % "+strings.Join(titles, "; or "))
	}
	return all
}

// moreAlike counts the explanations that are not written out.
func moreAlike(n int) string {
	if n == 1 {
		return "1 more that gives the same"
	}
	return strconv.Itoa(n) + " more that give the same"
}
