package export

import (
	"strings"

	"closingside/site"
	"closingside/tutor"
	"closingside/tutor/figure"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
	"closingside/tutor/text"
)

// Markdown is the worked solution of every problem of a variant, with figures
// as files beside it: name.md and name-1a.svg, name-1b.svg for problem 1 and
// so on. Formulas are plain text, so that they read anywhere.
func Markdown(name string, v *sets.Variant) ([]File, error) {
	var b strings.Builder
	var files []File
	b.WriteString("# " + escape(v.Set.Title) + "\n")
	if v.Set.Note != "" {
		b.WriteString("\n" + escape(v.Set.Note) + "\n")
	}
	for i := range v.Tasks {
		lesson, err := tutor.Open(v.Tasks[i].Problem)
		if err != nil {
			return nil, err
		}
		figures, err := solved(&b, name, &v.Tasks[i], lesson)
		if err != nil {
			return nil, err
		}
		files = append(files, figures...)
	}
	b.WriteString("\n---\n\n" + escape(text.Say("common.safety")) + "\n")
	return append([]File{{name + ".md", []byte(b.String())}}, files...), nil
}

// solved writes one problem and returns its figures.
func solved(b *strings.Builder, name string, t *sets.Task, l *tutor.Lesson) ([]File, error) {
	number := itoa(t.Number)
	b.WriteString("\n## " + text.Say("sheet.problem", "n", number) + "\n")
	for _, s := range statement(l) {
		b.WriteString("\n" + prose(l, s) + "\n")
	}
	var files []File
	draw := func(scene figure.Scene) error {
		svg, err := drawing(scene)
		if err != nil {
			return err
		}
		file := name + "-" + number + string(rune('a'+len(files))) + ".svg"
		files = append(files, File{file, svg})
		b.WriteString("\n![" + escape(scene.Title+". "+scene.Desc) + "](" + file + ")\n")
		return nil
	}
	for _, scene := range tutor.NewWork(l, l.Problem.Settings).Opening() {
		if err := draw(scene); err != nil {
			return nil, err
		}
	}
	for _, way := range l.Solve(l.Problem.Settings) {
		b.WriteString("\n### " + way.Heading() + "\n")
		scenes := l.Worked(way).Scenes()
		if err := draw(scenes[len(scenes)-1]); err != nil {
			return nil, err
		}
		why := ""
		for i, s := range way.Steps {
			b.WriteString("\n" + listed(i+1, prose(l, s.Why), s.Why == why, chain(l, &s)))
			why = s.Why
		}
	}
	b.WriteString("\n**" + text.Say("sheet.answers") + ":** " + prose(l, strings.Join(answers(l), ", ")) + "\n")
	return files, nil
}

// listed is a step of a list: why, which is not said again where the step before
// had the same reason, and its lines as code, which stands four columns in from
// where the item's text begins.
func listed(n int, why string, said bool, lines []string) string {
	mark := itoa(n) + ". "
	indent := strings.Repeat(" ", len(mark)+4)
	code := strings.Join(lines, "\n"+indent) + "\n"
	if said {
		return mark + "    " + code
	}
	return mark + why + "\n\n" + indent + code
}

// chain is a step as lines of plain text: R = formula, = numbers, = value.
func chain(l *tutor.Lesson, s *lesson.SolutionStep) []string {
	lines := []string{l.SymbolText(s.Quantity.Name) + " = " + l.Text(s.Route.Tree)}
	if numbers := l.Text(s.Numbers); numbers != l.Text(s.Route.Tree) {
		lines = append(lines, "= "+numbers)
	}
	if s.Value != "" {
		lines = append(lines, "= "+s.Value)
	}
	return lines
}

func answers(l *tutor.Lesson) []string {
	var all []string
	for _, each := range l.Solutions() {
		for i := range each.Quantities {
			if q := &each.Quantities[i]; q.Answer {
				all = append(all, each.InCase(each.SymbolText(q.Name)+" = "+each.Show(q, q.True, l.Problem.Settings.Answer)))
			}
		}
	}
	return all
}

// statement is what is told, given and asked, a sentence each.
func statement(l *tutor.Lesson) []string {
	var all []string
	if l.Problem.Story != "" {
		all = append(all, l.Problem.Story)
	}
	all = append(all, l.Given()...)
	all = append(all, l.Converted()...)
	return append(all, l.Task())
}

// prose is a sentence with its symbols set as in a formula, what stands below the
// line as HTML (CommonMark 0.31, section 6.6).
func prose(l *tutor.Lesson, s string) string {
	var b strings.Builder
	for _, r := range site.Runs(l.Lesson, s) {
		piece := escape(r.Text)
		if r.Italic {
			piece = "<i>" + piece + "</i>"
		}
		if r.Sub {
			piece = "<sub>" + piece + "</sub>"
		}
		b.WriteString(piece)
	}
	return b.String()
}

// escape keeps what Markdown (CommonMark 0.31, section 2.4) would read as markup
// from being so read.
func escape(s string) string {
	var b strings.Builder
	for _, r := range s {
		if strings.ContainsRune("\\`*_{}[]<>#|!", r) {
			b.WriteByte('\\')
		}
		if r == '\n' {
			r = ' '
		}
		b.WriteRune(r)
	}
	return b.String()
}
