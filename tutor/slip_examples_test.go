package tutor

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
	"closingside/tutor/verdict"
)

// Every row is named at its own example, and no row at the right value. That rows are
// whole is tested beside them.
func TestEveryRowHasItsExample(t *testing.T) {
	for _, row := range slips.Catalogue() {
		t.Run(row.ID, func(t *testing.T) {
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
