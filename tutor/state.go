package tutor

import (
	"math"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
	"closingside/tutor/writing"
)

// state is the work as it stands, by quantity: what hypotheses start from. It
// serves one goroutine.
type state struct {
	w        *Work
	own      []float64 // what is typed as typed, everything else true
	truth    []float64
	sound    []float64     // what is typed rightly as typed, everything else true
	standing set           // quantities with an entry
	wrong    set           // those whose entry is not right
	order    []stood       // of what may be carried
	leaning  writing.Habit // of the learner, by the right entries
	direct   [][]outcome
	tables   []*table
	rounding *table         // early rounding, of the quantity the state is for
	carries  map[int]*table // carried, by quantity
	nowhere  *table         // empty

	tape    expr.Tape
	scratch []float64
	blur    *blurring // see blurringFrom
}

// now is the state of the work for judging an entry for q. Entries that rest
// on q itself count as not made: q can't follow from them.
func (w *Work) now(q *lesson.Quantity) *state {
	if s := w.states[q.Name]; s != nil {
		return s
	}
	n, truth := len(w.Lesson.Quantities), w.Lesson.truths()
	s := &state{w: w, own: slices.Clone(truth), truth: truth, sound: slices.Clone(truth), direct: make([][]outcome, n), tables: make([]*table, n), scratch: make([]float64, n)}
	for i := range w.Lesson.Quantities {
		o := &w.Lesson.Quantities[i]
		v, ok := w.typed(o.Name)
		if !ok || o == q || math.IsNaN(v) || !w.Found(o.Name) && w.root(o.Name) == q.Name {
			continue
		}
		s.own[i], s.standing = v, s.standing.with(i)
		if !w.Found(o.Name) {
			s.wrong = s.wrong.with(i)
			continue
		}
		s.sound[i] = v
	}
	s.order = w.order(q)
	if w.states == nil {
		w.states = map[string]*state{}
	}
	if w.kept == nil {
		w.kept = map[string][]*state{}
	}
	s = w.keep(q.Name, s)
	s.leaning = w.leaning()
	w.states[q.Name] = s
	return s
}

// keptStates is how many states of the work are kept for a quantity: as it is,
// and as it was when an entry before was judged anew.
const keptStates = 2

// keep is the state for the quantity called name that was kept before and is
// the same, or s, which is kept from now on.
func (w *Work) keep(name string, s *state) *state {
	before := w.kept[name]
	if i := slices.IndexFunc(before, s.same); i >= 0 {
		s = before[i]
		before = slices.Delete(before, i, i+1)
	}
	w.kept[name] = slices.Insert(before, 0, s)[:min(keptStates, len(before)+1)]
	return s
}

// stood is a wrong entry or an equation, and the entry on which it rests.
type stood struct {
	name, root string
	half       float64 // how finely it was written
	at         int     // when an equation was made; a value tells itself apart
}

// order is what may be carried to q depends on beside the values entered: which
// of the wrong ones was made first, and the equations.
func (w *Work) order(q *lesson.Quantity) []stood {
	var all []stood
	for i := range w.Lesson.Quantities {
		o := &w.Lesson.Quantities[i]
		if at, ok := w.latest[o.Name]; ok && o != q && (o.Equation || !w.Found(o.Name)) {
			half := 0.0
			if halves := w.Past[at].Reading.Halves; len(halves) > 0 {
				half = halves[0]
			}
			all = append(all, stood{o.Name, w.root(o.Name), half, at})
		}
	}
	slices.SortFunc(all, func(a, b stood) int { return a.at - b.at })
	for i := range all {
		if !w.Lesson.Quantity(all[i].name).Equation {
			all[i].at = 0
		}
	}
	return all
}

// root is the first wrong entry that the entry for a quantity rests on: its
// own name unless it was carried from another that is still wrong.
func (w *Work) root(name string) string {
	if a := w.Standing(name); a != nil && a.Verdict == verdict.Carried && w.Standing(a.From) != nil && !w.Found(a.From) {
		return a.From
	}
	return name
}

// same tells whether t says of the work what s does, so that its tables serve
// on.
func (s *state) same(t *state) bool {
	return s.w.Lesson == t.w.Lesson && s.w.Settings == t.w.Settings && s.standing == t.standing && s.wrong == t.wrong &&
		slices.Equal(s.own, t.own) && slices.Equal(s.order, t.order)
}

// blankKey tells works apart on which nothing is entered.
type blankKey struct {
	quantity string
	settings lesson.Settings
}

// blank is the state of a work on which nothing is entered yet. Its tables are
// built once for a lesson and serve every learner; done gives them free.
func (l *Lesson) blank(q *lesson.Quantity, settings lesson.Settings) (s *state, done func()) {
	prep, key := l.ready(), blankKey{q.Name, settings}
	prep.blankMu.Lock()
	s = prep.blanks[key]
	if s == nil {
		s = NewWork(l, settings).now(q)
		if prep.blanks == nil {
			prep.blanks = map[blankKey]*state{}
		}
		prep.blanks[key] = s
	}
	return s, prep.blankMu.Unlock
}

// fresh is a copy of the state's own values, valid until the next call.
func (s *state) fresh() []float64 {
	copy(s.scratch, s.own)
	return s.scratch
}

// values are those that o is worked from as the work stands.
func (s *state) values(o *outcome) []float64 {
	switch o.basis {
	case ofEntries:
		return s.own
	case ofTruth:
		return s.truth
	case ofAccepted:
		return s.sound
	}
	return o.start
}
