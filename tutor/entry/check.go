package entry

import (
	"math"
	"slices"
	"strings"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/text"
)

// checkNames fails for a name that has no value to work with here.
func (p *parser) checkNames() {
	sc := p.scope
	for _, t := range p.names {
		switch {
		case t.name == sc.Asked:
			t.fail("own", "name", t.typed)
		case slices.Contains(sc.Unknowns, t.name):
		case sc.Known == nil || math.IsNaN(sc.Known(t.name)):
			t.fail("not-found-yet", "name", t.typed)
		}
	}
}

// unitVectors may stand behind a component.
var unitVectors = []string{"i", "j", "î", "ĵ", "ihat", "jhat"}

// waysAlone tell which way a force points.
var waysAlone = []string{"left", "right", "up", "down", "upward", "upwards", "downward", "downwards", "to", "leftward", "leftwards", "rightward", "rightwards",
	"north", "south", "east", "west", "northward", "southward", "eastward", "westward"}

// pulls tell whether a part pulls or pushes.
var pulls = []string{"t", "c", "tension", "compression", "tensile", "compressive", "pull", "push", "pulls", "pushes", "pulling", "pushing"}

// pulling fails for a word behind a force that tells whether it pulls.
func (sc *Scope) pulling(t, before token) {
	word := t.name
	if t.kind == tUnit {
		word = t.typed
	}
	if sc.Dim == statics.DimForce && before.endsValue() && (t.kind == tUnit || t.kind == tUnknown) && slices.Contains(pulls, foldWord(word)) {
		t.fail("pull")
	}
}

// endsValue reports whether a value may end with t.
func (t token) endsValue() bool {
	return t.kind == tNumber || t.kind == tClose || t.kind == tUnit
}

// unknown fails for a word that is no name here, with the nearest one that is.
// Right behind a number it was probably meant for a unit.
func (sc *Scope) unknown(t, before, next token) {
	value := before.endsValue()
	if value && foldWord(t.name) == "to" && next.kind == tNumber { // 682 to 683
		t.fail("two-values")
	}
	if value && slices.Contains(unitVectors, t.name) {
		t.fail("vector", "letter", t.name)
	}
	if value && sc.Dim != statics.DimAngle && slices.Contains(waysAlone, foldWord(t.name)) {
		t.fail("way")
	}
	letters := len([]rune(t.name))
	best, near := min(letters, 1+max(1, letters/3), 3), ""
	words := make([]string, 0, len(sc.Words.names)+len(functions))
	for w := range sc.Words.names {
		words = append(words, w)
	}
	for w := range functions {
		words = append(words, w)
	}
	slices.Sort(words)
	for _, w := range words {
		if d := LettersOff(foldWord(t.name), foldWord(w)); d < best {
			best, near = d, w
		}
	}
	if before.kind == tNumber {
		if u := unitText(sc.Unit); u != "" {
			t.fail("unknown-behind", "name", t.name, "unit", u)
		}
	}
	if force := strings.TrimRight(t.name, "xy"); len(t.name) == len(force)+1 {
		if _, ok := sc.Words.names[force]; ok {
			t.fail("unknown-part", "name", t.name, "force", force)
		}
	}
	if near != "" {
		t.fail("unknown-name-near", "name", t.name, "near", near)
	}
	if next.kind == tOpen && letters > 1 {
		t.fail("unknown-function", "name", t.name)
	}
	t.fail("unknown-name", "name", t.name)
}

// content is what a part of an entry measures, as far as that is certain.
type content struct {
	dim   statics.Dimension
	known bool
	at    span // what says so
}

// plainRatio tells a number that surely has no unit.
func (s content) plainRatio() bool { return s.known && s.dim == statics.DimRatio }

// measures reports whether s surely measures something.
func (s content) measures() bool { return s.known && s.dim != statics.DimRatio }

// checkDimension fails where an entry surely measures something else than what
// is asked. A ratio may stand anywhere: a sine written down as the angle is a
// slip to be named, not a misreading.
func (p *parser) checkDimension(tree expr.Node, unit *token, whole span) {
	s := p.dimension(tree)
	if unit != nil && unit.unit.Dim != statics.DimAngle {
		if s.measures() && unit.unit.Dim == p.scope.Dim {
			unit.fail("unit-place", "unit", unit.typed)
		}
		s = content{unit.unit.Dim, true, whole}
	} else if unit != nil {
		s = content{statics.DimAngle, true, whole}
	}
	if !s.measures() || s.dim == p.scope.Dim {
		return
	}
	wanted := p.scope.Dim
	switch {
	case wanted == statics.DimRatio:
		s.at.fail("ratio-asked", "is", dimensionText(s.dim))
	case s.dim == statics.DimAngle:
		s.at.fail("angle-misplaced", "wanted", dimensionText(wanted), "unit", unitText(p.scope.Unit))
	}
	s.at.fail("wrong-dimension", "is", dimensionText(s.dim), "wanted", dimensionText(wanted), "unit", unitText(p.scope.Unit))
}

func dimensionText(d statics.Dimension) string { return text.Say("entry.dimension." + d.String()) }

// unitText names a unit inside a sentence.
func unitText(u statics.Unit) string {
	if u.Symbol == "deg" {
		return text.Say("entry.degrees")
	}
	return u.Symbol
}

// dimension works out what tree measures, and fails where that makes no sense:
// newtons added to degrees, the sine of a force.
func (p *parser) dimension(tree expr.Node) content {
	d := dimensions{parser: p}
	return d.of(tree)
}

// dimensions walks a tree in step with the parser's notes on it.
type dimensions struct {
	*parser
	leaf, name, call int
}

func (d *dimensions) of(n expr.Node) content {
	switch n := n.(type) {
	case expr.Num, expr.Ang:
		l := d.leaves[d.leaf]
		d.leaf++
		return content{l.unit.Dim, l.unit.Dim != statics.DimRatio, l.span}
	case expr.Pi:
		return content{}
	case expr.Sym:
		t := d.names[d.name]
		d.name++
		if d.scope.Dims == nil {
			return content{}
		}
		dim, ok := d.scope.Dims(n.Name)
		return content{dim, ok, t.span}
	case expr.Neg:
		return d.of(n.X)
	case expr.Bin:
		return d.binary(n)
	case expr.Fn:
		return d.function(n)
	}
	panic("entry: unknown node")
}

func (d *dimensions) binary(n expr.Bin) content {
	l, r := d.of(n.L), d.of(n.R)
	switch n.Op {
	case expr.OpAdd, expr.OpSub:
		if l.measures() && r.measures() && l.dim != r.dim {
			r.at.fail("mixed", "left", dimensionText(l.dim), "right", dimensionText(r.dim))
		}
		if l.measures() {
			return l
		}
		return r
	case expr.OpMul:
		if l.plainRatio() {
			return r
		}
		if r.plainRatio() {
			return l
		}
	case expr.OpDiv:
		if r.plainRatio() {
			return l
		}
		if l.known && r.known && l.dim == r.dim {
			return content{statics.DimRatio, true, l.at.through(r.at)}
		}
	}
	return content{}
}

func (d *dimensions) function(n expr.Fn) content {
	at := d.calls[d.call]
	d.call++
	x := d.of(n.X)
	switch n.Func {
	case expr.FnAbs:
		return x
	case expr.FnSin, expr.FnCos, expr.FnTan:
		if x.measures() && x.dim != statics.DimAngle {
			x.at.fail("trig-of", "function", at.fn.name, "is", dimensionText(x.dim))
		}
		return content{statics.DimRatio, true, at.span}
	case expr.FnAsin, expr.FnAcos, expr.FnAtan:
		if x.measures() {
			x.at.fail("inverse-of", "function", at.fn.name, "is", dimensionText(x.dim))
		}
		return content{statics.DimAngle, true, at.span}
	}
	return content{}
}
