//go:build js && wasm

package main

import (
	"closingside/site"

	"github.com/hack-pad/safejs"
)

// handle is what the page calls.
var handle = site.Handle

func main() {
	if err := export("closingside", handle); err != nil {
		panic(err) // nothing can be said to a page that refuses a property
	}
	select {}
}

// export makes handle callable from JavaScript under name.
func export(name string, handle func([]byte) []byte) error {
	f, err := safejs.FuncOf(func(_ safejs.Value, args []safejs.Value) any {
		return guard(handle, args)
	})
	if err != nil {
		return err
	}
	return safejs.Global().Set(name, f)
}

// guard calls handle with the one argument and returns its reply, or "" when
// the argument is not a string or handle panics: an unguarded panic would end
// the program.
func guard(handle func([]byte) []byte, args []safejs.Value) (reply string) {
	defer func() {
		if recover() != nil {
			reply = ""
		}
	}()
	if len(args) != 1 || args[0].Type() != safejs.TypeString {
		return ""
	}
	s, err := args[0].String()
	if err != nil {
		return ""
	}
	return string(handle([]byte(s)))
}
