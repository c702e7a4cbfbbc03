package kinds

import (
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// symbol of a thing of a part: with the part's name as its index where several
// parts have such a thing.
func (s *rest) symbol(h *holder, letter, key string) expr.Symbol {
	n := 0
	for _, o := range s.parts {
		if o.has(key) || o.is == "spring" && key != "mass" || o.has("find") && key == "mass" {
			n++
		}
	}
	if n < 2 && (letter != "m" || s.length.Symbol == "" || !s.springs()) { // m beside lengths could be metres
		return expr.Symbol{Letter: letter, Spoken: letter}
	}
	return expr.Symbol{Letter: letter, Sub: h.name(), Spoken: letter + " " + h.name()}
}

func (s *rest) springs() bool {
	for _, h := range s.parts {
		if h.is == "spring" {
			return true
		}
	}
	return false
}

// stated lists what the statement gives of a part.
func (s *rest) stated(h *holder) []lesson.Quantity {
	var qs []lesson.Quantity
	add := func(key, letter string, u statics.Unit) {
		if h.item.Field(key).Given() {
			qs = append(qs, lesson.Quantity{Name: letter + h.n, Symbol: s.symbol(h, letter, key), Dim: u.Dim, Unit: u, Given: true, True: s.in(h, key, u)})
		}
	}
	add("mass", "m", s.mass)
	add("stiffness", "k", s.stiffness())
	add(h.strain(), "s", s.length)
	if h.given {
		q := s.force(h)
		q.Given, q.Routes = true, nil
		qs = append(qs, q)
	}
	return append(qs, s.angles(h)...)
}

// angleSymbol is θ with the index of the part's name, or the name where another
// part has that index.
func (s *rest) angleSymbol(h *holder) expr.Symbol {
	sub := h.item.Symbol().Sub
	for _, o := range s.parts {
		if o != h && o.item.Symbol().Sub == sub {
			sub = ""
		}
	}
	if sub == "" {
		sub = h.name()
	}
	return expr.Symbol{Letter: "θ", Sub: sub, Spoken: "theta " + sub}
}

// angles are those a part's directions are given by. The angle of a slope is
// for the learner to find.
func (s *rest) angles(h *holder) []lesson.Quantity {
	var qs []lesson.Quantity
	for i, l := range h.leads {
		if l.angle == "" || h.wandered {
			continue
		}
		sym := s.angleSymbol(h)
		if i == 1 {
			sym.Letter, sym.Spoken = "ψ", "psi "+sym.Sub
		}
		q := lesson.Quantity{Name: l.angle, Symbol: sym, Dim: statics.DimAngle, Given: true, True: plainDegrees(l.heading.Turn), Twin: s.nextAngle(l.angle)}
		if h := l.heading; h.Form == statics.Slope {
			q.Given = false
			q.Routes = []lesson.Route{route("slope", "slope-angle", lesson.AnyMethod, expr.Atan(expr.Div(expr.N(h.Rise), expr.N(h.Run))))}
			if h.Rise != h.Run {
				q.Mistakes = []lesson.Mistake{mistake("slope-inverted", expr.Atan(expr.Div(expr.N(h.Run), expr.N(h.Rise))))}
			}
		}
		qs = append(qs, q)
	}
	return qs
}

// nextAngle names the angle of another part that is taken for one by mistake: the
// next one's, the first one's for the last; "" where there is no other.
func (s *rest) nextAngle(name string) string {
	var all []string
	for _, h := range s.parts {
		for _, l := range h.leads {
			if l.angle != "" && !h.wandered {
				all = append(all, l.angle)
			}
		}
	}
	next := all[(slices.Index(all, name)+1)%len(all)]
	if next == name {
		return ""
	}
	return next
}

func (s *rest) gravityGiven() (lesson.Quantity, bool) {
	used := false
	for _, h := range s.parts {
		used = used || h.has("mass") || h.has("find")
	}
	g := statics.Unit.After(s.gravity, expr.FormatNumber(s.g, 6))
	if used {
		s.lesson.Assumed = append(s.lesson.Assumed, text.Say(s.problem.Kind.Name+".gravity", "g", g))
	}
	return lesson.Quantity{Name: "g", Symbol: expr.Symbol{Letter: "g", Spoken: "g"}, Dim: statics.DimAcceleration, Unit: s.gravity, Given: true, True: s.g}, used
}

// force declares the force of a part.
func (s *rest) force(h *holder) lesson.Quantity {
	q := lesson.Quantity{Name: "F" + h.n, Symbol: h.item.Symbol(), Dim: statics.DimForce, True: h.size,
		Unknown: h.unknown, Answer: h.unknown, Reeved: h.is == "pulley" || len(h.leads) == 2}
	if h.is == "weight" {
		q.Gravity = expr.N(s.g)
	}
	if h.has("mass") || h.has("find") {
		q.Mass = "m" + h.n
	}
	switch {
	case h.derived != nil:
		principle := "weight-of-mass"
		if h.is == "spring" {
			principle = "spring-force"
		}
		q.Look = principle
		q.Routes = []lesson.Route{route("stated", principle, lesson.AnyMethod, h.derived)}
	case h.unknown:
		s.routes(h, &q)
	}
	return q
}

// sumOf declares the sum along x or y.
func (s *rest) sumOf(c coordinate, tree expr.Node) lesson.Quantity {
	axis := c.String()
	return lesson.Quantity{Name: "sum" + axis, Symbol: expr.Symbol{Letter: "ΣF", Sub: axis, Spoken: "sum of F " + axis},
		Dim: statics.DimForce, Equation: true, Routes: []lesson.Route{route("sum", "equilibrium-sum", lesson.ByComponents, tree)}, Mistakes: s.sumMistakes(c)}
}

// components declares the components of a force of unknown direction.
func (s *rest) components(h *holder) []lesson.Quantity {
	var qs []lesson.Quantity
	theta := expr.S("theta" + h.n)
	for i, along := range []expr.Node{s.x, s.y} {
		c := coordinate(i)
		axis := c.String()
		q := part(h.item.Symbol(), "F"+h.n, c, h.acts())
		tree := expr.Isolate(along, q.Name)
		if tree == nil { // nothing else acts along the axis
			tree = expr.N(0)
		}
		q.Means = expr.Mul(h.f, []expr.Node{expr.Cos(theta), expr.Sin(theta)}[i])
		q.Solves = [2]string{"sum" + axis, ""}
		q.Routes = []lesson.Route{route("from-sum", "from-sum-"+axis, lesson.ByComponents, tree), route("resolve", "resolve", lesson.ByComponents, q.Means)}
		for j, o := range s.parts { // one known force taken for another
			for _, p := range s.parts[j+1:] {
				if o.given && p.given {
					q.Mistakes = append(q.Mistakes, takenForOther(tree, o.f, p.f)...)
				}
			}
		}
		qs = append(qs, q)
	}
	return qs
}

// direction declares the unknown direction of a force.
func (s *rest) direction(h *holder) lesson.Quantity {
	x, y := expr.S("F"+h.n+"x"), expr.S("F"+h.n+"y")
	q := lesson.Quantity{Name: "theta" + h.n, Symbol: s.angleSymbol(h), Dim: statics.DimAngle, Turns: true, Answer: true, Unknown: true,
		True: h.at(), Routes: []lesson.Route{route("arctangent", "arctangent", lesson.ByComponents, arctangent(x, y, h.acts()))}}
	if h != s.aimed {
		return q
	}
	v := h.acts()
	sine, cosine := expr.Asin(expr.Div(y, h.f)), expr.Acos(expr.Div(x, h.f))
	if v.X < 0 {
		sine = expr.Sub(expr.Deg(180), sine)
	}
	if v.Y < 0 {
		cosine = expr.Neg{X: cosine}
	}
	q.Routes = append(q.Routes, route("from-y", "component-over-force", lesson.ByComponents, sine), route("from-x", "component-over-force", lesson.ByComponents, cosine))
	if i, ok := s.corner(h); ok { // laid off from either other force
		for _, j := range []int{(i + 1) % 3, (i + 2) % 3} {
			o, angle := s.parts[j], expr.S(betweenNames[3-i-j])
			tree := o.leads[0].direction()
			if r2.Cross(o.acts(), v) < 0 {
				tree = expr.Sub(tree, angle)
			} else {
				tree = expr.Add(tree, angle)
			}
			q.Routes = append(q.Routes, route("laid-"+o.n, "laid-from-force", lesson.ByTriangle, tree))
		}
	}
	return q
}

// beyond declares what is asked beside an unknown force: the stretch or the
// stiffness of a spring, a mass.
func (s *rest) beyond(h *holder) []lesson.Quantity {
	q := lesson.Quantity{Answer: true}
	k, stretch := expr.S("k"+h.n), expr.S("s"+h.n)
	switch {
	case h.has("stiffness"):
		q.Name, q.Symbol, q.Unit = "s"+h.n, s.symbol(h, "s", h.strain()), s.length
		q.True = h.size / s.in(h, "stiffness", s.stiffness())
		q.Routes = []lesson.Route{route("spring", "spring-law", lesson.AnyMethod, expr.Div(h.f, k))}
	case h.strained():
		q.Name, q.Symbol, q.Unit = "k"+h.n, s.symbol(h, "k", "stiffness"), s.stiffness()
		q.True = h.size / s.in(h, h.strain(), s.length)
		q.Routes = []lesson.Route{route("spring", "spring-law", lesson.AnyMethod, expr.Div(h.f, stretch))}
	case h.has("find"):
		q.Name, q.Symbol, q.Unit = "m"+h.n, s.symbol(h, "m", "mass"), s.mass
		q.True = h.size / s.g * s.coherent()
		w := h.f
		if c := s.coherent(); c != 1 {
			w = expr.Mul(w, expr.N(c))
		}
		q.Routes = []lesson.Route{route("mass", "mass-of-weight", lesson.AnyMethod, expr.Div(w, expr.S("g")))}
	default:
		return nil
	}
	q.Dim = q.Unit.Dim
	return []lesson.Quantity{q}
}
