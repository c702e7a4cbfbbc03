package tutor

import (
	"errors"
	"math"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/text"
)

// rest is a particle at rest: what a statement of this kind comes to.
type rest struct {
	problem *Problem
	unit    statics.Unit // of force
	mass    statics.Unit
	length  statics.Unit
	gravity statics.Unit
	g       float64
	parts   []*holder
	open    []*holder // the unknown ones
	x, y    expr.Node // the sums, nil where nothing acts along the axis
	lesson  *Lesson
}

// restOf understands a statement and solves it.
func restOf(p *Problem) (*rest, error) {
	s := &rest{problem: p, lesson: &Lesson{}}
	s.units()
	for i, it := range p.Group("parts") {
		h, err := s.holder(itoa(i+1), it)
		if err != nil {
			return nil, err
		}
		s.parts = append(s.parts, h)
		if h.unknown {
			s.open = append(s.open, h)
		}
	}
	if err := s.solve(); err != nil {
		return nil, err
	}
	if s.tells(r2.Vec{X: 1}) {
		s.x = s.sum(false)
	}
	if s.tells(r2.Vec{Y: 1}) {
		s.y = s.sum(true)
	}
	s.lesson.Unit = s.unit
	return s, nil
}

// partsOf is a lesson's statement understood.
func partsOf(l *Lesson) *rest {
	s, err := restOf(l.Problem)
	if err != nil {
		panic("tutor: " + err.Error()) // the lesson was built from it
	}
	return s
}

// units chooses the units of the lesson: forces in the first one written,
// otherwise newtons, or pounds where masses are in slugs or lengths in feet.
func (s *rest) units() {
	var first, other statics.Unit
	for _, it := range s.problem.Group("parts") {
		if u := it.Field("force").Unit; first.Factor == 0 {
			first = u
		}
		for _, key := range []string{"mass", "stiffness"} {
			if u := it.Field(key).Unit; other.Factor == 0 {
				other = u
			}
		}
		for _, key := range []string{"stretch", "stiffness"} {
			if u := it.Field(key).Unit; s.length.Factor == 0 && u.Factor != 0 {
				s.length = lengthOf(u)
			}
		}
	}
	system := "N kg m/s² m"
	if us := statics.USCustomary; first.System() == us || first.Factor == 0 && other.System() == us {
		system = "lb slug ft/s² ft"
	}
	named := unitsNamed(system)
	s.unit, s.mass, s.gravity = named[0], named[1], named[2]
	if first.Factor != 0 {
		s.unit = first
	}
	if s.length.Factor == 0 || s.length.System() != s.unit.System() {
		s.length = named[3]
	}
	s.g = map[string]float64{"m/s²": 9.81, "ft/s²": 32.2}[s.gravity.Symbol]
	if stated := s.problem.Group("gravity"); len(stated) > 0 {
		f := stated[0].Field("g")
		s.g, _ = f.Unit.Convert(f.Value, s.gravity)
	}
}

func unitsNamed(symbols string) []statics.Unit {
	var all []statics.Unit
	for _, symbol := range strings.Fields(symbols) {
		u, _ := statics.UnitBySymbol(symbol)
		all = append(all, u)
	}
	return all
}

// refuse is a reason why a problem of this kind can't be worked.
func (s *rest) refuse(key string, pairs ...string) error {
	return errors.New(text.Say(s.problem.Kind.Name+".refuse."+key, pairs...))
}

// coherent is how many units of mass times acceleration make the unit of force.
func (s *rest) coherent() float64 {
	return math.Round(s.unit.Factor/(s.mass.Factor*s.gravity.Factor)*1e6) / 1e6
}

// stiffness is the lesson's unit of stiffness.
func (s *rest) stiffness() statics.Unit {
	return statics.Unit{Symbol: s.unit.Symbol + "/" + s.length.Symbol, Dim: statics.DimStiffness, Factor: s.unit.Factor / s.length.Factor}
}

// sum is the sum of the forces along x or y; nil where nothing acts that way.
func (s *rest) sum(y bool) expr.Node {
	var all []signed
	for _, h := range s.parts {
		if h.wandered {
			all = append(all, signed{node: expr.S("F" + h.n + axisName(y))})
			continue
		}
		for _, l := range h.leads {
			if t, ok := l.along(y); ok {
				all = append(all, signed{node: h.f}.times(t))
			}
		}
	}
	return sum(all)
}

// tells whether the sum along an axis has an unknown in it: that of one cable
// to both sides at one angle has none.
func (s *rest) tells(axis r2.Vec) bool {
	for _, h := range s.open {
		var v r2.Vec
		for _, l := range h.leads {
			v = r2.Add(v, l.unitVector())
		}
		if h.wandered || math.Abs(r2.Dot(v, axis)) > 1e-9 {
			return true
		}
	}
	return false
}

func axisName(y bool) string {
	if y {
		return "y"
	}
	return "x"
}

// solve finds the unknowns by package statics, and refuses what has none.
func (s *rest) solve() error {
	var p statics.Particle
	for _, h := range s.parts {
		var v r2.Vec
		for _, l := range h.leads {
			v = r2.Add(v, l.unitVector())
		}
		switch {
		case h.wandered:
			p.Unknown = append(p.Unknown, r2.Vec{X: 1}, r2.Vec{Y: 1})
		case h.unknown:
			p.Unknown = append(p.Unknown, v)
		default:
			p.Known = append(p.Known, r2.Scale(h.size, v))
		}
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
				return s.refuse("balanced", "name", h.name())
			}
			at, _ := statics.From(statics.PlusX, dir, statics.CounterClockwise)
			h.leads = []lead{{at, "theta" + h.n, false}}
			continue
		}
		h.size, i = result.Values[i], i+1
		if h.size <= 1e-9*s.load() {
			return s.refuse(h.wrongSense(), "name", h.name(), "force", s.show(-h.size))
		}
	}
	return nil
}

// judge refuses what equilibrium does not settle.
func (s *rest) judge(p statics.Particle, result statics.Equilibrium, warning error) error {
	names := make([]string, len(s.open))
	for i, h := range s.open {
		names[i] = h.name()
	}
	list := strings.Join(names, ", ")
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

func (s *rest) show(v float64) string {
	return s.unit.After(Digits{Magnitude: 3}.written(statics.DimForce, v))
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

// lengthOf is the unit of length in a unit of length or of stiffness.
func lengthOf(u statics.Unit) statics.Unit {
	_, below, ok := strings.Cut(u.Symbol, "/")
	if !ok {
		below = u.Symbol
	}
	length, _ := statics.UnitBySymbol(below)
	return length
}
