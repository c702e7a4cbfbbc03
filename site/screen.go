package site

import (
	"strings"

	"closingside/site/html"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// screen is the whole of <main> as the session stands.
func (s *session) screen() html.Node {
	if d := s.desks[s.current]; d != nil {
		s.turnTo(d)
		return d.screen()
	}
	if v := s.sets[s.current]; v != nil {
		return s.setScreen(v)
	}
	return s.home()
}

func button(label, class string, extra ...html.Part) html.Node {
	parts := append([]html.Part{html.Class(class)}, extra...)
	return html.El("button", append(parts, html.Text(label))...)
}

// act is a form of one button: it asks for something to be done.
func act(do, label, class string, fields ...html.Node) html.Node {
	parts := []html.Part{html.Hidden("do", do)}
	for _, f := range fields {
		parts = append(parts, f)
	}
	return html.El("form", append(parts, button(label, class))...)
}

// home is the list of problems.
func (s *session) home() html.Node {
	parts := []html.Part{html.ID("main"), html.A("tabindex", "-1"), html.Data("hash", ""),
		html.El("h1", html.ID("title"), html.A("tabindex", "-1"), html.Text(text.Say("page.home.title")))}
	if s.lost != "" {
		parts = append(parts, html.El("p", html.Class("notice"), html.A("role", "alert"), html.Data("focus", "title"), html.Text(s.lost)))
	}
	if going := s.going(); len(going) > 0 {
		parts = append(parts, html.El("section", html.Class("sheet going"), html.A("aria-labelledby", "going"),
			html.El("h2", html.ID("going"), html.Class("label"), html.Text(text.Say("page.home.going"))), s.choices(going)))
	}
	parts = append(parts, s.shelfOf())
	parts = append(parts, html.El("p", html.Class("label"), html.Text(text.Say("page.home.kinds"))))
	for i, k := range kinds.All {
		parts = append(parts, s.kind(k, i+1, s.unfolded(k, i, s.last())))
	}
	return html.El("main", parts...)
}

// last is the desk opened last, or nil.
func (s *session) last() *desk {
	if n := len(s.order); n > 0 {
		return s.desks[s.order[n-1]]
	}
	return nil
}

// unfinished is the latest desk whose answers are not all found, or nil.
func (s *session) unfinished() *desk {
	for i := len(s.order) - 1; i >= 0; i-- {
		if d := s.desks[s.order[i]]; d != nil {
			if _, done := s.howFar(d); !done {
				return d
			}
		}
	}
	return nil
}

// mostGoing is how many problems the home screen offers to go on with.
const mostGoing = 4

// going are the problems to go on with: the one worked on last, and before it
// those begun that are in no list where they are marked.
func (s *session) going() (problems []*lesson.Problem) {
	latest := s.unfinished()
	for i := len(s.order) - 1; i >= 0 && len(problems) < mostGoing; i-- {
		d := s.desks[s.order[i]]
		if d == nil || d != latest && (d.of != nil || d.lesson.Kind.InBank(d.lesson.Problem.Code())) {
			continue
		}
		if begun, done := s.howFar(d); d == latest || begun && !done {
			problems = append(problems, d.lesson.Problem)
		}
	}
	return problems
}

// unfolded tells which kind is open on the home screen: the one a form was
// filled in for, the one worked on last, or the first.
func (s *session) unfolded(k *lesson.Kind, i int, last *desk) bool {
	switch {
	case s.draft != nil:
		return s.draft.Get("kind") == k.Name
	case last != nil:
		return last.lesson.Kind == k
	}
	return i == 0
}

// kind is one kind of problem on the home screen: numbered, folded to its
// title and what it is about.
func (s *session) kind(k *lesson.Kind, n int, open bool) html.Node {
	parts := []html.Part{html.Class("kind"), html.ID("kind-" + k.Name),
		html.El("summary", html.El("span", html.Class("number"), html.A("aria-hidden", "true"), html.Text(itoa(n))),
			html.El("h2", html.Text(k.Title())), html.El("span", html.Class("soft"), html.Text(text.Say(k.Name+".about"))), s.progress(k)),
		html.El("p", html.Class("practises"), html.Text(text.Say("page.home.practises", "what", text.Say(k.Name+".practises")))),
		html.El("div", html.Class("starts"), act("draw", text.Say("page.home.draw"), "draw", html.Hidden("kind", k.Name)), s.ownForm(k)),
		html.El("h3", html.Class("label"), html.Text(text.Say("page.home.choose"))),
		s.choices(k.BankProblems())}
	if open {
		parts = append(parts, html.Flag("open"))
	}
	return html.El("details", parts...)
}

// progress is how far a learner has come with a kind: how many of its harbour
// problems are done. Nothing where none was begun.
func (s *session) progress(k *lesson.Kind) html.Node {
	words := s.howMany(k.BankProblems())
	return html.If(words != "", html.El("span", html.Class("progress"), html.Text(words)))
}

// howMany tells how many problems of a list are done; "" where none was begun.
func (s *session) howMany(problems []*lesson.Problem) string {
	begun, done := false, 0
	for _, p := range problems {
		d := s.desks[p.Code()]
		if d == nil {
			continue
		}
		started, finished := s.howFar(d)
		begun = begun || started
		if finished {
			done++
		}
	}
	switch {
	case done > 0:
		return text.Say("page.home.done", "done", itoa(done), "all", itoa(len(problems)))
	case begun:
		return text.Say("page.state.begun")
	}
	return ""
}

func (s *session) choices(problems []*lesson.Problem) html.Node {
	items := []html.Part{html.Class("choices")}
	for _, p := range problems {
		code := p.Code()
		mark := ""
		if d := s.desks[code]; d != nil {
			switch begun, done := s.howFar(d); {
			case done:
				mark = text.Say("page.state.done")
			case begun:
				mark = text.Say("page.state.begun")
			}
			if !p.Kind.InBank(code) { // others may have its story
				mark = strings.TrimPrefix(mark+" · "+d.lesson.Given()[0], " · ")
			}
		}
		items = append(items, html.El("li", html.El("form", html.Hidden("do", "open"), html.Hidden("problem", code),
			html.El("button", html.El("span", html.Text(p.Title())),
				html.If(mark != "", html.El("span", html.Class("soft"), html.Text(" "+mark)))))))
	}
	return html.El("ul", items...)
}
