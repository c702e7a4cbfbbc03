package tutor

import (
	"math"
	"slices"

	"closingside/statics/expr"
)

// unlike drops from plans, likeliest first, those that come to what one before
// them comes to, whatever the wrong value is: by another route of the same sums,
// say. What is left differs, and may be longer.
func (l *Lesson) unlike(plans []plan, standing set) []plan {
	values := l.trials(standing)
	var tape expr.Tape
	var out []plan
	var come [][]float64
	for i := range plans {
		p := &plans[i]
		ends := l.tried(p, values, &tape)
		k := slices.IndexFunc(come, func(earlier []float64) bool { return comeToOne(earlier, ends) })
		if k < 0 || out[k].whole != p.whole || out[k].keyed != p.keyed {
			out, come = append(out, *p), append(come, ends)
		}
	}
	return out
}

// What plans are tried with: a wrong value a little off, so that inverse sines
// have a value, and far off, all round the turn, so that what is acute in the
// sketch comes out obtuse, what is positive negative.
var (
	offBy      = [...]float64{0.983, 1.029, 0.31, 0.62, 1.41, 1.83, -0.7, -1.2, 0.1, 2.6, -3} // times the right one
	wrongAngle = [...]float64{0, 0, 5, 23, 71, 128, 173, -37, -112, -161, -176}               // degrees, after those a little off
)

// wrongAt is the value of quantity at that plans are tried with.
func (l *Lesson) wrongAt(at, trial int) float64 {
	if right := l.Quantities[at].True; wrongAngle[trial] == 0 || !l.Quantities[at].IsAngle() {
		return right*offBy[trial] + offBy[trial] - 1
	}
	return wrongAngle[trial]
}

// trials is the values of the lesson's quantities, with what is entered a little
// off, each its own way.
func (l *Lesson) trials(standing set) []float64 {
	values := make([]float64, len(l.Quantities))
	for i := range values {
		values[i] = l.Quantities[i].True
		if standing.has(i) {
			values[i] *= 1 + 0.002*float64(i%7+1)/8
		}
	}
	return values
}

// tried is what p comes to at each of the trials.
func (l *Lesson) tried(p *plan, standing []float64, tape *expr.Tape) []float64 {
	out := make([]float64, len(offBy))
	values := make([]float64, len(standing))
	for k := range out {
		copy(values, standing)
		out[k] = p.run(values, l.wrongAt(p.at, k), tape)
	}
	return out
}

// comeToOne tells whether plans that come to a and to b are the same where both have
// a value, and that they have one.
func comeToOne(a, b []float64) bool {
	some := false
	for i := range a {
		if math.IsNaN(a[i]) != math.IsNaN(b[i]) {
			return false
		}
		if !math.IsNaN(a[i]) {
			if math.Abs(a[i]-b[i]) > 1e-9*max(1, math.Abs(a[i])) {
				return false
			}
			some = true
		}
	}
	return some
}
