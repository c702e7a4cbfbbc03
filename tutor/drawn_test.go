package tutor

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the golden files anew")

// A seed draws the same problems on every machine, and in the browser's
// WebAssembly: make wasm runs this test there too.
func TestASeedDrawsTheSameEverywhere(t *testing.T) {
	for _, k := range Kinds() {
		t.Run(k.Name, func(t *testing.T) {
			var b strings.Builder
			for difficulty := range Difficulties + 1 {
				for seed := range uint64(6) {
					p, f, err := Wish{Kind: k, Difficulty: difficulty}.Generate(seed)
					require.NoError(t, err)
					b.WriteString(itoa(difficulty) + " " + itoa(int(seed)) + " " + itoa(f.Draws) + " " + p.Code() + "\n")
				}
			}
			file := filepath.Join("testdata", "drawn", k.Name+".txt")
			if *update {
				require.NoError(t, os.MkdirAll(filepath.Dir(file), 0o755))
				require.NoError(t, os.WriteFile(file, []byte(b.String()), 0o644))
			}
			want, err := os.ReadFile(file)
			require.NoError(t, err, "a new kind: go test ./tutor -run %s -update", t.Name())
			assert.Equal(t, string(want), b.String(), "difficulty, seed, draws, problem")
		})
	}
}
