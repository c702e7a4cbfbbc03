package entry

import (
	"math"
	"slices"
	"strings"

	"closingside/statics"
)

// ranged fails for a range, and for a value with how far it may be off:
// 682-683, 682.6 +- 0.5. As a difference or a sum neither makes sense.
func ranged(tokens []token) {
	const narrow, little = 1.02, 0.05
	if len(tokens) < 4 { // two values and a sign, and the end
		return
	}
	all := slices.DeleteFunc(slices.Clone(tokens[:len(tokens)-1]), func(t token) bool { return t.kind == tUnit })
	n := len(all)
	if n < 3 || n > 4 || all[0].kind != tNumber || all[n-1].kind != tNumber {
		return
	}
	first, last := all[0], all[n-1]
	switch off := all[n-2]; {
	case n == 3 && off.is('-') && first.num.value < last.num.value && last.num.value <= narrow*first.num.value:
		first.through(last.span).fail("range", "from", first.typed, "to", last.typed)
	case n == 4 && off.is('-') && all[1].is('+') && all[1].to == off.from && last.num.value <= little*first.num.value:
		all[1].through(off.span).fail("two-values")
	}
}

// once leaves out a value told again in another unit: 683 N (0.683 kN). Another one
// in its place is a second value.
func once(tokens []token) []token {
	const value = 2 // a number and its unit
	if len(tokens) != 2*value+3 || tokens[value].kind != tOpen || tokens[2*value+1].kind != tClose {
		return tokens
	}
	first, again := tokens[:value], tokens[value+1:]
	if first[0].kind != tNumber || first[1].kind != tUnit || again[0].kind != tNumber || again[1].kind != tUnit {
		return tokens
	}
	from, to := first[1].unit, again[1].unit
	if from.Dim != to.Dim { // 120 kg (9.81 m/s²)
		return tokens
	}
	off := math.Abs(from.Base(first[0].num.value) - to.Base(again[0].num.value))
	if off > from.Base(first[0].num.half)+to.Base(again[0].num.half)+1e-9*off {
		again[0].through(again[1].span).fail("two-values")
	}
	return append(slices.Clone(first), tokens[len(tokens)-1])
}

// doubtful fails for a number that copying or a habit of writing has made into
// a product: 682·6 with the point raised, 6.826×102 with its power brought down.
func doubtful(tokens []token, source []rune) {
	n := len(tokens) - 1
	for n > 3 && tokens[n-1].kind == tUnit {
		n--
	}
	if n < 3 || tokens[0].kind != tNumber || !tokens[1].is('*') || tokens[2].kind != tNumber {
		return
	}
	first, sign, second := tokens[0], tokens[1], tokens[2]
	whole := first.through(second.span)
	digits := second.typed
	switch {
	case n == 3 && strings.ContainsRune("·⋅∙•", source[sign.from]) && first.to == sign.from && sign.to == second.from &&
		first.num.decimals+second.num.decimals == 0 && first.num.half > 0 && second.num.half > 0:
		whole.fail("middle-dot", "typed", string(source[whole.from:whole.to]), "decimal", first.typed+"."+second.typed, "product", first.typed+" × "+second.typed)
	case first.num.value < 1 || first.num.value >= 10 || first.num.decimals == 0:
	case n == 3 && len(digits) == 3 && strings.HasPrefix(digits, "10") && digits != "100":
		whole.fail("power-lost", "typed", string(source[whole.from:whole.to]), "power", "10^"+digits[2:])
	case n == 5 && digits == "10" && tokens[3].is('-') && tokens[4].kind == tNumber && len(tokens[4].typed) == 1:
		whole = first.through(tokens[4].span)
		whole.fail("power-lost", "typed", string(source[whole.from:whole.to]), "power", "10^-"+tokens[4].typed)
	}
}

// halfBehind fails for a half behind a bracket, which ends the value: (308² + 143²)½
// has most likely lost the ^ of a root in a copy. Of an angle it is a half.
func halfBehind(tokens []token, sc *Scope) {
	n := len(tokens) - 1
	for n > 3 && tokens[n-1].kind == tUnit {
		n--
	}
	from := n - 1
	switch {
	case sc.Dim == statics.DimAngle:
		return
	case n > 2 && tokens[n-1].typed == "½":
	case n > 4 && tokens[n-3].typed == "1" && tokens[n-2].is('/') && tokens[n-1].typed == "2":
		from = n - 3
	default:
		return
	}
	if tokens[from-1].kind == tClose {
		tokens[0].through(tokens[n-1].span).fail("half-behind")
	}
}
