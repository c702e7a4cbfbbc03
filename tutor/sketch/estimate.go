package sketch

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// estimate is what a learner took from the sketch for a quantity.
type estimate struct {
	quantity string
	value    float64
}

// How near an estimate comes to what the sketch shows: a share of a length, or
// of the sketch where the side is short, and degrees. A judgement: what the
// eye can do.
const (
	nearSize    = 0.20
	nearSketch  = 0.06
	nearDegrees = 15.0
	nearMost    = 45.0 // degrees, for a side too short to have a clear direction
)

// Wanted lists the quantities to be estimated.
func (s *Sketch) Wanted() []*lesson.Quantity {
	var all []*lesson.Quantity
	for _, name := range []string{s.Plan.Size, s.Plan.Direction} {
		if q := s.lesson.Quantity(name); q != nil {
			all = append(all, q)
		}
	}
	return all
}

// Estimated is the estimate kept for the quantity called name, in its unit; false
// where none is, and for a nil sketch.
func (s *Sketch) Estimated(name string) (float64, bool) {
	if s == nil {
		return 0, false
	}
	for _, e := range s.now.kept {
		if e.quantity == name {
			return e.value, true
		}
	}
	return 0, false
}

// EstimateText is the estimate kept for the quantity called name, in round numbers
// and with its unit; "" where none is.
func (s *Sketch) EstimateText(name string) string {
	q := s.lesson.Quantity(name)
	v, ok := s.Estimated(name)
	if !ok {
		return ""
	}
	return s.lesson.Reported(q, v, lesson.Digits{Magnitude: 2})
}

// Tried is what was said of the estimate last entered for the quantity called
// name; false where none was.
func (s *Sketch) Tried(name string) (EstimateReply, bool) {
	for _, r := range s.now.tried {
		if r.Quantity == name {
			return r, true
		}
	}
	return EstimateReply{}, false
}

// EstimateReply is what is said of the estimate of one quantity, by name.
type EstimateReply struct {
	Quantity, Entry string
	Reply
}

// Estimate takes what the learner reads off the sketch: an entry for each of
// the quantities wanted, by name. Those that go with the sketch are kept. It does
// nothing, nil, before the sketch is closed.
func (s *Sketch) Estimate(entries map[string]string) []EstimateReply {
	if s.Stage() < Estimating {
		return nil
	}
	s.keep()
	var all []EstimateReply
	for _, q := range s.Wanted() {
		if _, ok := s.Estimated(q.Name); ok {
			continue
		}
		r := s.judgeEstimate(q, entries[q.Name])
		all = append(all, EstimateReply{q.Name, entries[q.Name], r})
	}
	s.now.tried = all
	return all
}

func (s *Sketch) judgeEstimate(q *lesson.Quantity, text string) Reply {
	if text == "" {
		return s.say(verdict.Unreadable, "", "estimate.empty", "symbol", s.lesson.SymbolText(q.Name))
	}
	values, bad := s.reader.ReadEstimate(q, text)
	if bad != nil {
		return Reply{Feedback: bad.Message()}
	}
	if len(values) == 0 {
		return s.say(verdict.Unreadable, "", "estimate.empty", "symbol", s.lesson.SymbolText(q.Name))
	}
	for _, v := range values {
		if q.Distance(v, q.True) <= s.tolerance(q, q.True) {
			s.now.kept = append(s.now.kept, estimate{q.Name, v})
			return s.say(verdict.Correct, "", "estimate.kept")
		}
	}
	lo, hi := s.reader.Limits(q)
	out := !math.IsNaN(lo) && !math.IsNaN(hi) && !q.Within(values[len(values)-1], lo, hi)
	switch {
	case q.Name == s.Plan.Direction && out:
		return s.say(verdict.Unexplained, "", "estimate.heading.out")
	case q.Name == s.Plan.Direction:
		return s.say(verdict.Unexplained, "", "estimate.heading")
	case out:
		return s.say(verdict.Unexplained, "", "estimate.size.out", "value", text)
	}
	longest := 0
	for i, f := range s.Plan.Forces {
		if r2.Norm(f.Vec) > r2.Norm(s.Plan.Forces[longest].Vec) {
			longest = i
		}
	}
	return s.say(verdict.Unexplained, "", "estimate.size", "force", s.name(longest), "value", s.lesson.ShowGiven(s.Plan.Forces[longest].Name))
}

// tolerance is how far from v an estimate of q may lie and still agree with
// the sketch.
func (s *Sketch) tolerance(q *lesson.Quantity, v float64) float64 {
	least := nearSketch * s.reach / grasp
	if q.Name != s.Plan.Direction {
		return math.Max(nearSize*math.Abs(v), least)
	}
	size := s.lesson.Quantity(s.Plan.Size).True
	return min(max(nearDegrees, math.Atan2(least, size)*180/math.Pi), nearMost)
}

// Near tells whether v, a value of q, goes with the estimate kept for q; so does
// any value where there is none.
func (s *Sketch) Near(q *lesson.Quantity, v float64) bool {
	kept, ok := s.Estimated(q.Name)
	return !ok || q.Distance(v, kept) <= s.tolerance(q, kept)
}
