package main

import (
	"fmt"
	"io"
	"maps"
	"os"
	"slices"
	"strings"

	"golang.org/x/term"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
	"closingside/tutor/trial"
)

// trialVerb measures the diagnosis on simulated learners.
type trialVerb struct {
	Files    []string           `arg:"" optional:"" name:"file" help:"Problem files. Without any, problems are drawn by seed."`
	Seed     uint64             `default:"1" help:"Same seed, same figures (times aside)."`
	Problems int                `default:"20" help:"Problems drawn of each kind."`
	Kind     []string           `help:"Draw problems of this kind only; may be repeated." placeholder:"KIND"`
	Any      bool               `help:"Draw any problems, not only fair ones."`
	Learners int                `default:"10" help:"Learners at each problem."`
	Habit    map[string]float64 `help:"A habit's share, such as slip=0.7 or three=0.3; may be repeated." placeholder:"NAME=SHARE"`
	Group    map[string]float64 `help:"How often slips of a group are met, in ratio: trig=3; may be repeated." placeholder:"NAME=RATE"`
	Digits   int                `default:"4" help:"Significant digits that learners write."`
	Places   int                `default:"2" help:"Digits after the point that they write of an angle."`
	Misses   int                `help:"List this many entries that were not judged as they were, with what was written before." placeholder:"N"`
	JSON     bool               `help:"One JSON object, with every count."`
}

// Help says what the habits are.
func (trialVerb) Help() string {
	return "Habits, each a share between 0 and 1. What a learner sets out to write: right; and of the rest, in ratio, " +
		"slip (one), two (slips), early (rounding), noise. On the way: four and three (digits kept), cut (not rounded), radians (the calculator's mode), " +
		"head (steps not written), first-route, paper (goes on from what is written). At the desk: go-on (from a wrong entry), " +
		"expressions (a formula for an entry). Groups of slips: " + strings.Join(slips.Groups(), ", ") + "."
}

const (
	mostProblems = 10_000
	mostLearners = 10_000
)

// Run lets the learners work and shows what was seen.
func (v trialVerb) Run(s streams) error {
	habits, err := v.habits()
	if err != nil {
		return err
	}
	if v.Learners < 1 || v.Learners > mostLearners || v.Problems < 1 || v.Problems > mostProblems {
		return wrongInput("--learners and --problems lie between 1 and %d", mostLearners)
	}
	problems, err := v.problems()
	if err != nil {
		return err
	}
	progress := newProgress(s.err)
	report, err := trial.Run(problems, habits, trial.Options{Seed: v.Seed, Learners: v.Learners, Misses: v.Misses, Progress: progress.tell})
	progress.clear()
	if err != nil {
		return err
	}
	if v.JSON {
		return written(encode(s.out, report))
	}
	page := newScreen(s.out)
	showTrial(page, report)
	return written(page.err)
}

// habits are the usual ones with what the flags change.
func (v trialVerb) habits() (trial.Habits, error) {
	h := trial.DefaultHabits()
	h.Digits = lesson.Digits{Magnitude: v.Digits, Angle: v.Places}
	shares := h.Shares()
	for _, name := range slices.Sorted(maps.Keys(v.Habit)) {
		to, ok := shares[name]
		if !ok {
			return h, wrongInput("--habit %s: there is no such habit (habits: %s)", name, strings.Join(slices.Sorted(maps.Keys(shares)), ", "))
		}
		*to = v.Habit[name]
	}
	for _, name := range slices.Sorted(maps.Keys(v.Group)) {
		if _, ok := h.Groups[name]; !ok {
			return h, wrongInput("--group %s: there is no such group (groups: %s)", name, strings.Join(slips.Groups(), ", "))
		}
		h.Groups[name] = v.Group[name]
	}
	if err := h.Check(); err != nil {
		return h, wrongInput("habits: %w", err)
	}
	return h, nil
}

// problems are those of the files, or drawn ones.
func (v trialVerb) problems() ([]*lesson.Problem, error) {
	var all []*lesson.Problem
	for _, path := range v.Files {
		lesson, err := openLesson(path)
		if err != nil {
			return nil, err
		}
		all = append(all, lesson.Problem)
	}
	if len(v.Files) > 0 {
		return all, nil
	}
	var of []*lesson.Kind
	for _, name := range v.Kind {
		k := kinds.All.ByName(name)
		if k == nil {
			var names []string
			for _, k := range kinds.All {
				names = append(names, k.Name)
			}
			return nil, wrongInput("--kind %s: there is no such kind (kinds: %s)", name, strings.Join(names, ", "))
		}
		of = append(of, k)
	}
	if v.Any {
		return trial.Drawn(v.Problems, v.Seed, of...), nil
	}
	return trial.Generated(v.Problems, v.Seed, of...), nil
}

// progress tells on a terminal how far a long run is; elsewhere nothing.
type progress struct{ out io.Writer }

func newProgress(out io.Writer) progress {
	if f, ok := out.(*os.File); ok && term.IsTerminal(int(f.Fd())) {
		return progress{out}
	}
	return progress{io.Discard}
}

func (p progress) tell(done, all int) { fmt.Fprintf(p.out, "\r%d of %d problems", done, all) }

func (p progress) clear() { fmt.Fprint(p.out, "\r\x1b[K") }
