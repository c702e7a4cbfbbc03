package main

import (
	"path/filepath"
	"strings"

	"closingside/site/export"
)

// exportVerb writes problems for other places.
type exportVerb struct {
	File    string `arg:"" help:"The problem or set, a YAML or JSON file."`
	As      string `required:"" placeholder:"markdown|qti" enum:"markdown,qti" help:"markdown: the worked solutions, with figures as SVG files beside them. qti: a QTI 3 package for a learning platform."`
	Student string `placeholder:"ID" help:"The variant of one student."`
	Out     string `short:"o" placeholder:"FILE" help:"Where to write: a name ending in .md or .zip; beside the problem or set if not said."`
	Force   bool   `help:"Replace files that are there already."`
}

// Help says what a package holds.
func (exportVerb) Help() string {
	return "A QTI package holds two tests: one where every answer is typed, right within the band the tutor accepts, and one where it is chosen among values that mistakes give."
}

// Run writes the files.
func (v exportVerb) Run(s streams) error {
	set, err := openSheet(v.File)
	if err != nil {
		return err
	}
	roster, err := only(v.File, set, v.Student, "one with --student ID")
	if err != nil {
		return err
	}
	variant, err := set.Variant(roster.ID)
	if err != nil {
		return wrongInput("%s: %w", v.File, err)
	}
	ending := map[string]string{"markdown": ".md", "qti": ".zip"}[v.As]
	out := v.Out
	if out == "" {
		out = beside(v.File, v.Student, "-"+v.As+ending)
	}
	if filepath.Ext(out) != ending {
		return wrongInput("--out %s: for --as %s the name ends in %s", out, v.As, ending)
	}
	var files []export.File
	if v.As == "qti" {
		packed, err := export.QTI(variant)
		if err != nil {
			return err
		}
		files = []export.File{{Name: filepath.Base(out), Content: packed}}
	} else if files, err = export.Markdown(strings.TrimSuffix(filepath.Base(out), ending), variant); err != nil {
		return err
	}
	for i := range files { // the file that names the others comes last, so that it never names one that is not there
		f := files[len(files)-1-i]
		if err := putFile(filepath.Join(filepath.Dir(out), f.Name), f.Content, v.Force); err != nil {
			return err
		}
	}
	page := newScreen(s.err)
	page.paragraph(0, plain, out+" is written"+more(len(files)-1)+": "+counted(len(variant.Tasks), "problem")+".")
	return written(page.err)
}

func more(figures int) string {
	if figures == 0 {
		return ""
	}
	return " with " + counted(figures, "figure") + " beside it"
}
