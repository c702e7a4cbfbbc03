package sets

import (
	"errors"
	"strconv"
	"strings"

	"closingside/tutor"
	"closingside/tutor/draw"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// A set's code is the set, and for whom, in the fragment of an address:
//
//	s1k3f9+Mooring_lines+1+Degree_mode.+o+d4;two-forces;3;2+p6;1!two-forces!…!k3f+1042+k9a2
//
// version, with the drawing rule where problems are drawn (a page of another
// rule would draw others, and refuses), title, the set's own version, note, choices, problems, student, and
// four letters against mistyping. The choices are letters (o: numbers of
// their own, s: shuffled, h or n: carried work earns half or nothing), then
// behind a colon what the settings change. Problems to be drawn begin with d
// and the marks of each, then kind, count, difficulty, quadrants, r where
// right angles may occur, and behind a colon their settings where those are
// not the set's. Problems given begin with p and their marks, then their code.
// It is untrusted input like any address.

const (
	codeVersion = "s1"
	// MaxCode is the longest code of a set that is read, in bytes.
	MaxCode = 6000
)

// IsCode tells a set's code from a problem's.
func IsCode(code string) bool { return strings.HasPrefix(code, "s") }

// Code is the set as a code, for a student or ("") for all.
func (s *Set) Code(student string) string {
	parts := []string{codeVersion + s.rule(), lesson.EscapeCode(s.Title), lesson.EscapeCode(s.Version), lesson.EscapeCode(s.Note), s.choices()}
	for _, p := range s.Parts {
		parts = append(parts, p.code(s))
	}
	if !s.Personal() {
		student = ""
	}
	body := strings.Join(append(parts, lesson.EscapeCode(FoldStudent(student))), "+")
	return body + "+" + lesson.Checksum(body)
}

func (s *Set) choices() string {
	flags := ""
	if s.Own {
		flags += "o"
	}
	if s.Shuffle {
		flags += "s"
	}
	flags += []string{"", "h", "n"}[s.Carried]
	if check := s.Settings.Code(); check != "" {
		flags += ":" + check
	}
	return flags
}

func (p *Part) code(s *Set) string {
	if p.Problem != nil {
		return "p" + strconv.Itoa(p.Marks) + ";" + p.Problem.Code()
	}
	fields := []string{"d" + strconv.Itoa(p.Marks), p.Wish.Kind.Name, strconv.Itoa(p.Count), strconv.Itoa(p.Wish.Difficulty),
		strings.ReplaceAll(p.Wish.QuadrantList(), ", ", ""), ""}
	if p.Wish.RightAngles {
		fields[5] = "r"
	}
	code := strings.TrimRight(strings.Join(fields, ";"), ";")
	if p.Wish.Settings != s.Settings {
		code += ":" + p.Wish.Settings.Code()
	}
	return code
}

// Decode reads a set and its student from a code. The error is a sentence
// for whoever followed the link.
func Decode(code string) (*Set, string, error) {
	broken := errors.New(text.Say("code.broken"))
	cut := strings.LastIndexByte(code, '+')
	if len(code) > MaxCode || cut < 0 {
		return nil, "", broken
	}
	parts := strings.Split(code[:cut], "+")
	rule, known := strings.CutPrefix(parts[0], codeVersion)
	if !known {
		return nil, "", errors.New(text.Say("code.version"))
	}
	if code[cut+1:] != lesson.Checksum(code[:cut]) || len(parts) < 7 {
		return nil, "", broken
	}
	s := &Set{Settings: lesson.DefaultSettings()}
	for i, key := range []string{"title", "version", "note"} {
		if err := s.readKey(lesson.Leaf(key, lesson.UnescapeCode(parts[1+i]))); err != nil {
			return nil, "", err
		}
	}
	if err := s.decodeChoices(parts[4]); err != nil {
		return nil, "", err
	}
	last := len(parts) - 1
	for _, part := range parts[5:last] {
		p, err := s.decodePart(part)
		if err != nil {
			return nil, "", err
		}
		s.Parts = append(s.Parts, p)
	}
	if rule != s.rule() { // the same seeds draw other problems here
		return nil, "", errors.New(text.Say("code.version"))
	}
	student := FoldStudent(lesson.UnescapeCode(parts[last]))
	if s.Title == "" || s.Size() > maxTasks || student != "" && CheckStudent(student) != nil {
		return nil, "", broken
	}
	return s, student, nil
}

func (s *Set) decodeChoices(part string) error {
	flags, check, _ := strings.Cut(part, ":")
	for _, c := range flags {
		switch c {
		case 'o':
			s.Own = true
		case 's':
			s.Shuffle = true
		case 'h':
			s.Carried = HalfShare
		case 'n':
			s.Carried = NoShare
		default:
			return errors.New(text.Say("code.version"))
		}
	}
	if check == "" {
		return nil
	}
	var err error
	s.Settings, err = lesson.DecodeSettings(check)
	return err
}

func (s *Set) decodePart(part string) (Part, error) {
	p := Part{Count: 1}
	head, rest, _ := strings.Cut(part, ";")
	if head == "" {
		return p, errors.New(text.Say("code.broken"))
	}
	var err error
	if p.Marks, err = lesson.Leaf("marks", head[1:]).Whole(1, maxMarks); err != nil {
		return p, err
	}
	switch head[0] {
	case 'p':
		if p.Problem, err = kinds.All.Decode(rest); err == nil {
			_, err = tutor.Open(p.Problem)
		}
		return p, err
	case 'd':
		p.Wish, p.Count, err = s.decodeWish(rest)
		return p, err
	}
	return p, errors.New(text.Say("code.version"))
}

func (s *Set) decodeWish(code string) (draw.Wish, int, error) {
	fields, check, set := strings.Cut(code, ":")
	values := append(strings.Split(fields, ";"), "", "", "", "", "")
	w, count, err := readWish(lesson.Branch("", lesson.Leaf("generate", values[0]), lesson.Leaf("count", values[1]), lesson.Leaf("difficulty", values[2]),
		lesson.Leaf("quadrants", strings.Join(strings.Split(values[3], ""), " "))))
	if err != nil {
		return w, count, err
	}
	w.RightAngles = values[4] == "r"
	w.Settings = s.Settings
	if set {
		w.Settings = lesson.DefaultSettings()
		if check != "" {
			w.Settings, err = lesson.DecodeSettings(check)
		}
	}
	return w, count, err
}
