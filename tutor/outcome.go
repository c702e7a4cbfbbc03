package tutor

import (
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// outcome is a value that hypotheses predict for a quantity: the slips that
// were made, where, and by which formula the value comes out.
type outcome struct {
	value  float64  // as values are compared (see fold)
	raw    float64  // as it comes out, sign and all
	ids    []string // equal in value; "a+b" for two slips together
	likely string   // of ids the most likely; "" where there is one alone
	at     string   // quantity in whose finding the (first) slip sits
	weight float64  // prior among outcomes, before normalising
	exact  float64  // share of its ways that are whole degrees by sums alone: no rounding blurs those

	from     string   // carried: the first wrong entry it rests on
	rests    set      // and all of them
	straight bool     // from what is entered, no step in the head
	rounded  *Rounded // early rounding: what was rounded

	written bool          // the slip is in writing a value down, not in a formula
	of      float64       // that value, where written
	full    float64       // of two slips, the value written down with all its digits; 0 where that is value
	prog    *expr.Program // the formula that gives it; nil for a value written down
	basis   basis         // the values it is worked from
	start   []float64     // of its own, or told of (see table.outcome)
	forms   []form        // the formulas behind ids

	unentered float64 // the value from true values in the place of those entered; 0 where there is none

	copied *place // a given read as another value in this formula, or nil
}

// basis tells from which values an outcome is worked.
type basis uint8

const (
	ofItsOwn   basis = iota // outcome.start
	ofEntries               // state.own
	ofTruth                 // state.truth
	ofAccepted              // state.sound
)

// form is a formula that a slip leads to.
type form struct {
	id     string
	tree   expr.Node
	weight float64
}

// came is the value that later steps go on from.
func (o *outcome) came() float64 {
	if o.raw != 0 {
		return o.raw
	}
	return o.value
}

// lead is the id that most likely made the value.
func (o *outcome) lead() string {
	if o.likely != "" {
		return o.likely
	}
	return o.ids[0]
}

// place is where a value stands in a list too heavy to sort.
type place struct {
	value float64
	index int32
}

// placeOf is where wrong value v of q stands: one that came out below zero after
// those of its size that did not.
func placeOf(q *lesson.Quantity, v float64, below bool, index int) place {
	if below {
		v += 4 * q.Epsilon()
	}
	return place{v, int32(index)}
}

func sortPlaces(order []place) {
	slices.SortFunc(order, func(a, b place) int {
		switch { // no value is NaN
		case a.value < b.value:
			return -1
		case a.value > b.value:
			return 1
		}
		return int(a.index - b.index)
	})
}

// absorb adds another way to the same value, but for its forms. Each id counts once.
func (o *outcome) absorb(other *outcome) {
	if both := o.weight + other.weight; both > 0 {
		o.exact = (o.exact*o.weight + other.exact*other.weight) / both
	}
	if o.likely = o.lead(); other.weight > o.weight {
		o.likely = other.lead()
	}
	for _, id := range other.ids {
		if !slices.Contains(o.ids, id) {
			o.ids = append(slices.Clip(o.ids), id)
			o.weight += other.weight / float64(len(other.ids))
			slices.Sort(o.ids)
		}
	}
}
