package tutor

import (
	"math"
	"slices"

	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// rejudge gives the entries that stand after one that has changed the verdict
// they have now, and returns the quantities where it differs. An entry that
// was carried from the changed one and is not right by itself stays carried:
// the learner made no mistake there, only has to work it again. What was answered
// to a question that would be asked again stays answered.
func (w *Work) rejudge(changed string) []string {
	var names []string
	for _, i := range w.after(changed) {
		a := &w.Past[i]
		q := w.Lesson.Quantity(a.Quantity)
		old := a.Reply
		now := Reply{Quantity: old.Quantity, Entry: old.Entry, Reading: old.typed, typed: old.typed}
		w.hide(i, func() {
			w.decide(q, &now)
			if w.settleAs(q, &now, &old) {
				w.compare(q, &now)
			}
		})
		if old.Verdict == verdict.Carried && w.Found(old.From) && now.Verdict != verdict.Correct && now.Verdict != verdict.Carried {
			now = old
			now.Feedback = w.sendTo(q, old.From)
		}
		now.Changed = old.Changed
		a.Reply = now
		if now.Verdict != old.Verdict || now.Feedback != old.Feedback {
			names = append(names, a.Quantity)
			a.Since = changed
		}
	}
	return names
}

// after lists the standing entries for other quantities made after the first
// entry for one that they may rest on, oldest first.
func (w *Work) after(name string) []int {
	first := slices.IndexFunc(w.Past, func(a Attempt) bool { return a.Quantity == name })
	var places []int
	for other, i := range w.latest {
		if other != name && i > first && w.Lesson.mayRestOn(other, name) {
			places = append(places, i)
		}
	}
	slices.Sort(places)
	return places
}

// mayRestOn tells whether what is found for one quantity may have been worked
// from another. Where sums are solved anything may.
func (l *Lesson) mayRestOn(name, on string) bool {
	if slices.ContainsFunc(l.Quantities, func(q lesson.Quantity) bool { return q.Equation }) {
		return true
	}
	return l.ready().of[l.index[name]].upstream.has(l.index[on])
}

// firstEntry is the place of the first entry for a quantity that is not taken
// back; beyond every place where there is none.
func (w *Work) firstEntry(name string) int {
	for i := range w.Past {
		if !w.Past[i].Undone && w.Past[i].Quantity == name {
			return i
		}
	}
	return math.MaxInt
}

// hide runs do as if entry i were being made: it does not stand, nor does any
// for a quantity first entered after it.
func (w *Work) hide(i int, do func()) {
	whole, undone := w.latest, w.Past[i].Undone
	defer func() { w.latest, w.states, w.Past[i].Undone = whole, nil, undone }()
	w.latest = map[string]int{}
	for name, k := range whole {
		if w.firstEntry(name) < i && w.Past[k].Quantity != w.Past[i].Quantity {
			w.latest[name] = k
		}
	}
	w.Past[i].Undone = true
	w.states = nil
	do()
}
