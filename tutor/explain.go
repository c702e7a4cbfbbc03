package tutor

import (
	"math"
	"slices"
	"strings"

	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// explain looks for what is behind a wrong value.
func (w *Work) explain(q *lesson.Quantity, r *Reply) {
	w.explainAs(q, r, w.weigh(q, r.Reading, w.overTurn(q, r.Reading)...))
	w.escalate(q, r)
}

// explainAs gives the verdict that the weighed explanations of a wrong value
// add up to.
func (w *Work) explainAs(q *lesson.Quantity, r *Reply, c weighed) {
	if c.carried != nil && w.madeOfBoth(q, c) {
		c = c.notCarried()
	}
	r.Slips, r.Unexplained = c.slips, c.unexplained
	early := func(o *Rounded, way string) {
		r.Verdict, r.Rounded, r.Feedback = verdict.EarlyRounding, o, w.keepDigits(q, o, r.Reading.Value, way)
	}
	carried := func(from string) {
		r.Verdict, r.From, r.Feedback = verdict.Carried, from, w.sendTo(q, from)
	}
	alone := func(unexplained float64) { r.Slips, r.Unexplained = nil, unexplained }
	short, beyond := w.onlyRounded(q, r.Reading)
	slip := len(r.Slips) > 0 && r.Slips[0].sure()
	if beyond == nil && (len(r.Slips) == 0 || r.Slips[0].Probability < halfSure) {
		beyond = w.oneDigitLess(q, r.Reading)
	}
	switch {
	case short != nil && (short.Digits > 2 || !slip): // 500 for 490.5 may have another g behind it
		early(short, theWay)
		alone(min(c.unexplained, 0.5))
	case c.carried != nil && (c.carriedShare >= halfSure || !slip && c.mayBeCarried()):
		carried(c.carried.from)
		r.Unexplained -= c.carriedShare
	case beyond != nil && !(slip && w.farOff(q, r.Reading)) && !(c.rounded != nil && c.onlyTooSoon() && w.now(q).standing != 0): // one value, where entries show the way
		if !slip {
			early(beyond, theWay)
			alone(min(c.unexplained, 0.5))
			return
		}
		early(beyond, perhaps)
		r.Slips, r.Unexplained = halved(c.slips), c.unexplained/2
	case c.rounded != nil && c.roundedShare >= sureOfRounding:
		early(c.rounded.rounded, theWay)
		r.Unexplained -= c.roundedShare
	case c.rounded != nil && (c.onlyTooSoon() || c.ratherRounded()):
		early(c.rounded.rounded, perhaps)
		r.Unexplained -= c.roundedShare
	case slip:
		r.Verdict, r.Feedback = verdict.SlipFound, w.askAbout(r.Slips[0])
	case w.askForNumber(q, r):
	case w.rivals(r.Slips):
		w.askOrSettle(q, r)
	default:
		if from := w.nearlyCarried(q, r.Reading); from != "" {
			carried(from)
			alone(halfSure)
			return
		}
		r.Verdict, r.Feedback = verdict.Unexplained, w.bounds(q, r.Reading.Value)
	}
}

// farOff tells whether a value lies so far from the right one that the rounding
// which may have carried it there is no likelier than one slip that surely does.
func (w *Work) farOff(q *lesson.Quantity, r entry.Reading) bool {
	return q.Distance(r.Value, q.True) > farFromRight*w.limit(q)
}

// farFromRight is in limits of the band: within that, of correct rounding at three
// digits one in two hundred values is called a slip (see the tests).
const farFromRight = 5

// halved are suspects half as likely: the other half is rounding.
func halved(all []Suspect) []Suspect {
	all = slices.Clone(all)
	for i := range all {
		all[i].Probability /= 2
	}
	return all
}

// onlyTooSoon tells whether a value was most likely only rounded too soon: surely
// so, or likelier so than by a slip of the same value.
func (c *weighed) onlyTooSoon() bool {
	unknown := c.unexplained - c.roundedShare - c.carriedShare
	return c.roundedShare >= sureOfRounding || c.roundedShare >= halfSure && unknown <= littleUnknown
}

// ofBoth are the slips that, made for a quantity and for its twin, come to what
// would follow for the one from the other: the two exchanged, or both taken for
// sides of a right triangle.
var ofBoth = []string{"other-force", "right-triangle-assumed"}

// madeOfBoth tells whether a value that may be carried from the twin's holds the
// slip that the twin was told: one slip twice, not one gone on from.
func (w *Work) madeOfBoth(q *lesson.Quantity, c weighed) bool {
	twin := w.Standing(q.Twin)
	if twin == nil || c.carried.from != q.Twin || len(twin.Slips) == 0 || len(c.slips) == 0 {
		return false
	}
	return slices.ContainsFunc(ofBoth, func(id string) bool {
		return twin.Slips[0].Likely == id && slices.Contains(c.slips[0].IDs, id)
	})
}

// notCarried is c where what looks carried is the likeliest slip.
func (c weighed) notCarried() weighed {
	c.slips = slices.Clone(c.slips)
	c.slips[0].Probability += c.carriedShare
	c.unexplained -= c.carriedShare
	c.carried, c.carriedShare = nil, 0
	return c
}

// orSlip tells whether a value is all but surely one slip, or what has that share:
// carried, or rounded too soon.
func (c *weighed) orSlip(share float64) bool {
	return len(c.slips) > 0 && !c.slips[0].double() && share+c.slips[0].Probability >= sureEnough
}

// mayBeCarried tells so of what is carried, be it the less likely of the two: going
// back to an earlier entry accuses nobody.
func (c *weighed) mayBeCarried() bool { return c.carriedShare >= mayBe && c.orSlip(c.carriedShare) }

// ratherRounded tells so of what was rounded, being the likelier of the two.
func (c *weighed) ratherRounded() bool {
	return c.orSlip(c.roundedShare) && c.roundedShare >= c.slips[0].Probability
}

// nearlyCarried is the first wrong entry behind a value that lies as near to one
// carried from it as a right value may lie to the true one; "" where there is none.
func (w *Work) nearlyCarried(q *lesson.Quantity, r entry.Reading) string {
	if len(r.Halves) == 0 {
		return ""
	}
	t := w.now(q).carriedTo(w.Lesson.index[q.Name])
	reach, from := floorWork.angle, ""
	if !q.IsAngle() {
		reach = floorWork.rel * math.Abs(r.Value)
	}
	nearest := math.Inf(1)
	t.near(r.Value, reach, func(c *cell) {
		if off := q.FoldedDistance(c.value, r.Value); off <= reach && off < nearest && q.IsNegativeAngle(r.Value) == c.below {
			nearest, from = off, t.outcome(c).from
		}
	})
	return from
}

// double tells whether s is most likely two slips together.
func (s Suspect) double() bool { return strings.Contains(s.Likely, "+") }

// sure tells whether s is likely enough to be named.
func (s Suspect) sure() bool {
	if s.double() {
		return s.Probability >= sureOfTwo
	}
	return s.Probability >= sureEnough
}
