package sets

import (
	"errors"
	"strconv"
	"strings"
	"unicode/utf8"

	"closingside/tutor/draw"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

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
	Fair    draw.Fairness // of a problem drawn
}

// FoldStudent is a student's number or name as seeds and variants take it: without
// spaces, in small letters, so that it may be typed on a phone.
func FoldStudent(id string) string {
	return strings.ToLower(strings.Join(strings.Fields(id), ""))
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
	Fair    draw.Fairness // the zero value where it isn't known
}

// wished is a problem to be drawn: what is wished, and its number, from 1, in
// the order of the set's file.
type wished struct {
	draw.Wish
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

// WishCount is the number of problems that are drawn, of all that the set lists.
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
