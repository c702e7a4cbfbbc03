package sets

import (
	"slices"

	"closingside/tutor"
	"closingside/tutor/draw"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// Set is what an instructor sets: problems given or to be drawn, in order,
// with their marks and how they are checked. Read and Decode make one.
type Set struct {
	Title    string
	Version  string // part of the seed: a new version draws new numbers
	Note     string // the instructor's, shown above the problems
	Own      bool   // every student has numbers of their own
	Shuffle  bool   // every student has an order of their own
	Carried  Share  // of the marks, earned by an answer that is right but for an earlier value
	Parts    []Part
	Settings lesson.Settings // how problems are checked; one may change them for itself
}

// Share is how much of its marks an answer earns.
type Share uint8

// The shares; the zero value is all of them.
const (
	FullShare Share = iota
	HalfShare
	NoShare
)

// Part is one entry of a set's list: a problem given, or so many drawn.
type Part struct {
	Marks   int             // of each problem
	Problem *lesson.Problem // given; nil where problems are drawn
	Wish    draw.Wish       // what is drawn
	Count   int             // how many; 1 for a problem given
}

// Limits of a set.
const (
	maxTitle   = 120 // runes
	maxVersion = 20
	maxNote    = 600
	maxStudent = 40
	maxTasks   = 40 // problems in all
	maxMarks   = 100
)

func (s *Set) hash(parts ...string) uint64 {
	return lesson.Hash(append([]string{s.Title, s.Version}, parts...)...)
}

// Size is the number of problems.
func (s *Set) Size() int {
	n := 0
	for _, p := range s.Parts {
		n += p.Count
	}
	return n
}

// Marks is what the whole set is worth.
func (s *Set) Marks() int {
	n := 0
	for _, p := range s.Parts {
		n += p.Count * p.Marks
	}
	return n
}

// rule names how the kinds that the set draws are drawn; "" where none is.
func (s *Set) rule() string {
	var rules []string
	for _, p := range s.Parts {
		if p.Problem == nil && !slices.Contains(rules, p.Wish.Kind.Rule) {
			rules = append(rules, p.Wish.Kind.Rule)
		}
	}
	switch len(rules) {
	case 0:
		return ""
	case 1:
		return rules[0]
	}
	return lesson.Letters(lesson.Hash(rules...), 4)
}

// Personal tells whether students get different variants.
func (s *Set) Personal() bool { return s.Own || s.Shuffle }

// Earned is what work on a problem worth so many marks earns: every answer has
// an equal share, found or carried.
func (s *Set) Earned(w *tutor.Work, marks int) float64 {
	answers, shares := 0, 0.0
	for _, q := range w.Lesson.Quantities {
		if !q.Answer {
			continue
		}
		answers++
		switch a := w.Standing(q.Name); {
		case a == nil:
		case a.Verdict == verdict.Correct:
			shares++
		case a.Verdict == verdict.Carried && s.Carried == FullShare:
			shares++
		case a.Verdict == verdict.Carried && s.Carried == HalfShare:
			shares += 0.5
		}
	}
	if answers == 0 {
		return 0
	}
	return float64(marks) * shares / float64(answers)
}
