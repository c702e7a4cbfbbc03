package main

import (
	"cmp"
	"fmt"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"

	"closingside/site/report"
)

// showReport writes a report in words and tables.
func showReport(page *screen, r *report.Report) {
	day := func(ms int64) string { return time.UnixMilli(ms).UTC().Format(time.DateOnly) }
	c := r.Entries
	title := count(len(r.Students), "student") + ", " + count(c.All(), "entry", "entries")
	if r.From > 0 {
		title += ", " + day(r.From)
		if last := day(r.To); last != day(r.From) {
			title += " to " + last
		}
	}
	page.paragraph(0, bold, title)
	page.paragraph(2, dim, fmt.Sprintf("Entries: %d right, %d right but for an earlier value, %d rounded too soon, %d with a slip that was named, %d wrong with no slip named, %d that could not be read.",
		c.Correct, c.Carried, c.Rounding, c.Slip, c.Unexplained, c.Unreadable))
	if r.Strange > 0 {
		page.paragraph(2, yellow, count(r.Strange, "student")+" worked at a set that another version of closingside draws: its problems are among those of no set here. The version that built their page reports it whole.")
	}
	showAgain(page, r)
	showProblems(page, r)
	showMet(page, r)
	showStudents(page, r)
	for i, a := range r.Alike {
		if i == 0 {
			page.line("")
			page.line(page.in(bold, "The same work in two files"))
		}
		page.paragraph(2, plain, printable(a.A)+" and "+printable(a.B)+": "+count(a.Entries, "entry", "entries")+" at the same moments. An older and a newer copy of one student's, or one student's copied by another; both are counted.")
	}
	page.line("")
	page.paragraph(0, dim, "A saved log is a text file that can be edited: it serves teaching, and credit for practice, not examinations.")
}

// called is what a problem is called within a sentence: a story ends in a full stop.
func called(problem string) string { return printable(strings.TrimSuffix(problem, ".")) }

func showAgain(page *screen, r *report.Report) {
	page.line("")
	page.line(page.in(bold, "What to teach again"))
	if len(r.Again) == 0 {
		page.paragraph(2, plain, "Nothing that many of them share.")
	}
	for i, a := range r.Again {
		what := "met: " + a.Title
		if a.Slip == "" {
			what = "needed help, or have not found it: " + a.Title
		}
		page.hanging(fmt.Sprintf("%3d.", i+1), 5, plain, fmt.Sprintf("%d of %d %s", a.Students, len(r.Students), what))
		page.paragraph(5, dim, "at "+printable(a.At)+" in "+called(a.Problem))
	}
}

// Columns of the table of values: symbol and what it is, then the counts.
const (
	symbolWidth = 6
	whatWidth   = 24
)

func showProblems(page *screen, r *report.Report) {
	set, heading := "\x00", page.in(dim, fmt.Sprintf("%*s%5s %5s %5s %5s %5s %6s %7s", 2+symbolWidth+whatWidth+1, "", "tried", "first", "later", "help", "never", "tries", "time"))
	for _, p := range r.Problems {
		if p.Set != set {
			set = p.Set
			page.line("")
			page.paragraph(0, bold, printable(cmp.Or(p.Set, "Problems of no set")))
		}
		lead := ""
		if p.Number > 0 {
			lead = fmt.Sprintf("%2d.", p.Number)
		}
		about := fmt.Sprintf(": %d began, %d finished", p.Began, p.Done)
		if p.Shown > 0 {
			about += fmt.Sprintf(", %d with the solution open", p.Shown)
		}
		page.line("")
		page.hanging(lead, max(2, len(lead)+1), plain, called(p.Story)+about)
		if len(p.Quantities) > 0 {
			page.line(heading)
		}
		for _, q := range p.Quantities {
			lead, counts := pad(fitted(q.Symbol, symbolWidth-1), symbolWidth), fmt.Sprintf("%5d %5s %5s %5s %5s %6s %7s", q.Tried,
				some(q.First), some(q.Later), some(q.Helped), some(q.Never), strconv.FormatFloat(q.Tries, 'g', 3, 64), clock(q.Seconds))
			for _, what := range wrap(q.What, whatWidth) {
				page.line("  " + pad(lead, symbolWidth) + pad(what, whatWidth+1) + counts)
				lead, counts = "", ""
			}
		}
	}
	page.line("")
	page.paragraph(2, dim, "First: found with the first entry, without help. Later: with a later one. Help: after a hint for it, or the worked solution. "+
		"Never: not found. Tries and time are medians; a break over five minutes counts as five.")
}

func showMet(page *screen, r *report.Report) {
	page.line("")
	page.line(page.in(bold, pad("Slips met", 62)+fmt.Sprintf("%9s%7s", "students", "times")))
	if len(r.Slips) == 0 {
		page.paragraph(2, plain, "None.")
	}
	var once []string
	for _, s := range r.Slips {
		if s.Students == 1 && len(r.Students) > 4 {
			once = append(once, s.Title)
			continue
		}
		lines := wrap(s.Title, 58)
		for i, l := range lines {
			if i == 0 {
				l = pad(l, 60) + fmt.Sprintf("%9d%7d", s.Students, s.Times)
			}
			page.line("  " + l)
		}
		where := "at " + printable(s.At) + " in " + called(s.Problem)
		if s.Example.Entry != "" {
			where += "; wrote " + s.Example.Quantity + " as “" + fitted(printable(s.Example.Entry), 40) + "”"
		}
		page.paragraph(6, dim, where+" ("+s.ID+")")
	}
	if len(once) > 0 {
		page.paragraph(2, dim, "By one student each: "+strings.Join(once, "; ")+".")
	}
}

func showStudents(page *screen, r *report.Report) {
	page.line("")
	names := []string{"Students"}
	for _, s := range r.Students {
		names = append(names, printable(s.Name))
	}
	wide := min(widest(names), 30)
	page.line(page.in(bold, pad("Students", wide+2)+fmt.Sprintf("%8s %8s %8s %9s", "finished", "begun", "entries", "time")))
	for i, s := range r.Students {
		page.hanging(pad(fitted(names[i+1], wide), wide+2)+fmt.Sprintf("%8d %8d %8d %9s", s.Done, s.Began, s.Entries, clock(s.Seconds)), wide+40, plain, "")
		for _, st := range s.Sets {
			line := fmt.Sprintf("%s: %d of %d problems, %s of %s", printable(st.Set), st.Done, st.Problems, strconv.FormatFloat(st.Earned, 'g', 4, 64), count(st.Marks, "mark"))
			if st.Shown > 0 {
				line += fmt.Sprintf(", %d with the solution open", st.Shown)
			}
			if st.ID != "" {
				line += ", as " + printable(st.ID)
			}
			page.paragraph(4, dim, line)
		}
	}
}

// some is a count, a dash for none.
func some(n int) string {
	if n == 0 {
		return "–"
	}
	return strconv.Itoa(n)
}

// clock is a time in minutes and seconds, in hours and minutes from an hour on.
func clock(seconds float64) string {
	s := int(seconds + 0.5)
	if s >= 3600 {
		return fmt.Sprintf("%d h %02d", s/3600, s%3600/60)
	}
	return fmt.Sprintf("%d:%02d", s/60, s%60)
}

// fitted is text of at most so many runes, cut at its end with an ellipsis.
func fitted(text string, most int) string {
	if utf8.RuneCountInString(text) <= most {
		return text
	}
	return strings.TrimSpace(string([]rune(text)[:most-1])) + "…"
}
