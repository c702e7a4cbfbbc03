package tutor

import (
	"cmp"
	"slices"
	"strings"

	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
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
	q := w.Lesson.Quantity(name)
	w.settle(q, &a.Reply, c)
	w.compare(q, &a.Reply)
	return a.Reply, true
}

// settle is what follows for r from the answer c to its question.
func (w *Work) settle(q *lesson.Quantity, r *Reply, c Choice) {
	r.Chosen = c
	r.Slips = slices.Clone(r.Slips)
	sum := 0.0
	for i := range r.Slips {
		r.Slips[i].Probability *= c.believed(i)
		sum += r.Slips[i].Probability
	}
	r.Unexplained *= c.believed(-1)
	sum += r.Unexplained
	for i := range r.Slips {
		r.Slips[i].Probability /= sum
	}
	r.Unexplained /= sum
	slices.SortStableFunc(r.Slips, func(x, y Suspect) int { return cmp.Compare(y.Probability, x.Probability) })
	// The learner agrees, so nobody is accused; of close rivals (see rivals) the
	// one chosen comes first.
	r.Verdict = verdict.SlipFound
	if c == Neither {
		r.Verdict = verdict.Unexplained
	}
	r.Feedback = w.say(q, r)
}

// rivals tells whether one question settles which of the two likeliest slips
// it was: they are all but sure together, and close enough that either answer
// decides.
func (w *Work) rivals(slips []Suspect) bool {
	if len(slips) < 2 || slips[0].double() || slips[1].double() {
		return false
	}
	a, b := slips[0], slips[1]
	return a.Probability+b.Probability >= sureEnough && b.Probability*saidIfSo > a.Probability*saidIfOther && w.separable(a, b)
}

// settled answers the question of r as the learner did when the same value
// was entered before; false where it was not, or another pair stood then.
func (w *Work) settled(q *lesson.Quantity, r *Reply) bool {
	for i := len(w.Past) - 1; i >= 0; i-- {
		a := &w.Past[i]
		if !a.Undone && a.Quantity == q.Name && a.Chosen != Unsaid && sameEntry(q, &r.Reading, &a.Reading) {
			return w.settleAs(q, r, &a.Reply)
		}
	}
	return false
}

// settleAs answers the question of r as the learner answered that of before;
// false where that asked about another pair, or was not answered, or r is.
func (w *Work) settleAs(q *lesson.Quantity, r, before *Reply) bool {
	if !r.Asked || r.Chosen != Unsaid || before.Chosen == Unsaid {
		return false
	}
	place := func(s Suspect, rivals [2]Suspect) int {
		return slices.IndexFunc(rivals[:], func(o Suspect) bool { return o.Likely == s.Likely && o.At == s.At })
	}
	if place(r.rivals[0], before.rivals) < 0 || place(r.rivals[1], before.rivals) < 0 {
		return false
	}
	c := before.Chosen
	if c != Neither {
		c = First + Choice(place(before.rivals[c-First], r.rivals))
	}
	w.settle(q, r, c)
	return true
}

// askOrSettle asks which of two rivals it was, unless that was said before.
func (w *Work) askOrSettle(q *lesson.Quantity, r *Reply) {
	r.rivals = [2]Suspect(r.Slips[:2])
	r.Verdict, r.Asked = verdict.SlipFound, true
	if !w.settled(q, r) {
		r.Feedback = w.say(q, r)
	}
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

// Beside is what is said of an attempt whose options stand below it: of the
// question between them as much as they do not say themselves.
func (w *Work) Beside(a *Attempt) string {
	if w.Options(a) == nil {
		return a.Feedback
	}
	return strings.TrimSpace(a.help + " " + w.Lesson.Say("feedback.which.beside") + " " + a.estimate)
}

func (w *Work) titleOf(s Suspect) string {
	return w.Lesson.Say("feedback.option", "what", w.title(s), "where", w.where(s.At))
}
