package figure

import "math"

// Size is the room for a figure in CSS pixels: Width is used, Height is the
// most it may take. Text is the size of its letters; 0 stands for 15.
type Size struct {
	Width, Height float64
	Text          float64
}

// defaultText is the size of a figure's letters in pixels.
const defaultText = 15

// Room around the ink in pixels, before and after it is drawn.
const (
	sideRoom = 40
	topRoom  = 34
	inkRoom  = 8
)

// stages are the attempts of a layout: how much the geometry shrinks, whether
// every label may have a leader, and how much the letters shrink, which comes
// last and is needed for large letters in little room only.
var stages = [...]struct {
	shrink  float64
	leaders bool
	letters float64
}{{1, false, 1}, {1, true, 1}, {0.82, true, 1}, {0.66, true, 1}, {0.5, true, 1}, {0.36, true, 1},
	{0.66, true, 0.85}, {0.66, true, 0.7}, {0.5, true, 0.6}}

// Layout draws a scene into the room given. It panics on a size that holds
// nothing.
func Layout(s Scene, size Size) Drawing {
	if size.Text == 0 {
		size.Text = defaultText
	}
	if !(size.Width >= 120 && size.Height >= 100) {
		panic("figure: no room for a figure")
	}
	var d Drawing
	for i, st := range stages {
		size := size
		size.Text *= st.letters
		b := fit(&s, size, st.shrink)
		if len(s.Hold) > 0 {
			size.Height = b.held(size)
		}
		frame := Box{Max: Point{size.Width, size.Height}}
		p := placer{frame: frame, middle: b.ink.centre(), strokes: b.strokes, arcs: b.mids()}
		choices := make([][]spot, len(b.wants))
		for k := range b.wants {
			choices[k] = p.spots(&b.wants[k], st.leaders)
		}
		spots := search(choices)
		if spots == nil && i < len(stages)-1 {
			continue
		}
		d = b.finish(spots, choices, size)
		d.Cost.Stage = i
		break
	}
	return d
}

// fit draws the scene as large as the room allows, times shrink, in its
// middle.
func fit(s *Scene, size Size, shrink float64) *builder {
	if len(s.Hold) > 0 {
		return fitHeld(s, size, shrink)
	}
	scale := scaleOf(s, size) * shrink
	roomX, roomY := size.Width-2*inkRoom, size.Height-2*inkRoom
	b := build(s, scale, size.Text)
	for range 8 {
		w, h := b.ink.size()
		if w <= roomX && h <= roomY {
			break
		}
		scale *= 0.96 * math.Min(1, math.Min(roomX/w, roomY/h))
		b = build(s, scale, size.Text)
	}
	c := b.ink.centre()
	b.move(Point{size.Width/2 - c.X, size.Height/2 - c.Y})
	return b
}

// fitHeld draws the scene at the scale that the points held give, times shrink,
// these in the middle.
func fitHeld(s *Scene, size Size, shrink float64) *builder {
	b := build(s, scaleOf(s, size)*shrink, size.Text)
	c := b.world.centre()
	b.move(Point{size.Width/2 - c.X, b.held(size)/2 - c.Y})
	return b
}

// scaleOf is how many pixels make one of the scene's units where what it has to
// hold fills the room; 1 for a scene without extent.
func scaleOf(s *Scene, size Size) float64 {
	span := nobox
	for _, v := range worldPoints(s) { // the points held, where there are any
		span = span.hold(Point{v.X, v.Y})
	}
	w, h := span.size()
	scale := math.Min((size.Width-2*sideRoom)/w, (size.Height-2*topRoom)/h)
	if math.IsInf(scale, 0) || math.IsNaN(scale) || scale <= 0 {
		return 1
	}
	return scale
}

// held is the height of a drawing that makes room for the points held.
func (b *builder) held(size Size) float64 {
	_, h := b.world.size()
	return tenth(math.Min(size.Height, h+2*topRoom))
}

// mids lists the middles of the labelled arcs.
func (b *builder) mids() []mid {
	var all []mid
	for i := range b.wants {
		if a := b.wants[i].anchor; a.kind == onArc {
			all = append(all, mid{b.wants[i].owner, a.a.along(heading(a.from+a.turn/2), a.r)})
		}
	}
	return all
}

// move shifts everything drawn so far.
func (b *builder) move(d Point) {
	d = d.round()
	for i := range b.marks {
		for k, p := range b.marks[i].Points {
			b.marks[i].Points[k] = p.add(d)
		}
	}
	for i := range b.strokes {
		b.strokes[i].a, b.strokes[i].b = b.strokes[i].a.add(d), b.strokes[i].b.add(d)
	}
	for i := range b.wants {
		b.wants[i].anchor = b.wants[i].anchor.move(d)
	}
	b.ink = Box{b.ink.Min.add(d), b.ink.Max.add(d)}
	b.origin = b.origin.add(d)
}

// finish puts the labels in, cuts off unused height and rounds. Without a
// joint placement every label takes its own best spot.
func (b *builder) finish(spots []spot, choices [][]spot, size Size) Drawing {
	d := Drawing{Title: b.scene.Title, Desc: b.scene.Desc, Width: size.Width, Text: size.Text, Scale: b.scale}
	all := b.ink
	for i := range b.wants {
		w := &b.wants[i]
		s := spot{box: around(w.anchor.a, w.w, w.h)}
		if spots != nil {
			s = spots[i]
		} else if len(choices[i]) > 0 {
			s = choices[i][0]
		}
		if s.leader {
			leader := pen{ClassLeader, w.pen.step, w.pen.name}
			end := leader.mark(Circle, s.start)
			end.Radius = 1.6
			b.marks = append(b.marks, leader.mark(Path, s.start, s.end), end)
			d.Cost.Leaders++
			d.Cost.Crossings += s.crossed
		}
		d.Cost.Total += s.cost
		base := Point{s.box.centre().X, s.box.Min.Y + ascent*b.text}
		m := w.pen.mark(Text, base)
		m.Label, m.Box = w.label, s.box
		b.marks = append(b.marks, m)
		all = all.hold(s.box.Min).hold(s.box.Max)
	}
	up := 0.0
	if len(b.scene.Hold) > 0 {
		d.Height = size.Height
	} else {
		up = tenth(all.Min.Y - inkRoom)
		d.Height = tenth(math.Min(all.Max.Y+inkRoom-up, size.Height-up))
	}
	d.Origin = Point{b.origin.X, b.origin.Y - up}.round()
	for i := range b.marks {
		m := &b.marks[i]
		for k, p := range m.Points {
			m.Points[k] = Point{p.X, p.Y - up}.round()
		}
		m.Box = Box{Point{m.Box.Min.X, m.Box.Min.Y - up}.round(), Point{m.Box.Max.X, m.Box.Max.Y - up}.round()}
		m.Radius = tenth(m.Radius)
		m.Shift = m.Shift.round()
		d.Steps = max(d.Steps, m.Step+1)
	}
	d.Marks = b.marks
	d.Cost.Overlaps = d.overlaps()
	return d
}
