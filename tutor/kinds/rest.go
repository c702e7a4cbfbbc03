package kinds

import (
	"errors"
	"math"
	"strconv"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// rest is a particle at rest: what a statement of this kind comes to.
type rest struct {
	problem *lesson.Problem
	unit    statics.Unit // of force
	mass    statics.Unit
	length  statics.Unit
	gravity statics.Unit
	g       float64
	parts   []*holder
	open    []*holder // those of which the force or the direction is unknown
	aimed   *holder   // of a known force and an unknown direction; nil where there is none
	sought  solution
	two     bool      // there are two solutions
	x, y    expr.Node // the sums, nil where nothing acts along the axis
	lesson  *lesson.Lesson
}

// solution says which of two solutions is sought, where a statement allows two.
type solution uint8

// The solutions; the main one is the only one where there are no two.
const (
	mainSolution solution = iota
	otherSolution
)

// restOf understands a statement and finds the solution that is sought.
func restOf(p *lesson.Problem, sought solution) (*rest, error) {
	s := &rest{problem: p, lesson: &lesson.Lesson{}, sought: sought}
	s.units()
	for i, it := range p.Group("parts") {
		h, err := s.holder(strconv.Itoa(i+1), it)
		if err != nil {
			return nil, err
		}
		s.parts = append(s.parts, h)
		if h.unknown || h.wandered {
			s.open = append(s.open, h)
		}
	}
	if err := s.solve(); err != nil {
		return nil, err
	}
	if s.tells(r2.Vec{X: 1}) {
		s.x = s.sum(alongX)
	}
	if s.tells(r2.Vec{Y: 1}) {
		s.y = s.sum(alongY)
	}
	s.lesson.Unit = s.unit
	return s, nil
}

// partsOf is a lesson's statement understood.
func partsOf(l *lesson.Lesson) *rest {
	s, err := restOf(l.Problem, mainSolution)
	if err == nil && s.two && math.Abs(math.Remainder(s.aimed.at()-l.Truth("theta"+s.aimed.n), 360)) > 1e-6 {
		s, err = restOf(l.Problem, otherSolution)
	}
	if err != nil {
		panic("kinds: " + err.Error()) // the lesson was built from it
	}
	return s
}

// refuse is a reason why a problem of this kind can't be worked.
func (s *rest) refuse(key string, holes ...string) error {
	return errors.New(text.Say(s.problem.Kind.Name+".refuse."+key, holes...))
}

// sum is the sum of the forces along x or y; nil where nothing acts that way.
func (s *rest) sum(c coordinate) expr.Node { return s.sumWith(c, nil) }

// sumWith is that sum with what is put for a part's share of a unit force in place
// of the true one.
func (s *rest) sumWith(c coordinate, put map[*holder]expr.Term) expr.Node {
	var all []expr.Term
	for _, h := range s.parts {
		if h.wandered {
			all = append(all, expr.Term{Node: expr.S("F" + h.n + c.String())})
			continue
		}
		if t, ok := put[h]; ok {
			all = append(all, expr.Term{Node: h.f}.Times(t))
			continue
		}
		for _, l := range h.leads {
			if t, ok := l.along(c); ok {
				all = append(all, expr.Term{Node: h.f}.Times(t))
			}
		}
	}
	return expr.Sum(all)
}

// tells whether the sum along an axis has an unknown in it: that of one cable
// to both sides at one angle has none.
func (s *rest) tells(axis r2.Vec) bool {
	for _, h := range s.open {
		v := h.pullsAt()
		if h.wandered || math.Abs(r2.Dot(v, axis)) > 1e-9 {
			return true
		}
	}
	return false
}
