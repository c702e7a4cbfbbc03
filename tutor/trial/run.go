package trial

import (
	"runtime"

	"closingside/tutor"
	"closingside/tutor/draw"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// Options of a run.
type Options struct {
	Seed     uint64
	Learners int // for each problem
	Workers  int // processors used; 0 for all
	Misses   int // how many entries not judged as they were to keep in the report

	// Progress, where not nil, is told after each problem how many of all are
	// done. It is called in order, never twice at once.
	Progress func(done, all int)
}

// Generated draws n fair problems of each kind, from the seed on.
func Generated(n int, seed uint64, of ...*lesson.Kind) []*lesson.Problem {
	if len(of) == 0 {
		of = kinds.All
	}
	var all []*lesson.Problem
	for i := range n {
		for _, k := range of {
			all = append(all, draw.Generate(k, seed+uint64(i)))
		}
	}
	return all
}

// Drawn draws n problems of each kind, fair or not: any that can be worked.
func Drawn(n int, seed uint64, of ...*lesson.Kind) []*lesson.Problem {
	if len(of) == 0 {
		of = kinds.All
	}
	var all []*lesson.Problem
	for _, k := range of {
		d := lesson.NewDraw(seed, uint64(len(k.Name)))
		for got, tried := 0, 0; got < n && tried < 100*n; tried++ {
			p, err := kinds.All.Read(k.Draw(d))
			if err != nil {
				continue
			}
			if _, err := tutor.Open(p); err == nil {
				all = append(all, p)
				got++
			}
		}
	}
	return all
}

// Run lets learners work each of the problems and reports what was seen. The
// problems are ones that tutor.Open opens; otherwise its error is returned.
func Run(problems []*lesson.Problem, h Habits, o Options) (*Report, error) {
	if err := h.Check(); err != nil {
		return nil, err
	}
	stop := make(chan struct{})
	defer close(stop)
	t := newTally()
	var misses []Miss
	for i, r := range classes(problems, &h, o, stop) { // in order, whoever was first
		got := <-r
		if got.err != nil {
			return nil, got.err
		}
		for k := range got.cases {
			c := &got.cases[k]
			t.add(c)
			if c.met() && !c.fair() && len(misses) < o.Misses {
				misses = append(misses, c.miss(problems[i]))
			}
		}
		if o.Progress != nil {
			o.Progress(i+1, len(problems))
		}
	}
	r := t.report(len(problems), h, o)
	r.Misses = misses
	return r, nil
}

// result is what the learners of one problem did.
type result struct {
	cases []Case
	err   error
}

// classes has all problems worked by so many processors, until stop is closed,
// and gives each one's result as it comes.
func classes(problems []*lesson.Problem, h *Habits, o Options, stop <-chan struct{}) []chan result {
	results := make([]chan result, len(problems))
	next := make(chan int, len(problems))
	for i := range problems {
		results[i] = make(chan result, 1)
		next <- i
	}
	close(next)
	workers := o.Workers
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	for range workers {
		go func() {
			for i := range next {
				select {
				case <-stop:
					return
				default:
				}
				cases, err := class(problems[i], i, h, o)
				results[i] <- result{cases, err}
			}
		}()
	}
	return results
}

// class lets the learners work one problem, one after the other.
func class(problem *lesson.Problem, number int, h *Habits, o Options) ([]Case, error) {
	lesson, err := tutor.Open(problem)
	if err != nil {
		return nil, err
	}
	var all []Case
	for k := range o.Learners {
		all = append(all, study(lesson, h, o.die(number, k))...)
	}
	return all, nil
}

// die is the stream of a learner of a problem.
func (o Options) die(problem, learner int) die {
	return die{lesson.NewDraw(o.Seed, uint64(problem)<<32|uint64(learner))}
}

// study lets one learner work a problem.
func study(l *tutor.Lesson, h *Habits, d die) []Case {
	p := newLearner(l, h, d)
	p.study()
	return p.cases
}
