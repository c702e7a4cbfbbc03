package tutor

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
	"closingside/tutor/text"
	"closingside/tutor/verdict"
)

// Every row has all that a row has, and its own example shows it.
func TestEveryRowIsComplete(t *testing.T) {
	seen := map[string]bool{}
	for i := range slips.Catalogue() {
		row := &slips.Catalogue()[i]
		t.Run(row.ID, func(t *testing.T) {
			assert.False(t, seen[row.ID], "once")
			seen[row.ID] = true
			assert.Positive(t, row.Prior)
			title, ask := text.Say("slip."+row.ID+".title"), text.Say("slip."+row.ID+".ask", "at", "R", "where", "there")
			assert.NotEmpty(t, title)
			assert.True(t, strings.Contains(ask, "?"), "a question: %s", ask)
			switch row.Scope {
			case slips.InKind:
				assert.Nil(t, row.Rule)
			case slips.InAnswer:
				assert.NotNil(t, row.Written)
			default:
				assert.NotNil(t, row.Rule)
			}
			e := row.Example()
			kind := kinds.All.ByName(e.Kind)
			require.NotNil(t, kind)
			for _, entry := range []string{e.Wrong, e.Right} {
				w := NewWork(bankLesson(t, kind, e.Problem), lesson.DefaultSettings())
				if e.Before[0] != "" {
					require.Equal(t, verdict.Correct, w.Enter(e.Before[0], e.Before[1]).Verdict)
				}
				r := w.Enter(e.Quantity, entry)
				if entry == e.Right {
					assert.Equal(t, verdict.Correct, r.Verdict)
					assert.Empty(t, r.Slips)
					continue
				}
				require.Equal(t, verdict.SlipFound, r.Verdict, "%+v", r)
				assert.Contains(t, r.Slips[0].IDs, row.ID)
				assert.NotContains(t, r.Feedback, strings.Fields(e.Right)[0], "the answer is not given")
			}
		})
	}
}
