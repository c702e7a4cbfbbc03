//go:build js && wasm && sink

package main

import (
	"bytes"
	"os"
)

// An engine built with the tag sink goes down, as a fatal error of the
// runtime does, at any request or log that holds the word "scuttle". Tests of
// the page's recovery are built with it; what is published is not.
func init() {
	inner := handle
	handle = func(req []byte) []byte {
		if bytes.Contains(req, []byte("scuttle")) {
			os.Exit(2)
		}
		return inner(req)
	}
}
