package trial

import (
	"math"
	"slices"
	"strings"
	"time"

	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// Cause is what an entry really is.
type Cause uint8

// The causes.
const (
	Right    Cause = iota // nothing went wrong
	OneSlip               // one slip, here or in a step done in the head
	TwoSlips              // two different slips since the last true or written values
	Early                 // one value on the way rounded too soon
	Carried               // the right method on an earlier wrong entry
	OnWrong               // one slip on top of an earlier wrong entry
	Noise                 // nothing explains it
	Mixed                 // several at once
)

// Case is one entry: what really happened, and what was said.
type Case struct {
	Quantity   string
	Before     [][2]string // what the learner had written: quantity, entry
	Angle      bool        // the quantity is an angle
	Cause      Cause
	Slips      []string // made, sorted; for two slips joined as the tutor joins them
	Head       bool     // a slip was made in a step before, one that is not written
	Radians    bool     // the calculator stands in radians in every step
	Rests      []string // the wrong entries that it rests on
	Refused    []string // entries before that were right, and judged otherwise
	Kept       int      // digits the learner keeps on the way; 0 for all
	Cut        bool
	Expression bool
	Equation   bool
	Written    bool // a slip was made in writing the value down
	Shared     bool // a wrong value that other slips, too, would write so; told of what was missed
	Reply      tutor.Reply
	Took       time.Duration
}

// record notes a case.
func (p *learner) record(q *lesson.Quantity, s sheet, reply tutor.Reply, took time.Duration) {
	c := Case{
		Quantity: q.Name, Angle: q.IsAngle(), Equation: q.Equation,
		Cause: s.fault.cause(), Rests: s.fault.rests, Refused: slices.Clone(p.refused),
		Kept: p.keep.digits, Cut: p.keep.cut, Expression: s.expression, Written: s.written, Reply: reply, Took: took,
	}
	past := p.work.Past
	if reply.Verdict != verdict.Unreadable { // which is not kept
		past = past[:len(past)-1]
	}
	for _, a := range past {
		c.Before = append(c.Before, [2]string{a.Quantity, a.Entry})
	}
	for _, m := range s.fault.slips {
		c.Head = c.Head || m.at != q.Name && m.at != calculator
		c.Radians = c.Radians || m.at == calculator
		if !slices.Contains(c.Slips, m.id) {
			c.Slips = append(c.Slips, m.id)
		}
	}
	slices.Sort(c.Slips)
	if c.Cause == TwoSlips {
		c.Slips = []string{strings.Join(c.Slips, "+")}
	}
	c.Shared = c.asks() && !q.Equation && p.shares(q, reply, c.Slips)
	p.cases = append(p.cases, c)
}

// cause tells what f makes of an entry. Two slips of one id, at two steps, are
// no pair that the catalogue can name.
func (f fault) cause() Cause {
	several := 0
	for _, on := range []bool{len(f.slips) > 0, len(f.rests) > 0, f.early} {
		if on {
			several++
		}
	}
	switch {
	case f.noise:
		return Noise
	case len(f.slips) == 1 && len(f.rests) > 0 && !f.early:
		return OnWrong
	case several > 1, len(f.slips) > 2, len(f.slips) == 2 && f.slips[0].id == f.slips[1].id:
		return Mixed
	case len(f.slips) == 2:
		return TwoSlips
	case len(f.slips) == 1:
		return OneSlip
	case f.early:
		return Early
	case len(f.rests) > 0:
		return Carried
	}
	return Right
}

// met tells whether a mistake shows: it does not where the value is right all
// the same.
func (c *Case) met() bool { return c.Reply.Verdict != verdict.Correct }

// asks tells whether it is worth knowing that one slip would write the same.
func (c *Case) asks() bool {
	return c.met() && (c.Cause == Noise || c.Cause == TwoSlips || c.Cause == Early || c.Cause == OneSlip && !c.first())
}

// first tells whether what the tutor lists first is what happened.
func (c *Case) first() bool { return c.place() == 0 }

// place is where the true explanation stands among those listed; −1 where it
// does not.
func (c *Case) place() int {
	return slices.IndexFunc(c.Reply.Slips, c.holds)
}

// holds tells whether an explanation is the true one.
func (c *Case) holds(s tutor.Suspect) bool {
	return slices.ContainsFunc(s.IDs, func(id string) bool { return slices.Contains(c.Slips, id) })
}

// named tells whether the true slip was named.
func (c *Case) named() bool { return c.Reply.Verdict == verdict.SlipFound && c.first() }

// shares tells whether one slip other than those made writes the same value on
// a clean sheet.
func (p *learner) shares(q *lesson.Quantity, reply tutor.Reply, slips []string) bool {
	r := reply.Reading
	half := 1e-6 * math.Abs(r.Value)
	if len(r.Halves) > 0 {
		half = r.Halves[0]
	}
	return slices.ContainsFunc(p.lesson.WrongValues(q, p.work.Settings), func(v tutor.WrongValue) bool {
		d := math.Abs(v.Value - r.Value)
		if q.IsAngle() {
			d = math.Abs(math.Remainder(v.Value-r.Value, 360))
		}
		return d <= half*(1+1e-9) && !slices.ContainsFunc(v.IDs, func(id string) bool { return slices.Contains(slips, id) })
	})
}

// miss is c, a case on problem p, for the report.
func (c *Case) miss(p *lesson.Problem) Miss {
	var given []string
	for _, it := range p.Items {
		var fields []string
		for _, f := range it.Fields {
			if f.Written != "" {
				fields = append(fields, f.Written)
			}
		}
		given = append(given, strings.Join(fields, " "))
	}
	return Miss{
		Problem: p.Code(), Given: strings.Join(given, "; "), Before: c.Before, Quantity: c.Quantity, Entry: c.Reply.Entry,
		Made: c.happened(), Told: c.told(), Stated: c.stated(), Place: c.place(),
	}
}

// stated is the probability given to what the verdict says.
func (c *Case) stated() float64 {
	switch c.Reply.Verdict {
	case verdict.SlipFound:
		return c.Reply.Slips[0].Probability
	case verdict.Unexplained:
		return c.Reply.Unexplained
	}
	return 1 - c.Reply.Unexplained
}
