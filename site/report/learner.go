package report

import (
	"fmt"
	"slices"
	"strings"

	"closingside/site"
	"closingside/tutor"
)

// longest is the longest time between two lines that counts as work, in
// milliseconds: who takes longer has been away.
const longest = 5 * 60 * 1000

// learner is what one log shows.
type learner struct {
	log    *Log
	desks  map[string]*worked // by code
	order  []string           // codes, as they were opened
	sets   []site.Opened
	times  [2]int64 // of the first line and the last
	counts Counts
	clock  int64 // milliseconds of work
}

// worked is what a learner did on one problem.
type worked struct {
	works  []*tutor.Work // one more for each time it was started again
	tried  map[string]*tried
	slips  []met
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
	last           string // what was written last
	asked          *met   // named with another slip, and not settled by the learner's answer
}

// met is a slip that was named.
type met struct {
	id, title       string
	quantity        string // that was entered
	at              string // the quantity in whose finding it sits
	symbol, symbol2 string // of the two
	entry           string
}

// retrace works a log again.
func retrace(l *Log) (p *learner, err error) {
	defer func() { // a log made to break the engine is refused like any other that is none
		if r := recover(); r != nil {
			p, err = nil, &LogError{l.Path, 0, "this log can't be worked again (" + fmt.Sprint(r) + "); ask for the file that “Save a copy” writes, as it is"}
		}
	}()
	p = &learner{log: l, desks: map[string]*worked{}}
	before, gaps := int64(0), map[*site.Field]int64{} // the time since the line before, whatever it was
	for _, f := range l.lines {
		if at := when(f); at > 0 {
			if p.times[0] == 0 {
				p.times[0] = at
			}
			p.times[1] = max(p.times[1], at)
			if before > 0 {
				gaps[&f[0]] = min(max(at-before, 0), longest)
				p.clock += gaps[&f[0]]
			}
			before = at
		}
	}
	p.sets = site.Retrace(l.lines, func(t site.Trace) {
		if t.Form.Get("do") == "look" {
			p.desk(t)
			return
		}
		p.take(t, gaps[&t.Form[0]])
	})
	for _, w := range p.desks {
		w.settle()
	}
	return p, nil
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
			if t.Reply.Verdict == tutor.SlipFound {
				w.slips = append(w.slips, named(t, 0)...)
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
	if t.Reply.Verdict == tutor.Unreadable {
		return
	}
	a.entries++
	a.last = t.Reply.Entry
	if a.asked != nil { // a question that was never answered: the likelier one
		w.slips = append(w.slips, *a.asked)
		a.asked = nil
	}
	switch t.Reply.Verdict {
	case tutor.Correct:
		if !a.found {
			a.found = true
			a.helped = a.hints > 0 || t.Solution
			a.first = a.entries == 1 && !a.helped
		}
	case tutor.SlipFound:
		if found := named(t, 0); t.Reply.Asked && len(found) > 0 {
			a.asked = &found[0]
		} else {
			w.slips = append(w.slips, found...)
		}
	}
}

// named are the slips of the i-th explanation: two, where two were made
// together.
func named(t site.Trace, i int) (all []met) {
	if len(t.Reply.Slips) <= i {
		return nil
	}
	l, s := t.Work.Lesson, t.Reply.Slips[i]
	id := s.Likely
	if id == "" && len(s.IDs) > 0 {
		id = s.IDs[0]
	}
	symbol := func(name string) string {
		if q := l.Quantity(name); q != nil {
			return l.SymbolText(q)
		}
		return name
	}
	for one := range strings.SplitSeq(id, "+") {
		all = append(all, met{id: one, title: l.SlipTitle(one), quantity: t.Reply.Quantity, at: s.At,
			symbol: symbol(t.Reply.Quantity), symbol2: symbol(s.At), entry: t.Reply.Entry})
	}
	return all
}

// sketchName stands for the sketch where a quantity's name stands otherwise.
const sketchName = "sketch"

func (w *worked) sketched(t site.Trace) {
	w.sketch = true
	if !t.Judged || t.Reply.Verdict != tutor.SlipFound {
		return
	}
	for _, s := range t.Reply.Slips {
		for _, id := range s.IDs {
			w.slips = append(w.slips, met{id: id, title: t.Work.Lesson.SlipTitle(id), quantity: sketchName, at: sketchName, symbol: "the sketch", symbol2: "the sketch"})
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
	var names []string
	for name := range w.tried {
		names = append(names, name)
	}
	slices.Sort(names)
	for _, name := range names {
		if a := w.tried[name]; a.asked != nil {
			w.slips = append(w.slips, *a.asked)
		}
	}
}

// touched tells whether anything was entered or asked.
func (w *worked) touched() bool { return len(w.tried) > 0 || w.sketch }
