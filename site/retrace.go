package site

import (
	"slices"
	"strings"

	"closingside/tutor"
	"closingside/tutor/sets"
)

// Trace is one thing a learner did on a problem, and what was said of it.
type Trace struct {
	Code     string      // of the problem
	Work     *tutor.Work // as it stands after it
	Form     Form        // the line of the log
	Reply    tutor.Reply
	Judged   bool // whether there is a Reply
	Solution bool // whether the worked solution was shown before
}

// Opened is a set that a log opens, for everyone or for one student.
type Opened struct {
	Set     *sets.Set
	Student string // "" where all have the same
	Tasks   []sets.Task
}

// Retrace works a saved log again, line by line, as the page does when it
// starts, and tells see of all that was done on problems. It returns the sets
// that were opened. What a line does that no page writes is nothing. The
// works seen may be kept: what checks of them need is given up (see
// tutor.Work.Forget).
func Retrace(log []Form, see func(Trace)) []Opened {
	s := session{}
	s.learn(log)
	s.deals = nil // which problems are a student's is not for the student's file to say
	for _, f := range log {
		s.replay(f)
		d := s.desks[f.Get("problem")]
		if d == nil {
			d = s.desks[s.current]
		}
		if d == nil {
			continue
		}
		past := d.past
		d.past = nil
		for _, g := range past {
			t := Trace{Code: d.code, Form: g, Solution: d.solved}
			t.Reply, t.Judged = d.take(g)
			if g.Get("do") == "sketch" {
				t.Reply, t.Judged = d.asked.outcome()
			}
			t.Work = d.work
			see(t)
		}
		s.keep(d)
	}
	for _, d := range s.lately {
		if d != nil {
			d.work.Forget()
		}
	}
	var opened []Opened
	for _, v := range s.sets {
		if tasks := v.look(); tasks != nil {
			opened = append(opened, Opened{v.set, v.student, tasks})
		}
	}
	slices.SortFunc(opened, func(a, b Opened) int {
		return strings.Compare(a.Set.Code(a.Student), b.Set.Code(b.Student))
	})
	return opened
}

// The requests that a log holds, by what they do.
var (
	moves = []string{"open", "home", "draw", "form", "own", "personal"}                                     // to another screen
	works = []string{"enter", "hint", "solution", "undo", "stand", "withdraw", "again", "sketch", "answer"} // on one problem
)

// Logged tells whether f is a line of a log: a request, or the outcome of one.
func Logged(f Form) bool {
	do := f.Get("do")
	return do == "outcome" || slices.Contains(moves, do) || slices.Contains(works, do)
}
