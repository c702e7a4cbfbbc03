package trial

import (
	"cmp"
	"slices"
	"strings"
	"time"

	"closingside/tutor/verdict"
)

// tally counts cases.
type tally struct {
	entries    int
	rows       map[string]*Row   // by key of a row
	slips      map[string]*Named // by id
	confusions map[[2]string]int // what happened, what was said
	offered    bins              // every explanation listed
	accused    bins              // those a slip was named by
	took       []time.Duration
}

func newTally() *tally {
	return &tally{rows: map[string]*Row{}, slips: map[string]*Named{}, confusions: map[[2]string]int{}}
}

// Row counts the cases of one cause. Met are those judged other than correct;
// the counts after it are of those.
type Row struct {
	Entries int `json:"entries"`
	Met     int `json:"met"`
	First   int `json:"first"`   // the truth is listed first or said
	Said    int `json:"said"`    // the verdict says what happened
	Accused int `json:"accused"` // a slip is named that was not made, or not alone
	Resent  int `json:"resent"`  // taken for carried or rounded, wrongly
	Silent  int `json:"silent"`  // unexplained
	Shared  int `json:"shared"`  // noise, rounding, two slips, or a slip not listed first: a single other slip writes the same value
}

// Named counts one slip of the catalogue.
type Named struct {
	Met       int `json:"met"`       // made alone and met
	First     int `json:"first"`     // listed first
	Said      int `json:"said"`      // named
	Accused   int `json:"accused"`   // how often it was named, alone or among slips equal in value
	Justified int `json:"justified"` // of those, how often one of those named had been made
}

// add counts one case.
func (t *tally) add(c *Case) {
	t.entries++
	t.took = append(t.took, c.Took)
	for _, key := range c.keys() {
		if t.rows[key] == nil {
			t.rows[key] = &Row{}
		}
		t.rows[key].add(c)
	}
	t.bySlip(c)
	if c.met() && !c.fair() {
		t.confusions[[2]string{c.happened(), c.told()}]++
	}
	if c.Reply.Verdict == verdict.Unreadable || !c.met() {
		return
	}
	for i, s := range c.Reply.Slips {
		t.offered.add(s.Probability, c.holds(s))
		if i == 0 && c.Reply.Verdict == verdict.SlipFound {
			t.accused.add(s.Probability, c.holds(s))
		}
	}
	if v := c.Reply.Verdict; v == verdict.Carried || v == verdict.EarlyRounding {
		t.offered.add(1-c.Reply.Unexplained, c.fair())
	}
}

// keys lists the rows that a case counts in.
func (c *Case) keys() []string {
	switch c.Cause {
	case Right:
		return []string{"right", "right " + c.habit()}
	case OneSlip:
		keys := []string{"one", "one " + c.habit()}
		if c.Expression {
			keys = append(keys, "one expression")
		}
		if c.Radians {
			keys = append(keys, "one radians")
		}
		if c.Equation {
			keys = append(keys, "one equation")
		}
		if c.Head {
			keys = append(keys, "one head")
		}
		return keys
	case TwoSlips:
		if c.Angle {
			return []string{"two angles"}
		}
		keys := []string{"two magnitudes", "two magnitudes worked"}
		if c.Written {
			keys[1] = "two magnitudes written"
		}
		if !c.Shared {
			keys = append(keys, "two magnitudes alone")
		}
		return keys
	case Early, Noise:
		if !c.Shared {
			return []string{causeKeys[c.Cause], causeKeys[c.Cause] + " alone"}
		}
	}
	return []string{causeKeys[c.Cause]}
}

// causeKeys are the rows of the causes that have one row.
var causeKeys = map[Cause]string{Early: "early", Carried: "carried", OnWrong: "on wrong", Noise: "noise", Mixed: "mixed"}

// habit names how the learner keeps values on the way.
func (c *Case) habit() string {
	word := map[int]string{0: "full", 3: "three", 4: "four"}[c.Kept]
	if c.Cut {
		word += " cut"
	}
	return word
}

// said tells whether the verdict names what happened.
func (c *Case) said() bool {
	v := c.Reply.Verdict
	switch c.Cause {
	case Right:
		return v == verdict.Correct
	case OneSlip, TwoSlips, OnWrong:
		return c.named()
	case Early:
		return v == verdict.EarlyRounding
	case Carried:
		return c.sentBack()
	case Noise:
		return v == verdict.Unexplained
	}
	return c.named() || c.sentBack() || v == verdict.EarlyRounding && len(c.Slips) == 0
}

// sentBack tells whether the verdict sends the learner to an entry that this
// one rests on, or to one that was judged wrong although it was not.
func (c *Case) sentBack() bool {
	return c.Reply.Verdict == verdict.Carried && len(c.Rests) > 0 && (slices.Contains(c.Rests, c.Reply.From) || slices.Contains(c.Refused, c.Reply.From))
}

// fair tells whether the verdict is true: it says what happened, or sends a
// learner who keeps three digits on the way back to them.
func (c *Case) fair() bool {
	return c.said() || c.Cause == Right && c.Kept == 3 && c.Reply.Verdict == verdict.EarlyRounding
}

func (r *Row) add(c *Case) {
	r.Entries++
	if !c.met() {
		return
	}
	r.Met++
	said := c.said()
	if said {
		r.Said++
	}
	if said || c.first() {
		r.First++
	}
	if c.Shared {
		r.Shared++
	}
	switch v := c.Reply.Verdict; {
	case v == verdict.Unexplained:
		r.Silent++
	case said:
	case v == verdict.SlipFound:
		r.Accused++
	case v == verdict.Carried || v == verdict.EarlyRounding:
		r.Resent++
	}
}

// bySlip counts a case for the slip made and for those named.
func (t *tally) bySlip(c *Case) {
	if c.Cause == OneSlip && c.met() {
		n := t.slip(c.Slips[0])
		n.Met++
		if c.first() {
			n.First++
		}
		if c.named() {
			n.Said++
		}
	}
	if c.Reply.Verdict != verdict.SlipFound {
		return
	}
	for _, id := range c.saidIDs() {
		for part := range strings.SplitSeq(id, "+") {
			n := t.slip(part)
			n.Accused++
			if c.holds(c.Reply.Slips[0]) {
				n.Justified++
			}
		}
	}
}

func (t *tally) slip(id string) *Named {
	if t.slips[id] == nil {
		t.slips[id] = &Named{}
	}
	return t.slips[id]
}

// saidIDs are the slips that a verdict names: single ones, where the likeliest
// is single; two together that come to the same value are known, and not said.
func (c *Case) saidIDs() []string {
	s := c.Reply.Slips[0]
	two := func(id string) bool { return strings.Contains(id, "+") }
	return slices.DeleteFunc(slices.Clone(s.IDs), func(id string) bool { return two(id) != two(s.Likely) })
}

// happened and told are the two sides of a confusion.
func (c *Case) happened() string {
	switch c.Cause {
	case OneSlip, TwoSlips:
		return c.Slips[0]
	case OnWrong:
		return c.Slips[0] + " on a wrong entry"
	}
	return map[Cause]string{Right: "right", Early: "early-rounding", Carried: "carried", Noise: "noise", Mixed: "several at once"}[c.Cause]
}

func (c *Case) told() string {
	if c.Reply.Verdict == verdict.SlipFound {
		return strings.Join(c.saidIDs(), ", ")
	}
	if c.Reply.Verdict == verdict.Carried && c.Cause == Carried {
		return "carried from " + c.Reply.From
	}
	return c.Reply.Verdict.String()
}

// bins is a reliability table: how often explanations of a given probability
// are true.
type bins [10]struct {
	n, right int
	sum      float64
}

// edges are the lower ends of the bins: finer where slips are named.
var edges = [len(bins{})]float64{0, 0.1, 0.2, 0.3, 0.5, 0.7, 0.8, 0.9, 0.95, 0.99}

func (b *bins) add(p float64, right bool) {
	i := len(edges) - 1
	for i > 0 && p < edges[i] {
		i--
	}
	b[i].n++
	b[i].sum += p
	if right {
		b[i].right++
	}
}

// quantile is the time that a share q of the checks does not exceed.
func quantile(sorted []time.Duration, q float64) time.Duration {
	if len(sorted) == 0 {
		return 0
	}
	return sorted[min(int(q*float64(len(sorted))), len(sorted)-1)]
}

// byCount orders confusions, the most frequent first.
func byCount(a, b Confusion) int {
	return cmp.Or(cmp.Compare(b.Count, a.Count), cmp.Compare(a.Made, b.Made), cmp.Compare(a.Told, b.Told))
}
