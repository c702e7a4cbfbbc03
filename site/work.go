package site

import "closingside/tutor"

// desk is the work on one problem. Its log lines are taken in when the desk is
// turned to, so a long log costs little at the start.
type desk struct {
	code   string
	lesson *tutor.Lesson
	work   *tutor.Work
	past   []Form // lines not yet taken in
	told   told   // what they tell
	open   string // the quantity whose form is in use
	solved bool   // the worked solution is on the screen
	asked  sketched
	seen   seen
	of     *setView // the set it was opened from; nil where there is none

	answering bool // a request on this desk is being answered: what is new may move
}

// catchUp takes in what the log says of this desk.
func (d *desk) catchUp() {
	past := d.past
	d.past = nil
	for _, f := range past {
		d.take(f)
	}
}

// take does what a request asks of the work and tells what was said, where
// something was.
func (d *desk) take(f Form) (reply tutor.Reply, ok bool) {
	name := f.Get("quantity")
	q := d.lesson.Quantity(name)
	asked := q != nil && !q.Given
	switch f.Get("do") {
	case "look": // the desk is opened anew
		d.open = ""
	case "enter":
		if asked {
			d.open = name
			d.setAside()
			return d.work.Enter(name, f.Get("entry")), true
		}
	case "hint":
		if asked && d.work.MayHint(name) {
			d.open = name
			d.work.Hint(name)
		}
	case "solution":
		if d.work.MaySolve() {
			d.work.ShowSolution()
			d.solved = true
		}
	case "sketch":
		d.asked = d.sketchAct(f)
	case "answer":
		if asked {
			return d.chosen(f, name)
		}
	case "stand", "withdraw":
		if asked && d.standBy(f, name) {
			return d.work.Standing(name).Reply, true
		}
	case "undo":
		d.open = d.work.Undo()
	case "again":
		d.work = tutor.NewWork(d.lesson, d.work.Settings)
		d.open, d.solved = "", false
	}
	return tutor.Reply{}, false
}
