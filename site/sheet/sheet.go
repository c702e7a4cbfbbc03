package sheet

import (
	"bytes"
	_ "embed"
	"html/template"
	"strings"

	"closingside/site/html"
	"closingside/site/page"
	"closingside/site/parallel"
	"closingside/tutor/sets"
	"closingside/tutor/text"
)

// Copy is the sheet of one student, or everyone's.
type Copy struct {
	ID, Name string // of the student; both "" on a sheet for everyone
	Variant  *sets.Variant
	Link     string // that opens the variant on the page; "" where no address is known
}

//go:embed sheet.html
var frame string

//go:embed sheet.css
var style string

var document = template.Must(template.New("sheet").Parse(frame))

// Worksheets is a document with the worksheet of every copy, each beginning on
// a page of its own. It tells progress after each; progress may be nil.
func Worksheets(title string, copies []Copy, progress func(done, all int)) ([]byte, error) {
	return write(title, copies, worksheet, progress)
}

// Key is a document with the key of one copy: the answers, the worked solutions
// and the values that mistakes give.
func Key(title string, c Copy, progress func(done, all int)) ([]byte, error) {
	return write(text.Say("sheet.key.title", "title", title), []Copy{c}, key, progress)
}

// Answers is a document with the answers of every copy, a row for each.
func Answers(title string, copies []Copy, progress func(done, all int)) ([]byte, error) {
	title = text.Say("sheet.key.title", "title", title)
	rows, err := each(copies, (*Copy).row, progress)
	if err != nil {
		return nil, err
	}
	return framed(title, answerTable(title, rows).Render(nil))
}

// write renders every copy and frames them.
func write(title string, copies []Copy, one func(*Copy) (html.Node, error), progress func(done, all int)) ([]byte, error) {
	rendered, err := each(copies, func(c *Copy) ([]byte, error) {
		n, err := one(c)
		if err != nil {
			return nil, err
		}
		return n.Render(nil), nil
	}, progress)
	if err != nil {
		return nil, err
	}
	return framed(title, bytes.Join(rendered, []byte("\n")))
}

// each is what one makes of every copy.
func each[T any](copies []Copy, one func(*Copy) (T, error), progress func(done, all int)) ([]T, error) {
	made, faults := parallel.Each(len(copies), func(i int) (T, error) { return one(&copies[i]) }, progress)
	for _, err := range faults {
		if err != nil {
			return nil, err
		}
	}
	return made, nil
}

// framed puts what was rendered into the document.
func framed(title string, body []byte) ([]byte, error) {
	figures, err := page.Files.ReadFile("figure.css")
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	err = document.Execute(&b, struct {
		Title, Safety string
		Style         template.CSS
		Body          template.HTML
	}{title, text.Say("common.safety"), template.CSS(string(figures) + style + footer(text.Say("common.safety"))), template.HTML(body)})
	return b.Bytes(), err
}

// footer has every printed page say s at its foot.
func footer(s string) string {
	return `@page { @bottom-left { content: "` + strings.NewReplacer(`\`, `\\`, `"`, `\"`, "<", `\3c `).Replace(s) + "\"; } }\n"
}
