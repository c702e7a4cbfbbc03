package text

// problems is what is said of a problem that cannot be used as written.
var problems = map[string]string{
	"problem.kind.missing":  "The kind of problem is missing: add a line such as “kind: two-forces” (kinds: {kinds}).",
	"problem.kind.unknown":  "There is no kind of problem called “{got}” (kinds: {kinds}).",
	"problem.key.unknown":   "“{key}” is not known here; what may stand here: {keys}.",
	"problem.twice":         "“{key}” is given twice; keep one.",
	"problem.story.long":    "The story is too long: keep it under {max} characters.",
	"problem.list":          "“{key}” must be a list, each line such as “- {example}”.",
	"problem.count":         "“{key}” must list from {min} to {max}, not {n}.",
	"problem.count.exact":   "“{key}” must list {min}, not {n}.",
	"problem.value":         "“{key}” is a text of its own, without parts: write “{key}: …” on one line.",
	"problem.field.parts":   "“{key}” is a single value, without parts: write it like “{key}: {example}”.",
	"problem.field.missing": "“{key}” is missing: add it, such as “{key}: {example}”.",
	"problem.field.bad":     "“{key}: {got}” can't be used: {why} Write it like “{key}: {example}”.",
	"problem.name.form":     "“{got}” won't do as a name: use up to {max} letters and digits, beginning with a letter.",
	"problem.name.taken":    "“{got}” has a meaning of its own in formulas; choose another name, such as P or Q.",
	"problem.name.alike":    "“{got}” and “{other}” are read alike; give one of them another name.",
	"problem.name.quantity": "“{got}” is what something else is called in this problem; choose another name, such as P or Q.",
	"problem.name.twice":    "Two things are called “{got}”; give each a name of its own.",
	"problem.magnitude":     "A magnitude must be more than zero, and less than a million million, not {got}. Write it like {example}; to turn a force round, change its direction.",
}
