package main

import (
	"path/filepath"
	"strings"

	"closingside/site/sheet"
	"closingside/tutor/sets"
)

// sheetVerb writes what is printed.
type sheetVerb struct {
	File    string `arg:"" help:"The problem or set, a YAML or JSON file."`
	Student string `placeholder:"ID" xor:"who" help:"The sheet of one student."`
	Roster  string `placeholder:"FILE" xor:"who" help:"The sheets of all students: a CSV file whose first line is id,name."`
	Key     bool   `help:"Write the key: answers, the working both ways, and the values that mistakes give. With --roster the answers alone, a row a student."`
	At      string `placeholder:"ADDRESS" help:"Where the page is published: sheets get a code to scan that opens the same problems there."`
	Out     string `short:"o" placeholder:"FILE" help:"Where to write; beside the problem or set if not said."`
	Force   bool   `help:"Replace a file that is there already."`
}

// Help says how to print.
func (sheetVerb) Help() string {
	return "The file is an HTML document with everything inside: open it in a browser and print it, on A4 or Letter. " +
		"Every problem begins a page, with its statement, a figure, a blank for each value and room to work."
}

// Run writes the sheets.
func (v sheetVerb) Run(s streams) error {
	set, err := openSheet(v.File)
	if err != nil {
		return err
	}
	copies, err := v.copies(set, s)
	if err != nil {
		return err
	}
	var document []byte
	switch {
	case v.Key && v.Roster != "":
		document, err = sheet.Answers(set.Title, copies, progressTo(s.err, "writing"))
	case v.Key:
		document, err = sheet.Key(set.Title, copies[0], progressTo(s.err, "writing"))
	default:
		document, err = sheet.Worksheets(set.Title, copies, progressTo(s.err, "writing"))
	}
	if err != nil {
		return err
	}
	out := v.out()
	if err := putFile(out, document, v.Force); err != nil {
		return err
	}
	page := newScreen(s.err)
	what := "worksheet"
	if v.Key {
		what = "key"
	}
	each := ""
	if len(copies) > 1 {
		each = " each"
	}
	page.paragraph(0, plain, out+" is written: "+counted(len(copies), what)+", "+counted(set.Size(), "problem")+each+". Open it in a browser and print it.")
	if !v.Key && v.At == "" {
		page.paragraph(0, plain, "No code to scan is on it: say where the page is published with --at.")
	}
	return written(page.err)
}

// openSheet reads a set, or a problem as a set of one.
func openSheet(path string) (*sets.Set, error) {
	src, err := openSource(path, "name a problem or set file such as barge.yaml")
	if err != nil {
		return nil, err
	}
	if isSet(src) {
		return openSet(path)
	}
	lesson, err := openLesson(path)
	if err != nil {
		return nil, err
	}
	p := lesson.Problem
	return &sets.Set{Title: p.Kind.Title(), Settings: p.Settings, Parts: []sets.Part{{Problem: p, Count: 1}}}, nil
}

// copies are the students' variants, or the one for everyone.
func (v sheetVerb) copies(set *sets.Set, s streams) ([]sheet.Copy, error) {
	at, err := pageAddress(v.At)
	if err != nil {
		return nil, err
	}
	var roster []student
	if v.Roster != "" {
		roster, err = readRoster(v.Roster)
	} else {
		roster = make([]student, 1)
		roster[0], err = only(v.File, set, v.Student, "one with --student ID, or all with --roster FILE")
	}
	if err != nil {
		return nil, err
	}
	variants, err := drawAll(set, roster, progressTo(s.err, "drawing"))
	if err != nil {
		return nil, wrongInput("%s: %w", v.File, err)
	}
	copies := make([]sheet.Copy, len(roster))
	for i, who := range roster {
		copies[i] = sheet.Copy{ID: who.ID, Name: who.Name, Variant: variants[i]}
		if at != "" {
			copies[i].Link = at + fragment(v.code(set, who.ID))
		}
	}
	return copies, nil
}

// only is the one student a file is written for; none where all have the same.
func only(path string, set *sets.Set, id, how string) (student, error) {
	if id != "" || set.Personal() {
		if err := sets.CheckStudent(id); err != nil {
			return student{}, wrongInput("%s: every student has a variant of this set; name %s (%s)", path, how, err)
		}
	}
	return student{ID: id}, nil
}

// code is what a sheet's link opens: the set, or the problem alone.
func (v sheetVerb) code(set *sets.Set, id string) string {
	if set.Version == "" { // made of one problem
		return set.Parts[0].Problem.Code()
	}
	return set.Code(id)
}

// out is where to write: barge.yaml gives barge-sheet.html or barge-key.html.
func (v sheetVerb) out() string {
	switch {
	case v.Out != "":
		return v.Out
	case v.Key:
		return beside(v.File, v.Student, "-key.html")
	}
	return beside(v.File, v.Student, "-sheet.html")
}

// beside is the name of a file made from another: barge.yaml, for a student.
func beside(path, student, ending string) string {
	base := strings.TrimSuffix(path, filepath.Ext(path))
	if student != "" {
		base += "-" + safeName(sets.FoldStudent(student))
	}
	return base + ending
}

// safeName is s without what has a meaning in the name of a file.
func safeName(s string) string {
	return strings.Map(func(r rune) rune {
		if r < ' ' || strings.ContainsRune(`/\:*?"<>|.`, r) {
			return '_'
		}
		return r
	}, s)
}
