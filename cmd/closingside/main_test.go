package main

import (
	"bytes"
	"context"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"closingside/site/publish"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// command runs one command line on nothing.
func command(args ...string) (status int, out, problem string) {
	var o, e bytes.Buffer
	status = run(args, streams{strings.NewReader(""), &o, &e})
	return status, o.String(), e.String()
}

func TestHelp(t *testing.T) {
	for _, args := range [][]string{nil, {"--help"}, {"serve", "--help"}} {
		t.Run(strings.Join(args, " "), func(t *testing.T) {
			status, out, problem := command(args...)
			assert.Zero(t, status)
			assert.Empty(t, problem)
			assert.Contains(t, out, "Usage: closingside")
			for line := range strings.Lines(out) {
				assert.LessOrEqual(t, len(strings.TrimRight(line, "\n")), 80, line)
			}
		})
	}
}

func TestWrongInput(t *testing.T) {
	empty := t.TempDir()
	rows := []struct {
		name, says string
		args       []string
	}{
		{"unknown verb", "sail; closingside --help", []string{"sail"}},
		{"a flag left out", "closingside variants --help", []string{"variants", "week4.yaml"}},
		{"unknown flag", "--sail", []string{"serve", "--sail"}},
		{"port is a word", "--port", []string{"serve", "--port", "tug"}},
		{"port too large", "0 to 65535", []string{"serve", "--port", "70000"}},
		{"a set for a page", "--set", []string{"serve", problem("barge.yaml")}},
		{"sets beside a folder", "--set", []string{"serve", empty, "--set", problem("barge.yaml")}},
		{"no such page", "no such folder", []string{"serve", filepath.Join(empty, "none")}},
		{"no such set", "name a set file", []string{"build", empty, "--set", filepath.Join(empty, "none.yaml")}},
		{"a problem for a set", "this is a problem, and a set is wanted", []string{"build", empty, "--set", problem("barge.yaml")}},
		{"a set for a problem", "this is a set, and one problem is wanted", []string{"solve", "../../testdata/own-set.yaml"}},
		{"an empty set", "title: ", []string{"set", writeFile(t, "empty.yaml", "")}},
		{"no such roster", "name a CSV file", []string{"variants", "../../testdata/own-set.yaml", "--roster", filepath.Join(empty, "none.csv")}},
		{"kind mistyped", "is two-forces meant?", []string{"generate", "tow-forces"}},
		{"nothing in the folder", "closingside build", []string{"serve", empty}},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			status, out, problem := command(r.args...)
			assert.Equal(t, 2, status)
			assert.Empty(t, out)
			assert.Contains(t, problem, r.says)
			assert.Equal(t, 1, strings.Count(problem, "\n"), problem)
		})
	}
}

func TestServeAndStop(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "site")
	folder, err := publish.Build(publish.Built{Wasm: []byte("\x00asm"), Exec: []byte("// go")})
	require.NoError(t, err)
	require.NoError(t, folder.Write(dir))

	ctx, stop := context.WithCancel(context.Background())
	read, write := io.Pipe()
	done := make(chan error, 1)
	go func() {
		done <- serveVerb{Path: dir, Host: "127.0.0.1"}.serve(ctx, streams{out: write, err: io.Discard})
	}()
	line := make([]byte, 100)
	n, err := read.Read(line)
	require.NoError(t, err)
	at := strings.TrimSpace(string(line[:n]))
	require.Regexp(t, `^http://localhost:\d+/$`, at)
	reply, err := http.Get(strings.Replace(at, "localhost", "127.0.0.1", 1))
	require.NoError(t, err)
	body, err := io.ReadAll(reply.Body)
	require.NoError(t, err)
	require.NoError(t, reply.Body.Close())
	assert.Equal(t, folder.Files["index.html"], body)

	status, _, problem := command("serve", dir, "--port", strings.Trim(at[strings.LastIndex(at, ":")+1:], "/"))
	assert.Equal(t, 2, status, "the port is taken")
	assert.Contains(t, problem, "--port")

	stop()
	select {
	case err := <-done:
		assert.NoError(t, err)
	case <-time.After(5 * time.Minute):
		t.Fatal("the server did not stop")
	}
}

func TestBuild(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "site")
	status, out, problem := command("build", dir)
	require.Zero(t, status, problem)
	assert.Contains(t, out, dir)
	assert.FileExists(t, filepath.Join(dir, "files.txt"))

	file := filepath.Join(t.TempDir(), "new", "practice.html")
	status, out, problem = command("build", "--one-file", file)
	require.Zero(t, status, problem)
	assert.Contains(t, out, file)
	page, err := os.ReadFile(file)
	require.NoError(t, err)
	assert.Contains(t, string(page), `id="engine"`)
	status, _, problem = command("build", "--one-file", dir)
	assert.Equal(t, 2, status)
	assert.Contains(t, problem, "name the file")

	notes := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(notes, "notes.txt"), []byte("mine"), 0o644))
	status, _, problem = command("build", notes)
	assert.Equal(t, 2, status)
	assert.Contains(t, problem, "--force")
}
