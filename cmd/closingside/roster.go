package main

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strings"

	"closingside/tutor/sets"
)

// student is one line of a roster.
type student struct{ ID, Name string }

// maxRoster is the most students of one roster.
const maxRoster = 5000

// rosterReader reads the lines of a roster, and knows where it is.
type rosterReader struct {
	*csv.Reader
	path     string
	id, name int            // columns; name is −1 where there is none
	seen     map[string]int // in which line an id stands, folded
}

// readRoster reads a CSV file whose first line names its columns: id, and
// perhaps name, among others, parted by commas, semicolons or tabs. Every
// error is an inputError with file, line and column.
func readRoster(path string) ([]student, error) {
	file, err := readNamed(path, "name a CSV file such as class.csv", "a roster is a line a student")
	if err != nil {
		return nil, err
	}
	file = bytes.TrimPrefix(file, []byte("\ufeff"))
	r := &rosterReader{Reader: csv.NewReader(bytes.NewReader(file)), path: path, seen: map[string]int{}}
	if bad := firstBadByte(file); bad >= 0 {
		return nil, r.wrong(1+bytes.Count(file[:bad], []byte("\n")), 1, "this is not UTF-8 text; save the roster as “CSV UTF-8”")
	}
	r.Comma = separator(file)
	r.FieldsPerRecord = -1
	r.TrimLeadingSpace = true
	if err := r.columns(); err != nil {
		return nil, err
	}
	var all []student
	for {
		s, line, err := r.student()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return nil, err
		}
		if all = append(all, s); len(all) > maxRoster {
			return nil, r.wrong(line, 1, "more than %d students; split the roster", maxRoster)
		}
	}
	if len(all) == 0 {
		return nil, r.wrong(1, 1, "the roster names no student; add lines such as “1042,Ada” below the first")
	}
	return all, nil
}

// wrong is an error at a line and column of the file.
func (r *rosterReader) wrong(line, col int, format string, args ...any) error {
	return wrongInput("%s:%d:%d: %s", r.path, line, col, fmt.Sprintf(format, args...))
}

// row is the next line; io.EOF behind the last.
func (r *rosterReader) row() ([]string, error) {
	row, err := r.Read()
	if bad := (*csv.ParseError)(nil); errors.As(err, &bad) {
		return nil, r.wrong(bad.Line, bad.Column, "this line can't be read as CSV (%s); put a text with quotes or separators in double quotes", bad.Err)
	}
	return row, err
}

// columns reads the first line.
func (r *rosterReader) columns() error {
	header, err := r.row()
	if errors.Is(err, io.EOF) {
		return r.wrong(1, 1, "the roster is empty; begin with a line “id,name”")
	}
	if err != nil {
		return err
	}
	r.id, r.name = -1, -1
	for i, h := range header {
		switch strings.ToLower(strings.TrimSpace(h)) {
		case "id":
			r.id = i
		case "name":
			r.name = i
		}
	}
	if r.id < 0 {
		return r.wrong(1, 1, "the first line must name the columns, “id” among them; write it like “id,name”")
	}
	return nil
}

// student reads a student, and tells in which line; io.EOF behind the last.
func (r *rosterReader) student() (s student, line int, err error) {
	row, err := r.row()
	if err != nil {
		return s, 0, err
	}
	line, _ = r.FieldPos(0)
	if r.id >= len(row) {
		return s, line, r.wrong(line, 1, "this line has no id; write it like “1042,Ada”, or take the line out")
	}
	_, col := r.FieldPos(r.id)
	s.ID = strings.TrimSpace(row[r.id])
	if r.name >= 0 && r.name < len(row) {
		s.Name = strings.TrimSpace(row[r.name])
	}
	if err := sets.CheckStudent(s.ID); err != nil {
		return s, line, r.wrong(line, col, "%s Write the line like “1042,Ada”.", err)
	}
	fold := sets.FoldStudent(s.ID)
	if before := r.seen[fold]; before > 0 {
		return s, line, r.wrong(line, col, "the id %s stands in line %d already; give each student an id of their own", printable(s.ID), before)
	}
	r.seen[fold] = line
	return s, line, nil
}

// separator is what parts the columns of the first line.
func separator(file []byte) rune {
	first, _, _ := bytes.Cut(file, []byte("\n"))
	for _, c := range ";\t" {
		if bytes.ContainsRune(first, c) {
			return c
		}
	}
	return ','
}
