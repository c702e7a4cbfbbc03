package site

import (
	"maps"
	"slices"
	"strings"

	"closingside/site/html"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
	"closingside/tutor/text"
)

// setView is a set as it was opened: for everyone, or for one student. Its
// problems are drawn when they are first looked at.
type setView struct {
	code    string
	set     *sets.Set
	student string
	drawn   []sets.Drawn
	told    bool // the log tells what was drawn
	tasks   []sets.Task
	wrong   string // why there are no tasks
}

// look is the problems, drawn where they are not.
func (v *setView) look() []sets.Task { return v.draw(v.set.WishCount()) }

// draw draws so many more problems, and is all of them where all are drawn. A
// set whose students have variants has none before the student is known.
func (v *setView) draw(n int) []sets.Task {
	if v.tasks != nil || v.wrong != "" || v.set.Personal() && v.student == "" {
		return v.tasks
	}
	for ; n > 0 && len(v.drawn) < v.set.WishCount(); n-- {
		d, err := v.set.Draw(v.student, len(v.drawn))
		if err != nil {
			v.wrong = err.Error()
			return nil
		}
		v.drawn = append(v.drawn, d)
	}
	if variant, err := v.set.Deal(v.student, v.drawn); err == nil {
		v.tasks = variant.Tasks
	}
	return v.tasks
}

// recall takes from the log which problems were drawn; drawing twenty anew
// whenever the page is opened would take a phone seconds.
func (v *setView) recall(codes []string) {
	var drawn []sets.Drawn
	for _, code := range codes {
		l, err := openCode(code)
		if err != nil {
			return
		}
		drawn = append(drawn, sets.Drawn{Problem: l.Problem})
	}
	if variant, err := v.set.Deal(v.student, drawn); err == nil {
		v.drawn, v.tasks, v.told = drawn, variant.Tasks, true
	}
}

// dealt is what the log keeps of sets that were drawn since it was last told.
func (s *session) dealt() (lines html.Nodes) {
	for _, code := range slices.Sorted(maps.Keys(s.sets)) {
		v := s.sets[code]
		if v.told || v.tasks == nil || len(v.drawn) == 0 {
			continue
		}
		v.told = true
		var codes []string
		for _, d := range v.drawn {
			codes = append(codes, d.Problem.Code())
		}
		lines = append(lines, logLine(Form{{"do", "outcome"}, {"v", "1"}, {"set", code}, {"dealt", strings.Join(codes, " ")}}))
	}
	return lines
}

// deal draws a few problems of a set that is on the screen, and shows how far
// that is, or the set.
func (s *session) deal(f Form) html.Nodes {
	v := s.sets[f.Get("set")]
	if v == nil || v.code != s.current {
		return nil
	}
	if v.draw(atOnce) == nil && v.wrong == "" {
		return html.Nodes{v.drawing()}
	}
	return html.Nodes{s.screen()}
}

// atOnce is how many problems are drawn at one go: a slowed phone takes a tenth
// of a second for each.
const atOnce = 3

// drawing shows how far drawing is; the page asks for more as long as it stands there.
func (v *setView) drawing() html.Node {
	n, all := len(v.drawn), v.set.WishCount()
	return html.El("section", html.ID("drawing"), html.Class("sheet"), html.Data("set", v.code), html.A("aria-labelledby", "drawn"),
		html.El("h2", html.ID("drawn"), html.Text(text.Say("set.drawing", "n", itoa(n), "all", itoa(all)))),
		html.El("progress", html.A("max", itoa(all)), html.A("value", itoa(n)), html.A("aria-labelledby", "drawn")))
}

// setOf is the set of a code, opened before or now; nil where there is none.
func (s *session) setOf(code string) (*setView, error) {
	if v := s.sets[code]; v != nil {
		return v, nil
	}
	set, student, err := sets.Decode(code)
	if err != nil {
		return nil, err
	}
	if s.sets == nil {
		s.sets = map[string]*setView{}
	}
	v := &setView{code: code, set: set, student: student}
	if codes, told := s.deals[code]; told {
		v.recall(strings.Fields(codes))
	}
	s.sets[code] = v
	return v, nil
}

// openSet puts the set of a code on the screen; false where there is none.
func (s *session) openSet(code string) bool {
	v, err := s.setOf(code)
	if err != nil {
		s.lost, s.current = err.Error(), ""
		return false
	}
	s.current, s.lost, s.refused = code, "", ""
	s.shelve(v)
	return true
}

// shelve keeps a set in the list of the home screen: the variant in use in the
// place of the set it comes from.
func (s *session) shelve(v *setView) {
	base := v.set.Code("")
	for i, code := range s.shelf {
		if o := s.sets[code]; code == v.code || o != nil && o.set.Code("") == base {
			if v.student != "" || o.student == "" {
				s.shelf[i] = v.code
			}
			return
		}
	}
	s.shelf = append(s.shelf, v.code)
}

// stock puts the sets that were published with the page on the shelf.
func (s *session) stock(codes string) {
	for _, code := range strings.Fields(codes) {
		if v, err := s.setOf(code); err == nil {
			s.shelve(v)
		}
	}
}

// personal opens a student's own variant of a set.
func (s *session) personal(f Form) {
	if !s.openSet(f.Get("set")) {
		return
	}
	if sets.FoldStudent(f.Get("student")) == "" {
		s.refused = text.Say("set.who.empty")
		return
	}
	if err := sets.CheckStudent(f.Get("student")); err != nil {
		s.refused = err.Error()
		return
	}
	s.openSet(s.sets[s.current].set.Code(f.Get("student")))
}

// within notes that the problem on the screen was opened from a set.
func (s *session) within(code string) {
	d := s.desks[s.current]
	if d == nil || code == "" {
		return
	}
	if v, err := s.setOf(code); err == nil {
		d.of = v
	}
}

// shelfOf is the section of the home screen that lists the sets.
func (s *session) shelfOf() html.Node {
	if len(s.shelf) == 0 {
		return html.Node{}
	}
	items := []html.Part{html.Class("choices tasks")}
	for _, code := range s.shelf {
		v := s.sets[code]
		about := counted("set.problem", v.set.Size()) + ", " + counted("set.mark", v.set.Marks())
		if v.student != "" {
			about += " · " + v.student
		}
		if far := s.howMany(v.problems()); far != "" {
			about += " · " + far
		}
		items = append(items, choice(v.set.Title, about, html.Hidden("problem", code)))
	}
	return html.El("section", html.Class("sheet"), html.A("aria-labelledby", "sets"),
		html.El("h2", html.ID("sets"), html.Text(text.Say("set.home"))), html.El("ul", items...))
}

// problems are those of a set that is drawn whole; none is drawn for it.
func (v *setView) problems() (all []*lesson.Problem) {
	for _, task := range v.draw(0) {
		all = append(all, task.Problem)
	}
	return all
}

// choice is one line of a list of things to open.
func choice(label, about string, fields ...html.Part) html.Node {
	form := append([]html.Part{html.Hidden("do", "open")}, fields...)
	return html.El("li", html.El("form", append(form, html.El("button", html.El("span", html.Text(label)),
		html.If(about != "", html.El("span", html.Class("soft"), html.Text(about)))))...))
}

// counted is a count of things in words: key.one for one, key.many for others.
func counted(key string, n int) string {
	if n == 1 {
		return text.Say(key + ".one")
	}
	return text.Say(key+".many", "n", itoa(n))
}

// setScreen is a set: what the instructor says of it, how far the learner is,
// and its problems in order.
func (s *session) setScreen(v *setView) html.Node {
	focus := "title"
	if s.refused != "" {
		focus = "student"
	}
	parts := []html.Part{html.ID("main"), html.A("tabindex", "-1"), html.Data("hash", v.code), html.Data("focus", focus),
		html.El("nav", act("home", "← "+text.Say("page.home.back"), "plain")),
		html.El("h1", html.ID("title"), html.A("tabindex", "-1"), html.Text(v.set.Title)),
		html.If(v.set.Note != "", html.El("p", html.Text(v.set.Note)))}
	tasks := v.draw(atOnce)
	switch {
	case v.wrong != "":
		parts = append(parts, html.El("p", html.Class("notice"), html.A("role", "alert"), html.Text(v.wrong)))
	case v.set.Personal() && v.student == "":
		parts = append(parts, s.whoForm(v))
	case tasks == nil:
		parts = append(parts, v.drawing())
	default:
		parts = append(parts, s.taskList(v, tasks))
	}
	if v.student != "" {
		parts = append(parts, html.El("details", html.El("summary", html.Text(text.Say("set.whose", "student", v.student))), s.whoForm(v)))
	}
	return html.El("main", parts...)
}

// whoForm asks for the student's number.
func (s *session) whoForm(v *setView) html.Node {
	field := []html.Part{html.ID("student"), html.A("name", "student"), html.A("autocomplete", "off"), html.A("autocapitalize", "off"),
		html.A("spellcheck", "false"), html.A("aria-describedby", "student-how")}
	why := html.Node{}
	if s.refused != "" {
		field = append(field, html.A("aria-invalid", "true"))
		why = html.El("p", html.Class("notice"), html.A("role", "alert"), html.Text(s.refused))
	}
	return html.El("form", html.Class("sheet"), html.Hidden("do", "personal"), html.Hidden("set", v.set.Code("")),
		html.El("p", html.ID("student-how"), html.Text(text.Say("set.who.how"))),
		html.El("label", html.A("for", "student"), html.Text(text.Say("set.who"))),
		html.El("input", field...), why, button(text.Say("set.who.go"), "primary"))
}

func (s *session) taskList(v *setView, tasks []sets.Task) html.Node {
	items := []html.Part{html.Class("choices tasks")}
	done, earned, next := 0, 0.0, -1
	for i, task := range tasks {
		about := counted("set.mark", task.Marks)
		code := task.Problem.Code()
		begun, finished := false, false
		if d := s.desks[code]; d != nil {
			begun, finished = s.howFar(d)
		}
		if begun {
			got := s.earned(v.set, task, finished)
			earned += got
			about = text.Say("set.earned", "earned", expr.FormatNumber(got, 3), "marks", counted("set.mark", task.Marks))
			if finished {
				done++
				about += " · " + text.Say("page.state.done")
			} else {
				about += " · " + text.Say("page.state.begun")
			}
		}
		if next < 0 && !finished {
			next = i
		}
		items = append(items, choice(itoa(task.Number)+". "+task.Problem.Title(), about, v.fields(task)...))
	}
	progress := text.Say("set.progress", "done", itoa(done), "problems", itoa(len(tasks)),
		"earned", expr.FormatNumber(earned, 3), "marks", itoa(v.set.Marks()))
	parts := []html.Part{html.Class("sheet"), html.A("aria-labelledby", "progress"),
		html.El("h2", html.ID("progress"), html.Text(progress)),
		html.El("progress", html.A("max", itoa(len(tasks))), html.A("value", itoa(done)), html.A("aria-labelledby", "progress")),
		html.El("ol", items...)}
	if next >= 0 {
		fields := append([]html.Part{html.Hidden("do", "open")}, v.fields(tasks[next])...)
		parts = append(parts, html.El("form", append(fields, button(text.Say("set.go", "n", itoa(next+1)), "primary"))...))
	}
	parts = append(parts, html.If(done > 0 || earned > 0, handIn()))
	return html.El("section", parts...)
}

// handIn offers the learner's log as a file, for an instructor who wants it.
func handIn() html.Node {
	return html.El("div", html.El("p", html.Class("soft"), html.Text(text.Say("set.hand-in"))),
		button(text.Say("set.hand-in.go"), "plain", html.A("type", "button"), html.Data("page", "export")))
}

// earned is what the work on a problem of a set earned: all marks where every
// answer was found.
func (s *session) earned(set *sets.Set, task sets.Task, done bool) float64 {
	if done {
		return float64(task.Marks)
	}
	return set.Earned(s.work(s.desks[task.Problem.Code()]), task.Marks)
}

// fields say which problem of which set is opened.
func (v *setView) fields(task sets.Task) []html.Part {
	return []html.Part{html.Hidden("problem", task.Problem.Code()), html.Hidden("set", v.code)}
}

// back leads to the list that the problem was opened from.
func (d *desk) back() html.Node {
	if d.of == nil {
		return html.El("nav", act("home", "← "+text.Say("page.home.back"), "plain"))
	}
	return html.El("nav", act("open", "← "+d.of.set.Title, "plain", html.Hidden("problem", d.of.code)))
}

// onward leads to the next problem of the set, or to the set after its last.
func (d *desk) onward() html.Node {
	if d.of == nil {
		return html.Node{}
	}
	tasks := d.of.look()
	i := slices.IndexFunc(tasks, func(t sets.Task) bool { return t.Problem.Code() == d.code })
	if i < 0 || i == len(tasks)-1 {
		return act("open", text.Say("set.back", "set", d.of.set.Title), "primary", html.Hidden("problem", d.of.code))
	}
	form := append([]html.Part{html.Hidden("do", "open")}, d.of.fields(tasks[i+1])...)
	return html.El("form", append(form, button(text.Say("set.go", "n", itoa(i+2)), "primary"))...)
}
