package tutor

import (
	"cmp"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// plan is how a quantity is worked when an earlier one came out wrong: the
// steps between that read it, in order, and the quantity's own step last. A
// plan depends on what is entered, not on the wrong value, so one serves every
// slip made at that place.
type plan struct {
	at     int // the wrong quantity; −1 where there is none
	steps  []planStep
	weight float64 // among ways to go on
	whole  bool    // the last step is sums alone
	keyed  bool    // a trigonometric key is pressed on the way
	found  set     // the wrong quantity and those found from it on the way
}

// planStep is the finding of one quantity.
type planStep struct {
	quantity, route int
	tree            expr.Node
	prog            *expr.Program
	quadrant        *ofComponents // where an arctangent ends it, and the value may be a wrong one
	supplement      bool          // the other angle of the same sine
	asDrawn         bool          // the quadrant is that of the sketch, whatever the signs
}

// shareModeSet is how often a calculator in the wrong mode is set right before
// the next key is pressed, by who does both steps in the head, and how often that
// key is pressed on a sine that stands for its angle: cos 0.5° (judgement).
const shareModeSet = 0.3

// How learners go on (judgement).
const (
	// perStepInHead is the factor on a hypothesis for each step between the
	// slip and the entry that the learner did not write down.
	perStepInHead = 0.6

	shareMixed = 0.2 // of going over from one method to the other
	shareAside = 0.2 // of finding a value again by a way the wrong one doesn't touch
	shareBlunt = 0.3 // of taking the other angle of the same sine
	shareDrawn = 0.3 // of choosing the quadrant by the sketch where the signs say another

	leastPlan = 0.002 // plans thought of less often than this are left out
	maxPlans  = 32    // for one place, likeliest first
)

// planner lists the plans from one wrong quantity to another.
type planner struct {
	l        *Lesson
	at       int
	touched  set // what the wrong quantity may reach
	standing set
}

// draft is a plan in the making.
type draft struct {
	steps      []planStep
	done, skip set // found with the wrong value, found without
	weight     float64
	method     lesson.Method
}

// planKey tells when the plans of a lesson may be used again.
type planKey struct {
	q, at    int
	standing set
}

// plans lists the ways a slip in the finding of quantity at reaches q when the
// entries for standing are there to be read.
func (l *Lesson) plans(q, at int, standing set) []plan {
	prep := l.ready()
	key := planKey{q, at, standing}
	prep.mu.Lock()
	defer prep.mu.Unlock()
	if plans, ok := prep.plans[key]; ok {
		return plans
	}
	plans := l.unlike(l.draftPlans(q, at, standing), standing)
	plans = plans[:min(len(plans), maxPlans)]
	if prep.plans == nil || len(prep.plans) > maxPlanKeys {
		prep.plans = map[planKey][]plan{}
	}
	prep.plans[key] = plans
	return plans
}

// draftPlans lists every plan thought of often enough, likeliest first.
func (l *Lesson) draftPlans(q, at int, standing set) []plan {
	p := &planner{l: l, at: at, standing: standing}
	p.touched = p.reach(q)
	var out []plan
	p.find(draft{weight: 1 / perStepInHead}, q, set(0).with(q), func(done draft) {
		last := &done.steps[len(done.steps)-1]
		keyed := slices.ContainsFunc(done.steps, func(st planStep) bool {
			return expr.Contains(st.tree, expr.IsTrig) || expr.Contains(st.tree, expr.IsInverseTrig)
		})
		out = append(out, plan{at: at, steps: done.steps, weight: done.weight, whole: sumsAlone(last.tree, l), keyed: keyed, found: (done.done &^ (1 << q)).with(at)})
	})
	slices.SortStableFunc(out, func(a, b plan) int { return cmp.Compare(b.weight, a.weight) })
	return out
}

// maxPlanKeys bounds what a lesson remembers of plans.
const maxPlanKeys = 4096

// reach is the set of quantities that the wrong one may touch on the way to q.
func (p *planner) reach(q int) set {
	prep := p.l.prep
	reached := set(0).with(p.at)
	for {
		grown := reached
		for i := range p.l.Quantities {
			if i == q || reached.has(i) || prep.givens.has(i) || p.standing.has(i) {
				continue
			}
			for _, f := range prep.of[i].routes {
				if f.reads&reached != 0 {
					grown = grown.with(i)
					break
				}
			}
		}
		if grown == reached {
			return reached
		}
		reached = grown
	}
}

// find gives every way to find quantity i from the wrong one.
func (p *planner) find(from draft, i int, on set, emit func(draft)) {
	for j := range p.l.prep.of[i].routes {
		f := &p.l.prep.of[i].routes[j]
		if f.reads&p.touched == 0 {
			continue
		}
		next := from
		next.weight *= perStepInHead * f.share
		if m := p.l.Quantities[i].Routes[j].Method; m != lesson.AnyMethod {
			if next.method != lesson.AnyMethod && next.method != m {
				next.weight *= shareMixed
			}
			next.method = m
		}
		p.read(next, f.reads&p.touched, on, func(done draft) {
			step := planStep{quantity: i, route: j, tree: p.l.Quantities[i].Routes[j].Tree, prog: f.prog, quadrant: f.quadrant}
			done.steps = append(slices.Clip(done.steps), step)
			done.done = done.done.with(i)
			emit(done)
			if f.crest != nil {
				done.weight *= shareBlunt
				done.steps = slices.Clone(done.steps)
				done.steps[len(done.steps)-1].supplement = true
				emit(done)
			}
		})
	}
}

// read gives every way to find what a route reads of what the wrong quantity
// may touch; at least one of them is touched. Nothing on the way is found again.
func (p *planner) read(from draft, reads, on set, emit func(draft)) {
	if from.weight < leastPlan {
		return
	}
	touched := from.done.with(p.at)
	left := reads &^ (touched | from.skip | on)
	if left == 0 {
		if reads&touched != 0 {
			emit(from)
		}
		return
	}
	i := left.first()
	p.find(from, i, on.with(i), func(done draft) { p.read(done, reads, on, emit) })
	from.skip = from.skip.with(i)
	from.weight *= max(shareAside, p.untouched(i))
	p.read(from, reads, on, emit)
}

// untouched is how often a quantity is found by a way that the wrong one does
// not touch.
func (p *planner) untouched(i int) float64 {
	sum := 0.0
	for _, f := range p.l.prep.of[i].routes {
		if f.reads&p.touched == 0 {
			sum += f.share
		}
	}
	return sum
}

// work is the value a step comes to.
func (st *planStep) work(values []float64, tape *expr.Tape) float64 {
	if !st.bySigns() {
		st.prog.Run(values, tape)
	}
	return st.ran(values, tape)
}

// bySigns tells whether the signs of the components choose the quadrant.
func (st *planStep) bySigns() bool { return st.quadrant != nil && !st.asDrawn }

// ran is the value a step comes to whose formula was just run.
func (st *planStep) ran(values []float64, tape *expr.Tape) float64 {
	if st.bySigns() {
		return st.quadrant.direction(values, tape)
	}
	v := tape.Values[st.prog.Len()-1]
	if st.supplement {
		v = 180 - v
	}
	return v
}

// goesOn lists the ways a route is gone on by with values that may be wrong.
func (f *routeFacts) goesOn(quantity, route int) []planStep {
	st := planStep{quantity: quantity, route: route, prog: f.prog, quadrant: f.quadrant}
	steps := []planStep{st}
	if f.crest != nil {
		st.supplement = true
		steps = append(steps, st)
	}
	if f.quadrant != nil {
		st.asDrawn = true
		steps = append(steps, st)
	}
	return steps
}

// share is how often a step is taken this way.
func (st *planStep) share() float64 {
	switch {
	case st.supplement:
		return shareBlunt
	case st.asDrawn:
		return shareDrawn
	}
	return 1
}

// run works the steps of p with the wrong quantity at v, in values (a copy of
// the state's own), and returns the value of the last step.
func (p *plan) run(values []float64, v float64, tape *expr.Tape) float64 {
	if p.at >= 0 {
		values[p.at] = v
	}
	for i := range p.steps {
		st := &p.steps[i]
		v = st.work(values, tape)
		values[st.quantity] = v
	}
	return v
}

// blunt tells whether a step of p takes the other angle of a sine.
func (p *plan) blunt() bool {
	return slices.ContainsFunc(p.steps, func(st planStep) bool { return st.supplement })
}
