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

// lead is a direction in which a part acts: the heading of the statement, and
// the name of its angle ("" along an axis).
type lead struct {
	heading statics.Heading
	angle   string
	push    bool
}

// holder is a part that holds or loads the particle.
type holder struct {
	n        string // its number: "1"
	item     Item
	is       string
	f        expr.Node // its force
	leads    []lead    // one; two for a cable round the particle; none while unknown
	size     float64   // its force, once known
	given    bool      // that is stated
	derived  expr.Node // how it follows from what is stated, otherwise
	unknown  bool
	wandered bool // its direction is unknown
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
	return errors.New(text.Say("particle-equilibrium.refuse."+key, pairs...))
}

// holder understands one part.
func (s *rest) holder(n string, it Item) (*holder, error) {
	h := &holder{n: n, item: it, is: it.Field("is").Written, f: expr.S("F" + n)}
	name := it.Field("name").Written
	has := func(key string) bool { return it.Field(key).Given() }
	switch {
	case h.is == "weight" && (has("direction") || has("second")):
		return nil, s.refuse("weight-direction", "name", name)
	case h.is == "spring" && !has("force") && !has("stiffness") && !has("stretch"), h.is != "spring" && (has("stiffness") || has("stretch")):
		return nil, s.refuse("spring", "name", name)
	case has("mass") && h.is != "weight" && h.is != "pulley", has("mass") && has("force"), has("find") && (has("mass") || h.is != "weight" && h.is != "pulley"):
		return nil, s.refuse("mass", "name", name)
	case has("mass") && it.Field("mass").Unit.Symbol == "lbm":
		return nil, s.refuse("lbm", "name", name)
	case has("second") && (h.is != "cable" || !has("direction")):
		return nil, s.refuse("second", "name", name)
	}
	for i, key := range []string{"direction", "second"} {
		if has(key) {
			h.leads = append(h.leads, newLead(it.Field(key).Heading, []string{"theta", "psi"}[i]+n, h.is == "strut"))
		}
	}
	if h.is == "weight" {
		down, _ := statics.From(statics.MinusY, 0, statics.CounterClockwise)
		h.leads = []lead{newLead(down, "", false)}
	}
	s.size(h)
	h.wandered = len(h.leads) == 0
	if h.wandered && !h.unknown {
		return nil, s.refuse("direction", "name", name)
	}
	return h, nil
}

// newLead names the angle of a heading, unless that lies along an axis.
func newLead(h statics.Heading, angle string, push bool) lead {
	if math.Remainder(h.Turn.Degrees(), 90) == 0 {
		angle = ""
	}
	return lead{h, angle, push}
}

// size finds the force of a part where the statement gives it.
func (s *rest) size(h *holder) {
	m, k, stretch := s.in(h, "mass", s.mass), s.in(h, "stiffness", s.stiffness()), s.in(h, "stretch", s.length)
	switch f := h.item.Field("force"); {
	case f.Given():
		h.size, h.given = s.in(h, "force", s.unit), true
	case h.item.Field("mass").Given():
		h.size, h.derived = m*s.g/s.coherent(), s.byGravity(expr.S("m"+h.n))
	case h.item.Field("stiffness").Given() && h.item.Field("stretch").Given():
		h.size, h.derived = k*stretch, expr.Mul(expr.S("k"+h.n), expr.S("s"+h.n))
	default:
		h.unknown = true
	}
}

// in is a field of a part in a unit of the lesson.
func (s *rest) in(h *holder, key string, u statics.Unit) float64 {
	f := h.item.Field(key)
	v, _ := f.Unit.Convert(f.Value, u)
	return v
}

// coherent is how many units of mass times acceleration make the unit of force.
func (s *rest) coherent() float64 {
	return math.Round(s.unit.Factor/(s.mass.Factor*s.gravity.Factor)*1e6) / 1e6
}

func (s *rest) byGravity(m expr.Node) expr.Node {
	w := expr.Mul(m, expr.S("g"))
	if c := s.coherent(); c != 1 {
		return expr.Div(w, expr.N(c))
	}
	return w
}

// stiffness is the lesson's unit of stiffness.
func (s *rest) stiffness() statics.Unit {
	return statics.Unit{Symbol: s.unit.Symbol + "/" + s.length.Symbol, Dim: statics.DimStiffness, Factor: s.unit.Factor / s.length.Factor}
}

// unitVector is the direction in which a part acts on the particle.
func (l lead) unitVector() r2.Vec {
	v := statics.Polar(1, l.heading.Angle())
	if l.push {
		v = r2.Scale(-1, v)
	}
	return v
}

// along is the part of a unit force along x or y, as a signed term; false where
// it is zero.
func (l lead) along(y bool) (signed, bool) {
	h := l.heading
	axis := h.Axis
	cosine := (axis == statics.PlusY || axis == statics.MinusY) == y // along the axis the angle is measured from
	if !cosine {
		axis = (axis + 1) & 3
		if h.Sense == statics.Clockwise {
			axis = (axis + 2) & 3
		}
	}
	minus := (axis == statics.MinusX || axis == statics.MinusY) != l.push
	if l.angle == "" {
		sin, cos := h.Turn.Sincos()
		v := sin
		if cosine {
			v = cos
		}
		return signed{minus: minus != (v < 0)}, v != 0
	}
	if cosine {
		return signed{minus, expr.Cos(expr.S(l.angle))}, true
	}
	return signed{minus, expr.Sin(expr.S(l.angle))}, true
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

// wrongSense is the key of what is said of a part that would have to act
// against its sense.
func (h *holder) wrongSense() string {
	switch h.is {
	case "cable", "pulley":
		return "slack"
	}
	return h.is + "-turned"
}

func (h *holder) name() string { return h.item.Field("name").Written }

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

// acts is the force of a part on the particle.
func (h *holder) acts() r2.Vec {
	var v r2.Vec
	for _, l := range h.leads {
		v = r2.Add(v, r2.Scale(h.size, l.unitVector()))
	}
	return v
}

// plainDegrees is an angle in degrees, as short as it was written.
func plainDegrees(a statics.Angle) float64 { return roundPlaces(a.Degrees(), 10) }

// lengthOf is the unit of length in a unit of length or of stiffness.
func lengthOf(u statics.Unit) statics.Unit {
	_, below, ok := strings.Cut(u.Symbol, "/")
	if !ok {
		below = u.Symbol
	}
	length, _ := statics.UnitBySymbol(below)
	return length
}
