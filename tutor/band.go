package tutor

import (
	"math"
	"slices"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// Floors and limits of the accepted band (common practice: an answer is
// accepted to half a percent, an intermediate to a tenth).
var (
	floorAnswer = tolerance{rel: 0.005, angle: 0.2}
	floorWork   = tolerance{rel: 0.001, angle: 0.1}
	limit       = tolerance{rel: 0.01, angle: 1}
)

// nothing is how small a part of its force a component is that is zero.
const nothing = 1e-6

// nearRight is how far from 90° the inverse sine still can't be trusted to a
// degree: there a digit of the sine is worth many of the angle.
const nearRight = 10.0

// tolerance is a half-width: relative for magnitudes, in degrees for angles.
type tolerance struct{ rel, angle float64 }

func (t tolerance) of(q *lesson.Quantity) float64 {
	if q.IsAngle() {
		return t.angle
	}
	return t.rel * math.Abs(q.True)
}

// Band is the accepted interval for q: Centre ± Half, in q's unit.
type Band struct{ Centre, Half float64 }

// Holds tells whether v lies in the band of q.
func (b Band) Holds(q *lesson.Quantity, v float64) bool {
	return q.Distance(v, b.Centre) <= b.Half*(1+1e-12)
}

// Band is the band within which an entry for q is right: what correct rounding
// of every written intermediate can produce, never less than the floor, never
// more than the limit (but see byInverseSine).
func (w *Work) Band(q *lesson.Quantity) Band {
	floor := floorWork
	if q.Answer {
		floor = floorAnswer
	}
	asked := w.Settings.DigitsOf(q).HalfUnit(q.Dim, q.True)
	half := max(floor.of(q), asked)
	if q.Signed { // a component near zero is judged against the force it belongs to
		half = max(half, w.Settings.DigitsOf(q).HalfUnit(q.Dim, w.scale(q)))
	}
	most, wide := max(w.limit(q), half), 0.0
	for j := range q.Routes {
		if !q.Routes[j].Fits(w.Settings.Method) {
			continue
		}
		r := w.sway(q, j, w.Lesson.Truth, w.entries(q, w.entered))
		if math.IsNaN(r) {
			continue
		}
		if q.Answer { // written as found, and then to the digits asked
			r += w.Settings.Work.HalfUnit(q.Dim, q.True)
		}
		half = max(half, r+asked)
		if w.byInverseSine(q, j) {
			wide = max(wide, r+asked)
		}
	}
	return Band{q.True, max(min(half, most), wide)}
}

// inUnit is the band b of q for one entry: where it is written to the digits asked
// in a unit of the learner's own, half a unit of those lies inside.
func (w *Work) inUnit(b Band, q *lesson.Quantity, r entry.Reading) Band {
	u, ok := statics.UnitBySymbol(r.Unit)
	if own := w.Lesson.UnitOf(q); ok && u.Dim == q.Dim && u.Factor != own.Factor {
		ratio := own.Factor / u.Factor
		asked := w.Settings.DigitsOf(q).HalfUnit(statics.DimRatio, q.True*ratio) / ratio
		if len(r.Halves) > 0 && r.Halves[0] >= asked*(1-1e-9) {
			b.Half = max(b.Half, asked)
		}
	}
	return b
}

// limit is the most that the band of q may be, however rounding adds up. A
// component may come out near zero as the difference of two large ones, so its
// limit is never less than what rounding those alone can do; but for one that
// follows from its force as given alone.
func (w *Work) limit(q *lesson.Quantity) float64 { return w.limitAt(q, q.True) }

// limitAt is the limit of q, its value being v.
func (w *Work) limitAt(q *lesson.Quantity, v float64) float64 {
	switch {
	case !q.Signed:
		return limit.of(q)
	case w.Lesson.ofOneForce(q):
		return limit.rel * math.Abs(v)
	}
	most := w.scale(q)
	return max(limit.rel*math.Abs(v), floorWork.rel*most, 3*w.Settings.DigitsOf(q).HalfUnit(q.Dim, most))
}

// ofOneForce tells whether q is a component of a given force that follows from
// givens alone: its direction is given, too, whichever way.
func (l *Lesson) ofOneForce(q *lesson.Quantity) bool {
	givens := l.ready().givens
	return l.WholeOf(q) != nil && slices.ContainsFunc(l.prep.of[l.index[q.Name]].routes, func(f routeFacts) bool { return f.reads&^givens == 0 })
}

// scale is the force that a component is small or large against: its own where
// that is given, otherwise the largest. One that follows from its force alone is
// measured by itself, unless it is nothing of it.
func (w *Work) scale(q *lesson.Quantity) float64 {
	whole, size := w.Lesson.WholeOf(q), math.Abs(q.True)
	switch {
	case whole == nil:
		return w.largest()
	case w.Lesson.ofOneForce(q) && size > nothing*math.Abs(whole.True):
		return size
	}
	return math.Abs(whole.True)
}

// largest is the largest given magnitude.
func (w *Work) largest() float64 {
	v := 0.0
	for _, q := range w.Lesson.Quantities {
		if q.Given && q.Dim == statics.DimForce {
			v = max(v, math.Abs(q.True))
		}
	}
	return v
}

// byInverseSine tells whether q lies near 90° and the learner's accepted
// entries are those that route j, an inverse sine, needs: there the extra
// width is granted that the sine's last digit is worth.
func (w *Work) byInverseSine(q *lesson.Quantity, j int) bool {
	f := &w.Lesson.ready().of[w.Lesson.index[q.Name]].routes[j]
	if f.crest == nil || math.Abs(q.True-90) > nearRight {
		return false
	}
	shown, any := true, false
	(f.reads &^ w.Lesson.ready().givens).each(func(i int) {
		any = true
		shown = shown && w.Found(w.Lesson.Quantities[i].Name)
	})
	return shown && any
}

// offset is how far an input may be off that the learner has entered; false
// where there is no accepted entry.
type offset func(in *lesson.Quantity) (float64, bool)

// entries is what rounding is followed from.
type entries struct {
	offset
	free bool // nothing entered says how the axes lie; see free
}

func (w *Work) entries(q *lesson.Quantity, of offset) entries { return entries{of, w.free(q)} }

// sensitivity is that of a route, along the axes it may have been worked by.
func (e entries) sensitivity(f *routeFacts) sensitivity {
	if e.free {
		return f.anyAxes
	}
	return f.sensitivity
}

// entered is how far an accepted entry is from the truth.
func (w *Work) entered(in *lesson.Quantity) (float64, bool) {
	if v, ok := w.typed(in.Name); ok && w.Found(in.Name) {
		return in.Distance(v, in.True), true
	}
	return 0, false
}

// asHeld takes every accepted entry for what the calculator held when it was
// typed: off by half a unit of its last digit, or of the last one asked.
func (w *Work) asHeld(in *lesson.Quantity) (float64, bool) {
	if !w.Found(in.Name) {
		return 0, false
	}
	r := w.Standing(in.Name).Reading
	if len(r.Halves) == 0 {
		return 0, true
	}
	return min(r.Halves[0], w.Settings.DigitsOf(in).HalfUnit(in.Dim, r.Value)), true
}

// sway is how far correct rounding of what is written on the way carries q
// from what route j gives in env: each value worked out is off by at most half
// a unit of the digits kept, times its slope, all in the same sense. An
// inverse sine is followed on its curve, and stops at 90°. NaN where the route
// runs in a circle.
func (w *Work) sway(q *lesson.Quantity, j int, env expr.Env, known entries) float64 {
	i := w.Lesson.index[q.Name]
	f := &w.Lesson.ready().of[i].routes[j]
	on := set(0).with(i)
	if f.crest == nil {
		return w.sum(w.asEntered(known.sensitivity(f)), on, known).half()
	}
	x := expr.Eval(f.crest.sine, env)
	off := w.sum(w.asEntered(f.crest.sensitivity), on, known)
	off.add(1, w.Settings.Work.HalfUnit(statics.DimRatio, min(x, nearOne)))
	return inverseSineOff(x, off.half())
}

// width gathers rounding errors, each anywhere within its half-width: their
// sum in the same sense, and their variance when they fall as they may.
type width struct{ sum, variance float64 }

// sigmas is how many standard deviations a sum of rounding errors may reach
// where it consists of many: beyond 4.5, fewer than one in a hundred thousand.
const sigmas = 4.5

func (a *width) add(slope, half float64) {
	e := slope * half
	a.sum += e
	a.variance += e * e / 3
}

// half is the half-width that correct rounding keeps to.
func (a width) half() float64 { return min(a.sum, sigmas*math.Sqrt(a.variance)) }

// sum adds what the inputs and the values worked out may each be off.
func (w *Work) sum(s sensitivity, on set, known entries) width {
	var all width
	for _, p := range s.inner {
		if p.exact(w.Settings.Work) {
			continue
		}
		all.add(p.slope, w.Settings.Work.HalfUnit(p.dim, p.value))
	}
	for _, in := range s.inputs {
		off := w.offInput(in.quantity, on, known)
		all.sum += in.slope * off.sum
		all.variance += in.slope * in.slope * off.variance
	}
	return all
}

// asEntered is a sensitivity with each value worked out at the larger of what it
// is about the true values and about the learner's own accepted ones: there it
// may have one digit more before the point, and so be rounded more coarsely.
func (w *Work) asEntered(s sensitivity) sensitivity {
	found := func(in input) bool {
		q := &w.Lesson.Quantities[in.quantity]
		return !q.Given && w.Found(q.Name)
	}
	if !slices.ContainsFunc(s.inputs, found) {
		return s
	}
	own := func(name string) float64 {
		if w.Found(name) {
			return w.own(name)
		}
		return w.Lesson.Truth(name)
	}
	s.inner = slices.Clone(s.inner)
	for i := range s.inner {
		p := &s.inner[i]
		if p.node == nil {
			continue
		}
		if v := belowOne(p.node, expr.Eval(p.node, own)); math.Abs(v) > math.Abs(p.value) {
			p.value = v
		}
	}
	return s
}

// offInput is how far an input may rightly be off: as known where it was
// entered, otherwise by the widest of the ways a worked solution takes.
func (w *Work) offInput(i int, on set, known entries) width {
	in := &w.Lesson.Quantities[i]
	if in.Given {
		return width{}
	}
	switch off, ok := known.offset(in); {
	case ok:
		return width{off, off * off}
	case on.has(i):
		return width{math.NaN(), math.NaN()}
	}
	var widest width
	for j := range in.Routes {
		f := &w.Lesson.ready().of[i].routes[j]
		if !f.taken {
			continue
		}
		if one := w.sum(known.sensitivity(f), on.with(i), known); one.half() > widest.half() {
			widest = one
		}
	}
	v := in.True
	if known.free {
		v = w.Lesson.size(i)
	}
	if most := w.limitAt(in, v); widest.half() > most {
		widest = width{most, most * most / (sigmas * sigmas)}
	}
	widest.add(1, w.Settings.Work.HalfUnit(in.Dim, v))
	return widest
}
