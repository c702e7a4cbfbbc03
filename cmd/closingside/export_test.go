package main

import (
	"archive/zip"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestExportMarkdown(t *testing.T) {
	dir, _ := harbour(t, ownSet)
	file := filepath.Join(dir, "barge.yaml")
	_, said, status := tell("", "export", file, "--as", "markdown")
	require.Zero(t, status, said)
	assert.Contains(t, said, "barge-markdown.md is written with ")
	page, err := os.ReadFile(filepath.Join(dir, "barge-markdown.md"))
	require.NoError(t, err)
	assert.Contains(t, string(page), "√(P² + Q² − 2·P·Q·cos γ)")
	assert.Contains(t, string(page), "= 682.6 N")
	assert.FileExists(t, filepath.Join(dir, "barge-markdown-1a.svg"))
	_, said, status = tell("", "export", file, "--as", "markdown")
	refused(t, said, status, filepath.Join(dir, "barge-markdown"), "--force")
	_, said, status = tell("", "export", file, "--as", "markdown", "-o", filepath.Join(dir, "x.txt"))
	refused(t, said, status, "--out", ".md")
}

// Who says not what to export as is told what there is.
func TestExportSaysWhatThereIs(t *testing.T) {
	_, said, status := tell("", "export", problem("barge.yaml"))
	assert.Equal(t, 2, status)
	assert.Contains(t, said, "--as=markdown|qti")
}

func TestExportQTI(t *testing.T) {
	dir, file := harbour(t, ownSet)
	_, said, status := tell("", "export", file, "--as", "qti")
	refused(t, said, status, file, "--student")
	out := filepath.Join(dir, "kit.zip")
	_, said, status = tell("", "export", file, "--as", "qti", "--student", "1043", "-o", out)
	require.Zero(t, status, said)
	z, err := zip.OpenReader(out)
	require.NoError(t, err)
	defer z.Close()
	items := 0
	for _, f := range z.File {
		if ok, _ := filepath.Match("items/*-typed.xml", f.Name); ok {
			items++
		}
	}
	assert.Equal(t, 6, items, "three problems with two answers each")
}
