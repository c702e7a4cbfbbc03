package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"os"
	"path/filepath"
	"testing"

	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestEveryKeyHasItsPlace(t *testing.T) {
	src, err := readSource([]byte("\ufeffkind: two-forces\r\nforces:\r\n- name: é\r\n  magnitude: 340 N\r\n- {name: Q, magnitude: 6e2}\r\n"))
	require.NoError(t, err)
	leaf := func(key, text string, line, col int) lesson.Source {
		return lesson.Source{Key: key, Text: text, Line: line, Col: col}
	}
	want := lesson.Source{Line: 1, Col: 1, Kids: []lesson.Source{
		leaf("kind", "two-forces", 1, 1),
		{Key: "forces", Line: 2, Col: 1, Kids: []lesson.Source{
			{Line: 3, Col: 3, Kids: []lesson.Source{leaf("name", "é", 3, 3), leaf("magnitude", "340 N", 4, 3)}},
			{Line: 5, Col: 3, Kids: []lesson.Source{leaf("name", "Q", 5, 4), leaf("magnitude", "6e2", 5, 13)}},
		}},
	}}
	assert.Equal(t, want, src)
}

// A value is the text as written, whatever type YAML would give it.
func TestValuesAreTexts(t *testing.T) {
	rows := []struct{ yaml, want string }{
		{"340 N", "340 N"}, {"340", "340"}, {"007", "007"}, {"6.10", "6.10"}, {"1e3", "1e3"}, {"0x1F", "0x1F"}, {"+5", "+5"}, {"-30 deg", "-30 deg"},
		{"true", "true"}, {"y", "y"}, {"NO", "NO"}, {".inf", ".inf"}, {"", ""}, {"~", ""}, {"null", ""}, {"''", ""},
		{"3:4 up left", "3:4 up left"}, {"N 30° E", "N 30° E"}, {"-x", "-x"}, {"+y # up", "+y"}, {"2026-11-25", "2026-11-25"},
		{`"a\tb\u00b0"`, "a\tb°"}, {"'it''s'", "it's"}, {"|\n  two\n  lines\n", "two\nlines\n"}, {">\n  two\n  lines\n", "two lines\n"},
	}
	for _, r := range rows {
		t.Run(r.yaml, func(t *testing.T) {
			src, err := readSource([]byte("k: " + r.yaml))
			require.NoError(t, err)
			require.Len(t, src.Kids, 1)
			assert.Equal(t, r.want, src.Kids[0].Text)
		})
	}
}

// asJSON writes a Source as JSON that reads as the same Source.
func asJSON(s lesson.Source) []byte {
	var b bytes.Buffer
	writeJSON(&b, s)
	return b.Bytes()
}

func writeJSON(b *bytes.Buffer, s lesson.Source) {
	if s.Kids == nil {
		text, _ := json.Marshal(s.Text)
		b.Write(text)
		return
	}
	ends := "[]"
	if s.Kids[0].Key != "" {
		ends = "{}"
	}
	b.WriteByte(ends[0])
	for i, kid := range s.Kids {
		if i > 0 {
			b.WriteString(", ")
		}
		if ends == "{}" {
			key, _ := json.Marshal(kid.Key)
			b.Write(key)
			b.WriteString(": ")
		}
		writeJSON(b, kid)
	}
	b.WriteByte(ends[1])
}

// bare is s without its places.
func bare(s lesson.Source) lesson.Source {
	s.Line, s.Col = 0, 0
	for i := range s.Kids {
		s.Kids[i] = bare(s.Kids[i])
	}
	return s
}

func TestJSONReadsAsYAML(t *testing.T) {
	files, err := filepath.Glob(problem("*"))
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(files), 4)
	for _, path := range files {
		t.Run(filepath.Base(path), func(t *testing.T) {
			file, err := os.ReadFile(path)
			require.NoError(t, err)
			src, err := readSource(file)
			require.NoError(t, err)
			again, err := readSource(asJSON(src))
			require.NoError(t, err)
			assert.Equal(t, bare(src), bare(again))
		})
	}
}

// FuzzReadSource: any bytes give a Source or a *SourceError whose place is in
// the file; a Source has places in the file, and what is understood as a
// problem is a lesson or a reason why not.
func FuzzReadSource(f *testing.F) {
	for _, seed := range []string{
		head + first + second, "{\"kind\": \"two-forces\", \"forces\": []}", "a: |\n  b\n", "? a\n: b\n", "- &a [x]\n- *a\n", "a: !!str b\n", "--- a\n...\n",
		"a: \"\\ud83d\\ude00\"", "%YAML 1.2\n---\na: 1\n", "\ta: 1", "a:\n - b\n -\n   - c: d\n     e: f\n", "{a, b: c, [d]: e}", "a: 'b\n  c'\n",
	} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, file []byte) {
		lines := 1 + bytes.Count(file, []byte("\n")) + bytes.Count(file, []byte("\r"))
		src, err := readSource(file)
		if err == nil {
			placed(t, src, lines)
			var p *lesson.Problem
			if p, err = kinds.All.Read(src); err == nil {
				l, reason := tutor.Open(p)
				if reason == nil {
					assert.NotEmpty(t, solved(l.Lesson).Quantities)
				} else {
					assert.NotEmpty(t, reason.Error())
				}
				return
			}
		}
		var at *lesson.SourceError
		require.True(t, errors.As(err, &at), "%T", err)
		assert.NotEmpty(t, at.Message)
		assert.True(t, at.Line >= 0 && at.Line <= lines && at.Col >= 0, "%d:%d of %d lines", at.Line, at.Col, lines)
	})
}

func placed(t *testing.T, s lesson.Source, lines int) {
	assert.True(t, s.Line >= 1 && s.Line <= lines && s.Col >= 1, "%q at %d:%d of %d lines", s.Key, s.Line, s.Col, lines)
	for _, kid := range s.Kids {
		placed(t, kid, lines)
	}
}
