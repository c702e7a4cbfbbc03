package main

import (
	"encoding/json"
	"errors"
	"io"
	"math"
	"strings"
	"syscall"
	"unicode/utf8"

	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// solveVerb shows everything that is true of a problem.
type solveVerb struct {
	File string `arg:"" help:"The problem, a YAML or JSON file."`
	JSON bool   `help:"One JSON object: every quantity under its canonical name, full precision, angles in degrees."`
}

// Run solves the problem and shows it.
func (v solveVerb) Run(s streams) error {
	lesson, err := openLesson(v.File)
	if err != nil {
		return err
	}
	if v.JSON {
		return written(encode(s.out, solved(lesson.Lesson)))
	}
	page := newScreen(s.out)
	showStatement(page, lesson)
	showValues(page, lesson)
	showSolutions(page, lesson)
	page.line("")
	page.paragraph(0, dim, text.Say("common.safety"))
	return written(page.err)
}

// written is an error of writing; that nobody reads any more is none.
func written(err error) error {
	if errors.Is(err, syscall.EPIPE) || errors.Is(err, io.ErrClosedPipe) {
		return nil
	}
	return err
}

// encode writes v as one line of JSON, in one write.
func encode(out io.Writer, v any) error {
	e := json.NewEncoder(out)
	e.SetEscapeHTML(false)
	return e.Encode(v)
}

// solution and value are the machine's form of a solved problem.
type solution struct {
	Quantities []value `json:"quantities"`
}

type value struct {
	Name   string   `json:"name"`
	Symbol string   `json:"symbol"`
	Value  *float64 `json:"value"` // null where there is none
	Unit   string   `json:"unit"`
	Also   *float64 `json:"also,omitempty"` // in the other of two solutions, where it differs
}

func solved(l *lesson.Lesson) solution {
	all := solution{Quantities: []value{}}
	for _, q := range l.Wanted() {
		row := value{Name: q.Name, Symbol: l.SymbolText(q.Name), Unit: l.UnitOf(q).Symbol}
		row.Value = exact(q.True)
		if l.Other != nil {
			row.Also = exact(q.Also)
		}
		all.Quantities = append(all.Quantities, row)
	}
	return all
}

// exact is v for JSON, nil where it is no number.
func exact(v float64) *float64 {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return nil
	}
	if v == 0 {
		v = 0 // no minus before a zero
	}
	return &v
}

// showStatement writes the story and the givens as the file has them.
func showStatement(page *screen, l *tutor.Lesson) {
	if story := printable(l.Problem.Story); story != "" {
		page.paragraph(0, bold, story)
		page.line("")
	}
	page.line(page.in(bold, "Given"))
	showGivens(page, l.Problem)
	for _, note := range l.Converted() {
		page.paragraph(2, dim, note)
	}
	showSettings(page, l)
}

// showGivens writes the givens: in columns where they are a list of like
// things, in sentences otherwise.
func showGivens(page *screen, p *lesson.Problem) {
	var columns [][]string
	for _, item := range p.Items {
		for i, f := range item.Fields {
			if item.Group != p.Items[0].Group || !f.Given() {
				for _, given := range p.Statements() {
					page.hanging("  ", 4, plain, printable(given))
				}
				return
			}
			if i == len(columns) {
				columns = append(columns, nil)
			}
			columns[i] = append(columns[i], printable(f.Written))
		}
	}
	for row := range p.Items {
		line := ""
		for _, c := range columns {
			line += "  " + pad(c[row], widest(c))
		}
		page.line(line)
	}
}

// shownDigits are finer than a learner is asked for, and coarse enough to be
// the same on every machine.
var shownDigits = lesson.Digits{Magnitude: 6, Angle: 3}

func showValues(page *screen, l *tutor.Lesson) {
	for _, each := range l.Solutions() {
		if c := each.CaseText(); c != "" {
			page.line("")
			page.paragraph(0, bold, text.Say("case.heading", "case", c))
		}
		showEach(page, each)
	}
}

// showEach writes the values of one solution.
func showEach(page *screen, l *tutor.Lesson) {
	all := l.Wanted()
	var symbols, values []string
	for _, q := range all {
		symbols = append(symbols, l.SymbolText(q.Name))
		values = append(values, l.Show(q, q.True, shownDigits))
	}
	values = atPoint(values)
	for _, answers := range []bool{true, false} {
		heading := "On the way"
		if answers {
			heading = "Answers"
		}
		page.line("")
		page.line(page.in(bold, heading))
		for i, q := range all {
			if q.Answer == answers {
				lead := "  " + pad(symbols[i], widest(symbols)) + "  " + pad(values[i], widest(values))
				page.hanging(lead, utf8.RuneCountInString(lead)+2, dim, inWords(l, q))
			}
		}
	}
}

// inWords says what q is and, for a direction to be reported otherwise than from
// +x, what it is then.
func inWords(l *tutor.Lesson, q *lesson.Quantity) string {
	if told := l.Reported(q, q.True, shownDigits); told != l.Show(q, q.True, shownDigits) {
		return l.Say(l.Kind.Name+"."+q.Name+".what") + "; as asked: " + told
	}
	return l.Sentence(q, "what")
}

// showSettings says how the problem is to be worked, where that is not as
// usual.
func showSettings(page *screen, l *tutor.Lesson) {
	if l.Problem.Settings == lesson.DefaultSettings() {
		return
	}
	page.line("")
	page.line(page.in(bold, "Asked"))
	page.paragraph(2, "", strings.Join(l.Conditions(), " "))
}

// showSolutions writes the worked solution by each method: what a step rests
// on, where that is new, and the step in symbols and with numbers.
func showSolutions(page *screen, l *tutor.Lesson) {
	for _, way := range l.Solve(l.Problem.Settings) {
		page.line("")
		page.paragraph(0, bold, way.Heading())
		said := map[string]bool{}
		for _, step := range way.Steps {
			if !said[step.Why] {
				said[step.Why] = true
				page.paragraph(2, dim, step.Why)
			}
			showStep(page, l, step.Formula)
		}
	}
}

// showStep writes symbol = formula = numbers = value on one line where it
// fits, otherwise each part on its own.
func showStep(page *screen, l *tutor.Lesson, f lesson.Formula) {
	lead := "    " + l.SymbolText(f.Quantity.Name) + " = "
	parts := []string{l.Text(f.Route.Tree), l.Text(f.Numbers), f.Value}
	line := lead + strings.Join(parts, " = ")
	if utf8.RuneCountInString(line) <= page.width {
		page.line(line)
		return
	}
	at := utf8.RuneCountInString(lead)
	for _, p := range parts {
		for i, l := range broken(p, page.width-at) {
			page.line(lead + spaces(min(i, 1)*further) + l)
			lead = spaces(at)
		}
		lead = spaces(at-2) + "= "
	}
}

// further is how far the lines of a formula that is broken stand in.
const further = 2

// broken is a formula in lines of so many letters, those after the first set in
// further: broken before a term of a sum, or what a bracket is divided by.
func broken(formula string, width int) (lines []string) {
	line, room := "", width
	for piece := range strings.SplitSeq(breaks.Replace(formula), "\n") {
		if line != "" && utf8.RuneCountInString(line+piece) > room {
			lines, line, piece, room = append(lines, line), "", strings.TrimPrefix(piece, " "), width-further
		}
		line += piece
	}
	return append(lines, line)
}

var breaks = strings.NewReplacer(" + ", "\n + ", " − ", "\n − ", ")/(", ")\n/(")
