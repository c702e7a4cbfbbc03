package site

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/site/html"
	"closingside/statics/expr"
	"closingside/tutor/figure"
	"closingside/tutor/sketch"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

// sketchRoom is the room for a sketch on a phone held upright.
var sketchRoom = figure.Size{Width: 358, Height: 330}

// layout draws the sketch; more forces get more room.
func layout(s *sketch.Sketch) figure.Drawing {
	size := sketchRoom
	size.Height += 25 * float64(len(s.Plan.Forces)-2)
	return figure.Layout(s.Scene(), size)
}

// sketching tells whether the sketch stands in the figure's place.
func (d *desk) sketching() bool { return d.work.Sketch().IsOpen() }

// sketch is the sketch with its controls, in the figure's place.
func (d *desk) sketch() html.Node {
	s := d.work.Sketch()
	stage := s.Stage()
	step := [...]string{sketch.Arranging: "arrange", sketch.Closing: "close", sketch.Estimating: "estimate"}[stage]
	parts := []html.Part{html.ID("figure"), html.Class("fig sketch"), html.Data("stage", step), html.A("aria-labelledby", "sketch-title"),
		html.El("h2", html.ID("sketch-title"), html.A("tabindex", "-1"), html.Text(text.Say("sketch.title"))),
		html.El("p", html.ID("sketch-step"), html.A("tabindex", "-1"), html.Class("step"),
			html.El("span", html.Class("count"), html.Text(itoa(int(stage)+1)+"/3")), html.Text(" "+text.Say("sketch.step."+step)))}
	if stage == sketch.Estimating {
		parts = append(parts, d.board(s), d.sketchSaid(s), d.estimates(s))
	} else {
		parts = append(parts, d.dragForm(s), d.sketchSaid(s), d.choose(s))
	}
	row := []html.Part{html.Class("tools")}
	if s.CanUndo() {
		row = append(row, d.sketchButton("undo", "sketch.undo"))
	}
	if stage == sketch.Estimating {
		row = append(row, d.sketchButton("pass", "sketch.pass"))
	} else {
		row = append(row, d.sketchButton("skip", "sketch.skip"))
	}
	return html.El("section", append(parts, html.El("div", row...))...)
}

func (d *desk) sketchButton(do, key string) html.Node {
	return html.El("form", html.Hidden("do", "sketch"), html.Hidden("act", do), html.Hidden("problem", d.code),
		button(text.Say(key), "plain", html.ID("sketch-"+do)))
}

// sketchSaid is what was said of the last act.
func (d *desk) sketchSaid(s *sketch.Sketch) html.Node {
	said := s.Said()
	if said.Feedback == "" || said.Verdict == verdict.Unreadable {
		return html.Node{}
	}
	if s.Stage() == sketch.Estimating && len(d.tried(s)) > 0 {
		return html.Node{}
	}
	return html.El("p", html.ID("sketch-said"), html.Data("verdict", said.Verdict.String()),
		html.El("b", html.Text(text.Say("verdict."+said.Verdict.String())+". ")), d.prose(said.Feedback))
}

func (d *desk) tried(s *sketch.Sketch) (all []sketch.EstimateReply) {
	for _, q := range s.Wanted() {
		if r, ok := s.Tried(q.Name); ok {
			all = append(all, r)
		}
	}
	return all
}

// dragForm is the board one drags on: the script fills in from where to where,
// in the drawing's own coordinates, and what was held.
func (d *desk) dragForm(s *sketch.Sketch) html.Node {
	draw := s.Stage() == sketch.Closing
	tool := func(value, key string, on bool) html.Node {
		input := []html.Part{html.A("type", "radio"), html.A("name", "tool"), html.A("value", value), html.ID("tool-" + value)}
		if on {
			input = append(input, html.Flag("checked"))
		}
		return html.El("label", html.Class("tool"), html.El("input", input...), html.El("span", html.Text(text.Say(key))))
	}
	parts := []html.Part{html.Data("drag", ""), html.Hidden("do", "sketch"), html.Hidden("act", "drag"), html.Hidden("problem", d.code)}
	drawing := layout(s)
	parts = append(parts, html.Hidden("view", view{drawing.Origin, drawing.Scale}.String()))
	for _, name := range []string{"held", "x0", "y0", "x1", "y1"} {
		parts = append(parts, html.Hidden(name, ""))
	}
	parts = append(parts, html.El("div", html.Class("toolbox"), html.A("role", "radiogroup"), html.A("aria-label", text.Say("sketch.tool")),
		tool("move", "sketch.tool.move", !draw), tool("draw", "sketch.tool.draw", draw)),
		d.boardOf(s, drawing, true))
	return html.El("form", parts...)
}

// board is the sketch to look at.
func (d *desk) board(s *sketch.Sketch) html.Node {
	return d.boardOf(s, layout(s), false)
}

func (d *desk) boardOf(s *sketch.Sketch, drawing figure.Drawing, live bool) html.Node {
	if !live {
		return SVG("fig", drawing)
	}
	return svg("fig", drawing, look{class: "f-figure f-board", role: "group"}, append(append(d.grips(s, drawing), d.corners(s, drawing)...),
		html.El("line", html.Class("f-band"), html.A("x1", "0"), html.A("y1", "0"), html.A("x2", "0"), html.A("y2", "0"))))
}

func pair(p figure.Point) string { return px(p.X) + " " + px(p.Y) }

// grips are what one takes hold of to move an arrow: broad, unseen lines, the
// longest lowest.
func (d *desk) grips(s *sketch.Sketch, drawing figure.Drawing) html.Nodes {
	laid := s.Laid()
	slices.SortStableFunc(laid, func(a, b figure.Laid) int {
		return int(math.Copysign(1, r2.Norm2(b.Vec)-r2.Norm2(a.Vec)))
	})
	var all html.Nodes
	for _, l := range laid {
		tail, head := drawing.FromWorld(l.Tail), drawing.FromWorld(l.Head())
		all = append(all, html.El("circle", html.Class("f-knob"), html.Data("name", l.Name),
			html.A("cx", px(0.45*tail.X+0.55*head.X)), html.A("cy", px(0.45*tail.Y+0.55*head.Y)), html.A("r", "5")),
		)
		all = append(all, html.El("line", html.ID("grip-"+l.Name), html.Class("f-grip"), html.Data("grip", l.Name), html.Data("ends", pair(tail)+" "+pair(head)),
			html.A("tabindex", "0"), html.A("role", "button"), html.A("aria-label", text.Say("sketch.grip", "force", d.symbol(l.Name))),
			html.A("x1", px(tail.X)), html.A("y1", px(tail.Y)), html.A("x2", px(head.X)), html.A("y2", px(head.Y))))
	}
	return all
}

// corners are where the closing side may begin and end.
func (d *desk) corners(s *sketch.Sketch, drawing figure.Drawing) html.Nodes {
	at, ends := s.Corners()
	var all html.Nodes
	for i, p := range at {
		q := drawing.FromWorld(p)
		all = append(all, html.El("circle", html.Class("f-ring"), html.A("cx", px(q.X)), html.A("cy", px(q.Y)), html.A("r", "8")),
			html.El("circle", html.ID("corner-"+itoa(i)), html.Class("f-corner"), html.Data("corner", pair(q)),
				html.A("tabindex", "0"), html.A("role", "button"), html.A("aria-label", text.Say("sketch.corner", "place", d.place(s, ends[i]))),
				html.A("cx", px(q.X)), html.A("cy", px(q.Y)), html.A("r", "22")))
	}
	return all
}

func (d *desk) symbol(name string) string { return expr.Plain(expr.S(name), d.lesson.Symbol) }

// place puts a corner into words by the ends that lie there.
func (d *desk) place(s *sketch.Sketch, ends []sketch.End) string {
	words := make([]string, len(ends))
	for i, e := range ends {
		words[i] = d.endWords(s, e)
	}
	return figure.Both(words)
}

func (d *desk) endWords(s *sketch.Sketch, e sketch.End) string {
	key := "sketch.tail"
	if e.Head {
		key = "sketch.head"
	}
	return text.Say(key, "force", d.symbol(s.Plan.Forces[e.Arrow].Name))
}

// choose does by choosing what dragging does.
func (d *desk) choose(s *sketch.Sketch) html.Node {
	var ends []sketch.End
	for i := range s.Plan.Forces {
		ends = append(ends, sketch.End{Arrow: i}, sketch.End{Arrow: i, Head: true})
	}
	pick := func(name, key string, chosen sketch.End) html.Node {
		options := []html.Part{html.A("name", name), html.ID("sketch-" + name)}
		for _, e := range ends {
			option := []html.Part{html.A("value", writeEnd(e)), html.Text(d.endWords(s, e))}
			if e == chosen {
				option = append(option, html.Flag("selected"))
			}
			options = append(options, html.El("option", option...))
		}
		return html.El("label", html.Text(text.Say(key)+" "), html.El("select", options...))
	}
	form := func(act, go_ string, fields ...html.Part) html.Node {
		parts := []html.Part{html.Class("choose"), html.Hidden("do", "sketch"), html.Hidden("act", act), html.Hidden("problem", d.code)}
		parts = append(parts, fields...)
		return html.El("form", append(parts, button(text.Say(go_), "", html.ID("sketch-"+act)))...)
	}
	parts := []html.Part{html.ID("sketch-choose"), html.El("summary", html.Text(text.Say("sketch.plain"))),
		form("put", "sketch.put.go", pick("end", "sketch.put", sketch.End{Arrow: 1}), pick("at", "sketch.at", sketch.End{})),
		form("close", "sketch.close.go", pick("from", "sketch.from", sketch.End{}), pick("to", "sketch.to", sketch.End{}))}
	if d.asked.chosen {
		parts = append(parts, html.Flag("open"))
	}
	return html.El("details", parts...)
}

// estimates asks for what the sketch lets one estimate.
func (d *desk) estimates(s *sketch.Sketch) html.Node {
	parts := []html.Part{html.Class("estimates"), html.Hidden("do", "sketch"), html.Hidden("act", "estimate"), html.Hidden("problem", d.code)}
	for _, q := range s.Wanted() {
		id := "estimate-" + q.Name
		label := text.Say("sketch.estimate.of", "symbol", d.symbol(q.Name))
		if _, ok := s.Estimated(q.Name); ok {
			parts = append(parts, html.El("p", html.Text(label+" "), html.El("b", html.Text(s.EstimateText(q.Name)))))
			continue
		}
		input := []html.Part{html.ID(id), html.A("name", "estimate."+q.Name), html.A("autocomplete", "off"), html.A("spellcheck", "false"), html.A("enterkeyhint", "next")}
		tried, ok := s.Tried(q.Name)
		if ok {
			input = append(input, html.A("value", tried.Entry), html.A("aria-describedby", id+"-said"))
		}
		parts = append(parts, html.El("label", html.A("for", id), html.Text(label+" ("+d.lesson.UnitOf(q).Symbol+")")), html.El("input", input...),
			html.If(ok && tried.Feedback != "", html.El("p", html.ID(id+"-said"), html.Data("verdict", tried.Verdict.String()), d.prose(tried.Feedback))))
	}
	return html.El("form", append(parts, button(text.Say("sketch.estimate.check"), "primary", html.ID("sketch-estimate")))...)
}
