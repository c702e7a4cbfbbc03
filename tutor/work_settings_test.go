package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// A method asked for decides what is offered, what comes next, what hints lean
// on and which solution is shown, in every kind.
func TestAMethodAskedForIsKeptTo(t *testing.T) {
	for _, k := range kinds.All {
		for _, p := range k.BankProblems() {
			for _, m := range []lesson.Method{lesson.ByTriangle, lesson.ByComponents} {
				s := lesson.DefaultSettings()
				s.Method = m
				require.NoError(t, p.Use(s))
				l, err := Open(p)
				if err != nil {
					assert.ErrorContains(t, err, "not worked that way")
					continue
				}
				w := NewWork(l, s)
				ways := l.Solve(s)
				require.NotEmpty(t, ways)
				for _, way := range ways { // one for each solution
					assert.Equal(t, m, way.Method)
				}
				offered := map[string]bool{}
				for i := range l.Quantities {
					q := &l.Quantities[i]
					offered[q.Name] = w.Offered(q)
					if !offered[q.Name] {
						continue
					}
					r := w.nearest(q)
					assert.True(t, r.Method == m || r.Method == lesson.AnyMethod, "%s: hint on %s by %s", k.Name, q.Name, r.ID)
				}
				for _, step := range ways[0].Steps {
					assert.True(t, offered[step.Quantity.Name], "%s: %s is a step and not offered", k.Name, step.Quantity.Name)
					if !w.Done() { // further values are found after the answers
						assert.Equal(t, step.Quantity.Name, w.Next(), "the solution's order")
					}
					w.Enter(step.Quantity.Name, l.right(step.Quantity, lesson.Digits{Magnitude: 6, Angle: 4}))
				}
				assert.Empty(t, w.Next())
			}
		}
	}
	w := asking(t, barge(t), "method: triangle")
	assert.False(t, w.Offered(w.Lesson.Quantity("F1x")))
	w = asking(t, barge(t), "method: components")
	assert.False(t, w.Offered(w.Lesson.Quantity("gamma")))
	assert.False(t, w.Offered(w.Lesson.Quantity("phi")))
	assert.Equal(t, verdict.Correct, w.Enter("gamma", "87°").Verdict, "a right value is right all the same")
}

func TestWhenHelpMayBeAskedFor(t *testing.T) {
	on := asking(t, barge(t))
	assert.True(t, on.MayHint("R") && on.MaySolve())
	off := asking(t, barge(t), "hints: off", "solution: off")
	off.Enter("R", "950 N")
	assert.False(t, off.MayHint("R") || off.MaySolve())

	late := asking(t, barge(t), "hints: delayed", "solution: delayed")
	assert.False(t, late.MayHint("R") || late.MaySolve())
	late.Enter("gamma", "93°")
	assert.True(t, late.MayHint("gamma"))
	assert.False(t, late.MayHint("R") || late.MaySolve(), "γ is no answer")
	late.Enter("R", "6m")
	assert.False(t, late.MayHint("R"), "what can't be read is no try")
	late.Enter("R", "950 N")
	assert.True(t, late.MayHint("R") && late.MaySolve())
	late.Undo()
	assert.True(t, late.MayHint("R") && late.MaySolve(), "taking back takes no help away")

	done := asking(t, barge(t), "solution: delayed")
	done.Enter("R", "682.6 N")
	assert.False(t, done.MaySolve())
	done.Enter("theta", "88.2°")
	assert.True(t, done.MaySolve())
}

// Sentences of a kind leave out how a direction is to be reported: the
// settings say that.
func TestKindsLeaveReportingToTheSettings(t *testing.T) {
	for _, k := range kinds.All {
		for _, p := range k.BankProblems() {
			l, err := Open(p)
			require.NoError(t, err)
			assert.NotContains(t, l.Question(), "counter-clockwise")
			for i := range l.Quantities {
				if q := &l.Quantities[i]; q.Turns && !q.Given {
					assert.NotContains(t, l.Say(k.Name+"."+q.Name+".what"), "counter-clockwise")
				}
			}
		}
	}
}
