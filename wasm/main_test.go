//go:build js && wasm

package main

import (
	"testing"

	"github.com/hack-pad/safejs"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func echo(b []byte) []byte {
	if string(b) == "panic" {
		panic("on purpose")
	}
	return append([]byte("<p>"), b...)
}

func value(t *testing.T, v any) safejs.Value {
	t.Helper()
	js, err := safejs.ValueOf(v)
	require.NoError(t, err)
	return js
}

func TestExport(t *testing.T) {
	require.NoError(t, export("echo", echo))
	object, err := safejs.Global().Get("Object")
	require.NoError(t, err)
	rows := []struct {
		name, want string
		args       []any
	}{
		{"a string", "<p>θ = 86°", []any{"θ = 86°"}},
		{"the empty string", "<p>", []any{""}},
		{"a panic is answered", "", []any{"panic"}},
		{"and the engine goes on", "<p>next", []any{"next"}},
		{"no argument", "", nil},
		{"two arguments", "", []any{"a", "b"}},
		{"a number", "", []any{7}},
		{"undefined", "", []any{safejs.Undefined()}},
		{"null", "", []any{safejs.Null()}},
		{"a function", "", []any{object}},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			got, err := safejs.Global().Call("echo", r.args...)
			require.NoError(t, err)
			s, err := got.String()
			require.NoError(t, err)
			assert.Equal(t, safejs.TypeString, got.Type())
			assert.Equal(t, r.want, s)
		})
	}
}

func TestGuardAcceptsOnlyStrings(t *testing.T) {
	assert.Equal(t, "<p>x", guard(echo, []safejs.Value{value(t, "x")}))
	assert.Equal(t, "", guard(echo, []safejs.Value{value(t, 1.5)}))
}
