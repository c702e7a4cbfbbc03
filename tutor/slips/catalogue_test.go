package slips_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/slips"
	"closingside/tutor/text"
)

// Every row has an id of its own, a weight, its words, and just what its scope
// needs: a rule on trees, one on values, or neither where the kinds declare it.
// That its example shows it is tested where entries are judged, in package tutor.
func TestCatalogueIsWhole(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range slips.Catalogue() {
		t.Run(row.ID, func(t *testing.T) {
			assert.False(t, seen[row.ID], "once")
			seen[row.ID] = true
			assert.Same(t, row, slips.ByID(row.ID))
			assert.Equal(t, []string{row.ID}, row.IDs)
			assert.Positive(t, row.Prior)
			assert.Equal(t, row.Scope == slips.AtSite || row.Scope == slips.InStep, row.Rule != nil, "rule")
			assert.Equal(t, row.Scope == slips.InAnswer, row.Written != nil, "written")
			assert.True(t, text.Has("slip."+row.ID+".title"), "title")
			assert.Contains(t, text.Say("slip."+row.ID+".ask", "at", "R", "where", "there"), "?", "a question")
		})
	}
	assert.Panics(t, func() { slips.ByID("no-such-slip") })
}

// Each row stands in one of the groups, in the groups' order.
func TestGroupsCoverTheCatalogue(t *testing.T) {
	var groups []string
	for _, row := range slips.Catalogue() {
		groups = append(groups, slips.GroupOf(row.ID))
		assert.Equal(t, slips.GroupOf(row.ID) == "cosine", slips.IsCosineLaw(row.ID), row.ID)
	}
	assert.Equal(t, slips.Groups(), slices.Compact(groups))
	assert.Panics(t, func() { slips.GroupOf("no-such-slip") })
}

// Each row has an example, at a problem that there is and a quantity that it has,
// and no example is left without a row.
func TestExamplesAreOfTheBank(t *testing.T) {
	for _, row := range slips.Catalogue() {
		t.Run(row.ID, func(t *testing.T) {
			e := row.Example()
			kind := kinds.All.ByName(e.Kind)
			require.NotNil(t, kind, "an example of a kind")
			require.Less(t, e.Problem, len(kind.Bank))
			l, err := kind.BankProblems()[e.Problem].Build()
			require.NoError(t, err)
			q := l.Quantity(e.Quantity)
			require.NotNil(t, q)
			assert.False(t, q.Given, "it can be entered")
			assert.NotEmpty(t, e.Right)
			assert.NotEmpty(t, e.Wrong)
			assert.NotEqual(t, e.Right, e.Wrong)
			if e.Before[0] != "" {
				assert.NotNil(t, l.Quantity(e.Before[0]))
				assert.NotEmpty(t, e.Before[1])
			}
		})
	}
	assert.Len(t, slips.WithExample(), len(slips.Catalogue()))
}

// A wrong way that a kind declares belongs to a row, and every row that is left to
// the kinds is declared by one.
func TestMistakesOfKindsAreRows(t *testing.T) {
	declared := map[string]bool{slips.BranchesMixed: true, "force-in-other-sum": true} // no kind does: two solutions are mixed, a sum is slipped by package slipped
	for _, k := range kinds.All {
		for _, p := range k.BankProblems() {
			l, err := p.Build()
			require.NoError(t, err)
			for i := range l.Quantities {
				for _, m := range l.Quantities[i].Mistakes {
					assert.NotPanics(t, func() { slips.ByID(m.Slip) }, m.Slip)
					declared[m.Slip] = true
				}
			}
		}
	}
	for _, row := range slips.Catalogue() {
		if row.Scope == slips.InKind {
			assert.True(t, declared[row.ID], row.ID)
		}
	}
}
