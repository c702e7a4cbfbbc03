package expr_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	. "closingside/statics/expr"
)

// harbour is the environment of most tests here: two tugs on one barge.
func harbour(name string) float64 {
	switch name {
	case "F1":
		return 340
	case "F2":
		return 610
	case "gamma":
		return 87
	case "theta1":
		return 25
	case "theta2":
		return 118
	}
	return math.NaN()
}

// cosineLaw is R of the force triangle: √(F1² + F2² − 2·F1·F2·cos γ).
func cosineLaw() Node {
	return Sqrt(Sub(
		Add(Sq(S("F1")), Sq(S("F2"))),
		Mul(N(2), S("F1"), S("F2"), Cos(S("gamma")))))
}

func TestEvalQuarterTurnsAreExact(t *testing.T) {
	turns := []struct {
		deg           float64
		sin, cos, tan float64
	}{
		{0, 0, 1, 0}, {90, 1, 0, math.NaN()}, {180, 0, -1, 0}, {270, -1, 0, math.NaN()},
		{360, 0, 1, 0}, {450, 1, 0, math.NaN()}, {-90, -1, 0, math.NaN()}, {-180, 0, -1, 0},
		{-270, 1, 0, math.NaN()}, {3.6e14, 0, 1, 0}, {3.6e17, 0, 1, 0},
	}
	same := func(t *testing.T, want float64, n Node) {
		t.Helper()
		got := Eval(n, nil)
		if math.IsNaN(want) {
			assert.True(t, math.IsNaN(got), "%v = %v, want undefined", n, got)
			return
		}
		assert.Equal(t, want, got)
		assert.False(t, got == 0 && math.Signbit(got), "−0")
	}
	for _, turn := range turns {
		for _, key := range []struct {
			mode  Mode
			angle float64
		}{{InDegrees, turn.deg}, {InGradians, turn.deg / 9 * 10}} {
			same(t, turn.sin, Fn{FnSin, key.mode, N(key.angle)})
			same(t, turn.cos, Fn{FnCos, key.mode, N(key.angle)})
			same(t, turn.tan, Fn{FnTan, key.mode, N(key.angle)})
		}
	}
}

func TestEvalEndsOfInverseKeysAreExact(t *testing.T) {
	for _, row := range []struct {
		f       Func
		x, want float64
	}{
		{FnAsin, 1, 90}, {FnAsin, -1, -90}, {FnAsin, 0, 0},
		{FnAcos, 1, 0}, {FnAcos, 0, 90}, {FnAcos, -1, 180},
		{FnAtan, 1, 45}, {FnAtan, -1, -45}, {FnAtan, 0, 0},
	} {
		assert.Equal(t, row.want, Eval(Fn{row.f, InDegrees, N(row.x)}, nil), "key %d of %v", row.f, row.x)
	}
}

func TestEvalUndefined(t *testing.T) {
	for name, n := range map[string]Node{
		"unknown symbol":          S("nobody"),
		"division by zero":        Div(N(1), N(0)),
		"nothing by nothing":      Div(N(0), N(0)),
		"root of a negative":      Sqrt(N(-1)),
		"inverse sine beyond 1":   Asin(N(1.0000000001)),
		"inverse sine below −1":   Asin(N(-1.0000000001)),
		"inverse cosine beyond 1": Acos(N(1.0000000001)),
		"inverse cosine below −1": Acos(N(-2)),
		"too large":               Mul(N(1e200), N(1e200)),
		"zero to a negative":      Pow(N(0), N(-1)),
		"root by a power":         Pow(N(-2), N(0.5)),
		"one to the undefined":    Pow(N(1), Sqrt(N(-1))),
		"undefined to the zero":   Pow(Sqrt(N(-1)), N(0)),
		"infinite literal":        Num{math.Inf(1)},
		"infinite angle":          Ang{math.Inf(1), UnitDeg},
	} {
		t.Run(name, func(t *testing.T) {
			assert.True(t, math.IsNaN(Eval(n, harbour)), "%v", Eval(n, harbour))
		})
	}
	assert.True(t, math.IsNaN(Eval(S("F1"), nil)), "a nil Env knows nothing")
	assert.True(t, math.IsNaN(Eval(S("F1"), func(string) float64 { return math.Inf(-1) })))
}

func TestEvalValues(t *testing.T) {
	for _, row := range []struct {
		name string
		n    Node
		want float64
	}{
		// 682.635 N is the closing side of 340 N at 25° and 610 N at 118°,
		// summed by components: √((340cos25+610cos118)² + (340sin25+610sin118)²).
		{"cosine law", cosineLaw(), math.Hypot(
			340*math.Cos(25*math.Pi/180)+610*math.Cos(118*math.Pi/180),
			340*math.Sin(25*math.Pi/180)+610*math.Sin(118*math.Pi/180))},
		{"half", Sin(Deg(30)), 0.5},
		{"radian literal", Cos(Ang{math.Pi / 3, UnitRad}), 0.5},
		{"gradian literal", Sin(Ang{100, UnitGrad}), 1},
		{"degrees in a radian key", Fn{FnCos, InRadians, S("gamma")}, math.Cos(87)},
		{"radians off a radian key", Fn{FnAsin, InRadians, N(0.5)}, math.Pi / 6},
		{"gradians off a gradian key", Fn{FnAcos, InGradians, N(0.5)}, 200.0 / 3},
		{"minus", Sub(Neg{S("theta1")}, S("theta2")), -143},
		{"pi", Mul(Pi{}, N(2)), 2 * math.Pi},
		{"abs", Abs(Sub(S("F1"), S("F2"))), 270},
		{"cube", Pow(N(2), N(3)), 8},
		{"zero to the zero", Pow(N(0), N(0)), 1},
		{"tangent", Tan(Deg(45)), 1},
	} {
		t.Run(row.name, func(t *testing.T) {
			assert.InEpsilon(t, row.want, Eval(row.n, harbour), 1e-14)
		})
	}
}

func TestEvalEachRounds(t *testing.T) {
	var sites []int
	got := EvalEach(cosineLaw(), harbour, func(n Node, site int, v float64) float64 {
		assert.Equal(t, At(cosineLaw(), site), n)
		sites = append(sites, site)
		return math.Round(v)
	})
	// √(115600 + 372100 − 414800·0) with every result rounded to a whole number.
	assert.Equal(t, math.Round(math.Sqrt(487700)), got)
	assert.Equal(t, []int{3, 6, 2, 11, 10, 15, 9, 1, 0}, sites, "operands first, the root last, no literal or given")
}

func TestEvalDoesNotAllocate(t *testing.T) {
	n, sum := cosineLaw(), 0.0
	require.Zero(t, testing.AllocsPerRun(100, func() { sum += Eval(n, harbour) }))
	require.Zero(t, testing.AllocsPerRun(100, func() { sum += Partial(n, harbour, "gamma") }))
	require.False(t, math.IsNaN(sum))
}

func BenchmarkEvalCosineLaw(b *testing.B) {
	n, v := cosineLaw(), 0.0
	b.ReportAllocs()
	for b.Loop() {
		v = Eval(n, harbour)
	}
	require.InDelta(b, 682.635, v, 1e-3)
}

func BenchmarkTraceCosineLaw(b *testing.B) {
	n, v := cosineLaw(), 0.0
	b.ReportAllocs()
	for b.Loop() {
		v = Trace(n, harbour)[0].Value
	}
	require.InDelta(b, 682.635, v, 1e-3)
}

// A right angle by the sine law: the last bits of its sine lie beyond 1.
func TestInverseOfALittleMoreThanOne(t *testing.T) {
	beyond := math.Nextafter(1, 2)
	assert.Equal(t, 90.0, Eval(Asin(N(beyond)), nil))
	assert.Equal(t, -90.0, Eval(Asin(Neg{X: N(beyond)}), nil))
	assert.Equal(t, 0.0, Eval(Acos(N(beyond)), nil))
	assert.True(t, math.IsNaN(Eval(Asin(N(1.00001)), nil)))
}
