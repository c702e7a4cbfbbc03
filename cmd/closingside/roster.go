package main

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strings"

	"closingside/tutor"
)

// student is one line of a roster.
type student struct{ ID, Name string }

// maxRoster is the most students of one roster.
const maxRoster = 5000

// readRoster reads a CSV file whose first line names its columns: id, and
// perhaps name, among others, parted by commas, semicolons or tabs. Every
// error is an inputError with file, line and column.
func readRoster(path string) ([]student, error) {
	file, err := readNamed(path, "name a CSV file such as class.csv", "a roster is a line a student")
	if err != nil {
		return nil, err
	}
	at := func(line, col int, format string, args ...any) error {
		return wrongInput("%s:%d:%d: %s", path, line, col, fmt.Sprintf(format, args...))
	}
	file = bytes.TrimPrefix(file, []byte("\ufeff"))
	if bad := firstBadByte(file); bad >= 0 {
		return nil, at(1+bytes.Count(file[:bad], []byte("\n")), 1, "this is not UTF-8 text; save the roster as “CSV UTF-8”")
	}
	r := csv.NewReader(bytes.NewReader(file))
	r.Comma = separator(file)
	r.FieldsPerRecord = -1
	r.TrimLeadingSpace = true
	header, err := r.Read()
	if errors.Is(err, io.EOF) {
		return nil, at(1, 1, "the roster is empty; begin with a line “id,name”")
	}
	id, name := -1, -1
	for i, h := range header {
		switch strings.ToLower(strings.TrimSpace(h)) {
		case "id":
			id = i
		case "name":
			name = i
		}
	}
	if err == nil && id < 0 {
		return nil, at(1, 1, "the first line must name the columns, “id” among them; write it like “id,name”")
	}
	var all []student
	seen := map[string]int{}
	for err == nil {
		var row []string
		if row, err = r.Read(); err != nil {
			break
		}
		line, _ := r.FieldPos(0)
		if id >= len(row) {
			return nil, at(line, 1, "this line has no id; write it like “1042,Ada”, or take the line out")
		}
		_, col := r.FieldPos(id)
		s := student{ID: strings.TrimSpace(row[id])}
		if name >= 0 && name < len(row) {
			s.Name = strings.TrimSpace(row[name])
		}
		fold := tutor.FoldStudent(s.ID)
		if why := tutor.CheckStudent(s.ID); why != "" {
			return nil, at(line, col, "%s Write the line like “1042,Ada”.", why)
		}
		if before := seen[fold]; before > 0 {
			return nil, at(line, col, "the id %s stands in line %d already; give each student an id of their own", printable(s.ID), before)
		}
		seen[fold] = line
		if all = append(all, s); len(all) > maxRoster {
			return nil, at(line, 1, "more than %d students; split the roster", maxRoster)
		}
	}
	if bad := (*csv.ParseError)(nil); errors.As(err, &bad) {
		return nil, at(bad.Line, bad.Column, "this line can't be read as CSV (%s); put a text with quotes or separators in double quotes", bad.Err)
	}
	if len(all) == 0 {
		return nil, at(1, 1, "the roster names no student; add lines such as “1042,Ada” below the first")
	}
	return all, nil
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
