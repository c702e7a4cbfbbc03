package main

import (
	"cmp"
	"encoding/csv"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// slipsVerb is for marking on paper: which mistake gives which value.
type slipsVerb struct {
	File     string `arg:"" help:"The problem, a YAML or JSON file."`
	Value    string `help:"Say which mistakes give this value, and how likely each is." placeholder:"VALUE"`
	Quantity string `help:"This quantity only, such as R or gamma." placeholder:"NAME"`
	All      bool   `help:"List values of a slip in an earlier step, too: the step done in the head, the rest right."`
	JSON     bool   `xor:"form" help:"One JSON object."`
	CSV      bool   `xor:"form" help:"The table as comma-separated values, one slip a row."`
}

// Help says what the table holds.
func (slipsVerb) Help() string {
	return "The table lists what each slip gives for each quantity, at the digits kept on the way. " +
		"Values that would be accepted are left out. With --value all of it is searched, two slips together and early rounding included."
}

// Run lists the table, or looks a value up.
func (v slipsVerb) Run(s streams) error {
	lesson, err := openLesson(v.File)
	if err != nil {
		return err
	}
	quantities, err := v.quantities(lesson)
	if err != nil {
		return err
	}
	if v.Value != "" && v.CSV {
		return wrongInput("--csv is for the table; with --value use --json or neither")
	}
	if v.Value != "" {
		return v.lookUp(s, lesson, quantities)
	}
	if q := quantities[0]; q.Equation && len(quantities) == 1 {
		return wrongInput("--quantity %s: this is an equation, and a table holds values; look one up with --value", v.Quantity)
	}
	table := wrongTable(lesson, quantities, v.All)
	switch {
	case v.JSON:
		return written(encode(s.out, table))
	case v.CSV:
		return written(table.csv(s.out))
	}
	page := newScreen(s.out)
	table.show(page, v.All)
	return written(page.err)
}

// quantities are those asked for.
func (v slipsVerb) quantities(l *tutor.Lesson) ([]*lesson.Quantity, error) {
	if v.Quantity == "" {
		return l.Wanted(), nil
	}
	name, err := newIndex(l).find(v.Quantity)
	if err != nil {
		return nil, wrongInput("--quantity: %w", err)
	}
	return []*lesson.Quantity{l.Quantity(name)}, nil
}

// wrongList is the table of wrong values, in a machine's form.
type wrongList struct {
	Quantities []wrongQuantity `json:"quantities"`
}

type wrongQuantity struct {
	Name   string       `json:"name"`
	Symbol string       `json:"symbol"`
	Unit   string       `json:"unit"`
	Right  string       `json:"right"` // as a student writes it
	Wrong  []wrongValue `json:"wrong"`
	what   string
}

type wrongValue struct {
	Value float64     `json:"value"`
	Shown string      `json:"shown"`
	At    string      `json:"at"` // the quantity in whose finding the slip sits
	Slips []wrongSlip `json:"slips"`
	Share float64     `json:"share"` // among this quantity's wrong values, before any is seen
	at    string      // its symbol, where it is another
}

type wrongSlip struct {
	ID  string `json:"id"`
	Did string `json:"did"`
}

func wrongTable(l *tutor.Lesson, quantities []*lesson.Quantity, all bool) wrongList {
	table := wrongList{Quantities: []wrongQuantity{}}
	settings := l.Problem.Settings
	for _, q := range quantities {
		if q.Equation {
			continue
		}
		row := wrongQuantity{Name: q.Name, Symbol: l.SymbolText(q.Name), Unit: l.UnitOf(q).Symbol,
			Right: l.ShowKept(q, q.True, settings), what: l.Sentence(q, "what"), Wrong: []wrongValue{}}
		for _, w := range l.WrongValues(q, settings) {
			if w.InHead(q) && !all {
				continue
			}
			value := wrongValue{Value: w.Value, Shown: w.Shown, At: w.At, Share: w.Weight}
			if w.InHead(q) {
				value.at = l.SymbolText(w.At)
			}
			for _, id := range w.IDs {
				value.Slips = append(value.Slips, wrongSlip{id, l.SlipTitle(id)})
			}
			row.Wrong = append(row.Wrong, value)
		}
		table.Quantities = append(table.Quantities, row)
	}
	return table
}

// show writes the table for a person.
func (t wrongList) show(page *screen, all bool) {
	for i, q := range t.Quantities {
		if i > 0 {
			page.line("")
		}
		page.line(page.in(bold, q.Symbol+" = "+q.Right))
		page.paragraph(2, dim, q.what)
		var values, ids []string
		for _, w := range q.Wrong {
			values = append(values, w.Shown)
			for _, s := range w.Slips {
				ids = append(ids, s.ID)
			}
		}
		values = atPoint(values)
		at := 2 + widest(values) + 2 + widest(ids) + 2
		for k, w := range q.Wrong {
			value := values[k]
			for _, s := range w.Slips {
				did := s.Did
				if w.at != "" {
					did = "in " + w.at + ": " + did
				}
				page.hanging("  "+pad(value, widest(values))+"  "+s.ID, at, plain, did)
				value = ""
			}
		}
	}
	page.line("")
	hint := "Slips under one value give the same. A value is looked up with --value."
	if !all {
		hint += " Slips in a step before, done in the head, are listed with --all."
	}
	page.paragraph(0, dim, hint)
}

func (t wrongList) csv(out io.Writer) error {
	w := csv.NewWriter(out)
	rows := [][]string{{"quantity", "symbol", "slip", "value", "unit", "shown", "at", "did"}}
	for _, q := range t.Quantities {
		for _, v := range q.Wrong {
			for _, s := range v.Slips {
				rows = append(rows, []string{q.Name, q.Symbol, s.ID, strconv.FormatFloat(v.Value, 'g', 10, 64), q.Unit, v.Shown, v.At, s.Did})
			}
		}
	}
	return w.WriteAll(rows)
}

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
		add(1-r.Unexplained, r.Rounded.What+" kept to "+digits(r.Rounded.Digits)+" (early-rounding)")
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
