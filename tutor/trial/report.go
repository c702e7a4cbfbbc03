package trial

import (
	"slices"
	"time"

	"closingside/tutor/slips"
)

// Report is what a trial found. Shares are of the cases met, between 0 and 1.
type Report struct {
	Seed       uint64        `json:"seed"`
	Problems   int           `json:"problems"`
	Learners   int           `json:"learners"` // for each problem
	Entries    int           `json:"entries"`
	Habits     Habits        `json:"habits"`
	Causes     []NamedRow    `json:"causes"`
	Slips      []SlipRow     `json:"slips"`
	Confusions []Confusion   `json:"confusions"` // most frequent first
	Offered    []Reliability `json:"offered"`    // every explanation listed
	Accused    []Reliability `json:"accused"`    // slips named
	Misses     []Miss        `json:"misses,omitempty"`
	Median     time.Duration `json:"medianNs"` // of a check
	Most       time.Duration `json:"p99Ns"`    // 99th percentile
}

// NamedRow is the counts of one cause; "one", "one four" for learners who keep
// four digits, and so on.
type NamedRow struct {
	Name string `json:"name"`
	Row
}

// SlipRow is the counts of one slip.
type SlipRow struct {
	ID string `json:"id"`
	Named
	Recall    float64 `json:"recall"`    // named first of those met
	Precision float64 `json:"precision"` // justified of those named
}

// Confusion is something said that was not what happened.
type Confusion struct {
	Made  string `json:"made"`
	Told  string `json:"told"`
	Count int    `json:"count"`
}

// Miss is an entry that was not judged as it was, with all that leads to it.
type Miss struct {
	Problem  string      `json:"problem"` // its code
	Given    string      `json:"given"`   // what it gives, as written
	Before   [][2]string `json:"before"`  // what the learner had written: quantity, entry
	Quantity string      `json:"quantity"`
	Entry    string      `json:"entry"`
	Made     string      `json:"made"`
	Told     string      `json:"told"`
	Stated   float64     `json:"stated"` // the probability of what was told
	Place    int         `json:"place"`  // of the truth among the explanations listed, from 0; −1 where it is not
}

// Reliability is one line of a reliability table.
type Reliability struct {
	From  float64 `json:"from"` // lowest probability of the line
	Count int     `json:"count"`
	Mean  float64 `json:"mean"`  // probability stated
	Right float64 `json:"right"` // share that was so
}

// rowNames are the rows of causes, in order.
var rowNames = []string{
	"one", "one full", "one four", "one four cut", "one three", "one three cut", "one head", "one radians", "one expression", "one equation",
	"two magnitudes", "two magnitudes worked", "two magnitudes written", "two magnitudes alone", "two angles",
	"early", "early alone", "carried", "on wrong", "mixed", "noise", "noise alone",
	"right", "right full", "right four", "right four cut", "right three", "right three cut",
}

// Row is the counts under a name; zero where there are none.
func (r *Report) Row(name string) Row {
	for _, c := range r.Causes {
		if c.Name == name {
			return c.Row
		}
	}
	return Row{}
}

func (t *tally) report(problems int, h Habits, o Options) *Report {
	r := &Report{Seed: o.Seed, Problems: problems, Learners: o.Learners, Entries: t.entries, Habits: h}
	for _, name := range rowNames {
		if row := t.rows[name]; row != nil {
			r.Causes = append(r.Causes, NamedRow{name, *row})
		}
	}
	for _, s := range slips.Catalogue() {
		if n := t.slips[s.ID]; n != nil {
			r.Slips = append(r.Slips, SlipRow{s.ID, *n, Share(n.First, n.Met), Share(n.Justified, n.Accused)})
		}
	}
	for k, n := range t.confusions {
		r.Confusions = append(r.Confusions, Confusion{k[0], k[1], n})
	}
	slices.SortFunc(r.Confusions, byCount)
	r.Offered, r.Accused = t.offered.table(), t.accused.table()
	slices.Sort(t.took)
	r.Median, r.Most = quantile(t.took, 0.5), quantile(t.took, 0.99)
	return r
}

func (b *bins) table() []Reliability {
	var all []Reliability
	for i, x := range b {
		if x.n > 0 {
			all = append(all, Reliability{edges[i], x.n, x.sum / float64(x.n), Share(x.right, x.n)})
		}
	}
	return all
}

// Share is a of b; 0 where b is 0.
func Share(a, b int) float64 {
	if b == 0 {
		return 0
	}
	return float64(a) / float64(b)
}
