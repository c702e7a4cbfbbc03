package main

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"os"

	"golang.org/x/term"

	"closingside/site/parallel"
	"closingside/tutor/sets"
)

// variantsVerb draws a set for every student of a roster.
type variantsVerb struct {
	File   string `arg:"" help:"The set, a YAML or JSON file."`
	Roster string `required:"" placeholder:"FILE" help:"The students: a CSV file whose first line is id,name."`
	At     string `placeholder:"ADDRESS" help:"Where the page is published, for whole links."`
	Out    string `short:"o" placeholder:"FILE" help:"Write here, not to standard output."`
	Force  bool   `help:"Replace a file that is there already."`
	JSON   bool   `help:"JSON lines, one student each: the problems with their answers, and how fair they are."`
}

// Run draws the variants and writes a line for each student.
func (v variantsVerb) Run(s streams) error {
	set, err := openSet(v.File)
	if err != nil {
		return err
	}
	if !set.Personal() {
		return wrongInput("%s: this set is the same for everyone; add “numbers: own” (or “order: shuffled”) to give each student a variant", v.File)
	}
	at, err := pageAddress(v.At)
	if err != nil {
		return err
	}
	roster, err := readRoster(v.Roster)
	if err != nil {
		return err
	}
	variants, err := drawAll(set, roster, progressTo(s.err, "drawing"))
	if err != nil {
		return wrongInput("%s: %w", v.File, err)
	}
	var b bytes.Buffer
	if err := v.write(&b, set, roster, variants, at); err != nil {
		return err
	}
	if v.Out != "" {
		err = putFile(v.Out, b.Bytes(), v.Force)
	} else {
		_, err = s.out.Write(b.Bytes())
	}
	if err != nil {
		return written(err)
	}
	t := tally{}
	for _, o := range variants {
		for _, task := range o.Tasks {
			t.add(task.Number, task.Fair)
		}
	}
	page := newScreen(s.err)
	if v.Out != "" {
		page.paragraph(0, plain, v.Out+" is written.")
	}
	page.paragraph(0, plain, counted(len(roster), "student")+", "+counted(set.Size(), "problem")+" each.")
	showFairness(page, t)
	return written(page.err)
}

func (v variantsVerb) write(b *bytes.Buffer, set *sets.Set, roster []student, variants []*sets.Variant, at string) error {
	if v.JSON {
		for i, who := range roster {
			if err := encode(b, variantObject(who, variants[i], at)); err != nil {
				return err
			}
		}
		return nil
	}
	w := csv.NewWriter(b)
	_ = w.Write([]string{"id", "name", "variant", "link"}) // to memory: cannot fail
	for i, who := range roster {
		_ = w.Write([]string{who.ID, who.Name, variants[i].ID, at + fragment(set.Code(who.ID))})
	}
	w.Flush()
	return w.Error()
}

// drawAll draws every student's variant.
func drawAll(set *sets.Set, roster []student, progress func(done, all int)) ([]*sets.Variant, error) {
	variants, faults := parallel.Each(len(roster), func(i int) (*sets.Variant, error) { return set.Variant(roster[i].ID) }, progress)
	return variants, errors.Join(faults...)
}

// progressTo tells a person at a terminal how far a long run is.
func progressTo(out io.Writer, doing string) func(done, all int) {
	f, ok := out.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) {
		return func(int, int) {}
	}
	return func(done, all int) {
		if done%10 == 0 || done == all {
			fmt.Fprintf(f, "\r%s %d of %d", doing, done, all)
		}
		if done == all {
			fmt.Fprint(f, "\r\x1b[K")
		}
	}
}
