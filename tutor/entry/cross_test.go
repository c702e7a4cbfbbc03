package entry

import (
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	lang "github.com/expr-lang/expr"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/statics/expr"
)

// sample writes random expressions in the notation that the reader and the
// general-purpose library have in common.
type sample struct{ *rand.Rand }

func (s sample) sum(depth int) string {
	t := s.product(depth)
	for range s.IntN(3) {
		t += []string{" + ", " - ", "-"}[s.IntN(3)] + s.product(depth)
	}
	return t
}

func (s sample) product(depth int) string {
	t := s.power(depth)
	for range s.IntN(2) {
		t += []string{"*", " / "}[s.IntN(2)] + s.power(depth)
	}
	return t
}

func (s sample) power(depth int) string {
	t := s.atom(depth)
	if s.IntN(5) == 0 {
		t += "^" + []string{"2", "3", "2^2", "0.5", "(-1)"}[s.IntN(5)]
	}
	return t
}

func (s sample) atom(depth int) string {
	shape := s.IntN(6)
	if depth == 0 {
		shape %= 3
	}
	switch shape {
	case 0, 1:
		return strconv.FormatFloat(float64(s.IntN(4000))/10, 'f', 1, 64)
	case 2:
		return []string{"F1", "F2", "gamma"}[s.IntN(3)]
	case 3:
		return "(" + s.sum(depth-1) + ")"
	case 4:
		return "(-" + s.product(depth-1) + ")"
	}
	key := []string{"sin", "cos", "tan", "atan", "sqrt", "abs", "asin", "acos"}[s.IntN(8)]
	if strings.HasPrefix(key, "a") && key != "abs" { // keep most within −1 … 1
		return key + "((" + s.sum(depth-1) + ")/1000.0)"
	}
	return key + "(" + s.sum(depth-1) + ")"
}

// parse reads an expression alone. It judges neither names nor units nor values;
// numbers with a unit of force are converted to newtons.
func parse(s string, names Names) (n expr.Node, err *Error) {
	defer rescue(&err)
	words := NewVocabulary(names)
	p := parser{tokens: lex(s, words, false), scope: &Scope{Words: words}}
	return p.all(), nil
}

// TestEvaluatorAgainstLibrary reads and evaluates ≥ 10,000 random expressions
// and compares with github.com/expr-lang/expr, to which the trigonometric
// functions in degrees are given by the standard library's. The tolerance is
// 1e-13 of what rounding each inner result can do to the value.
func TestEvaluatorAgainstLibrary(t *testing.T) {
	const wanted, seed = 12_000, 20240611
	env := map[string]any{"F1": 340.0, "F2": 610.0, "gamma": 87.0}
	options := append(inDegrees(), lang.Env(env))
	s := sample{rand.New(rand.NewPCG(seed, 1))}
	var compared, undefined, touchy int
	for compared < wanted {
		text := s.sum(2)
		if len(text) > maxRunes {
			continue
		}
		n, bad := parse(text, testNames)
		require.Nil(t, bad, text)
		program, err := lang.Compile(text, options...)
		require.NoError(t, err, text)
		out, err := lang.Run(program, env)
		require.NoError(t, err, text)
		want := toFloat(t, out)
		got := expr.Eval(n, testKnown)
		tolerance := 1e-13 * reach(n)
		switch {
		case math.IsNaN(got):
			// The library goes on with infinities, which a division may bury.
			if !strings.ContainsAny(text, "/^") {
				require.True(t, math.IsNaN(want) || math.IsInf(want, 0), "Eval(%q) = NaN, want %v", text, want)
			}
			undefined++
		case !(tolerance < 1e-3*math.Abs(got)+1e-9):
			touchy++ // next to a pole or the edge of a domain
		default:
			compared++
			require.InDelta(t, want, got, tolerance+1e-12*math.Abs(got)+1e-300, "Eval(%q), seed %d", text, seed)
		}
	}
	t.Logf("%d compared, %d undefined, %d too touchy to compare", compared, undefined, touchy)
	assert.Less(t, touchy, wanted/20)
}

// reach bounds how far the value moves when every inner result moves by its
// own size.
func reach(n expr.Node) float64 {
	sum := 0.0
	for _, p := range expr.Trace(n, testKnown) {
		switch p.Node.(type) {
		case expr.Neg, expr.Bin, expr.Fn: // the others are not worked out
			// The slope along a whole exponent of a negative base is no number,
			// and the exponent is exact.
			if move := math.Abs(p.Slope * p.Value); !math.IsNaN(move) {
				sum += move
			}
		}
	}
	return sum
}

// inDegrees are the library's functions: the quadrant limits exact, the rest
// by package math.
func inDegrees() []lang.Option {
	const degree = math.Pi / 180
	sin := func(x float64) float64 {
		switch x = math.Mod(x, 360); x {
		case 0, 180, -180:
			return 0
		case 90, -270:
			return 1
		case 270, -90:
			return -1
		}
		return math.Sin(x * degree)
	}
	cos := func(x float64) float64 {
		switch x = math.Mod(x, 360); x {
		case 90, -90, 270, -270:
			return 0
		case 180, -180:
			return -1
		}
		return math.Cos(x * degree)
	}
	var options []lang.Option
	for name, f := range map[string]func(float64) float64{
		"sin": sin, "cos": cos, "tan": func(x float64) float64 { return sin(x) / cos(x) }, "sqrt": math.Sqrt,
		"asin": func(x float64) float64 { return math.Asin(x) / degree },
		"acos": func(x float64) float64 { return math.Acos(x) / degree },
		"atan": func(x float64) float64 { return math.Atan(x) / degree },
	} {
		options = append(options, lang.Function(name, func(args ...any) (any, error) { return f(args[0].(float64)), nil }, new(func(float64) float64)))
	}
	return options
}

func toFloat(t *testing.T, v any) float64 {
	switch v := v.(type) {
	case float64:
		return v
	case int:
		return float64(v)
	}
	t.Fatalf("%T from the library", v)
	return 0
}
