package tutor

import (
	"math"
	"slices"

	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// explain looks for what is behind a wrong value.
func (w *Work) explain(q *lesson.Quantity, r *Reply) {
	w.conclude(q, r, w.weigh(q, r.Reading, w.overTurn(q, r.Reading)...))
	r.Feedback = w.say(q, r)
	w.escalate(q, r)
}

// conclude gives the verdict that the weighed explanations of a wrong value add up
// to: the first of those below that holds. What accuses nobody comes before a slip
// that is less sure.
func (w *Work) conclude(q *lesson.Quantity, r *Reply, c weighed) {
	if c.carried != nil && w.madeOfBoth(q, c) {
		c = c.notCarried()
	}
	r.Slips, r.Unexplained = c.slips, c.unexplained
	e := explanation{w: w, q: q, r: r, c: c, slip: len(c.slips) > 0 && c.slips[0].sure()}
	e.short, e.beyond = w.onlyRounded(q, r.Reading)
	if e.beyond == nil && (len(c.slips) == 0 || c.slips[0].Probability < halfSure) {
		e.beyond = w.oneDigitLess(q, r.Reading)
	}
	switch {
	case e.writtenShort():
	case e.carried():
	case e.roundedBeyond():
	case e.roundedTooSoon():
	case e.ofAnother():
	case e.oneSlip():
	case w.oneNumberOff(q, r):
	case e.oneOfTwo():
	case e.nearlyCarried():
	default:
		r.Verdict = verdict.Unexplained
	}
}

// explanation is a wrong value on the way to its verdict. Its methods give the
// verdict that they are named for and tell whether it holds.
type explanation struct {
	w *Work
	q *lesson.Quantity
	r *Reply // holds the slips of c and their rest
	c weighed

	slip          bool     // the likeliest slip is sure
	short, beyond *Rounded // see onlyRounded
}

// writtenShort: the right value, with too few digits. What surely follows from a wrong
// entry is carried, though it comes near.
func (e *explanation) writtenShort() bool {
	switch {
	case e.short == nil:
		return false
	case e.short.Digits <= 2 && e.slip: // 500 for 490.5 may have another g behind it
		return false
	case e.c.carried != nil && e.c.carriedShare >= sureEnough:
		return false
	}
	e.onlyRounded(e.short)
	return true
}

// onlyRounded is the verdict where rounding alone explains a value.
func (e *explanation) onlyRounded(what *Rounded) {
	e.rounded(what, false)
	e.r.Slips, e.r.Unexplained = nil, min(e.c.unexplained, 0.5)
}

func (e *explanation) rounded(what *Rounded, perhaps bool) {
	e.r.Verdict, e.r.Rounded, e.r.perhaps = verdict.EarlyRounding, what, perhaps
}

// carried: what follows from an earlier wrong entry.
func (e *explanation) carried() bool {
	if e.c.carried == nil || e.c.carriedShare < halfSure && (e.slip || !e.c.mayBeCarried()) {
		return false
	}
	e.r.Verdict, e.r.From = verdict.Carried, e.c.carried.from
	e.r.Unexplained -= e.c.carriedShare
	return true
}

// roundedBeyond: what correct rounding may come to beyond the band's limit. A
// sure slip far off is the likelier; and where entries show the way, so is one value
// rounded too soon.
func (e *explanation) roundedBeyond() bool {
	switch {
	case e.beyond == nil:
		return false
	case e.slip && (e.r.Reading.Form == entry.Expression || e.w.farOff(e.q, e.r.Reading)): // an expression tells by its form
		return false
	case e.c.rounded != nil && e.c.onlyTooSoon() && e.w.now(e.q).standing != 0:
		return false
	case e.slip:
		e.rounded(e.beyond, true)
		e.r.Slips, e.r.Unexplained = halved(e.c.slips), e.c.unexplained/2
	default:
		e.onlyRounded(e.beyond)
	}
	return true
}

// roundedTooSoon: one value on the way kept to too few digits, or several. Where a slip
// that is not sure may as well be it, both are told of.
func (e *explanation) roundedTooSoon() bool {
	sure := e.c.roundedShare >= sureOfRounding
	if e.c.rounded == nil || !e.c.onlyTooSoon() && (e.slip || !e.c.mayBeRounded()) {
		return false
	}
	e.rounded(e.c.rounded.rounded, !sure)
	e.r.Unexplained -= e.c.roundedShare
	return true
}

// oneSlip: a slip, or two together, sure enough to be named.
func (e *explanation) oneSlip() bool {
	if e.slip {
		e.r.Verdict = verdict.SlipFound
	}
	return e.slip
}

// oneOfTwo: two slips that a question tells apart.
func (e *explanation) oneOfTwo() bool {
	close := e.w.rivals(e.r.Slips)
	if close {
		e.w.askOrSettle(e.q, e.r)
	}
	return close
}

// nearlyCarried: as near to what follows from an earlier wrong entry as a right
// value may lie to the true one.
func (e *explanation) nearlyCarried() bool {
	from := e.w.nearlyCarried(e.q, e.r.Reading)
	if from == "" {
		return false
	}
	e.r.Verdict, e.r.From = verdict.Carried, from
	e.r.Slips, e.r.Unexplained = nil, halfSure
	return true
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

// madeOfBoth tells whether a magnitude that may be carried from the twin's holds the
// slip that the twin was told: one slip twice, not one gone on from. Where the twin's
// value alone is another force's, what follows from it at once was gone on from; an
// angle is more often what the other leaves of 180°.
func (w *Work) madeOfBoth(q *lesson.Quantity, c weighed) bool {
	twin := w.Standing(q.Twin)
	if q.IsAngle() || twin == nil || c.carried.from != q.Twin || len(twin.Slips) == 0 || len(c.slips) == 0 {
		return false
	}
	return slices.ContainsFunc(ofBoth, func(id string) bool {
		return twin.Slips[0].Likely == id && slices.Contains(c.slips[0].IDs, id) && !(id == "other-force" && c.carried.straight)
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

// mayBeRounded tells so of what was rounded, be it the less likely of the two, where
// the learner's word for the one or the other would decide (see rivals).
func (c *weighed) mayBeRounded() bool {
	return c.orSlip(c.roundedShare) && c.roundedShare*saidIfSo > c.slips[0].Probability*saidIfOther
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
