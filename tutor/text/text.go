package text

import (
	"maps"
	"slices"
	"strings"
)

// areas lists every map of sentences but those of the kinds of problem, which
// each kind's file adds. No key may stand in two of them.
var areas = []map[string]string{
	common,
	reader,
	figure,
	shell,
	tutoring,
	settings,
	check,
	problems,
	givens,
	principles,
	slips,
	sets,
	page,
	sketch,
	sheet,
	export,
}

// Strict makes Say panic on an unknown key, a hole left open, or a name
// without a value. Tests set it; in the product a gap must not take the
// learner's work down.
var Strict bool

// sentences is every area in one map.
var sentences = join(areas)

// add puts a kind's sentences to the others.
func add(area map[string]string) { sentences = join([]map[string]string{sentences, area}) }

func join(areas []map[string]string) map[string]string {
	all := map[string]string{}
	for _, a := range areas {
		for key, s := range a {
			if _, twice := all[key]; twice {
				panic("text: key in two areas: " + key)
			}
			all[key] = s
		}
	}
	return all
}

// Say is the sentence under key, with each hole {name} filled by the value
// that follows its name in holes. Values are put in as they are: a value that
// holds braces is not read again. An unknown key is returned as it is.
func Say(key string, holes ...string) string {
	s, ok := sentences[key]
	if !ok {
		if Strict {
			panic("text: unknown key: " + key)
		}
		return key
	}
	if len(holes)%2 != 0 {
		if Strict {
			panic("text: name without a value: " + key)
		}
		holes = holes[:len(holes)-1]
	}
	var b strings.Builder
	for {
		before, name, after, ok := cutHole(s)
		if !ok {
			b.WriteString(s)
			return b.String()
		}
		b.WriteString(before)
		b.WriteString(fill(key, name, holes))
		s = after
	}
}

// cutHole cuts a sentence at its first hole; ok is false where it has none.
func cutHole(s string) (before, name, after string, ok bool) {
	before, rest, open := strings.Cut(s, "{")
	name, after, closed := strings.Cut(rest, "}")
	return before, name, after, open && closed
}

// fill is what fills the hole called name.
func fill(key, name string, holes []string) string {
	for i := 0; i < len(holes); i += 2 {
		if holes[i] == name {
			return holes[i+1]
		}
	}
	if Strict {
		panic("text: nothing for {" + name + "} of " + key)
	}
	return "{" + name + "}"
}

// List is a list of things in a sentence: "A, B and C".
func List(things []string) string {
	n := len(things)
	if n < 2 {
		return strings.Join(things, "")
	}
	return Say("list.last", "before", strings.Join(things[:n-1], ", "), "last", things[n-1])
}

// Has reports whether there is a sentence under key.
func Has(key string) bool {
	_, ok := sentences[key]
	return ok
}

// Missing lists the keys that have no sentence, in the order given. It is
// meant for the tests of packages that hold keys in tables.
func Missing(keys ...string) []string {
	return slices.DeleteFunc(slices.Clone(keys), Has)
}

// Keys is every key, sorted.
func Keys() []string { return slices.Sorted(maps.Keys(sentences)) }
