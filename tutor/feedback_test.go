package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/statics/expr"
	"closingside/tutor/entry"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/slipped"
	"closingside/tutor/slips"
	"closingside/tutor/verdict"
)

// An expression is read for its form: slips that agree in value are told apart
// by which angle and which sign stand in it.
func TestAnExpressionTellsWhichSlipItHolds(t *testing.T) {
	rows := []struct {
		entry string
		ids   []string // the likeliest first
	}{
		{"713.7 N", []string{"cosine-sign", "included-for-interior", "opposite-sense"}},
		{"sqrt(340^2+610^2-2*340*610*cos(93))", []string{"included-for-interior", "cosine-sign", "other-diagonal"}},
		{"sqrt(340^2+610^2+2*340*610*cos(87))", []string{"cosine-sign", "included-for-interior"}},
		{"sqrt(610^2+340^2+cos(87)*2*610*340)", []string{"cosine-sign", "included-for-interior"}},
		{"sqrt((340*cos(25)-610*cos(118))^2+(340*sin(25)-610*sin(118))^2)", []string{"other-diagonal"}},
	}
	for _, r := range rows {
		t.Run(r.entry, func(t *testing.T) {
			got := NewWork(barge(t), lesson.DefaultSettings()).Enter("R", r.entry)
			require.Equal(t, verdict.SlipFound, got.Verdict, "%+v", got)
			if got.Reading.Form == entry.Expression {
				assert.ElementsMatch(t, r.ids, got.Slips[0].IDs)
				assert.Equal(t, r.ids[0], got.Slips[0].Likely)
				return
			}
			for _, id := range r.ids {
				assert.Contains(t, got.Slips[0].IDs, id)
			}
		})
	}
}

// The 2 of a square, and of a cross term, is no value rounded to one digit,
// though a component (Qy = 2.086 kN) comes to about that.
func TestTheTwoOfAFormulaIsItsOwn(t *testing.T) {
	rows := []struct{ entry, id string }{
		{"sqrt(3.4^2+6.1^2+2*3.4*6.1*cos(45))", "cosine-sign"},
		{"sqrt(3.4^2+6.1^2-3.4*6.1*cos(45))", "two-missing"},
		{"sqrt(2.651^2+0.6494^2)", "sign-lost"}, // Qy − Py
	}
	for _, r := range rows {
		t.Run(r.entry, func(t *testing.T) {
			got := NewWork(pair(t, "3.4 kN", "25 deg", "6.1 kN", "160 deg"), lesson.DefaultSettings()).Enter("R", r.entry)
			require.Equal(t, verdict.SlipFound, got.Verdict, "%+v", got)
			assert.Contains(t, got.Slips[0].IDs, r.id)
		})
	}
}

// Numbers rounded on the way belong in an expression as well as in an entry.
func TestExpressionsWithRoundedNumbersAreHeldToTheBand(t *testing.T) {
	rows := []struct {
		quantity, entry string
		right           bool
	}{
		{"alpha", "asin(340*sin(87)/682.6)", true},
		{"beta", "180-87-29.83", true},
		{"R", "sqrt(21.77^2+682.3^2)", true},
		{"R", "sqrt(463900+2100)", true},
		{"R", "sqrt(340^2+610^2-2*340*610*cos(87))", true},
		{"R", "sqrt(340^2+601^2-2*340*601*cos(87))", false}, // a digit exchanged in a given
		{"R", "sqrt(340^2+610^2-2*340*610*0.05)", true},     // 684.2, within 0.5 %
	}
	for _, r := range rows {
		t.Run(r.entry, func(t *testing.T) {
			got := NewWork(barge(t), lesson.DefaultSettings()).Enter(r.quantity, r.entry)
			assert.Equal(t, r.right, got.Verdict == verdict.Correct, "%+v", got)
		})
	}
}

func TestTheSameWrongValueAgainBringsMoreHelp(t *testing.T) {
	w := NewWork(barge(t), lesson.DefaultSettings())
	said := map[string]bool{}
	for range 4 {
		r := w.Enter("R", "698.4 N")
		require.Equal(t, verdict.SlipFound, r.Verdict)
		said[r.Feedback] = true
		assert.NotContains(t, r.Feedback, "682")
		assert.NotContains(t, r.Feedback, "683 N")
	}
	assert.Len(t, said, 4, "four different answers")
	assert.NotContains(t, w.Enter("R", "950.0 N").Feedback, w.Lesson.Say("feedback.again"))
}

func TestTwoCloseRivalsAreToldApartByAQuestion(t *testing.T) {
	// Without the cross term it comes to 698.4 N; with the other force's direction
	// in one component to 698 N at three digits.
	r := NewWork(barge(t), lesson.DefaultSettings()).Enter("R", "698 N")
	require.Equal(t, verdict.SlipFound, r.Verdict, "%+v", r)
	require.Less(t, r.Slips[0].Probability, sureEnough)
	assert.Contains(t, r.Feedback, "another force's value used")
	assert.Contains(t, r.Feedback, "right-angle theorem where the triangle has none")
}

func TestSharesSumToOne(t *testing.T) {
	for _, entry := range []string{"713.7 N", "698.4 N", "950 N", "511.11 N", "700 N", "1000"} {
		r := NewWork(barge(t), lesson.DefaultSettings()).Enter("R", entry)
		if r.Verdict == verdict.EarlyRounding || r.Verdict == verdict.Carried {
			continue
		}
		sum := r.Unexplained
		for _, s := range r.Slips {
			sum += s.Probability
		}
		assert.InDelta(t, 1, sum, 1e-9, entry)
	}
}

// A slip that may have been made at the very quantity is asked about there,
// also where it would give the same in a step before.
func TestAQuestionBeginsAtTheQuantityItself(t *testing.T) {
	r := NewWork(barge(t), lesson.DefaultSettings()).Enter("gamma", "93")
	require.Equal(t, verdict.SlipFound, r.Verdict)
	assert.Equal(t, "gamma", r.Slips[0].At)
	assert.Contains(t, r.Feedback, "at the step for γ")
}

// The question is about what was done where it was done: not about a number in
// the statement that stands there as it should, or does not stand there.
func TestTheQuestionIsAboutTheStep(t *testing.T) {
	slope := kinds.ConcurrentForcesSource("Two lines.", kinds.ForceSource("P", "210 N", "166 deg"), kinds.ForceSource("S", "240 N", "2:3 up right"))
	least := kinds.MissingForceSource("", kinds.ForceSource("F1", "650 N", "95 deg"), kinds.MissingSource("F2"), kinds.DirectedSource("57 deg"), lesson.Leaf("find", "smallest"))
	for _, row := range []struct {
		problem               lesson.Source
		quantity, entry, asks string
	}{
		{slope, "F2x", "133.1", "leg of the slope triangle"},
		{kinds.ComponentsSource("", "F", "400 N", "73 deg"), "alpha", "17", "from which axis is it measured"},
		{least, "theta2", "147", "to which side does its head point"},
	} {
		r := NewWork(solvedBy(t, row.problem), lesson.DefaultSettings()).Enter(row.quantity, row.entry)
		require.Equal(t, verdict.SlipFound, r.Verdict)
		assert.Contains(t, r.Feedback, row.asks)
	}
}

// The bounds of a direction are told as one turns from one to the other: from
// 143.1° to 200°, not to −160°.
func TestBoundsOfADirectionFollowTheTurn(t *testing.T) {
	l := pair(t, "520 N", "143.1 deg", "310 N", "-160 deg")
	got := NewWork(l, lesson.DefaultSettings()).Enter("theta", "-1.5")
	require.Equal(t, verdict.Unexplained, got.Verdict)
	assert.Contains(t, got.Feedback, "between 143° and 200°")
}

// That an angle of a triangle lies between 0° and 180°, or an acute one between 0°
// and 90°, says nothing of a value that does: a sketch tells on which side of the
// middle it is. A value outside is told so.
func TestBoundsThatSayNothingAreNotTold(t *testing.T) {
	for name, c := range map[string]struct {
		l                       *Lesson
		quantity, in, out, half string
	}{
		"of a triangle": {barge(t), "gamma", "31.7", "211.7", "90°"},
		"acute":         {bankLesson(t, kinds.All.ByName("components"), 4), "alpha", "61.7", "151.7", "45°"},
	} {
		t.Run(name, func(t *testing.T) {
			got := NewWork(c.l, lesson.DefaultSettings()).Enter(c.quantity, c.in)
			require.Equal(t, verdict.Unexplained, got.Verdict)
			assert.NotContains(t, got.Feedback, "between 0°")
			assert.Contains(t, got.Feedback, c.half)
			got = NewWork(c.l, lesson.DefaultSettings()).Enter(c.quantity, c.out)
			require.Equal(t, verdict.Unexplained, got.Verdict)
			assert.Contains(t, got.Feedback, "between 0°")
		})
	}
}

// Of two slips together it is said that there are two, and one is asked about,
// where it can have been made.
func TestTwoSlipsAreAskedAboutOneByOne(t *testing.T) {
	met := 0
	everyKind(t, 0, func(t *testing.T, l *Lesson) {
		for i := range l.Quantities {
			q := &l.Quantities[i]
			if q.Given || q.Equation {
				continue
			}
			for _, r := range q.Routes {
				for _, one := range slipped.Rewrites(l.Lesson, q, r.Tree) {
					two := slipped.Rewrites(l.Lesson, q, one.Tree)
					if len(two) == 0 {
						continue
					}
					v := expr.Eval(two[len(two)/2].Tree, l.Truth)
					w := NewWork(l, lesson.DefaultSettings())
					got := Reply{}
					if v == v && met < 40 {
						got = w.Enter(q.Name, l.Show(q, v, lesson.Digits{Magnitude: 5, Angle: 3}))
					}
					if got.Verdict != verdict.SlipFound || !got.Slips[0].double() {
						continue
					}
					met++
					assert.Contains(t, got.Feedback, l.Say("feedback.two"))
					id, at := w.first(got.Slips[0]), got.Slips[0].At
					assert.True(t, l.mayHold(at, id) || slips.ByID(id).Scope == slips.InAnswer, "%s at %s", id, at)
				}
			}
		}
	})
	assert.Equal(t, 40, met)
}

// A sketch shows no more than it can: sizes to two digits and whole degrees,
// outwards; and a learner's own words fit the verdict beside them.
func TestASketchShowsNoMoreThanItCan(t *testing.T) {
	l := pair(t, "345.2 N", "25.4 deg", "612.7 N", "118 deg")
	said := func(quantity, entry string) string {
		r := NewWork(l, lesson.DefaultSettings()).Enter(quantity, entry)
		assert.Equal(t, verdict.Unexplained, r.Verdict, "%+v", r)
		return r.Feedback
	}
	assert.Contains(t, said("R", "55.1 N"), "between 260 N and 960 N")
	assert.Contains(t, said("theta", "199.7"), "between 25° and 118°")
	assert.NotContains(t, said("F1x", "77.7 N"), "between", "from −P to P says nothing")

	assert.Contains(t, said("R", "-690.3 N"), "minus")
	assert.NotContains(t, said("R", "-690.3 N"), "between")
	assert.NotContains(t, said("F1x", "-77.7 N"), "minus", "a component may be below zero")

	w := NewWork(barge(t), lesson.DefaultSettings())
	assert.Equal(t, "610 N", w.Lesson.ShowGiven("F2"))
}

func TestTheHeadingFitsWhatIsSaid(t *testing.T) {
	w := NewWork(barge(t), lesson.DefaultSettings())
	r := w.Enter("R", "700")
	assert.Equal(t, verdict.EarlyRounding, r.Verdict)
	assert.Equal(t, w.Lesson.Say("verdict.early-rounding.coarse"), w.Lesson.Heading(&r))
	r = w.Enter("R", "682.6")
	assert.Equal(t, w.Lesson.Say("verdict.correct"), w.Lesson.Heading(&r))
}

// Where a value is what an angle lacks of 180°, the question fits whichever law
// it was found by.
func TestTheQuestionAboutASupplementFitsEitherLaw(t *testing.T) {
	w := NewWork(barge(t), lesson.DefaultSettings())
	w.Enter("gamma", "87")
	w.Enter("R", "sqrt(340^2+610^2-2*340*610*cos(87))")
	r := w.Enter("beta", "116.8")
	assert.Equal(t, verdict.SlipFound, r.Verdict)
	assert.Contains(t, r.Feedback, "β")
	assert.NotContains(t, r.Feedback, "cosine")
	assert.Equal(t, "obtuse-assumed", r.Slips[0].Told())
}

// A direction that is what the inverse tangent shows, and not the true one, is
// asked about by its quadrant: there is no arrow to look at where the components
// are given.
func TestAPrincipalValueIsAskedAboutByItsQuadrant(t *testing.T) {
	w := NewWork(solvedBy(t, kinds.FromComponentsSource("", "F", "-310 N", "545 N")), lesson.DefaultSettings())
	r := w.Enter("theta", "-60.4")
	require.Equal(t, verdict.SlipFound, r.Verdict)
	assert.Contains(t, r.Feedback, "in which quadrant does the arrow lie?")
}
