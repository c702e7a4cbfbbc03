package main

import (
	"encoding/csv"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"closingside/site"
	"closingside/site/report"
	"closingside/tutor/sets"
)

// reportVerb reads the logs that students saved on the page.
type reportVerb struct {
	Paths   []string `arg:"" name:"file" help:"Files that students saved with “Save a copy”, or folders of them."`
	Set     string   `placeholder:"FILE" help:"Keep to this set, a YAML or JSON file."`
	SkipBad bool     `help:"Leave out files that are no saved work, and say which."`
	JSON    bool     `help:"One JSON object: everything counted, and every student's rows."`
	CSV     bool     `help:"A line for each value a student worked at, for a spreadsheet."`
}

// Run reads the files and reports.
func (v reportVerb) Run(s streams) error {
	if v.JSON && v.CSV {
		return wrongInput("--json and --csv: choose one of them")
	}
	var only *sets.Set
	if v.Set != "" {
		set, err := openSet(v.Set)
		if err != nil {
			return err
		}
		only = set
	}
	logs, err := v.read(s)
	if err != nil {
		return err
	}
	r, faults := report.Of(logs, only)
	switch {
	case len(faults) > 0 && !v.SkipBad:
		return wrongInput("%w; --skip-bad leaves such files out", faults[0])
	case len(faults) == len(logs):
		return wrongInput("no file is left: %w", faults[0])
	}
	for _, why := range faults {
		fmt.Fprintln(s.err, "left out:", printable(why.Error()))
	}
	switch {
	case v.JSON:
		return written(encode(s.out, r))
	case v.CSV:
		return written(rowsOf(r, s.out))
	}
	page := newScreen(s.out)
	showReport(page, r)
	return written(page.err)
}

// read reads every log there is at the paths.
func (v reportVerb) read(s streams) ([]*report.Log, error) {
	var logs []*report.Log
	for _, root := range v.Paths {
		files, err := logFiles(root)
		if err != nil {
			return nil, err
		}
		for _, path := range files {
			l, err := readLog(root, path)
			switch {
			case err == nil:
				if !slices.ContainsFunc(logs, func(o *report.Log) bool { return o.Path == l.Path }) {
					logs = append(logs, l)
				}
			case v.SkipBad:
				fmt.Fprintln(s.err, "left out:", printable(err.Error()))
			default:
				return nil, wrongInput("%w; --skip-bad leaves such files out", err)
			}
		}
	}
	if len(logs) == 0 {
		return nil, wrongInput("%s: no saved work is there; put the files in it that students saved with “Save a copy”", strings.Join(v.Paths, ", "))
	}
	return logs, nil
}

// logFiles are the files at a path: itself, or those in the folder and the
// folders in it, but for hidden ones.
func logFiles(root string) ([]string, error) {
	info, err := os.Stat(root)
	if err != nil {
		return nil, wrongInput("%s: this can't be opened (%w); name a file that a student saved, or a folder of them", root, reason(err))
	}
	if !info.IsDir() {
		return []string{root}, nil
	}
	var files []string
	err = filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return wrongInput("%s: this can't be read (%w)", path, reason(err))
		case path != root && strings.HasPrefix(d.Name(), "."):
			if d.IsDir() {
				return fs.SkipDir
			}
		case d.Type().IsRegular():
			files = append(files, path)
		}
		return nil
	})
	return files, err
}

// readLog reads one file. A learner is called by the file's name, below the
// folder that was named, without its ending.
func readLog(root, path string) (*report.Log, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, fmt.Errorf("%s: this file can't be opened (%w)", path, reason(err))
	}
	defer f.Close()
	content, err := io.ReadAll(io.LimitReader(f, site.MaxSaved+1))
	if err != nil {
		return nil, fmt.Errorf("%s: this file can't be read (%w)", path, reason(err))
	}
	if len(content) > site.MaxSaved {
		return nil, fmt.Errorf("%s: this file is larger than 4 MB; a term's work is far smaller", path)
	}
	name, err := filepath.Rel(root, path)
	if err != nil || name == "." {
		name = filepath.Base(path)
	}
	return report.ReadLog(strings.TrimSuffix(filepath.ToSlash(name), filepath.Ext(name)), path, content)
}

// rowsOf writes the rows of every student for a spreadsheet.
func rowsOf(r *report.Report, out io.Writer) error {
	w := csv.NewWriter(out)
	rows := [][]string{{"student", "set", "number", "problem", "kind", "quantity", "entries", "hints", "found", "seconds", "slips", "last"}}
	for _, s := range r.Students {
		for _, row := range s.Rows {
			rows = append(rows, []string{cell(s.Name), cell(row.Set), strconv.Itoa(row.Number), cell(row.Problem), row.Kind, row.Quantity, strconv.Itoa(row.Entries),
				strconv.Itoa(row.Hints), row.Found, strconv.FormatFloat(row.Seconds, 'f', 0, 64), strings.Join(row.Slips, " "), cell(row.Last)})
		}
	}
	return w.WriteAll(rows)
}

// cell keeps a spreadsheet from working out what a student wrote as a formula
// of its own: OWASP, CSV injection.
func cell(s string) string {
	if s != "" && strings.ContainsRune("=+-@\t\r", rune(s[0])) {
		return "'" + s
	}
	return s
}
