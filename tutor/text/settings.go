package text

// settings is what is said of how answers are checked, and of the ways a
// direction is reported.
var settings = map[string]string{
	"settings.form":       "“check” holds settings, each on a line of its own under it, such as “digits: 4” or “hints: off”.",
	"settings.value":      "“{key}” needs a value: {values}.",
	"settings.value.bad":  "“{key}: {got}” can't be used; it may be {values}.",
	"settings.whole":      "a whole number from {lo} to {hi}",
	"settings.from.thing": "from P (the name of a force that is given)",
	"settings.coarser":    "“{key}” must not be coarser than “{asked}”: give at least {n}.",
	"settings.thing":      "Directions can't be reported from “{got}”: no force of that name is given (forces: {names}).",
	"settings.method":     "This kind of problem is not worked that way; take the line “method” out, or use a method that it has.",

	"settings.by-triangle":    "Work it by the force triangle.",
	"settings.by-components":  "Work it by rectangular components.",
	"settings.numbers-only":   "Enter numbers, not expressions.",
	"settings.units-required": "Write the unit behind every number.",

	"reported.give.from-x":        "Directions are counter-clockwise from the positive x axis.",
	"reported.give.from-thing":    "Give {direction} counter-clockwise from {thing}; other directions are counter-clockwise from the positive x axis.",
	"reported.give.from-vertical": "Give {direction} as an angle from the vertical with its side, such as 20° left of +y.",
	"reported.give.bearing":       "Give {direction} as a bearing, such as N 30° E.",
	"reported.give.acute":         "Give {direction} as an acute angle with its quadrant, such as 30° below −x.",

	"reported.what.from-x":        "counter-clockwise from the positive x axis",
	"reported.what.from-thing":    "counter-clockwise from {thing}",
	"reported.what.from-vertical": "as an angle from the vertical with its side",
	"reported.what.bearing":       "as a bearing",
	"reported.what.acute":         "as an acute angle with its quadrant",

	"reported.asked.from-x":        "in degrees, to {places} after the point",
	"reported.asked.from-thing":    "in degrees from {thing}, to {places} after the point",
	"reported.asked.from-vertical": "from the vertical, such as 20° left of +y, to {places} after the point",
	"reported.asked.bearing":       "as a bearing, such as N 30° E, to {places} after the point",
	"reported.asked.acute":         "with its quadrant, such as 30° below −x, to {places} after the point",

	"reported.how.from-x":        "in degrees, counter-clockwise from the positive x axis",
	"reported.how.from-thing":    "in degrees, counter-clockwise from {thing}",
	"reported.how.from-vertical": "such as 20° left of +y",
	"reported.how.bearing":       "such as N 30° E",
	"reported.how.acute":         "such as 30° below −x",
	"reported.degrees":           "in degrees, from 0° to 180°",

	"reported.that-is":       "{value}, that is {told}",
	"reported.side.vertical": "On which side of the vertical? Write it behind the angle, such as 20° left of +y or 20° right of −y.",
	"reported.side.acute":    "In which quadrant? Write it behind the angle, such as 30° below −x or 30° above +x.",

	"reported.read.from-thing": "{value} counter-clockwise from {thing}",
	"reported.read.bearing":    "azimuth {value}",
}
