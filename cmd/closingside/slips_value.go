package main

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// found is what is said of a value looked up, in a machine's form.
type found struct {
	Value   string   `json:"value"`
	Answers []answer `json:"answers"` // the best explained first
}

// lookUp enters the value for each quantity on a clean sheet.
func (v slipsVerb) lookUp(s streams, l *tutor.Lesson, quantities []*lesson.Quantity) error {
	var replies []tutor.Reply
	var bad string
	for _, q := range quantities {
		r := tutor.NewWork(l, l.Problem.Settings).Enter(q.Name, v.Value)
		if r.Verdict == verdict.Unreadable {
			bad = cmp.Or(bad, r.Feedback)
			continue
		}
		replies = append(replies, r)
	}
	if len(replies) == 0 {
		return wrongInput("--value %s: %s", v.Value, bad)
	}
	slices.SortStableFunc(replies, func(a, b tutor.Reply) int { return cmp.Compare(standing(b), standing(a)) })
	if v.JSON {
		f := found{Value: v.Value}
		for _, r := range replies {
			f.Answers = append(f.Answers, machine(r))
		}
		return written(encode(s.out, f))
	}
	page := newScreen(s.out)
	showFound(page, l, v.Value, replies)
	return written(page.err)
}

// standing orders replies: right ones, then by how likely what is listed is.
func standing(r tutor.Reply) float64 {
	if r.Verdict == verdict.Correct {
		return 2
	}
	return 1 - r.Unexplained
}

// least is the probability from which an explanation is worth a line.
const least = 0.05

func showFound(page *screen, l *tutor.Lesson, value string, replies []tutor.Reply) {
	page.line(page.in(bold, printable(value)))
	var none []string
	for _, r := range replies {
		q := l.Quantity(r.Quantity)
		lines := explanations(l, r)
		if len(lines) == 0 {
			none = append(none, l.SymbolText(q.Name))
			continue
		}
		page.line("")
		lead := "  as " + l.SymbolText(q.Name) + ","
		page.hanging(lead, utf8.RuneCountInString(lead)+1, dim, l.Sentence(q, "what"))
		for _, line := range lines {
			page.hanging("    "+line.lead, foundColumn, plain, line.text)
		}
	}
	if len(none) > 0 {
		page.line("")
		page.paragraph(2, dim, "Nothing explains it as "+strings.Join(none, ", ")+".")
	}
}

// foundColumn is where the explanations begin: after "    100 %  ".
const foundColumn = 11

// mostTitles is how many slips equal in value are said in full.
const mostTitles = 4

type foundLine struct{ lead, text string }

// explanations says what may lie behind a value, each with its probability.
func explanations(l *tutor.Lesson, r tutor.Reply) []foundLine {
	if r.Verdict == verdict.Correct {
		return []foundLine{{"", r.Feedback}}
	}
	var texts []string
	shares := map[string]float64{}
	add := func(p float64, text string) {
		if shares[text] == 0 {
			texts = append(texts, text)
		}
		shares[text] += p
	}
	if r.Rounded != nil {
		add(1-r.Unexplained, r.Rounded.What+" kept to "+r.Rounded.Kept()+" (early-rounding)")
	}
	for _, s := range r.Slips {
		at := ""
		if s.At != r.Quantity {
			at = "in " + l.SymbolText(s.At) + ": "
		}
		var titles []string
		for _, id := range s.LikeliestFirst()[:min(len(s.IDs), mostTitles)] {
			titles = append(titles, l.SlipTitle(id)+" ("+id+")")
		}
		if more := len(s.IDs) - len(titles); more > 0 {
			titles = append(titles, moreAlike(more))
		}
		add(s.Probability, at+strings.Join(titles, "; or "))
	}
	var lines []foundLine
	for _, text := range texts {
		if p := shares[text]; p >= least {
			lines = append(lines, foundLine{fmt.Sprintf("%3.0f %%", 100*p), text})
		}
	}
	if len(lines) > 0 && r.Unexplained >= least {
		lines = append(lines, foundLine{fmt.Sprintf("%3.0f %%", 100*r.Unexplained), "something else"})
	}
	return lines
}
