package tutor

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"closingside/tutor/verdict"
)

func TestALearnerMayStandByARefusedEntry(t *testing.T) {
	w := asking(t, barge(t))
	assert.False(t, w.Stand("R", "it is"), "nothing entered")
	w.Enter("gamma", "87°")
	assert.False(t, w.Stand("gamma", "it is"), "a right entry needs none")
	refused := w.Enter("R", "700 N")
	assert.NotEqual(t, verdict.Correct, refused.Verdict)
	assert.False(t, w.Stand("R", "  "), "no reason")
	assert.True(t, w.Stand("R", " I measured it\non  the drawing "))
	a := w.Standing("R")
	assert.Equal(t, "I measured it on the drawing", a.Reason)
	assert.Equal(t, refused.Verdict, a.Verdict, "the verdict stays")
	assert.False(t, w.Found("R"))

	assert.True(t, w.Withdraw("R"))
	assert.Empty(t, w.Standing("R").Reason)
	assert.False(t, w.Withdraw("R"))

	w.Stand("R", strings.Repeat("ж", 2*MaxReason))
	assert.Len(t, []rune(w.Standing("R").Reason), MaxReason)
	w.Enter("R", "682.6 N")
	assert.Empty(t, w.Standing("R").Reason, "a new entry is not stood by")
	w.Undo()
	assert.NotEmpty(t, w.Standing("R").Reason, "the one before is again")
}

// What is stood by outlives being judged again.
func TestAReasonOutlivesAnotherVerdict(t *testing.T) {
	w := asking(t, barge(t))
	w.Enter("beta", "61.0°")
	w.Enter("theta", "86.0°")
	assert.Equal(t, verdict.Carried, w.Standing("theta").Verdict)
	w.Stand("theta", "I read it off")
	assert.Equal(t, []string{"theta"}, w.Enter("beta", "63.17°").Changed)
	a := w.Standing("theta")
	assert.Equal(t, "I read it off", a.Reason)
	assert.Equal(t, "beta", a.Since)
	w.Enter("theta", "88.2°")
	assert.Empty(t, w.Standing("theta").Since)
}

// Taking back tells what is judged again, as entering does.
func TestTakingBackTellsWhatIsJudgedAgain(t *testing.T) {
	w := asking(t, barge(t))
	w.Enter("beta", "63.17°")
	w.Enter("theta", "86.0°")
	w.Enter("beta", "61.0°")
	assert.Equal(t, verdict.Carried, w.Standing("theta").Verdict)
	assert.Equal(t, "beta", w.Undo())
	assert.Contains(t, w.Standing("theta").Feedback, "has a new value now")
	assert.Equal(t, []string{"theta"}, w.Changed())
	w.Enter("R", "682.6 N")
	assert.Empty(t, w.Changed())
}
