package main

import (
	"cmp"
	"fmt"
	"path/filepath"
	"strconv"
	"strings"

	"closingside/tutor/draw"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
)

// generateVerb draws fair problems.
type generateVerb struct {
	Kinds       []string `arg:"" optional:"" name:"kind" help:"Kinds of problem, taken in turn; two-forces if none is named. There are ${kinds}."`
	Count       int      `short:"n" default:"1" help:"How many, 1 to 40."`
	Seed        uint64   `default:"1" help:"The same seed draws the same problems on every machine."`
	Difficulty  int      `default:"0" help:"1: every direction given in the first quadrant, and no step where a calculator's answer has to be put right. 2: directions anywhere, still no such step. 3: there is such a step (an obtuse angle, another quadrant, a difference beyond 180 degrees). 0: any of these."`
	Quadrants   string   `placeholder:"1,2" help:"Where the directions given may lie; anywhere if not said."`
	RightAngles bool     `help:"Let right angles, and directions along an axis, occur."`
	Title       string   `help:"The set's title."`
	Out         string   `short:"o" placeholder:"FILE" help:"Write the set here, not to standard output."`
	Separate    bool     `help:"Write every problem to a file of its own, in the folder --out."`
	Force       bool     `help:"Replace files that are there already."`
	JSON        bool     `help:"One JSON object: the problems, and how fair they are."`
}

// drawn is one problem with how fair it is.
type drawn struct {
	problem *lesson.Problem
	fair    draw.Fairness
}

// Run draws the problems and writes them.
func (v generateVerb) Run(s streams) error {
	wishes, err := v.wishes()
	if err != nil {
		return err
	}
	var all []drawn
	for n := range v.Count {
		p, fair, err := wishes[n%len(wishes)].Generate(lesson.Hash("generate", strconv.FormatUint(v.Seed, 10), strconv.Itoa(n+1)))
		if err != nil {
			return wrongInput("%w", err)
		}
		all = append(all, drawn{p, fair})
	}
	if v.JSON {
		return written(encode(s.out, v.object(all)))
	}
	switch {
	case v.Separate && v.Out == "":
		return wrongInput("--separate needs a folder to write to; add --out FOLDER")
	case v.Separate:
		err = v.separate(all)
	case v.Out != "":
		err = putFile(v.Out, []byte(v.set(all)), v.Force)
	default:
		_, err = s.out.Write([]byte(v.set(all)))
	}
	if err != nil {
		return written(err)
	}
	page := newScreen(s.err)
	switch {
	case v.Separate:
		page.paragraph(0, plain, v.Out+" is written: "+counted(len(all), "file")+".")
	case v.Out != "":
		page.paragraph(0, plain, v.Out+" is written.")
	}
	showFairness(page, newTally(all))
	return written(page.err)
}

func (v generateVerb) wishes() ([]draw.Wish, error) {
	if v.Count < 1 || v.Count > 40 {
		return nil, wrongInput("--count %d: draw from 1 to 40 problems at once", v.Count)
	}
	if v.Difficulty < 0 || v.Difficulty > draw.Difficulties {
		return nil, wrongInput("--difficulty %d: there are 1, 2 and 3, and 0 for any", v.Difficulty)
	}
	quadrants, err := sets.ReadQuadrants(lesson.Source{Key: "quadrants", Text: v.Quadrants})
	if err != nil {
		return nil, wrongInput("--quadrants: %w", err)
	}
	names := v.Kinds
	if len(names) == 0 {
		names = []string{"two-forces"}
	}
	var wishes []draw.Wish
	for _, name := range names {
		k := kinds.All.ByName(name)
		if k == nil {
			meant := ""
			if near := nearest(name, kindNames()); len(near) > 0 {
				meant = "; is " + strings.Join(near, " or ") + " meant?"
			}
			return nil, wrongInput("there is no kind of problem called “%s”%s (kinds: %s)", printable(name), meant, strings.Join(kindNames(), ", "))
		}
		w := draw.Wish{Kind: k, Difficulty: v.Difficulty, Quadrants: quadrants, RightAngles: v.RightAngles}
		if err := w.Check(lesson.Source{}); err != nil {
			return nil, wrongInput("%w", err)
		}
		wishes = append(wishes, w)
	}
	return wishes, nil
}

func kindNames() []string {
	var names []string
	for _, k := range kinds.All {
		names = append(names, k.Name)
	}
	return names
}

// set is the problems as a set file; one problem without a title as a problem
// file.
func (v generateVerb) set(all []drawn) string {
	if len(all) == 1 && v.Title == "" {
		return strings.Join(problemLines(all[0].problem), "\n") + "\n"
	}
	title := cmp.Or(v.Title, all[0].problem.Kind.Title())
	var b strings.Builder
	fmt.Fprintf(&b, "# Drawn by: %s\ntitle: %s\nproblems:\n", v.line(), scalar(title))
	for _, d := range all {
		for i, line := range problemLines(d.problem) {
			lead := "    "
			if i == 0 {
				lead = "  - "
			}
			b.WriteString(lead + line + "\n")
		}
	}
	return b.String()
}

// line is the command line that draws the same problems again.
func (v generateVerb) line() string {
	parts := append([]string{"closingside generate"}, v.Kinds...)
	parts = append(parts, "--count", strconv.Itoa(v.Count), "--seed", strconv.FormatUint(v.Seed, 10))
	if v.Difficulty > 0 {
		parts = append(parts, "--difficulty", strconv.Itoa(v.Difficulty))
	}
	if v.Quadrants != "" {
		parts = append(parts, "--quadrants", strings.Join(strings.Fields(printable(v.Quadrants)), ""))
	}
	if v.RightAngles {
		parts = append(parts, "--right-angles")
	}
	return strings.Join(parts, " ")
}

// separate writes every problem to a file of its own.
func (v generateVerb) separate(all []drawn) error {
	for i, d := range all {
		name := fmt.Sprintf("%s-%02d.yaml", d.problem.Kind.Name, i+1)
		if err := putFile(filepath.Join(v.Out, name), []byte(strings.Join(problemLines(d.problem), "\n")+"\n"), v.Force); err != nil {
			return err
		}
	}
	return nil
}

// generated is the machine's form of drawn problems.
type generated struct {
	Seed uint64 `json:"seed"`
	tally
	Problems []any `json:"problems"`
}

func (v generateVerb) object(all []drawn) generated {
	g := generated{Seed: v.Seed, tally: newTally(all)}
	for _, d := range all {
		g.Problems = append(g.Problems, problemObject(d.problem))
	}
	return g
}

// problemObject is a problem as JSON: it reads as a problem file.
func problemObject(p *lesson.Problem) map[string]any {
	o := map[string]any{"kind": p.Kind.Name}
	if p.Story != "" {
		o["story"] = p.Story
	}
	for _, g := range p.Kind.Groups {
		var items []map[string]string
		for _, it := range p.Group(g.Key) {
			item := map[string]string{}
			for _, f := range it.Fields {
				if f.Given() {
					item[f.Key] = f.Written
				}
			}
			items = append(items, item)
		}
		if items != nil {
			o[g.Key] = items
		}
	}
	if check := p.Settings.Source(); len(check.Kids) > 0 {
		set := map[string]string{}
		for _, kid := range check.Kids {
			set[kid.Key] = kid.Text
		}
		o[lesson.CheckKey] = set
	}
	return o
}
