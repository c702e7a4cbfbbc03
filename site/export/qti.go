package export

import (
	"archive/zip"
	"bytes"
	"cmp"
	"math"
	"slices"
	"strconv"

	"closingside/site"
	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
	"closingside/tutor/text"
)

// QTI is a variant as a QTI 3 package (a zip) of two tests. For every answer
// of every problem the one has an item where the value is typed, right within
// the band the tutor accepts; the other one where it is chosen among values
// that mistakes give. A wrong choice is answered with the mistake behind it.
//
// Sources: 1EdTech, QTI 3.0 Assessment, Section and Item information model,
// and Best Practices and Implementation Guide; IMS Content Packaging 1.2.
func QTI(v *sets.Variant) ([]byte, error) {
	p := &pack{}
	for i := range v.Tasks {
		if err := p.task(&v.Tasks[i]); err != nil {
			return nil, err
		}
	}
	p.files = append([]File{{"imsmanifest.xml", p.manifest()}, {"typed.xml", p.test(v, typed)}, {"chosen.xml", p.test(v, chosen)}}, p.files...)
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	for _, f := range p.files {
		w, err := z.Create(f.Name)
		if err != nil {
			return nil, err
		}
		if _, err := w.Write(f.Content); err != nil {
			return nil, err
		}
	}
	if err := z.Close(); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}

// pack is a package while it is written.
type pack struct {
	files []File
	items []item
}

// item is an item's file, and the figure it shows.
type item struct{ id, file, figure, problem, way string }

// The ways to answer an item.
const (
	typed  = "typed"
	chosen = "chosen"
)

// task writes the items of one problem.
func (p *pack) task(t *sets.Task) error {
	given := *t.Problem
	given.Settings.Direction = lesson.Reference{} // from +x: a platform compares numbers
	l, err := tutor.Open(&given)
	if err != nil {
		return err
	}
	w := tutor.NewWork(l, given.Settings)
	problem := "p" + itoa(t.Number)
	svg, err := drawing(w.Opening()[0])
	if err != nil {
		return err
	}
	figure := "figures/" + problem + ".svg"
	p.files = append(p.files, File{figure, svg})
	var asked []*lesson.Quantity
	for i := range l.Quantities {
		if q := &l.Quantities[i]; q.Answer {
			asked = append(asked, q)
		}
	}
	for _, q := range asked {
		worth := float64(max(t.Marks, 1)) / float64(len(asked))
		s := stem{lesson: l, work: w, q: q, figure: "../" + figure, worth: strconv.FormatFloat(worth, 'g', 6, 64),
			title: text.Say("sheet.problem", "n", itoa(t.Number)) + ": " + l.SymbolText(q.Name)}
		p.add(item{problem: problem, id: problem + "-" + q.Name, figure: figure, way: typed}, s.typed)
		if choices := s.choices(); len(choices) > 1 {
			p.add(item{problem: problem, id: problem + "-" + q.Name, figure: figure, way: chosen}, func(id string) *el { return s.chosen(id, choices) })
		}
	}
	return nil
}

func (p *pack) add(it item, write func(id string) *el) {
	it.id += "-" + it.way
	it.file = "items/" + it.id + ".xml"
	p.items = append(p.items, it)
	p.files = append(p.files, File{it.file, document(write(it.id))})
}

// stem is what both items of an answer share.
type stem struct {
	lesson               *tutor.Lesson
	work                 *tutor.Work
	q                    *lesson.Quantity
	figure, worth, title string
}

const (
	namespace   = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0"
	places      = 12 // significant digits of values in an item
	mostChoices = 5  // the right value among them
)

func (s *stem) item(id string, parts ...*el) *el {
	return tag("qti-assessment-item").with("xmlns", namespace, "identifier", id, "title", s.title,
		"adaptive", "false", "time-dependent", "false", "xml:lang", "en").add(parts...)
}

// ask is the statement, the figure, and the question with its unit.
func (s *stem) ask(question *el) *el {
	body := tag("qti-item-body")
	for _, line := range statement(s.lesson) {
		body.add(tag("p").add(s.prose(line)...))
	}
	scene := s.work.Opening()[0]
	body.add(tag("p").add(tag("img").with("src", s.figure, "alt", scene.Title+". "+scene.Desc)))
	return body.add(question)
}

// prose is a sentence with its symbols set as in a formula.
func (s *stem) prose(sentence string) (parts []*el) {
	for _, r := range site.Runs(s.lesson.Lesson, sentence) {
		piece := words(r.Text)
		if r.Italic {
			piece = tag("i").add(piece)
		}
		if r.Sub {
			piece = tag("sub").add(piece)
		}
		parts = append(parts, piece)
	}
	return parts
}

// question names the value, its unit and how finely it is asked.
func (s *stem) question() []*el {
	return s.prose(text.Say("export.question", "what", s.lesson.Sentence(s.q, "what"), "symbol", s.lesson.SymbolText(s.q.Name), "asked", s.work.Asked(s.q)))
}

func declare(base string, correct ...string) *el {
	values := tag("qti-correct-response")
	for _, v := range correct {
		values.add(tag("qti-value").say(v))
	}
	return tag("qti-response-declaration").with("identifier", "RESPONSE", "cardinality", "single", "base-type", base).add(values)
}

func outcome(id, base string) *el {
	return tag("qti-outcome-declaration").with("identifier", id, "cardinality", "single", "base-type", base)
}

func (s *stem) score() *el {
	return outcome("SCORE", "float").with("normal-maximum", s.worth).add(tag("qti-default-value").add(tag("qti-value").say("0")))
}

func variable() *el { return tag("qti-variable").with("identifier", "RESPONSE") }

func set(id string, to *el) *el {
	return tag("qti-set-outcome-value").with("identifier", id).add(to)
}

func float(v string) *el { return tag("qti-base-value").with("base-type", "float").say(v) }

// typed is the item where the value is typed.
func (s *stem) typed(id string) *el {
	right := number(s.q.True)
	within := tag("qti-or")
	for _, v := range s.accepted() {
		half := number(s.work.Band(s.q).Half)
		within.add(tag("qti-equal").with("tolerance-mode", "absolute", "tolerance", half+" "+half).add(float(number(v)), variable()))
	}
	return s.item(id, declare("float", right), s.score(),
		s.ask(tag("p").add(s.question()...).add(words(" "), tag("qti-text-entry-interaction").with("response-identifier", "RESPONSE", "expected-length", "12"))),
		tag("qti-response-processing").add(tag("qti-response-condition").add(
			tag("qti-response-if").add(within, set("SCORE", float(s.worth))))))
}

// accepted are the values round which an entry is right: the value, that of the
// other solution where there are two, and the same directions a turn away.
func (s *stem) accepted() []float64 {
	centres := []float64{s.work.Band(s.q).Centre}
	if !math.IsNaN(s.q.Also) {
		centres = append(centres, s.q.Also)
	}
	all := slices.Clone(centres)
	for _, v := range centres {
		if s.q.Turns {
			all = append(all, v+360, v-360)
		}
	}
	return all
}

// choice is a value to choose, and the mistake that gives it ("" for the right one).
type choice struct {
	shown, mistake string
	value          float64
}

// choices are the right value and those of the likeliest slips that differ from
// it and from each other as they are written, in order of value.
func (s *stem) choices() []choice {
	l, q, digits := s.lesson, s.q, s.work.Settings.Answer
	all := []choice{{shown: l.Show(q, q.True, digits), value: q.True}}
	wrong := l.WrongValues(q, s.work.Settings)
	slices.SortStableFunc(wrong, func(a, b tutor.WrongValue) int { return cmp.Compare(b.Weight, a.Weight) })
	for _, w := range wrong {
		c := choice{l.Show(q, w.Value, digits), l.SlipTitle(w.IDs[0]), w.Value}
		if !math.IsNaN(q.Also) && s.work.Band(q).Holds(q, w.Value-q.Also+q.True) {
			continue // the other solution
		}
		if !slices.ContainsFunc(all, func(o choice) bool { return o.shown == c.shown || o.mistake == c.mistake }) {
			all = append(all, c)
		}
		if len(all) == mostChoices {
			break
		}
	}
	slices.SortFunc(all, func(a, b choice) int { return cmp.Compare(a.value, b.value) })
	return all
}

// chosen is the item where the value is chosen.
func (s *stem) chosen(id string, choices []choice) *el {
	pick := tag("qti-choice-interaction").with("response-identifier", "RESPONSE", "max-choices", "1", "shuffle", "false").
		add(tag("qti-prompt").add(s.question()...))
	right := ""
	var feedback []*el
	for i, c := range choices {
		name := "choice-" + itoa(i+1)
		if c.mistake == "" {
			right = name
		} else {
			feedback = append(feedback, tag("qti-modal-feedback").with("outcome-identifier", "FEEDBACK", "identifier", name, "show-hide", "show").
				add(tag("qti-content-body").add(tag("p").say(text.Say("export.mistake", "mistake", c.mistake)))))
		}
		pick.add(tag("qti-simple-choice").with("identifier", name).say(c.shown))
	}
	processing := tag("qti-response-processing").add(
		tag("qti-response-condition").add(tag("qti-response-if").add(
			tag("qti-match").add(variable(), tag("qti-correct").with("identifier", "RESPONSE")), set("SCORE", float(s.worth)))),
		set("FEEDBACK", variable()))
	return s.item(id, append([]*el{declare("identifier", right), s.score(), outcome("FEEDBACK", "identifier"), s.ask(pick), processing}, feedback...)...)
}

// number is v with as many digits as an item holds.
func number(v float64) string { return strconv.FormatFloat(v, 'g', places, 64) }

func itoa(n int) string { return strconv.Itoa(n) }
