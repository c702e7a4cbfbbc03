package main

import (
	"slices"
	"strings"
	"unicode/utf8"

	"closingside/tutor"
	"closingside/tutor/entry"
)

// index finds a quantity by its canonical name, or by its symbol as printed or
// typed (γ, F₁x, F1x, F_1x). Canonical names come first, whatever the things
// of a problem are called.
type index struct {
	lesson *tutor.Lesson
	byName map[string]string
	given  map[string]bool // spellings of the givens
}

func newIndex(l *tutor.Lesson) index {
	x := index{lesson: l, byName: map[string]string{}, given: map[string]bool{}}
	for _, q := range l.Wanted() {
		x.byName[q.Name] = q.Name
	}
	for i := range l.Quantities {
		q := &l.Quantities[i]
		for _, s := range []string{q.Name, l.SymbolText(q.Name)} {
			s = fold(s)
			if q.Given {
				x.given[s] = true
			} else if _, taken := x.byName[s]; !taken {
				x.byName[s] = q.Name
			}
		}
	}
	return x
}

// fold brings the ways of typing a symbol together.
var fold = strings.NewReplacer("_", "", "ϕ", "φ", "ϑ", "θ", "ₓ", "x", "₀", "0", "₁", "1", "₂", "2", "₃", "3",
	"₄", "4", "₅", "5", "₆", "6", "₇", "7", "₈", "8", "₉", "9").Replace

// find is the canonical name of the quantity called name; a *lineError says
// which names there are, and which may be meant.
func (x index) find(name string) (string, error) {
	if q, ok := x.byName[name]; ok {
		return q, nil
	}
	if q, ok := x.byName[fold(name)]; ok {
		return q, nil
	}
	var names []string
	for _, q := range x.lesson.Wanted() {
		names = append(names, q.Name)
	}
	if x.given[fold(name)] {
		return "", &lineError{"“" + printable(name) + "” is given, not asked; name one of " + strings.Join(names, ", ")}
	}
	message := "there is no quantity called “" + printable(name) + "”"
	if near := nearest(name, names); len(near) > 0 {
		message += "; is " + strings.Join(near, " or ") + " meant?"
	}
	return "", &lineError{message + " (names: " + strings.Join(names, ", ") + ")"}
}

// nearest lists at most three names that differ from name by case, or by few
// letters, a swap of neighbours being one: none in a name of one letter, one, or two
// in a long name.
func nearest(name string, names []string) []string {
	if utf8.RuneCountInString(name) > 20 {
		return nil
	}
	off := func(n string) int { return entry.LettersOff(strings.ToLower(name), strings.ToLower(n)) }
	var near []string
	for _, n := range names {
		if letters := utf8.RuneCountInString(n); off(n) <= min(letters-1, 1+letters/5) {
			near = append(near, n)
		}
	}
	slices.SortStableFunc(near, func(a, b string) int { return off(a) - off(b) })
	if len(near) > 0 && off(near[0]) == 0 {
		return near[:1]
	}
	return near[:min(len(near), 3)]
}
