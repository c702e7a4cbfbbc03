package report

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"closingside/site"
	"closingside/tutor"
	"closingside/tutor/sets"
	"closingside/tutor/verdict"
)

// longestPause is the longest time between two lines that counts as work, in
// milliseconds: who takes longer has been away.
const longestPause = 5 * 60 * 1000

// learner is what one log shows.
type learner struct {
	log    *Log
	desks  map[string]*worked // by code
	order  []string           // codes, as they were opened
	sets   []site.Opened
	counts Counts

	from, to int64 // the times of the first line and the last, in milliseconds since 1970
	clock    int64 // milliseconds of work
}

// worked is what a learner did on one problem.
type worked struct {
	works  []*tutor.Work // one more for each time it was started again
	tried  map[string]*tried
	slips  []namedSlip
	done   bool
	shown  bool // the worked solution was opened before all was found
	sketch bool
}

// tried is what a learner did about one quantity.
type tried struct {
	entries, hints int
	found          bool
	first, helped  bool // found by the first entry; found after a hint or the solution
	spent          int64
	last           string     // what was written last
	asked          *namedSlip // named with another slip, and not settled by the learner's answer
}

// namedSlip is a slip that was named.
type namedSlip struct {
	id, title string
	quantity  place // that was entered
	at        place // in whose finding it sits
	entry     string
}

// place is a quantity by its name, with its symbol where the slip was met.
type place struct{ name, symbol string }

// retrace works a log again.
func retrace(l *Log) (p *learner, err error) {
	defer func() { // a log made to break the engine is refused like any other that is none
		if r := recover(); r != nil {
			p, err = nil, &LogError{l.Path, 0, "this log can't be worked again (" + fmt.Sprint(r) + "); ask for the file that “Save a copy” writes, as it is"}
		}
	}()
	p = &learner{log: l, desks: map[string]*worked{}}
	spent := p.readTimes()
	p.sets = site.Retrace(l.lines, func(t site.Trace) {
		if t.Form.Get("do") == "look" {
			p.desk(t)
			return
		}
		p.take(t, spent[&t.Form[0]])
	})
	for _, w := range p.desks {
		w.settle()
	}
	return p, nil
}

// strange tells whether a log has work at a set that can't be opened here: another
// version made it, and which problems it holds is not known.
func (l *Log) strange() bool {
	known := map[string]bool{}
	for _, f := range l.lines {
		code := f.Get("set")
		if f.Get("do") != "open" || code == "" || known[code] {
			continue
		}
		if _, _, err := sets.Decode(code); err != nil {
			return true
		}
		known[code] = true
	}
	return false
}

// readTimes reads the times of the log's lines, and returns the milliseconds of work
// since the line before, whatever that was, by the line's first field.
func (p *learner) readTimes() map[*site.Field]int64 {
	spent := map[*site.Field]int64{}
	before := int64(0)
	for _, f := range p.log.lines {
		at := when(f)
		if at <= 0 {
			continue
		}
		if before == 0 {
			p.from = at
		} else {
			spent[&f[0]] = min(max(at-before, 0), longestPause)
			p.clock += spent[&f[0]]
		}
		p.to = max(p.to, at)
		before = at
	}
	return spent
}

// desk is what was done on the problem of a trace, which may be new.
func (p *learner) desk(t site.Trace) *worked {
	w := p.desks[t.Code]
	if w == nil {
		w = &worked{tried: map[string]*tried{}}
		p.desks[t.Code] = w
		p.order = append(p.order, t.Code)
	}
	if n := len(w.works); n == 0 || w.works[n-1] != t.Work {
		w.works = append(w.works, t.Work)
	}
	return w
}

// take counts one thing that was done.
func (p *learner) take(t site.Trace, took int64) {
	w := p.desk(t)
	name, do := t.Form.Get("quantity"), t.Form.Get("do")
	if do == "sketch" {
		w.sketched(t)
		return
	}
	if do == "solution" && !w.done && t.Work.MaySolve() {
		w.shown = true
	}
	q := t.Work.Lesson.Quantity(name)
	if q == nil || q.Given {
		return
	}
	a := w.tried[name]
	if a == nil {
		a = &tried{}
		w.tried[name] = a
	}
	a.spent += took
	switch do {
	case "hint":
		a.hints = max(a.hints, t.Work.Hinted(name))
	case "enter":
		p.entered(w, a, t)
	case "answer":
		if t.Judged && a.asked != nil {
			a.asked = nil
			if t.Reply.Verdict == verdict.SlipFound {
				w.slips = append(w.slips, named(t)...)
			}
		}
	}
	w.done = w.done || t.Work.Done()
}

// entered counts an entry.
func (p *learner) entered(w *worked, a *tried, t site.Trace) {
	if !t.Judged {
		return
	}
	p.counts.add(t.Reply.Verdict)
	if t.Reply.Verdict == verdict.Unreadable {
		return
	}
	a.entries++
	a.last = t.Reply.Entry
	if a.asked != nil { // a question that was never answered: the likelier one
		w.slips = append(w.slips, *a.asked)
		a.asked = nil
	}
	switch t.Reply.Verdict {
	case verdict.Correct:
		if !a.found {
			a.found = true
			a.helped = a.hints > 0 || t.Solution
			a.first = a.entries == 1 && !a.helped
		}
	case verdict.SlipFound:
		if found := named(t); t.Reply.Asked && len(found) > 0 {
			a.asked = &found[0]
		} else {
			w.slips = append(w.slips, found...)
		}
	}
}

// named are the slips of the likeliest explanation: two, where two were made
// together.
func named(t site.Trace) (all []namedSlip) {
	if len(t.Reply.Slips) == 0 {
		return nil
	}
	l, s := t.Work.Lesson, t.Reply.Slips[0]
	id := s.Likely
	if id == "" && len(s.IDs) > 0 {
		id = s.IDs[0]
	}
	of := func(name string) place {
		if q := l.Quantity(name); q != nil {
			return place{name, l.SymbolText(name)}
		}
		return place{name, name}
	}
	for one := range strings.SplitSeq(id, "+") {
		all = append(all, namedSlip{id: one, title: l.SlipTitle(one), quantity: of(t.Reply.Quantity), at: of(s.At), entry: t.Reply.Entry})
	}
	return all
}

// theSketch stands for the sketch where a quantity stands otherwise.
var theSketch = place{"sketch", "the sketch"}

func (w *worked) sketched(t site.Trace) {
	w.sketch = true
	if !t.Judged || t.Reply.Verdict != verdict.SlipFound {
		return
	}
	for _, s := range t.Reply.Slips {
		for _, id := range s.IDs {
			w.slips = append(w.slips, namedSlip{id: id, title: t.Work.Lesson.SlipTitle(id), quantity: theSketch, at: theSketch})
		}
	}
}

// settle counts what stands at the end: an entry judged right by a later one,
// and questions that were left open.
func (w *worked) settle() {
	for _, work := range w.works {
		for name, a := range w.tried {
			if !a.found && work.Found(name) {
				a.found, a.helped = true, a.hints > 0
			}
		}
		w.done = w.done || work.Done()
	}
	for _, name := range slices.Sorted(maps.Keys(w.tried)) {
		if a := w.tried[name]; a.asked != nil {
			w.slips = append(w.slips, *a.asked)
		}
	}
}

// touched tells whether anything was entered or asked.
func (w *worked) touched() bool { return len(w.tried) > 0 || w.sketch }
