package trial

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/slipped"
)

// written is v as this learner writes it for q.
func (p *learner) written(q *lesson.Quantity, v float64) string {
	if q.Turns { // a direction is written within one turn
		v = math.Remainder(v, 360)
	}
	if math.Abs(v) < 1e-9 { // what is left of equal forces is shown as nothing
		v = 0
	}
	return p.dressed(q, v, p.digits(q, v))
}

// digits is v at the digits written, without a unit: "682.6", "87.00".
func (p *learner) digits(q *lesson.Quantity, v float64) string {
	places := p.habits.Digits.Angle
	if !q.IsAngle() {
		places = p.habits.Digits.Magnitude - 1 - exponent(v)
	}
	v = shorten(v, places, p.keep.cut)
	if !q.IsAngle() && v != 0 { // 999.97 is written 1000
		places = p.habits.Digits.Magnitude - 1 - exponent(v)
	}
	s := strconv.FormatFloat(math.Abs(v), 'f', max(places, 0), 64)
	if strings.Contains(s, ".") && p.die.chance(0.3) { // final zeros left away
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if v < 0 {
		s = one(p.die, []string{"-", "−"}) + s
	}
	return s
}

// dressed puts a unit behind the number, as people do: mostly the lesson's
// own, at times another of its family, at times none.
func (p *learner) dressed(q *lesson.Quantity, v float64, number string) string {
	unit := p.lesson.UnitOf(q)
	switch {
	case q.IsAngle():
		return number + one(p.die, []string{"°", "°", "", " deg"})
	case unit.Symbol == "":
		return number
	case p.die.chance(0.15):
		return number
	case p.die.chance(0.06):
		if other, ok := larger[unit.Symbol]; ok {
			to, _ := statics.UnitBySymbol(other)
			w, _ := unit.Convert(v, to)
			return p.digits(q, w) + " " + other
		}
	}
	return number + " " + unit.Symbol
}

// larger is the next larger unit that a value may be written in.
var larger = map[string]string{"N": "kN", "kN": "MN", "lb": "kip", "lbf": "kip", "N·m": "kN·m"}

// miswritten is v written down with the slip called id; false where that
// leaves no trace, as minutes do on whole degrees.
func (p *learner) miswritten(q *lesson.Quantity, v float64, id string) (string, bool) {
	if id == "digits-swapped" {
		s, ok := p.swapped(p.digits(q, v))
		return p.dressed(q, v, s), ok
	}
	var all []float64
	for _, x := range slipped.Values(p.lesson.Lesson, q, v) {
		if x.Row.ID == id && !equal(x.Value, v) && !(id == "minutes-as-decimals" && p.sixtyMinutes(x.Value)) {
			all = append(all, x.Value)
		}
	}
	if len(all) == 0 {
		return "", false
	}
	x := one(p.die, all)
	if id == "radians-unnamed" {
		return p.digits(q, x), true
	}
	return p.dressed(q, x, p.digits(q, x)), true
}

// sixtyMinutes tells whether minutes written as decimals come to sixty at the
// digits written: 46°59.8′ is written 47°, never 46.60.
func (p *learner) sixtyMinutes(v float64) bool {
	_, part := math.Modf(shorten(v, min(p.habits.Digits.Angle, 2), p.keep.cut))
	return math.Abs(part) > 0.595
}

// swapped exchanges two neighbouring different digits of a number; false where
// it has none. The first digit is not made a zero.
func (p *learner) swapped(s string) (string, bool) {
	b := []rune(s)
	var at [][2]int
	for i := range b {
		j := i + 1
		if j < len(b) && b[j] == '.' {
			j++
		}
		if j < len(b) && isDigit(b[i]) && isDigit(b[j]) && b[i] != b[j] && (len(at) > 0 || b[j] != '0') {
			at = append(at, [2]int{i, j})
		}
	}
	if len(at) == 0 {
		return s, false
	}
	x := one(p.die, at)
	b[x[0]], b[x[1]] = b[x[1]], b[x[0]]
	return string(b), true
}

func isDigit(r rune) bool { return r >= '0' && r <= '9' }

// equation is a sum that is zero, as written on paper: numbers for what is
// given or found, letters for the unknowns.
func (p *learner) equation(sum expr.Node) string {
	n := expr.Substitute(sum, func(name string) (expr.Node, bool) {
		q := p.lesson.Quantity(name)
		if q == nil || letter(q) {
			return nil, false
		}
		return p.number(q), true
	})
	return expr.Plain(n, p.lesson.Symbol) + " = 0"
}

// letter tells whether q stays a letter in an equation: an unknown, or a
// component of one.
func letter(q *lesson.Quantity) bool { return q.Unknown || q.Means != nil }

// writable tells whether an equation can be written: it has an unknown, and no
// key in another angle mode, which is worked out and not written.
func (p *learner) writable(sum expr.Node) bool {
	unknown := func(name string) bool { return letter(p.lesson.Quantity(name)) }
	return inDegrees(sum) && slices.ContainsFunc(expr.Symbols(sum), unknown)
}

// inDegrees tells whether every key of a formula is pressed in degrees.
func inDegrees(tree expr.Node) bool {
	all := true
	expr.Walk(tree, func(_ int, n expr.Node) {
		if key, ok := n.(expr.Fn); ok && key.Mode != expr.InDegrees {
			all = false
		}
	})
	return all
}

// number is what this learner writes for a quantity inside a formula: a given
// as stated, a value found at the digits written.
func (p *learner) number(q *lesson.Quantity) expr.Node {
	v := p.value(q.Name)
	switch {
	case q.IsAngle() && q.Given:
		return expr.Deg(v)
	case q.IsAngle():
		return expr.Deg(shorten(v, p.habits.Digits.Angle, p.keep.cut))
	case q.Given:
		return expr.N(v)
	}
	return expr.N(significant(v, p.habits.Digits.Magnitude, p.keep.cut))
}

// formula is tree with numbers for symbols, as written on paper. False where it
// can't be written so (a key in another angle mode).
func (p *learner) formula(tree expr.Node) (string, bool) {
	known := true
	n := expr.Substitute(tree, func(name string) (expr.Node, bool) {
		q := p.lesson.Quantity(name)
		known = known && q != nil && !math.IsNaN(p.value(name))
		if !known {
			return nil, false
		}
		return p.number(q), true
	})
	return expr.Plain(n, p.lesson.Symbol), known && inDegrees(tree)
}
