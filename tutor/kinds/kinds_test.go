package kinds

import (
	"math"
	"strconv"
	"testing"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor"
	"closingside/tutor/draw"
	"closingside/tutor/figure"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// largestForce is the scale of a lesson's forces.
func largestForce(l *tutor.Lesson) float64 {
	most := 0.0
	for _, q := range l.Quantities {
		if q.Dim == statics.DimForce {
			most = max(most, math.Abs(q.True))
		}
	}
	return most
}

// checker is a test, or a property's.
type checker interface {
	require.TestingT
	Helper()
	Fatalf(format string, args ...any)
}

// checkRoutes holds every route of a lesson to the vectors' values: magnitudes
// to 1e-9 of the largest force, angles to 1e-9 rad, each times the route's
// condition number (the largest |slope · value| of what it works out).
func checkRoutes(t checker, l *tutor.Lesson) {
	// Where an inverse sine's argument is 1 it has no slope, and answers the
	// last bit ε of its argument with √(2ε) = 2.1e-8 rad.
	const flat = 2.1e-8 / 1e-9
	t.Helper()
	scale := largestForce(l)
	for i := range l.Quantities {
		q := &l.Quantities[i]
		require.True(t, q.Given || len(q.Routes) > 0, "%s has no route", q.Name)
		unit := scale
		if q.IsAngle() {
			unit = 180 / math.Pi
		}
		for _, r := range q.Routes {
			condition := 1.0
			for _, p := range expr.Trace(r.Tree, l.Truth) {
				if math.IsNaN(p.Slope) {
					condition = max(condition, flat)
					continue
				}
				if _, number := p.Node.(expr.Num); !number { // an exponent's slope is no number below zero
					condition = max(condition, math.Abs(p.Slope*p.Value)/unit)
				}
			}
			got := expr.Eval(r.Tree, l.Truth)
			if off := q.Distance(got, q.True); !(off <= 1e-9*unit*condition) {
				t.Fatalf("%s by %s = %v, want %v (%s)", q.Name, r.ID, got, q.True, l.Problem.Code())
			}
		}
	}
	for _, way := range l.Ways {
		for _, s := range way.Steps {
			require.NotNil(t, l.Quantity(s.Quantity), s.Quantity)
			require.NotNil(t, l.Quantity(s.Quantity).Route(s.Route), "%s by %s", s.Quantity, s.Route)
		}
	}
}

// eachDrawn visits every problem of a kind that is drawn or in its bank.
func eachDrawn(t testing.TB, k *lesson.Kind, visit func(*tutor.Lesson)) {
	for _, p := range k.BankProblems() {
		l, err := tutor.Open(p)
		require.NoError(t, err, p.Story)
		visit(l)
	}
	for seed := range uint64(200) {
		l, err := tutor.Open(draw.Generate(k, seed))
		require.NoError(t, err)
		visit(l)
	}
}

func TestEveryRouteOfEveryKindAgreesWithTheVectors(t *testing.T) {
	for _, k := range All {
		t.Run(k.Name, func(t *testing.T) {
			eachDrawn(t, k, func(l *tutor.Lesson) {
				for _, s := range l.Solutions() {
					checkRoutes(t, s)
				}
			})
		})
	}
}

// What a learner reads of a kind is all there: each quantity's two sentences,
// each principle, the home screen's words.
func TestEveryKindHasItsTexts(t *testing.T) {
	for _, k := range All {
		t.Run(k.Name, func(t *testing.T) {
			assert.Empty(t, text.Missing(k.Name+".title", k.Name+".about", k.Name+".practises"))
			eachDrawn(t, k, func(l *tutor.Lesson) {
				assert.NotEmpty(t, l.Task())
				for _, s := range l.Problem.Statements() {
					assert.NotContains(t, s, "{")
				}
				for i := range l.Quantities {
					q := &l.Quantities[i]
					if q.Given {
						continue
					}
					assert.NotEmpty(t, l.Sentence(q, "what"))
					assert.NotEmpty(t, l.Sentence(q, "look"))
					for _, r := range q.Routes {
						assert.NotEmpty(t, l.Say("principle."+r.Principle))
					}
				}
				for _, sol := range l.Solve(lesson.DefaultSettings()) {
					assert.NotEmpty(t, sol.Steps)
				}
			})
		})
	}
}

// What a kind calls a mistake in a value is none of its own ways to that.
func TestNoMistakeIsARoute(t *testing.T) {
	for _, k := range All {
		t.Run(k.Name, func(t *testing.T) {
			eachDrawn(t, k, func(l *tutor.Lesson) {
				for _, q := range l.Quantities {
					if q.Equation {
						continue
					}
					for _, m := range q.Mistakes {
						for _, r := range q.Routes {
							assert.NotEqual(t, r.Tree, m.Tree, "%s of %s by %s in %s", m.Slip, q.Name, r.ID, l.Problem.Code())
						}
					}
				}
			})
		})
	}
}

// A learner who enters every value right, in the order of the worked solution,
// is told so each time, and is then done.
func TestARightWorkingIsAccepted(t *testing.T) {
	for _, k := range All {
		t.Run(k.Name, func(t *testing.T) {
			eachDrawn(t, k, func(l *tutor.Lesson) {
				for _, s := range l.Solutions() {
					w := tutor.NewWork(l, lesson.DefaultSettings())
					for n := w.Next(); n != ""; n = w.Next() {
						q := s.Quantity(n)
						r := w.Enter(n, rightEntry(s, q, w.Settings.DigitsOf(q)))
						require.Equal(t, verdict.Correct, r.Verdict, "%s of %s", n, l.Problem.Code())
					}
					assert.True(t, w.Done())
					assert.Same(t, s, w.Lesson)
				}
			})
		})
	}
}

// A code leads back to the same problem.
func TestCodesOfEveryKind(t *testing.T) {
	for _, k := range All {
		t.Run(k.Name, func(t *testing.T) {
			eachDrawn(t, k, func(l *tutor.Lesson) {
				back, err := decoded(l.Problem.Code())
				require.NoError(t, err)
				assert.Equal(t, l.Problem.Code(), back.Problem.Code())
				for _, q := range l.Quantities {
					assert.Equal(t, strconv.FormatFloat(q.True, 'g', -1, 64), strconv.FormatFloat(back.Truth(q.Name), 'g', -1, 64), q.Name)
				}
			})
		})
	}
}

// Figures: no label touches another, a stroke or the frame, at the start of
// the work and at its end.
func TestFiguresOfEveryKindAreLegible(t *testing.T) {
	for _, k := range All {
		t.Run(k.Name, func(t *testing.T) {
			figures, overlaps := 0, 0
			eachDrawn(t, k, func(l *tutor.Lesson) {
				w := tutor.NewWork(l, lesson.DefaultSettings())
				look := func() {
					for _, s := range w.Scenes() {
						d := figure.Layout(s, figure.Size{Width: 358, Height: 300})
						figures++
						if d.Cost.Overlaps > 0 {
							overlaps++
							t.Log(s.Title, l.Problem.Code())
						}
						assert.NotEmpty(t, d.Desc)
					}
				}
				look()
				for i := range l.Quantities {
					if q := &l.Quantities[i]; !q.Given {
						w.Enter(q.Name, rightEntry(l, q, w.Settings.DigitsOf(q)))
					}
				}
				look()
			})
			t.Logf("%d figures, %d with a label on something", figures, overlaps)
			assert.Zero(t, overlaps)
		})
	}
}
