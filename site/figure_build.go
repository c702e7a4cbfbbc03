package site

import (
	"closingside/site/html"
	"closingside/tutor/figure"
)

// seen is what the figure showed last, so that only what is new moves.
type seen struct {
	title  string
	labels map[string]bool
}

// building is the figure of a scene in every room, with what is new in it
// marked: a figure of another kind builds itself up, and a label that has
// changed comes forward.
func (d *desk) building(scene figure.Scene) html.Nodes {
	before := d.seen
	d.seen = seen{scene.Title, map[string]bool{}}
	var extra html.Attrs
	fresh := func(figure.Mark) bool { return false }
	switch {
	case !d.answering: // the whole screen is shown anew
	case before.title != scene.Title:
		extra = html.Attrs{html.Data("build", "")}
	default:
		fresh = func(m figure.Mark) bool { return m.Shape == figure.Text && !before.labels[m.Label.String()] }
	}
	var all html.Nodes
	for _, r := range rooms {
		drawing := figure.Layout(scene, r.size)
		for _, m := range drawing.Marks {
			if m.Shape == figure.Text {
				d.seen.labels[m.Label.String()] = true
			}
		}
		all = append(all, html.El("div", html.Class(r.class), svg(r.id, drawing, look{class: "f-figure", role: "img", fresh: fresh}, extra)))
	}
	return all
}
