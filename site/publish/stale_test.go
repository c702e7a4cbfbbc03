package publish

import (
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A build that was killed leaves its temporary folder; the next one clears it away,
// and nothing else.
func TestWriteClearsWhatAKilledBuildLeft(t *testing.T) {
	f := &Folder{Version: "1", Files: map[string][]byte{"index.html": []byte("page")}}
	dir := t.TempDir()
	old := time.Now().Add(-2 * staleAfter)
	make := func(name string, at time.Time, files ...string) string {
		path := filepath.Join(dir, name)
		require.NoError(t, os.Mkdir(path, 0o755))
		for _, file := range files {
			require.NoError(t, os.WriteFile(filepath.Join(path, file), nil, 0o644))
		}
		require.NoError(t, os.Chtimes(path, at, at))
		return path
	}
	killed := make(".closingside-1234", old, "index.html", "files.txt")
	require.NoError(t, f.Write(dir), "nothing else is in the folder")
	assert.NoDirExists(t, killed)

	working := make(".closingside-55", time.Now(), "index.html")
	notes := make(".closingside-notes", old, "index.html")
	deeper := make(".closingside-77", old)
	require.NoError(t, os.Mkdir(filepath.Join(deeper, "mine"), 0o755))
	require.NoError(t, os.Chtimes(deeper, old, old))
	elsewhere := t.TempDir()
	link := filepath.Join(dir, ".closingside-88")
	require.NoError(t, os.Symlink(elsewhere, link))
	require.NoError(t, f.Write(dir))
	for _, kept := range []string{working, notes, deeper, elsewhere} {
		assert.DirExists(t, kept)
	}
	assert.FileExists(t, link)
	make("holiday", old)
	assert.NoError(t, os.Remove(filepath.Join(dir, listName)))
	assert.ErrorIs(t, f.Write(dir), ErrNotOurs)
}
