package statics

import (
	"encoding/json"
	"maps"
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// record is one row of testdata/published.json; the README beside it says what
// the fields mean.
type record struct {
	ID           string
	Source       string
	Kind         string
	Givens       map[string][2]any
	Asked        map[string][2]string
	Computed     map[string]float64
	Inconsistent []string           `json:"inconsistent_answers"`
	HalfUnit     map[string]float64 `json:"rounding_half_unit"`
	Standard     map[string]float64 `json:"std_angle_deg"`
	G            float64            `json:"g_used_m_s2"`
}

var publishedRecords = sync.OnceValues(func() (records []record, err error) {
	text, err := os.ReadFile("testdata/published.json")
	if err != nil {
		return nil, err
	}
	return records, json.Unmarshal(text, &records)
})

// published finds a record by its id.
func published(t *testing.T, id string) record {
	t.Helper()
	records, err := publishedRecords()
	require.NoError(t, err)
	i := slices.IndexFunc(records, func(r record) bool { return r.ID == id })
	require.GreaterOrEqual(t, i, 0, "no record %s", id)
	return records[i]
}

// number returns a given that is a plain number.
func (r record) number(t *testing.T, name string) float64 {
	t.Helper()
	v, ok := r.Givens[name][0].(float64)
	require.True(t, ok, "%s has no number %s", r.ID, name)
	return v
}

// angle returns a given in degrees.
func (r record) angle(t *testing.T, name string) Angle { return Angle(r.number(t, name)) * Degree }

// pair returns a given that is a pair of components.
func (r record) pair(t *testing.T, name string) (x, y float64) {
	t.Helper()
	v, ok := r.Givens[name][0].([]any)
	require.True(t, ok && len(v) == 2, "%s has no pair %s", r.ID, name)
	return v[0].(float64), v[1].(float64)
}

// assertComputed checks an answer against the independent recomputation, which
// has eight digits.
func assertComputed(t *testing.T, r record, name string, got float64) {
	t.Helper()
	want, ok := r.Computed[name]
	require.True(t, ok, "%s has no recomputed %s", r.ID, name)
	assert.InDelta(t, want, got, 6e-8*math.Abs(want)+1e-12, "%s: %s against the recomputed value", r.ID, name)
}

// assertPrinted checks an answer against the book. Where the record says that the book's figure does not follow
// from its givens, the figure must indeed be out of reach, and the right value
// is logged.
func assertPrinted(t *testing.T, r record, name string, got float64) {
	t.Helper()
	printed, ok := r.Asked[name]
	require.True(t, ok, "%s does not ask for %s", r.ID, name)
	book, isNumber := printedNumber(printed[0])
	if !isNumber {
		return // symbolic: the recomputed value stands for it
	}
	// The last digit of a printed half may go either way.
	within := r.HalfUnit[name]*(1+1e-9) + 1e-12*math.Abs(book)
	if slices.Contains(r.Inconsistent, name) {
		assert.Greater(t, math.Abs(got-book), within, "%s: %s is called inconsistent, yet agrees", r.ID, name)
		t.Logf("%s prints %s = %s %s; its givens lead to %.6g (%s)", r.ID, name, printed[0], printed[1], got, r.Source)
		return
	}
	assert.InDelta(t, book, got, within, "%s: %s as printed in %s", r.ID, name, r.Source)
}

// printedNumber reads a number as printed, "7.35×10^2" among them.
func printedNumber(s string) (float64, bool) {
	s = strings.Replace(s, "×10^", "e", 1)
	v, err := strconv.ParseFloat(s, 64)
	return v, err == nil
}

type answers = map[string]float64

// check works out the answers to a record.
type check = func(t *testing.T, r record) answers

// checkAll runs one check for every record of a kind, and fails for a record
// without a check or a check without a record.
func checkAll(t *testing.T, prefix string, checks map[string]check) {
	t.Helper()
	records, err := publishedRecords()
	require.NoError(t, err)
	var ids []string
	for _, r := range records {
		if !strings.HasPrefix(r.Kind, prefix) {
			continue
		}
		ids = append(ids, r.ID)
		t.Run(r.ID, func(t *testing.T) {
			check, ok := checks[r.ID]
			require.True(t, ok, "no check for %s (%s)", r.ID, r.Source)
			got := check(t, r)
			for name := range r.Asked {
				require.Contains(t, got, name, "an answer for all that is asked")
				assertComputed(t, r, name, got[name])
				assertPrinted(t, r, name, got[name])
			}
		})
	}
	assert.ElementsMatch(t, slices.Collect(maps.Keys(checks)), ids)
}
