package tutor

import (
	"math"

	"closingside/statics"
	"closingside/statics/expr"
)

// Floors and limits of the accepted band (common practice: an answer is
// accepted to half a percent, an intermediate to a tenth).
var (
	floorAnswer = tolerance{rel: 0.005, angle: 0.2}
	floorWork   = tolerance{rel: 0.001, angle: 0.1}
	limit       = tolerance{rel: 0.01, angle: 1}
)

// tolerance is a half-width: relative for magnitudes, in degrees for angles.
type tolerance struct{ rel, angle float64 }

func (t tolerance) of(q *Quantity) float64 {
	if q.Dim == statics.DimAngle {
		return t.angle
	}
	return t.rel * math.Abs(q.True)
}

// Band is the accepted interval for q: Centre ± Half, in q's unit.
type Band struct{ Centre, Half float64 }

// Holds tells whether v lies in the band of q.
func (b Band) Holds(q *Quantity, v float64) bool {
	return q.apart(v, b.Centre) <= b.Half*(1+1e-12)
}

// Band is the band within which an entry for q is right: what correct rounding
// of every written intermediate can produce, never less than the floor, never
// more than the limit.
func (w *Work) Band(q *Quantity) Band {
	half := w.rounding(q, map[string]bool{q.Name: true})
	floor := floorWork
	if q.Answer {
		floor = floorAnswer
	}
	half = max(half, floor.of(q), w.Settings.asked(q).halfUnit(q.Dim, q.True))
	if q.Signed { // a component near zero is judged against the force it belongs to
		half = max(half, w.Settings.asked(q).halfUnit(q.Dim, w.largest()))
	}
	return Band{q.True, min(half, max(limit.of(q), floor.of(q)))}
}

// largest is the largest given magnitude.
func (w *Work) largest() float64 {
	v := 0.0
	for _, q := range w.Lesson.Quantities {
		if q.Given && q.Dim == statics.DimForce {
			v = max(v, q.True)
		}
	}
	return v
}

// rounding is the widest that correct rounding of the written intermediates
// carries q away from its true value by any route the entries may have taken,
// to first order: each intermediate is off by at most half a unit of the
// digits kept, times the tree's derivative there.
func (w *Work) rounding(q *Quantity, on map[string]bool) float64 {
	widest := 0.0
	for _, r := range q.Routes {
		if w.Settings.Method != AnyMethod && r.Method != AnyMethod && r.Method != w.Settings.Method {
			continue
		}
		if half, ok := w.routeRounding(q, r, on); ok {
			widest = max(widest, half)
		}
	}
	return widest + w.Settings.asked(q).halfUnit(q.Dim, q.True)
}

// headRounding is the rounding of a step done in the head: along the first
// route, which is the one a worked solution takes.
func (w *Work) headRounding(q *Quantity, on map[string]bool) float64 {
	on[q.Name] = true
	defer delete(on, q.Name)
	half, ok := w.routeRounding(q, q.Routes[0], on)
	if !ok {
		return 0
	}
	return half + w.Settings.Work.halfUnit(q.Dim, q.True)
}

func (w *Work) routeRounding(q *Quantity, r Route, on map[string]bool) (float64, bool) {
	half := 0.0
	for _, p := range expr.Trace(r.Tree, w.Lesson.Truth) {
		switch n := p.Node.(type) {
		case expr.Sym:
			in := w.Lesson.Quantity(n.Name)
			if in.Given {
				continue
			}
			if on[n.Name] {
				return 0, false
			}
			half += math.Abs(p.Slope) * w.inputRounding(in, on)
		case expr.Num, expr.Ang, expr.Pi:
		default:
			if p.Site != 0 {
				half += math.Abs(p.Slope) * w.Settings.Work.halfUnit(dimension(p.Node), p.Value)
			}
		}
	}
	return half, !math.IsNaN(half)
}

// inputRounding is how far an input may rightly be off: as typed where it was
// entered, otherwise by its own rounding on the way.
func (w *Work) inputRounding(in *Quantity, on map[string]bool) float64 {
	if v, ok := w.typed(in.Name); ok && w.Found(in.Name) {
		return in.apart(v, in.True)
	}
	return w.headRounding(in, on)
}

// dimension tells an angle-valued node (an inverse key) from a plain number.
func dimension(n expr.Node) statics.Dimension {
	if isInverse(n) {
		return statics.DimAngle
	}
	return statics.DimRatio
}
