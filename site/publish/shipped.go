//go:build shipped

package publish

import _ "embed"

// The engine that make install put into the command.
var (
	//go:embed shipped/engine.wasm
	shippedWasm []byte
	//go:embed shipped/wasm_exec.js
	shippedExec []byte
)

func shipped() (Built, bool) { return Built{Wasm: shippedWasm, Exec: shippedExec}, true }
