package text

// givens says what a statement gives, and what is wrong with a value of it.
var givens = map[string]string{
	"given.name.magnitude.direction": "{name} = {magnitude}, direction {direction}",
	"given.name.magnitude":           "{name} = {magnitude}",
	"given.name.direction":           "{name}: direction {direction}",
	"given.converted":                "The statement mixes systems of units. This is worked in {unit}: {written} is {same}.",

	"page.field.is":        "What it is",
	"page.field.second":    "Second direction",
	"page.field.force":     "Force",
	"page.field.mass":      "Mass",
	"page.field.length":    "Length",
	"page.field.stiffness": "Stiffness",
	"page.field.stretch":   "Stretch",
	"page.field.find":      "To be found",
	"page.field.g":         "Gravity",
	"page.item.parts":      "Part {n}",
	"page.item.gravity":    "Gravity",
	"page.more.parts":      "More parts",
	"page.more.gravity":    "Another value of gravity",

	"problem.choice":    "“{key}: {got}” is not one of the words that may stand here: {choices}.",
	"problem.component": "A component must be less than a million million, not {got}. Write it like {example}.",
	"problem.angle":     "An angle must be more than 0° and less than 360°, not {got}. Write it like {example}.",
	"problem.positive":  "A value here must be more than zero, and less than a million million, not {got}. Write it like {example}.",
}
