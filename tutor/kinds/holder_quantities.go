package kinds

import (
	"math"
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
		if o.item.Field(key).Given() || o.is == "spring" && key != "mass" || o.item.Field("find").Given() && key == "mass" {
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
	sub := lesson.SymbolOf(h.name()).Sub
	for _, o := range s.parts {
		if o != h && lesson.SymbolOf(o.name()).Sub == sub {
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
		used = used || h.item.Field("mass").Given() || h.item.Field("find").Given()
	}
	g := statics.Unit.After(s.gravity, expr.FormatNumber(s.g, 6))
	if used {
		s.lesson.Assumed = append(s.lesson.Assumed, text.Say(s.problem.Kind.Name+".gravity", "g", g))
	}
	return lesson.Quantity{Name: "g", Symbol: expr.Symbol{Letter: "g", Spoken: "g"}, Dim: statics.DimAcceleration, Unit: s.gravity, Given: true, True: s.g}, used
}

// force declares the force of a part.
func (s *rest) force(h *holder) lesson.Quantity {
	q := lesson.Quantity{Name: "F" + h.n, Symbol: lesson.SymbolOf(h.name()), Dim: statics.DimForce, True: h.size,
		Unknown: h.unknown, Answer: h.unknown, Reeved: h.is == "pulley" || len(h.leads) == 2}
	if h.is == "weight" {
		q.Gravity = expr.N(s.g)
	}
	if h.item.Field("mass").Given() || h.item.Field("find").Given() {
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

// routes are the ways to an unknown force.
func (s *rest) routes(h *holder, q *lesson.Quantity) {
	if s.aimed != nil {
		s.besideAimed(h, q)
	}
	if h.wandered {
		s.fromOwnParts(h, q)
		return
	}
	s.fromSums(h, q)
	q.Mistakes = s.mistaken(h)
	s.aroundTriangle(h, q)
}

// fromOwnParts are the ways to a force of unknown direction: from its components,
// and as the side that closes the triangle of three.
func (s *rest) fromOwnParts(h *holder, q *lesson.Quantity) {
	q.Routes = []lesson.Route{magnitudeOf(expr.S(q.Name+"x"), expr.S(q.Name+"y"))}
	q.Mistakes = s.numbersAlone(h)
	if i, ok := s.corner(h); ok {
		a, b := s.parts[(i+1)%3].f, s.parts[(i+2)%3].f
		q.Routes = append(q.Routes, route("cosine-law", "cosine-law", lesson.ByTriangle, expr.Sqrt(expr.Sub(
			expr.Add(expr.Sq(a), expr.Sq(b)), expr.Mul(expr.N(2), a, b, expr.Cos(expr.S(corners[i])))))))
	}
}

// fromSums are the ways to a force from the sums: out of both where another force
// is unknown too, and from each in which it is the only one.
func (s *rest) fromSums(h *holder, q *lesson.Quantity) {
	add := func(id, principle string, tree expr.Node) {
		if tree != nil {
			q.Routes = append(q.Routes, route(id, principle, lesson.ByComponents, tree))
		}
	}
	var alone [2]expr.Node
	for i, tree := range []expr.Node{s.x, s.y} {
		if tree != nil {
			alone[i] = expr.Solution([2]expr.Node{tree}, q.Name, "")
		}
	}
	other := s.other(h)
	switch {
	case other != nil:
		q.Twin = "F" + other.n
		q.Solves = [2]string{"sumx", "sumy"}
		add("eliminate", "eliminate", expr.Solution([2]expr.Node{s.x, s.y}, q.Name, q.Twin))
	case alone[0] != nil:
		q.Solves = [2]string{"sumx", ""}
	default:
		q.Solves = [2]string{"sumy", ""}
	}
	add("from-x", "from-sum-x", alone[0])
	add("from-y", "from-sum-y", alone[1])
}

// aroundTriangle are the ways to a force from either other of three, by the sine
// law in the triangle they make and by the angles between them.
func (s *rest) aroundTriangle(h *holder, q *lesson.Quantity) {
	i, ok := s.corner(h)
	if !ok {
		return
	}
	for _, o := range s.parts {
		if o == h {
			continue
		}
		j, _ := s.corner(o)
		ratio := func(up, down string) expr.Node {
			return expr.Div(expr.Mul(o.f, expr.Sin(expr.S(up))), expr.Sin(expr.S(down)))
		}
		q.Routes = append(q.Routes, route("sine-law-"+o.n, "sine-law-forces", lesson.ByTriangle, ratio(corners[i], corners[j])),
			route("lami-"+o.n, "lami", lesson.ByTriangle, ratio(between[i], between[j])))
		q.Mistakes = append(q.Mistakes, wrongPairs(o.f, i, j, corners)...)
	}
}

// numbersAlone are the wrong ways to a force that holds two others, whose sizes
// are added or subtracted as numbers.
func (s *rest) numbersAlone(h *holder) []lesson.Mistake {
	var others []expr.Node
	for _, o := range s.parts {
		if o != h {
			others = append(others, o.f)
		}
	}
	if len(others) != 2 {
		return nil
	}
	return []lesson.Mistake{mistake("magnitudes-added", expr.Add(others[0], others[1])), mistake("magnitudes-subtracted", expr.Abs(expr.Sub(others[0], others[1])))}
}

// besideAimed is the way to the one unknown force T beside a force F of unknown
// direction: with the known forces taken along and across T,
//
//	T = ±√(F² − K⊥²) − K∥
func (s *rest) besideAimed(h *holder, q *lesson.Quantity) {
	var along, across []expr.Term
	for _, o := range s.parts {
		if o == h || o == s.aimed {
			continue
		}
		for i, l := range o.leads {
			angle := statics.Between(l.unitVector(), h.acts())
			sin, cos := angle.Sincos()
			node := l.to(h.leads[0])
			if k, ok := s.corner(s.aimed); ok && i == 0 {
				node = expr.S(between[k])
			}
			if math.Abs(cos) > 1e-9 {
				along = append(along, expr.Term{Minus: false, Node: expr.Mul(o.f, expr.Cos(node))})
			}
			if math.Abs(sin) > 1e-9 {
				across = append(across, expr.Term{Minus: r2.Cross(h.acts(), l.unitVector()) < 0, Node: expr.Mul(o.f, expr.Sin(node))})
			}
		}
	}
	root := s.aimed.f
	if len(across) > 0 {
		root = expr.Sqrt(expr.Sub(expr.Sq(s.aimed.f), expr.Sq(expr.SumOf(across))))
	}
	back := r2.Dot(s.aimed.acts(), h.acts()) < 0 // the aimed force pulls against T
	q.Routes = append(q.Routes, route("along-across", "along-across", lesson.ByComponents, expr.SumOf(append([]expr.Term{{Minus: !back, Node: root}}, expr.Negate(along)...))))
}

// sumOf declares the sum along x or y.
func (s *rest) sumOf(c coordinate, tree expr.Node) lesson.Quantity {
	axis := c.String()
	return lesson.Quantity{Name: "sum" + axis, Symbol: expr.Symbol{Letter: "ΣF", Sub: axis, Spoken: "sum of F " + axis},
		Dim: statics.DimForce, Equation: true, Routes: []lesson.Route{route("sum", "equilibrium-sum", lesson.ByComponents, tree)}}
}

// components declares the components of a force of unknown direction.
func (s *rest) components(h *holder) []lesson.Quantity {
	var qs []lesson.Quantity
	theta := expr.S("theta" + h.n)
	for i, along := range []expr.Node{s.x, s.y} {
		c := coordinate(i)
		axis := c.String()
		q := part(lesson.SymbolOf(h.name()), "F"+h.n, c, h.acts())
		tree := expr.Solution([2]expr.Node{along}, q.Name, "")
		if tree == nil { // nothing else acts along the axis
			tree = expr.N(0)
		}
		q.Means = expr.Mul(h.f, []expr.Node{expr.Cos(theta), expr.Sin(theta)}[i])
		q.Solves = [2]string{"sum" + axis, ""}
		q.Routes = []lesson.Route{route("from-sum", "from-sum-"+axis, lesson.ByComponents, tree), route("resolve", "resolve", lesson.ByComponents, q.Means)}
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
			o, angle := s.parts[j], expr.S(between[3-i-j])
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
	has := func(key string) bool { return h.item.Field(key).Given() }
	k, stretch := expr.S("k"+h.n), expr.S("s"+h.n)
	switch {
	case has("stiffness"):
		q.Name, q.Symbol, q.Unit = "s"+h.n, s.symbol(h, "s", h.strain()), s.length
		q.True = h.size / s.in(h, "stiffness", s.stiffness())
		q.Routes = []lesson.Route{route("spring", "spring-law", lesson.AnyMethod, expr.Div(h.f, k))}
	case has(h.strain()):
		q.Name, q.Symbol, q.Unit = "k"+h.n, s.symbol(h, "k", "stiffness"), s.stiffness()
		q.True = h.size / s.in(h, h.strain(), s.length)
		q.Routes = []lesson.Route{route("spring", "spring-law", lesson.AnyMethod, expr.Div(h.f, stretch))}
	case has("find"):
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
