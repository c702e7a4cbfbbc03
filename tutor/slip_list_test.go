package tutor

import (
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/slips"
	"closingside/tutor/text"
)

// added are the rows that came to the catalogue with the kinds of problem and
// from practice, beside those the project started from.
var added = []string{"tangent-taken", "sine-missing", "legs-added", "force-in-other-sum", "part-in-other-sum", "direction-for-angle", "bracket-lost", "reflex-angle", "negative-axis", "other-side", "leg-over-leg", "known-added", "perpendicular-to-given",
	slips.BranchesMixed, "mass-for-weight", "gravity-twice", "gravity-inverted", "gravity-other", "tension-doubled", "spring-multiplied", "tension-halved", "sense-reversed", "shared-equally", "load-resolved", "minus-outside-square", "radians-unnamed"}

var scopeWords = [...]string{slips.AtSite: "site", slips.InStep: "step", slips.InAnswer: "answer", slips.InKind: "kind"}

// The catalogue is listed for readers in slips.md, written from the rows
// themselves: go test ./tutor -run SlipsAreListed -update.
func TestSlipsAreListed(t *testing.T) {
	var b strings.Builder
	b.WriteString(`# Slips that are known

Written from the catalogue (` + "`tutor/slips`, `tutor/text`" + `) by a test; do not edit by hand. All rows are
common practice unless the rule in the code names a definition or a source. Scope: *site*, one place of a
formula; *step*, all of one; *answer*, the value as written; *kind*, a wrong way that a kind of problem
declares. Examples are problems of each kind's bank, counted from 1. A star marks rows added to those the
project started from. What weighs a row before a value is seen stands beside its rule.
`)
	left := map[string]bool{}
	for _, id := range added {
		left[id] = true
	}
	for _, group := range slips.Groups() {
		b.WriteString("\n## " + strings.ToUpper(group[:1]) + group[1:] + "\n\n| id | scope | what was done | what is asked | wrong, for the right one |\n|---|---|---|---|---|\n")
		for _, s := range slips.Catalogue() {
			if slips.GroupOf(s.ID) != group {
				continue
			}
			e := s.Example()
			l := bankLesson(t, kinds.All.ByName(e.Kind), e.Problem)
			star := ""
			if left[s.ID] {
				star = " *"
				delete(left, s.ID)
			}
			at := l.SymbolText(e.Quantity)
			ask := l.Say("slip."+s.ID+".ask", "at", at, "where", text.Say("feedback.where", "at", at))
			b.WriteString("| `" + s.ID + "`" + star + " | " + scopeWords[s.Scope] + " | " + text.Say("slip."+s.ID+".title") +
				" | " + ask + " | " + strings.ReplaceAll(at+" = "+e.Wrong+" for "+e.Right, " deg", "°") + " (" + e.Kind + " " + strconv.Itoa(e.Problem+1) + ") |\n")
		}
	}
	if len(left) > 0 {
		t.Errorf("added, but in no group: %v", left)
	}
	if *update {
		require.NoError(t, os.WriteFile("slips.md", []byte(b.String()), 0o644))
	}
	want, err := os.ReadFile("slips.md")
	require.NoError(t, err)
	assert.Equal(t, string(want), b.String(), "go test ./tutor -run SlipsAreListed -update")
}
