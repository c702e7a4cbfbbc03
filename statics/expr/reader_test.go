package expr_test

import (
	"fmt"
	"strconv"
	"strings"

	. "closingside/statics/expr"
)

// reader reads what Plain writes, by the grammar in Plain's comment. It is the
// tests' own, to prove that the text says what the tree says.
type reader struct {
	rest   string
	greedy bool // another habit: cos a·b is cos(a·b), √a^2 is √(a^2)
}

func readPlain(s string, greedy bool) (n Node, err error) {
	defer func() {
		if e := recover(); e != nil {
			err = fmt.Errorf("%v in %q", e, s)
		}
	}()
	r := &reader{s, greedy}
	n = r.sum()
	if r.rest != "" {
		panic("unread: " + r.rest)
	}
	return n, nil
}

// take takes one of the given texts if it comes next.
func (r *reader) take(texts ...string) string {
	for _, text := range texts {
		if rest, ok := strings.CutPrefix(r.rest, text); ok {
			r.rest = rest
			return text
		}
	}
	return ""
}

func (r *reader) expect(text string) {
	if r.take(text) == "" {
		panic("no " + text + " at " + r.rest)
	}
}

func (r *reader) sum() Node {
	var n Node
	if r.take("−") != "" {
		n = Neg{r.product()}
	} else {
		n = r.product()
	}
	for {
		switch r.take(" + ", " − ") {
		case " + ":
			n = Add(n, r.product())
		case " − ":
			n = Sub(n, r.product())
		default:
			return n
		}
	}
}

func (r *reader) product() Node {
	n := r.power()
	for {
		switch r.take("·", "/") {
		case "·":
			n = Mul(n, r.power())
		case "/":
			n = Div(n, r.power())
		default:
			return n
		}
	}
}

func (r *reader) power() Node {
	n := r.atom()
	switch r.take("²", "³", "^") {
	case "²":
		return Sq(n)
	case "³":
		return Pow(n, N(3))
	case "^":
		return Pow(n, r.atom())
	}
	return n
}

func (r *reader) atom() Node {
	switch r.take("(", "|", "π", "√", "abs", "sin", "cos", "tan") {
	case "(":
		n := r.sum()
		r.expect(")")
		return n
	case "|":
		n := r.sum()
		r.expect("|")
		return Abs(n)
	case "π":
		return Pi{}
	case "√":
		return r.key(FnSqrt)
	case "abs":
		return r.key(FnAbs)
	case "sin":
		return r.trig(FnSin)
	case "cos":
		return r.trig(FnCos)
	case "tan":
		return r.trig(FnTan)
	}
	// Longer spellings first: F₁x before F₁.
	for _, name := range []string{"F1x", "F1", "F2", "Ry", "R", "gamma", "theta1"} {
		if r.take(letters[name].String()) != "" {
			return S(name)
		}
	}
	return r.number()
}

func (r *reader) trig(f Func) Node {
	if r.take("⁻¹") != "" {
		f += FnAsin - FnSin
	}
	mode := InDegrees
	switch r.take("_rad", "_grad") {
	case "_rad":
		mode = InRadians
	case "_grad":
		mode = InGradians
	}
	n := r.key(f).(Fn)
	n.Mode = mode
	return n
}

func (r *reader) key(f Func) Node {
	bare := !strings.HasPrefix(r.rest, "(")
	r.take(" ")
	if bare && r.greedy {
		return Fn{Func: f, X: r.product()}
	}
	return Fn{Func: f, X: r.atom()}
}

func (r *reader) number() Node {
	end := strings.IndexFunc(r.rest, func(c rune) bool { return !strings.ContainsRune("0123456789.e", c) })
	if end < 0 {
		end = len(r.rest)
	}
	v, err := strconv.ParseFloat(r.rest[:end], 64)
	if err != nil {
		panic(err)
	}
	r.rest = r.rest[end:]
	switch r.take("°", " rad", " grad") {
	case "°":
		return Ang{v, UnitDeg}
	case " rad":
		return Ang{v, UnitRad}
	case " grad":
		return Ang{v, UnitGrad}
	}
	return Num{v}
}
