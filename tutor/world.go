package tutor

import (
	"math"

	"closingside/statics/expr"
)

// state is the work as it stands, by quantity: what hypotheses start from.
type state struct {
	w        *Work
	own      []float64 // what is typed as typed, everything else true
	truth    []float64
	standing set // quantities with an entry
	wrong    set // those whose entry is not right
	direct   [][]outcome
	tables   []*table
	rounding *table // early rounding, of the quantity the state is for
	two      *table // two slips together
	follows  *table // carried
}

// now is the state of the work for judging an entry for q. Entries that rest
// on q itself count as not made: q can't follow from them.
func (w *Work) now(q *Quantity) *state {
	if s := w.states[q.Name]; s != nil {
		return s
	}
	n := len(w.Lesson.Quantities)
	s := &state{w: w, own: make([]float64, n), truth: make([]float64, n), direct: make([][]outcome, n), tables: make([]*table, n)}
	for i := range w.Lesson.Quantities {
		o := &w.Lesson.Quantities[i]
		s.own[i], s.truth[i] = o.True, o.True
		v, ok := w.typed(o.Name)
		if !ok || o == q || math.IsNaN(v) || !w.Found(o.Name) && w.root(o.Name) == q.Name {
			continue
		}
		s.own[i], s.standing = v, s.standing.with(i)
		if !w.Found(o.Name) {
			s.wrong = s.wrong.with(i)
		}
	}
	if w.states == nil {
		w.states = map[string]*state{}
	}
	w.states[q.Name] = s
	return s
}

// env reads values by name.
func (l *Lesson) env(values []float64) expr.Env {
	return func(name string) float64 {
		if i, ok := l.index[name]; ok {
			return values[i]
		}
		return math.NaN()
	}
}

// plan is how one route of a quantity is worked when an earlier quantity,
// found in the head, came out wrong: the steps between that read it, in order,
// and the route's own tree last. A plan depends on what is entered, not on the
// wrong value, so one serves every slip made at that place.
type plan struct {
	at    int // the wrong quantity; −1 where there is none
	steps []planStep
	tree  expr.Node
	whole bool // the last tree is sums alone
}

type planStep struct {
	quantity int
	tree     expr.Node
}

// plans lists the ways a slip in the finding of quantity at reaches q.
func (s *state) plans(q, at int) []plan {
	prep := s.w.Lesson.ready()
	level := s.levels(q, at)
	var out []plan
	for j, f := range prep.routes[q] {
		p := plan{at: at, tree: s.w.Lesson.Quantities[q].Routes[j].Tree}
		done := set(0)
		if !s.gather(&p, f.reads, set(0).with(q), &done, level) {
			continue
		}
		p.whole = sumsAlone(p.tree, s.w.Lesson)
		out = append(out, p)
	}
	return out
}

// levels tells for each quantity how many steps in the head lie between it and
// the wrong one: 0 for that one, −1 where it can't be reached.
func (s *state) levels(q, at int) []int {
	prep := s.w.Lesson.ready()
	level := make([]int, len(s.own))
	for i := range level {
		level[i] = -1
	}
	level[at] = 0
	reached := set(0).with(at)
	for n := 1; ; n++ {
		grown := reached
		for i := range level {
			if level[i] >= 0 || i == q || prep.givens.has(i) || s.standing.has(i) {
				continue
			}
			for _, f := range prep.routes[i] {
				if f.reads&reached != 0 {
					level[i], grown = n, grown.with(i)
					break
				}
			}
		}
		if grown == reached {
			return level
		}
		reached = grown
	}
}

// gather appends the steps that find those of reads which the wrong quantity
// touches; false where it touches none.
func (s *state) gather(p *plan, reads, on set, done *set, level []int) bool {
	touched := false
	reads.each(func(i int) {
		switch {
		case level[i] < 0 || on.has(i):
			return
		case level[i] > 0 && !done.has(i):
			s.step(p, i, on, done, level)
		}
		touched = true
	})
	return touched
}

// step appends the finding of quantity i by its first route that reads
// something nearer to the wrong quantity.
func (s *state) step(p *plan, i int, on set, done *set, level []int) {
	for j, f := range s.w.Lesson.ready().routes[i] {
		nearer := false
		f.reads.each(func(k int) { nearer = nearer || level[k] >= 0 && level[k] < level[i] })
		if nearer {
			s.gather(p, f.reads, on.with(i), done, level)
			*done = done.with(i)
			p.steps = append(p.steps, planStep{i, s.w.Lesson.Quantities[i].Routes[j].Tree})
			return
		}
	}
}

// run works the steps of p with the wrong quantity at v, in values (a copy of
// the state's own), and returns the value of the last tree.
func (p *plan) run(l *Lesson, values []float64, v float64) float64 {
	if p.at >= 0 {
		values[p.at] = v
	}
	env := l.env(values)
	for _, st := range p.steps {
		values[st.quantity] = expr.Eval(st.tree, env)
	}
	return expr.Eval(p.tree, env)
}

// wrap brings a direction into (−180°, 180°].
func wrap(deg float64) float64 {
	d := math.Remainder(deg, 360)
	if d == -180 {
		return 180
	}
	return d
}
