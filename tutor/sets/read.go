package sets

import (
	"slices"
	"strconv"
	"strings"

	"closingside/tutor"
	"closingside/tutor/draw"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// Read understands the source of a set. An error is a *lesson.SourceError.
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

// readWish reads what is to be drawn, and how often.
func readWish(src lesson.Source) (draw.Wish, int, error) {
	w, count := draw.Wish{}, 1
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
			w.Difficulty, err = kid.Whole(0, draw.Difficulties)
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

// ReadQuadrants reads a list such as "1, 2", as a text or as a list's items. An
// error is a *lesson.SourceError.
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
