package sets

import (
	"errors"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

// Set is what an instructor sets: problems given or to be drawn, in order,
// with their marks and how they are checked. Read makes one.
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

// The shares.
const (
	FullShare Share = iota
	HalfShare
	NoShare
)

// Part is one entry of a set's list: a problem given, or so many drawn.
type Part struct {
	Marks   int             // of each problem
	Problem *lesson.Problem // given; nil where problems are drawn
	Wish    tutor.Wish      // what is drawn
	Count   int             // how many; 1 for a problem given
}

// Variant is a set as one student gets it.
type Variant struct {
	Set     *Set
	Student string // as folded by FoldStudent; "" where all have the same
	ID      string // five letters that tell variants apart on paper
	Tasks   []Task
}

// Task is one problem of a variant.
type Task struct {
	Number  int // from 1, in the order set before this student
	Problem *lesson.Problem
	Marks   int
	Fair    tutor.Fairness // of a problem drawn
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

// FoldStudent is a student's number or name as the seed takes it: without
// spaces, in small letters, so that it may be typed on a phone.
func FoldStudent(id string) string {
	return strings.ToLower(strings.Join(strings.Fields(id), ""))
}

// seed is the seed of problem n (from 1, in the order of the set's file) for a
// student: the 64-bit FNV-1a hash of the set's title and version, the
// student's id as folded and n, each followed by a line end. Nothing else
// enters, so title, version and id bring the variant back. Where all students
// have the same numbers the id is left empty.
func (s *Set) seed(student string, n int) uint64 {
	if !s.Own {
		student = ""
	}
	return s.hash(student, strconv.Itoa(n))
}

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

// Variant draws the set for a student; "" gives what everyone gets. It fails
// where a wish can't be met.
func (s *Set) Variant(student string) (*Variant, error) {
	var drawn []Drawn
	for i := range s.WishCount() {
		d, err := s.Draw(student, i)
		if err != nil {
			return nil, err
		}
		drawn = append(drawn, d)
	}
	return s.Deal(student, drawn)
}

// Drawn is a problem drawn for a set.
type Drawn struct {
	Problem *lesson.Problem
	Fair    tutor.Fairness // the zero value where it isn't known
}

// wished is a problem to be drawn: what is wished, and its number, from 1, in
// the order of the set's file.
type wished struct {
	tutor.Wish
	number int
}

func (s *Set) wished() (all []wished) {
	n := 0
	for _, part := range s.Parts {
		for range part.Count {
			if n++; part.Problem == nil {
				all = append(all, wished{part.Wish, n})
			}
		}
	}
	return all
}

// WishCount is the number of problems that are drawn.
func (s *Set) WishCount() int { return len(s.wished()) }

// Draw draws the i-th of them, from 0, for a student. It fails where the wish
// can't be met.
func (s *Set) Draw(student string, i int) (d Drawn, err error) {
	w := s.wished()[i]
	d.Problem, d.Fair, err = w.Generate(s.seed(FoldStudent(student), w.number))
	return d, err
}

// Deal is a student's variant with the problems drawn before, in the order of
// Draw. It fails where these are not what the set wishes; that they are this
// student's isn't looked at.
func (s *Set) Deal(student string, drawn []Drawn) (*Variant, error) {
	v := &Variant{Set: s}
	if s.Personal() {
		v.Student = FoldStudent(student)
	}
	v.ID = lesson.Letters(s.hash(v.Student, "variant", s.rule()), 5)
	if len(drawn) != s.WishCount() {
		return nil, errNotWished
	}
	for _, part := range s.Parts {
		for range part.Count {
			task := Task{Problem: part.Problem, Marks: part.Marks}
			if task.Problem == nil {
				d := drawn[0]
				if d.Problem.Kind != part.Wish.Kind || d.Problem.Settings != part.Wish.Settings {
					return nil, errNotWished
				}
				task.Problem, task.Fair, drawn = d.Problem, d.Fair, drawn[1:]
			}
			v.Tasks = append(v.Tasks, task)
		}
	}
	if s.Shuffle {
		v.shuffle(lesson.NewDraw(s.hash(v.Student, "order"), 0))
	}
	for i := range v.Tasks {
		v.Tasks[i].Number = i + 1
	}
	return v, nil
}

var errNotWished = errors.New("these are not the problems that the set wishes")

// shuffle is Fisher and Yates's.
func (v *Variant) shuffle(d *lesson.Draw) {
	for i := len(v.Tasks) - 1; i > 0; i-- {
		j := d.Below(i + 1)
		v.Tasks[i], v.Tasks[j] = v.Tasks[j], v.Tasks[i]
	}
}

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

// Read understands the source of a set. An error is a *SourceError.
// Problems given as files have to be read into the source before.
func Read(src lesson.Source) (*Set, error) {
	s := &Set{Version: "1", Settings: lesson.DefaultSettings()}
	seen := map[string]bool{}
	list := src
	for _, kid := range src.Kids {
		if seen[kid.Key] {
			return nil, kid.Fault("problem.twice", "key", kid.Key)
		}
		seen[kid.Key] = true
		if kid.Key == "problems" {
			list = kid
		} else if err := s.readKey(kid); err != nil {
			return nil, err
		}
	}
	if seen["problems"] { // they need the settings
		if err := s.readParts(list); err != nil {
			return nil, err
		}
	}
	switch {
	case s.Title == "":
		return nil, src.Fault("set.title.missing")
	case len(s.Parts) == 0:
		return nil, src.Fault("set.problems.missing")
	case s.Size() > maxTasks:
		return nil, list.Fault("set.long", "n", strconv.Itoa(s.Size()), "max", strconv.Itoa(maxTasks))
	}
	return s, nil
}

var setKeys = []string{"title", "version", "note", "numbers", "order", "carried", lesson.CheckKey, "problems"}

func (s *Set) readKey(kid lesson.Source) error {
	var err error
	switch kid.Key {
	case "title":
		s.Title, err = kid.OneLine(maxTitle)
	case "version":
		s.Version, err = kid.OneLine(maxVersion)
	case "note":
		s.Note, err = kid.OneLine(maxNote)
	case "numbers":
		var i int
		i, err = kid.Choice("same", "own")
		s.Own = i == 1
	case "order":
		var i int
		i, err = kid.Choice("given", "shuffled")
		s.Shuffle = i == 1
	case "carried":
		var i int
		i, err = kid.Choice("full", "half", "none")
		s.Carried = Share(i)
	case lesson.CheckKey:
		s.Settings, err = lesson.ReadSettings(kid)
	default:
		err = kid.Fault("problem.key.unknown", "key", kid.Key, "keys", strings.Join(setKeys, ", "))
	}
	return err
}

func (s *Set) readParts(list lesson.Source) error {
	if len(list.Kids) == 0 || list.Kids[0].Key != "" {
		return list.Fault("set.list")
	}
	for _, item := range list.Kids {
		part, err := s.readPart(item)
		if err != nil {
			return err
		}
		s.Parts = append(s.Parts, part)
	}
	return nil
}

// readPart reads one entry of the list: marks, and a wish or a problem.
func (s *Set) readPart(item lesson.Source) (Part, error) {
	part := Part{Marks: 1, Count: 1}
	rest := lesson.Source{Line: item.Line, Col: item.Col}
	check := s.Settings
	drawn := false
	for _, kid := range item.Kids {
		var err error
		switch kid.Key {
		case "marks":
			part.Marks, err = kid.Whole(1, maxMarks)
		case lesson.CheckKey:
			check, err = check.With(kid)
		case "file":
			err = kid.Fault("set.file")
		default:
			drawn = drawn || kid.Key == "generate"
			rest.Kids = append(rest.Kids, kid)
		}
		if err != nil {
			return part, err
		}
	}
	var err error
	if drawn {
		part.Wish, part.Count, err = readWish(rest)
		part.Wish.Settings = check
		return part, err
	}
	if part.Problem, err = kinds.All.Read(rest); err != nil {
		return part, err
	}
	if err = part.Problem.Use(check); err == nil {
		_, err = tutor.Open(part.Problem)
	}
	if err != nil {
		err = &lesson.SourceError{Line: rest.Line, Col: rest.Col, Message: err.Error()}
	}
	return part, err
}

// CheckStudent refuses an id that no student can have: an empty one, or one of
// more than 40 runes as folded. The error is a sentence for whoever typed it.
func CheckStudent(id string) error {
	switch f := FoldStudent(id); {
	case f == "":
		return errors.New(text.Say("set.student.empty"))
	case utf8.RuneCountInString(f) > maxStudent:
		return errors.New(text.Say("set.student.long", "max", strconv.Itoa(maxStudent)))
	}
	return nil
}

// readWish reads what is to be drawn, and how often.
func readWish(src lesson.Source) (tutor.Wish, int, error) {
	w, count := tutor.Wish{}, 1
	keys := []string{"generate", "count", "difficulty", "quadrants", "right-angles", "marks"}
	var err error
	for _, kid := range src.Kids {
		switch kid.Key {
		case "generate":
			if w.Kind = kinds.All.ByName(strings.TrimSpace(kid.Text)); w.Kind == nil {
				err = kid.Fault("problem.kind.unknown", "got", kid.Text, "kinds", kinds.All.Names())
			}
		case "count":
			count, err = kid.Whole(1, maxTasks)
		case "difficulty":
			w.Difficulty, err = kid.Whole(0, tutor.Difficulties)
		case "quadrants":
			w.Quadrants, err = ReadQuadrants(kid)
		case "right-angles":
			var i int
			i, err = kid.Choice("avoided", "allowed")
			w.RightAngles = i == 1
		default:
			err = kid.Fault("problem.key.unknown", "key", kid.Key, "keys", strings.Join(keys, ", "))
		}
		if err != nil {
			return w, count, err
		}
	}
	return w, count, w.Check(src)
}

// ReadQuadrants reads a list such as "1, 2".
func ReadQuadrants(src lesson.Source) (on [4]bool, err error) {
	words := strings.FieldsFunc(src.Text, func(r rune) bool { return r == ' ' || r == ',' })
	for _, kid := range src.Kids {
		words = append(words, strings.TrimSpace(kid.Text))
	}
	for _, w := range words {
		i := slices.Index([]string{"1", "2", "3", "4"}, w)
		if i < 0 {
			return on, src.Fault("wish.quadrant", "got", w)
		}
		on[i] = true
	}
	return on, nil
}
