package publish

import (
	"bytes"
	"compress/gzip"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"github.com/andybalholm/brotli"
)

// listName is the plain list of files; its first line marks a folder as ours.
const (
	listName = "files.txt"
	mark     = "# closingside "
)

// ErrNotOurs is why Write leaves a folder alone.
var ErrNotOurs = errors.New("the folder holds files that closingside did not write")

// Write puts the folder at dir: to a temporary name beside it first, then by
// renaming, so that dir is either the old version or the new one. A folder
// that is neither empty nor one of ours is refused unless force is set. What
// is in dir and not ours (.git, CNAME) is kept in either case.
func (f *Folder) Write(dir string, force bool) error {
	dir, err := filepath.Abs(dir)
	if err != nil {
		return err
	}
	old, err := contents(dir)
	if err != nil {
		return err
	}
	ours, marked := listed(dir)
	if len(old) > 0 && !marked && !force {
		return fmt.Errorf("%s: %w", dir, ErrNotOurs)
	}
	if err := os.MkdirAll(filepath.Dir(dir), 0o755); err != nil {
		return err
	}
	temp, err := os.MkdirTemp(filepath.Dir(dir), ".closingside-*")
	if err != nil {
		return err
	}
	defer os.RemoveAll(temp)
	fresh, stale := filepath.Join(temp, "new"), filepath.Join(temp, "old")
	if err := f.writeTo(fresh); err != nil {
		return err
	}
	if old != nil {
		if err := os.Rename(dir, stale); err != nil {
			return err
		}
	}
	for _, name := range old {
		if _, taken := os.Lstat(filepath.Join(fresh, name)); taken == nil || slices.Contains(ours, name) {
			continue
		}
		if err := os.Rename(filepath.Join(stale, name), filepath.Join(fresh, name)); err != nil {
			return errors.Join(err, os.Rename(stale, dir))
		}
	}
	if err := os.Rename(fresh, dir); err != nil {
		return errors.Join(err, os.Rename(stale, dir))
	}
	return nil
}

// contents is what lies in dir; nil when there is no such folder.
func contents(dir string) ([]string, error) {
	entries, err := os.ReadDir(dir)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	names := []string{}
	for _, e := range entries {
		names = append(names, e.Name())
	}
	return names, nil
}

// listed is what the folder's own list names, and whether it has one.
func listed(dir string) ([]string, bool) {
	content, err := os.ReadFile(filepath.Join(dir, listName))
	if err != nil || !bytes.HasPrefix(content, []byte(mark)) {
		return nil, false
	}
	return strings.Fields(string(content[bytes.IndexByte(content, '\n')+1:])), true
}

func (f *Folder) writeTo(dir string) error {
	files := maps.Clone(f.Files)
	for name, content := range f.Files {
		if err := compress(files, name, content); err != nil {
			return err
		}
	}
	files[listName] = nil
	list := mark + f.Version + "\n" + strings.Join(slices.Sorted(maps.Keys(files)), "\n") + "\n"
	files[listName] = []byte(list)
	if err := os.Mkdir(dir, 0o755); err != nil {
		return err
	}
	for name, content := range files {
		if err := os.WriteFile(filepath.Join(dir, name), content, 0o644); err != nil {
			return err
		}
	}
	return nil
}

// compress adds name.gz and name.br for what gains by it. PNG does not.
func compress(files map[string][]byte, name string, content []byte) error {
	if path.Ext(name) == ".png" {
		return nil
	}
	gz, err := Gzip(content)
	if err != nil {
		return err
	}
	files[name+".gz"] = gz
	var b bytes.Buffer
	w := brotli.NewWriterLevel(&b, 9) // 11 takes five times as long for 3 % less
	if _, err := w.Write(content); err != nil {
		return err
	}
	if err := w.Close(); err != nil {
		return err
	}
	files[name+".br"] = b.Bytes()
	return nil
}

// Gzip is content at the highest level, without a name or time.
func Gzip(content []byte) ([]byte, error) {
	var b bytes.Buffer
	w, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		return nil, err
	}
	if _, err := w.Write(content); err != nil {
		return nil, err
	}
	err = w.Close()
	return b.Bytes(), err
}
