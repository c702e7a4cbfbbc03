package kinds

import (
	"math"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/figure"
	"closingside/tutor/lesson"

	"gonum.org/v1/gonum/spatial/r2"
)

// drawn is a force in a figure, its direction marked as the statement gives it:
// by a slope triangle, or by the turn from an axis.
func drawn(label figure.Label, name string, h statics.Heading, vec r2.Vec) figure.Force {
	f := figure.Force{Vec: vec, Label: label, Name: name}
	switch {
	case h.Form == statics.Slope && h.Rise > 0 && h.Run > 0:
		f.Rise, f.Run = figure.Plain(plainNumber(h.Rise)), figure.Plain(plainNumber(h.Run))
	case h.Form == statics.FromAxis && h.Axis == statics.PlusX, h.Form == statics.Slope:
		if f.Turn = h.Angle(); h.Form == statics.Slope || math.Abs(f.Turn.Degrees()) >= 360 {
			f.Turn = f.Turn.Normalized()
		}
		f.Angle = figure.Plain(f.Turn.Abs().String())
	default:
		f.Ref, f.Turn = h.Axis.Angle(), h.Turn
		if h.Sense == statics.Clockwise {
			f.Turn = -h.Turn
		}
		if h.Turn != 0 {
			f.Angle = figure.Plain(h.Turn.String())
		}
	}
	return f
}

func plainNumber(v float64) string { return expr.FormatNumber(v, 6) }

// componentFigure shows the force whose components the work is at: the first
// of those named that lacks one, or the last.
func componentFigure(w lesson.Progress, forces []figure.Force) figure.Scene {
	at := forces[len(forces)-1]
	for _, f := range forces {
		if !w.Found(f.Name+"x") || !w.Found(f.Name+"y") {
			at = f
			break
		}
	}
	return figure.Rectangular(at, w.Label(at.Name+"x"), w.Label(at.Name+"y"))
}
