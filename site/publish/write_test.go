package publish

import (
	"bytes"
	"compress/gzip"
	"errors"
	"io"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/andybalholm/brotli"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestWrite(t *testing.T) {
	f := build(t, small)
	dir := filepath.Join(t.TempDir(), "out", "site")
	require.NoError(t, f.Write(dir))

	list, err := os.ReadFile(filepath.Join(dir, listName))
	require.NoError(t, err)
	lines := strings.Split(strings.TrimSpace(string(list)), "\n")
	assert.Equal(t, listMark+f.Version, lines[0])
	there, err := contents(dir)
	require.NoError(t, err)
	assert.Equal(t, lines[1:], there)
	for name, content := range f.Files {
		got, err := os.ReadFile(filepath.Join(dir, name))
		require.NoError(t, err)
		assert.Equal(t, content, got)
		if path.Ext(name) == ".png" {
			continue
		}
		assert.Equal(t, content, unpack(t, filepath.Join(dir, name+".gz")), name)
		assert.Equal(t, content, unpack(t, filepath.Join(dir, name+".br")), name)
	}
	left, err := contents(filepath.Dir(dir))
	require.NoError(t, err)
	assert.Equal(t, []string{"site"}, left, "nothing temporary is left")
}

func unpack(t *testing.T, file string) []byte {
	t.Helper()
	packed, err := os.ReadFile(file)
	require.NoError(t, err)
	var r io.Reader = brotli.NewReader(bytes.NewReader(packed))
	if filepath.Ext(file) == ".gz" {
		r, err = gzip.NewReader(bytes.NewReader(packed))
		require.NoError(t, err)
	}
	content, err := io.ReadAll(r)
	require.NoError(t, err)
	return content
}

func TestWriteOverOlder(t *testing.T) {
	old := build(t, small)
	next := build(t, Built{Wasm: []byte("\x00asm2"), Exec: small.Exec})
	dir := t.TempDir() // empty: may be written into
	require.NoError(t, old.Write(dir))
	require.NoError(t, os.Mkdir(filepath.Join(dir, ".git"), 0o755))
	require.NoError(t, os.WriteFile(filepath.Join(dir, "CNAME"), []byte("practice.example"), 0o644))
	require.NoError(t, next.Write(dir))
	there, err := contents(dir)
	require.NoError(t, err)
	assert.Contains(t, there, ".git")
	assert.Contains(t, there, "CNAME")
	for name := range old.Files {
		_, same := next.Files[name]
		assert.Equal(t, same, slices.Contains(there, name), name)
	}
}

func TestWriteLeavesOthersAlone(t *testing.T) {
	f := build(t, small)
	dir := t.TempDir()
	notes := filepath.Join(dir, "index.html")
	require.NoError(t, os.WriteFile(notes, []byte("my page"), 0o644))
	require.ErrorIs(t, f.Write(dir), ErrNotOurs)
	content, err := os.ReadFile(notes)
	require.NoError(t, err)
	assert.Equal(t, "my page", string(content))

	require.NoError(t, os.WriteFile(filepath.Join(dir, "notes.txt"), nil, 0o644))
	require.NoError(t, f.WriteOver(dir))
	assert.FileExists(t, filepath.Join(dir, "notes.txt"))
	content, err = os.ReadFile(notes)
	require.NoError(t, err)
	assert.Equal(t, f.Files["index.html"], content)

	file := filepath.Join(t.TempDir(), "file")
	require.NoError(t, os.WriteFile(file, nil, 0o644))
	assert.Error(t, f.WriteOver(file))
}

func TestWriteFile(t *testing.T) {
	f := build(t, small)
	file := filepath.Join(t.TempDir(), "new", "page.html")
	require.NoError(t, f.WriteFile(file))
	require.NoError(t, f.WriteFile(file), "ours is replaced")
	require.NoError(t, os.WriteFile(file, []byte("<!doctype html>mine"), 0o644))
	require.ErrorIs(t, f.WriteFile(file), ErrFileNotOurs)
	kept, err := os.ReadFile(file)
	require.NoError(t, err)
	assert.Equal(t, "<!doctype html>mine", string(kept))
	require.NoError(t, f.WriteFileOver(file))
	left, err := os.ReadDir(filepath.Dir(file))
	require.NoError(t, err)
	assert.Len(t, left, 1, "nothing half-written is left")
}

// theirs puts into dir what an instructor may have there, and returns a check
// that all of it is there as it was.
func theirs(t *testing.T, dir, inTheWay string) (still func()) {
	t.Helper()
	all := map[string]string{".git/HEAD": "ref: refs/heads/main\n", "slides/week1.txt": "forces", "CNAME": "practice.example"}
	if inTheWay != "" {
		all[inTheWay+"/mine"] = "mine"
	}
	for name, content := range all {
		require.NoError(t, os.MkdirAll(filepath.Dir(filepath.Join(dir, name)), 0o755))
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(content), 0o644))
	}
	return func() {
		t.Helper()
		for name, content := range all {
			got, err := os.ReadFile(filepath.Join(dir, name))
			require.NoError(t, err)
			require.Equal(t, content, string(got), name)
		}
	}
}

// A folder of the instructor's that stands where a file has to go stops a
// build; it is not deleted for it, and the page of before is whole.
func TestWriteDeletesNothingInTheWay(t *testing.T) {
	old := build(t, small)
	next := build(t, Built{Wasm: []byte("\x00asm2"), Exec: small.Exec})
	for name := range next.Files {
		if _, same := old.Files[name]; same {
			continue
		}
		dir := t.TempDir()
		require.NoError(t, old.Write(dir))
		still := theirs(t, dir, name)
		require.Error(t, next.WriteOver(dir), name)
		still()
		for kept, content := range old.Files {
			got, err := os.ReadFile(filepath.Join(dir, kept))
			require.NoError(t, err)
			require.Equal(t, content, got, kept)
		}
		require.NoError(t, os.RemoveAll(filepath.Join(dir, name)))
		require.NoError(t, next.Write(dir))
	}
}

// Wherever a build fails, what is the instructor's stays, a page is there with
// all that it leads to, and the next build leaves nothing of the one that failed.
func TestWriteFailsAnywhere(t *testing.T) {
	old := build(t, small)
	halfway := build(t, Built{Wasm: []byte("\x00asm3"), Exec: small.Exec})
	next := build(t, Built{Wasm: []byte("\x00asm2"), Exec: small.Exec})
	dir := t.TempDir()
	require.NoError(t, old.Write(dir))
	require.NoError(t, next.Write(dir))
	clean, err := contents(dir)
	require.NoError(t, err)
	still := theirs(t, dir, "")
	for step, failed := 0, true; failed; step++ {
		require.NoError(t, old.Write(dir))
		done := 0
		before, err := look(dir)
		require.NoError(t, err)
		failed = halfway.replace(before, func(from, to string) error {
			if done++; done > step {
				return errors.New("the disk is full")
			}
			return os.Rename(from, to)
		}) != nil
		require.Equal(t, failed, done > step, "a failure is told")
		still()
		index, err := os.ReadFile(filepath.Join(dir, "index.html"))
		require.NoError(t, err)
		links := regexp.MustCompile(`(?:href|src|data-engine)="([a-z_-]+\.[0-9a-f]{12}\.[a-z]+)"`).FindAllSubmatch(index, -1)
		require.Greater(t, len(links), 3)
		for _, link := range links {
			require.FileExists(t, filepath.Join(dir, string(link[1])), "after %d steps", step)
		}
		require.NoError(t, next.Write(dir))
		there, err := contents(dir)
		require.NoError(t, err)
		require.ElementsMatch(t, append([]string{".git", "CNAME", "slides"}, clean...), there, "after %d steps", step)
	}
	still()
}
