package main

import (
	"bytes"
	"encoding/json"
	"regexp"
	"strings"
	"testing"

	"closingside/tutor/trial"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// timing is the one line of a trial that differs from run to run.
var timing = regexp.MustCompile(`(?m)^Time for a check.*$`)

// The rates at a fixed seed, on problems that no change of the generator
// touches. What they may not fall below stands in package trial.
func TestTrialGolden(t *testing.T) {
	args := []string{"trial", "--seed", "7", "--learners", "25"}
	for _, name := range []string{"barge.yaml", "buoy.yaml", "derrick.json", "slipway.yaml"} {
		args = append(args, problem(name))
	}
	out, errs, status := tell("", args...)
	require.Zero(t, status, errs)
	assert.Empty(t, errs, "no progress where there is no terminal")
	withinWidth(t, out)
	require.Regexp(t, timing, out)
	golden(t, "trial-harbour.golden", timing.ReplaceAllString(out, "Time for a check"))
}

func withinWidth(t *testing.T, out string) {
	t.Helper()
	for line := range strings.Lines(out) {
		assert.LessOrEqual(t, len([]rune(strings.TrimRight(line, "\n"))), usualWidth, line)
	}
}

func TestTrialJSON(t *testing.T) {
	args := []string{"trial", "--json", "--learners", "3", "--habit", "slip=0.9", "--habit", "noise=0", "--group", "trig=4", "--digits", "5", problem("barge.yaml")}
	out, errs, status := tell("", args...)
	require.Zero(t, status, errs)
	var r trial.Report
	d := json.NewDecoder(strings.NewReader(out))
	d.DisallowUnknownFields()
	require.NoError(t, d.Decode(&r))
	assert.Equal(t, 1, strings.Count(out, "\n"))
	assert.Equal(t, 0.9, r.Habits.Slip)
	assert.Equal(t, 4.0, r.Habits.Groups["trig"])
	assert.Equal(t, 5, r.Habits.Digits.Magnitude)
	assert.Positive(t, r.Row("one").Met)
	assert.Zero(t, r.Row("noise").Entries)
	assert.Positive(t, r.Median)
}

func TestTrialDrawsProblems(t *testing.T) {
	one, _, status := tell("", "trial", "--problems", "2", "--learners", "1", "--kind", "two-forces")
	require.Zero(t, status)
	again, _, _ := tell("", "trial", "--problems", "2", "--learners", "1", "--kind", "two-forces")
	assert.Equal(t, timing.ReplaceAllString(one, ""), timing.ReplaceAllString(again, ""))
	assert.Contains(t, one, "2 problems, 1 learner at each")
	any, _, status := tell("", "trial", "--problems", "2", "--learners", "1", "--kind", "two-forces", "--any")
	require.Zero(t, status)
	assert.Contains(t, any, "2 problems, 1 learner at each")
	assert.NotEqual(t, timing.ReplaceAllString(one, ""), timing.ReplaceAllString(any, ""))
}

func TestTrialRefuses(t *testing.T) {
	for _, row := range []struct {
		name, where, says string
		args              []string
	}{
		{"unknown habit", "--habit sloppy", "go-on", []string{"--habit", "sloppy=1"}},
		{"share too large", "habits: slip", "between 0 and 1", []string{"--habit", "slip=7"}},
		{"unknown group", "--group tugs", "cosine", []string{"--group", "tugs=1"}},
		{"unknown kind", "--kind tugs", "two-forces", []string{"--kind", "tugs"}},
		{"no learners", "--learners", "between 1 and", []string{"--learners", "0"}},
		{"too many problems", "--learners and --problems", "between 1 and", []string{"--problems", "1000000"}},
		{"no such file", "absent.yaml", "no such file", []string{"absent.yaml"}},
	} {
		t.Run(row.name, func(t *testing.T) {
			out, errs, status := tell("", append([]string{"trial"}, row.args...)...)
			assert.Empty(t, out)
			refused(t, errs, status, row.where, row.says)
		})
	}
}

func TestProgress(t *testing.T) {
	var to bytes.Buffer
	p := progress{&to}
	p.tell(3, 20)
	p.clear()
	assert.Equal(t, "\r3 of 20 problems\r\x1b[K", to.String())
}

func TestGrouped(t *testing.T) {
	for n, want := range map[int]string{0: "0", 999: "999", 1520: "1520", 20000: "20 000", 1234567: "1 234 567"} {
		assert.Equal(t, want, grouped(n))
	}
}

func TestTrialMisses(t *testing.T) {
	out, errs, status := tell("", "trial", "--learners", "20", "--misses", "3", "--seed", "2", problem("slipway.yaml"))
	require.Zero(t, status, errs)
	withinWidth(t, out)
	_, list, ok := strings.Cut(out, "Entries not judged as they were\n")
	require.True(t, ok)
	assert.Equal(t, 3, strings.Count(list, " → "), list)
	assert.Contains(t, list, "given W 520 lb 3:4 up left; S 310 lb 20° below -x")
}
