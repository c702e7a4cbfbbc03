package tutor

import (
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Two slips that come to the same value as one are told with it, and the one
// stays what is asked about.
func TestTwoSlipsEqualToOneAreToldWithIt(t *testing.T) {
	w := NewWork(barge(t), DefaultSettings())
	r := w.Enter("phi", "143") // 25° + 118°
	require.Equal(t, SlipFound, r.Verdict)
	ids := r.Slips[0].IDs
	assert.Contains(t, ids, "directions-added")
	assert.Contains(t, ids, "included-for-interior+negative-axis", "180° − (180° − 25° − 118°)")
	first := slices.IndexFunc(ids, isPair)
	assert.Equal(t, -1, slices.IndexFunc(ids[first:], func(id string) bool { return !isPair(id) }), "single slips first: %v", ids)
	assert.False(t, isPair(r.Slips[0].Likely))
	for _, s := range r.Slips[1:] {
		for _, id := range s.IDs {
			assert.NotContains(t, ids, id, "told once")
		}
	}
}

func isPair(id string) bool { return strings.Contains(id, "+") }

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
