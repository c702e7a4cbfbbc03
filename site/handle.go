package site

import (
	"slices"
	"strings"

	"closingside/site/html"
	"closingside/tutor"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

// here is the session of this engine: one engine serves one learner.
var here session

// Handle answers one request; see the package comment for both forms.
func Handle(req []byte) []byte {
	first, rest, _ := strings.Cut(string(req), "\n")
	return here.handle(ReadForm(first), rest).Render(nil)
}

func (s *session) handle(f Form, log string) html.Nodes {
	switch f.Get("do") {
	case "read":
		return s.read(f)
	case "ahead":
		return s.ahead()
	case "bring":
		return bring(f, log)
	case "deal":
		return append(s.deal(f), s.dealt()...)
	}
	return append(s.act(f, log), s.dealt()...)
}

// act answers what the log keeps, and the start.
func (s *session) act(f Form, log string) html.Nodes {
	switch do := f.Get("do"); {
	case do == "start":
		return s.start(f, log)
	case do == "again": // everything is shown anew
		if d := s.desk(f); d != nil {
			s.turnTo(d)
			d.take(f)
		}
	case slices.Contains(works, do):
		if d := s.desk(f); d != nil {
			s.turnTo(d)
			return d.answer(f)
		}
	default:
		s.move(f)
	}
	return html.Nodes{s.screen(), say(join(s.lost, s.refused), "title"), s.drew(f)}
}

// start replays the log and shows where it ends, or the problem of the address.
func (s *session) start(f Form, log string) html.Nodes {
	*s = session{}
	var lines []Form
	for line := range strings.SplitSeq(log, "\n") {
		if line != "" {
			lines = append(lines, ReadForm(line))
		}
	}
	s.learn(lines)
	s.stock(f.Get("sets"))
	for _, f := range lines {
		s.replay(f)
	}
	s.lost = "" // what a link of days ago, or a damaged line, had to be told
	if code := f.Get("hash"); code != "" && code != s.current {
		s.open(code)
	}
	return html.Nodes{s.screen()}
}

// read shows how an entry is read so far, without judging it.
func (s *session) read(f Form) html.Nodes {
	d := s.desk(f)
	if d == nil {
		return nil
	}
	s.turnTo(d)
	q := d.lesson.Quantity(f.Get("quantity"))
	if q == nil || q.Given {
		return nil
	}
	return html.Nodes{d.reading(q, f.Get("entry"))}
}

// answer does what is asked on a desk and sends back the parts that changed.
func (d *desk) answer(f Form) html.Nodes {
	d.answering = true
	defer func() { d.answering = false }()
	before := d.states()
	reply, judged := d.take(f)
	parts := d.changedCards(before, f.Get("quantity"))
	said, focus := d.heard(f, &reply, judged)
	parts = append(parts, d.figure(), d.next(), d.end(), d.solution(), d.tools(), d.keys(), say(said, focus))
	if f.Get("do") == "sketch" {
		reply, judged = d.asked.outcome()
	}
	if judged {
		parts = append(parts, outcome(d, reply))
	}
	if do := f.Get("do"); do == "enter" || do == "undo" {
		parts = append(parts, d.judgedAnew()...)
	}
	return parts
}

// changedCards are the cards of what a request was about, of what is open, and of
// what stands otherwise than before.
func (d *desk) changedCards(before map[string]string, quantity string) (cards html.Nodes) {
	changed := map[string]bool{quantity: true, d.open: true}
	for _, name := range d.work.Changed() {
		changed[name] = true
	}
	for name, state := range d.states() {
		changed[name] = changed[name] || before[name] != state
	}
	for i := range d.lesson.Quantities {
		if q := &d.lesson.Quantities[i]; changed[q.Name] && d.offered(q) {
			cards = append(cards, d.card(q))
		}
	}
	return cards
}

// heard is what a screen reader says of a request that was taken, and the id of
// what is in use then; "" where that stays as it is.
func (d *desk) heard(f Form, reply *tutor.Reply, judged bool) (said, focus string) {
	switch f.Get("do") {
	case "enter":
		said = join(d.lesson.Heading(reply)+". "+reply.Feedback, d.judgedAgain())
		if judged && reply.Verdict == verdict.Correct {
			focus = "done"
			if next := d.lesson.Quantity(d.work.Next()); next != nil {
				focus = "entry-" + next.Name
				said += " " + d.nextWords(next)
			}
		}
	case "hint":
		said = d.hintWords(f.Get("quantity"))
	case "undo":
		said = join(text.Say("page.undone"), d.judgedAgain())
		if d.open == "" {
			said = text.Say("page.nothing")
		} else if d.work.Latest() == nil { // its button is gone
			focus = "entry-" + d.open
		}
	case "answer":
		if judged {
			said, focus = reply.Feedback, "entry-"+reply.Quantity
		}
	case "stand", "withdraw":
		said, focus = d.standHeard(f.Get("quantity"))
	case "sketch":
		said, focus = d.sketchHeard(f)
	case "solution":
		if d.solved {
			said, focus = text.Say("page.solved"), "solved"
		}
	}
	return said, focus
}

// judgedAnew is what the log keeps of entries that another one gave another verdict.
func (d *desk) judgedAnew() (parts html.Nodes) {
	for _, name := range d.work.Changed() {
		if a := d.work.Standing(name); a != nil {
			parts = append(parts, outcome(d, a.Reply))
		}
	}
	return parts
}

// join is two things said one after the other; the second may be nothing.
func join(a, b string) string { return strings.TrimSpace(a + " " + b) }

// say is what is announced, and the id of what is in use from now on; "" where
// that stays as it is.
func say(s, focus string) html.Node {
	parts := []html.Part{html.ID("say"), html.Class("heard"), html.A("role", "status"), html.Text(s)}
	if focus != "" {
		parts = append(parts, html.Data("focus", focus))
	}
	return html.El("p", parts...)
}

// outcome is what the log keeps of a verdict.
func outcome(d *desk, r tutor.Reply) html.Node {
	ids := ""
	for _, s := range r.Slips {
		if ids != "" {
			ids += " "
		}
		ids += strings.Join(s.IDs, "=")
	}
	line := Form{{"do", "outcome"}, {"v", "1"}, {"problem", d.code}, {"quantity", r.Quantity}, {"verdict", r.Verdict.String()}, {"slips", ids}}
	if a := d.work.Standing(r.Quantity); a != nil && a.Reason != "" {
		line = append(line, Field{"stands", a.Reason})
	}
	return logLine(line)
}

// drew is what the log keeps of a request to draw a problem: which one it was.
func (s *session) drew(f Form) html.Node {
	if f.Get("do") != "draw" || s.desks[s.current] == nil {
		return html.Node{}
	}
	return logLine(Form{{"do", "outcome"}, {"v", "1"}, {"problem", s.current}, {"drew", f.Line()}})
}

// logLine is a line for the log.
func logLine(line Form) html.Node {
	return html.El("data", html.ID("log"), html.A("value", line.Line()))
}
