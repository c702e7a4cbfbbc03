package text

// tutoring is what the tutor says of an entry and around it.
var tutoring = map[string]string{
	"feedback.correct":     "Your value fits.",
	"feedback.unexplained": "That value does not fit yet. What did you start from, and what did you do first?",
	"feedback.inside":      "That value does not fit yet. A sketch shows {symbol} between {lo} and {hi}: where in between would you expect it, and which step led to your value?",
	"feedback.outside":     "A sketch shows {symbol} between {lo} and {hi}. Which step could have taken you outside?",
	"feedback.affine":      "That does not fit the sketch yet. Which two directions meet at this corner, and which of them is {in}?",

	"feedback.carried":          "Your step for {symbol} is right, but it rests on your value for {from}. Would you look at {from} again first?",
	"feedback.corrected":        "{from} has a new value now, and {symbol} still rests on the one before. What does the same step give with the new one?",
	"feedback.rounded":          "The way is right. {what} looks rounded to {kept} on the way, which moved {symbol} by about {moved}. What comes out if you keep {keep} there?",
	"feedback.rounded.itself":   "The way is right. Your value for {symbol} looks rounded to {kept}, which moved it by about {moved}. What is it with {keep}?",
	"digits.significant":        "{n} digits",
	"digits.significant.one":    "one digit",
	"digits.decimals":           "{n} decimals",
	"digits.decimals.one":       "one decimal",
	"digits.decimals.none":      "whole degrees",
	"feedback.which":            "Two things could lead to your value: “{a}”, {where}, or “{b}”, {elsewhere}. Which of the two comes closer to what you did?",
	"feedback.which.here":       "Two things {where} could lead to your value: “{a}” or “{b}”. Which of the two comes closer to what you did?",
	"feedback.two":              "Two things may have come together in this value; begin with one of them.",
	"feedback.option":           "{what}, {where}",
	"feedback.where":            "at the step for {at}",
	"feedback.where.given":      "in reading {at} from the statement",
	"feedback.case":             "So far you are working the one where {case}.",
	"feedback.again":            "This is the same as before, so here is a little more help.",
	"feedback.again.times":      "This has come {n} times now.",
	"feedback.again.takes":      "To find {at} this way takes {all}: nothing is missing.",
	"feedback.again.takes.open": "To find {at} this way takes {all}; still to be found: {open}.",
	"feedback.again.keep":       "Keep all that your calculator shows until the last step, and round only what you write down.",
	"feedback.again.memory":     "Store each value in your calculator's memory and call it back, instead of keying in a rounded one.",
	"feedback.again.fresh":      "Work the step for {at} once more on a clean line.",
	"feedback.again.numbers":    "Point at each number in your step for {at} and say what it stands for in the sketch.",
	"feedback.again.stand":      "If you are sure of your entry, stand by it and say why; or go through the step for {at} with someone.",

	"note.two-solutions":   "Two triangles fit what is given; you are working the one where {case}.",
	"note.unit-missing":    "Write the unit too ({unit}).",
	"note.digit-more":      "Keep one digit more.",
	"note.angle-otherwise": "It is better given as asked, {how}.",
	"note.last-digit":      "The last digit is off by rounding on the way; keep more digits while you work.",

	"asked.equation":  "as an equation",
	"asked.angle":     "in degrees, to {places} after the point",
	"asked.magnitude": "in {unit}, to {digits} digits",

	"code.broken":  "This link is not whole: it may have been cut short or mistyped. Copy it again, or choose a problem below.",
	"code.version": "This link was made by another version of this page. Load the page again with a network, or choose a problem below.",

	"hint.needs":          "This still needs {symbol}, {what}. Find it first.",
	"hint.ready":          "Everything in it is known. What does it come to?",
	"hint.equation":       "Forces not known yet stay as letters. Does each force of your diagram stand in it, with its sign?",
	"hint.equation.whole": "This is the whole sum. To which force of your diagram does each term belong?",

	"hint.value": "This is the value. Can you get to it from the formula?",

	"method.triangle":      "By the force triangle",
	"method.components":    "By rectangular components",
	"method.triangle.by":   "by the force triangle",
	"method.components.by": "by rectangular components",
	"case.values":          "Where {case}: {said}",
	"case.heading":         "One of two solutions, where {case}",
	"method.case":          "{method}, where {case}",
}

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
	"problem.name.twice":    "Two things are called “{got}”; give each a name of its own.",
	"problem.magnitude":     "A magnitude must be more than zero, and less than a million million, not {got}. Write it like {example}; to turn a force round, change its direction.",
}
