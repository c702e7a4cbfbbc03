package main

import (
	"encoding/csv"
	"encoding/json"
	"fmt"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"closingside/site"
	"closingside/site/report"
	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// pupil writes a log as the page does: every request goes to the engine, and
// what comes of it is kept after it.
type pupil struct {
	lines []string
	clock int64
	draw  *lesson.Draw
}

var outcomeOf = regexp.MustCompile(`<data id="log" value="([^"]*)">`)

func (p *pupil) ask(pairs ...string) {
	p.clock += int64(5+p.draw.Below(90)) * 1000
	f := site.Form{}
	for i := 0; i+1 < len(pairs); i += 2 {
		f = append(f, site.Field{Name: pairs[i], Value: pairs[i+1]})
	}
	line := append(f, site.Field{Name: "at", Value: strconv.FormatInt(p.clock, 10)}).Line()
	reply := site.Handle([]byte(line))
	p.lines = append(p.lines, line)
	if m := outcomeOf.FindSubmatch(reply); m != nil {
		p.lines = append(p.lines, strings.ReplaceAll(string(m[1]), "&amp;", "&"))
	}
}

// work works a problem of a set: now and then with a mistake that is common in
// this class, or any other, with a hint, or giving up.
func (p *pupil) work(t *testing.T, set *sets.Set, id string, task sets.Task) {
	code := task.Problem.Code()
	p.ask("do", "open", "problem", code, "set", set.Code(id))
	lesson, err := tutor.Open(task.Problem)
	require.NoError(t, err)
	for _, s := range lesson.Ways[0].Steps {
		q := lesson.Quantity(s.Quantity)
		enter := func(entry string) {
			p.ask("do", "enter", "problem", code, "quantity", q.Name, "entry", entry)
		}
		switch chance := p.draw.Below(100); {
		case chance < 5:
			enter("about " + q.Name + "?")
		case chance < 45 && q.Name == "gamma":
			enter(lesson.ShowKept(q, 180-q.True, task.Problem.Settings))
		case chance < 30:
			if wrong := lesson.WrongValues(q, task.Problem.Settings); len(wrong) > 0 {
				enter(wrong[p.draw.Below(len(wrong))].Shown)
			}
		case chance < 38:
			for range 1 + p.draw.Below(4) {
				p.ask("do", "hint", "problem", code, "quantity", q.Name)
			}
		case chance < 41:
			return
		}
		enter(lesson.ShowKept(q, q.True, task.Problem.Settings))
	}
}

// class writes the logs of so many students who work at a set, into a folder.
func class(t *testing.T, file string, students int) string {
	t.Helper()
	set, err := openSet(file)
	require.NoError(t, err)
	dir := t.TempDir()
	for n := range students {
		p := &pupil{clock: 1_793_000_000_000 + int64(n)*7_200_000, draw: lesson.NewDraw(11, uint64(n))}
		site.Handle([]byte("do=start&hash=&at=0"))
		id := fmt.Sprint(1001 + n)
		p.ask("do", "open", "hash", set.Code(""))
		p.ask("do", "personal", "set", set.Code(""), "student", id)
		v, err := set.Variant(id)
		require.NoError(t, err)
		for _, task := range v.Tasks[:len(v.Tasks)-p.draw.Below(3)] {
			p.work(t, set, v.Student, task)
		}
		require.NoError(t, os.WriteFile(filepath.Join(dir, fmt.Sprintf("student-%02d.txt", n+1)), []byte(strings.Join(p.lines, "\n")+"\n"), 0o644))
	}
	return dir
}

const weekFile = `title: Tugs and buoys, week 4
numbers: own
order: shuffled
carried: half
check: {sketch: off}
problems:
  - {generate: two-forces, count: 2, difficulty: 2, marks: 3}
  - {generate: components, marks: 1}
  - {generate: two-forces, difficulty: 3, marks: 4}
`

// A class of thirty: the report in words is the one looked at before, and its
// counts are those of the machine's form, which are counted here once more.
func TestReportOfAClass(t *testing.T) {
	file := writeFile(t, "week4.yaml", weekFile)
	dir := class(t, file, 30)
	out, errs, status := tell("", "report", dir)
	require.Zero(t, status, errs)
	for line := range strings.Lines(out) {
		assert.LessOrEqual(t, utf8.RuneCountInString(strings.TrimRight(line, "\n")), usualWidth, line)
	}
	golden(t, "report.txt", out)

	var r report.Report
	machine, _, _ := tell("", "report", dir, "--set", file, "--json")
	require.NoError(t, json.Unmarshal([]byte(machine), &r))
	require.Len(t, r.Students, 30)
	require.Len(t, r.Problems, 4, "whatever the order and the numbers were, they are four")
	entered, found := countedByHand(t, dir)
	assert.Equal(t, entered, r.Entries.All())
	assert.Equal(t, found, r.Entries.Correct)
	rows := 0
	for _, s := range r.Students {
		rows += len(s.Rows)
		require.Len(t, s.Sets, 1)
		assert.Equal(t, 4, s.Sets[0].Problems)
	}
	for _, p := range r.Problems {
		for _, q := range p.Quantities {
			assert.Equal(t, q.Tried, q.First+q.Later+q.Helped+q.Never, q.Name)
			rows -= q.Tried
		}
	}
	assert.Zero(t, rows, "a row for each who tried")
	require.NotEmpty(t, r.Again)
	assert.Equal(t, "included-for-interior", r.Slips[0].ID, "the mistake that this class makes")
	assert.Equal(t, r.Slips[0].ID, r.Again[0].Slip)
	assert.Equal(t, "γ", r.Slips[0].At)

	table, _, status := tell("", "report", dir, "--csv")
	require.Zero(t, status)
	cells, err := csv.NewReader(strings.NewReader(table)).ReadAll()
	require.NoError(t, err)
	lines := 1
	for _, s := range r.Students {
		lines += len(s.Rows)
	}
	assert.Len(t, cells, lines)
}

// countedByHand are the entries of the logs and those judged right, as the
// outcomes say that the page kept.
func countedByHand(t *testing.T, dir string) (entered, found int) {
	files, err := filepath.Glob(filepath.Join(dir, "*.txt"))
	require.NoError(t, err)
	for _, f := range files {
		content, err := os.ReadFile(f)
		require.NoError(t, err)
		for line := range strings.Lines(string(content)) {
			q, err := url.ParseQuery(strings.TrimSpace(line))
			require.NoError(t, err)
			if q.Get("do") == "enter" {
				entered++
			}
			if q.Get("do") == "outcome" && q.Get("verdict") == "correct" {
				found++
			}
		}
	}
	return entered, found
}

// What is no log is refused, and left out when that is asked for.
func TestReportRefuses(t *testing.T) {
	good := "do=open&hash=&at=1793000000000\n"
	rows := []struct{ name, content, says string }{
		{"empty.txt", "", "nothing is in this file"},
		{"blank.txt", "\n\n", "nothing is in this file"},
		{"letter.txt", "Dear teacher,\nhere is my work.\n", "letter.txt:1: this is no line of a log"},
		{"half.txt", good + "do=enter&problem=x&quantity=R", "half.txt:2: this is no line"},
		{"word.docx", "PK\x03\x04\xff\xfe", "this is not text"},
		{"escape.txt", good + "do=enter&at=1\x1b[31m\n", "escape.txt:2: this is no line"},
		{"long.txt", good + strings.Repeat("9", 1<<15), "long.txt:2: this is no line"},
		{"many.txt", strings.Repeat("do=home&at=1\n", 20001), "many.txt:20001: a log of more than"},
		{"draws.txt", draws(401), "more than 400 problems"},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			path := writeFile(t, r.name, r.content)
			out, errs, status := tell("", "report", path)
			assert.Empty(t, out)
			refused(t, errs, status, path, r.says)
			assert.Contains(t, errs, "--skip-bad")

			require.NoError(t, os.WriteFile(filepath.Join(filepath.Dir(path), "good.txt"), []byte(good), 0o644))
			out, errs, status = tell("", "report", filepath.Dir(path), "--skip-bad")
			assert.Zero(t, status)
			assert.Contains(t, errs, "left out: "+path)
			assert.Contains(t, out, "1 student, 0 entries")
		})
	}
	dir := t.TempDir()
	_, errs, status := tell("", "report", dir)
	refused(t, errs, status, dir, "no saved work")
	_, errs, status = tell("", "report", filepath.Join(dir, "nothing"))
	refused(t, errs, status, filepath.Join(dir, "nothing"), "can't be opened")
}

// A class that worked on one day worked on that day, not from it to it.
func TestReportOfOneDay(t *testing.T) {
	out, errs, status := tell("", "report", writeFile(t, "kit.txt", "do=open&hash=&at=1793000000000\n"))
	require.Zero(t, status, errs)
	assert.Contains(t, out, "1 student, 0 entries, 2026-10-26\n")
}

func draws(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, "do=draw&kind=two-forces&at=%d\n", 1_793_000_000_000+i)
	}
	return b.String()
}

// What a student wrote is shown, and never carried out by a spreadsheet or a
// terminal.
func TestReportShowsAndDoesNotObey(t *testing.T) {
	code := kinds.All.ByName("two-forces").BankProblems()[0].Code()
	path := writeFile(t, "=cmd.txt", "do=open&hash="+url.QueryEscape(code)+"&at=1793000000000\ndo=enter&problem="+url.QueryEscape(code)+"&quantity=R&entry=%2B713.7+N&at=1793000060000\n")
	table, errs, status := tell("", "report", path, "--csv")
	require.Zero(t, status, errs)
	rows, err := csv.NewReader(strings.NewReader(table)).ReadAll()
	require.NoError(t, err)
	require.Len(t, rows, 2)
	assert.Equal(t, "'=cmd", rows[1][0])
	assert.Equal(t, "'+713.7 N", rows[1][11])
	assert.Equal(t, "60", rows[1][9])

	out, _, _ := tell("", "report", path, path)
	assert.Contains(t, out, "1 student, 1 entry", "the same file named twice is read once")
	assert.Contains(t, out, "hold a barge off the quay: 1 began", "a story's full stop stands in no sentence")
	assert.NotContains(t, out, ".;")
	twin := writeFile(t, "twin.txt", "")
	content, err := os.ReadFile(path)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(twin, content, 0o644))
	out, _, _ = tell("", "report", path, twin)
	assert.Contains(t, out, "The same work in two files")
}
