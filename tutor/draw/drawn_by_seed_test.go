package draw

import (
	"flag"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

var update = flag.Bool("update", false, "write the golden files anew")

// A seed draws the same problems on every machine, and in the browser's
// WebAssembly: make wasm runs this test there too. A kind's Rule names what it
// draws; links to sets carry it.
func TestASeedDrawsTheSameEverywhere(t *testing.T) {
	for _, k := range kinds.All {
		t.Run(k.Name, func(t *testing.T) {
			var b strings.Builder
			for difficulty := range Difficulties + 1 {
				for seed := range uint64(8) {
					p, f, err := Wish{Kind: k, Difficulty: difficulty}.Generate(seed)
					require.NoError(t, err)
					b.WriteString(strconv.Itoa(difficulty) + " " + strconv.Itoa(int(seed)) + " " + strconv.Itoa(f.Draws) + " " + p.Code() + "\n")
				}
			}
			assert.Equal(t, lesson.Letters(lesson.Hash(b.String()), 4), k.Rule, "what %s draws is not what its Rule says; if meant, write this one", k.Name)
			pinned(t, filepath.Join("testdata", "drawn", k.Name+".txt"), b.String())
		})
	}
}

// pinned compares got with what a file holds; -update writes it anew.
func pinned(t *testing.T, file, got string) {
	t.Helper()
	if *update {
		require.NoError(t, os.MkdirAll(filepath.Dir(file), 0o755))
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err, "a new kind: go test ./tutor/draw -run SameEverywhere -update")
	assert.Equal(t, string(want), got, "difficulty, seed, draws, problem; if meant: go test ./tutor/draw -run SameEverywhere -update")
}
