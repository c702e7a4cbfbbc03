package tutor

import (
	"cmp"
	"slices"
)

// Choice is what a learner says to the question which of two slips comes
// closer to what was done.
type Choice uint8

// The choices.
const (
	Unsaid  Choice = iota // not asked, or not answered yet
	First                 // the first of Slips
	Second                // the second
	Neither               // something else
)

// How far an answer is believed (judgement): most learners know what they did,
// some choose what sounds best.
const (
	saidIfSo    = 0.85 // of a slip, that it is said where it was made
	saidIfOther = 0.10 // and where the other was
	saidIfNone  = 0.35 // and where neither was
	deniedIfSo  = 0.05 // that neither is said where one of them was made
	deniedElse  = 0.30 // and where none was
)

// Answer takes the learner's answer to the question between two slips, ranks
// them anew and says what follows. It returns false where no such question is
// open for the quantity.
func (w *Work) Answer(name string, c Choice) (Reply, bool) {
	a := w.Standing(name)
	if a == nil || !a.Asked || a.Chosen != Unsaid || c == Unsaid || c > Neither {
		return Reply{}, false
	}
	a.Chosen = c
	a.Slips = slices.Clone(a.Slips)
	sum := 0.0
	for i := range a.Slips {
		a.Slips[i].Probability *= c.believed(i)
		sum += a.Slips[i].Probability
	}
	a.Unexplained *= c.believed(-1)
	sum += a.Unexplained
	for i := range a.Slips {
		a.Slips[i].Probability /= sum
	}
	a.Unexplained /= sum
	slices.SortStableFunc(a.Slips, func(x, y Suspect) int { return cmp.Compare(y.Probability, x.Probability) })
	if c != Neither && a.Slips[0].Probability >= halfSure { // the learner agrees: nobody is accused
		a.Verdict, a.Feedback = SlipFound, w.askAbout(a.Slips[0])
	} else {
		a.Verdict, a.Feedback = Unexplained, w.bounds(w.Lesson.Quantity(name), a.Reading.Value)
	}
	return a.Reply, true
}

// believed is the likelihood of c where slip i of the list was made; −1 stands
// for none of the list.
func (c Choice) believed(i int) float64 {
	switch asked := i == 0 || i == 1; {
	case c == Neither && asked:
		return deniedIfSo
	case c == Neither:
		return deniedElse
	case int(c)-1 == i:
		return saidIfSo
	case asked:
		return saidIfOther
	}
	return saidIfNone
}

// Options are the words of the two choices that are asked between, in the
// order of First and Second; nil where no question is open.
func (w *Work) Options(a *Attempt) []string {
	if !a.Asked || a.Chosen != Unsaid {
		return nil
	}
	return []string{w.titleOf(a.Slips[0]), w.titleOf(a.Slips[1])}
}

func (w *Work) titleOf(s Suspect) string {
	return w.Lesson.Say("feedback.option", "what", w.Lesson.Say("slip."+s.first()+".title"), "at", w.Lesson.plain(s.At))
}
