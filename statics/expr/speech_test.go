package expr_test

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	. "closingside/statics/expr"
)

func TestSpeech(t *testing.T) {
	a, b, c := S("a"), S("b"), S("c")
	for _, row := range []struct {
		n    Node
		want string
	}{
		{cosineLaw(), "the square root of, F 1 squared plus F 2 squared minus 2 times F 1 times F 2 times the cosine of gamma, end of root"},
		{Asin(Div(Mul(S("F2"), Sin(S("gamma"))), S("R"))), "the inverse sine of, the fraction, F 2 times the sine of gamma, over, R, end of fraction, end of inverse sine"},
		{Sub(Deg(118), S("theta1")), "118 degrees minus theta 1"},
		{Deg(1), "1 degree"},
		{Ang{1.5, UnitRad}, "1.5 radians"},
		{Ang{50, UnitGrad}, "50 gradians"},
		{Div(S("Ry"), S("R")), "R y over R"},
		{Add(Div(a, b), c), "a over b plus c"},
		{Div(a, Add(b, c)), "the fraction, a, over, b plus c, end of fraction"},
		{Div(Add(Div(a, b), c), a), "the fraction, the fraction, a, over, b, end of fraction, plus c, over, a, end of fraction"},
		{Mul(Pow(a, b), c), "a to the power, b, end of power, times c"},
		{Mul(a, Div(b, c)), "a times the fraction, b, over, c, end of fraction"},
		{Neg{Div(a, b)}, "minus the fraction, a, over, b, end of fraction"},
		{Sub(a, Neg{b}), "a minus, open parenthesis, minus b, close parenthesis"},
		{Sub(a, Sub(b, c)), "a minus, open parenthesis, b minus c, close parenthesis"},
		{Mul(Cos(a), b), "the cosine of, a, end of cosine, times b"},
		{Sq(Cos(a)), "open parenthesis, the cosine of a, close parenthesis, squared"},
		{Tan(Add(a, b)), "the tangent of, a plus b, end of tangent"},
		{Abs(Sub(a, b)), "the absolute value of, a minus b, end of absolute value"},
		{Pow(a, N(3)), "a cubed"},
		{Pow(a, b), "a to the power b"},
		{Pow(a, N(-1)), "a to the power, minus 1, end of power"},
		{Mul(Pi{}, a), "pi times a"},
		{N(-2.5), "minus 2.5"},
		{N(1.5e-9), "1.5 times 10 to the power minus 9"},
		{Fn{FnCos, InRadians, a}, "the cosine keyed in radians of a"},
	} {
		t.Run(row.want, func(t *testing.T) {
			assert.Equal(t, row.want, Speech(row.n, naming))
		})
	}
	assert.Equal(t, "F 1 x", Speech(S("F1x"), func(string) Symbol { return Symbol{"F", "1 x", ""} }),
		"a symbol that does not say how it is spoken is spelled")
}

// listener understands what Speech says by the rules in Speech's comment: it
// hears words and pauses, and nothing else.
type listener struct{ rest string }

func listen(s string) (n Node, err error) {
	defer func() {
		if e := recover(); e != nil {
			err = fmt.Errorf("%v in %q", e, s)
		}
	}()
	l := &listener{" " + s}
	n = l.sum()
	if l.rest != "" {
		panic("unheard:" + l.rest)
	}
	return n, nil
}

// hear takes one of the phrases if it comes next, after a pause or not.
func (l *listener) hear(phrases ...string) string {
	for _, p := range phrases {
		rest := strings.TrimPrefix(l.rest, ",")
		if rest, ok := strings.CutPrefix(rest, " "+p); ok && (rest == "" || rest[0] == ' ' || rest[0] == ',') {
			l.rest = rest
			return p
		}
	}
	return ""
}

func (l *listener) paused() bool { return strings.HasPrefix(l.rest, ",") }

func (l *listener) expect(phrase string) {
	if l.hear(phrase) == "" {
		panic("no " + phrase + " at" + l.rest)
	}
}

func (l *listener) sum() Node {
	var n Node
	if l.hear("minus") != "" {
		n = Neg{l.product()}
	} else {
		n = l.product()
	}
	for {
		switch l.hear("plus", "minus") {
		case "plus":
			n = Add(n, l.product())
		case "minus":
			n = Sub(n, l.product())
		default:
			return n
		}
	}
}

func (l *listener) product() Node {
	n := l.power()
	// "over" without a pause is a quotient, with one it belongs to a fraction.
	if !l.paused() && l.hear("over") != "" {
		return Div(n, l.name())
	}
	for l.hear("times") != "" {
		n = Mul(n, l.power())
	}
	return n
}

func (l *listener) power() Node {
	n := l.atom()
	switch l.hear("squared", "cubed", "to the power") {
	case "squared":
		return Sq(n)
	case "cubed":
		return Pow(n, N(3))
	case "to the power":
		return Pow(n, l.argument("end of power"))
	}
	return n
}

// argument is a name or, after a pause, a sum with its closing words.
func (l *listener) argument(shut string) Node {
	if !l.paused() {
		return l.name()
	}
	n := l.sum()
	l.expect(shut)
	return n
}

func (l *listener) atom() Node {
	switch l.hear("open parenthesis", "the fraction") {
	case "open parenthesis":
		n := l.sum()
		l.expect("close parenthesis")
		return n
	case "the fraction":
		n := l.sum()
		l.expect("over")
		n = Div(n, l.sum())
		l.expect("end of fraction")
		return n
	}
	for f, name := range []string{"square root", "absolute value", "sine", "cosine", "tangent",
		"inverse sine", "inverse cosine", "inverse tangent"} {
		for mode, keyed := range []string{"", " keyed in radians", " keyed in gradians"} {
			if l.hear("the "+name+keyed+" of") != "" {
				return Fn{Func(f), Mode(mode), l.argument("end of " + strings.TrimPrefix(name, "square "))}
			}
		}
	}
	return l.name()
}

func (l *listener) name() Node {
	if l.hear("pi") != "" {
		return Pi{}
	}
	for _, name := range []string{"F1x", "F1", "F2", "Ry", "R", "gamma", "theta1"} {
		if l.hear(letters[name].Spoken) != "" {
			return S(name)
		}
	}
	word, _, _ := strings.Cut(strings.TrimLeft(l.rest, ", "), " ")
	word = strings.TrimSuffix(word, ",")
	v, err := strconv.ParseFloat(word, 64)
	if err != nil {
		panic(err)
	}
	l.expect(word)
	if l.paused() {
		return Num{v}
	}
	switch l.hear("degrees", "degree", "radians", "radian", "gradians", "gradian") {
	case "degrees", "degree":
		return Ang{v, UnitDeg}
	case "radians", "radian":
		return Ang{v, UnitRad}
	case "gradians", "gradian":
		return Ang{v, UnitGrad}
	}
	return Num{v}
}

// understood holds of every tree: a listener hears it in one way.
func understood(t *rapid.T) {
	n := treeOptions{modes: true}.trees(6).Draw(t, "tree")
	said := Speech(n, naming)
	got, err := listen(said)
	if err != nil {
		t.Fatal(err)
	}
	if got != n {
		t.Fatalf("%q is heard as %s", said, Plain(got, naming))
	}
	if strings.Contains(said, ",,") || strings.Contains(said, "  ") || strings.HasPrefix(said, ",") || strings.HasSuffix(said, ",") {
		t.Fatalf("a stray pause in %q", said)
	}
}

func TestSpeechIsUnderstood(t *testing.T) { rapid.Check(t, understood) }

func FuzzSpeechIsUnderstood(f *testing.F) { f.Fuzz(rapid.MakeFuzz(understood)) }
