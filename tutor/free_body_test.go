package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/figure"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// No label of a particle's figures lies on another or on a line, in either room
// of the page, for the bank and for random problems.
func TestFiguresOfAParticleAtRest(t *testing.T) {
	var lessons []*Lesson
	for i := range kinds.ParticleEquilibrium.Bank {
		lessons = append(lessons, bankLesson(t, &kinds.ParticleEquilibrium, i))
	}
	for d := lesson.NewDraw(3, 9); len(lessons) < 250; {
		p, err := kinds.All.Read(kinds.ParticleEquilibrium.Draw(d))
		require.NoError(t, err)
		if l, err := Open(p); err == nil {
			lessons = append(lessons, l)
		}
	}
	scenes, leaders := 0, 0
	for _, l := range lessons {
		s := lesson.DefaultSettings()
		s.Method = lesson.ByTriangle // shows the triangle from the start
		all := NewWork(l, s).Scenes()
		if situation, ok := l.Situation(); ok {
			all = append(all, situation)
		}
		for _, scene := range all {
			for _, room := range []figure.Size{{Width: 330, Height: 250}, {Width: 330, Height: 175, Text: 14}} {
				d := figure.Layout(scene, room)
				scenes++
				leaders += d.Cost.Leaders
				assert.Zero(t, d.Cost.Overlaps, "%s: %s at %v", l.Problem.Code(), scene.Title, room)
				assert.NotEmpty(t, d.Desc)
			}
		}
	}
	t.Logf("%d drawings, %d labels on leaders", scenes, leaders)
	assert.Greater(t, scenes, 1000)
}

// The free-body diagram tells nothing that is still to be found.
func TestTheFreeBodyDiagramKeepsTheUnknown(t *testing.T) {
	w := NewWork(bankLesson(t, &kinds.ParticleEquilibrium, 3), lesson.DefaultSettings())
	body := w.Scenes()[0]
	assert.Contains(t, body.Desc, "not known")
	assert.NotContains(t, body.Desc, w.Lesson.Show(w.Lesson.Quantity("F3"), w.Lesson.Truth("F3"), w.Settings.Answer))
	require.Equal(t, verdict.Correct, w.Enter("theta3", w.Lesson.right(w.Lesson.Quantity("theta3"), lesson.Digits{Magnitude: 4, Angle: 2})).Verdict)
	assert.NotContains(t, w.Scenes()[0].Desc, "not known")
}

// A direction given by a slope triangle shows that triangle, with its rise and
// run, in the situation and in the free-body diagram.
func TestSlopeTrianglesAreDrawn(t *testing.T) {
	l := bankLesson(t, &kinds.ParticleEquilibrium, 5) // 3:4 up left
	situation, ok := l.Situation()
	require.True(t, ok)
	for _, scene := range []figure.Scene{situation, NewWork(l, lesson.DefaultSettings()).Scenes()[0]} {
		require.Len(t, scene.Slopes, 1, scene.Title)
		assert.Equal(t, figure.Plain("3"), scene.Slopes[0].RiseLabel)
		assert.Equal(t, figure.Plain("4"), scene.Slopes[0].RunLabel)
		assert.Contains(t, scene.Desc, "4")
		assert.Less(t, scene.Slopes[0].To.X, 0.0)
	}
}
