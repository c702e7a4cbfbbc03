package tutor

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// The example of how to write an entry is the answer to no problem of the harbour.
func TestAnExampleOfWritingIsNoAnswer(t *testing.T) {
	rows := []struct {
		kind       *lesson.Kind
		quantities []string
		entry      string
		before     string // the example
		after      string
	}{
		{&kinds.ParticleEquilibrium, []string{"sumx", "sumy"}, "0", "such as ", "."},
		{&kinds.TwoForces, []string{"alpha", "beta", "gamma"}, "sin θ", "write it like ", "."},
	}
	for _, row := range rows {
		for i, p := range row.kind.BankProblems() {
			for _, q := range row.quantities {
				w := NewWork(bankLesson(t, row.kind, i), lesson.DefaultSettings())
				if w.Lesson.Quantity(q) == nil {
					continue
				}
				_, example, found := strings.Cut(w.Enter(q, row.entry).Feedback, row.before)
				require.True(t, found, "%s %s", p.Story, q)
				example = strings.TrimSuffix(example, row.after)
				assert.NotEqual(t, verdict.Correct, w.Enter(q, example).Verdict, "%s %s: %s", p.Story, q, example)
			}
		}
	}
}
