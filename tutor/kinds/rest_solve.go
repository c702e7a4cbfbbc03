package kinds

import (
	"math"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
)

// solve finds the unknowns by package statics, and refuses what has none.
func (s *rest) solve() error {
	var p statics.Particle
	for _, h := range s.parts {
		v := h.pullsAt()
		switch {
		case h.wandered && !h.unknown:
			if s.aimed != nil {
				return s.refuse("directions", "name", s.aimed.shown(), "other", h.shown())
			}
			s.aimed = h
		case h.wandered:
			p.Unknown = append(p.Unknown, r2.Vec{X: 1}, r2.Vec{Y: 1})
		case h.unknown:
			p.Unknown = append(p.Unknown, v)
		default:
			p.Known = append(p.Known, r2.Scale(h.size, v))
		}
	}
	if s.aimed != nil {
		return s.aim(p)
	}
	result, warning := p.Solve()
	if err := s.judge(p, result, warning); err != nil {
		return err
	}
	i := 0
	for _, h := range s.open {
		if h.wandered {
			v := r2.Vec{X: result.Values[i], Y: result.Values[i+1]}
			h.size, i = r2.Norm(v), i+2
			dir, ok := statics.Direction(v)
			if !ok {
				return s.refuse("balanced", "name", h.shown())
			}
			h.aimAt(dir)
			continue
		}
		h.size, i = result.Values[i], i+1
		if err := s.sensed(h); err != nil {
			return err
		}
	}
	return nil
}

// sensed turns a spring round that has to push, and refuses any other part that
// would have to act against its sense.
func (s *rest) sensed(h *holder) error {
	if h.size < -1e-9*s.load() && h.either {
		h.size, h.leads[0].push = -h.size, true
	}
	switch least := 1e-9 * s.load(); {
	case math.Abs(h.size) <= least:
		return s.refuse("idle", "name", h.shown())
	case h.size < 0:
		return s.refuse(h.wrongSense(), "name", h.shown())
	}
	return nil
}

// aim finds the direction of a force of known size beside one unknown force T
// along u: across u it has to balance what the known forces K have there,
//
//	F⊥ = −K⊥, F∥ = ±√(F² − K⊥²), T = −K∥ − F∥
func (s *rest) aim(p statics.Particle) error {
	h := s.aimed
	t := s.besideIt()
	switch {
	case len(s.open) == 1:
		return s.refuse("only-direction", "name", h.shown())
	case len(p.Unknown) != 1:
		return s.refuse("many", "names", s.names())
	case len(t.leads) != 1:
		return s.refuse("round-direction", "name", h.shown(), "other", t.shown())
	}
	u := p.Unknown[0]
	var k r2.Vec
	for _, f := range p.Known {
		k = r2.Add(k, f)
	}
	if r2.Norm(k) <= 1e-9*s.load() {
		return s.refuse("two-forces", "name", h.shown(), "other", t.shown())
	}
	if math.Abs(r2.Cross(u, k)) < leastSine*r2.Norm(k) {
		return s.refuse("one-line", "name", h.shown(), "other", t.shown())
	}
	reach, ok := leg(h.size, r2.Cross(u, k))
	if !ok {
		return s.refuse("short", "name", h.shown(), "other", t.shown())
	}
	sizes := []float64{reach - r2.Dot(k, u), -reach - r2.Dot(k, u)}
	least := 1e-3 * s.load()
	fits := slices.DeleteFunc(slices.Clone(sizes), func(v float64) bool { return v < least && !(t.either && v < -least) })
	if len(fits) == 0 {
		return s.refuse(t.wrongSense(), "name", t.shown())
	}
	s.two = len(fits) == 2
	t.size = fits[0]
	if s.sought == otherSolution {
		t.size = fits[len(fits)-1]
	}
	v := r2.Scale(-1, r2.Add(k, r2.Scale(t.size, u)))
	dir, _ := statics.Direction(v)
	h.aimAt(dir)
	return s.sensed(t)
}

// besideIt is the part of unknown force beside the one of unknown direction;
// nil where there is none.
func (s *rest) besideIt() *holder {
	for _, h := range s.open {
		if h.unknown {
			return h
		}
	}
	return nil
}

// caseBeside tells a solution from the other one, by the unknown force in it.
func (s *rest) caseBeside(o *rest) string {
	a, b := s.besideIt(), o.besideIt()
	switch push := a.leads[0].push; {
	case push && !b.leads[0].push:
		return "pushes.F" + a.n
	case !push && b.leads[0].push:
		return "pulls.F" + a.n
	case a.size > b.size:
		return "larger.F" + a.n
	}
	return "smaller.F" + a.n
}

// judge refuses what equilibrium does not settle.
func (s *rest) judge(p statics.Particle, result statics.Equilibrium, warning error) error {
	list := s.names()
	switch n := len(p.Unknown); {
	case n == 0:
		return s.refuse("nothing")
	case n > 2:
		return s.refuse("many", "names", list)
	case result.Outcome == statics.Indeterminate:
		return s.refuse("line", "names", list)
	case result.Outcome == statics.Mechanism, result.Outcome == statics.Inconsistent && n == 1:
		return s.refuse("mechanism", "names", list)
	case result.Outcome == statics.Inconsistent:
		return s.refuse("inconsistent")
	case warning != nil, n == 2 && math.Abs(r2.Cross(p.Unknown[0], p.Unknown[1])) < leastSine*r2.Norm(p.Unknown[0])*r2.Norm(p.Unknown[1]):
		return s.refuse("flat", "names", list)
	}
	return nil
}

// leastSine is the sine of the least angle between two unknowns' lines: below
// about a third of a degree, the answer drowns in rounding.
const leastSine = 0.006

// load is the sum of the known forces.
func (s *rest) load() float64 {
	v := 0.0
	for _, h := range s.parts {
		if !h.unknown {
			v += h.size
		}
	}
	return v
}

// names lists the parts of which something is unknown.
func (s *rest) names() string {
	names := make([]string, len(s.open))
	for i, h := range s.open {
		names[i] = h.shown()
	}
	return strings.Join(names, ", ")
}

// other is the second unknown force, or nil.
func (s *rest) other(h *holder) *holder {
	for _, o := range s.open {
		if o != h && !o.wandered {
			return o
		}
	}
	return nil
}
