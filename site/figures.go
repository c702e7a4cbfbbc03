package site

import (
	"closingside/site/html"
	"closingside/tutor/figure"
)

// rooms are the rooms for a figure: on a phone held upright, and on one whose
// keyboard is up, where the page shows the lower of the two. Both are narrower
// than most phones, so that letters are drawn at their size or larger.
var rooms = []struct {
	id, class string
	size      figure.Size
}{
	{"fig", "tall", figure.Size{Width: 330, Height: 250}},
	{"fig-low", "low", figure.Size{Width: 330, Height: 175, Text: 14}},
}

// situation is the picture of what a statement describes, where its kind has
// one.
func (d *desk) situation() html.Nodes {
	scene, ok := d.lesson.Situation()
	if !ok {
		return nil
	}
	return html.Nodes{html.El("figure", html.ID("situation"), html.Class("fig situation"), SVG("fig-situation", figure.Layout(scene, rooms[0].size)))}
}

// figure shows the work so far: the last scene stays in view, the ones before
// it can be opened.
func (d *desk) figure() html.Node {
	if d.sketching() {
		return d.sketch()
	}
	parts := []html.Part{html.ID("figure"), html.Class("fig pin")}
	scenes := d.work.Scenes()
	last := len(scenes) - 1
	parts = append(parts, d.building(scenes[last]))
	parts = append(parts, d.figureTools())
	return html.El("figure", parts...)
}
