package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestSheetOfAProblemAndItsKey(t *testing.T) {
	dir, _ := harbour(t, ownSet)
	file := filepath.Join(dir, "barge.yaml")
	_, said, status := tell("", "sheet", file, "--at", "https://example.edu/statics/")
	require.Zero(t, status, said)
	page, err := os.ReadFile(filepath.Join(dir, "barge-sheet.html"))
	require.NoError(t, err)
	assert.Contains(t, string(page), `aria-label="Code to scan`)
	assert.NotRegexp(t, `683[ \x{a0}]N`, string(page))

	_, said, status = tell("", "sheet", file, "--key")
	require.Zero(t, status, said)
	assert.Contains(t, strings.Join(strings.Fields(said), " "), "1 key, 1 problem. Open")
	page, err = os.ReadFile(filepath.Join(dir, "barge-key.html"))
	require.NoError(t, err)
	assert.Regexp(t, `683\x{a0}N`, string(page))
	assert.Contains(t, string(page), "713.7 N", "a plus before the cross term: √(340² + 610² + 2·340·610·cos 87°)")

	_, said, status = tell("", "sheet", file)
	refused(t, said, status, filepath.Join(dir, "barge-sheet.html"), "--force")
}

func TestSheetsOfARoster(t *testing.T) {
	dir, file := harbour(t, ownSet)
	students := filepath.Join(dir, "roster.csv")
	_, said, status := tell("", "sheet", file)
	refused(t, said, status, file, "--roster")

	out := filepath.Join(dir, "all.html")
	_, said, status = tell("", "sheet", file, "--roster", students, "-o", out)
	require.Zero(t, status, said)
	assert.Contains(t, said, "--at")
	page, err := os.ReadFile(out)
	require.NoError(t, err)
	assert.Equal(t, 2, strings.Count(string(page), `class="copy"`))
	assert.Contains(t, string(page), "Kit, the second")

	// The variant printed is the one the student's link opens.
	one, _, status := tell("", "set", file, "--student", "1043")
	require.Zero(t, status)
	_, variant, found := strings.Cut(one, "variant ")
	require.True(t, found)
	assert.Contains(t, string(page), "variant "+variant[:5]+" · 1043")

	_, said, status = tell("", "sheet", file, "--roster", students, "--key", "-o", filepath.Join(dir, "keys.html"))
	require.Zero(t, status, said)
	page, err = os.ReadFile(filepath.Join(dir, "keys.html"))
	require.NoError(t, err)
	assert.Equal(t, 1, strings.Count(string(page), "<table"), "one table for the class")
}
