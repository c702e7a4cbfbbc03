package main

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor"
	"closingside/tutor/draw"
	"closingside/tutor/kinds"
)

func TestGenerateWritesWhatTheOtherVerbsRead(t *testing.T) {
	dir := t.TempDir()
	one, set := filepath.Join(dir, "one.yaml"), filepath.Join(dir, "set.yaml")
	_, said, status := tell("", "generate", "--out", one)
	require.Zero(t, status, said)
	out, said, status := tell("", "solve", one)
	require.Zero(t, status, said)
	assert.Contains(t, out, "Answers")

	_, said, status = tell("", "generate", "--count", "3", "--title", "Tugs: the first three", "--out", set)
	require.Zero(t, status, said)
	assert.Contains(t, said, "3 problems kept of")
	for line := range strings.Lines(said) {
		assert.LessOrEqual(t, len([]rune(strings.TrimRight(line, "\n"))), 80, line)
	}
	out, said, status = tell("", "set", set)
	require.Zero(t, status, said)
	assert.Contains(t, out, "Tugs: the first three")
	assert.Contains(t, out, "3 problems, 3 marks")
}

// Every kind's problems come back from the YAML that is written.
func TestProblemsComeBackFromYAML(t *testing.T) {
	for _, k := range kinds.All {
		for _, p := range append(k.BankProblems(), draw.Generate(k, 1)) {
			path := writeFile(t, "p.yaml", strings.Join(problemLines(p), "\n")+"\n")
			lesson, err := openLesson(path)
			require.NoError(t, err, p.Code())
			assert.Equal(t, p.Code(), lesson.Problem.Code())
		}
	}
}

func TestScalar(t *testing.T) {
	for _, s := range []string{"340 N", "-84 deg", "3:4 up left", "Two guys, and a rope", "null", "yes", "~", "# no", "a #b", "- a", "it's", "'a'", "“é”", "a: b", "{", "*x", "@", "%", "1e3", "", " a", "a ", "\\", "\"", "θ"} {
		t.Run(s, func(t *testing.T) {
			src, err := readSource([]byte("k: [" + scalar(s) + "]\nl: " + scalar(s) + "\n"))
			require.NoError(t, err)
			assert.Equal(t, s, src.Kids[0].Kids[0].Text)
			assert.Equal(t, s, src.Kids[1].Text)
		})
	}
}

func TestGenerateJSON(t *testing.T) {
	out, said, status := tell("", "generate", "--count", "2", "--seed", "5", "--difficulty", "1", "--json")
	require.Zero(t, status, said)
	var got generated
	require.NoError(t, json.Unmarshal([]byte(out), &got))
	assert.Equal(t, 2, got.Kept)
	assert.GreaterOrEqual(t, got.Draws, 2)
	require.NotNil(t, got.Separation)
	assert.Greater(t, got.Separation.Digits, 1.0)
	require.Len(t, got.Problems, 2)
	for _, p := range got.Problems { // each is a problem file
		text, err := json.Marshal(p)
		require.NoError(t, err)
		_, err = openLesson(writeFile(t, "p.json", string(text)))
		require.NoError(t, err)
	}
	again, _, _ := tell("", "generate", "--count", "2", "--seed", "5", "--difficulty", "1", "--json")
	assert.Equal(t, out, again)
	other, _, _ := tell("", "generate", "--count", "2", "--seed", "6", "--difficulty", "1", "--json")
	assert.NotEqual(t, out, other)
}

func TestGenerateSeparateFiles(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "new", "folder")
	_, said, status := tell("", "generate", "--count", "2", "--separate", "--out", dir)
	require.Zero(t, status, said)
	files, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Len(t, files, 2, "nothing half-written is left")
	assert.Contains(t, strings.Join(strings.Fields(said), " "), "is written: 2 files.")
	_, said, status = tell("", "generate", "--count", "2", "--separate", "--out", dir)
	refused(t, said, status, dir, "--force")
	_, said, status = tell("", "generate", "--count", "2", "--separate", "--force", "--out", dir)
	assert.Zero(t, status, said)
}

func TestGenerateRefuses(t *testing.T) {
	for name, row := range map[string]struct {
		args  []string
		where string
		says  string
	}{
		"kind":          {[]string{"ten-forces"}, "there is no kind", "two-forces"},
		"count":         {[]string{"--count", "0"}, "--count 0", "1 to 40"},
		"difficulty":    {[]string{"--difficulty", "4"}, "--difficulty 4", "1, 2 and 3"},
		"quadrants":     {[]string{"--quadrants", "1,5"}, "--quadrants", "“5”"},
		"contradiction": {[]string{"--difficulty", "1", "--quadrants", "3"}, "Difficulty 1", "difficulty 2"},
		"no folder":     {[]string{"--separate"}, "--separate", "--out"},
	} {
		t.Run(name, func(t *testing.T) {
			out, said, status := tell("", append([]string{"generate"}, row.args...)...)
			assert.Empty(t, out)
			refused(t, said, status, row.where, row.says)
		})
	}
}

// The report names quantities as the problem does.
func TestTheReportNamesForcesAsTheProblemDoes(t *testing.T) {
	p, fair, err := draw.Wish{Kind: kinds.All.ByName("concurrent-forces")}.Generate(7)
	require.NoError(t, err)
	l, err := tutor.Open(p)
	require.NoError(t, err)
	var out bytes.Buffer
	showFairness(newScreen(&out), newTally([]drawn{{p, fair}}))
	assert.Contains(t, strings.Join(strings.Fields(out.String()), " "), "for "+l.SymbolText(fair.Quantity)+" of problem 1")
}
