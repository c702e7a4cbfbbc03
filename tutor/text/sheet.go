package text

// sheet holds what printed worksheets and their keys say.
var sheet = map[string]string{
	"sheet.name":      "Name",
	"sheet.date":      "Date",
	"sheet.problems":  "Problems: {n}",
	"sheet.of-marks":  "marks: {n}",
	"sheet.variant":   "variant {id}",
	"sheet.problem":   "Problem {n}",
	"sheet.marks":     "Marks: {n}",
	"sheet.find":      "What to find",
	"sheet.value":     "Value and unit",
	"sheet.answers":   "Answers",
	"sheet.work":      "Your working",
	"sheet.qr":        "Code to scan: it opens these problems on the practice page, which checks each value you enter.",
	"sheet.long-link": "These problems are too long for a code to scan.",

	"sheet.key.title":     "Key: {title}",
	"sheet.key.student":   "Student",
	"sheet.key.problem":   "Problem",
	"sheet.key.way":       "On the way",
	"sheet.key.mistakes":  "What mistakes give",
	"sheet.key.likeliest": "One slip in finding the value itself, the likeliest ones. The command “closingside slips” lists them all, and looks any value up.",
	"sheet.key.not":       "For {symbol} = {value}",
}
