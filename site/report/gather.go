package report

import (
	"cmp"
	"maps"
	"slices"
	"strconv"

	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
)

// gathering collects what learners did by problem, by value and by slip.
type gathering struct {
	only     *sets.Set
	problems map[string]*problem
	slips    map[string]*slip
	sum      Report
}

// problem collects for one problem; see Problem.
type problem struct {
	Problem
	values map[string]*value
	lesson *tutor.Lesson // of who had it first
	set    *sets.Set
}

// value collects for one quantity; see Quantity.
type value struct {
	Quantity
	tries, seconds []float64
}

// slip collects for one slip; see Slip.
type slip struct {
	Slip
	steps map[step]*seen
}

// step is where a slip was met: a problem, and the symbol of the quantity in
// whose finding it sits.
type step struct{ problem, at string }

// seen is how often a slip was met at a step, and the first example of it.
type seen struct {
	times   int
	example Example
}

func newGathering(only *sets.Set) *gathering {
	return &gathering{only: only, problems: map[string]*problem{}, slips: map[string]*slip{},
		sum: Report{Students: []Student{}, Problems: []Problem{}, Slips: []Slip{}, Again: []Again{}}}
}

// task is where a problem of a learner's stands.
type task struct {
	set    *sets.Set
	number int // in the set's file, from 1
	marks  int
}

// tasks are the places of a learner's problems, by code.
func (g *gathering) tasks(p *learner) map[string]task {
	all := map[string]task{}
	for _, o := range p.sets {
		if g.leavesOut(o.Set) {
			continue
		}
		plain := *o.Set // in the order of the file, whatever the student's is
		plain.Shuffle = false
		v, err := plain.Variant(o.Student)
		if err != nil {
			continue
		}
		for i, t := range v.Tasks {
			if code := t.Problem.Code(); all[code].set == nil {
				all[code] = task{o.Set, i + 1, t.Marks}
			}
		}
	}
	return all
}

// leavesOut tells whether the report keeps to another set.
func (g *gathering) leavesOut(s *sets.Set) bool {
	return g.only != nil && s.Code("") != g.only.Code("")
}

// add takes in one learner.
func (g *gathering) add(p *learner) {
	s := Student{Name: p.log.Name, Seconds: float64(p.clock) / 1000, Sets: []Standing{}, Rows: []Row{}}
	if p.log.strange() {
		g.sum.Strange++
	}
	tasks := g.tasks(p)
	met := map[string]bool{}
	for _, code := range p.order {
		w := p.desks[code]
		at := tasks[code]
		if !w.touched() || g.only != nil && at.set == nil {
			continue
		}
		s.Began++
		if w.done {
			s.Done++
		}
		g.addWork(&s, g.problem(code, w, at), w, met)
	}
	for id := range met {
		g.slips[id].Students++
	}
	s.Sets = g.standings(p)
	for _, row := range s.Rows {
		s.Entries += row.Entries
	}
	r := &g.sum
	r.Students = append(r.Students, s)
	if r.From == 0 || p.from > 0 && p.from < r.From {
		r.From = p.from
	}
	r.To = max(r.To, p.to)
	r.Entries.join(p.counts)
}

// problem is where work on the problem of a code is collected: by its place in
// a set; by its code, where it is one of the page's own; else by its kind.
func (g *gathering) problem(code string, w *worked, at task) *problem {
	lesson := w.works[0].Lesson
	title := lesson.Kind.Title()
	key, story := code, lesson.Problem.Title()
	switch {
	case at.set != nil:
		key = at.set.Code("") + "\n" + strconv.Itoa(at.number)
	case !lesson.Kind.InBank(code):
		key, story = "other "+lesson.Kind.Name, title+" ("+otherProblems+")"
	}
	p := g.problems[key]
	if p == nil {
		p = &problem{values: map[string]*value{}, lesson: lesson, set: at.set,
			Problem: Problem{Number: at.number, Kind: lesson.Kind.Name, Story: story, key: key}}
		if at.set != nil {
			p.Set = at.set.Title
		}
		g.problems[key] = p
	}
	if p.Story != story { // numbers of one's own, and a story of one's own
		p.Story = title
	}
	return p
}

// otherProblems are those drawn on the page or typed there: everybody's are
// others, so each that was worked counts.
const otherProblems = "drawn on the page or typed there"

// label is what a problem is called in one line.
func (p Problem) label() string {
	if p.Number > 0 {
		return strconv.Itoa(p.Number) + ". " + p.Story
	}
	return p.Story
}

// addWork takes in a learner's work on one problem.
func (g *gathering) addWork(s *Student, p *problem, w *worked, met map[string]bool) {
	p.Began++
	if w.done {
		p.Done++
	}
	if w.shown {
		p.Shown++
	}
	ids := g.addSlips(p, w.slips, met)
	lesson := w.works[0].Lesson
	for i := range lesson.Quantities {
		q := &lesson.Quantities[i]
		if a := w.tried[q.Name]; a != nil && a.entries+a.hints > 0 {
			found := p.value(lesson, q).add(a)
			s.Rows = append(s.Rows, Row{
				Problem: p.label(), Set: p.Set, Number: p.Number, Kind: p.Kind, Quantity: q.Name,
				Entries: a.entries, Hints: a.hints, Found: found, Seconds: float64(a.spent) / 1000,
				Last: a.last, Slips: append([]string{}, ids[q.Name]...),
			})
		}
	}
}

// addSlips takes in the slips that were named on one problem, notes in met the
// ids of those this learner met, and returns the ids by the quantity entered.
func (g *gathering) addSlips(p *problem, slips []namedSlip, met map[string]bool) map[string][]string {
	ids := map[string][]string{}
	for _, m := range slips {
		o := g.slips[m.id]
		if o == nil {
			o = &slip{Slip: Slip{ID: m.id, Title: m.title}, steps: map[step]*seen{}}
			g.slips[m.id] = o
		}
		met[m.id] = true
		o.Times++
		where := step{p.key, p.symbol(m.at)}
		if o.steps[where] == nil {
			o.steps[where] = &seen{example: Example{p.symbol(m.quantity), m.entry}}
		}
		o.steps[where].times++
		if name := m.quantity.name; !slices.Contains(ids[name], m.id) {
			ids[name] = append(ids[name], m.id)
		}
	}
	return ids
}

// symbol is a quantity's symbol in the problem of who had it first: others may
// have it under other names.
func (p *problem) symbol(m place) string {
	if p.lesson.Quantity(m.name) != nil {
		return p.lesson.SymbolText(m.name)
	}
	return m.symbol
}

// value is what is collected for q of a learner's lesson l, told as who had the
// problem first has it.
func (p *problem) value(l *tutor.Lesson, q *lesson.Quantity) *value {
	v := p.values[q.Name]
	if v == nil {
		if same := p.lesson.Quantity(q.Name); same != nil {
			l, q = p.lesson, same
		}
		v = &value{Quantity: Quantity{Name: q.Name, Symbol: l.SymbolText(q.Name), What: l.Sentence(q, "what"), Answer: q.Answer}}
		p.values[q.Name] = v
	}
	return v
}

// add counts what one learner did about the value, and names how it was found.
func (v *value) add(a *tried) string {
	v.Tried++
	v.tries = append(v.tries, float64(a.entries))
	v.seconds = append(v.seconds, float64(a.spent)/1000)
	switch {
	case !a.found:
		v.Never++
		return "never"
	case a.first:
		v.First++
		return "first"
	case a.helped:
		v.Helped++
		return "helped"
	}
	v.Later++
	return "later"
}

// standings are how far a learner is with each set that was opened.
func (g *gathering) standings(p *learner) []Standing {
	all := []Standing{}
	for _, o := range p.sets {
		if g.leavesOut(o.Set) {
			continue
		}
		st := Standing{Set: o.Set.Title, ID: o.Student, Problems: len(o.Tasks), Marks: o.Set.Marks()}
		for _, t := range o.Tasks {
			w := p.desks[t.Problem.Code()]
			if w == nil {
				continue
			}
			if w.done {
				st.Done++
			}
			if w.shown {
				st.Shown++
			}
			best := 0.0
			for _, work := range w.works { // started again: the better one counts
				best = max(best, o.Set.Earned(work, t.Marks))
			}
			st.Earned += best
		}
		all = append(all, st)
	}
	slices.SortStableFunc(all, func(a, b Standing) int { return cmp.Compare(a.Set, b.Set) })
	return all
}

// report puts together what was collected.
func (g *gathering) report() *Report {
	r := &g.sum
	for _, p := range slices.SortedFunc(maps.Values(g.problems), byPlace) {
		one := p.Problem
		one.Quantities = []Quantity{}
		for i := range p.lesson.Quantities { // in the lesson's order; those of a larger sketch after them
			if v := p.values[p.lesson.Quantities[i].Name]; v != nil {
				one.Quantities = append(one.Quantities, v.summed())
				delete(p.values, v.Name)
			}
		}
		for _, name := range slices.Sorted(maps.Keys(p.values)) {
			one.Quantities = append(one.Quantities, p.values[name].summed())
		}
		r.Problems = append(r.Problems, one)
	}
	for _, s := range g.slips {
		s.settle(g)
		r.Slips = append(r.Slips, s.Slip)
	}
	slices.SortFunc(r.Slips, func(a, b Slip) int {
		return cmp.Or(cmp.Compare(b.Students, a.Students), cmp.Compare(b.Times, a.Times), cmp.Compare(a.ID, b.ID))
	})
	slices.SortStableFunc(r.Students, func(a, b Student) int { return cmp.Compare(a.Name, b.Name) })
	r.Again = again(r)
	return r
}

// byPlace orders problems: sets by title, then those in none, by kind.
func byPlace(a, b *problem) int {
	inNone := func(p *problem) int {
		if p.Number == 0 {
			return 1
		}
		return 0
	}
	return cmp.Or(cmp.Compare(inNone(a), inNone(b)), cmp.Compare(a.Set, b.Set), cmp.Compare(a.Number, b.Number),
		cmp.Compare(a.Kind, b.Kind), cmp.Compare(a.Story, b.Story), cmp.Compare(a.key, b.key))
}

func (v *value) summed() Quantity {
	v.Tries, v.Seconds = median(v.tries), median(v.seconds)
	return v.Quantity
}

// settle names the step where a slip was met most often, with an example.
func (s *slip) settle(g *gathering) {
	most := 0
	for _, where := range slices.SortedFunc(maps.Keys(s.steps), func(a, b step) int {
		return cmp.Or(cmp.Compare(a.problem, b.problem), cmp.Compare(a.at, b.at))
	}) {
		if p := s.steps[where]; p.times > most {
			most = p.times
			s.At, s.Problem, s.Example = where.at, g.problems[where.problem].label(), p.example
		}
	}
}
