package kinds

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// lead is a direction in which a part acts: the heading of the statement, and
// the name of its angle ("" along an axis).
type lead struct {
	heading statics.Heading
	angle   string
	push    bool // it pushes against the heading, as a strut does
}

// holder is a part that holds or loads the particle.
type holder struct {
	n        string // its number: "1"
	item     lesson.Item
	is       string
	f        expr.Node // its force
	leads    []lead    // one; two for a cable round the particle; none while unknown
	size     float64   // its force, once known
	given    bool      // that is stated
	derived  expr.Node // how it follows from what is stated, otherwise
	unknown  bool
	wandered bool // its direction is unknown
	either   bool // a spring that may be stretched or compressed
}

// holder understands one part.
func (s *rest) holder(n string, it lesson.Item) (*holder, error) {
	h := &holder{n: n, item: it, is: it.Field("is").Written, f: expr.S("F" + n)}
	if why := h.contradicts(); why != "" {
		return nil, s.refuse(why, "name", it.Shown())
	}
	for i, key := range []string{"direction", "second"} {
		if h.has(key) {
			l := newLead(it.Field(key).Heading, []string{"theta", "psi"}[i]+n)
			l.push = h.is == "strut" || h.has("compression")
			h.leads = append(h.leads, l)
		}
	}
	if h.is == "weight" {
		down, _ := statics.From(statics.MinusY, 0, statics.CounterClockwise)
		h.leads = []lead{newLead(down, "")}
	}
	s.size(h)
	h.wandered = len(h.leads) == 0
	h.either = h.is == "spring" && h.unknown && !h.wandered && !h.strained()
	return h, nil
}

// contradicts names the refusal of a part that is given what does not go with it;
// "" where all does.
func (h *holder) contradicts() string {
	switch {
	case h.is == "weight" && (h.has("direction") || h.has("second")):
		return "weight-direction"
	case h.wrongSpring():
		return "spring"
	case h.wrongMass():
		return "mass"
	case h.has("mass") && h.item.Field("mass").Unit.Symbol == "lbm":
		return "lbm"
	case h.has("second") && (h.is != "cable" || !h.has("direction")):
		return "second"
	}
	return ""
}

// wrongSpring: a spring of which nothing tells the force, what only a spring
// has on another part, or a spring both stretched and compressed.
func (h *holder) wrongSpring() bool {
	if h.is != "spring" {
		return h.has("stiffness") || h.strained()
	}
	return !h.has("force") && !h.has("stiffness") && !h.strained() || h.has("stretch") && h.has("compression")
}

// wrongMass: a mass, given or to be found, where nothing hangs by gravity, or
// beside what makes it known.
func (h *holder) wrongMass() bool {
	hangs := h.is == "weight" || h.is == "pulley"
	return (h.has("mass") || h.has("find")) && !hangs || h.has("mass") && (h.has("force") || h.has("find"))
}

func (h *holder) has(key string) bool { return h.item.Field(key).Given() }

// strained tells whether a stretch or a compression is given.
func (h *holder) strained() bool { return h.has("stretch") || h.has("compression") }

// newLead names the angle of a heading, unless that lies along an axis.
func newLead(h statics.Heading, angle string) lead {
	if math.Remainder(h.Turn.Degrees(), 90) == 0 {
		angle = ""
	}
	return lead{heading: h, angle: angle}
}

// size finds the force of a part where the statement gives it.
func (s *rest) size(h *holder) {
	m, k, stretch := s.in(h, "mass", s.mass), s.in(h, "stiffness", s.stiffness()), s.in(h, h.strain(), s.length)
	switch {
	case h.has("force"):
		h.size, h.given = s.in(h, "force", s.unit), true
	case h.has("mass"):
		h.size, h.derived = m*s.g/s.coherent(), s.byGravity(expr.S("m"+h.n))
	case h.has("stiffness") && h.strained():
		h.size, h.derived = k*stretch, expr.Mul(expr.S("k"+h.n), expr.S("s"+h.n))
	default:
		h.unknown = true
	}
}

// strain is the field that gives the stretch or the compression of a spring.
func (h *holder) strain() string {
	if h.has("compression") {
		return "compression"
	}
	return "stretch"
}

// in is a field of a part in a unit of the lesson.
func (s *rest) in(h *holder, key string, u statics.Unit) float64 {
	f := h.item.Field(key)
	v, _ := f.Unit.Convert(f.Value, u)
	return v
}

func (s *rest) byGravity(m expr.Node) expr.Node {
	w := expr.Mul(m, expr.S("g"))
	if c := s.coherent(); c != 1 {
		return expr.Div(w, expr.N(c))
	}
	return w
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
func (l lead) along(c coordinate) (expr.Term, bool) {
	h := l.heading
	axis := h.Axis
	upright := axis == statics.PlusY || axis == statics.MinusY
	cosine := upright == (c == alongY) // along the axis the angle is measured from
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
		return expr.Term{Minus: minus != (v < 0)}, v != 0
	}
	if cosine {
		return expr.Term{Minus: minus, Node: expr.Cos(expr.S(l.angle))}, true
	}
	return expr.Term{Minus: minus, Node: expr.Sin(expr.S(l.angle))}, true
}

// wrongSense is the key of what is said of a part that would have to act
// against its sense.
func (h *holder) wrongSense() string {
	switch {
	case h.is == "cable", h.is == "pulley":
		return "slack"
	case h.has("compression"):
		return "compressed-turned"
	}
	return h.is + "-turned"
}

func (h *holder) name() string { return h.item.Field("name").Written }

// shown is its name as it is read.
func (h *holder) shown() string { return h.item.Shown() }

// acts is the force of a part on the particle.
func (h *holder) acts() r2.Vec { return r2.Scale(h.size, h.pullsAt()) }

// pullsAt is what a part does to the particle with a force of 1.
func (h *holder) pullsAt() r2.Vec {
	var v r2.Vec
	for _, l := range h.leads {
		v = r2.Add(v, l.unitVector())
	}
	return v
}

// at is the direction of a part, in degrees from +x.
func (h *holder) at() float64 { return plainDegrees(h.leads[0].heading.Angle()) }

// aimAt gives a part the direction that was found for it, from +x.
func (h *holder) aimAt(dir statics.Angle) {
	at, _ := statics.From(statics.PlusX, dir, statics.CounterClockwise)
	h.leads = []lead{{heading: at, angle: "theta" + h.n}}
}

// turn is the signed turn of a lead from its axis.
func (l lead) turn() statics.Angle {
	if l.heading.Sense == statics.Clockwise {
		return -l.heading.Turn
	}
	return l.heading.Turn
}

// turnOf is the direction in which a force acts, from +x: whole quarter turns in
// degrees, and the angle it is given by.
func (l lead) turnOf() (quarters float64, angle []expr.Term) {
	quarters = math.Round(l.heading.Axis.Angle().Degrees())
	if l.push {
		quarters += 180
	}
	minus := l.heading.Sense == statics.Clockwise
	if l.angle != "" {
		return quarters, []expr.Term{{Minus: minus, Node: expr.S(l.angle)}}
	}
	turn := math.Round(l.heading.Turn.Degrees())
	if minus {
		turn = -turn
	}
	return quarters + turn, nil
}

// direction is the direction in which a force acts, from +x.
func (l lead) direction() expr.Node {
	quarters, angle := l.turnOf()
	if quarters != 0 || len(angle) == 0 {
		angle = append([]expr.Term{{Minus: quarters < 0, Node: expr.Deg(math.Abs(quarters))}}, angle...)
	}
	return expr.Sum(angle)
}

// fromX tells whether the direction is told from +x, counter-clockwise.
func (l lead) fromX() bool {
	return l.heading.Form == statics.FromAxis && l.heading.Axis == statics.PlusX && l.heading.Sense == statics.CounterClockwise
}

// to is the angle between two forces: the difference of their directions, the
// short way round.
func (l lead) to(o lead) expr.Node {
	from, a := l.turnOf()
	to, b := o.turnOf()
	all := append(b, expr.Negated(a)...)
	d := to - from
	for _, t := range all {
		x := (plainDegrees(o.heading.Turn))
		if t.Node == expr.S(l.angle) {
			x = plainDegrees(l.heading.Turn)
		}
		if t.Minus {
			x = -x
		}
		d += x
	}
	whole := to - from - math.Round((d-math.Remainder(d, 360))/360)*360
	if math.Remainder(d, 360) < 0 {
		whole, all = -whole, expr.Negated(all)
	}
	if whole != 0 || len(all) == 0 {
		all = append([]expr.Term{{Minus: whole < 0, Node: expr.Deg(math.Abs(whole))}}, all...)
	}
	return expr.Sum(all)
}

// plainDegrees is an angle in degrees, as short as it was written.
func plainDegrees(a statics.Angle) float64 { return lesson.RoundPlaces(a.Degrees(), 10) }
