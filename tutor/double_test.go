package tutor

import (
	"math"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// Two slips that come to the same value as one are told with it, and the one
// stays what is asked about.
func TestTwoSlipsEqualToOneAreToldWithIt(t *testing.T) {
	w := NewWork(barge(t), lesson.DefaultSettings())
	r := w.Enter("phi", "143") // 25° + 118°
	require.Equal(t, verdict.SlipFound, r.Verdict)
	ids := r.Slips[0].IDs
	assert.Contains(t, ids, "directions-added")
	assert.Contains(t, ids, "included-for-interior+negative-axis", "180° − (180° − 25° − 118°)")
	first := slices.IndexFunc(ids, isDouble)
	assert.Equal(t, -1, slices.IndexFunc(ids[first:], func(id string) bool { return !isDouble(id) }), "single slips first: %v", ids)
	assert.False(t, isDouble(r.Slips[0].Likely))
	for _, s := range r.Slips[1:] {
		for _, id := range s.IDs {
			assert.NotContains(t, ids, id, "told once")
		}
	}
}

// So are two that lead to the very formula of one.
func TestTwoSlipsToTheFormulaOfOneAreToldWithIt(t *testing.T) {
	r := NewWork(barge(t), lesson.DefaultSettings()).Enter("F2x", "-610 N") // Q with the component's sign, or Q and a sign
	require.Equal(t, verdict.SlipFound, r.Verdict)
	assert.Subset(t, r.Slips[0].IDs, []string{"magnitudes-for-components", "magnitudes-for-components+sign-lost"})
	assert.Equal(t, "magnitudes-for-components", r.Slips[0].Likely)
}

// Equal in value are also two slips of which one is in writing the value down.
func TestASlipInWritingIsToldWithItsEqual(t *testing.T) {
	w := NewWork(pair(t, "380 N", "-137 deg", "580 N", "-29 deg"), lesson.DefaultSettings())
	r := w.Enter("F1x", "3324 N") // 10·(380·cos 29°) = 3800·cos 29°
	require.NotEmpty(t, r.Slips)
	assert.Subset(t, r.Slips[0].IDs, []string{"decimal-place+other-force", "given-miscopied+other-force"})
}

// A given may be miscopied in one of the places where a formula reads it, beside
// another slip in that formula.
func TestAGivenMiscopiedInOnePlaceBesideAnotherSlip(t *testing.T) {
	r := NewWork(barge(t), lesson.DefaultSettings()).Enter("R", "739.0 N") // √(430² + 610² − 340·610·cos 87°)
	require.NotEmpty(t, r.Slips)
	assert.Contains(t, r.Slips[0].IDs, "given-miscopied+two-missing")
}

func isDouble(id string) bool { return strings.Contains(id, "+") }

// The lists of several quantities rest on the same pairs, and may be made at a
// time (go test -race).
func TestDoublesOfSeveralQuantitiesAreMadeAtATime(t *testing.T) {
	alone, together := barge(t), barge(t)
	together.ready()
	var all sync.WaitGroup
	for i := range together.Quantities {
		all.Go(func() { together.doublesOf(i) })
	}
	all.Wait()
	for i := range alone.Quantities {
		assert.Equal(t, alone.doublesOf(i).values, together.doublesOf(i).values, alone.Quantities[i].Name)
	}
}

// What is left out of a list that is too long counts nowhere.
func TestDoublesLeftOutCountNowhere(t *testing.T) {
	d := &doubles{uses: []useOf{{1, 0}, {2, 0}}}
	m := &doubler{d: d, wait: func() bool { return true }}
	for i := range mostDoubles + 100 {
		x := listed{use: int32(i % 2), weight: 1}
		if i < 100 {
			x.weight = 0.5
		}
		m.places = append(m.places, place{float64(-i), int32(i)})
		m.all = append(m.all, x)
		d.uses[x.use].weight += float64(x.weight)
		d.total += float64(x.weight)
	}
	m.finish()
	assert.Len(t, d.all, mostDoubles)
	assert.Len(t, d.values, mostDoubles)
	assert.IsNonDecreasing(t, d.values)
	assert.InDelta(t, mostDoubles, d.total, 1e-9)
	assert.InDelta(t, mostDoubles/2, d.weightFor(1), 1e-9)
	assert.InDelta(t, mostDoubles/2, d.weightFor(2), 1e-9)
}

// A table whose guesses are all the true value, or no number, is as good as an
// empty one: what is divided by its weight has a value.
func TestATableOfNothingWrongHasAWeight(t *testing.T) {
	l := barge(t)
	q := l.Quantity("R")
	i := l.index[q.Name]
	for _, v := range []float64{q.True, math.Inf(1), math.Inf(-1)} {
		table := NewWork(l, lesson.DefaultSettings()).now(q).newTable(i, []guess{{value: v, weight: 1, first: &outcome{value: v, ids: carriedIDs}}})
		assert.Empty(t, table.cells)
		assert.InDelta(t, 1, table.total, 0)
	}
}
