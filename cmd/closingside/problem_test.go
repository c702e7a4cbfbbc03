package main

import (
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
)

const (
	head   = "kind: two-forces\n"
	first  = "forces:\n  - {name: P, magnitude: 340 N, direction: 25 deg}\n"
	second = "  - {name: Q, magnitude: 610 N, direction: 118 deg}\n"
)

func TestBadFilesAreRefusedInOneLine(t *testing.T) {
	other := func(s string) string { return head + first + "  - " + s + "\n" }
	rows := []struct{ name, file, place, says string }{
		{"unknown key", head + "colour: red\n" + first + second, "2:1", "“colour” is not known here; what may stand here: kind, story, check, forces"},
		{"unknown key of a force", other("{name: Q, magnitude: 610 N, direction: 118 deg, color: red}"), "4:53", "name, magnitude, direction"},
		{"unknown kind", "kind: two-force\n", "1:1", "kinds: components, two-forces, "},
		{"no kind", first + second, "1:1", "kind: two-forces"},
		{"one force", head + first, "2:1", "must list 2, not 1"},
		{"no forces", head + "forces:\n", "2:1", "must list 2, not 0"},
		{"forces as keys", head + "forces:\n  P: {magnitude: 340 N}\n  Q: {magnitude: 610 N}\n", "2:1", "must be a list"},
		{"forces as a text", head + "forces: 340 N and 610 N\n", "2:1", "must be a list"},
		{"forces as numbers", head + "forces:\n  - 340 N\n  - 610 N\n", "3:5", "name: P"},
		{"no direction", other("{name: Q, magnitude: 610 N}"), "4:5", "direction: 25 deg"},
		{"unknown unit", other("{name: Q, magnitude: 610 parsec, direction: 118 deg}"), "4:15", "one such as N, kN"},
		{"no unit", other("{name: Q, magnitude: 610, direction: 118 deg}"), "4:15", "magnitude: 340 N"},
		{"wrong unit", other("{name: Q, magnitude: 610 m, direction: 118 deg}"), "4:15", "This is a length, and a force is needed"},
		{"bad number", other("{name: Q, magnitude: 6.1.0 N, direction: 118 deg}"), "4:15", "write one decimal point"},
		{"zero", other("{name: Q, magnitude: 0 N, direction: 118 deg}"), "4:15", "more than zero"},
		{"bad direction", other("{name: Q, magnitude: 610 N, direction: sideways}"), "4:33", "direction: 25 deg"},
		{"unknown setting", head + "check: {digit: 4}\n" + first + second, "2:9", "digits, working-digits"},
		{"bad setting", head + "check:\n  digits: 4\n  hints: sometimes\n" + first + second, "4:3", "on, delayed, off"},
		{"settings as a text", head + "check: strict\n" + first + second, "2:1", "hints: off"},
		{"settings as a list", head + "check: [digits]\n" + first + second, "2:1", "hints: off"},
		{"direction from a force not given", head + first + second + "check: {direction: from S}\n", "5:9", "forces: P, Q"},
		{"parallel", other("{name: Q, magnitude: 610 N, direction: 385 deg}"), "3", "Give two directions that differ"},
		{"same name", other("{name: P, magnitude: 610 N, direction: 118 deg}"), "4", "a name of its own"},
		{"key twice", head + head + first + second, "2:1", "“kind” is given twice; keep one"},
		{"key of a force twice", other("{name: Q, name: S, magnitude: 610 N, direction: 118 deg}"), "4:15", "“name” is given twice"},
		{"parts of a story", head + "story: {a: b}\n" + first + second, "2:1", "story: …"},
		{"parts of a magnitude", other("{name: Q, magnitude: [610, N], direction: 118 deg}"), "4:15", "single value"},
		{"long story", head + "story: " + strings.Repeat("mud ", 200) + "\n" + first + second, "2:1", "400"},
		{"tab", head + "forces:\n\t- {name: P}\n", "3:1", "use spaces"},
		{"open list", head + "forces: [\n", "2:9", "YAML"},
		{"colon in a text", head + "story: a: b\n", "2:8", "in quotes"},
		{"anchor", head + "forces:\n  - &a {name: P, magnitude: 340 N, direction: 25 deg}\n  - *a\n", "3:5", "write the value out"},
		{"alias", head + "story: *a\n", "2:8", "write the value out"},
		{"merge", head + "<<: {a: 1}\n", "2:1", "a plain word"},
		{"key of parts", head + "? {a: 1}\n: 2\n", "3:1", "invalid key"},
		{"key of a list", head + "? - a\n: 2\n", "", "YAML"},
		{"tag", "kind: !!str two-forces\n", "1:7", "tags"},
		{"two problems", head + first + second + "---\n" + head, "6:1", "one problem in a file"},
		{"empty", "", "1", "begin with a line such as “kind: two-forces”"},
		{"only a remark", "# later\n", "1", "begin with a line such as “kind: two-forces”"},
		{"a list", "- a\n- b\n", "1:1", "kind: two-forces"},
		{"a text", "hello\n", "1:1", "kind: two-forces"},
		{"Latin-1", head + "story: caf\xe9\n", "2", "UTF-8"},
		{"UTF-16", "\xff\xfek\x00i\x00", "1", "UTF-8"},
		{"control characters", "kind: \"two\\e[31m\\nforces\"\n", "1:1", "two▯[31m forces"},
		{"nested", head + "story: " + strings.Repeat("[", 60) + strings.Repeat("]", 60) + "\n", "2:58", "nested too deeply"},
		{"long list", strings.Repeat("- ", 20_000), "1:20001", "one problem in a file"},
		{"open brackets", strings.Repeat("[", 20_000), "1:10001", "one problem in a file"},
		{"a megabyte of brackets", "\n" + strings.Repeat("[", maxBytes-1), "2", "one problem in a file"},
		{"large", strings.Repeat(" ", maxBytes+1), "", "larger than 1 MB"},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			path := writeFile(t, "p.yaml", r.file)
			where := path + ":"
			if r.place != "" {
				where += r.place + ":"
			}
			for _, verb := range []string{"solve", "check"} {
				out, errs, status := tell("", verb, path)
				assert.Empty(t, out)
				refused(t, errs, status, where, r.says)
			}
		})
	}
}

// Aliases that double at every line would unfold to 2³⁰ values.
func TestAliasesAreNotUnfolded(t *testing.T) {
	bomb := "a: &a [x, x]\n"
	for c := 'b'; c <= 'z'; c++ {
		bomb += string(c) + ": &" + string(c) + " [*" + string(c-1) + ", *" + string(c-1) + "]\n"
	}
	begun := time.Now()
	_, errs, status := tell("", "solve", writeFile(t, "bomb.yaml", bomb))
	refused(t, errs, status, "", "anchors and aliases")
	assert.Less(t, time.Since(begun), time.Minute)
}

func TestFilesThatCannotBeRead(t *testing.T) {
	missing := filepath.Join(t.TempDir(), "missing.yaml")
	folder := t.TempDir()
	rows := []struct{ name, path, says string }{
		{"missing", missing, "no such file; name a problem file"},
		{"folder", folder, "this is a folder; name a problem file"},
		{"line end in the name", missing + "\n", "no such file"},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			_, errs, status := tell("", "solve", r.path)
			refused(t, errs, status, strings.TrimSpace(r.path), r.says)
		})
	}
	_, errs, status := tell("", "solve")
	refused(t, errs, status, "", "--help")
}
