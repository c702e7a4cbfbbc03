package publish

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"time"
)

// tempName is the pattern by which temporary folders and files are named.
const tempName = ".closingside-*"

var tempNames = regexp.MustCompile(`^\.closingside-[0-9]+$`)

// staleAfter is longer than any build takes: a younger folder may be one at work.
const staleAfter = time.Hour

// leftOver tells whether path is a temporary folder of a Write, by its name and by
// what it holds: files alone.
func leftOver(path string) bool {
	if !tempNames.MatchString(filepath.Base(path)) {
		return false
	}
	if info, err := os.Lstat(path); err != nil || !info.IsDir() { // a link is none
		return false
	}
	inside, err := os.ReadDir(path)
	return err == nil && !slices.ContainsFunc(inside, func(e os.DirEntry) bool { return !e.Type().IsRegular() })
}

// clearStale removes the temporary folders that killed builds left in dir. One that
// can't be removed does no harm.
func clearStale(dir string) {
	entries, _ := os.ReadDir(dir)
	for _, e := range entries {
		path := filepath.Join(dir, e.Name())
		if info, err := e.Info(); err == nil && leftOver(path) && time.Since(info.ModTime()) > staleAfter {
			_ = os.RemoveAll(path)
		}
	}
}
