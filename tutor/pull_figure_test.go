package tutor

import (
	"testing"

	"closingside/tutor/figure"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The hint for a sum asks for no unknown that the sum is written to find.
func TestTheHintForASumAsksForNothingUnknown(t *testing.T) {
	w := crate(t)
	w.Hint("sumx")
	w.Hint("sumx")
	assert.NotContains(t, w.Hint("sumx").Sentence, "Find it first")
}

// A force whose direction is asked is drawn as one that points nobody knows
// where until it is found, and what hangs by it is not drawn without it.
func TestAnOpenDirectionIsDrawnOpen(t *testing.T) {
	l := bankLesson(t, &kinds.ParticleEquilibrium, 8)
	w := NewWork(l, lesson.DefaultSettings())
	open := func() bool {
		for _, a := range w.Scenes()[0].Arrows {
			if a.Class == figure.ClassOpen {
				return true
			}
		}
		return false
	}
	assert.True(t, open())
	_, ok := l.Situation()
	assert.False(t, ok)
	q := l.Quantity("theta2")
	require.Equal(t, verdict.Correct, w.Enter(q.Name, l.right(q, w.Settings.DigitsOf(q))).Verdict)
	assert.False(t, open())
}

// A figure shows a right entry with the digits it was typed with: 682.6 N beside
// “682.6”, not 683 N.
func TestAFigureShowsAnEntryAsItWasTyped(t *testing.T) {
	for _, row := range []struct{ quantity, entry, shown string }{
		{"R", "682.6", "682.6 N"}, {"R", "683 N", "683 N"}, {"R", "682.635 N", "682.6 N"}, {"theta", "88.17", "88.17°"}, {"theta", "88.2", "88.2°"},
	} {
		w := NewWork(barge(t), lesson.DefaultSettings())
		require.Equal(t, verdict.Correct, w.Enter(row.quantity, row.entry).Verdict)
		q := w.Lesson.Quantity(row.quantity)
		assert.Equal(t, figure.Symbol(q.Symbol.Letter, q.Symbol.Sub).Is(row.shown), w.Label(row.quantity), row.entry)
	}
}
