package text

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestMain(m *testing.M) {
	Strict = true
	sentences["test.plain"] = "No hole."
	sentences["test.two"] = "{a} and {b} and {a}"
	code := m.Run()
	os.Exit(code)
}

func TestSay(t *testing.T) {
	for _, row := range []struct {
		key   string
		pairs []string
		want  string
	}{
		{"test.plain", nil, "No hole."},
		{"test.two", []string{"a", "1", "b", "2"}, "1 and 2 and 1"},
		{"test.two", []string{"b", "{a}", "a", "x"}, "x and {a} and x"},
	} {
		t.Run(row.key, func(t *testing.T) {
			assert.Equal(t, row.want, Say(row.key, row.pairs...))
		})
	}
}

func TestSayIsStrictInTestsOnly(t *testing.T) {
	calls := map[string]func() string{
		"unknown key":    func() string { return Say("test.none") },
		"open hole":      func() string { return Say("test.two", "a", "1") },
		"name, no value": func() string { return Say("test.plain", "a") },
	}
	for name, call := range calls {
		t.Run(name, func(t *testing.T) { assert.Panics(t, func() { call() }) })
	}
	Strict = false
	defer func() { Strict = true }()
	assert.Equal(t, "test.none", Say("test.none"))
	assert.Equal(t, "1 and {b} and 1", Say("test.two", "a", "1"))
	assert.Equal(t, "No hole.", Say("test.plain", "a"))
}

func TestMissing(t *testing.T) {
	assert.Equal(t, []string{"x.y", "a.b"}, Missing("x.y", "test.two", "a.b"))
	assert.Empty(t, Missing("common.safety"))
	assert.Contains(t, Keys(), "test.two")
}

func TestJoinRefusesAKeyTwice(t *testing.T) {
	a := map[string]string{"k": "1"}
	assert.Panics(t, func() { join([]map[string]string{a, a}) })
}

// Every sentence is one a learner can read: an area's name before the key,
// braces that close, no doubled or trailing space.
func TestSentencesAreWellFormed(t *testing.T) {
	for _, key := range Keys() {
		s := sentences[key]
		assert.Contains(t, key, ".", "key without an area")
		assert.Equal(t, strings.Count(s, "{"), strings.Count(s, "}"), key)
		assert.Equal(t, strings.TrimSpace(s), s, key)
		assert.NotContains(t, s, "  ", key)
		assert.NotEmpty(t, s, key)
	}
}
