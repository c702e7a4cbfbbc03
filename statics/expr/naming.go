package expr

import "strings"

// Symbol is how a quantity is written and said: R with the subscript x, "R x".
type Symbol struct{ Letter, Sub, Spoken string }

// Stretch is a piece of a symbol's letter or subscript that is set in one style.
type Stretch struct {
	Text    string
	Upright bool
}

// Stretches cuts the letter or the subscript of a symbol by how it is set: a letter
// alone stands for a quantity, an axis or a force and is slanted; digits, the sign of a
// sum and words are upright (ISO 80000-1, from memory; NIST SP 811, 10.2).
func Stretches(s string) (all []Stretch) {
	kind := func(r rune) int {
		switch {
		case r >= '0' && r <= '9':
			return 0
		case r == 'Σ':
			return 1
		}
		return 2
	}
	for runes := []rune(s); len(runes) > 0; {
		n := 1
		for n < len(runes) && kind(runes[n]) == kind(runes[0]) {
			n++
		}
		all = append(all, Stretch{string(runes[:n]), n > 1 || kind(runes[0]) < 2})
		runes = runes[n:]
	}
	return all
}

// Naming gives the symbol of a canonical name. A nil Naming, or one that
// answers with the zero Symbol, leaves the canonical name as it is.
type Naming func(name string) Symbol

// String is the symbol in plain text: F₁, Rx, F₁x, γ. Digits stand below the
// line; letters do not, since Unicode has a subscript x but no y.
func (s Symbol) String() string {
	return s.Letter + strings.Map(func(r rune) rune {
		if r >= '0' && r <= '9' {
			return '₀' + r - '0'
		}
		return r
	}, s.Sub)
}

// symbol is the symbol for name, complete.
func (names Naming) symbol(name string) Symbol {
	s := Symbol{}
	if names != nil {
		s = names(name)
	}
	if s.Letter == "" {
		s = Symbol{Letter: name}
	}
	if s.Spoken == "" {
		s.Spoken = strings.TrimSpace(s.Letter + " " + s.Sub)
	}
	return s
}
