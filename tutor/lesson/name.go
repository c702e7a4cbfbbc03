package lesson

import (
	"slices"
	"strconv"
	"strings"
	"unicode"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/entry"
)

// checkName refuses a name that could not be told from what the reader
// already understands, or that would not fit a figure.
func checkName(name string, at Source) error {
	runes := []rune(name)
	if len(runes) == 0 || len(runes) > maxName || !unicode.IsLetter(runes[0]) {
		return at.Fault("problem.name.form", "got", name, "max", strconv.Itoa(maxName))
	}
	for _, r := range runes {
		if !unicode.IsLetter(r) && !unicode.IsDigit(r) {
			return at.Fault("problem.name.form", "got", name, "max", strconv.Itoa(maxName))
		}
	}
	if entry.Reserved(name) {
		return at.Fault("problem.name.taken", "got", name)
	}
	return nil
}

// checkNames refuses two things of one name, or of names that are read alike: a
// letter of another script is the one it looks like, and a phone writes a
// capital where it will.
func (p *Problem) checkNames(src Source) error {
	seen := map[string]string{}
	for _, it := range p.Items {
		name := it.Field("name").Written
		if name == "" {
			continue
		}
		at := Source{Line: it.Line, Col: src.Col}
		read := strings.ToLower(entry.Spelling(name))
		switch other, ok := seen[read]; {
		case ok && other == name:
			return at.Fault("problem.name.twice", "got", name)
		case ok:
			return at.Fault("problem.name.alike", "got", name, "other", other)
		}
		seen[read] = name
	}
	return nil
}

// checkNames refuses a thing called like a quantity of the lesson that is not
// its own: R beside the resultant R, Px beside the component of a force P.
func (l *Lesson) checkNames() error {
	for _, it := range l.Problem.Items {
		name := it.Field("name").Written
		called := 0
		for i := range l.Quantities {
			if slices.ContainsFunc(l.Quantities[i].symbols(), func(s string) bool { return entry.Spelling(s) == entry.Spelling(name) }) {
				called++
			}
		}
		if called > 1 {
			return Source{Line: it.Line}.Fault("problem.name.quantity", "got", name)
		}
	}
	return nil
}

// ParseSymbol splits a thing's name into letter and index: F1 is F with index 1,
// printed F₁.
func ParseSymbol(name string) expr.Symbol {
	cut := len(name)
	for cut > 0 && name[cut-1] >= '0' && name[cut-1] <= '9' {
		cut--
	}
	if cut == 0 {
		cut = len(name)
	}
	s := expr.Symbol{Letter: name[:cut], Sub: name[cut:]}
	s.Spoken = strings.TrimSpace(s.Letter + " " + s.Sub)
	return s
}

// Symbol is the symbol of a thing, by its name.
func (it *Item) Symbol() expr.Symbol { return ParseSymbol(it.Field("name").Written) }

// Shown is a thing's name as it is read: T₁ for T1.
func (it *Item) Shown() string { return it.Symbol().String() }

// symbols lists the ways to write q's symbol: its index plain, and as it is
// spoken.
func (q *Quantity) symbols() []string {
	s := q.Symbol
	names := []string{s.Letter + s.Sub}
	if spoken := strings.ReplaceAll(s.Spoken, " ", ""); spoken != "" { // thetaC
		names = append(names, spoken)
	}
	return names
}

// greek writes the letters in a script's name for a quantity: θ1 for theta1.
var greek = strings.NewReplacer("alpha", "α", "beta", "β", "gamma", "γ", "phi", "φ", "theta", "θ")

// Names maps every spelling to its quantity. A thing's own name comes before
// what a script calls another: of a first force F2 and a second F1 each keeps
// its own.
func (l *Lesson) Names() entry.Names {
	names := entry.Names{}
	add := func(givens bool, spellings func(*Quantity) []string) {
		for i := range l.Quantities {
			q := &l.Quantities[i]
			if q.Given != givens {
				continue
			}
			for _, s := range spellings(q) {
				if _, taken := names[s]; !taken {
					names[s] = q.Name
				}
			}
		}
	}
	canonical := func(q *Quantity) []string { return []string{q.Name, greek.Replace(q.Name)} }
	add(true, (*Quantity).symbols)
	add(false, (*Quantity).symbols)
	add(true, canonical)
	add(false, canonical)
	l.otherwise(names)
	l.oneDirection(names)
	return names
}

// oneDirection calls the one direction that is asked θ, where nothing else is.
func (l *Lesson) oneDirection(names entry.Names) {
	asked := ""
	for i := range l.Quantities {
		if q := &l.Quantities[i]; q.Turns && q.Answer {
			if asked != "" {
				return
			}
			asked = q.Name
		}
	}
	for _, s := range []string{"theta", "θ"} {
		if _, taken := names[s]; !taken && asked != "" {
			names[s] = asked
		}
	}
}

// otherwise adds what books call a quantity beside its symbol (common
// practice), where the problem calls nothing else so.
func (l *Lesson) otherwise(names entry.Names) {
	for name, spellings := range map[string][]string{"R": {"FR"}, "Rx": {"FRx", "ΣFx"}, "Ry": {"FRy", "ΣFy"}, "sumx": {"Fx"}, "sumy": {"Fy"}} {
		if l.Quantity(name) == nil {
			continue
		}
		for _, s := range spellings {
			if _, taken := names[s]; !taken && names["F"] == "" {
				names[s] = name
			}
		}
	}
}

// DimOf is the dimension of the quantity called name.
func (l *Lesson) DimOf(name string) (statics.Dimension, bool) {
	q := l.Quantity(name)
	if q == nil {
		return statics.DimRatio, false
	}
	return q.Dim, true
}

// OtherUnits lists the units in which numbers of other dimensions than force are
// worked: those of the lesson's quantities, and of mass the one that makes the
// unit of force with that of acceleration, a slug for lb and ft/s², 1000 kg for
// kN and m/s².
func (l *Lesson) OtherUnits() []statics.Unit {
	var all []statics.Unit
	for i := range l.Quantities {
		switch u := l.Quantities[i].Unit; u.Dim {
		case statics.DimAcceleration:
			all = append(all, u, statics.Unit{Dim: statics.DimMass, Factor: l.Unit.Factor / u.Factor})
		case statics.DimLength, statics.DimStiffness:
			all = append(all, u)
		}
	}
	return all
}
