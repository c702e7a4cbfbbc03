package tutor

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The map for contributors names every file of this package, and none that is gone.
func TestTheMapIsWhole(t *testing.T) {
	developers, err := os.ReadFile("../DEVELOPERS.md")
	require.NoError(t, err)
	_, after, found := strings.Cut(string(developers), "| in `tutor/` | what is there |\n")
	require.True(t, found)
	table, _, _ := strings.Cut(after, "\n\n")
	var named []string
	for i, part := range strings.Split(table, "`") {
		if i%2 == 1 && strings.HasSuffix(part, ".go") && !strings.Contains(part, "/") {
			named = append(named, part)
		}
	}
	files, err := filepath.Glob("*.go")
	require.NoError(t, err)
	var want []string
	for _, f := range files {
		if !strings.HasSuffix(f, "_test.go") {
			want = append(want, f)
		}
	}
	assert.ElementsMatch(t, want, named)
}
