package text

// check is the page's form of how answers are checked.
var check = map[string]string{
	"check.title": "How answers are checked",
	"check.how":   "For whoever sets the problem: what you choose here goes with the problem, in its address too.",

	"check.digits":         "Digits of an answer",
	"check.working-digits": "Digits kept on the way",
	"check.places":         "Decimals of an angle asked for",
	"check.working-places": "Decimals of an angle on the way",

	"check.entries":         "What may be entered",
	"check.entries.any":     "numbers and expressions",
	"check.entries.numbers": "numbers only",
	"check.units":           "Units",
	"check.units.optional":  "may be left out",
	"check.units.required":  "must be written",

	"check.direction":                   "A direction is reported",
	"check.direction.from +x":           "from +x",
	"check.direction.from the vertical": "from the vertical, with its side",
	"check.direction.bearing":           "as a bearing",
	"check.direction.acute":             "as an acute angle with its quadrant",
	"check.direction.from":              "from the force named below",
	"check.thing":                       "The force it is reported from",

	"check.method":            "Method",
	"check.method.any":        "either",
	"check.method.triangle":   "the force triangle",
	"check.method.components": "rectangular components",

	"check.hints":            "Hints",
	"check.hints.on":         "whenever asked for",
	"check.hints.delayed":    "after a wrong entry",
	"check.hints.off":        "none",
	"check.solution":         "The worked solution",
	"check.solution.on":      "whenever asked for",
	"check.solution.delayed": "after a wrong answer",
	"check.solution.off":     "not shown",
	"check.sketch":           "A sketch first",
	"check.sketch.on":        "yes",
	"check.sketch.off":       "no",
}
