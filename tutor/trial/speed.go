package trial

import (
	"math"
	"runtime"
	"slices"
	"time"

	"closingside/tutor"
	"closingside/tutor/lesson"
)

// Speed is how long checks with a full diagnosis take: those of wrong entries,
// for which every hypothesis to depth two is weighed where one slip won't do.
// On a problem worked before, and where what checks look in is made ahead, the
// time of an entry is the least of several rounds, so that what else the machine
// does counts little.
type Speed struct {
	Checks      int
	Median, P99 time.Duration // on a problem that has been worked before
	First       time.Duration // median on a problem just opened
	Worst       time.Duration // 99th percentile there
	Clean       time.Duration // median for an entry on an empty sheet, on a problem worked before
	Ready       time.Duration // median on a problem just opened, what checks look in being made ahead as the page does
	ReadyWorst  time.Duration // 99th percentile there
	Allocs      float64       // a check, on a problem worked before
}

// timings are what checks took, by how they were made.
type timings struct {
	first, later, clean, ready []time.Duration
	allocs, checks             uint64
}

// Measure lets learners work the problems, and then enters all they wrote
// anew: once on problems just opened, then so many rounds (1 or more) on the
// same ones.
func Measure(problems []*lesson.Problem, o Options, rounds int) (Speed, error) {
	h := DefaultHabits()
	var all timings
	for i, p := range problems {
		var sessions [][]Case
		for k := range o.Learners {
			l, err := tutor.Open(p)
			if err != nil {
				return Speed{}, err
			}
			sessions = append(sessions, study(l, &h, o.die(i, k)))
		}
		if err := all.measure(p, sessions, rounds); err != nil {
			return Speed{}, err
		}
	}
	return all.speed(), nil
}

// measure enters what was written on one problem anew, in every way.
func (t *timings) measure(p *lesson.Problem, sessions [][]Case, rounds int) error {
	l, err := tutor.Open(p)
	if err != nil {
		return err
	}
	t.first = append(t.first, timeAll(l, sessions, asIs)...)
	ahead := func() ([]time.Duration, error) {
		anew, err := tutor.Open(p)
		if err != nil {
			return nil, err
		}
		return timeAll(anew, sessions, makeReady), nil
	}
	again := func() ([]time.Duration, error) { return timeAll(l, sessions, asIs), nil }
	if t.ready, err = appendLeast(t.ready, rounds, ahead); err != nil {
		return err
	}
	if t.later, err = appendLeast(t.later, rounds, again); err != nil {
		return err
	}
	t.clean = append(t.clean, timeEach(l, sessions, rounds)...)
	enterAll(l, sessions, func(_ *tutor.Work, check func()) {
		t.allocs += allocations(check)
		t.checks++
	})
	return nil
}

// speed is what they come to.
func (t *timings) speed() Speed {
	for _, took := range [][]time.Duration{t.first, t.later, t.clean, t.ready} {
		slices.Sort(took)
	}
	return Speed{
		Checks: len(t.later),
		Median: quantile(t.later, 0.5), P99: quantile(t.later, 0.99),
		First: quantile(t.first, 0.5), Worst: quantile(t.first, 0.99),
		Clean: quantile(t.clean, 0.5),
		Ready: quantile(t.ready, 0.5), ReadyWorst: quantile(t.ready, 0.99),
		Allocs: float64(t.allocs) / float64(max(1, t.checks)),
	}
}

// appendLeast appends the least of what each entry took in so many rounds.
func appendLeast(all []time.Duration, rounds int, round func() ([]time.Duration, error)) ([]time.Duration, error) {
	best, err := round()
	for k := 1; k < rounds && err == nil; k++ {
		var took []time.Duration
		took, err = round()
		for i := range took {
			best[i] = min(best[i], took[i])
		}
	}
	return append(all, best...), err
}

// enterAll enters what learners wrote; the checks of wrong entries go through
// watch.
func enterAll(l *tutor.Lesson, sessions [][]Case, watch func(w *tutor.Work, check func())) {
	for _, s := range sessions {
		w := tutor.NewWork(l, l.Problem.Settings)
		for _, c := range s {
			enter := func() { w.Enter(c.Quantity, c.Reply.Entry) }
			if c.met() {
				watch(w, enter)
			} else {
				enter()
			}
		}
	}
}

// What happens before a check that is timed: nothing, or the page has had time to
// make ready for it.
func asIs(*tutor.Work) {}

func makeReady(w *tutor.Work) {
	w.Warm(func() bool { return false })
	time.Sleep(time.Millisecond) // the page rests after every piece, and the collector ends what it began
}

// timeAll is how long the check of each wrong entry took, after what happens
// before it.
func timeAll(l *tutor.Lesson, sessions [][]Case, before func(*tutor.Work)) []time.Duration {
	var all []time.Duration
	enterAll(l, sessions, func(w *tutor.Work, check func()) {
		before(w)
		start := time.Now()
		check()
		all = append(all, time.Since(start))
	})
	return all
}

// timeEach is how long the check of each wrong entry takes on an empty sheet,
// the least of several rounds.
func timeEach(l *tutor.Lesson, sessions [][]Case, rounds int) []time.Duration {
	var all []time.Duration
	for _, s := range sessions {
		for _, c := range s {
			if !c.met() {
				continue
			}
			best := time.Duration(math.MaxInt64)
			for range rounds {
				w := tutor.NewWork(l, l.Problem.Settings)
				start := time.Now()
				w.Enter(c.Quantity, c.Reply.Entry)
				best = min(best, time.Since(start))
			}
			all = append(all, best)
		}
	}
	return all
}

// allocations counts those of f.
func allocations(f func()) uint64 {
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	f()
	runtime.ReadMemStats(&after)
	return after.Mallocs - before.Mallocs
}
