package tutor

import (
	"math"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// line is a way to a quantity from accepted entries: steps in the head, and a
// route of its own at the end.
type line struct {
	steps []lineStep // each reads givens, entries, and what steps before found
	rests set        // the accepted entries that it reads
}

type lineStep struct{ quantity, route int }

// Limits of looking for a line (judgement: who does more in the head does not
// begin with a value on the page).
const (
	maxHead  = 2   // steps in the head, the one after the other
	maxLines = 400 // looked at
)

// follows is a line that gives v for q from accepted entries, as typed or as
// they were held, to within the given half-width and the rounding on its last
// route; nil where none does.
func (w *Work) follows(q *lesson.Quantity, v, half float64) *line {
	f := w.finder()
	if f.accepted == 0 {
		return nil
	}
	var found *line
	f.find(w.Lesson.index[q.Name], 0, func(l line) bool {
		x := f.work(l.steps)
		own := func(name string) float64 { return f.values[w.Lesson.index[name]] }
		route, far := l.steps[len(l.steps)-1].route, max(half, w.limit(q))
		beyond := w.byInverseSine(q, route)
		if off := q.Distance(v, x); (off <= far || beyond) && off <= half+w.sway(q, route, own, w.entries(q, w.asHeld)) {
			found = &line{slices.Clone(l.steps), l.rests}
		}
		return found == nil
	})
	return found
}

// lineFinder goes through the lines to a quantity.
type lineFinder struct {
	l                 *Lesson
	values            []float64 // accepted entries as typed, the rest true or found in the head
	accepted, refused set
	steps             []lineStep // to what is being found
	left              int        // lines to be looked at
	tape              expr.Tape
}

func (w *Work) finder() *lineFinder {
	f := &lineFinder{l: w.Lesson, values: slices.Clone(w.Lesson.truths()), left: maxLines}
	for i := range w.Lesson.Quantities {
		name := w.Lesson.Quantities[i].Name
		switch {
		case w.Standing(name) == nil:
		case !w.Found(name):
			f.refused = f.refused.with(i)
		default:
			f.accepted = f.accepted.with(i)
			f.values[i] = w.own(name)
		}
	}
	return f
}

// work is what the steps come to; each finds its quantity for those after it.
func (f *lineFinder) work(steps []lineStep) float64 {
	v := math.NaN()
	for _, st := range steps {
		v = f.l.prep.of[st.quantity].routes[st.route].prog.Run(f.values, &f.tape)
		f.values[st.quantity] = v
	}
	return v
}

// find visits the lines to quantity i, which is not found from what stands in
// on, until visit has enough; it tells whether it has not.
func (f *lineFinder) find(i int, on set, visit func(line) bool) bool {
	routes := f.l.ready().of[i].routes
	for j := range routes {
		if routes[j].reads&f.refused != 0 {
			continue
		}
		more := f.choose(routes[j].reads&^f.l.prep.givens, 0, on.with(i), func(rests set) bool {
			if rests == 0 {
				return true
			}
			was := f.values[i]
			f.steps = append(f.steps, lineStep{i, j})
			more := visit(line{f.steps, rests})
			f.steps = f.steps[:len(f.steps)-1]
			f.values[i] = was
			return more
		})
		if !more {
			return false
		}
	}
	return true
}

// choose visits every choice of where a route has what it reads from: from an
// entry, from the head by a line of its own, or as it is in truth.
func (f *lineFinder) choose(reads, rests, on set, visit func(rests set) bool) bool {
	if reads == 0 {
		f.left--
		return visit(rests) && f.left > 0
	}
	i := reads.first()
	reads &^= set(0).with(i)
	switch {
	case on.has(i):
		return true
	case f.accepted.has(i):
		return f.choose(reads, rests.with(i), on, visit)
	}
	if !f.choose(reads, rests, on, visit) {
		return false
	}
	if on.size() > maxHead {
		return true
	}
	return f.find(i, on, func(l line) bool {
		f.work(l.steps[len(l.steps)-1:])
		return f.choose(reads, rests|l.rests, on, visit)
	})
}

// coarsest is the accepted entry of a line that is off by enough to move what
// the line comes to by most; nil where none is off.
func (w *Work) coarsest(l *line) *lesson.Quantity {
	f := w.finder()
	straight := f.work(l.steps)
	var most *lesson.Quantity
	worst := 0.0
	l.rests.each(func(i int) {
		typed := f.values[i]
		f.values[i] = w.Lesson.Quantities[i].True
		if by := math.Abs(f.work(l.steps) - straight); by > worst {
			worst, most = by, &w.Lesson.Quantities[i]
		}
		f.values[i] = typed
	})
	return most
}
