package site

import (
	"closingside/site/html"
	"closingside/tutor/figure"
)

// room is the room for a figure on a phone held upright.
var room = figure.Size{Width: 358, Height: 300}

// figure shows the work so far: the last scene stays in view, the ones before
// it can be opened.
func (d *desk) figure() html.Node {
	if d.sketching() {
		return d.sketch()
	}
	parts := []html.Part{html.ID("figure"), html.Class("fig pin")}
	scenes := d.lesson.Kind.Scenes(d.work)
	last := len(scenes) - 1
	parts = append(parts, d.building(figure.Layout(scenes[last], room)))
	parts = append(parts, d.figureTools())
	return html.El("figure", parts...)
}
