package expr

import "strings"

// Speech says n in English words, with commas where a voice pauses:
//
//	the square root of, F 1 squared plus F 2 squared minus 2 times F 1 times
//	F 2 times the cosine of gamma, end of root
//
// It is meant to be understood by ear in one way only:
//
//   - Sums and products are said as they are written, and read from the left;
//     "times" binds before "plus" and "minus". A minus at the start of a sum
//     or of a parenthesis takes in the whole product after it.
//   - "open parenthesis" and "close parenthesis" are said wherever Plain would
//     need them, except around the parts of what follows here.
//   - "the cosine of gamma": a function without a pause takes the one name or
//     number after it, and is said so only where nothing multiplies, divides or
//     raises it. Otherwise there is a pause, and "end of cosine" (of sine, of
//     inverse tangent, of root, of absolute value) shuts it.
//   - "F 1 over R" is said of two names or numbers, standing alone or in a
//     sum. Every other quotient, and every one inside a fraction, is "the
//     fraction, …, over, …, end of fraction".
//   - "squared", "cubed" and "to the power 4" follow a name, a number, a closed
//     parenthesis or a closed fraction; a longer exponent ends with "end of
//     power".
func Speech(n Node, names Naming) string {
	s := speaker{names: names}
	s.say(n, loose)
	return s.String()
}

type speaker struct {
	strings.Builder
	names     Naming
	comma     bool // a pause is due before the next word
	fractions int  // how many are open
}

// words says words, after the pause that is due.
func (s *speaker) words(words string) {
	if s.Len() > 0 {
		if s.comma {
			s.WriteByte(',')
		}
		s.WriteByte(' ')
	}
	s.comma = false
	s.WriteString(words)
}

// pause puts a comma before the next words, unless they are the first.
func (s *speaker) pause() { s.comma = s.Len() > 0 }

func (s *speaker) say(n Node, next behind) {
	switch n := n.(type) {
	case Num:
		s.number(n.Value)
	case Ang:
		s.number(n.Value)
		s.words(unitWord(n))
	case Pi:
		s.words("pi")
	case Sym:
		s.words(s.names.symbol(n.Name).Spoken)
	case Neg:
		s.words("minus")
		if isQuotient(n.X) {
			s.fraction(n.X.(Bin))
			return
		}
		s.operand(n.X, needNeg, next)
	case Bin:
		s.binary(n, next)
	case Fn:
		s.function(n, next)
	default:
		panic("expr: unknown node")
	}
}

// speechGrip is gripOf for what is said: the bars of an absolute value are a
// function's name, a unit is a word like another.
func speechGrip(n Node) grip {
	switch n := n.(type) {
	case Fn:
		return gripPower
	case Ang:
		if n.Value >= 0 && !usesPower(n.Value) {
			return gripPower
		}
	case Num:
		if usesPower(n.Value) {
			return gripUnit
		}
	}
	return gripOf(n)
}

// operand says n, in parentheses where it has less than the least grip.
func (s *speaker) operand(n Node, least grip, next behind) {
	if speechGrip(n) < least {
		s.pause()
		s.between("open parenthesis", n, "close parenthesis")
		return
	}
	s.say(n, next)
}

// between says n with a pause before and after, between two phrases.
func (s *speaker) between(open string, n Node, shut string) {
	s.words(open)
	s.pause()
	s.say(n, loose)
	s.pause()
	s.words(shut)
	s.pause()
}

func (s *speaker) binary(n Bin, next behind) {
	left, right := need(n.Op)
	switch n.Op {
	case OpAdd, OpSub:
		s.operand(n.L, left, loose)
		s.words(opWord(n.Op))
		s.operand(n.R, right, next)
	case OpMul:
		s.factor(n.L, left, tight)
		s.words(opWord(n.Op))
		s.factor(n.R, right, next)
	case OpDiv:
		if next == loose && s.fractions == 0 && isBare(n.L) && isBare(n.R) {
			s.say(n.L, loose)
			s.words("over")
			s.say(n.R, loose)
			return
		}
		s.fraction(n)
	case OpPow:
		s.power(n, next)
	}
}

// factor says an operand that is multiplied or raised: a quotient there is
// shut by its own words, not by parentheses.
func (s *speaker) factor(n Node, least grip, next behind) {
	if isQuotient(n) {
		s.fraction(n.(Bin))
		return
	}
	s.operand(n, least, next)
}

func (s *speaker) fraction(n Bin) {
	s.fractions++
	s.words("the fraction")
	s.pause()
	s.say(n.L, loose)
	s.pause()
	s.words("over")
	s.pause()
	s.say(n.R, loose)
	s.pause()
	s.words("end of fraction")
	s.pause()
	s.fractions--
}

func (s *speaker) power(n Bin, next behind) {
	base, _ := need(n.Op)
	s.factor(n.L, base, tight)
	switch {
	case n.R == Num{2}:
		s.words("squared")
	case n.R == Num{3}:
		s.words("cubed")
	case next == loose && isBare(n.R):
		s.words("to the power")
		s.say(n.R, loose)
	default:
		s.between("to the power", n.R, "end of power")
	}
}

func (s *speaker) function(n Fn, next behind) {
	name := functionWord(n.Func)
	of := "the " + name
	if mode := modeName(n.Mode); mode != "" {
		of += " keyed in " + mode + "ians"
	}
	if next == loose && isBare(n.X) {
		s.words(of + " of")
		s.say(n.X, loose)
		return
	}
	s.between(of+" of", n.X, "end of "+strings.TrimPrefix(name, "square "))
}

func (s *speaker) number(v float64) {
	text := strings.Replace(FormatNumber(v, treeDigits), minus, "minus ", 1)
	if mantissa, power, ok := strings.Cut(text, "e"); ok {
		text = mantissa + " times 10 to the power " + strings.Replace(power, minus, "minus ", 1)
	}
	s.words(text)
}

func opWord(op Op) string {
	switch op {
	case OpAdd:
		return "plus"
	case OpSub:
		return "minus"
	case OpMul:
		return "times"
	}
	panic("expr: unknown operation")
}

func functionWord(f Func) string {
	switch f {
	case FnSqrt:
		return "square root"
	case FnAbs:
		return "absolute value"
	case FnSin:
		return "sine"
	case FnCos:
		return "cosine"
	case FnTan:
		return "tangent"
	case FnAsin:
		return "inverse sine"
	case FnAcos:
		return "inverse cosine"
	case FnAtan:
		return "inverse tangent"
	}
	panic("expr: unknown function")
}

func unitWord(a Ang) string {
	word := ""
	switch a.Unit {
	case UnitDeg:
		word = "degree"
	case UnitRad:
		word = "radian"
	case UnitGrad:
		word = "gradian"
	default:
		panic("expr: unknown angle unit")
	}
	if a.Value == 1 {
		return word
	}
	return word + "s"
}
