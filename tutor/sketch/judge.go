package sketch

import (
	"gonum.org/v1/gonum/spatial/r2"

	"closingside/tutor/figure"
	"closingside/tutor/verdict"
)

// Draw takes a side drawn from one place to another, in the sketch's coordinates.
// Its ends settle at corners within reach.
func (s *Sketch) Draw(from, to r2.Vec) Reply {
	s.keep()
	s.now.side = &figure.Arrow{From: from, To: to, Class: figure.ClassLearner}
	if s.diagonal(from, to) {
		s.closeDiagonal()
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

// closeDiagonal lays the second of two forces at the head of the first and the closing
// side with them.
func (s *Sketch) closeDiagonal() {
	s.now.tails[0], s.now.tails[1] = r2.Vec{}, s.Plan.Forces[0].Vec
	s.now.side.From, s.now.side.To, s.now.side.Class = r2.Vec{}, s.head(1), figure.ClassResultant
}
