package figure

import (
	"math"

	"closingside/tutor/text"

	"gonum.org/v1/gonum/spatial/r2"
)

// Laid is a force with the place of its tail on a sketch.
type Laid struct {
	Force
	Tail r2.Vec
}

// Head is the place of the force's head.
func (l Laid) Head() r2.Vec { return r2.Add(l.Tail, l.Vec) }

// Board shows forces where a learner has laid them, and the side the learner
// has drawn, or nil: with the class of a resultant where it is right, with the
// class of what a learner drew elsewhere. hold are the points to make room for.
func Board(forces []Laid, side *Arrow, hold []r2.Vec) Scene {
	s := Scene{Axes: []Axes{shortAxes()}, Hold: hold}
	for i, f := range forces {
		s.Arrows = append(s.Arrows, f.arrow(f.Tail, stepFirst+i))
	}
	if side != nil {
		side.Step = stepFirst + len(forces)
		s.Arrows = append(s.Arrows, *side)
	}
	s.Title, s.Desc = text.Say("figure.title.board"), describeBoard(forces, side)
	return s
}

// Same tells whether two corners of a sketch are one, in a figure of the size
// given.
func Same(p, q r2.Vec, size float64) bool {
	return math.Hypot(p.X-q.X, p.Y-q.Y) <= 1e-9*size
}

// describeBoard says of every force where it points and where its tail is, and
// from where to where the side runs.
func describeBoard(forces []Laid, side *Arrow) string {
	var w words
	size := 0.0
	for _, f := range forces {
		size = math.Max(size, r2.Norm(f.Vec)+r2.Norm(f.Tail))
	}
	for i, f := range forces {
		w.force(f.Force)
		w.say("figure.board.tail", "force", f.Label.called(), "place", place(forces, f.Tail, i, size))
		for j, o := range forces {
			if j < i && Same(f.Head(), o.Head(), size) {
				w.say("figure.board.heads", "a", o.Label.called(), "b", f.Label.called())
			}
		}
	}
	if side != nil {
		key := "figure.board.side"
		if side.Class == ClassResultant {
			key = "figure.board.closed"
		}
		w.say(key, "side", side.Label.called(), "from", place(forces, side.From, -1, size), "to", place(forces, side.To, -1, size),
			"way", way(r2.Sub(side.To, side.From)))
	}
	return w.String()
}

// Both joins words by "and".
func Both(words []string) string {
	said := words[0]
	for _, w := range words[1:] {
		said = text.Say("figure.board.both", "a", said, "b", w)
	}
	return said
}

// place puts a corner into words by the arrows that begin or end there, but
// for arrow i; the common point is where the axes are.
func place(forces []Laid, p r2.Vec, i int, size float64) string {
	var at []string
	for j, f := range forces {
		if j != i && Same(f.Head(), p, size) {
			at = append(at, text.Say("figure.board.head-of", "force", f.Label.called()))
		}
	}
	if len(at) == 0 && Same(p, r2.Vec{}, size) {
		return text.Say("figure.board.point")
	}
	for j, f := range forces {
		if j != i && Same(f.Tail, p, size) {
			at = append(at, text.Say("figure.board.tail-of", "force", f.Label.called()))
		}
	}
	if len(at) == 0 {
		return text.Say("figure.board.nowhere")
	}
	return Both(at)
}
