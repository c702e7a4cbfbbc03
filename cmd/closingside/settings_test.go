package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What a problem file asks under "check:" is what entries are judged by.
func TestSettingsOfAFile(t *testing.T) {
	file := head + first + second
	rows := []struct{ name, check, quantity, entry, verdict, says string }{
		{"expression", "", "R", "sqrt(340^2+610^2-2*340*610*cos(87))", "correct", ""},
		{"numbers only", "entries: numbers", "R", "sqrt(340^2+610^2-2*340*610*cos(87))", "unreadable", "A single number"},
		{"units required", "units: required", "R", "682.6", "unreadable", "The unit is missing"},
		{"three digits", "digits: 3", "R", "683 N", "correct", ""},
		{"five digits", "digits: 5", "R", "683 N", "correct", "one digit more"},
		{"switched off", "hints: off", "R", "682.6 N", "correct", ""},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			path := writeFile(t, "p.yaml", file+"check:\n  "+r.check+"\n")
			out, errs, status := tell(ask(r.quantity, r.entry), "check", path, "--json")
			require.Zero(t, status, errs)
			assert.Contains(t, out, `"verdict":"`+r.verdict+`"`)
			assert.Contains(t, out, r.says)
		})
	}
}

// A problem without settings is solved as ever, and settings change no value.
func TestSettingsChangeNoValue(t *testing.T) {
	file := head + first + second
	plain, errs, status := tell("", "solve", writeFile(t, "p.yaml", file), "--json")
	require.Zero(t, status, errs)
	for _, check := range []string{"{}", "{digits: 6, places: 4}", "{direction: from P, method: triangle}", "{hints: off, solution: off, sketch: off}"} {
		out, errs, status := tell("", "solve", writeFile(t, "p.yaml", file+"check: "+check+"\n"), "--json")
		require.Zero(t, status, errs)
		assert.Equal(t, plain, out, check)
	}
	t.Run("a method the kind lacks is not silently dropped", func(t *testing.T) {
		_, errs, status := tell("", "solve", writeFile(t, "p.yaml", file+"check: {method: guess}\n"))
		refused(t, errs, status, "", "any, triangle, components")
		assert.True(t, strings.HasSuffix(errs, "\n"))
	})
}
