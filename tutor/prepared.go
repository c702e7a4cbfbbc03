package tutor

import (
	"sync"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
	"closingside/tutor/writing"
)

// prepared is what judging needs of a lesson and no entry changes. It is made
// once, when the first entry is judged.
type prepared struct {
	of     []quantityFacts // by quantity
	givens set
	modes  []mode

	mu    sync.Mutex // of plans
	plans map[planKey][]plan

	roundedMu sync.Mutex // of rounded
	rounded   map[roundedKey][]outcome

	blankMu sync.Mutex // held while a state of blanks is in use
	blanks  map[blankKey]*state

	altered sync.Once // of misread
	misread []misreading
}

// quantityFacts is what is prepared of one quantity. The lists of slips are
// made when first asked for.
type quantityFacts struct {
	routes   []routeFacts
	onward   []formula     // see Quantity.Onward
	drift    writing.Drift // see driftInHead
	inexact  float64       // see inexactly
	upstream set           // what it may be worked from

	singles singles      // see singlesOf
	twice   twiceSlipped // see slippedTwice
	doubles doubles      // two slips together
	wrong   wrongStep    // see wrongIn
}

// routeFacts is how a route behaves about the true values.
type routeFacts struct {
	formula
	sensitivity
	anyAxes sensitivity // along the axes that make the most of a rounding

	taken    bool          // a worked solution takes it, or one like it
	seldom   bool          // hardly anyone takes it
	sums     bool          // of whole values, by sums alone
	crest    *crest        // where an inverse sine ends it
	quadrant *ofComponents // where an arctangent ends it
	ways     []planStep    // in which it is gone on by, see goesOn
}

// ready returns the lesson's prepared facts.
func (l *Lesson) ready() *prepared {
	l.once.Do(func() {
		if len(l.Quantities) > 64 {
			panic("tutor: a lesson of more than 64 quantities")
		}
		p := &prepared{of: make([]quantityFacts, len(l.Quantities))}
		for i := range l.Quantities {
			q, facts := &l.Quantities[i], &p.of[i]
			if q.Given {
				p.givens = p.givens.with(i)
			}
			for j := range q.Routes {
				facts.routes = append(facts.routes, l.facts(q, j))
			}
			for _, tree := range q.Onward {
				facts.onward = append(facts.onward, l.formula(q, tree, lesson.ShareOther))
			}
		}
		p.modes = []mode{l.inMode("radian-mode", expr.InRadians), l.inMode("gradian-mode", expr.InGradians)}
		l.prep = p
		l.inexactly()
		for i := range p.of {
			p.of[i].drift, p.of[i].upstream = l.driftInHead(i), p.above(i)
		}
	})
	return l.prep
}

// above is the set of quantities that i may be worked from.
func (p *prepared) above(i int) set {
	found, todo := set(0), set(0).with(i)
	for todo != 0 {
		next := set(0)
		todo.each(func(k int) {
			for _, f := range p.of[k].routes {
				next |= f.reads
			}
		})
		todo = next &^ found
		found |= next
	}
	return found
}

// mode is every route worked with a calculator in the wrong angle mode.
type mode struct {
	ids    []string
	weight float64
	routes [][]*expr.Program // by quantity, by route
}

func (l *Lesson) inMode(id string, wrong expr.Mode) mode {
	row := slips.ByID(id)
	m := mode{ids: row.IDs, weight: row.Prior}
	for i := range l.Quantities {
		var routes []*expr.Program
		for _, r := range l.Quantities[i].Routes {
			tree, _ := slips.InMode(r.Tree, wrong, func(n expr.Node) bool { return expr.IsTrig(n) || expr.IsInverseTrig(n) })
			routes = append(routes, l.compile(tree))
		}
		m.routes = append(m.routes, routes)
	}
	return m
}

func (l *Lesson) facts(q *lesson.Quantity, j int) routeFacts {
	r := &q.Routes[j]
	f := routeFacts{formula: l.formula(q, r.Tree, l.Share(q, j)), taken: l.Takes(q, j), seldom: l.Seldom(q, j), sums: sumsAlone(r.Tree, l), quadrant: l.quadrantOf(q, r.Tree)}
	f.sensitivity = l.sensitivity(r.Tree)
	f.anyAxes = l.alongAnyAxes(l.index[q.Name], j, f.sensitivity)
	if f.crest = crestOf(r.Tree); f.crest != nil {
		f.crest.sensitivity = l.sensitivity(f.crest.sine)
	}
	f.ways = f.goesOn(l.index[q.Name], j)
	return f
}

// crest is the end of a route by an inverse sine, whose slope grows without
// bound towards 90°.
type crest struct {
	sine        expr.Node // the sine of the angle
	supplement  bool      // 180° − sin⁻¹
	sensitivity           // of the sine
}

func crestOf(tree expr.Node) *crest {
	if x, ok := expr.Argument(tree, expr.FnAsin); ok {
		return &crest{sine: x}
	}
	if l, r, ok := expr.Operands(tree, expr.OpSub); ok && expr.IsDegrees(l, 180) {
		if x, ok := expr.Argument(r, expr.FnAsin); ok {
			return &crest{sine: x, supplement: true}
		}
	}
	return nil
}
