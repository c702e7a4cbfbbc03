package site

import (
	"slices"
	"strconv"

	"closingside/tutor"
	"closingside/tutor/draw"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
)

// session is everything one learner has in front of them: the problems opened
// so far, and which of them is on the screen. It is built from the log alone.
type session struct {
	desks   map[string]*desk // by code
	order   []string         // codes, the one opened last at the end
	current string           // code of the desk or set on the screen; "" is the home screen
	sets    map[string]*setView
	shelf   []string          // codes of the sets on the home screen
	draft   Form              // what was typed for a problem of one's own
	lost    string            // why a link was not opened
	refused string            // why a problem of one's own was not opened, or a student's number not taken
	faults  []fault           // the fields of the draft it is about; none for the whole
	warmed  *desk             // what its checks look in is being made ahead
	lately  [2]*desk          // the desk turned to last, and the one before
	codes   map[string]string // request to draw a problem → its code, from the log
	deals   map[string]string // code of a set → those of the problems drawn for it, from the log
}

// open puts the problem of a code on the screen; false where there is none.
func (s *session) open(code string) bool {
	if sets.IsCode(code) {
		return s.openSet(code)
	}
	if s.desks[code] == nil {
		lesson, err := openCode(code)
		if err != nil {
			s.lost, s.current = err.Error(), ""
			return false
		}
		if s.desks == nil {
			s.desks = map[string]*desk{}
		}
		s.desks[code] = &desk{code: code, lesson: lesson, work: tutor.NewWork(lesson, lesson.Problem.Settings)}
	}
	s.order = append(slices.DeleteFunc(s.order, func(c string) bool { return c == code }), code)
	s.current, s.lost, s.refused = code, "", ""
	d := s.desks[code]
	d.past = append(d.past, Form{{"do", "look"}})
	return true
}

// desk is the desk of a request's problem, opened where need be.
func (s *session) desk(f Form) *desk {
	code := f.Get("problem")
	if s.desks[code] == nil && !s.open(code) {
		return nil
	}
	return s.desks[code]
}

// replay takes one line of the log.
func (s *session) replay(f Form) {
	switch do := f.Get("do"); {
	case slices.Contains(moves, do):
		s.move(f)
	case slices.Contains(works, do):
		if d := s.desk(f); d != nil {
			d.past = append(d.past, f)
			d.told.hear(f)
		}
	case do == "outcome":
		if d := s.desks[f.Get("problem")]; d != nil {
			d.told.hear(f)
		}
	}
}

// move takes a request that changes what is on the screen.
func (s *session) move(f Form) {
	s.lost, s.refused = "", ""
	if s.draft.Get("do") == "form" { // nothing of it was sent
		s.draft = nil
	}
	switch f.Get("do") {
	case "home":
		s.current = ""
	case "open":
		code := f.Get("hash")
		if code == "" {
			code = f.Get("problem")
		}
		if code == "" {
			s.current = ""
			return
		}
		if s.open(code) {
			s.within(f.Get("set"))
		}
	case "personal":
		s.personal(f)
	case "draw":
		if k := kinds.All.ByName(f.Get("kind")); k != nil {
			s.open(s.draw(k, f))
		}
	case "form":
		if kinds.All.ByName(f.Get("kind")) != nil {
			s.current, s.draft, s.faults = "", f, nil
		}
	case "own":
		s.own(f)
	}
}

// seed is the seed of a drawn problem: the one asked for, or the time of the
// request, which the log keeps.
func seed(f Form) uint64 {
	text, ok := f.Lookup("seed")
	if !ok {
		text = f.Get("at")
	}
	n, _ := strconv.ParseUint(text, 10, 64) // anything else draws by seed 0
	return n
}

// draw is the code of a problem drawn by a request: the one that the log tells,
// for drawing it again would take as long as it did, or a new one.
func (s *session) draw(k *lesson.Kind, f Form) string {
	code := s.codes[f.Line()]
	if l, err := openCode(code); err == nil && l.Kind == k {
		return code
	}
	return s.drawn(k, f).Code()
}

// learn takes from a log what is known of the problems that it draws.
func (s *session) learn(log []Form) {
	s.codes, s.deals = map[string]string{}, map[string]string{}
	for _, f := range log {
		if f.Get("do") != "outcome" {
			continue
		}
		if request, ok := f.Lookup("drew"); ok {
			s.codes[request] = f.Get("problem")
		}
		if dealt, ok := f.Lookup("dealt"); ok {
			s.deals[f.Get("set")] = dealt
		}
	}
}

// drawn is a new problem of kind k, drawn and checked under the settings of the
// one it is to be like.
func (s *session) drawn(k *lesson.Kind, f Form) *lesson.Problem {
	l, err := openCode(f.Get("like"))
	if err != nil || l.Kind != k || l.Problem.Settings == lesson.DefaultSettings() {
		return draw.Generate(k, seed(f))
	}
	like := l.Problem.Settings
	plain := like
	plain.Direction = lesson.Reference{} // where the new one has no force of that name
	for _, s := range []lesson.Settings{like, plain} {
		if p, _, err := (draw.Wish{Kind: k, Settings: s}).Generate(seed(f)); err == nil {
			return p
		}
	}
	p := draw.Generate(k, seed(f))
	_ = p.Use(plain) // speaks of no force
	return p
}

// openCode opens the problem of a link. The error is a sentence for whoever
// followed it.
func openCode(code string) (*tutor.Lesson, error) {
	p, err := kinds.All.Decode(code)
	if err != nil {
		return nil, err
	}
	return tutor.Open(p)
}
