package tutor

import (
	"math"

	"closingside/statics/expr"
)

// world is the work as it would stand had one quantity come out at a wrong
// value: everything found from it reads that value, everything else is as the
// learner has it.
type world struct {
	w     *Work
	at    string
	value float64
	on    map[string]bool // quantities being found, so that no route runs in a circle
	used  int             // steps taken between the wrong quantity and the end
}

// env is the value of a name in this world.
func (d *world) env(name string) float64 {
	if name == d.at {
		return d.value
	}
	if r := d.route(name); r != nil {
		d.used++
		d.on[name] = true
		defer delete(d.on, name)
		return expr.Eval(r.Tree, d.env)
	}
	return d.w.own(name)
}

// steps is the number of quantities found in the head since the wrong one,
// itself included.
func (d *world) steps() float64 { return float64(1 + d.used) }

// reaches tells whether tree reads the wrong quantity, directly or by the
// routes of what it reads.
func (d *world) reaches(tree expr.Node) bool {
	return contains(tree, func(n expr.Node) bool {
		s, ok := n.(expr.Sym)
		return ok && (s.Name == d.at || d.route(s.Name) != nil)
	})
}

// route is the first route by which a quantity not yet entered reads the wrong
// one; nil where there is none.
func (d *world) route(name string) *Route {
	q := d.w.Lesson.Quantity(name)
	if q.Given || d.on[name] || d.w.Standing(name) != nil {
		return nil
	}
	d.on[name] = true
	defer delete(d.on, name)
	for i := range q.Routes {
		if d.reaches(q.Routes[i].Tree) {
			return &q.Routes[i]
		}
	}
	return nil
}

// wrap brings a direction into (−180°, 180°].
func wrap(deg float64) float64 {
	d := math.Remainder(deg, 360)
	if d == -180 {
		return 180
	}
	return d
}
