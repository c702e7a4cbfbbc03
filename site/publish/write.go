package publish

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// listName is the plain list of files; its first line marks a folder as ours.
const (
	listName = "files.txt"
	listMark = "# closingside "
)

// ErrNotOurs is why Write leaves a folder alone.
var ErrNotOurs = errors.New("the folder holds files that closingside did not write")

// Write puts the folder at dir, which is made where there is none. A folder
// that is neither empty nor one of ours is refused (ErrNotOurs). What is in dir
// and not ours (.git, CNAME) is never touched.
//
// Everything is written to a temporary folder in dir first. Then each file is
// renamed into its place: those that carry a hash stand beside the ones of the
// version before, then the page and its worker lead to them. What only the
// version before had goes last, so a page works at every moment and wherever
// this fails; the next Write sets right what is left over, and clears away the
// temporary folder of one that was killed.
func (f *Folder) Write(dir string) error {
	old, err := look(dir)
	switch {
	case err != nil:
		return err
	case !old.marked && len(old.names) > 0:
		return fmt.Errorf("%s: %w", dir, ErrNotOurs)
	}
	return f.replace(old, os.Rename)
}

// WriteOver is Write into a folder that may be anybody's: files of other names
// than ours stay.
func (f *Folder) WriteOver(dir string) error {
	old, err := look(dir)
	if err != nil {
		return err
	}
	return f.replace(old, os.Rename)
}

// standing is what lies in a folder that is to be written to.
type standing struct {
	dir    string
	names  []string // of all that lies there, but what killed builds left
	ours   []string // what our list names
	marked bool     // there is such a list
}

func look(dir string) (standing, error) {
	names, err := contents(dir)
	if err != nil {
		return standing{}, err
	}
	s := standing{dir: dir}
	s.names = slices.DeleteFunc(names, func(name string) bool { return leftOver(filepath.Join(dir, name)) })
	s.ours, s.marked = listed(dir)
	return s, nil
}

// outdated lists what of ours stands there and is not among the names of now.
func (s standing) outdated(now []string) []string {
	return slices.DeleteFunc(slices.Clone(s.names), func(name string) bool {
		return !slices.Contains(s.ours, name) || slices.Contains(now, name) || name == listName
	})
}

// The list of files has these names in the temporary folder: while files are put
// in place it names those of both versions, all of which are ours however far
// this comes.
const (
	listBoth = "both"
	listNow  = "now"
)

// replace puts the folder in the place of what stands there; rename is os.Rename,
// but for tests of what fails.
func (f *Folder) replace(old standing, rename func(from, to string) error) error {
	files, err := f.packed()
	if err != nil {
		return err
	}
	names := inOrder(files)
	files[listBoth] = f.list(slices.Concat(old.ours, names))
	files[listNow] = f.list(names)
	temp, err := stage(old.dir, files)
	if err != nil {
		return err
	}
	defer os.RemoveAll(temp)
	place := func(from, name string) error { return rename(filepath.Join(temp, from), filepath.Join(old.dir, name)) }
	if err := place(listBoth, listName); err != nil {
		return err
	}
	for _, name := range names {
		if err := place(name, name); err != nil {
			return err
		}
	}
	if err := removeFiles(old.dir, old.outdated(names)); err != nil {
		return err
	}
	return place(listNow, listName)
}

// stage writes files to a new temporary folder in dir and returns its path.
func stage(dir string, files map[string][]byte) (temp string, err error) {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return "", err
	}
	clearStale(dir)
	temp, err = os.MkdirTemp(dir, tempName)
	if err != nil {
		return "", err
	}
	for name, content := range files {
		if err := os.WriteFile(filepath.Join(temp, name), content, 0o644); err != nil {
			return "", errors.Join(err, os.RemoveAll(temp))
		}
	}
	return temp, nil
}

// removeFiles removes the files of those names from dir. A folder of such a
// name is none of ours.
func removeFiles(dir string, names []string) error {
	for _, name := range names {
		path := filepath.Join(dir, name)
		info, err := os.Lstat(path)
		if err == nil && !info.IsDir() {
			err = os.Remove(path)
		}
		if err != nil {
			return err
		}
	}
	return nil
}

// inOrder is the names of files in the order in which they are put in place:
// the page and its worker after what they lead to.
func inOrder(files map[string][]byte) []string {
	last := func(name string) int {
		if strings.HasPrefix(name, "index.html") || strings.HasPrefix(name, "sw.js") {
			return 1
		}
		return 0
	}
	return slices.SortedFunc(maps.Keys(files), func(a, b string) int {
		return cmp.Or(cmp.Compare(last(a), last(b)), cmp.Compare(a, b))
	})
}

// list is the plain list of the folder's files and itself.
func (f *Folder) list(names []string) []byte {
	all := append([]string{listName}, names...)
	slices.Sort(all)
	return []byte(listMark + f.Version + "\n" + strings.Join(slices.Compact(all), "\n") + "\n")
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
	if err != nil || !bytes.HasPrefix(content, []byte(listMark)) {
		return nil, false
	}
	return strings.Fields(string(content[bytes.IndexByte(content, '\n')+1:])), true
}
