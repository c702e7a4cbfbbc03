package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"strings"
	"unicode"

	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// openLesson reads the problem file at path and opens its lesson. Every error
// of the file is an inputError that names the file, and the place where there
// is one.
func openLesson(path string) (*tutor.Lesson, error) {
	file, err := readFile(path)
	if err != nil {
		return nil, err
	}
	src, err := readSource(file)
	if err != nil {
		return nil, located(path, err)
	}
	if isSet(src) && !hasKey(src, "kind") {
		return nil, wrongInput("%s: this is a set, and one problem is wanted here; closingside set shows what is in it", path)
	}
	problem, err := kinds.All.Read(src)
	if err != nil {
		return nil, located(path, err)
	}
	l, err := tutor.Open(problem)
	if err != nil {
		return nil, located(path, &lesson.SourceError{Line: firstItem(problem), Message: err.Error()})
	}
	return l, nil
}

// firstItem is the line where what a problem gives begins.
func firstItem(p *lesson.Problem) int {
	if len(p.Items) == 0 {
		return 1
	}
	return p.Items[0].Line
}

func readFile(path string) ([]byte, error) {
	return readNamed(path, "name a problem file such as barge.yaml", "a problem is a few lines")
}

// readNamed reads a file of at most 1 MB. The refusals say what to name, and
// how large such a file is.
func readNamed(path, example, size string) ([]byte, error) {
	f, err := os.Open(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, wrongInput("%s: there is no such file; %s", path, example)
	case errors.Is(err, fs.ErrPermission):
		return nil, wrongInput("%s: this file may not be read; change its permissions, or %s", path, example)
	case err != nil:
		return nil, wrongInput("%s: this file can't be opened (%w); %s", path, reason(err), example)
	}
	defer f.Close()
	if info, err := f.Stat(); err == nil && info.IsDir() {
		return nil, wrongInput("%s: this is a folder; %s", path, example)
	}
	file, err := io.ReadAll(io.LimitReader(f, maxBytes+1))
	if err != nil {
		return nil, wrongInput("%s: this file can't be read (%w); %s", path, reason(err), example)
	}
	if len(file) > maxBytes {
		return nil, wrongInput("%s: this file is larger than 1 MB; %s", path, size)
	}
	return file, nil
}

// reason is what lies under the path error, which repeats the path.
func reason(err error) error {
	var at *fs.PathError
	if errors.As(err, &at) {
		return at.Err
	}
	return err
}

// located puts file, line and column before an error of a Source.
func located(path string, err error) error {
	at := path
	if place := (*lesson.SourceError)(nil); errors.As(err, &place) && place.Line > 0 {
		at = fmt.Sprintf("%s:%d", at, place.Line)
		if place.Col > 0 {
			at = fmt.Sprintf("%s:%d", at, place.Col)
		}
	}
	return wrongInput("%s: %w", at, err)
}

// printable is s fit to be shown in a line of a terminal: line ends and tabs
// become spaces, anything else that would not show, a small box.
func printable(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || r == '\r' || r == '\t':
			return ' '
		case !unicode.IsPrint(r):
			return '▯'
		}
		return r
	}, s)
}
