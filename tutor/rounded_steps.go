package tutor

import (
	"math"
	"slices"
	"strings"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// roundedIn lists, by formula, what q comes to when one value worked out in it,
// or one read, is rounded.
func (s *state) roundedIn(q int) [][]outcome {
	prep, quantity := s.w.Lesson.ready(), &s.w.Lesson.Quantities[q]
	all := make([][]outcome, 0, len(prep.of[q].routes)+len(prep.of[q].onward))
	for j := range prep.of[q].routes {
		all = append(all, s.roundedBy(quantity, &prep.of[q].routes[j].formula))
	}
	if quantity.IsAngle() { // a ratio is noted before its inverse cosine
		for k := range prep.of[q].onward {
			all = append(all, s.roundedBy(quantity, &prep.of[q].onward[k]))
		}
	}
	return all
}

// roundedBy is roundedIn for one formula. Where that reads no entry, the list
// is made once for a lesson.
func (s *state) roundedBy(q *lesson.Quantity, f *formula) []outcome {
	if f.reads&s.standing != 0 {
		return s.round(q, f)
	}
	prep := s.w.Lesson.ready()
	prep.roundedMu.Lock()
	defer prep.roundedMu.Unlock()
	key := roundedKey{f, s.w.Settings.Work}
	all, ok := prep.rounded[key]
	if !ok {
		all = s.round(q, f)
		if prep.rounded == nil {
			prep.rounded = map[roundedKey][]outcome{}
		}
		prep.rounded[key] = all
	}
	return all
}

// roundedKey tells apart what early rounding makes of formulas.
type roundedKey struct {
	by   *formula
	work lesson.Digits
}

// round lists what a formula for q comes to when one value in it is rounded, or
// all its sines and cosines are.
func (s *state) round(q *lesson.Quantity, f *formula) []outcome {
	l := s.w.Lesson
	var out []outcome
	f.prog.Run(s.sound, &s.tape)
	values := slices.Clone(s.tape.Values[:f.prog.Len()])
	seen := set(0)
	for p := range values {
		node, symbol := f.prog.Node(p), f.prog.Symbol(p)
		dim := dimensionAt(f.prog, p)
		switch {
		case f.prog.Constant(p) || symbol < 0 && p == len(values)-1 || l.IsAsGiven(node):
			continue
		case symbol >= 0:
			if l.Quantities[symbol].Given || s.wrong.has(symbol) || seen.has(symbol) {
				continue
			}
			seen = seen.with(symbol)
			dim = l.Quantities[symbol].Dim
		}
		for _, d := range tooFew(&s.w.Settings, dim, values[p]) {
			v := s.workedWith(f.prog, p, symbol, d.value)
			if math.IsNaN(v) {
				continue
			}
			weight := d.weight * f.share * noted(node)
			if symbol >= 0 && s.standing.has(symbol) {
				weight *= weightReread
			}
			switch {
			case d.digits > 1:
			case expr.IsTrig(node) && d.value == -1:
				weight *= weightMinus
			case expr.IsTrig(node) && bare(d.value) || isBareRoot(node):
				weight *= weightBare
			}
			rounded := &Rounded{What: f.called()[p], Digits: d.digits, Keep: d.keep, angle: d.angle, value: d.value}
			if symbol >= 0 {
				rounded.of = set(0).with(symbol)
			} else {
				rounded.place = p
			}
			out = append(out, outcome{value: v, ids: carriedIDs, at: q.Name, weight: weight, prog: f.prog, basis: ofAccepted, rounded: rounded})
		}
	}
	return s.roundKeys(out, q, f)
}

// bare tells whether a sine or cosine was kept to nothing of it.
func bare(kept float64) bool { return kept == 0 || math.Abs(kept) == 1 }

// isBareRoot tells whether n is the root of numbers alone, as the long side of a
// slope triangle is: nobody takes 2 for √5.
func isBareRoot(n expr.Node) bool {
	_, root := expr.Argument(n, expr.FnSqrt)
	return root && len(expr.Symbols(n)) == 0
}

// roundedReading lists what a direction given by a slope is read as where the
// slope's angle, or its rise over its run, is kept to too few digits.
func (s *state) roundedReading(i int) []outcome {
	q, l := &s.w.Lesson.Quantities[i], s.w.Lesson
	h, tree := q.Heading, q.Reading()
	if tree == nil || h.Form != statics.Slope {
		return nil
	}
	prog, acute := l.compile(tree), lesson.Degrees(h.Turn)
	slope := expr.Div(expr.N(h.Rise), expr.N(h.Run))
	var out []outcome
	add := func(what expr.Node, d kept, by float64) {
		if h.Sense == statics.Clockwise {
			by = -by
		}
		out = append(out, outcome{value: q.True + by, ids: carriedIDs, at: q.Name, weight: d.weight, prog: prog, basis: ofAccepted,
			rounded: &Rounded{What: expr.Plain(what, l.Symbol), Digits: d.digits, Keep: d.keep, angle: d.angle, value: d.value}})
	}
	for _, d := range tooFew(&s.w.Settings, statics.DimAngle, acute) {
		add(expr.Atan(slope), d, d.value-acute)
	}
	for _, d := range tooFew(&s.w.Settings, statics.DimRatio, h.Rise/h.Run) {
		add(slope, d, lesson.Degrees(statics.Angle(math.Atan(d.value)))-acute)
	}
	return out
}

// roundKeys appends what a formula comes to where all its sines, cosines and
// tangents are kept to the same few digits.
func (s *state) roundKeys(out []outcome, q *lesson.Quantity, f *formula) []outcome {
	keys := f.keys()
	if len(keys) < 2 {
		return out
	}
	value := func(name string) float64 { return s.sound[s.w.Lesson.index[name]] }
	for n := 1; n < s.w.Settings.Work.Magnitude; n++ {
		rounded := &Rounded{What: strings.Join(keys, ", "), Digits: n, Keep: s.w.Settings.Work.Magnitude, several: true}
		for _, by := range []struct {
			keep   func(v float64, places int) float64
			weight float64
		}{{lesson.RoundPlaces, weightRounded}, {cutPlaces, weightCut}} {
			weight, told := by.weight*weightTogether*f.share, false
			v := expr.EvalEach(f.tree, value, func(node expr.Node, _ int, v float64) float64 {
				if !expr.IsTrig(node) {
					return v
				}
				kept := by.keep(v, n-1-lesson.DecimalExponent(v))
				told = told || n > 1 || !bare(kept)
				return kept
			})
			if !told {
				weight *= weightBare
			}
			if !math.IsNaN(v) {
				out = append(out, outcome{value: v, ids: carriedIDs, at: q.Name, weight: weight, prog: f.prog, basis: ofAccepted, rounded: rounded})
			}
		}
	}
	return out
}

// keys names the sines, cosines and tangents of a formula.
func (f *formula) keys() []string {
	var keys []string
	for p, name := range f.called() {
		if expr.IsTrig(f.prog.Node(p)) && !slices.Contains(keys, name) {
			keys = append(keys, name)
		}
	}
	return keys
}

// workedWith is a formula's value where one value in it comes out as v: every
// place of a symbol, or one place alone.
func (s *state) workedWith(prog *expr.Program, place, symbol int, v float64) float64 {
	if symbol < 0 {
		return prog.RunWith(s.sound, &s.tape, place, v)
	}
	kept := s.sound[symbol]
	s.sound[symbol] = v
	v = prog.Run(s.sound, &s.tape)
	s.sound[symbol] = kept
	return v
}
