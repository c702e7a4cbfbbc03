package expr_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	. "closingside/statics/expr"
)

func TestOperandsAndArgument(t *testing.T) {
	x, y := S("x"), S("y")
	l, r, ok := Operands(Sub(x, y), OpSub)
	assert.Equal(t, []any{x, y, true}, []any{l, r, ok})
	for _, other := range []Node{Add(x, y), x, Neg{X: x}, nil} {
		l, r, ok = Operands(other, OpSub)
		assert.Equal(t, []any{nil, nil, false}, []any{l, r, ok})
	}
	arg, ok := Argument(Sqrt(x), FnSqrt)
	assert.Equal(t, []any{x, true}, []any{arg, ok})
	arg, ok = Argument(Fn{Func: FnSin, Mode: InRadians, X: x}, FnSin)
	assert.Equal(t, []any{x, true}, []any{arg, ok}, "in any mode")
	for _, other := range []Node{Sin(x), Sq(x), nil} {
		arg, ok = Argument(other, FnSqrt)
		assert.Equal(t, []any{nil, false}, []any{arg, ok})
	}
}

// Every function is a key one way, the other way, or neither.
func TestTrigKeys(t *testing.T) {
	for _, r := range []struct {
		n             Node
		trig, inverse bool
	}{
		{Sin(S("x")), true, false}, {Cos(S("x")), true, false}, {Tan(S("x")), true, false},
		{Asin(S("x")), false, true}, {Acos(S("x")), false, true}, {Atan(S("x")), false, true},
		{Sqrt(S("x")), false, false}, {Abs(S("x")), false, false}, {S("x"), false, false}, {nil, false, false},
	} {
		assert.Equal(t, []bool{r.trig, r.inverse}, []bool{IsTrig(r.n), IsInverseTrig(r.n)}, "%v", r.n)
	}
	assert.True(t, Contains(Add(N(1), Sin(S("x"))), IsTrig))
	assert.False(t, Contains(Add(N(1), Asin(S("x"))), IsTrig))
	assert.True(t, IsDegrees(Deg(180), 180))
	assert.False(t, IsDegrees(N(180), 180), "a number is no angle")
}
