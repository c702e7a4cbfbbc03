package figure

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/spatial/r2"
)

// Whatever a learner does on a sketch, what is not moved stays where it is: the
// scale and the origin are those of the sketch as it began.
func TestABoardStaysPut(t *testing.T) {
	moved := 0
	for seed := range 200 {
		r := rand.New(rand.NewPCG(uint64(seed), 3))
		p := randomPair(r)
		forces := []Force{p.First, p.Second}
		first := Layout(randomBoard(r, forces), Size{Width: 358, Height: 330})
		for range 3 {
			d := Layout(randomBoard(r, forces), Size{Width: 358, Height: 330})
			if d.Scale != first.Scale || d.Origin != first.Origin || d.Height != first.Height {
				moved++
				assert.Greater(t, max(d.Cost.Stage, first.Cost.Stage), 1, "only where the labels ask for it")
			}
		}
	}
	assert.LessOrEqual(t, moved, 6)
}

// The parts of a board say where they are.
func TestABoardInWords(t *testing.T) {
	strict(t)
	p := tugs()
	laid := []Laid{{Force: p.First}, {Force: p.Second, Tail: p.First.Vec}}
	s := Board(laid, &Arrow{To: r2.Add(p.First.Vec, p.Second.Vec), Class: ClassResultant, Label: Symbol("R", "")}, []r2.Vec{{X: -500}, {X: 500, Y: 900}})
	require.Equal(t, "P = 340 N points 25 degrees above the positive x axis. The tail of P is at the common point. "+
		"Q = 610 N points 118 degrees counter-clockwise from the positive x axis, up and to the left. The tail of Q is at the head of P. "+
		"The closing side R runs from the common point to the head of Q. It points up and to the right.", s.Desc)
	laid[1].Tail = r2.Vec{X: 3}
	assert.Contains(t, Board(laid, nil, nil).Desc, "The tail of Q is at a place of its own.")
}
