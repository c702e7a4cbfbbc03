package kinds

import (
	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/figure"
	"closingside/tutor/lesson"
)

// memberOf is how a part is drawn where the situation is shown.
var memberOf = map[string]figure.MemberKind{"cable": figure.Cable, "strut": figure.Strut, "spring": figure.Spring, "pulley": figure.Pulley, "weight": figure.Weight}

// forceLabel is a force's symbol, with its value where that is stated or found.
func (s *rest) forceLabel(w lesson.Progress, h *holder) figure.Label {
	l := w.Label("F" + h.n)
	if h.given {
		l = l.Is(h.item.Field("force").Written)
	}
	return l
}

// angleLabel is the label of the angle of a lead.
func (l lead) angleLabel() figure.Label {
	if l.angle == "" || l.heading.Form == statics.Slope {
		return figure.Label{}
	}
	return figure.Plain(l.heading.Turn.Abs().String())
}

// legs are the numbers of the slope triangle of a lead given by one.
func (l lead) legs() (rise, run figure.Label) {
	if l.heading.Form != statics.Slope {
		return figure.Label{}, figure.Label{}
	}
	return figure.Plain(expr.FormatNumber(l.heading.Rise, 6)), figure.Plain(expr.FormatNumber(l.heading.Run, 6))
}

// drawParts are the parts of the space diagram: things, and the arrows of plain
// forces. What leads nobody knows where is left out.
func (h *holder) drawParts(in *lesson.Lesson) []figure.Part {
	if h.wandered {
		return nil
	}
	var all []figure.Part
	sym := in.Symbol("F" + h.n)
	for _, l := range h.leads {
		p := figure.Part{Kind: memberOf[h.is], Direction: l.heading.Angle(), Length: 1, Label: figure.Symbol(sym.Letter, sym.Sub), Name: "F" + h.n,
			Ref: l.heading.Axis.Angle(), Turn: l.turn(), Angle: l.angleLabel()}
		p.Rise, p.Run = l.legs()
		if h.given {
			p.Label = p.Label.Is(h.item.Field("force").Written)
		}
		switch {
		case h.is == "force":
			p.Force = true
		case h.is == "weight":
			p.Length, p.Label = 0.6, h.massLabel(p.Label)
		case h.is == "pulley":
			p.Hangs = h.massLabel(p.Label)
		}
		all = append(all, p)
	}
	return all
}

// massLabel is the mass of a part where that is stated, otherwise its force.
func (h *holder) massLabel(otherwise figure.Label) figure.Label {
	if f := h.item.Field("mass"); f.Given() {
		return figure.Plain(f.Written)
	}
	if f := h.item.Field("force"); f.Given() {
		return figure.Plain(f.Written)
	}
	return otherwise
}

// drawForces are the forces of a part in the free-body diagram: arrows away
// from the particle for what pulls, towards it for what pushes.
func (s *rest) drawForces(w lesson.Progress, h *holder) []figure.Force {
	var all []figure.Force
	for _, l := range h.leads {
		f := figure.Force{Vec: l.unitVector(), Label: s.forceLabel(w, h), Name: "F" + h.n, Push: l.push,
			Ref: l.heading.Axis.Angle(), Turn: l.turn(), Angle: l.angleLabel()}
		f.Rise, f.Run = l.legs()
		if h.wandered && !w.Found("theta"+h.n) {
			f.Hidden, f.Open, f.Angle = true, true, figure.Label{}
			f.Vec = s.somewhere(h)
		}
		all = append(all, f)
	}
	return all
}

// somewhere is a direction for a force whose own is not found yet: against the
// others, to the nearest eighth of a turn, so that the figure does not tell it.
func (s *rest) somewhere(h *holder) r2.Vec {
	dir, _ := statics.Direction(h.acts())
	eighths := lesson.RoundPlaces(dir.Degrees()/45, 0)
	return statics.Polar(1, statics.Angle(45*eighths)*statics.Degree)
}

// closed is the polygon of forces, which closes; for three forces with the
// angles at its corners.
func (s *rest) closed(w lesson.Progress, forces []figure.Force) figure.Scene {
	scene := figure.ForcePolygon(forces, figure.Label{})
	if len(forces) != 3 || s.lesson.Quantity(angleNames[0]) == nil {
		return scene
	}
	at := r2.Vec{}
	for i, f := range forces {
		at = r2.Add(at, f.Vec)
		next := forces[(i+1)%3]
		// the corner between a side and the next faces the third
		back, on := r2.Scale(-1, f.Vec), next.Vec
		from, _ := statics.Direction(back)
		to, _ := statics.Direction(on)
		scene.Arcs = append(scene.Arcs, figure.Arc{Centre: at, From: from, Turn: (to - from).Normalized(), Label: w.Label(angleNames[(i+2)%3]), Step: 5, Name: angleNames[(i+2)%3]})
	}
	return scene
}
