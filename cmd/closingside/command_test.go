package main

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"closingside/tutor/text"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the golden files anew")

// asCommand makes the test binary act as the command, for tests that need a
// process of their own.
const asCommand = "CLOSINGSIDE_AS_COMMAND"

func TestMain(m *testing.M) {
	if os.Getenv(asCommand) != "" {
		main()
	}
	text.Strict = true
	os.Exit(m.Run())
}

// tell runs one command line on what standard input holds.
func tell(in string, args ...string) (out, err string, status int) {
	var o, e bytes.Buffer
	status = run(args, streams{strings.NewReader(in), &o, &e})
	return o.String(), e.String(), status
}

// problem is the path of an example problem.
func problem(name string) string { return filepath.Join("..", "..", "testdata", "problems", name) }

// writeFile writes content to a file in a folder of its own.
func writeFile(t testing.TB, name, content string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	require.NoError(t, os.WriteFile(path, []byte(content), 0o644))
	return path
}

// golden compares got with testdata/name; -update writes it anew.
func golden(t *testing.T, name, got string) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if *update {
		require.NoError(t, os.MkdirAll("testdata", 0o755))
		require.NoError(t, os.WriteFile(path, []byte(got), 0o644))
	}
	want, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Equal(t, string(want), got)
}

// refused asserts that a command line ended with status 2 and one line that
// begins with where and says what would do; it returns that line.
func refused(t *testing.T, errs string, status int, where, says string) {
	t.Helper()
	assert.Equal(t, 2, status)
	assert.Equal(t, 1, strings.Count(errs, "\n"), "one line: %q", errs)
	assert.NotContains(t, errs, "\x1b")
	assert.NotContains(t, errs, "goroutine")
	assert.True(t, strings.HasPrefix(errs, "closingside: "+where), "%q does not begin with %q", errs, where)
	assert.Contains(t, errs, says)
}
