package main

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	"closingside/tutor/slips"
	"closingside/tutor/trial"
)

// showTrial writes a report in words and tables.
func showTrial(page *screen, r *trial.Report) {
	page.paragraph(0, bold, fmt.Sprintf("Trial: %s, %s at each, seed %d: %s",
		count(r.Problems, "problem"), count(r.Learners, "learner"), r.Seed, count(r.Entries, "entry", "entries")))
	page.paragraph(2, dim, learners(&r.Habits))
	showMistakes(page, r)
	showRight(page, r)
	showSlips(page, r)
	showConfusions(page, r)
	showReliability(page, r)
	showMisses(page, r)
	page.line("")
	page.line(page.in(bold, "Time for a check") + "   median " + milliseconds(r.Median) + ", 99th percentile " + milliseconds(r.Most))
}

// learners says how they work.
func learners(h *trial.Habits) string {
	f := func(x float64) string { return strconv.FormatFloat(x, 'g', 3, 64) }
	var groups []string
	for _, g := range slips.Groups() {
		groups = append(groups, g+" "+f(h.Groups[g]))
	}
	return "Shares: meant to be right " + f(h.Right) + "; of the rest one slip " + f(h.Slip) + ", two " + f(h.Two) +
		", early rounding " + f(h.Early) + ", noise " + f(h.Noise) + ". Groups of slips: " + strings.Join(groups, ", ") +
		". Four digits kept on the way " + f(h.Four) + ", three " + f(h.Three) + ", the others all; of the former cut off " + f(h.Cut) +
		". Calculator in radians " + f(h.Radians) + "; most steps in the head " + f(h.Head) + "; goes on from a wrong entry " + f(h.GoOn) + "; enters a formula " + f(h.Expressions) +
		". Written: " + strconv.Itoa(h.Digits.Magnitude) + " digits, angles " + strconv.Itoa(h.Digits.Angle) + " places."
}

// tableRow is a row of counts and what it is called.
type tableRow struct{ name, title string }

var mistakeRows = []tableRow{
	{"one", "one slip"},
	{"one full", "  all digits kept"},
	{"one four", "  four kept"},
	{"one four cut", "  four, cut off"},
	{"one three", "  three kept"},
	{"one three cut", "  three, cut off"},
	{"one head", "  in a step not written"},
	{"one radians", "  calculator in radians"},
	{"one expression", "  entered as a formula"},
	{"one equation", "  in an equation"},
	{"two magnitudes", "two slips, magnitudes"},
	{"two magnitudes worked", "  both in the working"},
	{"two magnitudes written", "  one in writing down"},
	{"two magnitudes alone", "  no single slip's value"},
	{"two angles", "two slips, angles"},
	{"early", "rounded too soon"},
	{"early alone", "  no single slip's value"},
	{"carried", "carried on"},
	{"on wrong", "slip on a wrong entry"},
	{"mixed", "several at once"},
	{"noise", "noise"},
	{"noise alone", "  no single slip's value"},
}

func showMistakes(page *screen, r *trial.Report) {
	page.line("")
	page.line(page.in(bold, fmt.Sprintf("%-24s%8s%8s%10s%10s%10s%10s", "Wrong entries", "met", "first", "said", "silent", "accused", "resent")))
	for _, row := range mistakeRows {
		c := r.Row(row.name)
		if c.Entries == 0 {
			continue
		}
		of := func(n int) string { return share(n, c.Met) }
		page.line(fmt.Sprintf("%-24s%8d%8s%10s%10s%10s%10s", row.title, c.Met, of(c.First), of(c.Said), of(c.Silent), of(c.Accused), of(c.Resent)))
	}
	one := r.Row("one")
	page.paragraph(2, dim, "Met: judged other than correct. First: the truth is listed first. Said: the verdict says it "+
		"(of noise: nothing does). Accused, resent: something else is said. Of the "+
		count(one.Met-one.First, "single slip")+" not listed first, "+strconv.Itoa(one.Shared)+" share their value with another slip.")
}

var rightRows = []tableRow{
	{"right", "right work"},
	{"right full", "  all digits kept"},
	{"right four", "  four kept"},
	{"right four cut", "  four, cut off"},
	{"right three", "  three kept"},
	{"right three cut", "  three, cut off"},
}

func showRight(page *screen, r *trial.Report) {
	page.line("")
	page.line(page.in(bold, fmt.Sprintf("%-24s%8s%8s%20s%10s%10s", "Right entries", "all", "refused", "silent", "accused", "resent")))
	for _, row := range rightRows {
		c := r.Row(row.name)
		if c.Entries == 0 {
			continue
		}
		of := func(n int) string { return share(n, c.Entries) }
		page.line(fmt.Sprintf("%-24s%8d%8s%20s%10s%10s", row.title, c.Entries, of(c.Met), of(c.Silent), of(c.Accused), of(c.Resent)))
	}
	page.paragraph(2, dim, "Three digits kept on the way are fewer than four asked: such work may rightly be sent back to its rounding (resent).")
}

func showSlips(page *screen, r *trial.Report) {
	page.line("")
	page.line(page.in(bold, fmt.Sprintf("%-28s%8s%8s%10s%10s%12s", "Slips, made alone", "met", "first", "said", "named", "rightly")))
	for _, s := range r.Slips {
		page.line(fmt.Sprintf("%-28s%8d%8s%10s%10d%12s", s.ID, s.Met, share(s.First, s.Met), share(s.Said, s.Met), s.Accused, share(s.Justified, s.Accused)))
	}
	page.paragraph(2, dim, "First is the recall of a slip; rightly, its precision: the share of the times it was named, alone or with others of the same value, that one of those named had been made.")
}

const shownConfusions = 20

func showConfusions(page *screen, r *trial.Report) {
	if len(r.Confusions) == 0 {
		return
	}
	page.line("")
	page.line(page.in(bold, "Not said as it was") + page.in(dim, "   what happened → what was said"))
	rest := 0
	for i, c := range r.Confusions {
		if i >= shownConfusions {
			rest += c.Count
			continue
		}
		page.hanging(fmt.Sprintf("%6d", c.Count), 8, plain, c.Made+" → "+c.Told)
	}
	if rest > 0 {
		page.line(fmt.Sprintf("%6d  others (all of them with --json)", rest))
	}
}

// showMisses lists entries that were not judged as they were.
func showMisses(page *screen, r *trial.Report) {
	if len(r.Misses) == 0 {
		return
	}
	page.line("")
	page.line(page.in(bold, "Entries not judged as they were"))
	for _, m := range r.Misses {
		page.paragraph(2, plain, m.Quantity+" "+m.Entry+": "+m.Made+" → "+m.Told)
		var before []string
		for _, b := range m.Before {
			before = append(before, b[0]+" "+b[1])
		}
		if len(before) > 0 {
			page.paragraph(4, dim, "after "+strings.Join(before, "; "))
		}
		page.paragraph(4, dim, "given "+m.Given)
	}
}

func showReliability(page *screen, r *trial.Report) {
	page.line("")
	page.line(page.in(bold, fmt.Sprintf("%-14s%30s%30s", "Probability", "every explanation listed", "slips named")))
	page.line(page.in(dim, fmt.Sprintf("%-14s%10s%10s%10s%10s%10s%10s", "  from", "number", "stated", "true", "number", "stated", "true")))
	cells := func(all []trial.Reliability, from float64) string {
		for _, b := range all {
			if b.From == from {
				return fmt.Sprintf("%10d%10s%10s", b.Count, percent1(b.Mean), percent1(b.Right))
			}
		}
		return fmt.Sprintf("%10s%10s%10s", "–", "", "")
	}
	for _, b := range r.Offered {
		page.line(fmt.Sprintf("%-14s", "  "+strconv.FormatFloat(b.From, 'f', 2, 64)) + cells(r.Offered, b.From) + cells(r.Accused, b.From))
	}
}

// share is n of all as a percentage; a dash where there are none.
func share(n, all int) string {
	if all == 0 {
		return "–"
	}
	return percent1(trial.Share(n, all))
}

func percent1(x float64) string { return strconv.FormatFloat(100*x, 'f', 1, 64) + " %" }

func milliseconds(d time.Duration) string {
	return strconv.FormatFloat(float64(d)/1e6, 'f', 2, 64) + " ms"
}

// count is "1 problem", "20 problems".
func count(n int, one string, many ...string) string {
	if n == 1 {
		return "1 " + one
	}
	many = append(many, one+"s")
	return grouped(n) + " " + many[0]
}

// grouped is n with its thousands apart, as NIST SP 811 (2008), 10.5.3 has it.
func grouped(n int) string {
	s := strconv.Itoa(n)
	for i := len(s) - 3; i > 0 && len(s) > 4; i -= 3 {
		s = s[:i] + " " + s[i:]
	}
	return s
}
