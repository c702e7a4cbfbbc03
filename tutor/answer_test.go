package tutor

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// Without the cross term R comes to 698.4 N; with the other force's direction in
// one component to 698 N: a question separates them, and its answer counts.
func TestTheAnswerToAQuestionIsUsed(t *testing.T) {
	ask := func(t *testing.T) (*Work, Reply) {
		w := NewWork(barge(t), lesson.DefaultSettings())
		r := w.Enter("R", "698 N")
		require.True(t, r.Asked, "%+v", r)
		require.Len(t, w.Options(w.Standing("R")), 2)
		return w, r
	}
	total := func(r Reply) float64 {
		sum := r.Unexplained
		for _, s := range r.Slips {
			sum += s.Probability
		}
		return sum
	}
	for choice, place := range map[Choice]int{First: 0, Second: 1} {
		w, before := ask(t)
		after, ok := w.Answer("R", choice)
		require.True(t, ok)
		assert.Equal(t, verdict.SlipFound, after.Verdict)
		assert.Equal(t, before.Slips[place].IDs, after.Slips[0].IDs, "what was said comes first")
		assert.Greater(t, after.Slips[0].Probability, before.Slips[place].Probability)
		assert.InDelta(t, 1, total(after), 1e-9)
		assert.Equal(t, w.askAbout(before.Slips[place]), after.Feedback)
		assert.Equal(t, after, w.Standing("R").Reply, "kept")
		assert.Nil(t, w.Options(w.Standing("R")), "asked once")
		_, ok = w.Answer("R", choice)
		assert.False(t, ok)
	}
	t.Run("neither", func(t *testing.T) {
		w, _ := ask(t)
		after, ok := w.Answer("R", Neither)
		require.True(t, ok)
		assert.Equal(t, verdict.Unexplained, after.Verdict)
		assert.InDelta(t, 1, total(after), 1e-9)
		assert.NotContains(t, after.Feedback, "683")
	})
	t.Run("not asked", func(t *testing.T) {
		w := NewWork(barge(t), lesson.DefaultSettings())
		w.Enter("R", "698.4 N")
		_, ok := w.Answer("R", First)
		assert.False(t, ok)
		_, ok = w.Answer("theta", First)
		assert.False(t, ok)
	})
}

// Who enters the same value again is not asked again what was said.
func TestAnAnswerHoldsForTheSameValueAgain(t *testing.T) {
	for _, c := range []Choice{First, Second, Neither} {
		w := NewWork(barge(t), lesson.DefaultSettings())
		require.True(t, w.Enter("R", "698 N").Asked)
		first, ok := w.Answer("R", c)
		require.True(t, ok)
		again := w.Enter("R", "698 N")
		assert.Equal(t, c, again.Chosen)
		assert.Equal(t, first.Verdict, again.Verdict)
		assert.Contains(t, again.Feedback, first.Feedback)
		assert.NotEqual(t, first.Feedback, again.Feedback, "with more help")
		assert.Nil(t, w.Options(w.Standing("R")))
	}
	w := NewWork(barge(t), lesson.DefaultSettings())
	w.Enter("R", "698 N")
	w.Answer("R", First)
	require.Equal(t, verdict.Correct, w.Enter("R", "682.6 N").Verdict)
}

// What was said of an entry stays said when another entry is written anew and
// nothing true has changed: it is not asked again, and nothing is told to have
// changed.
func TestAnAnswerOutlivesRejudging(t *testing.T) {
	for _, choice := range []Choice{First, Second, Neither} {
		w := NewWork(barge(t), lesson.DefaultSettings())
		w.Enter("phi", "93")
		require.True(t, w.Enter("R", "698 N").Asked)
		said, ok := w.Answer("R", choice)
		require.True(t, ok)
		again := w.Enter("phi", "93.0")
		assert.Empty(t, again.Changed)
		assert.Equal(t, said.Feedback, w.Standing("R").Feedback)
		assert.Equal(t, choice, w.Standing("R").Chosen)
		assert.Nil(t, w.Options(w.Standing("R")), "asked once")
	}
}

// Where the options stand below it, the question leaves their words to them; the help
// before it and the learner's estimate behind it stay.
func TestAQuestionBesideItsOptions(t *testing.T) {
	l := barge(t)
	asked := 0
	for _, v := range l.WrongValues(l.Quantity("R"), lesson.DefaultSettings()) {
		w := closed(t, l)
		w.Sketch().Estimate(map[string]string{"R": "700"})
		if w.Sketch().Near(l.Quantity("R"), v.Value) || !w.Enter("R", v.Shown).Asked {
			continue
		}
		asked++
		a := w.Standing("R")
		estimate := l.Say("feedback.estimate", "estimate", w.Sketch().EstimateText("R"))
		assert.Equal(t, l.Say("feedback.which.beside")+" "+estimate, w.Beside(a))
		w.Enter("R", v.Shown)
		a = w.Standing("R")
		require.True(t, a.Asked)
		beside := w.Beside(a)
		assert.Regexp(t, "^"+regexp.QuoteMeta(l.Say("feedback.again"))+" .+ "+regexp.QuoteMeta(l.Say("feedback.which.beside")+" "+estimate)+"$", beside)
		assert.NotContains(t, beside, w.Options(a)[0])
		w.Answer("R", Neither)
		assert.Equal(t, a.Feedback, w.Beside(a), "nothing stands below it any more")
	}
	assert.NotZero(t, asked)
}
