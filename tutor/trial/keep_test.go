package trial

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/statics/expr"
	"closingside/tutor"
	"closingside/tutor/kinds"
)

func TestKeeping(t *testing.T) {
	rows := []struct {
		name  string
		keep  keeping
		angle bool
		v     float64
		want  float64
	}{
		{"all digits", keeping{}, false, 682.6354, 682.6354},
		{"four", keeping{digits: 4}, false, 682.6354, 682.6},
		{"four of a large one", keeping{digits: 4}, false, 465991.3, 466000},
		{"four of a small one", keeping{digits: 4}, false, 0.05233596, 0.05234},
		{"four, cut", keeping{digits: 4, cut: true}, false, 0.05233996, 0.05233},
		{"negative, cut towards zero", keeping{digits: 3, cut: true}, false, -286.4, -286},
		{"half goes away from zero", keeping{digits: 3}, false, 286.5, 287},
		{"half that binary falls short of", keeping{digits: 3}, false, 1.005, 1.01},
		{"cut what binary falls short of", keeping{digits: 3, cut: true}, false, 1.15, 1.15},
		{"angle with four", keeping{digits: 4}, true, 29.8349, 29.83},
		{"angle with three", keeping{digits: 3}, true, 29.8349, 29.8},
		{"angle with one", keeping{digits: 1}, true, 29.8349, 30},
		{"zero", keeping{digits: 3}, false, 0, 0},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			assert.InDelta(t, r.want, r.keep.value(r.v, r.angle), 1e-12*max(1, r.want))
		})
	}
}

func barge(t testing.TB) *tutor.Lesson {
	t.Helper()
	l, err := tutor.Open(kinds.All.ByName("two-forces").BankProblems()[0])
	require.NoError(t, err)
	return l
}

func TestIsAngle(t *testing.T) {
	l := barge(t)
	f, theta := expr.S("F1"), expr.S("theta1")
	for _, r := range []struct {
		name string
		n    expr.Node
		want bool
	}{
		{"direction", theta, true},
		{"force", f, false},
		{"sum", expr.Sub(expr.Deg(180), theta), true},
		{"twice an angle", expr.Mul(expr.N(2), theta), true},
		{"half an angle", expr.Div(theta, expr.N(2)), true},
		{"sine", expr.Sin(theta), false},
		{"inverse sine", expr.Asin(expr.Div(f, expr.S("F2"))), true},
		{"turned round", expr.Neg{X: theta}, true},
		{"force times sine", expr.Mul(f, expr.Sin(theta)), false},
	} {
		t.Run(r.name, func(t *testing.T) { assert.Equal(t, r.want, isAngle(l, r.n)) })
	}
}
