//go:build js && wasm

// Command wasm is the engine as the page loads it: site.Handle behind one
// exported function, closingside, that takes a string and returns a string.
//
//	globalThis.closingside("do=start&hash=&at=0") // "<main id=…"
//
// It decides nothing. An argument that is not a string, or a failure inside
// the engine, is answered with the empty string, which no request is: the page
// then starts a fresh engine and gives it the log.
package main
