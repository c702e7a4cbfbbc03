package trial

import (
	"math"
	"slices"
	"time"

	"closingside/statics/expr"
	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// learner is one person at work on one problem.
type learner struct {
	lesson *tutor.Lesson
	work   *tutor.Work
	habits *Habits
	die    die

	keep    keeping
	paper   bool              // goes on from what is written
	head    float64           // share of the steps not written down
	way     map[string]string // quantity → route of the worked solution chosen
	mind    map[string]held   // values found so far, written or not
	refused []string          // right entries that were judged otherwise
	radians bool              // the calculator stands in radians
	careful bool              // puts things right: no mishap now
	cases   []Case
}

// held is a value the learner holds, with what went wrong on the way to it
// since it was last true or written.
type held struct {
	value float64
	fault fault
}

// fault is what went wrong on the way to a value.
type fault struct {
	slips []made   // slips made, oldest first
	rests []string // wrong written values it rests on
	early bool     // a value on the way was rounded too soon
	noise bool
}

// made is a slip at one step.
type made struct{ id, at string }

// with is f and what another value brings along.
func (f fault) with(o fault) fault {
	for _, m := range o.slips {
		if !slices.Contains(f.slips, m) {
			f.slips = append(slices.Clip(f.slips), m)
		}
	}
	for _, r := range o.rests {
		if !slices.Contains(f.rests, r) {
			f.rests = append(slices.Clip(f.rests), r)
		}
	}
	f.early = f.early || o.early
	return f
}

// Shares of the steps that learners of the two sorts keep in the head
// (judgement).
const (
	fewInHead  = 0.15
	mostInHead = 0.9
)

func newLearner(l *tutor.Lesson, h *Habits, d die) *learner {
	p := &learner{lesson: l, work: tutor.NewWork(l, l.Problem.Settings), habits: h, die: d,
		way: map[string]string{}, mind: map[string]held{}}
	switch p.die.weighted([]float64{h.Four, h.Three, 1 - h.Four - h.Three}) {
	case 0:
		p.keep.digits = 4
	case 1:
		p.keep.digits = 3
	}
	p.keep.cut = p.keep.digits > 0 && p.die.chance(h.Cut)
	p.radians = p.die.chance(h.Radians)
	p.head = fewInHead
	if p.die.chance(h.Head) {
		p.head = mostInHead
	}
	p.paper = p.die.chance(h.Paper)
	if len(l.Ways) > 0 {
		for _, step := range one(p.die, l.Ways).Steps {
			p.way[step.Quantity] = step.Route
		}
	}
	return p
}

// study works the problem: the answers first, then values for their own sake.
func (p *learner) study() {
	var others []string
	for i := range p.lesson.Quantities {
		q := &p.lesson.Quantities[i]
		switch {
		case q.Given || len(q.Routes) == 0 || math.IsNaN(q.True):
		case q.Equation:
			if p.die.chance(0.5) {
				p.reach(q.Name)
			}
		case q.Answer:
			p.reach(q.Name)
		default:
			others = append(others, q.Name)
		}
	}
	for range 2 {
		if len(others) > 0 {
			p.reach(one(p.die, others))
		}
	}
}

// reach finds a quantity that is not held yet and writes it down, and some of
// those on the way to it.
func (p *learner) reach(name string) {
	if _, done := p.mind[name]; done {
		return
	}
	steps, ok := p.plan(nil, name, nil)
	if !ok {
		return
	}
	var chain []step
	for i, s := range steps {
		if _, done := p.mind[s.quantity.Name]; done { // on the way to putting another right
			continue
		}
		chain = append(chain, s)
		if i == len(steps)-1 || p.wrong(s.quantity.Name) || !p.die.chance(p.head) {
			p.write(chain)
			chain = nil
		}
	}
}

// wrong tells whether a value stands written that was judged other than right.
func (p *learner) wrong(name string) bool {
	a := p.work.Standing(name)
	return a != nil && a.Verdict != verdict.Correct
}

// step is the finding of a quantity by one of its routes.
type step struct {
	quantity *lesson.Quantity
	route    *lesson.Route
}

// plan appends to steps those that find a quantity, each after what it reads.
// It does not pass through what is being found already.
func (p *learner) plan(steps []step, name string, finding []string) ([]step, bool) {
	q := p.lesson.Quantity(name)
	if q == nil || slices.Contains(finding, name) {
		return nil, false
	}
	finding = append(slices.Clip(finding), name)
	for _, r := range p.routes(q) {
		all, ok := slices.Clip(steps), true
		for _, in := range expr.Symbols(r.Tree) {
			if ok && !(q.Equation && letter(p.lesson.Quantity(in))) && !p.has(in, all) {
				all, ok = p.plan(all, in, finding)
			}
		}
		if ok {
			return append(all, step{q, r}), true
		}
	}
	return nil, false
}

// has tells whether a value is given, held, or found by the steps before.
func (p *learner) has(name string, steps []step) bool {
	if q := p.lesson.Quantity(name); q != nil && q.Given {
		return true
	}
	_, held := p.mind[name]
	return held || slices.ContainsFunc(steps, func(s step) bool { return s.quantity.Name == name })
}

// routes lists q's routes in the order this learner thinks of them. Nobody here finds by
// sines what a few sums of the statement give.
func (p *learner) routes(q *lesson.Quantity) []*lesson.Route {
	var all []*lesson.Route
	for i := range q.Routes {
		if !p.lesson.Seldom(q, i) {
			all = append(all, &q.Routes[i])
		}
	}
	for i := range all { // shuffled
		j := i + p.die.Below(len(all)-i)
		all[i], all[j] = all[j], all[i]
	}
	if r := q.Route(p.way[q.Name]); r != nil && p.die.chance(p.habits.FirstRoute) {
		all = append([]*lesson.Route{r}, slices.DeleteFunc(all, func(o *lesson.Route) bool { return o == r })...)
	}
	return all
}

// write works the steps of a chain in the head, all but the last, and writes
// the last one's value down; something may go wrong on the way.
func (p *learner) write(chain []step) {
	last := chain[len(chain)-1].quantity
	sheet := p.attempt(chain, p.mishap(chain))
	if sheet.none {
		p.mind[last.Name] = held{value: last.True} // looked up, and gone on from
		return
	}
	reply, took := p.enter(last, sheet.text)
	p.record(last, sheet, reply, took)
	wrong := reply.Verdict != verdict.Correct
	switch {
	case !p.careful && (sheet.fault.noise || wrong && sheet.fault.any() && !p.die.chance(p.habits.GoOn)):
		p.repair(last)
	default:
		p.settle(last, sheet, reply, wrong && sheet.fault.any())
	}
}

// repair goes back to whatever is wrong, and finds a quantity again without a
// mishap. What was written wrong is written again.
func (p *learner) repair(q *lesson.Quantity) {
	p.careful, p.radians = true, false
	for name, h := range p.mind {
		if h.fault.any() {
			delete(p.mind, name)
		}
	}
	delete(p.mind, q.Name)
	p.reach(q.Name)
	p.careful = false
}

func (p *learner) enter(q *lesson.Quantity, text string) (tutor.Reply, time.Duration) {
	start := time.Now()
	reply := p.work.Enter(q.Name, text)
	return reply, time.Since(start)
}

// settle holds what is written from now on. What was judged right, rightly or
// not, is right for the learner; a wrong value is one that others rest on.
func (p *learner) settle(q *lesson.Quantity, s sheet, reply tutor.Reply, wrong bool) {
	h := held{value: s.value}
	if q.Equation {
		p.mind[q.Name] = h
		return
	}
	if p.paper || s.written {
		h.value = reply.Reading.Value
		if math.Abs(h.value) <= 360 { // what was written larger is gone on from as it stands
			h.value = turned(q, h.value)
		}
	}
	if !wrong && reply.Verdict != verdict.Correct {
		p.refused = append(p.refused, q.Name)
	}
	if wrong {
		h.fault.rests = append(slices.Clone(s.fault.rests), q.Name)
	}
	p.mind[q.Name] = h
}

func (f fault) any() bool { return len(f.slips) > 0 || len(f.rests) > 0 || f.early || f.noise }
