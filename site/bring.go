package site

import (
	"strconv"
	"strings"

	"closingside/site/html"
	"closingside/tutor/text"
)

// done is one thing done in a log, and where it stands there.
type done struct {
	from, to int // its line and the outcomes behind it
	line     string
	at       int64 // when, in milliseconds since 1970
}

// things parts a log into what was done. Outcomes before the first are of nothing.
func things(lines []SavedLine) (all []done) {
	for i, l := range lines {
		switch {
		case l.Form.Get("do") != "outcome":
			at, _ := strconv.ParseInt(l.Form.Get("at"), 10, 64) // 0 where a damaged line has none
			all = append(all, done{i, i + 1, l.Text, at})
		case len(all) > 0:
			all[len(all)-1].to = i + 1
		}
	}
	return all
}

// bring answers with what a saved copy of work adds to a log: each line of it that is
// to be put in, and the number of the log's line it belongs before. Nothing is put in
// twice, and what was done stays in the order in which it was done, so that of two
// entries for a value the later one stands. A text that is no saved copy adds nothing.
//
// What follows the request is the log, as many lines as the request says, and then
// the copy.
func bring(f Form, rest string) html.Nodes {
	n, _ := strconv.Atoi(f.Get("lines"))
	var log []SavedLine
	for ; n > 0 && rest != ""; n-- {
		var line string
		line, rest, _ = strings.Cut(rest, "\n")
		log = append(log, SavedLine{line, ReadForm(line)})
	}
	copied, fault, where := ReadSaved(rest)
	if fault != NoFault {
		return html.Nodes{brought(refusal(fault, where))}
	}
	return weave(log, copied)
}

// weave puts what was done in a copy among what was done in a log.
func weave(log, copied []SavedLine) (parts html.Nodes) {
	here := things(log)
	places := map[string][]int{} // where each line of here stands
	for i, d := range here {
		places[d.line] = append(places[d.line], i)
	}
	next, added := 0, 0 // what comes next of here
	for _, d := range things(copied) {
		if same := places[d.line]; len(same) > 0 {
			places[d.line] = same[1:]
			next = max(next, same[0]+1)
			continue
		}
		for next < len(here) && here[next].at <= d.at {
			next++
		}
		added++
		for _, l := range copied[d.from:d.to] {
			line := []html.Part{html.Class("bring"), html.A("value", l.Text)}
			if next < len(here) {
				line = append(line, html.Data("before", itoa(here[next].from)))
			}
			parts = append(parts, html.El("data", line...))
		}
	}
	if added == 0 {
		return html.Nodes{brought(text.Say("page.brought.nothing"))}
	}
	if added == 1 {
		return append(parts, brought(text.Say("page.brought.one")))
	}
	return append(parts, brought(text.Say("page.brought", "n", itoa(added))))
}

// refusal says why a file is not taken.
func refusal(why Fault, where int) string {
	key := "page.brought.foreign"
	switch {
	case why == Nothing:
		key = "page.brought.empty"
	case why == TooLong || why == TooMuch:
		key = "page.brought.long"
	case where > 0:
		key = "page.brought.line"
	}
	return text.Say(key, "n", itoa(where)) + " " + text.Say("page.brought.kept")
}

// brought is where the page says what came of it.
func brought(s string) html.Node {
	return html.El("p", html.ID("brought"), html.A("role", "status"), html.Text(s))
}
