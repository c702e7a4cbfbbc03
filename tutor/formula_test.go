package tutor

import (
	"math/rand/v2"
	"strings"
	"testing"

	"closingside/statics/expr"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// everyKind calls do with lessons of every kind: its bank, and drawn ones.
func everyKind(t *testing.T, drawn int, do func(t *testing.T, l *Lesson)) {
	t.Helper()
	for _, k := range kinds.All {
		t.Run(k.Name, func(t *testing.T) {
			problems := k.BankProblems()
			for seed := range uint64(drawn) {
				problems = append(problems, Generate(k, seed))
			}
			for _, p := range problems {
				l, err := Open(p)
				require.NoError(t, err)
				do(t, l)
			}
		})
	}
}

// In a worked solution the numbers shown come to the value shown: whoever keys
// them in finds what stands there.
func TestShownArithmeticWorksOut(t *testing.T) {
	check := func(t *testing.T, l *Lesson, s lesson.Settings) {
		for _, way := range l.Solve(s) {
			for _, step := range way.Steps {
				q := step.Quantity
				v := expr.Eval(step.Numbers, nil)
				shown, _, _ := strings.Cut(step.Value, ", that is")
				if q.Equation {
					continue // with its unknowns as symbols it comes to no number
				}
				if q.Turns && v <= -180 {
					v += 360
				}
				assert.Equal(t, shown, l.Show(q, v, step.Digits), "%s = %s", q.Name, l.Text(step.Numbers))
			}
		}
	}
	everyKind(t, 40, func(t *testing.T, l *Lesson) { check(t, l, lesson.DefaultSettings()) })
	everyKind(t, 5, func(t *testing.T, l *Lesson) {
		s := lesson.DefaultSettings()
		s.Answer, s.Work = lesson.Digits{Magnitude: 5, Angle: 3}, lesson.Digits{Magnitude: 5, Angle: 3}
		check(t, l, s)
	})
	const seed = 31
	rng := rand.New(rand.NewPCG(seed, 1))
	for range 300 {
		check(t, randomLesson(t, rng), lesson.DefaultSettings())
	}
}

// A value is shown to the digits at which it was found before.
func TestAValueIsShownTheSameAgain(t *testing.T) {
	everyKind(t, 20, func(t *testing.T, l *Lesson) {
		for _, way := range l.Solve(lesson.DefaultSettings()) {
			found := map[string]string{}
			for _, step := range way.Steps {
				found[step.Quantity.Name], _, _ = strings.Cut(strings.NewReplacer("°", "", "−", "").Replace(step.Value), " ")
				line := l.Text(step.Numbers)
				for _, name := range expr.Symbols(step.Route.Tree) {
					if v, ok := found[name]; ok && strings.Contains(v, ".") {
						assert.Contains(t, line, strings.TrimRight(strings.TrimRight(v, "0"), "."), "%s in %s", name, step.Quantity.Name)
					}
				}
			}
		}
	})
}

func TestNearlyCancellingComponentsKeepMoreDigits(t *testing.T) {
	var lines []string
	for _, s := range barge(t).Solve(lesson.DefaultSettings())[1].Steps {
		lines = append(lines, barge(t).Text(s.Numbers)+" = "+s.Value)
	}
	assert.Contains(t, lines, "308.145 + (−286.378) = 21.77 N")
	assert.Contains(t, lines, "340·cos 25° = 308.145 N")
}

// A direction given by a slope enters a formula with the digits kept, not with
// all that a machine has; one given in degrees, as it is given.
func TestGivensInFormulas(t *testing.T) {
	rows := []struct{ direction, want string }{
		{"3:4 up right", "118° − 36.87°"},
		{"5:12 up right", "118° − 22.62°"},
		{"0.5 rad", "118° − 28.65°"},
		{"25.125 deg", "118° − 25.125°"},
		{"52°20′", "118° − 52.33°"},
		{"25 deg", "118° − 25°"},
	}
	for _, r := range rows {
		t.Run(r.direction, func(t *testing.T) {
			l := pair(t, "340 N", r.direction, "610 N", "118 deg")
			step := l.Solve(lesson.DefaultSettings())[0].Steps[0]
			assert.Contains(t, l.Text(step.Numbers), strings.TrimSuffix(r.want, "°"), "or further digits of it")
			hint := NewWork(l, lesson.DefaultSettings()).HintAt("phi", 3)
			assert.Equal(t, r.want, l.Text(hint.Formula.Numbers))
		})
	}
	l := pair(t, "340 N", "25 deg", "100 lb", "118 deg")
	assert.Contains(t, l.Text(l.Solve(lesson.DefaultSettings())[0].Steps[2].Numbers), "√(340² + 444.8")
}

// With a hint's numbers the value of the last hint comes out, also where the
// learner's own entries are rounded.
func TestTheLastHintWorksOut(t *testing.T) {
	everyKind(t, 5, func(t *testing.T, l *Lesson) {
		w := NewWork(l, lesson.DefaultSettings())
		for _, way := range l.Ways {
			for _, step := range way.Steps {
				q := l.Quantity(step.Quantity)
				h := w.HintAt(q.Name, HintLevels)
				v := expr.Eval(h.Formula.Numbers, nil)
				if v == v && q.True == q.True {
					if q.Turns && v <= -180 {
						v += 360
					}
					shown, _, _ := strings.Cut(h.Formula.Value, ", that is")
					assert.Equal(t, shown, l.Show(q, v, w.Settings.DigitsOf(q)), "%s = %s", q.Name, l.Text(h.Formula.Numbers))
				}
				text := w.Settings.DigitsOf(q).Written(q.Dim, q.True)
				if q.IsAngle() {
					text += "°"
				}
				w.Enter(q.Name, text)
			}
		}
	})
}
