package expr_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	. "closingside/statics/expr"
)

// What is not a node, an operation, a key, a mode or a unit is a mistake of
// the program: every walk over a tree says so at once.
func TestUnknownPartsPanic(t *testing.T) {
	x := S("x")
	parts := map[string]Node{
		"node":      nil,
		"operation": Bin{Op: 99, L: x, R: x},
		"function":  Fn{Func: 99, X: x},
		"mode":      Fn{Func: FnSin, Mode: 99, X: x},
		"unit":      Ang{Value: 1, Unit: 99},
	}
	walks := map[string]func(Node){
		"Eval":    func(n Node) { Eval(n, berth) },
		"Trace":   func(n Node) { Trace(Neg{n}, berth) },
		"Partial": func(n Node) { Partial(n, berth, "x") },
		"Plain":   func(n Node) { Plain(Neg{n}, nil) },
		"Math":    func(n Node) { Math(Neg{n}, nil) },
		"Speech":  func(n Node) { Speech(Neg{n}, nil) },
	}
	for part, n := range parts {
		for walk, do := range walks {
			t.Run(walk+" of unknown "+part, func(t *testing.T) {
				assert.Panics(t, func() { do(n) })
			})
		}
	}
	assert.Panics(t, func() { Size(nil) })
}

// Numbers in a tree are not negative; one that is all the same is printed as
// the negation it should have been.
func TestNegativeNumbersPrintTruthfully(t *testing.T) {
	for _, n := range []Node{Num{-2}, Ang{-2, UnitDeg}, Ang{-2, UnitRad}} {
		var tidy Node
		switch n := n.(type) {
		case Num:
			tidy = Neg{Num{2}}
		case Ang:
			tidy = Neg{Ang{2, n.Unit}}
		}
		around := func(n Node) Node { return Mul(Sq(n), Sub(n, Cos(n))) }
		assert.Equal(t, Plain(around(tidy), nil), Plain(around(n), nil))
		assert.Equal(t, render(t, Math(around(tidy), nil)), render(t, Math(around(n), nil)))
	}
}
