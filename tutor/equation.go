package tutor

import (
	"math"
	"slices"
	"strings"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// A quantity that is an equation (Quantity.Equation) is a sum that is zero. Its
// routes write the sum out; its true value is zero. What a learner enters for
// it is an equation, right when it is a consequence of the lesson's: written as
// a sum of products of unknowns that is zero, it is a combination of theirs,
// coefficient by coefficient, as closely as the numbers in it were typed. So it
// may be scaled, rearranged, belong to another pair of axes, or hold the value
// of an unknown that was found before.

// balance is an equation as terms that add up to zero, each at the true values
// of its unknowns so that all can be compared.
type balance struct {
	terms terms
	size  float64 // of the largest term
}

// judgeEquation gives the verdict on an equation.
func (w *Work) judgeEquation(q *lesson.Quantity, r *Reply) {
	views := w.views()
	entered := views[0].entered(&r.Reading)
	switch {
	case entered == nil:
		w.unlike(q, r, "feedback.equation.form")
		return
	case entered.size <= exactTerms*w.largest():
		w.unlike(q, r, "feedback.equation.nothing")
		return
	}
	for _, v := range views {
		if e := v.entered(&r.Reading); e != nil && v.holds(e) {
			w.accept(q, r, v, e)
			return
		}
	}
	w.explainEquation(q, r, views)
}

// accept is the verdict on an equation that holds under a view.
func (w *Work) accept(q *lesson.Quantity, r *Reply, v *view, e *balance) {
	symbol := w.Lesson.Plain(q.Name)
	switch same := w.repeats(q, v, e); {
	case same != "":
		w.unlike(q, r, "feedback.equation.repeated", "other", w.Lesson.Plain(same))
	case v.from != "":
		r.Verdict, r.From = Carried, v.from
		r.Feedback = w.Lesson.Say("feedback.carried", "symbol", symbol, "from", w.Lesson.Plain(v.from))
		w.escalate(q, r)
	default:
		r.Verdict = Correct
		if coarse(w, &r.Reading) || !v.holds(v.entered(asWritten(&r.Reading))) {
			r.Notes = []string{"digit-more"}
		}
		r.Feedback = w.Lesson.Say("feedback.equation.correct")
		for _, n := range r.Notes {
			r.Feedback += " " + w.Lesson.Say("note.equation."+n)
		}
	}
}

// unlike is the verdict on an equation that nothing explains.
func (w *Work) unlike(q *lesson.Quantity, r *Reply, key string, holes ...string) {
	r.Verdict, r.Unexplained, r.Feedback = Unexplained, 1, w.Lesson.Say(key, holes...)
	w.escalate(q, r)
}

// repeats is another equation the learner has already, of which e is but a
// multiple; "" where there is none.
func (w *Work) repeats(q *lesson.Quantity, v *view, e *balance) string {
	for i := range w.Lesson.Quantities {
		o := &w.Lesson.Quantities[i]
		if !o.Equation || o == q || !w.Found(o.Name) {
			continue
		}
		if before := v.entered(&w.Standing(o.Name).Reading); before != nil && before.size > 0 && e.multipleOf(before) {
			return o.Name
		}
	}
	return ""
}

// Uncertainty of the numbers in an equation: half a unit of the last digit, as
// far as that lets no other number pass. What the statement gives and the whole
// numbers of a formula (see stated) are exact.
const (
	literalRel = 0.005 // at most half a percent of a number
	exactTerms = 1e-6  // of the largest term, beside what the numbers allow

	coarseDigits = 2 // of a number: one digit more is asked
)

// mayBeOff is by how much a number of an equation that holds may be off. A whole
// number is held to half a percent, slack and all: 32 for 32.2 is another g.
func mayBeOff(l entry.Literal) float64 {
	most := literalRel * l.Value
	if l.Decimals == 0 {
		most /= slack
	}
	return min(max(l.Half, l.Coarse/slack), most)
}

// roundedFar is by how much a number may be off that was rounded further than
// an equation allows: as far as any rounding is followed.
func roundedFar(l entry.Literal) float64 { return min(l.Half, limit.rel*l.Value) }

// literals is the uncertainty of the numbers on one side of an equation.
func (w *Work) literals(r *entry.Reading, right bool, off func(entry.Literal) float64) func(site int) float64 {
	return func(site int) float64 {
		for _, l := range r.Literals {
			if l.Site == site && l.Right == right && !w.stated(l.Value) {
				return off(l)
			}
		}
		return 0
	}
}

// roundedTooSoon is the number behind which an equation, else right, was rounded
// too far; nil where there is none. Slips are looked for first.
func (w *Work) roundedTooSoon(r *entry.Reading, views []*view) *Rounded {
	var most *entry.Literal
	for i := range r.Literals {
		if l := &r.Literals[i]; !w.stated(l.Value) && (most == nil || l.Half*most.Value > most.Half*l.Value) {
			most = l
		}
	}
	holds := func(v *view) bool {
		e := v.enteredAs(r, roundedFar)
		return v.from == "" && e != nil && v.holds(e)
	}
	if most == nil || !slices.ContainsFunc(views, holds) {
		return nil
	}
	return &Rounded{What: expr.FormatNumber(most.Value, most.Digits), Digits: most.Digits, Keep: max(w.Settings.Work.Magnitude, most.Digits+1)}
}

// coarse tells whether an equation holds a number of so few digits that the
// answer suffers.
func coarse(w *Work, r *entry.Reading) bool {
	return slices.ContainsFunc(r.Literals, func(l entry.Literal) bool {
		return !w.stated(l.Value) && l.Decimals > 0 && l.Digits <= coarseDigits && l.Value != 0.5
	})
}

// asWritten is an equation whose numbers are known to their last digit, final
// zeros among them.
func asWritten(r *entry.Reading) *entry.Reading {
	fine := *r
	fine.Literals = slices.Clone(r.Literals)
	for i := range fine.Literals {
		fine.Literals[i].Coarse = fine.Literals[i].Half
	}
	return &fine
}

// weigh turns coefficients into terms: times the unknowns' true values, or a
// typical one where that is zero.
func (l *Lesson) weigh(t terms, typical float64) *balance {
	b := &balance{terms: terms{}}
	for _, product := range t.products() {
		at := coef{value: 1}
		for _, factor := range factors(product) {
			at.value *= l.truthOf(factor, typical)
		}
		c := t[product].times(at)
		b.terms[product] = c
		b.size = max(b.size, math.Abs(c.value))
	}
	return b
}

// truthOf is the size of an unknown of an equation, never zero.
func (l *Lesson) truthOf(factor string, typical float64) float64 {
	key, name, trig := strings.Cut(factor, " ")
	if trig {
		f := expr.FnSin
		if key+" " == cosineOf {
			f = expr.FnCos
		}
		return max(0.1, math.Abs(expr.Eval(expr.Fn{Func: f, X: expr.S(name)}, l.Truth)))
	}
	v := math.Abs(l.Truth(factor))
	if q := l.Quantity(factor); q.Dim == statics.DimForce {
		return max(v, 1e-3*typical)
	}
	return max(v, 1e-9)
}

// tolerance is by how much the term of a product may be off in b.
func (b *balance) tolerance(product string) float64 {
	return b.terms[product].off*(1+1e-9) + exactTerms*b.size
}

// multipleOf tells whether b is a multiple of another equation.
func (b *balance) multipleOf(o *balance) bool {
	return b.spannedBy([]*balance{o})
}

// spannedBy tells whether b is a combination of one or two equations, each term
// as closely as it is known: least squares, weighed by what each term allows,
// and no term further off than that.
func (b *balance) spannedBy(basis []*balance) bool {
	products := b.terms.products()
	for _, o := range basis {
		products = append(products, o.terms.products()...)
	}
	slices.Sort(products)
	products = slices.Compact(products)
	weight := func(p string) float64 {
		tol := b.tolerance(p)
		return b.size / tol
	}
	var dots [2][2]float64
	var rights [2]float64
	for _, p := range products {
		k := weight(p) * weight(p)
		for i, u := range basis {
			rights[i] += k * u.share(p) * b.share(p)
			for j, v := range basis {
				dots[i][j] += k * u.share(p) * v.share(p)
			}
		}
	}
	if len(basis) == 1 {
		dots[1][1] = 1
	}
	det := dots[0][0]*dots[1][1] - dots[0][1]*dots[1][0]
	if det == 0 {
		return false
	}
	x := (rights[0]*dots[1][1] - rights[1]*dots[0][1]) / det
	y := (rights[1]*dots[0][0] - rights[0]*dots[1][0]) / det
	for _, p := range products {
		left := b.share(p) - x*basis[0].share(p)
		allowed := b.tolerance(p)/b.size + math.Abs(x)*basis[0].terms[p].off/basis[0].size
		if len(basis) == 2 {
			left -= y * basis[1].share(p)
			allowed += math.Abs(y) * basis[1].terms[p].off / basis[1].size
		}
		if !(math.Abs(left) <= slack*allowed) {
			return false
		}
	}
	return true
}

// slack is how much further than a term allows the fit by least squares may
// leave it, where a fit of the worst term would just do.
const slack = 1.5

// share is a term relative to the largest.
func (b *balance) share(product string) float64 { return b.terms[product].value / b.size }
