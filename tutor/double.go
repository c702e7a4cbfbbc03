package tutor

import (
	"iter"
	"sync"

	"closingside/tutor/lesson"
)

// Two slips together: every way is worked out once for a lesson and a
// quantity, from the true values, and listed in order of value. A check looks
// up those near what was entered, and works these few out again from what the
// learner has.

// doubles is every two slips that reach a quantity.
type doubles struct {
	making sync.Mutex
	made   bool
	goOn   func() (struct{}, bool) // makes a little more of the list; nil before it is begun, and after
	stop   func()                  // gives up a list begun

	values []float64 // in order
	all    []listed  // of these values
	uses   []useOf   // by listed.use
	total  float64   // of the weights where nothing is entered

	// What the list is of.
	twice, variants []variant // what two slips, and one, make of a formula for the quantity
	misread         []misreading
	copied          []copiedOnce
	ways            []way
}

// useOf is the weight of the doubles that rest on the same steps in the head.
type useOf struct {
	steps  set
	weight float64
}

// double is two slips: the first at one step or in a given, the second in a
// later step, in another one that meets it further on, or in the same formula.
type double struct {
	first, second *outcome // second is nil where v is
	v             *variant // the second in the last step (or both in it, where first is nil)
	plan, other   *plan    // from the first, and from the second where that has its own
	base          []float64
	copied        *place // a given read as another value in v's formula
	weight        float32
}

// listed is a double in few bytes: there are tens of thousands, and they stay as
// long as the lesson does.
type listed struct {
	first, second int32 // where the slips stand in the lists that sort tells of
	way, other    int16 // of doubles.ways
	use           int32
	weight        float32
	sort          sortOfDouble
}

// sortOfDouble tells how two slips come together.
type sortOfDouble uint8

const (
	inOne       sortOfDouble = iota // formula: first is of twice
	fromMisread                     // first is of misread, second of variants
	fromCopied                      // first is of copied
	inFirst                         // of a way's steps: first is of what two slips make of it
	inLast                          // first is of what a slip makes of the way's first step, second of variants
	atMeeting                       // first is of what a slip makes of the first step of one way, second of the other
)

// open is the double listed at x.
func (d *doubles) open(x *listed) double {
	o := double{weight: x.weight}
	way := func(i int16) (*plan, *wrongStep) { return d.ways[i].plan, d.ways[i].wrong }
	var wrong *wrongStep
	switch x.sort {
	case inOne:
		o.v = &d.twice[x.first]
	case fromMisread:
		m := &d.misread[x.first]
		o.first, o.base, o.v = &m.outcome, m.truth, &d.variants[x.second]
	case fromCopied:
		o.v, o.copied = d.copied[x.first].v, d.copied[x.first].at
	case inFirst:
		o.plan, wrong = way(x.way)
		o.first = &wrong.twice[x.first]
	case inLast:
		o.plan, wrong = way(x.way)
		o.first, o.v = &wrong.once[x.first], &d.variants[x.second]
	case atMeeting:
		o.plan, wrong = way(x.way)
		o.first = &wrong.once[x.first]
		o.other, wrong = way(x.other)
		o.second = &wrong.once[x.second]
	}
	return o
}

// mostDoubles bounds the list of a quantity: the rarest are left out.
const mostDoubles = 40000

// doublesOf lists the doubles of quantity q, made when first asked for.
func (l *Lesson) doublesOf(q int) *doubles {
	d := &l.ready().of[q].doubles
	d.make(l, q, func() bool { return false })
	return d
}

// make makes the list for quantity q, or as much of it as there is time for;
// it tells whether the list is whole.
func (d *doubles) make(l *Lesson, q int, late func() bool) bool {
	d.making.Lock()
	defer d.making.Unlock()
	if !d.made && d.goOn == nil {
		d.goOn, d.stop = iter.Pull(func(yield func(struct{}) bool) {
			m := &doubler{d: d, l: l, q: q, s: NewWork(l, lesson.DefaultSettings()).now(&lesson.Quantity{}), uses: map[set]int32{},
				wait: func() bool { return yield(struct{}{}) }}
			if m.list() {
				m.finish()
			}
		})
	}
	for !d.made && !late() {
		if _, more := d.goOn(); !more {
			d.made, d.goOn, d.stop = true, nil, nil
		}
	}
	return d.made
}

// forget gives up a list begun and not whole.
func (d *doubles) forget() {
	d.making.Lock()
	defer d.making.Unlock()
	if d.goOn == nil {
		return
	}
	d.stop()
	d.goOn, d.stop = nil, nil
	d.uses, d.total = nil, 0
	d.twice, d.variants, d.misread, d.copied, d.ways = nil, nil, nil, nil, nil
}

// joinable tells whether v is one slip, and not too rare to be thought of with
// another.
func (v *variant) joinable() bool { return len(v.forms) > 0 && !v.lone }

// apartFrom tells whether o and another slip can be told by their names.
func (o *outcome) apartFrom(ids []string) bool {
	return len(o.ids) > 1 || len(ids) > 1 || o.ids[0] != ids[0]
}

// weightFor is the weight of the doubles that may still happen where the
// entries for standing are there to be read.
func (d *doubles) weightFor(standing set) float64 {
	sum := 0.0
	for i := range d.uses {
		if d.uses[i].steps&standing == 0 {
			sum += d.uses[i].weight
		}
	}
	return sum
}
