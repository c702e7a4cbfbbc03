package site

import (
	"math"
	"strconv"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/site/html"
	"closingside/tutor"
	"closingside/tutor/figure"
	"closingside/tutor/sketch"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

// sketched is what came of the last request about the sketch.
type sketched struct {
	said   sketch.Reply
	judged bool
	before sketch.Stage
	chosen bool // by choosing instead of dragging
}

// outcome is what the log keeps of it.
func (a sketched) outcome() (tutor.Reply, bool) {
	r := tutor.Reply{Quantity: "sketch", Verdict: a.said.Verdict}
	if len(a.said.Slips) > 0 {
		r.Slips = []tutor.Suspect{{IDs: a.said.Slips, Probability: 1}}
	}
	return r, a.judged && a.said.Verdict != verdict.Unreadable
}

// sketchMet are the titles of the slips met on the sketch, if any.
func (d *desk) sketchMet() (titles []string) {
	if s := d.work.Sketch(); s != nil {
		for _, id := range s.Met() {
			titles = append(titles, text.Say("slip."+id+".title"))
		}
	}
	return titles
}

// setAside puts an unfinished sketch away: the learner calculates.
func (d *desk) setAside() {
	if s := d.work.Sketch(); s.IsOpen() {
		s.Aside = true
	}
}

// sketchAct does what a request asks of the sketch.
func (d *desk) sketchAct(f Form) (a sketched) {
	s := d.work.Sketch()
	if s == nil {
		return a
	}
	a.before = s.Stage()
	plain := func(key string) sketch.Reply {
		return sketch.Reply{Verdict: verdict.Unreadable, Feedback: text.Say(key)}
	}
	switch f.Get("act") {
	case "drag":
		a.said, a.judged = dragged(s, f)
	case "put":
		a.said, a.judged, a.chosen = s.Put(readEnd(f.Get("end")), readEnd(f.Get("at"))), true, true
	case "close":
		a.said, a.judged, a.chosen = s.Close(readEnd(f.Get("from")), readEnd(f.Get("to"))), true, true
	case "estimate":
		a.said, a.judged = d.estimated(s, f)
	case "undo":
		s.Undo()
		a.said = plain("sketch.undone")
	case "skip":
		s.Aside = true
		a.said = plain("sketch.skipped")
	case "back":
		s.Reopen()
	case "pass":
		s.Passed = true
	}
	return a
}

// dragged takes what was dragged over the drawing.
func dragged(s *sketch.Sketch, f Form) (said sketch.Reply, judged bool) {
	v, ok := readView(f.Get("view"))
	from, here := v.point(f, "0")
	to, there := v.point(f, "1")
	if !ok || !here || !there {
		return said, false
	}
	if f.Get("tool") == "draw" {
		return s.Draw(from, to), true
	}
	held := s.Arrow(f.Get("held"))
	if held < 0 {
		held = s.ArrowAt(from)
	}
	return s.Move(held, from, to), held >= 0
}

// estimated takes the estimates of a request.
func (d *desk) estimated(s *sketch.Sketch, f Form) (said sketch.Reply, judged bool) {
	entries := map[string]string{}
	for _, q := range s.Wanted() {
		entries[q.Name] = strings.TrimSpace(f.Get("estimate." + q.Name))
	}
	said.Verdict = verdict.Correct
	var words []string
	for _, r := range s.Estimate(entries) {
		words = append(words, d.symbol(r.Quantity)+": "+r.Feedback)
		if r.Verdict != verdict.Correct {
			said.Verdict = r.Verdict
		}
	}
	said.Feedback = strings.Join(words, " ")
	return said, len(words) > 0
}

// view is how a drawing's coordinates stand to the world's: it goes with the
// form, so that a line of the log means the same however figures are laid out
// later.
type view struct {
	origin figure.Point
	scale  float64
}

func (v view) String() string {
	f := func(x float64) string { return strconv.FormatFloat(x, 'g', 10, 64) }
	return f(v.origin.X) + " " + f(v.origin.Y) + " " + f(v.scale)
}

func readView(s string) (v view, ok bool) {
	parts := strings.Fields(s)
	if len(parts) != 3 {
		return v, false
	}
	x, a := number(parts[0])
	y, b := number(parts[1])
	k, c := number(parts[2])
	return view{figure.Point{X: x, Y: y}, k}, a && b && c && k > 0
}

// number reads a coordinate.
func number(s string) (float64, bool) {
	v, err := strconv.ParseFloat(s, 64)
	return v, err == nil && math.Abs(v) <= 1e12 && (v == 0 || math.Abs(v) >= 1e-12)
}

// point is the world point that a request's fields x0 and y0 (x1 and y1) name.
func (v view) point(f Form, which string) (r2.Vec, bool) {
	x, a := number(f.Get("x" + which))
	y, b := number(f.Get("y" + which))
	if !a || !b || v.scale <= 0 {
		return r2.Vec{}, false
	}
	return r2.Vec{X: (x - v.origin.X) / v.scale, Y: (v.origin.Y - y) / v.scale}, true
}

// An end of an arrow is written "t0" or "h0": tail or head, and its number.
func readEnd(s string) sketch.End {
	if len(s) != 2 || s[0] != 't' && s[0] != 'h' || s[1] < '0' || s[1] > '9' {
		return sketch.End{Arrow: -1}
	}
	return sketch.End{Arrow: int(s[1] - '0'), Head: s[0] == 'h'}
}

func writeEnd(e sketch.End) string {
	if e.Head {
		return "h" + itoa(e.Arrow)
	}
	return "t" + itoa(e.Arrow)
}

// figureTools stand beside the figure: what builds it up again, and the way
// back to the sketch.
func (d *desk) figureTools() html.Node {
	parts := []html.Part{html.Class("figtools"),
		iconButton("↻", text.Say("sketch.replay"), html.A("type", "button"), html.Data("page", "build"))}
	s := d.work.Sketch()
	if s != nil {
		label := text.Say("sketch.back")
		if s.Stage() > sketch.Arranging {
			label = text.Say("sketch.back.again")
		}
		parts = append(parts, html.El("form", html.Hidden("do", "sketch"), html.Hidden("act", "back"), html.Hidden("problem", d.code),
			iconButton("✎", label, html.ID("sketch-back"))))
	}
	return html.El("div", parts...)
}

// iconButton is a button that shows a sign. Its title is its name: beside a label
// the same words would be read out twice.
func iconButton(sign, name string, extra ...html.Part) html.Node {
	parts := append([]html.Part{html.Class("icon"), html.A("title", name)}, extra...)
	return html.El("button", append(parts, html.El("span", html.A("aria-hidden", "true"), html.Text(sign)))...)
}

// sketchNext stands in the place of the next step while the sketch, which says
// itself what to do, is open.
func (d *desk) sketchNext() html.Node {
	return html.El("p", html.ID("next"), html.Flag("hidden"))
}

// sketchHeard is what is announced after an act on the sketch, and what is in
// use from then on; "" where that stays as it is.
func (d *desk) sketchHeard(f Form) (words, focus string) {
	said, before := d.asked.said, d.asked.before
	words = said.Feedback
	if said.Verdict != verdict.Unreadable && words != "" {
		words = text.Say("verdict."+said.Verdict.String()) + ". " + words
	}
	s := d.work.Sketch()
	switch {
	case s == nil:
	case f.Get("act") == "back":
		focus = "sketch-title"
	case f.Get("act") == "skip": // the step itself would bring up a phone's keyboard
		focus = "sketch-back"
		if d.work.Next() != "" {
			focus = "next-find"
		}
	case s.Stage() == sketch.Finished:
		if next := d.lesson.Quantity(d.work.Next()); next != nil {
			focus = "entry-" + next.Name
			words += " " + d.nextWords(next)
		}
	case s.Stage() == sketch.Estimating:
		for _, q := range s.Wanted() {
			if _, ok := s.Estimated(q.Name); !ok {
				focus = "estimate-" + q.Name
				break
			}
		}
		if before != sketch.Estimating {
			words += " " + text.Say("sketch.step.estimate")
		}
	case s.Stage() != before:
		words += " " + text.Say([...]string{"sketch.step.arrange", "sketch.step.close"}[s.Stage()])
	}
	return words, focus
}
