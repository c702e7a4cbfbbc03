package main

import (
	"encoding/csv"
	"encoding/json"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"closingside/tutor/kinds"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestSlipsGolden(t *testing.T) {
	out, errs, status := tell("", "slips", problem("barge.yaml"))
	require.Zero(t, status, errs)
	withinWidth(t, out)
	golden(t, "slips-barge.golden", out)
}

func TestSlipsTableIsSorted(t *testing.T) {
	out, errs, status := tell("", "slips", problem("slipway.yaml"), "--all", "--json")
	require.Zero(t, status, errs)
	var table wrongList
	require.NoError(t, json.Unmarshal([]byte(out), &table))
	require.Len(t, table.Quantities, 12)
	elsewhere := 0
	for _, q := range table.Quantities {
		assert.NotEmpty(t, q.Wrong, q.Name)
		assert.True(t, slices.IsSortedFunc(q.Wrong, func(a, b wrongValue) int {
			if a.Value <= b.Value {
				return -1
			}
			return 1
		}), q.Name)
		for _, w := range q.Wrong {
			assert.NotEmpty(t, w.Slips)
			if w.At != q.Name {
				elsewhere++
			}
		}
	}
	assert.Positive(t, elsewhere)
	short, _, _ := tell("", "slips", problem("slipway.yaml"), "--json")
	assert.Less(t, len(short), len(out), "without --all the steps in the head are left out")
}

func TestSlipsCSV(t *testing.T) {
	out, errs, status := tell("", "slips", problem("barge.yaml"), "--csv", "--quantity", "R")
	require.Zero(t, status, errs)
	rows, err := csv.NewReader(strings.NewReader(out)).ReadAll()
	require.NoError(t, err)
	assert.Equal(t, []string{"quantity", "symbol", "slip", "value", "unit", "shown", "at", "did"}, rows[0])
	assert.Contains(t, rows, []string{"R", "R", "magnitudes-added", "950", "N", "950.0 N", "R", "forces added as numbers"})
	for _, r := range rows[1:] {
		assert.Equal(t, "R", r[0])
	}
}

// √(340² + 610² + 2·340·610·cos 87°) = 713.7 N: the sign of the cross term, or
// the angle between the forces for the triangle's own.
func TestSlipsOfAValue(t *testing.T) {
	t.Run("in words", func(t *testing.T) {
		out, errs, status := tell("", "slips", problem("barge.yaml"), "--value", "713.7 N", "--quantity", "R")
		require.Zero(t, status, errs)
		withinWidth(t, out)
		assert.Contains(t, out, "(cosine-sign)")
		assert.Contains(t, out, "(included-for-interior)")
		assert.Regexp(t, `(?m)^ +(9\d|100) %  angle between the forces used`, out)
	})
	t.Run("any quantity", func(t *testing.T) {
		out, errs, status := tell("", "slips", problem("barge.yaml"), "--value", "713.7 N", "--json")
		require.Zero(t, status, errs)
		var f found
		require.NoError(t, json.Unmarshal([]byte(out), &f))
		assert.Equal(t, "713.7 N", f.Value)
		require.NotEmpty(t, f.Answers)
		assert.Equal(t, "R", f.Answers[0].Quantity)
		assert.Equal(t, "slip", f.Answers[0].Verdict)
		assert.Contains(t, f.Answers[0].Slips[0].IDs, "cosine-sign")
		assert.Greater(t, f.Answers[0].Slips[0].Probability, 0.9)
		for _, a := range f.Answers {
			assert.NotContains(t, []string{"phi", "gamma", "alpha", "beta", "theta"}, a.Quantity, "a force is no angle")
		}
	})
	t.Run("right", func(t *testing.T) {
		out, _, status := tell("", "slips", problem("barge.yaml"), "--value", "87", "--quantity", "gamma")
		assert.Zero(t, status)
		assert.Contains(t, out, "fits")
	})
	t.Run("negative", func(t *testing.T) {
		out, errs, status := tell("", "slips", problem("barge.yaml"), "--value", "-87", "--quantity", "phi")
		require.Zero(t, status, errs)
		assert.Contains(t, out, "(opposite-sense)")
	})
	t.Run("every quantity fits the screen", func(t *testing.T) {
		for _, value := range []string{"1040", "87", "-62 deg", "0.5"} {
			out, errs, status := tell("", "slips", problem("buoy.yaml"), "--value", value)
			require.Zero(t, status, errs)
			withinWidth(t, out)
		}
	})
	t.Run("nothing", func(t *testing.T) {
		out, _, status := tell("", "slips", problem("barge.yaml"), "--value", "47.11 N", "--quantity", "Px")
		assert.Zero(t, status)
		assert.Contains(t, out, "Nothing explains it as Px.")
	})
}

func TestSlipsRefuses(t *testing.T) {
	barge := problem("barge.yaml")
	for _, row := range []struct {
		name, where, says string
		args              []string
	}{
		{"no such quantity", "--quantity: ", "gamma", []string{barge, "--quantity", "gama"}},
		{"a given", "--quantity: ", "given", []string{barge, "--quantity", "P"}},
		{"unreadable", "--value 7&: ", "can't be read", []string{barge, "--value", "7&"}},
		{"wrong dimension", "--value 7 kN: ", "angle", []string{barge, "--value", "7 kN", "--quantity", "phi"}},
		{"csv of a value", "--csv", "--json", []string{barge, "--value", "7", "--csv"}},
		{"no such file", "absent.yaml", "no such file", []string{"absent.yaml"}},
	} {
		t.Run(row.name, func(t *testing.T) {
			out, errs, status := tell("", append([]string{"slips"}, row.args...)...)
			assert.Empty(t, out)
			refused(t, errs, status, row.where, row.says)
		})
	}
}

// Problems of every kind have their table, and their values can be looked up.
func TestSlipsOfEveryKind(t *testing.T) {
	for _, k := range kinds.All {
		t.Run(k.Name, func(t *testing.T) {
			dir := filepath.Join(t.TempDir(), "drawn")
			_, errs, status := tell("", "generate", k.Name, "--separate", "--out", dir)
			require.Zero(t, status, errs)
			files, err := filepath.Glob(filepath.Join(dir, "*"))
			require.NoError(t, err)
			require.Len(t, files, 1)
			out, errs, status := tell("", "slips", files[0])
			require.Zero(t, status, errs)
			withinWidth(t, out)
			out, errs, status = tell("", "slips", files[0], "--json")
			require.Zero(t, status, errs)
			var table wrongList
			require.NoError(t, json.Unmarshal([]byte(out), &table))
			require.NotEmpty(t, table.Quantities)
			for _, q := range table.Quantities {
				require.NotEmpty(t, q.Wrong, q.Name)
				middle := q.Wrong[len(q.Wrong)/2]
				out, errs, status := tell("", "slips", files[0], "--value", middle.Shown, "--quantity", q.Name, "--json")
				require.Zero(t, status, "%s %s: %s", q.Name, middle.Shown, errs)
				var f found
				require.NoError(t, json.Unmarshal([]byte(out), &f))
				assert.Equal(t, q.Name, f.Answers[0].Quantity)
				assert.NotEqual(t, "correct", f.Answers[0].Verdict, "%s %s", q.Name, middle.Shown)
			}
		})
	}
}

// What is left out is counted in a sentence that holds for one, too.
func TestTheRestIsCountedInASentence(t *testing.T) {
	assert.Equal(t, "1 more that gives the same", moreAlike(1))
	assert.Equal(t, "3 more that give the same", moreAlike(3))
}
