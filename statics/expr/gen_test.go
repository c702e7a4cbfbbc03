package expr_test

import (
	"math"

	"pgregory.net/rapid"

	. "closingside/statics/expr"
)

// letters are the symbols of generated trees, as they are written and said.
var letters = map[string]Symbol{
	"F1":     {"F", "1", "F 1"},
	"F2":     {"F", "2", "F 2"},
	"F1x":    {"F", "1x", "F 1 x"},
	"R":      {"R", "", "R"},
	"Ry":     {"R", "y", "R y"},
	"gamma":  {"γ", "", "gamma"},
	"theta1": {"θ", "1", "theta 1"},
}

func naming(name string) Symbol { return letters[name] }

// treeOptions says what generated trees may hold.
type treeOptions struct {
	modes  bool // keys in radians and gradians
	powers bool // numbers that print with a power of ten
	smooth bool // no abs, and whole exponents alone
}

// numbers are what a tree may hold and print in full: at most ten digits.
func (o treeOptions) numbers() *rapid.Generator[float64] {
	return rapid.Custom(func(t *rapid.T) float64 {
		v := float64(rapid.Int64Range(0, 9_999_999_999).Draw(t, "digits"))
		if rapid.Bool().Draw(t, "small") {
			v = math.Mod(v, 400)
		}
		v /= math.Pow10(rapid.IntRange(0, 6).Draw(t, "places"))
		if o.powers && rapid.IntRange(0, 9).Draw(t, "power") == 0 {
			v = float64(rapid.IntRange(1, 99).Draw(t, "mantissa")) * math.Pow10(rapid.IntRange(13, 20).Draw(t, "exponent"))
		}
		return v
	})
}

// trees generates trees of at most the given depth.
func (o treeOptions) trees(depth int) *rapid.Generator[Node] {
	return rapid.Custom(func(t *rapid.T) Node {
		shape := rapid.IntRange(0, 9).Draw(t, "shape")
		if depth <= 1 {
			shape %= 4
		}
		sub := func() Node { return o.trees(depth-1).Draw(t, "sub") }
		switch shape {
		case 0, 1:
			return S(rapid.SampledFrom([]string{"F1", "F2", "F1x", "R", "Ry", "gamma", "theta1"}).Draw(t, "name"))
		case 2:
			return Num{o.numbers().Draw(t, "number")}
		case 3:
			if rapid.IntRange(0, 4).Draw(t, "pi") == 0 {
				return Pi{}
			}
			unit := rapid.SampledFrom([]AngleUnit{UnitDeg, UnitDeg, UnitRad, UnitGrad}).Draw(t, "unit")
			return Ang{o.numbers().Draw(t, "angle"), unit}
		case 4:
			return Neg{sub()}
		case 5, 6:
			op := rapid.SampledFrom([]Op{OpAdd, OpSub, OpMul, OpDiv, OpPow}).Draw(t, "op")
			if op == OpPow && (o.smooth || rapid.Bool().Draw(t, "whole")) {
				return Bin{op, sub(), N(float64(rapid.IntRange(2, 4).Draw(t, "exponent")))}
			}
			return Bin{op, sub(), sub()}
		case 7:
			return Bin{rapid.SampledFrom([]Op{OpSub, OpMul, OpDiv}).Draw(t, "op"), sub(), sub()}
		}
		f := Fn{Func: Func(rapid.IntRange(0, int(FnAtan)).Draw(t, "key")), X: sub()}
		if o.smooth && f.Func == FnAbs {
			f.Func = FnSqrt
		}
		if o.modes && f.Func >= FnSin {
			f.Mode = Mode(rapid.IntRange(0, 2).Draw(t, "mode"))
		}
		return f
	})
}
