package main

import (
	"fmt"
	"strings"

	"closingside/tutor"
	"closingside/tutor/sets"
)

// setVerb shows a set.
type setVerb struct {
	File    string `arg:"" help:"The set, a YAML or JSON file."`
	Student string `placeholder:"ID" help:"The student's id: show their variant. Where all have the same it makes no difference."`
	JSON    bool   `help:"One JSON object: the problems with their answers, and how fair they are."`
}

// Run shows the set.
func (v setVerb) Run(s streams) error {
	set, variant, err := v.open()
	if err != nil {
		return err
	}
	if v.JSON {
		return written(encode(s.out, variantObject(student{ID: v.Student}, variant, "")))
	}
	page := newScreen(s.out)
	page.paragraph(0, bold, printable(set.Title))
	if set.Note != "" {
		page.paragraph(0, plain, printable(set.Note))
	}
	about := counted(len(variant.Tasks), "problem") + ", " + counted(set.Marks(), "mark")
	if set.Personal() {
		about += "; variant " + variant.ID + " for " + printable(variant.Student)
	}
	page.paragraph(0, dim, about+".")
	for _, task := range variant.Tasks {
		page.line("")
		showTask(page, task)
	}
	page.line("")
	showFairness(page, tallyOf(variant))
	page.paragraph(0, plain, "Link: #"+set.Code(v.Student))
	return written(page.err)
}

func (v setVerb) open() (*sets.Set, *sets.Variant, error) {
	set, err := openSet(v.File)
	if err != nil {
		return nil, nil, err
	}
	if set.Personal() || v.Student != "" {
		if err := sets.CheckStudent(v.Student); err != nil {
			return nil, nil, wrongInput("%s: every student has a variant of this set; name one with --student ID (%s)", v.File, err)
		}
	}
	variant, err := set.Variant(v.Student)
	if err != nil {
		return nil, nil, wrongInput("%s: %w", v.File, err)
	}
	return set, variant, nil
}

func showTask(page *screen, task sets.Task) {
	p := task.Problem
	lead := fmt.Sprintf("%2d  ", task.Number)
	page.hanging(lead, len(lead)+1, bold, printable(p.Title())+" ("+counted(task.Marks, "mark")+")")
	for _, given := range p.Statements() {
		page.paragraph(len(lead)+1, plain, printable(given))
	}
	lesson, err := tutor.Open(p)
	if err != nil { // it was opened before
		return
	}
	for _, each := range lesson.Solutions() {
		var answers []string
		for _, q := range each.Wanted() {
			if q.Answer {
				answers = append(answers, each.SymbolText(q.Name)+" = "+each.Show(q, q.True, p.Settings.Answer))
			}
		}
		page.paragraph(len(lead)+1, dim, each.InCase(strings.Join(answers, ", ")))
	}
}

func tallyOf(v *sets.Variant) tally {
	t := tally{Coincidences: []coincidence{}}
	for _, task := range v.Tasks {
		t.add(task.Number, task.Fair)
	}
	return t
}

// variantJSON is the machine's form of a variant.
type variantJSON struct {
	Student  string     `json:"student"`
	Name     string     `json:"name"`
	Variant  string     `json:"variant"`
	Link     string     `json:"link"`
	Problems []taskJSON `json:"problems"`
	Fairness *tally     `json:"fairness"`
}

type taskJSON struct {
	Number  int            `json:"number"`
	Marks   int            `json:"marks"`
	Problem map[string]any `json:"problem"`
	Answers []value        `json:"answers"`
}

func variantObject(who student, v *sets.Variant, at string) variantJSON {
	t := tallyOf(v)
	o := variantJSON{Student: who.ID, Name: who.Name, Variant: v.ID, Link: at + fragment(v.Set.Code(who.ID)), Fairness: &t}
	for _, task := range v.Tasks {
		row := taskJSON{Number: task.Number, Marks: task.Marks, Problem: problemObject(task.Problem), Answers: []value{}}
		if lesson, err := tutor.Open(task.Problem); err == nil {
			for i, q := range lesson.Wanted() {
				if q.Answer {
					row.Answers = append(row.Answers, solved(lesson.Lesson).Quantities[i])
				}
			}
		}
		o.Problems = append(o.Problems, row)
	}
	return o
}
