package verdict

// Verdict is what is said of an entry. The order is the order of judging.
type Verdict uint8

// The verdicts.
const (
	Unreadable    Verdict = iota // not a value; nothing is recorded against the learner
	Correct                      // inside the band, or follows from the learner's own accepted entries
	Carried                      // the right method on an earlier wrong entry
	EarlyRounding                // what an intermediate rounded too soon gives
	SlipFound                    // a named mistake explains the value
	Unexplained                  // nothing does
)

var words = [...]string{"unreadable", "correct", "carried", "early-rounding", "slip", "unexplained"}

// String is the machine's word for v.
func (v Verdict) String() string { return words[v] }
