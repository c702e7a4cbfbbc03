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

// building is the figure with what is new in it marked: a figure of another
// kind builds itself up, and a label that has changed comes forward.
func (d *desk) building(drawing figure.Drawing) html.Node {
	before := d.seen
	d.seen = seen{drawing.Title, map[string]bool{}}
	for _, m := range drawing.Marks {
		if m.Shape == figure.Text {
			d.seen.labels[m.Label.String()] = true
		}
	}
	var extra html.Attrs
	fresh := func(figure.Mark) bool { return false }
	switch {
	case before.title == "":
	case before.title != drawing.Title:
		extra = html.Attrs{html.Data("build", "")}
	default:
		fresh = func(m figure.Mark) bool { return m.Shape == figure.Text && !before.labels[m.Label.String()] }
	}
	return svg("fig", drawing, look{class: "f-figure", role: "img", fresh: fresh}, extra)
}
