// Package figure turns plain geometry into figures that are true to scale and
// whose labels can be read.
//
// A Scene holds arrows, lines, angle arcs, axes and the parts of a free-body
// diagram in world coordinates (y upwards, any unit of length), each with the
// label it wants. Layout finds one scale for both axes, draws every part, and
// then places the labels: no label overlaps another, a stroke or the frame, and
// what cannot stand beside its part is tied to it by a leader. The result is a
// Drawing: typed marks with final coordinates in CSS pixels (y downwards), each
// with a Class, a Step for building the figure up, and a Cost that says what
// the placement had to give up. For example
//
//	p := figure.Force{Vec: statics.Polar(340, 25*statics.Degree),
//		Label: figure.Symbol("P", "").Is("340 N"), Turn: 25 * statics.Degree,
//		Angle: figure.Plain("25°")}
//	drawing := figure.Layout(figure.Given(p, q), figure.Size{Width: 360, Height: 300})
//
// The package knows no kind of problem and no HTML, and measures text by a
// table of its own, since nothing can ask the browser for a width. It cannot
// draw curves other than circular arcs, and it wraps no text.
package figure
