package tutor

import (
	"slices"
	"strconv"

	"closingside/tutor/entry"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

// Reply is what the tutor answers to one entry.
type Reply struct {
	Quantity    string // canonical name
	Entry       string // as typed
	Verdict     verdict.Verdict
	Reading     entry.Reading // zero where unreadable
	Fault       *entry.Error  // where unreadable
	Slips       []Suspect     // best first
	Unexplained float64       // probability that none of them is it
	From        string        // carried: the first wrong entry
	Rounded     *Rounded      // early-rounding
	Notes       []string      // keys of notes on a right answer: "unit-missing"
	Feedback    string        // a sentence or two for the learner
	Asked       bool          // whether Feedback asks which of the first two Slips it was (see Work.Answer)
	Chosen      Choice        // what was said to that
	Changed     []string      // quantities entered later whose standing entry is now judged otherwise

	rivals    [2]Suspect    // which Feedback asks, or asked, about
	help      string        // with which Feedback begins where the value comes again; "" else
	estimate  string        // with which it ends where the value is far from the learner's own; "" else
	perhaps   bool          // Rounded is likely to be all, and not sure
	finds     string        // unexplained: the quantity that a formula finds, which is another than asked; "" where none is
	numberOff string        // unexplained: the one number that keeps an expression from being right; "" where none does
	typed     entry.Reading // as read; Reading has a direction's value brought to degrees from +x
}

// Suspect is one explanation of a wrong value: one slip, several that give the
// same value, or two together (joined as "a+b").
type Suspect struct {
	IDs         []string
	Probability float64
	Likely      string // of IDs the one that most likely made it
	At          string // the quantity in whose finding the slip sits

	same      string  // the symbol of the force whose very value was written down; "" where there is none
	value     float64 // what it comes to
	full      float64 // that with all digits, where value is as it was written; 0 elsewhere
	unentered float64 // from true values in the place of those entered; 0 where there is none
}

// LikeliestFirst lists the ids of s, that which most likely made it before the others.
func (s Suspect) LikeliestFirst() []string {
	ids := slices.Clone(s.IDs)
	if i := slices.Index(ids, s.Likely); i > 0 {
		copy(ids[1:i+1], ids[:i])
		ids[0] = s.Likely
	}
	return ids
}

// Rounded names the intermediate that was rounded too soon.
type Rounded struct {
	What   string // "sin β"
	Digits int    // kept: significant digits, or decimals of an angle
	Keep   int    // to keep instead

	angle   bool    // What is an angle
	value   float64 // as rounded; 0 of several
	several bool    // every sine, cosine and tangent is kept so: What are these, or among them
	among   bool    // What is one of several, and can't have done nearly all of it alone
	place   int     // in the formula, of a value worked out in it; 0 of any other
	of      set     // the quantities kept so, of those it reads
}

// Kept is how many digits, or decimals of an angle, were kept, in words.
func (r *Rounded) Kept() string { return r.inWords(r.Digits) }

// Wanted is how many are to be kept instead, in words.
func (r *Rounded) Wanted() string { return r.inWords(r.Keep) }

func (r *Rounded) inWords(n int) string {
	key := "digits.significant"
	if r.angle {
		key = "digits.decimals"
	}
	switch n {
	case 0:
		key += ".none"
	case 1:
		key += ".one"
	}
	return text.Say(key, "n", strconv.Itoa(n))
}
