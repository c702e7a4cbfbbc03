package publish

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// Built is an engine and the script of the toolchain that built it: neither
// works with a partner from another Go version.
type Built struct{ Wasm, Exec []byte }

// Engine builds the engine from the module's source, found from the working
// directory dir. Tags are Go build tags; tests use them.
func Engine(ctx context.Context, dir string, tags ...string) (Built, error) {
	return Compile(ctx, dir, "closingside/wasm", tags...)
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
