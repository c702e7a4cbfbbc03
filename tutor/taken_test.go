package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

func TestTheRouteTakenIsRead(t *testing.T) {
	l, err := Open(kinds.TwoForces.BankProblems()[0])
	require.NoError(t, err)
	rows := []struct {
		name     string
		entries  [][2]string
		quantity string
		route    string // its principle, "" where nothing tells
	}{
		{"an expression with its numbers", [][2]string{{"R", "sqrt(340^2+610^2+2*340*610*cos(93))"}}, "R", "parallelogram-diagonal"},
		{"an expression with a name", [][2]string{{"gamma", "87"}, {"R", "sqrt(P^2+Q^2-2*P*Q*cos(gamma))"}}, "R", "cosine-law"},
		{"a number after what it rests on", [][2]string{{"gamma", "87"}, {"R", "682.6 N"}}, "R", "cosine-law"},
		{"a number after components", [][2]string{{"Rx", "21.76"}, {"Ry", "682.3"}, {"R", "682.6 N"}}, "R", "right-angle-theorem"},
		{"out of nothing", [][2]string{{"R", "682.6 N"}}, "R", ""},
		{"before what it would rest on", [][2]string{{"R", "682.6 N"}, {"gamma", "87"}}, "R", ""},
		{"not found", [][2]string{{"R", "700 N"}}, "R", ""},
		{"from the givens", [][2]string{{"phi", "93"}}, "phi", "difference-of-directions"},
	}
	for _, row := range rows {
		t.Run(row.name, func(t *testing.T) {
			w := NewWork(l, lesson.DefaultSettings())
			for _, e := range row.entries {
				w.Enter(e[0], e[1])
			}
			got := ""
			if r := w.Taken(l.Quantity(row.quantity)); r != nil {
				got = r.Principle
			}
			assert.Equal(t, row.route, got)
		})
	}
}
