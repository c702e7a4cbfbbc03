package expr

import "strings"

// Symbol is how a quantity is written and said: R with the subscript x, "R x".
type Symbol struct{ Letter, Sub, Spoken string }

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
