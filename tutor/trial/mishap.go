package trial

import (
	"math"
	"slices"

	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/slipped"
	"closingside/tutor/slips"
)

// mishap is what goes wrong in a chain of steps: nothing, or one of these.
type mishap struct {
	slips []slip // in the order of the steps
	early *early
	noise bool
}

// slip is a slip at one step: a formula instead of the right one, or a wrong
// way of writing the value down.
type slip struct {
	at      *lesson.Quantity
	id      string
	tree    expr.Node // nil where it is made in writing
	written bool
}

// early is a value inside a step that is rounded too soon.
type early struct {
	at   *lesson.Quantity
	site int
	keep keeping
}

// mishap draws what goes wrong in a chain.
func (p *learner) mishap(chain []step) mishap {
	h := p.habits
	if p.careful || p.die.chance(h.Right) {
		return mishap{}
	}
	chain = p.behind(chain)
	last := chain[len(chain)-1]
	if last.quantity.Equation { // nothing is worked out in it
		return mishap{slips: p.slip(last, last, last.route.Tree, anySlip)}
	}
	switch p.die.weighted([]float64{h.Slip, h.Two, h.Early, h.Noise}) {
	case 0:
		at := p.somewhere(chain)
		return mishap{slips: p.slip(at, last, at.route.Tree, anySlip)}
	case 1:
		return mishap{slips: p.twoSlips(chain)}
	case 2:
		return mishap{early: p.early(p.somewhere(chain))}
	}
	return mishap{noise: true}
}

// behind keeps the steps of a chain that its last one rests on.
func (p *learner) behind(chain []step) []step {
	needed := map[string]bool{chain[len(chain)-1].quantity.Name: true}
	var kept []step
	for _, s := range slices.Backward(chain) {
		if needed[s.quantity.Name] {
			kept = append(kept, s)
			for _, in := range expr.Symbols(s.route.Tree) {
				needed[in] = true
			}
		}
	}
	slices.Reverse(kept)
	return kept
}

// somewhere is the step where something goes wrong: the last one in half of
// the cases, otherwise any.
func (p *learner) somewhere(chain []step) step {
	if p.die.chance(0.5) {
		return chain[len(chain)-1]
	}
	return one(p.die, chain)
}

// anySlip lets in every row: a slip made alone may be one of the rare ones.
func anySlip(string) bool { return true }

// slip draws a slip at a step whose formula was written as tree: a group by its
// rate, a row of it that may be drawn, and one of the places where it can be made.
func (p *learner) slip(s, last step, tree expr.Node, may func(id string) bool) []slip {
	byRow := map[string][]slip{}
	var rows []string
	add := func(x slip) {
		if !may(x.id) || s.quantity.Equation && !p.writable(x.tree) {
			return
		}
		if byRow[x.id] == nil {
			rows = append(rows, x.id)
		}
		byRow[x.id] = append(byRow[x.id], x)
	}
	for _, x := range slipped.Rewrites(p.lesson.Lesson, s.quantity, tree) {
		add(slip{at: s.quantity, id: x.ID, tree: x.Tree})
	}
	if tree == s.route.Tree {
		for _, m := range s.quantity.Mistakes {
			add(slip{at: s.quantity, id: m.Slip, tree: m.Tree})
		}
	}
	if s == last && !s.quantity.Equation {
		for _, x := range slipped.Values(p.lesson.Lesson, s.quantity, s.quantity.True) {
			add(slip{at: s.quantity, id: x.Row.ID, written: true})
		}
	}
	return p.drawn(rows, byRow)
}

// drawn draws one slip of those that can be made.
func (p *learner) drawn(rows []string, byRow map[string][]slip) []slip {
	inGroup := map[string][]string{}
	for _, id := range rows {
		g := slips.GroupOf(id)
		inGroup[g] = append(inGroup[g], id)
	}
	names := slips.Groups()
	weights := make([]float64, len(names))
	for i, g := range names {
		if len(inGroup[g]) > 0 {
			weights[i] = p.habits.Groups[g]
		}
	}
	i := p.die.weighted(weights)
	if i < 0 {
		return nil
	}
	x := one(p.die, byRow[one(p.die, inGroup[names[i]])])
	if x.id == "given-miscopied" && p.die.chance(0.5) {
		x.tree = p.throughout(x)
	}
	return []slip{x}
}

// throughout is a miscopied given used wherever the step reads it: a number
// copied once is often used twice.
func (p *learner) throughout(x slip) expr.Node {
	for i := range x.at.Routes {
		right := x.at.Routes[i].Tree
		if expr.Size(right) != expr.Size(x.tree) {
			continue
		}
		name, wrong := changedSymbol(right, x.tree)
		if name != "" {
			return expr.Substitute(right, func(n string) (expr.Node, bool) { return wrong, n == name })
		}
	}
	return x.tree
}

// changedSymbol finds the one symbol of right that is another node in other;
// "" where that is not all they differ in.
func changedSymbol(right, other expr.Node) (name string, with expr.Node) {
	expr.Walk(right, func(site int, n expr.Node) {
		if s, ok := n.(expr.Sym); ok && name == "" && site < expr.Size(other) && expr.At(other, site) != n {
			if with = expr.At(other, site); expr.Replace(right, site, with) == other {
				name = s.Name
			}
		}
	})
	return name, with
}

// twoSlips draws two different slips, at one step or at two.
func (p *learner) twoSlips(chain []step) []slip {
	last := chain[len(chain)-1]
	common := func(id string) bool { return !slips.ByID(id).Lone } // a rare one comes alone
	at := p.somewhere(chain)
	slips := p.slip(at, last, at.route.Tree, common)
	if len(slips) == 0 {
		return nil
	}
	first := slips[0]
	at = last
	if first.written { // what is written last comes last
		at = p.somewhere(chain)
	}
	tree := at.route.Tree
	if first.at == at.quantity && first.tree != nil { // the second is made in what the first left
		tree = first.tree
	}
	return append(slips, p.slip(at, last, tree, func(id string) bool { return common(id) && id != first.id })...)
}

// early draws a value inside a step, the value itself left out, and how few
// digits of it are kept; nil where the step has no such value.
func (p *learner) early(s step) *early {
	var sites []int
	expr.Walk(s.route.Tree, func(site int, n expr.Node) {
		switch n := n.(type) {
		case expr.Num, expr.Ang, expr.Pi, expr.Neg:
		case expr.Sym:
			if !p.lesson.Quantity(n.Name).Given && p.work.Standing(n.Name) == nil {
				sites = append(sites, site)
			}
		default:
			if site > 0 && !p.lesson.IsAsGiven(n) {
				sites = append(sites, site)
			}
		}
	})
	if len(sites) == 0 {
		return nil
	}
	return &early{s.quantity, one(p.die, sites), keeping{1 + p.die.weighted([]float64{2, 2, 1}), p.die.chance(0.25)}}
}

// anything is a value that nothing explains: any between the least and the
// most that the givens allow.
func (p *learner) anything(q *lesson.Quantity) float64 {
	x := p.die.unit()
	switch {
	case q.Turns:
		return 360*x - 180
	case q.IsAngle():
		return 180 * x
	}
	most := 0.0
	for i := range p.lesson.Quantities {
		if o := &p.lesson.Quantities[i]; o.Given && o.Dim == q.Dim {
			most += math.Abs(o.True)
		}
	}
	if most == 0 {
		most = 3 * math.Abs(q.True)
	}
	if q.Signed {
		return most * (2*x - 1)
	}
	return most * x
}
