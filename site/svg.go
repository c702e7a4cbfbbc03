package site

import (
	"strconv"
	"strings"

	"closingside/site/html"
	"closingside/tutor/figure"
)

// SVG is a drawing as an <svg> element. The ids of its title and description
// begin with id, which must be unique on the page. Looks come from figure.css
// alone: every mark has the class of what it stands for, every group the number
// of its step (data-step), the name of its part (data-name) and, for a force that
// was moved, the way back to where it came from (data-shift, in units of the
// drawing).
func SVG(id string, d figure.Drawing) html.Node {
	return svg(id, d, look{class: "f-figure", role: "img"}, nil)
}

// look is how a drawing is shown: its class and role, and which of its marks
// are new.
type look struct {
	class, role string
	fresh       func(figure.Mark) bool
}

// svg is a drawing with a look of its own, and what lies over it.
func svg(id string, d figure.Drawing, l look, over html.Part) html.Node {
	if l.fresh == nil {
		l.fresh = func(figure.Mark) bool { return false }
	}
	parts := []html.Part{
		html.Class(l.class), html.A("viewBox", "0 0 "+px(d.Width)+" "+px(d.Height)),
		html.A("width", px(d.Width)), html.A("height", px(d.Height)), html.A("font-size", px(d.Text)),
		html.A("role", l.role), html.Data("steps", strconv.Itoa(d.Steps)),
		html.A("aria-labelledby", id+"-title"), html.A("aria-describedby", id+"-desc"),
		html.El("title", html.ID(id+"-title"), html.Text(d.Title)),
		html.El("desc", html.ID(id+"-desc"), html.Text(d.Desc)),
	}
	for first := 0; first < len(d.Marks); {
		next := first + 1
		for next < len(d.Marks) && sameGroup(d.Marks[first], d.Marks[next]) && l.fresh(d.Marks[first]) == l.fresh(d.Marks[next]) {
			next++
		}
		parts = append(parts, svgGroup(d.Marks[first:next], d.Text, l.fresh))
		first = next
	}
	return html.El("svg", append(parts, over)...)
}

func sameGroup(a, b figure.Mark) bool {
	return a.Step == b.Step && a.Name == b.Name && a.Shift == b.Shift
}

func svgGroup(marks []figure.Mark, text float64, fresh func(figure.Mark) bool) html.Node {
	m := marks[0]
	class := "f-step f-step-" + strconv.Itoa(m.Step)
	if fresh(m) {
		class += " f-new"
	}
	parts := []html.Part{html.Class(class), html.Data("step", strconv.Itoa(m.Step))}
	if m.Name != "" {
		parts = append(parts, html.Data("name", m.Name))
	}
	if m.Shift != (figure.Point{}) {
		parts = append(parts, html.Data("shift", px(m.Shift.X)+" "+px(m.Shift.Y)))
	}
	for _, m := range marks {
		parts = append(parts, svgMark(m, text))
	}
	return html.El("g", parts...)
}

func svgMark(m figure.Mark, text float64) html.Node {
	class := html.Class("f-" + m.Class.String())
	switch m.Shape {
	case figure.Path:
		return html.El("polyline", class, html.A("points", points(m.Points)))
	case figure.Polygon:
		return html.El("polygon", class, html.A("points", points(m.Points)))
	case figure.Head:
		return html.El("polygon", html.Class("f-"+m.Class.String()+" f-head"), html.A("points", points(m.Points)))
	case figure.Circle:
		c := m.Points[0]
		return html.El("circle", class, html.A("cx", px(c.X)), html.A("cy", px(c.Y)), html.A("r", px(m.Radius)))
	case figure.ArcPath:
		return html.El("path", class, html.A("d", arcPath(m)))
	case figure.Text:
		return svgText(m, text)
	}
	panic("site: unknown shape of a mark")
}

func arcPath(m figure.Mark) string {
	p, q, r := m.Points[0], m.Points[1], px(m.Radius)
	sweep := "1" // clockwise as seen
	if m.CCW {
		sweep = "0"
	}
	return "M" + px(p.X) + " " + px(p.Y) + "A" + r + " " + r + " 0 0 " + sweep + " " + px(q.X) + " " + px(q.Y)
}

// svgText writes a label: upright and italic runs, subscripts lowered and the
// line raised again after them.
func svgText(m figure.Mark, text float64) html.Node {
	parts := []html.Part{html.Class("f-label f-" + m.Class.String()),
		html.A("x", px(m.Points[0].X)), html.A("y", px(m.Points[0].Y))}
	drop := px(figure.SubDrop * text)
	lowered := false
	for _, r := range m.Label.Runs {
		var run []html.Part
		if r.Italic {
			run = append(run, html.Class("f-symbol"))
		}
		if r.Sub != lowered {
			dy := drop
			if lowered {
				dy = "-" + drop
			}
			run = append(run, html.A("dy", dy))
			lowered = r.Sub
		}
		if r.Sub {
			run = append(run, html.A("font-size", px(figure.SubSize*text)))
		}
		parts = append(parts, html.El("tspan", append(run, html.Text(r.Text))...))
	}
	return html.El("text", parts...)
}

func points(pts []figure.Point) string {
	var b strings.Builder
	for i, p := range pts {
		if i > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(px(p.X) + "," + px(p.Y))
	}
	return b.String()
}

// px is a length to a tenth of a pixel.
func px(v float64) string {
	s := strconv.FormatFloat(v, 'f', 1, 64)
	if s = strings.TrimSuffix(s, ".0"); s == "-0" {
		return "0"
	}
	return s
}
