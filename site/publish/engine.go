package publish

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
)

// Built is an engine and the script of the toolchain that built it: neither
// works with a partner from another Go version.
type Built struct{ Wasm, Exec []byte }

// ErrNoSource is why there is no engine: the command holds none, and the source
// it could be built from is not to be found.
var ErrNoSource = errors.New("the engine is neither inside this command nor can it be built")

// Engine is the engine inside the command (see make install), or else built
// from the module's source: around the folder dir, or where this command was
// built from. Tags are Go build tags, for tests; they need the source.
func Engine(ctx context.Context, dir string, tags ...string) (Built, error) {
	if b, ok := shipped(); ok && len(tags) == 0 {
		return b, nil
	}
	source, ok := sourceAround(dir)
	if !ok {
		return Built{}, ErrNoSource
	}
	return Compile(ctx, source, "closingside/wasm", tags...)
}

// sourceAround is the folder of this module that dir lies in; failing that, the
// one this program was built from.
func sourceAround(dir string) (string, bool) {
	_, here, _, _ := runtime.Caller(0)
	for _, from := range []string{dir, filepath.Dir(here)} {
		at, err := filepath.Abs(from)
		if err != nil || !filepath.IsAbs(from) && from != dir {
			continue // built without paths
		}
		for {
			mod, err := os.ReadFile(filepath.Join(at, "go.mod"))
			if err == nil && bytes.HasPrefix(mod, []byte("module closingside\n")) {
				return at, true
			}
			up := filepath.Dir(at)
			if up == at {
				break
			}
			at = up
		}
	}
	return "", false
}

// Compile builds one package for the browser as the engine is built: no
// paths, symbols or revision in it, so that the same source gives the same
// bytes.
func Compile(ctx context.Context, dir, pkg string, tags ...string) (Built, error) {
	temp, err := os.MkdirTemp("", "closingside-engine-")
	if err != nil {
		return Built{}, err
	}
	defer os.RemoveAll(temp)
	out := filepath.Join(temp, "engine.wasm")
	if _, err := goTool(ctx, dir, "build", "-trimpath", "-buildvcs=false", "-ldflags=-s -w",
		"-tags="+strings.Join(tags, ","), "-o", out, pkg); err != nil {
		return Built{}, err
	}
	root, err := goTool(ctx, dir, "env", "GOROOT")
	if err != nil {
		return Built{}, err
	}
	var b Built
	if b.Wasm, err = os.ReadFile(out); err != nil {
		return Built{}, err
	}
	b.Exec, err = os.ReadFile(filepath.Join(strings.TrimSpace(root), "lib", "wasm", "wasm_exec.js"))
	return b, err
}

func goTool(ctx context.Context, dir string, args ...string) (string, error) {
	cmd := exec.CommandContext(ctx, "go", args...)
	cmd.Dir = dir
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm", "CGO_ENABLED=0")
	var out, problem bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &problem
	if err := cmd.Run(); err != nil {
		return "", fmt.Errorf("building the engine (go %s): %w: %s", args[0], err, strings.TrimSpace(problem.String()))
	}
	return out.String(), nil
}
