package sketch

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/tutor/figure"
	"closingside/tutor/verdict"
)

// meeting is how an arrow that was moved meets another.
type meeting struct {
	how   joint
	other int
	tail  r2.Vec  // where the moved arrow's tail comes to lie
	off   float64 // how far it had to be shifted
}

// joint is a way for two arrows to meet.
type joint uint8

// The ways for two arrows to meet.
const (
	follows      joint = iota // the moved arrow begins where the other ends
	precedes                  // it ends where the other begins
	headsMeet                 // the heads are together
	tailsMeet                 // the tails are together
	takenAlready              // it follows or precedes an arrow that another does already
)

// meetings lists how arrow i would meet others with its tail near a place,
// best first: what is right before what is not, then the nearest.
func (s *Sketch) meetings(i int, tail r2.Vec, reach float64) []meeting {
	vec := s.Plan.Forces[i].Vec
	var all []meeting
	add := func(how joint, other int, at r2.Vec) {
		if off := r2.Norm(r2.Sub(at, tail)); off <= reach {
			all = append(all, meeting{how, other, at, off})
		}
	}
	for j := range s.Plan.Forces {
		if j == i {
			continue
		}
		after, before := follows, precedes
		for k := range s.Plan.Forces {
			if k != i && k != j && s.same(s.tail(k), s.head(j)) {
				after = takenAlready
			}
			if k != i && k != j && s.same(s.head(k), s.tail(j)) {
				before = takenAlready
			}
		}
		add(after, j, s.head(j))
		add(before, j, r2.Sub(s.tail(j), vec))
		add(headsMeet, j, r2.Sub(s.head(j), vec))
		add(tailsMeet, j, s.tail(j))
	}
	rank := func(m meeting) int { return min(int(m.how)/2, 1) }
	slices.SortStableFunc(all, func(a, b meeting) int {
		return cmp.Or(cmp.Compare(rank(a), rank(b)), cmp.Compare(a.off, b.off))
	})
	return all
}

// settle lays an arrow's tail at a place, or at the corner it comes near, and
// says what has become of the sketch.
func (s *Sketch) settle(i int, tail r2.Vec, reach float64) Reply {
	s.now.side = nil
	all := s.meetings(i, tail, reach)
	if len(all) == 0 {
		s.now.tails[i] = s.inside(i, tail)
		return s.say(verdict.Unexplained, "", "apart", "a", s.name(i))
	}
	m := all[0]
	s.now.tails[i] = m.tail
	s.anchor(i)
	if order := s.Order(); order != nil {
		return s.say(verdict.Correct, "", "chain", "order", s.inOrder(order))
	}
	switch m.how {
	case follows:
		return s.say(verdict.Correct, "", "joined", "a", s.name(m.other), "b", s.name(i))
	case precedes:
		return s.say(verdict.Correct, "", "joined", "a", s.name(i), "b", s.name(m.other))
	case headsMeet:
		return s.say(verdict.SlipFound, "other-diagonal", "heads", "a", s.name(m.other), "b", s.name(i))
	case tailsMeet:
		return s.say(verdict.Unexplained, "", "tails", "a", s.name(m.other), "b", s.name(i))
	}
	return s.say(verdict.Unexplained, "", "fork")
}

func (s *Sketch) inOrder(order []int) string {
	said := s.name(order[0])
	for _, i := range order[1:] {
		said = s.lesson.Say("sketch.then", "a", said, "b", s.name(i))
	}
	return said
}

// inside is the tail of arrow i nearest to a place that leaves the whole arrow
// on the sketch.
func (s *Sketch) inside(i int, tail r2.Vec) r2.Vec {
	vec, lo, hi := s.Plan.Forces[i].Vec, s.room[0], s.room[1]
	clamp := func(v, d, lo, hi float64) float64 {
		return math.Max(lo-min(d, 0), math.Min(v, hi-max(d, 0)))
	}
	return r2.Vec{X: clamp(tail.X, vec.X, lo.X, hi.X), Y: clamp(tail.Y, vec.Y, lo.Y, hi.Y)}
}

// anchor shifts arrow i, and those that follow and precede it, so that the
// first of them begins at the common point.
func (s *Sketch) anchor(i int) {
	mine := map[int]bool{i: true}
	first := i
	for grown := true; grown; {
		grown = false
		for j := range s.Plan.Forces {
			for k := range mine {
				before := s.same(s.head(j), s.tail(k))
				if mine[j] || !before && !s.same(s.tail(j), s.head(k)) {
					continue
				}
				mine[j], grown = true, true
				if before && k == first {
					first = j
				}
				break
			}
		}
	}
	if len(mine) == 1 {
		s.frame()
		return
	}
	by := s.tail(first)
	for j := range mine {
		s.now.tails[j] = r2.Sub(s.now.tails[j], by)
	}
	s.now.tails[first] = r2.Vec{}
}

// frame shifts the whole sketch so that it lies where there is room for it.
func (s *Sketch) frame() {
	lo, hi := s.tail(0), s.tail(0)
	for i := range s.Plan.Forces {
		for _, p := range []r2.Vec{s.tail(i), s.head(i)} {
			lo, hi = r2.Vec{X: min(lo.X, p.X), Y: min(lo.Y, p.Y)}, r2.Vec{X: max(hi.X, p.X), Y: max(hi.Y, p.Y)}
		}
	}
	by := r2.Vec{
		X: max(s.room[0].X-lo.X, 0) + min(s.room[1].X-hi.X, 0),
		Y: max(s.room[0].Y-lo.Y, 0) + min(s.room[1].Y-hi.Y, 0),
	}
	for i := range s.now.tails {
		s.now.tails[i] = r2.Add(s.now.tails[i], by)
	}
}

// Order is the numbers of the arrows in the order in which they lie head to tail,
// or nil where they do not all.
func (s *Sketch) Order() []int {
	n := len(s.Plan.Forces)
	order := make([]int, 0, n)
	used := make([]bool, n)
	var grow func() bool
	grow = func() bool {
		if len(order) == n {
			return true
		}
		for j := range n {
			if used[j] || len(order) > 0 && !s.same(s.tail(j), s.head(order[len(order)-1])) {
				continue
			}
			used[j], order = true, append(order, j)
			if grow() {
				return true
			}
			used[j], order = false, order[:len(order)-1]
		}
		return false
	}
	if grow() {
		return order
	}
	return nil
}

// Draw takes a side drawn from one place to another, in the sketch's coordinates.
// Its ends settle at corners within reach.
func (s *Sketch) Draw(from, to r2.Vec) Reply {
	s.keep()
	s.now.side = &figure.Arrow{From: from, To: to, Class: figure.ClassLearner}
	if s.diagonal(from, to) {
		s.close()
		order := s.Order()
		return s.say(verdict.Correct, "", "diagonal", "a", s.name(order[0]), "b", s.name(order[1]))
	}
	all := s.courses(from, to, s.reach)
	if len(all) == 0 {
		if near := s.courses(from, to, 2*s.reach); len(near) > 0 && near[0].kind == allForward {
			return s.say(verdict.Unexplained, "", "nearly")
		}
		return s.say(verdict.Unexplained, "", "free")
	}
	c := all[0]
	s.now.side.From, s.now.side.To = c.from, c.to
	if c.kind != allForward {
		for _, o := range all[1:] { // a false accusation costs more than silence
			if o.kind != c.kind && o.off < c.off+0.35*s.reach {
				return s.say(verdict.Unexplained, "", "unclear")
			}
		}
	}
	return s.judge(c)
}

// Close draws the side from one arrow's end to another's.
func (s *Sketch) Close(from, to End) Reply {
	if !s.has(from) || !s.has(to) {
		return Reply{Feedback: s.lesson.Say("sketch.free")}
	}
	s.keep()
	p, q := s.at(from), s.at(to)
	s.now.side = &figure.Arrow{From: p, To: q, Class: figure.ClassLearner}
	if s.same(p, q) {
		s.now.side = nil
		return s.say(verdict.Unexplained, "", "free")
	}
	return s.judge(s.between(p, q))
}

// judge says what a course is.
func (s *Sketch) judge(c course) Reply {
	switch c.kind {
	case allForward:
		s.now.side.Class = figure.ClassResultant
		return s.say(verdict.Correct, "", "closed")
	case allBackward:
		return s.say(verdict.SlipFound, "resultant-reversed", "reversed")
	case mixed:
		return s.say(verdict.SlipFound, "other-diagonal", s.mixedKey(c))
	case partial:
		missing := s.name(c.missing[0])
		for _, i := range c.missing[1:] {
			missing += ", " + s.name(i)
		}
		return s.say(verdict.Unexplained, "", "leaves-out", "missing", missing)
	}
	return s.say(verdict.Unexplained, "", "free")
}

// mixedKey is the question about a side that goes along some arrows and
// against others: of two arrows, the ends that were joined are named.
func (s *Sketch) mixedKey(c course) string {
	if len(s.Plan.Forces) != 2 {
		return "other"
	}
	if s.same(c.from, s.head(0)) || s.same(c.from, s.head(1)) {
		return "other.tails"
	}
	return "other.heads"
}

// diagonal tells whether a side from one place to another is the diagonal of
// the parallelogram on two forces that lie tail to tail, which is right too.
func (s *Sketch) diagonal(from, to r2.Vec) bool {
	if len(s.Plan.Forces) != 2 || !s.same(s.tail(0), s.tail(1)) || len(s.courses(from, to, s.reach)) > 0 {
		return false
	}
	sum := r2.Add(s.Plan.Forces[0].Vec, s.Plan.Forces[1].Vec)
	far := r2.Add(s.tail(0), sum)
	return r2.Norm(r2.Sub(from, s.tail(0))) <= s.reach && r2.Norm(r2.Sub(to, far)) <= s.reach
}

// close lays the second of two forces at the head of the first and the closing
// side with them.
func (s *Sketch) close() {
	s.now.tails[0], s.now.tails[1] = r2.Vec{}, s.Plan.Forces[0].Vec
	s.now.side.From, s.now.side.To, s.now.side.Class = r2.Vec{}, s.head(1), figure.ClassResultant
}
