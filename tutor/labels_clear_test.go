package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/figure"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// However far the work has come, and with as many digits as a figure shows, no
// label touches another, a line or the frame, in both rooms the page has for a
// figure and in a sheet's.
func TestLabelsStayClearAsWorkGoesOn(t *testing.T) {
	rooms := []figure.Size{{Width: 330, Height: 250}, {Width: 330, Height: 175, Text: 14}, {Width: 300, Height: 200}}
	for _, k := range kinds.All {
		for _, p := range k.BankProblems() {
			l, err := Open(p)
			require.NoError(t, err)
			w := NewWork(l, lesson.DefaultSettings())
			for i := range l.Quantities {
				q := &l.Quantities[i]
				if q.Given || q.Equation {
					continue
				}
				w.Enter(q.Name, w.Settings.Work.Written(q.Dim, q.True))
				for _, scene := range w.Scenes() {
					for _, room := range rooms {
						d := figure.Layout(scene, room)
						assert.Zero(t, d.Cost.Overlaps, "%s after %s, %v", p.Story, q.Name, room)
					}
				}
			}
		}
	}
}
