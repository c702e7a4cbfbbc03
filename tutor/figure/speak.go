package figure

import (
	"math"
	"strconv"
	"strings"

	"closingside/statics"
	"closingside/tutor/text"

	"gonum.org/v1/gonum/spatial/r2"
)

// spoken is a label in words.
func (l Label) spoken() string {
	if l.Spoken != "" {
		return l.Spoken
	}
	return l.String()
}

// subject is a label as the subject of a sentence: what follows its name
// stands between commas.
func (l Label) subject() string {
	s := l.spoken()
	if strings.Contains(s, ", ") {
		s += ","
	}
	return s
}

// called is a label's symbol in words: what comes before its value.
func (l Label) called() string {
	s := l.spoken()
	for _, mark := range [...]string{", ", " = "} {
		s, _, _ = strings.Cut(s, mark)
	}
	return s
}

// direction puts the direction of a force into words, by the angle or slope it
// was given by where there is one.
func (f Force) direction() string {
	if !f.Rise.Empty() && !f.Run.Empty() {
		return text.Say("figure.slope", "run", f.Run.spoken(), "rise", f.Rise.spoken(), "way", way(f.Vec))
	}
	if f.Ref == 0 && f.Turn == 0 && f.Angle.Empty() {
		return speakDirection(0, directionOf(f.Vec))
	}
	return speakDirection(f.Ref, f.Turn)
}

// speakDirection puts a direction into words: turn, counter-clockwise, from
// the direction ref. Angles are said to a hundredth of a degree.
func speakDirection(ref, turn statics.Angle) string {
	axis, exact := quarter(ref)
	degrees := turn.Degrees()
	if math.Abs(degrees) >= 360 {
		degrees = math.Mod(degrees, 360)
	}
	sense := ".ccw"
	if degrees < 0 {
		sense = ".cw"
	}
	if !exact {
		sin, cos := (ref + turn).Sincos()
		from := text.Say("figure.axis.any", "angle", speakDegrees(ref.Positive().Degrees()))
		return text.Say("figure.far"+sense, "angle", speakDegrees(degrees), "axis", from, "way", way(r2.Vec{X: cos, Y: sin}))
	}
	if at, ok := quarter(ref + statics.Angle(degrees)*statics.Degree); ok {
		return text.Say("figure.along." + at)
	}
	if math.Abs(degrees) < 90 {
		return text.Say("figure.turn."+axis+sense, "angle", speakDegrees(degrees))
	}
	sin, cos := (ref + turn).Sincos()
	return text.Say("figure.far"+sense, "angle", speakDegrees(degrees), "axis", text.Say("figure.axis."+axis),
		"way", way(r2.Vec{X: cos, Y: sin}))
}

// quarter returns the number of quarter turns in a direction, 0 to 3, and
// whether it lies on an axis to a hundredth of a degree.
func quarter(a statics.Angle) (n string, ok bool) {
	q := a.Degrees() / 90
	whole := math.Round(q)
	return strconv.Itoa(int(math.Mod(whole, 4)+4) % 4), math.Abs(q-whole)*90 < 0.005
}

// speakDegrees is the size of an angle in words.
func speakDegrees(degrees float64) string {
	n := strconv.FormatFloat(math.Round(math.Abs(degrees)*100)/100, 'f', -1, 64)
	if n == "1" {
		return text.Say("figure.degree", "n", n)
	}
	return text.Say("figure.degrees", "n", n)
}

// way is a direction as the eye sees it: along an axis or between two.
func way(v r2.Vec) string {
	const nearly = 0.02 // radians: the eye takes it for level or upright
	eighths := 0
	switch level, upright := math.Abs(v.Y) <= nearly*math.Abs(v.X), math.Abs(v.X) <= nearly*math.Abs(v.Y); {
	case level && v.X >= 0:
		eighths = 0
	case level:
		eighths = 4
	case upright && v.Y > 0:
		eighths = 2
	case upright:
		eighths = 6
	case v.Y > 0 && v.X > 0:
		eighths = 1
	case v.Y > 0:
		eighths = 3
	case v.X < 0:
		eighths = 5
	default:
		eighths = 7
	}
	return text.Say("figure.way." + strconv.Itoa(eighths))
}

// words gathers sentences.
type words []string

func (w *words) say(key string, pairs ...string) { *w = append(*w, text.Say(key, pairs...)) }

func (w words) String() string { return strings.Join(w, " ") }

// force says what a force is and where it points.
func (w *words) force(f Force) {
	switch {
	case f.Hidden:
		*w = append(*w, f.Label.spoken()+".")
		w.say("figure.unknown", "force", f.Label.called())
	case f.Push:
		f.Ref, f.Turn, f.Angle = 0, 0, Label{}
		w.say("figure.force.on", "force", f.Label.subject(), "direction", f.direction())
	default:
		w.say("figure.force", "force", f.Label.subject(), "direction", f.direction())
	}
}

// angle says what an angle lies between, if the figure shows it.
func (w *words) angle(key string, l Label, a, b Label) {
	if l.Empty() {
		return
	}
	pairs := []string{"angle", l.subject(), "a", a.called()}
	if !b.Empty() {
		pairs = append(pairs, "b", b.called())
	}
	w.say(key, pairs...)
}

// describeForces puts forces at one point into words; key counts them.
func describeForces(key string, forces []Force) string {
	var w words
	if len(forces) == 1 {
		w.say(key + ".1")
	} else {
		n := strconv.Itoa(len(forces))
		if named := "figure.count." + n; text.Has(named) {
			n = text.Say(named)
		}
		w.say(key, "count", n)
	}
	for _, f := range forces {
		w.force(f)
	}
	return w.String()
}

func describeParallelogram(p Pair) string {
	var w words
	w.force(p.First)
	w.force(p.Second)
	w.say("figure.parallelogram")
	sum := r2.Add(p.First.Vec, p.Second.Vec)
	if !p.Resultant.Empty() {
		w.say("figure.parallelogram.diagonal", "resultant", p.Resultant.spoken(), "way", way(sum))
		w.angle("figure.angle.from-x", p.Direction, p.Resultant, Label{})
	}
	w.angle("figure.angle.between", p.Between, p.First.Label, p.Second.Label)
	w.corners(p)
	return w.String()
}

func (w *words) corners(p Pair) {
	w.angle("figure.angle.corner", p.AtTail, p.First.Label, p.Resultant)
	w.angle("figure.angle.corner", p.AtJoint, p.First.Label, p.Second.Label)
	w.angle("figure.angle.corner", p.AtHead, p.Second.Label, p.Resultant)
}

func describeTriangle(p Pair) string {
	var w words
	w.chain([]Force{p.First, p.Second}, p.Resultant)
	if !p.Resultant.Empty() {
		w.angle("figure.angle.from-x", p.Direction, p.Resultant, Label{})
	}
	if !p.Through[0].Empty() && !p.Through[1].Empty() {
		w.say("figure.angle.through", "first", p.First.Label.called(), "second", p.Second.Label.called(),
			"alternate", p.Through[0].spoken(), "beside", p.Through[1].spoken())
	}
	w.corners(p)
	return w.String()
}

// chain puts forces head to tail into words, and the side that closes them.
func (w *words) chain(forces []Force, resultant Label) {
	var ends []r2.Vec
	for i, f := range forces {
		ends = append(ends, f.Vec)
		before := ""
		if i > 0 {
			before = forces[i-1].Label.called()
		}
		switch {
		case i == 0:
			w.force(f)
		case f.Hidden:
			w.say("figure.next.unknown", "force", f.Label.subject(), "before", before)
		default:
			w.say("figure.next", "force", f.Label.subject(), "before", before, "direction", f.direction())
		}
	}
	if len(forces) == 0 {
		return
	}
	first, last := forces[0].Label.called(), forces[len(forces)-1].Label.called()
	sum, size := statics.Resultant(ends...), 0.0
	for _, v := range ends {
		size = math.Max(size, r2.Norm(v))
	}
	switch {
	case !resultant.Empty():
		w.say("figure.closing", "resultant", resultant.spoken(), "first", first, "last", last, "way", way(sum))
	case len(forces) > 2 && r2.Norm(sum) < 1e-6*size:
		w.say("figure.closed", "first", first, "last", last)
	}
}

func describePolygon(forces []Force, resultant Label) string {
	var w words
	w.chain(forces, resultant)
	return w.String()
}

func describeRectangular(f Force, x, y Label) string {
	var w words
	w.force(f)
	w.say("figure.components", "x", x.spoken(), "y", y.spoken(), "force", f.Label.called(),
		"wayx", wayAlong(r2.Vec{X: f.Vec.X}), "wayy", wayAlong(r2.Vec{Y: f.Vec.Y}))
	return w.String()
}

// wayAlong is the way of a component, which may be zero.
func wayAlong(v r2.Vec) string {
	if v == (r2.Vec{}) {
		return text.Say("figure.component.none")
	}
	return way(v)
}
