package main

import (
	"errors"
	"os"
	"path/filepath"
)

// putFile writes content to path by a temporary name beside it, so that there
// is the whole file or none. A file that is there already is kept unless force
// is set.
func putFile(path string, content []byte, force bool) error {
	if _, err := os.Lstat(path); err == nil && !force {
		return wrongInput("%s: there is such a file already; name another, or add --force to replace it", path)
	}
	dir := filepath.Dir(path)
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return wrongInput("%s: the folder can't be made (%w); name another place", dir, reason(err))
	}
	temp, err := os.CreateTemp(dir, ".closingside-*")
	if err != nil {
		return wrongInput("%s: no file can be written there (%w); name another place", dir, reason(err))
	}
	defer os.Remove(temp.Name()) // gone already where all went well
	_, err = temp.Write(content)
	if err = errors.Join(err, temp.Close(), os.Chmod(temp.Name(), 0o644)); err != nil {
		return err
	}
	return os.Rename(temp.Name(), path)
}
