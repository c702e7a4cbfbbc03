package main

import (
	"bufio"
	"io"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"closingside/tutor/kinds"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// readmeBlocks are the commands of the README's part for instructors, in order.
func readmeBlocks(t *testing.T) []string {
	t.Helper()
	all, err := os.ReadFile("../../README.md")
	require.NoError(t, err)
	_, part, ok := strings.Cut(string(all), "## From an empty folder to a published set\n")
	require.True(t, ok)
	part, _, _ = strings.Cut(part, "\n## ")
	var blocks []string
	for _, m := range regexp.MustCompile("(?s)```sh\n(.*?)```").FindAllStringSubmatch(part, -1) {
		blocks = append(blocks, m[1])
	}
	return blocks
}

// TestREADME runs every command of the README's part for instructors in one
// folder that is empty at first, as a shell would.
func TestREADME(t *testing.T) {
	self, err := os.Executable()
	require.NoError(t, err)
	dir, bin, web := t.TempDir(), t.TempDir(), t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(bin, "closingside"), []byte("#!/bin/sh\n"+asCommand+"=1 exec "+self+" \"$@\"\n"), 0o755))
	shell := func(script string) *exec.Cmd {
		cmd := exec.Command("sh", "-eu")
		cmd.Dir, cmd.Stdin = dir, strings.NewReader(script)
		cmd.Env = append(os.Environ(), "PATH="+bin+":"+os.Getenv("PATH"), "WEB="+web)
		return cmd
	}
	blocks := readmeBlocks(t)
	require.Greater(t, len(blocks), 6)
	assert.Equal(t, 3, strings.Count(blocks[0], "\n"), "three commands")
	for _, block := range blocks {
		for line := range strings.Lines(block) {
			assert.LessOrEqual(t, len(line), 110, "a command that fits a page")
		}
		if strings.Contains(block, "closingside serve") {
			for line := range strings.Lines(block) {
				t.Run(strings.TrimSpace(line), func(t *testing.T) { served(t, shell("exec "+strings.TrimSpace(line)+" --port 0\n")) })
			}
			continue
		}
		out, err := shell(block).CombinedOutput()
		require.NoError(t, err, "%s\n%s", block, out)
		t.Logf("%s%s", block, out)
	}
	for _, name := range []string{"week3.yaml", "links.csv", "public/index.html", "public/files.txt", "practice.html", "drawn.json", "problems/two-forces-05.yaml", "handed-in.csv"} {
		assert.FileExists(t, filepath.Join(dir, name))
	}
	assert.FileExists(t, filepath.Join(web, "index.html"))
	page, err := os.ReadFile(filepath.Join(web, "index.html"))
	require.NoError(t, err)
	assert.Contains(t, string(page), "Mooring lines, week 3")
	left, err := filepath.Glob(filepath.Join(dir, ".closingside-*"))
	require.NoError(t, err)
	assert.Empty(t, left, "nothing half-written is left")
}

// served starts a server, takes the page from the address it prints, and stops it.
func served(t *testing.T, cmd *exec.Cmd) {
	t.Helper()
	out, err := cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, cmd.Start())
	defer func() {
		_ = cmd.Process.Signal(os.Interrupt)
		_ = cmd.Wait()
	}()
	line, err := bufio.NewReader(out).ReadString('\n')
	require.NoError(t, err)
	client := http.Client{Timeout: 5 * time.Minute}
	reply, err := client.Get(strings.Replace(strings.TrimSpace(line), "localhost", "127.0.0.1", 1))
	require.NoError(t, err)
	defer reply.Body.Close()
	body, err := io.ReadAll(reply.Body)
	require.NoError(t, err)
	assert.Contains(t, string(body), `<main id="main"`)
	assert.Contains(t, string(body), "Barges, week 5")
}

// TestREADMEProblems: every problem file that the README shows opens, and each
// kind in its table is shown.
func TestREADMEProblems(t *testing.T) {
	all, err := os.ReadFile("../../README.md")
	require.NoError(t, err)
	shown := map[string]bool{}
	for _, m := range regexp.MustCompile("(?s)```yaml\n(kind: ([a-z-]+)\n.*?)```").FindAllStringSubmatch(string(all), -1) {
		t.Run(m[2], func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "p.yaml")
			require.NoError(t, os.WriteFile(path, []byte(m[1]), 0o644))
			lesson, err := openLesson(path)
			require.NoError(t, err)
			shown[lesson.Kind.Name] = true
		})
	}
	listed := 0
	for _, k := range kinds.All {
		if strings.Contains(string(all), "| `"+k.Name+"` |") {
			listed++
			assert.True(t, shown[k.Name], "%s is not shown", k.Name)
		}
	}
	assert.GreaterOrEqual(t, listed, 5)
}
