package tutor

import (
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// Taken is the route by which the learner most likely found q, or nil where q
// is not found or nothing tells: the route whose form an expression has, or of
// a number the one that rests on most of what was found before.
func (w *Work) Taken(q *lesson.Quantity) *lesson.Route {
	at, entered := w.latest[q.Name]
	if !entered || !w.Found(q.Name) {
		return nil
	}
	if r := w.Past[at].Reading; r.Form == entry.Expression || r.Form == entry.Affine {
		return w.written(q, r)
	}
	var best *lesson.Route
	most := 0
	for i := range q.Routes {
		rests, ready := 0, true
		for _, name := range expr.Symbols(q.Routes[i].Tree) {
			if w.Lesson.Quantity(name).Given {
				continue
			}
			before, ok := w.latest[name]
			ready = ready && ok && before < at && w.Found(name)
			rests++
		}
		if ready && (best == nil || rests > most) {
			best, most = &q.Routes[i], rests
		}
	}
	return best
}

// written is the route to q whose form an expression has, names standing for
// what was entered for them; nil where there is none.
func (w *Work) written(q *lesson.Quantity, r entry.Reading) *lesson.Route {
	values := make([]float64, len(w.Lesson.Quantities))
	for i := range values {
		values[i] = w.own(w.Lesson.Quantities[i].Name)
	}
	form := w.Lesson.shape(r.Tree, values)
	i := slices.IndexFunc(q.Routes, func(route lesson.Route) bool { return w.Lesson.shape(route.Tree, values) == form })
	if i < 0 {
		return nil
	}
	return &q.Routes[i]
}

// Going is the way the work is going: the worked solution by the method asked
// for or begun, the lesson's first where neither tells.
func (w *Work) Going() lesson.Way {
	m := w.Method()
	for _, way := range w.Lesson.Ways {
		if way.Method == m {
			return way
		}
	}
	return w.Lesson.Ways[0]
}

// Latest is the entry that Undo would take back, or nil.
func (w *Work) Latest() *Attempt {
	for i := len(w.Past) - 1; i >= 0; i-- {
		if !w.Past[i].Undone {
			return &w.Past[i]
		}
	}
	return nil
}
