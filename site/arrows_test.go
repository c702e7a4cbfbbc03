//go:build !js

package site

import (
	"go/parser"
	"go/token"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// below says, for each package of the product, which of the others it may
// import. Arrows run downwards only. A package that is not here is a mistake:
// decide where it stands, then add it.
var below = map[string][]string{
	"cmd/closingside": {"site/publish", "site/sheet", "site/export", "site/report", "site/parallel", "site", "tutor", "tutor/*"},
	"site/report":     {"site", "site/parallel", "tutor", "tutor/*"},
	"site/publish":    {"site", "site/page", "site/html", "tutor", "tutor/*"},
	"site/sheet":      {"site", "site/parallel", "site/page", "site/html", "tutor", "tutor/*", "statics/expr"},
	"site/export":     {"site", "site/page", "site/html", "tutor", "tutor/*"},
	"wasm":            {"site"},
	"site":            {"site/html", "tutor", "tutor/*", "statics/expr"},
	"site/html":       {"tutor/figure", "statics/expr"},
	"site/page":       {},
	"site/parallel":   {},
	"site/journey":    {},

	"site/journey/speed": {"tutor/kinds", "tutor/trial"}, // measures; no part of the product
	"tutor/trial":        {"tutor/draw", "tutor", "tutor/verdict", "tutor/kinds", "tutor/lesson", "tutor/slipped", "tutor/slips", "statics", "statics/expr"},
	"tutor/sets":         {"tutor/draw", "tutor", "tutor/verdict", "tutor/kinds", "tutor/lesson", "tutor/text"},
	"tutor/draw":         {"tutor", "tutor/slipped", "tutor/slips", "tutor/lesson", "tutor/text", "statics", "statics/expr"},
	"tutor":              {"tutor/writing", "tutor/sketch", "tutor/verdict", "tutor/balance", "tutor/slipped", "tutor/slips", "tutor/lesson", "tutor/entry", "tutor/figure", "tutor/text", "statics", "statics/expr"}, // knows no kind by name
	"tutor/sketch":       {"tutor/lesson", "tutor/verdict", "tutor/entry", "tutor/figure", "statics"},
	"tutor/writing":      {"tutor/lesson", "tutor/entry", "statics"},
	"tutor/verdict":      {},
	"tutor/balance":      {"tutor/lesson", "statics", "statics/expr"},
	"tutor/kinds":        {"tutor/lesson", "tutor/figure", "tutor/text", "statics", "statics/expr"},
	"tutor/slipped":      {"tutor/lesson", "tutor/slips", "statics", "statics/expr"},
	"tutor/slips":        {"tutor/lesson", "statics", "statics/expr"},
	"tutor/lesson":       {"tutor/entry", "tutor/figure", "tutor/text", "statics", "statics/expr"},
	"tutor/entry":        {"tutor/text", "statics", "statics/expr"},
	"tutor/figure":       {"tutor/text", "statics", "statics/expr"},
	"tutor/text":         {},
	"statics":            {"statics/expr"},
	"statics/expr":       {},
}

// kept lists what may not be imported by what runs in the browser: large, or
// able to switch off the linker's removal of dead code.
var kept = []string{"fmt", "encoding/json", "net/url", "regexp", "text/template", "html/template", "reflect", "time", "embed", "gonum.org/v1/gonum/mat"}

// inBrowser are the packages that end up in the engine.
func inBrowser(pkg string) bool {
	if pkg == "tutor/trial" { // native only
		return false
	}
	return pkg == "wasm" || pkg == "site" || pkg == "site/html" || strings.HasPrefix(pkg, "tutor") || strings.HasPrefix(pkg, "statics")
}

func TestImportsRunDownwards(t *testing.T) {
	imports := sources(t)
	require.Greater(t, len(imports), 5, "the walk found the packages")
	for pkg, list := range imports {
		t.Run(pkg, func(t *testing.T) {
			allowed, known := below[pkg]
			require.True(t, known, "where does %s stand? add it to below", pkg)
			for imported, file := range list {
				assert.NotEqual(t, "syscall/js", imported, "%s: only safejs touches JavaScript", file)
				if inBrowser(pkg) {
					assert.NotContains(t, kept, imported, "%s: too large for the engine", file)
				}
				if strings.HasPrefix(imported, "github.com/hack-pad/safejs") {
					assert.Equal(t, "wasm", pkg, "%s: only the edge knows JavaScript", file)
				}
				if inner, ours := strings.CutPrefix(imported, "closingside/"); ours {
					assert.True(t, allows(allowed, inner), "%s: %s may not import %s", file, pkg, inner)
				}
			}
		})
	}
}

func allows(allowed []string, pkg string) bool {
	for _, a := range allowed {
		if dir, all := strings.CutSuffix(a, "*"); a == pkg || all && strings.HasPrefix(pkg, dir) {
			return true
		}
	}
	return false
}

// sources is what each package imports outside its tests, and in which file.
func sources(t *testing.T) map[string]map[string]string {
	t.Helper()
	imports := map[string]map[string]string{}
	root := ".."
	err := filepath.WalkDir(root, func(path string, d os.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && (d.Name() == "testdata" || d.Name() == "build" || strings.HasPrefix(d.Name(), ".") && path != root) {
			return filepath.SkipDir
		}
		if filepath.Ext(path) != ".go" || strings.HasSuffix(path, "_test.go") {
			return nil
		}
		f, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		pkg, err := filepath.Rel(root, filepath.Dir(path))
		if err != nil {
			return err
		}
		if imports[pkg] == nil {
			imports[pkg] = map[string]string{}
		}
		for _, i := range f.Imports {
			name, err := strconv.Unquote(i.Path.Value)
			if err != nil {
				return err
			}
			imports[pkg][name] = path
		}
		return nil
	})
	require.NoError(t, err)
	return imports
}

// safejs brings fmt, reflect, time and os along; nothing may bring more of
// the large ones.
func TestWhatTheEngineHolds(t *testing.T) {
	cmd := exec.Command("go", "list", "-deps", "closingside/wasm")
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm", "CGO_ENABLED=0")
	out, err := cmd.Output()
	require.NoError(t, err)
	deps := strings.Fields(string(out))
	require.Contains(t, deps, "closingside/site")
	for _, heavy := range []string{"encoding/json", "net/url", "regexp", "text/template", "html/template", "embed", "net/http", "testing", "gonum.org/v1/gonum/mat", "closingside/site/publish"} {
		assert.False(t, slices.Contains(deps, heavy), "the engine holds %s", heavy)
	}
}

func TestAllows(t *testing.T) {
	assert.True(t, allows([]string{"tutor/*"}, "tutor/text"))
	assert.False(t, allows([]string{"tutor/*"}, "tutor"))
	assert.False(t, allows([]string{"site"}, "site/html"))
}
