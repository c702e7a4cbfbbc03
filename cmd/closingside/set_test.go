package main

import (
	"encoding/csv"
	"encoding/json"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/sets"
)

const (
	ownSet = `title: Mooring lines, week 3
note: Calculators in degree mode.
numbers: own
order: shuffled
problems:
  - {generate: two-forces, count: 2, difficulty: 2, marks: 3}
  - file: barge.yaml
    marks: 4
`
	barge  = head + first + second
	roster = "id,name\n1042,Ada\n1043,\"Kit, the second\"\n"
)

// harbour is a folder with a set, the problem it names, and a roster.
func harbour(t *testing.T, set string) (dir, file string) {
	t.Helper()
	dir = t.TempDir()
	for name, content := range map[string]string{"week3.yaml": set, "barge.yaml": barge, "roster.csv": roster} {
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(content), 0o644))
	}
	return dir, filepath.Join(dir, "week3.yaml")
}

func TestASetForOneStudent(t *testing.T) {
	_, file := harbour(t, ownSet)
	out, said, status := tell("", "set", file, "--student", "1042")
	require.Zero(t, status, said)
	assert.Contains(t, out, "3 problems, 10 marks; variant ")
	assert.Contains(t, out, "P = 340 N")
	assert.Contains(t, out, "R = 683 N, θ = 88.2°")
	out, said, status = tell("", "set", file)
	assert.Empty(t, out)
	refused(t, said, status, file, "--student")
}

func TestVariantsOfARoster(t *testing.T) {
	dir, file := harbour(t, ownSet)
	out, said, status := tell("", "variants", file, "--roster", filepath.Join(dir, "roster.csv"), "--at", "https://example.edu/statics")
	require.Zero(t, status, said)
	assert.Contains(t, said, "2 students, 3 problems each.")
	rows, err := csv.NewReader(strings.NewReader(out)).ReadAll()
	require.NoError(t, err)
	require.Len(t, rows, 3)
	assert.Equal(t, []string{"1043", "Kit, the second"}, rows[2][:2])
	assert.NotEqual(t, rows[1][2], rows[2][2])
	at, code, ok := strings.Cut(rows[1][3], "#")
	require.True(t, ok)
	assert.Equal(t, "https://example.edu/statics/", at)
	set, student, err := sets.Decode(code)
	require.NoError(t, err)
	assert.Equal(t, "1042", student)

	// Each line of JSON is what set shows for that student, and what the link opens.
	lines, said, status := tell("", "variants", file, "--roster", filepath.Join(dir, "roster.csv"), "--json")
	require.Zero(t, status, said)
	var first, shown variantJSON
	line, _, _ := strings.Cut(lines, "\n")
	require.NoError(t, json.Unmarshal([]byte(line), &first))
	alone, said, status := tell("", "set", file, "--student", "1042", "--json")
	require.Zero(t, status, said)
	require.NoError(t, json.Unmarshal([]byte(alone), &shown))
	assert.Equal(t, shown.Problems, first.Problems)
	variant, err := set.Variant(student)
	require.NoError(t, err)
	require.Len(t, first.Problems, 3)
	for i, task := range variant.Tasks {
		want, err := json.Marshal(problemObject(task.Problem))
		require.NoError(t, err)
		got, err := json.Marshal(first.Problems[i].Problem)
		require.NoError(t, err)
		assert.JSONEq(t, string(want), string(got))
		assert.Len(t, first.Problems[i].Answers, 2)
	}
}

func TestVariantsToAFile(t *testing.T) {
	dir, file := harbour(t, ownSet)
	links := filepath.Join(dir, "links.csv")
	args := []string{"variants", file, "--roster", filepath.Join(dir, "roster.csv"), "--out", links}
	_, said, status := tell("", args...)
	require.Zero(t, status, said)
	before, err := os.ReadFile(links)
	require.NoError(t, err)
	_, said, status = tell("", args...)
	refused(t, said, status, links, "--force")
	_, said, status = tell("", append(args, "--force")...)
	require.Zero(t, status, said)
	after, err := os.ReadFile(links)
	require.NoError(t, err)
	assert.Equal(t, string(before), string(after))
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	assert.Len(t, left, 4, "nothing half-written is left")
}

func TestLinks(t *testing.T) {
	dir, file := harbour(t, ownSet)
	out, said, status := tell("", "link", file, "--student", "1042", "--at", "https://example.edu/statics/")
	require.Zero(t, status, said)
	code := strings.TrimSpace(strings.TrimPrefix(out, "https://example.edu/statics/#"))
	_, student, err := sets.Decode(code)
	require.NoError(t, err)
	assert.Equal(t, "1042", student)

	out, said, status = tell("", "link", filepath.Join(dir, "barge.yaml"))
	require.Zero(t, status, said)
	_, err = kinds.All.Decode(strings.TrimSpace(strings.TrimPrefix(out, "#")))
	assert.NoError(t, err)

	_, said, status = tell("", "link", file, "--at", "example.edu")
	refused(t, said, status, "--at", "https://")
}

func TestALinkIsPlainASCII(t *testing.T) {
	assert.Equal(t, "#a!b+c;%27%22%C3%A9%20", fragment("a!b+c;'\"é "))
}

func TestAWrongSetFileIsRefusedAtItsPlace(t *testing.T) {
	rows := map[string]struct{ set, place, says string }{
		"unknown key":   {"title: T\nproblem:\n  - file: barge.yaml\n", "2:1", "title, version, note"},
		"no such file":  {"title: T\nproblems:\n  - file: tug.yaml\n", "", "tug.yaml: there is no such file"},
		"no name":       {"title: T\nproblems:\n  - file:\n", "3:5", "file: barge.yaml"},
		"file and kind": {"title: T\nproblems:\n  - {file: barge.yaml, kind: two-forces}\n", "3:5", "twice"},
		"marks":         {"title: T\nproblems:\n  - {file: barge.yaml, marks: many}\n", "3:24", "whole number"},
		"settings":      {"title: T\ncheck: {digits: 99}\nproblems:\n  - file: barge.yaml\n", "2:9", "digits"},
		"not the same":  {"title: T\nproblems:\n  - file: barge.yaml\n", "", "numbers: own"},
	}
	for name, row := range rows {
		t.Run(name, func(t *testing.T) {
			dir, file := harbour(t, row.set)
			where := file
			if row.place != "" {
				where += ":" + row.place
			}
			if name == "no such file" {
				where = filepath.Join(dir, "tug.yaml")
			}
			out, said, status := tell("", "variants", file, "--roster", filepath.Join(dir, "roster.csv"))
			assert.Empty(t, out)
			refused(t, said, status, where, row.says)
		})
	}
}

func TestAWrongRosterIsRefusedAtItsPlace(t *testing.T) {
	rows := map[string]struct{ roster, place, says string }{
		"empty":       {"", ":1:1", "id,name"},
		"no header":   {"1042,Ada\n", ":1:1", "id,name"},
		"no students": {"id,name\n", ":1:1", "names no student"},
		"no id":       {"name,id\nAda\n", ":2:1", "no id"},
		"empty id":    {"id,name\n1042,Ada\n  ,Kit\n", ":3:3", "missing"},
		"id twice":    {"id,name\n1042,Ada\n1043,Kit\n10 42,Eve\n", ":4:1", "line 2"},
		"quotes":      {"id,name\n1042,\"Ada\n", ":2:", "double quotes"},
		"long id":     {"id,name\n" + strings.Repeat("9", 50) + ",Ada\n", ":2:1", "up to 40"},
		"not UTF-8":   {"id,name\n1042,Zo\xeb\n", ":2:1", "UTF-8"},
		"too many":    {"id\n" + many(5001), ":5002:1", "split"},
	}
	for name, row := range rows {
		t.Run(name, func(t *testing.T) {
			path := writeFile(t, "roster.csv", row.roster)
			_, err := readRoster(path)
			require.ErrorAs(t, err, &inputError{})
			assert.True(t, strings.HasPrefix(err.Error(), path+row.place), err.Error())
			assert.Contains(t, err.Error(), row.says)
		})
	}
}

func many(n int) string {
	var b strings.Builder
	for i := range n {
		b.WriteString(strconv.Itoa(i) + "\n")
	}
	return b.String()
}

func TestARosterOfASpreadsheet(t *testing.T) {
	for name, content := range map[string]string{
		"commas":     "id,name\n1042,Ada\n",
		"semicolons": "\ufeffName;ID\r\nAda;1042\r\n\r\n",
		"tabs":       "id\tgroup\tname\n1042\tB\tAda\n",
	} {
		t.Run(name, func(t *testing.T) {
			all, err := readRoster(writeFile(t, "roster.csv", content))
			require.NoError(t, err)
			assert.Equal(t, []student{{"1042", "Ada"}}, all)
		})
	}
}
