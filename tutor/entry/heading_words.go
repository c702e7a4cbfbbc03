package entry

import (
	"slices"
	"strings"

	"closingside/statics"
)

// headingWords gives each word of a direction the spelling that is worked with.
// An empty one is passed over.
var headingWords = map[string]string{
	"from": "from", "off": "from", "wrt": "from", "with": "from", "respect": "", "toward": "toward", "towards": "toward", "horizontal": "x", "vertical": "y",
	"measured": "", "the": "", "axis": "", "to": "", "direction": "", "due": "", "and": "", "pointing": "", "half": "",
	"positive": "+", "negative": "-", "plus": "+", "minus": "-", "ve": "", "neg": "-", "pos": "+", "x": "x", "y": "y",
	"clockwise": "cw", "cw": "cw", "counterclockwise": "ccw", "anticlockwise": "ccw", "counter": "counter", "anti": "counter", "ccw": "ccw", "acw": "ccw",
	"above": "up", "below": "down", "up": "up", "down": "down", "upward": "up", "upwards": "up", "downward": "down", "downwards": "down",
	"left": "left", "right": "right", "of": "of", "over": ":", "in": ":",
	"n": "north", "north": "north", "e": "east", "east": "east", "s": "south", "south": "south", "w": "west", "west": "west",
	"azimuth": "azimuth", "az": "azimuth", "bearing": "azimuth", "heading": "azimuth",
}

// halfway are the points of the compass halfway between two of the four.
var halfway = map[string][2]string{
	"ne": {"north", "east"}, "nw": {"north", "west"}, "se": {"south", "east"}, "sw": {"south", "west"},
	"northeast": {"north", "east"}, "northwest": {"north", "west"}, "southeast": {"south", "east"}, "southwest": {"south", "west"},
}

var headingAxes = map[string]statics.Axis{
	"north": statics.North, "east": statics.East, "south": statics.South, "west": statics.West,
	"up": statics.PlusY, "down": statics.MinusY, "left": statics.MinusX, "right": statics.PlusX,
}

// speaksOfDirection reports whether s has words of a direction that no
// expression has.
func speaksOfDirection(s string) bool {
	words := strings.FieldsFunc(strings.ToLower(string(foldAll(s))), func(r rune) bool { return !isLetter(r) })
	return strings.Contains(s, ":") || slices.ContainsFunc(words, func(w string) bool {
		return len(w) > 1 && (headingWords[w] != "" && headingWords[w] != ":" || halfway[w] != [2]string{})
	})
}
