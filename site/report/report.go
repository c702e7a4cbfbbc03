package report

import (
	"slices"

	"closingside/site/parallel"
	"closingside/tutor/sets"
	"closingside/tutor/verdict"
)

// Report is what a class did.
type Report struct {
	Students []Student `json:"students"`
	Problems []Problem `json:"problems"`
	Slips    []Slip    `json:"slips"` // those that most students met first
	Again    []Again   `json:"again"` // what to teach again, the most needed first
	Entries  Counts    `json:"entries"`
	Alike    []Alike   `json:"alike"`   // logs that hold the same work
	Strange  int       `json:"strange"` // students who worked at a set that only another version can draw
	From     int64     `json:"from"`    // the first line and the last, in milliseconds since 1970
	To       int64     `json:"to"`
}

// Counts are entries by what was said of them.
type Counts struct {
	Correct     int `json:"correct"`
	Carried     int `json:"carried"`
	Rounding    int `json:"early_rounding"`
	Slip        int `json:"slip"`
	Unexplained int `json:"unexplained"`
	Unreadable  int `json:"unreadable"`
}

func (c *Counts) add(v verdict.Verdict) {
	switch v {
	case verdict.Correct:
		c.Correct++
	case verdict.Carried:
		c.Carried++
	case verdict.EarlyRounding:
		c.Rounding++
	case verdict.SlipFound:
		c.Slip++
	case verdict.Unexplained:
		c.Unexplained++
	default:
		c.Unreadable++
	}
}

// join counts the entries of another in.
func (c *Counts) join(o Counts) {
	c.Correct += o.Correct
	c.Carried += o.Carried
	c.Rounding += o.Rounding
	c.Slip += o.Slip
	c.Unexplained += o.Unexplained
	c.Unreadable += o.Unreadable
}

// All is the number of entries.
func (c Counts) All() int {
	return c.Correct + c.Carried + c.Rounding + c.Slip + c.Unexplained + c.Unreadable
}

// Problem is one problem of a set, whoever's numbers it had; or one of the
// page's own; or all others of a kind, each counted, though a student works
// several.
type Problem struct {
	Set        string     `json:"set"`    // its title; "" where it is in none
	Number     int        `json:"number"` // in the set's file, from 1; 0 where it is in none
	Kind       string     `json:"kind"`
	Story      string     `json:"story"`
	Began      int        `json:"began"` // students
	Done       int        `json:"done"`
	Shown      int        `json:"shown"` // opened the worked solution before all was found
	Quantities []Quantity `json:"quantities"`

	key string
}

// Quantity is one value of a problem. First + Later + Helped + Never = Tried.
type Quantity struct {
	Name    string  `json:"name"`
	Symbol  string  `json:"symbol"`
	What    string  `json:"what"`
	Answer  bool    `json:"answer"`
	Tried   int     `json:"tried"`   // students who entered something, or asked a hint
	First   int     `json:"first"`   // found it with the first entry, without help
	Later   int     `json:"later"`   // with a later one, without help
	Helped  int     `json:"helped"`  // after a hint for it, or the worked solution
	Never   int     `json:"never"`   // have not found it
	Tries   float64 `json:"tries"`   // median number of entries
	Seconds float64 `json:"seconds"` // median time, breaks over five minutes counted as five
}

// Slip is a mistake that was named.
type Slip struct {
	ID       string  `json:"id"`
	Title    string  `json:"title"`
	Students int     `json:"students"`
	Times    int     `json:"times"`
	At       string  `json:"at"`      // the symbol of the quantity in whose finding it sits most often
	Problem  string  `json:"problem"` // and the problem
	Example  Example `json:"example"`
}

// Example is what somebody wrote who made a slip.
type Example struct {
	Quantity string `json:"quantity"` // its symbol
	Entry    string `json:"entry"`    // "" for a slip in the sketch
}

// Again is one thing to teach again: a slip that students share, or a value
// that they did not find by themselves.
type Again struct {
	Slip     string `json:"slip,omitempty"` // its id
	Title    string `json:"title"`
	Students int    `json:"students"`
	At       string `json:"at"`
	Problem  string `json:"problem"`
}

// Student is what one log shows of one learner.
type Student struct {
	Name    string     `json:"name"` // of the file
	Done    int        `json:"done"` // problems
	Began   int        `json:"began"`
	Entries int        `json:"entries"`
	Seconds float64    `json:"seconds"`
	Sets    []Standing `json:"sets"`
	Rows    []Row      `json:"rows"`
}

// Standing is how far a student is with a set.
type Standing struct {
	Set      string  `json:"set"`
	ID       string  `json:"id"` // the number typed on the page; "" where all have the same numbers
	Done     int     `json:"done"`
	Problems int     `json:"problems"`
	Earned   float64 `json:"earned"`
	Marks    int     `json:"marks"`
	Shown    int     `json:"shown"` // problems of which the worked solution was opened first
}

// Row is one value of one problem of one student.
type Row struct {
	Problem  string   `json:"problem"`
	Set      string   `json:"set"`
	Number   int      `json:"number"`
	Kind     string   `json:"kind"`
	Quantity string   `json:"quantity"`
	Entries  int      `json:"entries"`
	Hints    int      `json:"hints"`
	Found    string   `json:"found"` // first, later, helped or never
	Seconds  float64  `json:"seconds"`
	Last     string   `json:"last"` // what was written last
	Slips    []string `json:"slips"`
}

// Of reports on logs. only, where not nil, keeps to one set. The faults are the
// *LogErrors of those that could not be worked again; the report is on the others.
func Of(logs []*Log, only *sets.Set) (r *Report, faults []error) {
	return of(logs, only, retrace)
}

func of(logs []*Log, only *sets.Set, work func(*Log) (*learner, error)) (r *Report, faults []error) {
	learners, why := parallel.Each(len(logs), func(i int) (*learner, error) { return work(logs[i]) }, nil)
	g := newGathering(only)
	var worked []*Log
	for i, p := range learners {
		if why[i] != nil {
			faults = append(faults, why[i])
			continue
		}
		g.add(p)
		worked = append(worked, logs[i])
	}
	r = g.report()
	r.Alike = alike(worked)
	return r, faults
}

// median of values; 0 where there are none.
func median(values []float64) float64 {
	if len(values) == 0 {
		return 0
	}
	v := slices.Sorted(slices.Values(values))
	return (v[(len(v)-1)/2] + v[len(v)/2]) / 2
}
