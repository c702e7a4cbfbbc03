package tutor

import (
	"math"
	"unicode/utf8"

	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/sketch"
	"closingside/tutor/verdict"
	"closingside/tutor/writing"
)

// Work is what one learner has done on one problem.
type Work struct {
	Lesson   *Lesson
	Settings lesson.Settings
	Past     []Attempt // every readable entry, oldest first

	latest     map[string]int      // quantity → index in Past of its standing entry
	hints      map[string]int      // quantity → levels of hint shown
	shown      bool                // the worked solution was shown
	unread     map[string]Reply    // quantity → its last entry, where that could not be read
	states     map[string]*state   // by quantity, as the work stands
	elsewhere  bool                // judged in the other solution, see inOther
	kept       map[string][]*state // the last of each, whose tables may serve again
	doubleHits []doubleHit         // see doublesNear

	changed []string       // by the latest entry, or by taking it back
	sketch  *sketch.Sketch // see Sketch
}

// Attempt is one entry and what was said of it.
type Attempt struct {
	Reply
	Undone bool
	Reason string // why the learner stands by it though it was refused; "" where not
	Since  string // the quantity whose change gave it another verdict than it had; "" where none did

	seen writing.Habit // what it says of the digits its learner keeps, where it is right
}

// NewWork begins work on a lesson.
func NewWork(l *Lesson, s lesson.Settings) *Work {
	return &Work{unread: map[string]Reply{}, Lesson: l, Settings: s, latest: map[string]int{}, hints: map[string]int{}}
}

// Enter reads, judges and records an entry for the quantity called name. An
// unreadable entry is judged but not recorded. It panics on an unknown name or
// a given: the caller offers only what may be entered.
func (w *Work) Enter(name, text string) Reply {
	q := w.Lesson.Quantity(name)
	if q == nil || q.Given {
		panic("tutor: no quantity to enter called " + name)
	}
	r, switched := w.judgeEither(q, text)
	w.changed = nil
	delete(w.unread, name)
	if r.Verdict == verdict.Unreadable {
		w.unread[name] = r
	}
	if r.Verdict != verdict.Unreadable {
		_, again := w.latest[name]
		a := Attempt{Reply: r}
		if r.Verdict == verdict.Correct {
			a.seen = w.now(q).seen(q, r.Reading)
		}
		w.latest[name] = len(w.Past)
		w.Past = append(w.Past, a)
		w.states = nil
		if again || switched {
			w.changed = w.rejudge(name)
			r.Changed = w.changed
			w.Past[len(w.Past)-1].Changed = r.Changed
		}
	}
	return r
}

// Read is how an entry would be read, without judging it.
func (w *Work) Read(name, text string) (entry.Reading, *entry.Error) {
	q := w.Lesson.Quantity(name)
	r, bad := entry.Read(text, w.scope(q))
	switch {
	case bad != nil:
	case r.Form == entry.Equation && !q.Equation:
		bad = &entry.Error{Col: 1, Len: utf8.RuneCountInString(text), Key: "entry.value-asked"}
	default:
		bad = w.sideless(q, text, r)
	}
	return r, bad
}

// Standing is the latest entry for a quantity, or nil.
func (w *Work) Standing(name string) *Attempt {
	if i, ok := w.latest[name]; ok {
		return &w.Past[i]
	}
	return nil
}

// Unread is the last entry for a quantity where that could not be read, or nil.
func (w *Work) Unread(name string) *Reply {
	if r, ok := w.unread[name]; ok {
		return &r
	}
	return nil
}

// Undo takes back the latest entry that still stands and returns its
// quantity's name, or "" where there is none. The entry before it for the same
// quantity stands again.
func (w *Work) Undo() string {
	for i := len(w.Past) - 1; i >= 0; i-- {
		if w.Past[i].Undone {
			continue
		}
		w.Past[i].Undone = true
		w.states = nil
		name := w.Past[i].Quantity
		delete(w.latest, name)
		for j := i - 1; j >= 0; j-- {
			if !w.Past[j].Undone && w.Past[j].Quantity == name {
				w.latest[name] = j
				break
			}
		}
		w.changed = w.rejudge(name)
		return name
	}
	w.changed = nil
	return ""
}

// Changed lists the quantities whose standing entry the latest entry, or taking
// it back, gave another verdict or another feedback.
func (w *Work) Changed() []string { return w.changed }

// Found tells whether the learner's standing entry for a quantity is right.
func (w *Work) Found(name string) bool {
	a := w.Standing(name)
	return a != nil && a.Verdict == verdict.Correct
}

// Done tells whether every answer is found.
func (w *Work) Done() bool {
	for _, q := range w.Lesson.Quantities {
		if q.Answer && !w.Found(q.Name) {
			return false
		}
	}
	return true
}

// known is the value an entry may use for a name: a given's, or the learner's
// own standing entry's as typed; NaN for anything not found yet.
func (w *Work) known(name string) float64 {
	if q := w.Lesson.Quantity(name); q != nil && q.Given {
		return q.True
	}
	if v, ok := w.typed(name); ok {
		return v
	}
	return math.NaN()
}

// accepted is the value of a given, or of an entry that was found right.
func (w *Work) accepted(name string) float64 {
	if q := w.Lesson.Quantity(name); q.Given || w.Found(name) {
		return w.own(name)
	}
	return math.NaN()
}

// typed is the value of the standing entry for a quantity, as typed. An entry
// in terms of θ has a value once θ is found.
func (w *Work) typed(name string) (float64, bool) {
	a := w.Standing(name)
	if a == nil {
		return 0, false
	}
	if a.Reading.Form != entry.Affine {
		return a.Reading.Value, true
	}
	v, ok := w.typed(a.Reading.In)
	return a.Reading.Const + a.Reading.Coef*v, ok && w.Found(a.Reading.In)
}

// own is the learner's environment: what is typed stands as typed, everything
// else is true.
func (w *Work) own(name string) float64 {
	if v, ok := w.typed(name); ok {
		return v
	}
	return w.Lesson.Truth(name)
}
