package sketch

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/tutor/entry"
	"closingside/tutor/figure"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// Sketch is a learner's sketch: where each arrow lies, the closing side drawn,
// and what was estimated from it. Coordinates are in the unit of the forces, y
// upwards, with the common point at the origin.
type Sketch struct {
	Plan   lesson.SketchPlan
	Aside  bool // skipped, or left behind by calculating
	Passed bool // gone on without an estimate

	lesson *lesson.Lesson
	reader Reader
	room   []r2.Vec // opposite corners of what the sketch may cover
	reach  float64  // how near an end is taken to be at a corner
	now    layout
	past   []layout
	met    []string
}

// Reader is the work that a sketch belongs to, as far as a sketch asks: it reads
// estimates. A sketch on which nothing is estimated needs none.
type Reader interface {
	// ReadEstimate reads a round number for q, as asked first, then from +x; there
	// is none in an entry in terms of an unknown.
	ReadEstimate(q *lesson.Quantity, text string) ([]float64, *entry.Error)
	// Limits are the values between which the sketch shows q to lie, NaN where not
	// known.
	Limits(q *lesson.Quantity) (lo, hi float64)
}

// layout is a state of the sketch.
type layout struct {
	tails []r2.Vec
	side  *figure.Arrow
	said  Reply
	kept  []estimate
	tried []EstimateReply // what was said of the estimates last entered
}

// Reply is what the tutor says of one act on the sketch.
type Reply struct {
	Verdict  verdict.Verdict // Correct, SlipFound or Unexplained; Unreadable where nothing was to be judged
	Slips    []string        // rows of the catalogue
	Feedback string
}

// End is one end of an arrow of the sketch.
type End struct {
	Arrow int  // its number, from 0, in the order of the Plan
	Head  bool // its head; otherwise its tail
}

// Stage is how far a sketch has come.
type Stage uint8

// The stages of a sketch.
const (
	Arranging  Stage = iota // the arrows are not head to tail yet
	Closing                 // head to tail; the closing side is wanted
	Estimating              // closed; estimates are wanted
	Finished                // nothing is left to do
)

// grasp is the reach as a share of the sketch's larger dimension. On a phone
// this is half the breadth of a finger's target, 22 CSS pixels.
const grasp = 0.085

// New begins a sketch on a lesson whose kind has one, every arrow at the common
// point; it panics where the kind has none.
func New(l *lesson.Lesson, r Reader) *Sketch {
	s := &Sketch{Plan: l.Kind.Sketch(l), lesson: l, reader: r}
	var lo, hi r2.Vec
	for _, f := range s.Plan.Forces { // every sum of some of the forces lies between lo and hi
		lo.X, hi.X = lo.X+min(f.Vec.X, 0), hi.X+max(f.Vec.X, 0)
		lo.Y, hi.Y = lo.Y+min(f.Vec.Y, 0), hi.Y+max(f.Vec.Y, 0)
	}
	s.room = []r2.Vec{lo, hi}
	s.reach = grasp * math.Max(hi.X-lo.X, hi.Y-lo.Y)
	s.now.tails = make([]r2.Vec, len(s.Plan.Forces))
	return s
}

// Stage is how far the sketch has come.
func (s *Sketch) Stage() Stage {
	switch {
	case s.now.side != nil && s.now.side.Class == figure.ClassResultant:
		if s.Passed || len(s.now.kept) == len(s.Wanted()) {
			return Finished
		}
		return Estimating
	case s.Order() != nil:
		return Closing
	}
	return Arranging
}

// IsOpen tells whether the sketch is what the learner works on: there is one, it is
// not put aside, and something is left to do.
func (s *Sketch) IsOpen() bool { return s != nil && !s.Aside && s.Stage() < Finished }

// Said is what was said last of the sketch.
func (s *Sketch) Said() Reply { return s.now.said }

// Met lists the ids of the slips named on the sketch, each once, in the order met.
func (s *Sketch) Met() []string { return s.met }

// Laid is every arrow where it lies.
func (s *Sketch) Laid() []figure.Laid {
	all := make([]figure.Laid, len(s.Plan.Forces))
	for i, f := range s.Plan.Forces {
		all[i] = figure.Laid{Force: f, Tail: s.now.tails[i]}
	}
	return all
}

// Scene is the sketch as it stands.
func (s *Sketch) Scene() figure.Scene {
	side := s.now.side
	if side != nil {
		drawn := *side
		side = &drawn
		if side.Class == figure.ClassResultant {
			q := s.lesson.Quantity(s.Plan.Size)
			side.Label, side.Name = figure.Symbol(q.Symbol.Letter, q.Symbol.Sub), q.Name
		}
	}
	return figure.Board(s.Laid(), side, s.room)
}

// at is the place of an arrow's end.
func (s *Sketch) at(e End) r2.Vec {
	p := s.now.tails[e.Arrow]
	if e.Head {
		p = r2.Add(p, s.Plan.Forces[e.Arrow].Vec)
	}
	return p
}

func (s *Sketch) tail(i int) r2.Vec { return s.at(End{i, false}) }
func (s *Sketch) head(i int) r2.Vec { return s.at(End{i, true}) }

// same tells whether two corners are one.
func (s *Sketch) same(p, q r2.Vec) bool {
	return figure.Same(p, q, s.reach/grasp)
}

// name is the symbol of an arrow.
func (s *Sketch) name(i int) string { return s.lesson.SymbolText(s.Plan.Forces[i].Name) }

// keep puts the state before an act away, for Undo.
func (s *Sketch) keep() {
	old := s.now
	old.tails = slices.Clone(old.tails)
	old.kept = slices.Clone(old.kept)
	s.past = append(s.past, old)
}

// say records what is said of an act.
func (s *Sketch) say(v verdict.Verdict, slip, key string, holes ...string) Reply {
	r := Reply{Verdict: v, Feedback: s.lesson.Say("sketch."+key, holes...)}
	if slip != "" {
		r.Slips = []string{slip}
		if !slices.Contains(s.met, slip) {
			s.met = append(s.met, slip)
		}
	}
	s.now.said = r
	return r
}

// CanUndo tells whether there is an act to take back.
func (s *Sketch) CanUndo() bool { return len(s.past) > 0 }

// Reopen takes the sketch up again; where nothing is left to do on it, the
// estimates are asked for anew.
func (s *Sketch) Reopen() {
	s.Aside = false
	if s.Stage() == Finished {
		s.keep()
		s.Passed, s.now.kept, s.now.tried = false, nil, nil
	}
}

// Undo takes the last act on the sketch back; false where there is none.
func (s *Sketch) Undo() bool {
	n := len(s.past)
	if n == 0 {
		return false
	}
	s.now, s.past = s.past[n-1], s.past[:n-1]
	s.Passed = false
	return true
}

// Move shifts an arrow: what is dragged from one place to another. Its ends
// settle at corners within reach.
func (s *Sketch) Move(arrow int, from, to r2.Vec) Reply {
	if arrow < 0 || arrow >= len(s.now.tails) {
		return Reply{Feedback: s.lesson.Say("sketch.hold")}
	}
	s.keep()
	return s.settle(arrow, r2.Add(s.now.tails[arrow], r2.Sub(to, from)), s.reach)
}

// Put lays one end of an arrow at an end of another.
func (s *Sketch) Put(e, at End) Reply {
	if e.Arrow == at.Arrow || !s.has(e) || !s.has(at) {
		return Reply{Feedback: s.lesson.Say("sketch.hold")}
	}
	s.keep()
	tail := s.at(at)
	if e.Head {
		tail = r2.Sub(tail, s.Plan.Forces[e.Arrow].Vec)
	}
	return s.settle(e.Arrow, tail, 1e-9*s.reach/grasp)
}

func (s *Sketch) has(e End) bool { return e.Arrow >= 0 && e.Arrow < len(s.now.tails) }

// ArrowAt is the number of the arrow whose shaft is nearest to a place, within
// reach, or -1.
func (s *Sketch) ArrowAt(p r2.Vec) int {
	best, least := -1, s.reach
	for i, f := range s.Plan.Forces {
		along := r2.Dot(r2.Sub(p, s.tail(i)), f.Vec) / r2.Norm2(f.Vec)
		foot := r2.Add(s.tail(i), r2.Scale(min(max(along, 0), 1), f.Vec))
		if d := r2.Norm(r2.Sub(p, foot)); d <= least {
			best, least = i, d
		}
	}
	return best
}

// Arrow is the number, from 0, of the arrow called name, or -1.
func (s *Sketch) Arrow(name string) int {
	return slices.IndexFunc(s.Plan.Forces, func(f figure.Force) bool { return f.Name == name })
}
