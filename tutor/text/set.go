package text

// sets is what is said of sets of problems, and of problems to be drawn.
var sets = map[string]string{
	"set.title.missing":    "The set has no title: add a line such as “title: Mooring lines, week 3”.",
	"set.problems.missing": "The set has no problems: add “problems:” and under it a list, each line such as “- generate: two-forces”.",
	"set.list":             "“problems” must be a list, each line such as “- generate: two-forces” or “- file: barge.yaml”.",
	"set.long":             "The set has {n} problems; keep it to {max}.",
	"set.text.long":        "“{key}” is too long: keep it under {max} characters.",
	"set.choice":           "“{key}: {got}” is not known; it is one of: {words}.",
	"set.whole":            "“{key}: {got}” won’t do: write a whole number from {min} to {max}.",
	"set.file":             "A problem in a file of its own can be read only where the file is: use the command, or write the problem out here.",
	"set.student.empty":    "A student’s number or name is missing.",
	"set.student.long":     "A student’s number or name may have up to {max} characters.",

	"set.home":         "Sets from your instructor",
	"set.drawing":      "Drawing the problems: {n} of {all}",
	"set.progress":     "{done} of {problems} problems done, {earned} of {marks} marks",
	"set.earned":       "{earned} of {marks}",
	"set.go":           "Go to problem {n}",
	"set.back":         "Back to {set}",
	"set.problem.one":  "1 problem",
	"set.problem.many": "{n} problems",
	"set.mark.one":     "1 mark",
	"set.mark.many":    "{n} marks",

	"set.hand-in":    "Does your instructor ask for your work? Save a copy, put your name into the file’s name, and send it.",
	"set.hand-in.go": "Save a copy of my work",
	"set.who.empty":  "Write your number or name first.",
	"set.who":        "Your number",
	"set.who.how":    "Everyone has problems of their own in this set. Write the number or name under which your instructor knows you.",
	"set.who.go":     "Show my problems",
	"set.whose":      "These problems are for {student}. Not you?",

	"wish.unmet":          "No fair problem of kind {kind} was found ({wish}). Ask for another difficulty, or leave more quadrants open.",
	"wish.method.unknown": "Problems of kind {kind} are not worked that way ({wish}). Take the line “method” out, or use a method that the kind has.",
	"wish.method":         "method {method}",
	"wish.contradicts":    "Difficulty 1 keeps every direction in the first quadrant: leave that one open, or ask for difficulty 2.",
	"wish.any":            "any",
	"wish.difficulty":     "difficulty {n}",
	"wish.quadrants":      "quadrants {list}",
	"wish.right-angles":   "right angles allowed",
	"wish.quadrant":       "“{got}” is no quadrant: list some of 1, 2, 3, 4.",
}
