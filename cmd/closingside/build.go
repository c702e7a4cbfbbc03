package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"closingside/site/publish"
)

// buildVerb writes what is to be published.
type buildVerb struct {
	Path    string   `arg:"" optional:"" name:"folder" help:"Where to write: build/site if not said; with --one-file a file, build/closingside.html."`
	Set     []string `placeholder:"FILE" help:"A set to list on the home screen; may be given again."`
	OneFile bool     `help:"Write one HTML file that works opened from a disk, with everything inside."`
	Force   bool     `help:"Write into a folder that holds other files (they are kept), or over a file that is not ours."`
}

// Run builds the page and writes it.
func (v buildVerb) Run(s streams) error {
	folder, err := buildFolder(context.Background(), v.Set)
	if err != nil {
		return err
	}
	page := newScreen(s.out)
	if v.OneFile {
		return v.oneFile(page, folder)
	}
	dir := v.Path
	if dir == "" {
		dir = filepath.FromSlash("build/site")
	}
	write := folder.Write
	if v.Force {
		write = folder.WriteOver
	}
	if err := write(dir); errors.Is(err, publish.ErrNotOurs) {
		return wrongInput("%w; name an empty folder, or add --force", err)
	} else if err != nil {
		return unwritable(err)
	}
	page.paragraph(0, plain, fmt.Sprintf("%s: version %s, %d files to copy to a static web host (files.txt lists them with their compressed copies).", dir, folder.Version, len(folder.Files)))
	return written(page.err)
}

func (v buildVerb) oneFile(page *screen, folder *publish.Folder) error {
	file := v.Path
	if file == "" {
		file = filepath.FromSlash("build/closingside.html")
	}
	if info, err := os.Stat(file); err == nil && info.IsDir() {
		return wrongInput("%s: this is a folder; name the file, such as %s", file, filepath.Join(file, "closingside.html"))
	}
	write := folder.WriteFile
	if v.Force {
		write = folder.WriteFileOver
	}
	if err := write(file); errors.Is(err, publish.ErrFileNotOurs) {
		return wrongInput("%w; name another file, or add --force to replace it", err)
	} else if err != nil {
		return unwritable(err)
	}
	page.paragraph(0, plain, fmt.Sprintf("%s: version %s, one file to hand out; it opens from a disk.", file, folder.Version))
	return written(page.err)
}

// unwritable is an error of the file system, as the one of the input it is.
func unwritable(err error) error {
	return wrongInput("%w; name another place to write to", err)
}

// buildFolder builds the page with the sets of some files.
func buildFolder(ctx context.Context, sets []string) (*publish.Folder, error) {
	var codes []string
	for _, file := range sets {
		set, err := openSet(file)
		if err != nil {
			return nil, err
		}
		code, err := setCode(file, set, "")
		if err != nil {
			return nil, err
		}
		if !set.Personal() { // what can't be drawn is said now, not to a student
			if _, err := set.Variant(""); err != nil {
				return nil, wrongInput("%s: %w", file, err)
			}
		}
		codes = append(codes, code)
	}
	engine, err := publish.Engine(ctx, ".")
	if errors.Is(err, publish.ErrNoSource) {
		return nil, wrongInput("%w; install the command with “make install” in its source folder", err)
	}
	if err != nil {
		return nil, err
	}
	return publish.Build(engine, codes...)
}
